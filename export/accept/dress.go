package accept

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Dress is a whole dress of an invented body, as the workroom drafts it.
func Dress(method string) *pattern.Sheet {
	in := func(x float64) measure.Length { return measure.Inch * measure.Length(x) }
	return workroom.Draft(pattern.Job{
		Unit:   measure.In,
		Client: pattern.Client{Name: "Learner Four", Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}},
		Body: measure.NewBody(map[measure.ID]measure.Length{
			measure.BustGirth: in(36), measure.WaistGirth: in(28), measure.HipGirth: in(39), measure.NeckBaseGirth: in(14.5),
			measure.AcrossShoulders: in(15), measure.ShoulderDrop: in(1.5), measure.BackNeckToWaist: in(16),
			measure.SideNeckToWaist: in(17.25), measure.SideNeckToBustPoint: in(10.25), measure.BustPointDistance: in(7.25),
			measure.WaistToHip: in(8), measure.AcrossFront: in(12.75), measure.AcrossBack: in(13.5),
		}),
		Style: pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{pattern.Method: pattern.PickValue(method)}),
	})
}
