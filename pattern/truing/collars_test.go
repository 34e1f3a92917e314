package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

func picked(picks map[pattern.ChoiceID]string) pattern.Job {
	job := figure(pattern.Measured)
	for id, p := range picks {
		job = job.WithStyle(id, pattern.PickValue(p))
	}
	return job
}

// Every collar and placket as it is drafted passes; each of these faults is
// found.
func TestCollarFaults(t *testing.T) {
	collar := func(kind string) pattern.Job {
		return picked(map[pattern.ChoiceID]string{"collar": kind, "closure": "placket"})
	}
	for name, c := range map[string]struct {
		code    string
		verdict pattern.Verdict
		job     pattern.Job
		spoil   func(*pattern.Sheet)
	}{
		"short collar": {"collar_neck", pattern.Fail, collar("stand"), func(s *pattern.Sheet) { shortened(10)(edgesOf(t, s, pattern.Collar, "front_neck")[0]) }},
		"short under collar": {"collar_neck", pattern.Advise, collar("convertible"), func(s *pattern.Sheet) {
			shortened(4)(edgesOf(t, s, pattern.UnderCollar, "back_neck")[0])
		}},
		"short band": {"placket_fit", pattern.Fail, collar("flat"), func(s *pattern.Sheet) { shortened(5)(edgesOf(t, s, pattern.Placket, "placket")[0]) }},
		"no button at the bust": {"placket_gapes", pattern.Advise, collar("none"), func(s *pattern.Sheet) {
			p, _ := s.Piece(pattern.Placket)
			for i := range p.Holes {
				p.Holes[i].Y += 40
			}
		}},
	} {
		s := workroom.Draft(c.job)
		require.True(t, s.Complete, name)
		require.Equal(t, pattern.Pass, verdictOf(s, c.code), name)
		c.spoil(s)
		require.Equal(t, c.verdict, verdictOf(s, c.code), name)
	}
}

// A standing collar round a wide neck, and a placket that ends too high, are
// told; the cure lets her in.
func TestCollarAdvice(t *testing.T) {
	wide := picked(map[pattern.ChoiceID]string{"collar": "stand"}).WithStyle("front_neck_depth", pattern.LengthValue(5.5*measure.Inch))
	f, found := find(workroom.Draft(wide), "collar_stands_off")
	require.True(t, found)
	require.Equal(t, "front_neck_depth", f.Input)
	flat := wide.WithStyle("collar", pattern.PickValue("flat"))
	_, found = find(workroom.Draft(flat), "collar_stands_off")
	require.False(t, found)

	short := picked(map[pattern.ChoiceID]string{"closure": "placket", "front_neckline": "jewel"}).WithStyle("placket_length", pattern.LengthValue(4*measure.Inch))
	s := workroom.Draft(short)
	f, found = find(s, "body_passage")
	require.True(t, found)
	require.Equal(t, pattern.Fail, f.Verdict)
	require.Positive(t, cures(t, short, "short placket"))
}
