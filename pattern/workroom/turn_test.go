package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// dartPlaces are all places that the bust dart may lie in.
func dartPlaces() []string {
	c, _ := workroom.FindChoice(pattern.Dress, "bust_dart")
	var out []string
	for _, o := range c.Options {
		out = append(out, o.Value)
	}
	return out
}

// dartIn is a job with the bust dart in a place, and with the seam that the
// place wants.
func dartIn(job pattern.Job, place string) pattern.Job {
	switch place {
	case "waist", "side_and_waist":
		job = job.WithStyle("waist_seam", pattern.SwitchValue(true))
	case "centre_front":
		job = job.WithStyle("front_seam", pattern.SwitchValue(true))
	}
	return job.WithStyle("bust_dart", pattern.PickValue(place))
}

// drawnFront reads the marks of a front.
type drawnFront struct{ s *pattern.Sheet }

func (f drawnFront) at(name string) geom.Point {
	p, _ := f.s.Point(pattern.Front, name)
	return p
}

func (f drawnFront) line(name string) geom.Path { return drawnLine(f.s, pattern.Front, name).Path }

// underarm is where the front is cut, a pinch taken out.
func (f drawnFront) underarm() geom.Point {
	if p, ok := f.s.Point(pattern.Front, "underarm_pinched"); ok {
		return p
	}
	return f.at("underarm")
}

// upper is the front above the waist as it was drawn with its dart in a place:
// the legs to the bust point, and the side with its corner, before it is
// smoothed.
func (f drawnFront) upper(place string) geom.Path {
	bust, centre := f.at("bust_point"), geom.Point{Y: f.at("waist").Y}
	legs := geom.Lines(f.at("dart_fixed"), bust, f.at("dart_moved"))
	side := geom.Lines(f.at("underarm_turned"), f.at("dart_corner"), f.at("waist"), centre)
	body := func() geom.Path { return f.line("neck").Then(f.line("shoulder")).Then(f.line("armhole")) }
	switch place {
	case detail.FrenchDart:
		return body().Then(geom.Lines(f.underarm(), f.at("dart_corner"), f.at("dart_moved"), bust, f.at("dart_fixed"), f.at("waist"), centre))
	case detail.ArmholeDart:
		return f.line("neck").Then(f.line("shoulder")).Then(f.line("armhole_upper")).Then(legs).Then(f.line("armhole")).Then(side)
	case detail.ShoulderDart:
		return f.line("neck").Then(f.line("shoulder")).Then(legs).Then(f.line("shoulder_outer")).Then(f.line("armhole")).Then(side)
	case detail.NeckDart:
		return f.line("neck").Then(legs).Then(f.line("neck_outer")).Then(f.line("shoulder")).Then(f.line("armhole")).Then(side)
	case detail.CentreDart:
		return body().Then(side).Then(geom.Lines(centre)).Then(legs)
	case detail.WaistDart:
		return body().Then(geom.Lines(f.underarm(), f.at("dart_corner"), f.at("waist_turned"), f.at("dart_moved"), bust, f.at("dart_fixed"), centre))
	case detail.SplitDart:
		return body().Then(geom.Lines(f.underarm(), f.at("dart_upper"), bust, f.at("dart_lower"), f.at("waist_turned"), f.at("dart_moved"), bust, f.at("dart_fixed"), centre))
	}
	return nil
}

// sideUpper is the same with the dart left in the side, brought to the bust
// point.
func (f drawnFront) sideUpper() (geom.Path, detail.Bust) {
	back := func(name string) geom.Point { p, _ := f.s.Point(pattern.Back, name); return p }
	b := detail.Bust{
		Point: f.at("bust_point"), Underarm: f.underarm(), Waist: f.at("waist"), Upper: f.at("dart_upper"), Lower: f.at("dart_lower"),
		Swings: rule.SeamSwings(f.s.Known) != 0,
	}
	if _, pinched := f.s.Point(pattern.Front, "underarm_pinched"); !pinched {
		b = b.AtBust(rule.DartIntake(f.s.Known).Result(), back("underarm").Dist(back("waist")))
	}
	return f.line("neck").Then(f.line("shoulder")).Then(f.line("armhole")).
		Then(geom.Lines(b.Underarm, b.Upper, b.Point, b.Lower, b.Waist, geom.Point{Y: b.Waist.Y})), b
}

// areaOf is the area inside a line that is closed by a straight one.
func areaOf(p geom.Path) float64 { return math.Abs(p.Outline(0.005).Area()) }

// TestTurningKeepsArea: wherever the dart opens, the closed front keeps its
// area within a ten-thousandth, and the dart its angle; at the edge it is as
// wide as the distance makes it. Over many women and every place there is.
func TestTurningKeepsArea(t *testing.T) {
	drawn := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		job := figure.Draft{Measures: base}.Job(pattern.Measured)
		for _, id := range job.Body.IDs() {
			usual, _ := job.Body.Get(id)
			job = job.WithBody(id, measure.Length(usual.MM()*rapid.Float64Range(0.9, 1.1).Draw(t, string(id))))
		}
		back, _ := job.Body.Get(measure.BackNeckToWaist)
		job = job.WithBody(measure.SideNeckToWaist, back+figure.In(rapid.Float64Range(1.2, 3.5).Draw(t, "longer")))
		if rapid.Bool().Draw(t, "pinch") {
			job = job.WithStyle("armhole_pinch", pattern.LengthValue(figure.In(rapid.Float64Range(0, 0.75).Draw(t, "pinched"))))
		}
		plain := workroom.Draft(job)
		if !plain.Complete {
			return
		}
		before, b := drawnFront{plain}.sideUpper()
		want := areaOf(before)
		for _, place := range dartPlaces() {
			s := workroom.Draft(dartIn(job, place))
			if place == detail.SideDartPlace || !s.Complete {
				continue
			}
			drawn[place]++
			f := drawnFront{s}
			if got := areaOf(f.upper(place)); math.Abs(got-want) > want*1e-4 {
				t.Fatalf("%s: the front has %.1f, with the dart in the side %.1f", place, got, want)
			}
			bust, angle := f.at("bust_point"), b.Angle()
			if place == detail.SplitDart {
				share, _ := s.Known.Setting("dart_share")
				angle *= share.Value.Number / 100
			}
			u, v := bust.To(f.at("dart_fixed")), bust.To(f.at("dart_moved"))
			if got := math.Abs(math.Atan2(u.Cross(v), u.Dot(v))); math.Abs(got-angle) > 1e-6 {
				t.Fatalf("%s: opens %v at the bust point, in the side %v", place, got, angle)
			}
			wide := f.at("dart_fixed").Dist(f.at("dart_moved"))
			if math.Abs(wide-2*u.Len()*math.Sin(angle/2)) > 1e-6 {
				t.Fatalf("%s: is %v wide at %v from the bust point", place, wide, u.Len())
			}
			for _, st := range s.Steps {
				if st.ID == "front.dart_turn" && math.Abs(st.Sum.Result().MM()-wide) > 1e-6 {
					t.Fatalf("%s: the step says %v, the dart is %v wide", place, st.Sum.Result(), wide)
				}
			}
		}
	})
	for _, place := range dartPlaces() {
		if place != detail.SideDartPlace {
			require.Greater(t, drawn[place], 10, place)
		}
	}
}
