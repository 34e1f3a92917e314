package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
)

// jobOf is the job of a woman of the ANSUR II survey (2012) with all
// defaults but the length that goes with her knee.
func jobOf(w ansur.Woman, method string) pattern.Job {
	return pattern.Job{Body: w.Body, Style: pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{
		pattern.Method: pattern.PickValue(method), "length": pattern.LengthValue(w.Length),
	})}
}

// TestBodies drafts every woman of the survey by both methods: each draft is
// whole, its outlines are simple, its sides meet, its girths are body and
// ease. Nothing here says that the dress fits: some measurements are built.
func TestBodies(t *testing.T) {
	women := ansur.Load(t)
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		t.Run(method, func(t *testing.T) {
			for _, w := range women {
				s := workroom.Draft(jobOf(w, method))
				for _, r := range s.Refused {
					t.Errorf("row %d: %s %s", w.Row, r.Code, r.Says.In(measure.In))
				}
				if !s.Complete {
					t.Fatalf("row %d is not complete", w.Row)
				}
				whole(t, w, s)
				girths(t, w, s)
			}
		})
	}
}

func whole(t *testing.T, w ansur.Woman, s *pattern.Sheet) {
	t.Helper()
	require.Len(t, s.Pieces, 6)
	for _, p := range s.Pieces {
		stitch, cut := p.Stitch.Outline(0.02), p.CutLine.Outline(0.02)
		if !stitch.Simple() || !cut.Simple() {
			t.Errorf("row %d: %s crosses itself (stitch %v, cut %v)", w.Row, p.ID, stitch.Simple(), cut.Simple())
		}
		if stitch.Area() <= 0 || cut.Area() < stitch.Area() {
			t.Errorf("row %d: %s has areas %.0f and %.0f", w.Row, p.ID, stitch.Area(), cut.Area())
		}
	}
	front, _ := s.SewnDimension(pattern.Front, "side")
	back, _ := s.SewnDimension(pattern.Back, "side")
	if d := math.Abs((front.Length - back.Length).Inches()); d > 1.0/16 {
		t.Errorf("row %d: sides differ by %.3f in", w.Row, d)
	}
}

func girths(t *testing.T, w ansur.Woman, s *pattern.Sheet) {
	t.Helper()
	spare, _ := s.Dimension(pattern.Front, "waist_spare")
	for name, c := range map[string]struct {
		id    measure.ID
		ease  pattern.ChoiceID
		spare measure.Length
	}{
		"bust": {measure.BustGirth, "ease_bust", 0}, "hip": {measure.HipGirth, "ease_hip", 0},
		"waist": {measure.WaistGirth, "ease_waist", 4 * spare.Length},
	} {
		want, _ := w.Body.Get(c.id)
		if s.Method == pattern.Measured {
			want += s.Known.Length(c.ease) + c.spare
		}
		got, _ := s.Girth(name)
		if math.Abs((got - want).MM()) > 0.1 {
			t.Errorf("row %d: %s is %.2f mm, want %.2f", w.Row, name, got.MM(), want.MM())
		}
	}
}

// TestBodyMeans holds the means of the measured drafts, in millimetres, to
// the figures of a second program that drafted the same women.
func TestBodyMeans(t *testing.T) {
	women := ansur.Load(t)
	sums := map[string]float64{}
	gaveWay := map[pattern.ChoiceID]int{}
	for _, w := range women {
		s := workroom.Draft(jobOf(w, pattern.Measured))
		sums["armhole_depth"] += s.Known.Length("armhole_depth").MM()
		for _, name := range []string{"armhole", "neck", "waist", "hip", "hem"} {
			g, _ := s.Girth(name)
			sums[name] += g.MM()
		}
		side, _ := s.Dimension(pattern.Front, "side")
		drawn, _ := s.Dimension(pattern.Front, "side_drawn")
		sums["side"] += side.Length.MM()
		sums["side_drawn"] += drawn.Length.MM()
		for _, set := range s.Settings {
			if set.Default.GaveWay {
				gaveWay[set.ID]++
			}
		}
	}
	for name, want := range map[string]float64{
		"armhole_depth": 191.79, "armhole": 428.89, "neck": 522.21, "waist": 890.58, "hip": 1072.58, "hem": 996.38,
		"side": 797.52, "side_drawn": 797.78,
	} {
		require.InDelta(t, want, sums[name]/float64(len(women)), 0.02, name)
	}
	for id, want := range map[pattern.ChoiceID]int{
		"side_dart_below": 656, "ease_hip": 105, "neck_widening": 72, "shoulder_inset": 1, "armhole_depth": 31,
	} {
		require.InDelta(t, want, gaveWay[id], 2, id)
	}
}
