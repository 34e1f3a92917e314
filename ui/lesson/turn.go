package lesson

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
)

// Turn is the bust dart in a place, beside the same dart in the side: what the
// draft drew of it.
type Turn struct {
	Place   string // as the choice has it
	Title   string
	Sheet   *pattern.Sheet // with the dart there
	Side    *pattern.Sheet // with the dart in the side
	Wide    measure.Length // at the edge
	Far     measure.Length // the edge from the bust point
	Degrees float64        // at the bust point
	Drawn   bool           // else Sheet says why not
}

// Turned is the job with the bust dart in a place, and with the seam that the
// place ends in. Seams that would take the dart themselves are left out.
func Turned(job pattern.Job, place string) pattern.Job {
	switch place {
	case "waist", "side_and_waist":
		job = job.WithStyle("waist_seam", pattern.SwitchValue(true))
	case "centre_front":
		job = job.WithStyle("front_seam", pattern.SwitchValue(true))
	}
	if v, ok := job.Style.Get("panel_seam"); ok && v.Pick != "none" {
		job = job.WithoutStyle("panel_seam")
	}
	return job.WithStyle("bust_dart", pattern.PickValue(place))
}

// TurnOf turns the dart of a job to a place. draft is how a job is drafted:
// [workroom.Draft], or one that remembers.
func TurnOf(job pattern.Job, place string, draft func(pattern.Job) *pattern.Sheet) Turn {
	t := Turn{Place: place, Title: place, Sheet: draft(Turned(job, place)), Side: draft(Turned(job, "side"))}
	if c, ok := workroom.FindChoice(job.Style.Garment(), "bust_dart"); ok {
		for _, o := range c.Options {
			if o.Value == place {
				t.Title = o.Title
			}
		}
	}
	fixed, moved := "dart_fixed", "dart_moved"
	if place == "side" {
		fixed, moved = "dart_lower", "dart_upper"
	}
	bust, a := point(t.Sheet, "bust_point"), point(t.Sheet, fixed)
	b := point(t.Sheet, moved)
	if bust == nil || a == nil || b == nil {
		return t
	}
	u, v := bust.To(*a), bust.To(*b)
	t.Far, t.Wide = measure.Length(v.Len()), measure.Length(a.Dist(*b))
	t.Degrees = math.Abs(math.Atan2(u.Cross(v), u.Dot(v))) * 180 / math.Pi
	t.Drawn = true
	return t
}

// point is a standing point of the front.
func point(s *pattern.Sheet, name string) *geom.Point {
	if at, ok := s.Point(pattern.Front, name); ok {
		return &at
	}
	return nil
}

// turnWaits says why no dart can be turned on a sheet; empty where one can.
func turnWaits(sheet *pattern.Sheet) measure.Sentence {
	if _, ok := workroom.FindChoice(sheet.Garment, "bust_dart"); !ok {
		return measure.Tell("it has no bust dart")
	}
	turned := workroom.Draft(Turned(sheet.Job, "french"))
	for _, r := range turned.Refused {
		if r.Step == TurnStep {
			return r.Says
		}
	}
	for i := range turned.Steps {
		if st := &turned.Steps[i]; st.ID == TurnStep && !st.Drawn {
			return st.Waits
		}
	}
	return measure.Sentence{}
}

// TurnStep is the step that turns the dart to another place.
const TurnStep = "front.dart_turn"
