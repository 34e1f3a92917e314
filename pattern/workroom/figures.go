package workroom

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// figures gathers what the draft needs: her measurements, and proposals for
// the rest. What nothing can propose is missing. A proposal that rests on a
// missing measurement is not listed twice.
func figures(job pattern.Job, needs []measure.ID, method string) ([]pattern.Figure, []pattern.Missing) {
	var out []pattern.Figure
	var missing []pattern.Missing
	for _, id := range needs {
		if l, ok := job.Body.Get(id); ok {
			out = append(out, pattern.Figure{ID: id, Value: l})
			continue
		}
		if !needed(job, id, method) {
			continue
		}
		if p, ok := propose(job, id, method); ok {
			out = append(out, pattern.Figure{ID: id, Value: p.Value, Proposed: true, Proposal: p})
			continue
		}
		if mustTake(id) || job.Body.Has(measure.BustGirth) {
			missing = append(missing, pattern.Missing{ID: id, For: usedFor[id]})
		}
	}
	return out, missing
}

// needed says whether an unmeasured figure would be used: the knee only
// gives the length, by the measured method, and then only by her height.
func needed(job pattern.Job, id measure.ID, method string) bool {
	if id != measure.WaistToKnee || method == pattern.Thumb {
		return true
	}
	_, chosen := job.Style.Get("length")
	return !chosen && job.Body.Has(measure.Height)
}

func mustTake(id measure.ID) bool {
	return id == measure.BustGirth || id == measure.WaistGirth || id == measure.HipGirth
}

// propose is the proposal of measure, but for the back length by thumb,
// which is taken from the front length if that was measured.
func propose(job pattern.Job, id measure.ID, method string) (measure.Proposal, bool) {
	front, ok := job.Body.Get(measure.SideNeckToWaist)
	if method == pattern.Thumb && id == measure.BackNeckToWaist && ok {
		w := measure.Measured("front length", front).Minus(measure.Fixed(rule.In(1.5))).Minus(measure.Fixed(rule.NapeDrop))
		if w.Result() > 0 {
			return measure.Proposal{
				ID: id, Value: w.Result(), Spread: rule.In(0.75), Working: w, FromMemory: true,
				Source: "front length less 1 1/2 and 3/4, by thumb; common practice, no source",
			}, true
		}
	}
	return measure.Propose(job.Body, id)
}

var usedFor = map[measure.ID]string{
	measure.BustGirth: "the width at the bust", measure.WaistGirth: "the width at the waist", measure.HipGirth: "the width at the hip",
	measure.NeckBaseGirth: "the neck", measure.AcrossShoulders: "the shoulder", measure.ShoulderDrop: "the slope of the shoulder",
	measure.AcrossFront: "the front armhole", measure.AcrossBack: "the back armhole", measure.BackNeckToWaist: "the waist line",
	measure.SideNeckToWaist: "the length of the front", measure.SideNeckToBustPoint: "the bust line",
	measure.UpperChestGirth: "the width of the back", measure.ShoulderLength: "the shoulder", measure.SideWaistLength: "the underarm",
	measure.ShoulderToWaistBack: "the back shoulder", measure.ShoulderToWaistFront: "the front shoulder",
	measure.BustPointDistance: "the bust point", measure.WaistToHip: "the hip line", measure.WaistToKnee: "the length",
	measure.UpperArmGirth: "the width of the sleeve", measure.ElbowGirth: "the sleeve at the elbow", measure.HandGirth: "the sleeve at the wrist",
	measure.ArmLength: "the length of the sleeve",
}
