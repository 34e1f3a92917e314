package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
)

func sleeved(kind string) pattern.Job {
	return figure(pattern.Measured).WithStyle("sleeve", pattern.PickValue(kind)).
		WithBody(measure.ArmLength, 23*measure.Inch).WithBody(measure.ElbowGirth, 10*measure.Inch).WithBody(measure.HandGirth, 7.75*measure.Inch)
}

// edgesOf are the edges of that name of a piece, to be spoilt.
func edgesOf(t *testing.T, s *pattern.Sheet, id pattern.PieceID, name string) []*pattern.Edge {
	t.Helper()
	p, ok := s.Piece(id)
	require.True(t, ok)
	var out []*pattern.Edge
	for i := range p.Edges {
		if p.Edges[i].Name == name {
			out = append(out, &p.Edges[i])
		}
	}
	require.NotEmpty(t, out, name)
	return out
}

func shortened(mm float64) func(*pattern.Edge) {
	return func(e *pattern.Edge) { e.Stitch = e.Stitch.Part(0, e.Stitch.Length()-mm) }
}

// verdictOf is what a check says under a code; a pass where it says nothing.
func verdictOf(s *pattern.Sheet, code string) pattern.Verdict {
	for _, f := range truing.Run(s) {
		if f.Code == code {
			return f.Verdict
		}
	}
	return pattern.Pass
}

// Every sleeve as it is drafted passes; each of these faults is found.
func TestSleeveFaults(t *testing.T) {
	for _, kind := range []string{"cap", "short", "three_quarter", "long"} {
		s := workroom.Draft(sleeved(kind))
		require.True(t, s.Complete, kind)
		for _, f := range truing.Run(s) {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", kind, f.Says.In(measure.In))
			require.NotEqual(t, pattern.Advise, f.Verdict, "%s: %s", kind, f.Says.In(measure.In))
		}
	}
	for name, c := range map[string]struct {
		kind, code string
		verdict    pattern.Verdict
		spoil      func(*pattern.Sheet)
	}{
		"cap too short": {"long", "cap_ease", pattern.Fail, func(s *pattern.Sheet) { shortened(40)(edgesOf(t, s, pattern.Sleeve, "front_cap")[0]) }},
		"cap sleeve too short": {"cap", "cap_ease", pattern.Fail, func(s *pattern.Sheet) {
			shortened(40)(edgesOf(t, s, pattern.Sleeve, "back_cap")[0])
		}},
		"cap too long": {"short", "cap_ease", pattern.Advise, func(s *pattern.Sheet) { shortened(25)(edgesOf(t, s, pattern.Front, "armhole")[0]) }},
		"notch of the sleeve": {"long", "cap_notch", pattern.Fail, func(s *pattern.Sheet) {
			p, _ := s.Piece(pattern.Sleeve)
			for i := range p.Notches {
				if p.Notches[i].Name == "back armhole" {
					p.Notches[i].At = p.Notches[i].At.Add(geom.Vector{X: -6, Y: 4})
				}
			}
		}},
		"notch of the dress": {"long", "cap_notch", pattern.Advise, func(s *pattern.Sheet) {
			p, _ := s.Piece(pattern.Front)
			for i := range p.Notches {
				if p.Notches[i].Name == "sleeve" {
					p.Notches[i].At = p.Notches[i].At.Add(geom.Vector{Y: -2})
				}
			}
		}},
		"top notch": {"short", "cap_askew", pattern.Advise, func(s *pattern.Sheet) {
			for i := range s.Marks {
				if s.Marks[i].Name == "top_notch" {
					s.Marks[i].At = s.Marks[i].At.Add(geom.Vector{X: 20})
				}
			}
		}},
		"seams": {"long", "sleeve_seams", pattern.Fail, func(s *pattern.Sheet) { shortened(5)(edgesOf(t, s, pattern.Sleeve, "back_seam")[0]) }},
		"hem": {"long", "sleeve_hem", pattern.Fail, func(s *pattern.Sheet) {
			e := edgesOf(t, s, pattern.Sleeve, "hem")[0]
			e.Stitch = geom.Lines(e.Stitch.Start(), e.Stitch.End())
		}},
	} {
		s := workroom.Draft(sleeved(c.kind))
		require.Equal(t, pattern.Pass, verdictOf(s, c.code), name)
		c.spoil(s)
		require.Equal(t, c.verdict, verdictOf(s, c.code), name)
	}
}

// What she chose herself is judged, and the cure cures.
func TestSleeveCures(t *testing.T) {
	in := func(x float64) pattern.Value { return pattern.LengthValue(measure.Length(x) * measure.Inch) }
	for code, job := range map[string]pattern.Job{
		"cap_ease":     sleeved("long").WithStyle("cap_height", in(6)),
		"cap_high":     sleeved("short").WithStyle("ease_upper_arm", in(1.5)).WithStyle("cap_ease", in(1.75)).WithStyle("armhole_depth", in(8.5)),
		"cap_low":      sleeved("short").WithStyle("ease_upper_arm", in(3)).WithStyle("cap_ease", in(0.25)).WithStyle("armhole_depth", in(7.625)).WithStyle("full_arm", in(0)),
		"sleeve_tight": sleeved("long").WithStyle("ease_upper_arm", in(1)),
	} {
		s := workroom.Draft(job)
		require.True(t, s.Complete, code)
		f, found := find(s, code)
		require.True(t, found, code)
		require.Equal(t, pattern.Advise, f.Verdict)
		require.NotNil(t, f.Try, code)
		after := workroom.Draft(job.WithStyle(pattern.ChoiceID(f.Input), *f.Try))
		_, still := find(after, code)
		require.False(t, still, f.Cure.In(measure.In))
	}
}
