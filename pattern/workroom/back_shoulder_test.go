package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestBackShoulderDart: a dart in the back shoulder takes up what her back is
// longer; with it closed the shoulder is as long as the front's and straight.
func TestBackShoulderDart(t *testing.T) {
	job := figure.Styled(t, nil)
	darted := job.WithStyle("back_shoulder", pattern.PickValue("dart"))
	for long, want := range map[float64]float64{0: 0.5, 15.25: 0.5, 15.5: 0.375, 15.75: 0.5, 16: 0.75, 16.5: 0.75} {
		j := darted
		if long > 0 {
			j = j.WithBody(measure.ShoulderToWaistBack, figure.In(long))
		}
		s := workroom.Draft(j)
		require.Empty(t, s.Refused)
		require.Zero(t, s.Known.Length("back_shoulder_ease"), "a dart, and no ease beside it")
		require.InDelta(t, want, s.Known.Length("back_shoulder_dart").Inches(), 1e-9, "%v", long)
		require.NotContains(t, codes(s), "back_round", "%v", long)
		sound(t, s, "darted")
		back, _ := s.Piece(pattern.Back)
		require.Len(t, back.Darts, 1)
		d := back.Darts[0]
		require.InDelta(t, d.Tip.Dist(d.Legs[0]), d.Tip.Dist(d.Legs[1]), 1e-9)
		require.InDelta(t, want, d.Intake.Inches(), 1e-9)
		require.InDelta(t, lengthOf(t, s, pattern.Front, "shoulder"), back.Along("shoulder").Inches(), 1e-9)
		require.InDelta(t, lengthOf(t, s, pattern.Front, "shoulder"), lengthOf(t, s, pattern.Back, "shoulder"), 1e-9)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s", f.Says.In(measure.In))
			require.NotEqual(t, "shoulder_seams", f.Code)
			require.NotEqual(t, "armhole_join", f.Code)
		}
	}
	// A rounder back is sent from ease to the dart, and that cures it; the
	// roundest to the direct block.
	round := job.WithBody(measure.ShoulderToWaistBack, figure.In(16.25))
	f, ok := codes(workroom.Draft(round))["back_round"]
	require.True(t, ok)
	require.Equal(t, "back_shoulder", f.Input)
	require.NotContains(t, codes(workroom.Draft(round.WithStyle("back_shoulder", *f.Try))), "back_round")
	f, ok = codes(workroom.Draft(darted.WithBody(measure.ShoulderToWaistBack, figure.In(16.75))))["back_round"]
	require.True(t, ok)
	require.Equal(t, string(pattern.Method), f.Input)
	// Plain, nothing is done for it, whatever was chosen before.
	plain := workroom.Draft(round.WithStyle("back_shoulder", pattern.PickValue("none")).WithStyle("back_shoulder_ease", pattern.LengthValue(figure.In(0.25))))
	require.InDelta(t, lengthOf(t, plain, pattern.Front, "shoulder"), lengthOf(t, plain, pattern.Back, "shoulder"), 1e-9)
	require.NotContains(t, codes(plain), "shoulder_seams")
}

// TestBackShoulderDartFaults: legs of two lengths and an end that misses the
// seam are found.
func TestBackShoulderDartFaults(t *testing.T) {
	job := figure.Styled(t, nil).WithStyle("back_shoulder", pattern.PickValue("dart"))
	for code, spoil := range map[string]func(*pattern.Dart){
		"back_dart_legs": func(d *pattern.Dart) { d.Tip.X += 10 },
		"back_dart_cap":  func(d *pattern.Dart) { d.Cap.Y += 6 },
	} {
		s := workroom.Draft(job)
		require.NotContains(t, codes(s), code)
		back, _ := s.Piece(pattern.Back)
		spoil(&back.Darts[0])
		found := false
		for _, f := range truing.Run(s) {
			found = found || f.Code == code && f.Verdict == pattern.Fail
		}
		require.True(t, found, code)
	}
}

// TestBackShoulderDartRefused names why there is no room for it.
func TestBackShoulderDartRefused(t *testing.T) {
	for what, job := range map[string]pattern.Job{
		"panels":     figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": "armhole"}),
		"all in one": figure.Styled(t, map[pattern.ChoiceID]string{"facing": "all_in_one"}),
		"cut in":     figure.Styled(t, map[pattern.ChoiceID]string{"armhole_shape": "cut_in"}, "shoulder_inset"),
		"too wide":   figure.Styled(t, nil).WithStyle("back_shoulder_dart", pattern.LengthValue(figure.In(1.25))),
		"too short":  figure.Styled(t, nil).WithStyle("back_dart_length", pattern.LengthValue(figure.In(1.5))),
	} {
		s := workroom.Draft(job.WithStyle("back_shoulder", pattern.PickValue("dart")))
		require.NotEmpty(t, s.Refused, what)
		require.Equal(t, "R22", s.Refused[0].Code, what)
		reasoned(t, s)
	}
}

// TestBackShoulderDartOnWomen gives women of the survey the dart, with every
// sleeve, collar and neck.
func TestBackShoulderDartOnWomen(t *testing.T) {
	inEveryStyle(t, func(job pattern.Job, n int) pattern.Job {
		return job.WithStyle("back_shoulder", pattern.PickValue("dart")).
			WithStyle("back_shoulder_dart", pattern.LengthValue(figure.In(float64(3+n%4)/8))).
			WithStyle("back_dart_length", pattern.LengthValue(figure.In(2.5+float64(n%4)/2)))
	}, func(id pattern.ChoiceID, _ string) bool { return id == "closure" })
}
