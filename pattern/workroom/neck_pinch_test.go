package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestNeckPinch: what is pinched out of the neck goes into the dart. The neck
// is shorter by it, shoulder, armhole and sides are as they were, and the angle
// at the bust point grows by just that of the pinch.
func TestNeckPinch(t *testing.T) {
	for _, neck := range []string{"round", "v", "square", "sweetheart", "boat", "slit"} {
		job := figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": neck})
		was := workroom.Draft(job)
		s := workroom.Draft(job.WithStyle("neck_pinch", pattern.LengthValue(figure.In(0.375))))
		require.Empty(t, s.Refused, neck)
		sound(t, s, neck)
		require.InDelta(t, lengthOf(t, was, pattern.Front, "neck")-0.375, lengthOf(t, s, pattern.Front, "neck"), 0.25, neck)
		for _, edge := range []string{"shoulder", "armhole", "side"} {
			require.InDelta(t, lengthOf(t, was, pattern.Front, edge), lengthOf(t, s, pattern.Front, edge), 0.02, "%s: %s", neck, edge)
		}
		require.Equal(t, was.Girths[2:], s.Girths[2:], "bust, waist, hip and hem stay")
		require.Greater(t, lengthOf(t, s, pattern.Front, "dart_intake"), lengthOf(t, was, pattern.Front, "dart_intake")+0.2, neck)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", neck, f.Says.In(measure.In))
			require.NotEqual(t, "neck_gape", f.Code, neck)
		}
	}
	for what, job := range map[string]pattern.Job{
		"no dart": figure.Styled(t, nil).WithBody(measure.SideNeckToWaist, figure.In(16.25)),
		"funnel":  figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "funnel"}),
	} {
		s := workroom.Draft(job.WithStyle("neck_pinch", pattern.LengthValue(figure.In(0.25))))
		require.NotEmpty(t, s.Refused, what)
		require.Equal(t, "neck_pinch", s.Refused[0].Input, what)
	}
}

// TestNeckPinchOnWomen pinches neck and armhole of women of the survey, by both
// methods, under every neckline and with every dart.
func TestNeckPinchOnWomen(t *testing.T) {
	inEveryStyle(t, func(job pattern.Job, n int) pattern.Job {
		return job.WithStyle("neck_pinch", pattern.LengthValue(figure.In(float64(n%3+1)/4))).
			WithStyle("armhole_pinch", pattern.LengthValue(figure.In(float64(n%2)/4)))
	}, func(id pattern.ChoiceID, option string) bool { return option == "funnel" || id == "closure" })
}
