package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestRoundBack: a back that is longer from the shoulder gets a longer back
// shoulder, which truing expects; a very round one is sent to the direct
// block, and one that cannot be eased is refused.
func TestRoundBack(t *testing.T) {
	job := figure.Styled(t, nil)
	plain := workroom.Draft(job)
	require.Zero(t, plain.Known.Length("back_shoulder_ease"))
	for long, want := range map[float64]float64{15.25: 0, 15.45: 0, 15.5: 0.125, 15.75: 0.25, 16: 0.375, 17: 0.375} {
		s := workroom.Draft(job.WithBody(measure.ShoulderToWaistBack, figure.In(long)))
		require.Empty(t, s.Refused)
		require.InDelta(t, want, s.Known.Length("back_shoulder_ease").Inches(), 1e-9, "%v", long)
		require.InDelta(t, lengthOf(t, plain, pattern.Back, "shoulder")+want, lengthOf(t, s, pattern.Back, "shoulder"), 1e-6)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s", f.Says.In(measure.In))
			require.NotEqual(t, "shoulder_seams", f.Code)
		}
		if long > 16.1 {
			f, ok := codes(s)["back_round"]
			require.True(t, ok)
			require.NotNil(t, f.Try)
		} else {
			require.NotContains(t, codes(s), "back_round")
		}
	}
	s := workroom.Draft(job.WithStyle("back_shoulder_ease", pattern.LengthValue(figure.In(0.75))))
	require.NotEmpty(t, s.Refused)
	require.Equal(t, "R22", s.Refused[0].Code)
}

// TestHighHip: where she measured it, the side goes out over the high hip,
// and the check that found it tight is content; both sides stay alike.
func TestHighHip(t *testing.T) {
	job := figure.Styled(t, nil)
	require.Zero(t, workroom.Draft(job.WithBody(measure.TopHipGirth, figure.In(35))).Known.Length("high_hip_out"))
	high := job.WithBody(measure.TopHipGirth, figure.In(37.5))
	tight := workroom.Draft(high.WithStyle("high_hip_out", pattern.LengthValue(0)))
	require.Contains(t, codes(tight), "high_hip")
	s := workroom.Draft(high)
	require.Positive(t, s.Known.Length("high_hip_out"))
	require.NotContains(t, codes(s), "high_hip")
	sound(t, s, "high hip")
	require.InDelta(t, girthOf(t, tight, "hip"), girthOf(t, s, "hip"), 1e-9)
	require.Contains(t, codes(workroom.Draft(job.WithBody(measure.TopHipGirth, figure.In(41)))), "high_hip")
}

// TestHeels lift the hem from the floor, and so does the step's need.
func TestHeels(t *testing.T) {
	job := figure.Styled(t, nil).WithBody(measure.Height, figure.In(66)).WithBody(measure.WaistToFloor, figure.In(41.25))
	need := func(j pattern.Job) float64 {
		for _, f := range workroom.Draft(j).Findings {
			if f.Check == "walking" {
				return f.Want
			}
		}
		return 0
	}
	require.Less(t, need(job.WithStyle("heel_height", pattern.LengthValue(figure.In(3)))), need(job))
}

// TestFiguresOnWomen gives women of the survey a round back and a high hip.
func TestFiguresOnWomen(t *testing.T) {
	women := ansur.Load(t)
	for i := 0; i < len(women); i += everyWoman {
		get := func(id measure.ID) measure.Length { l, _ := women[i].Body.Get(id); return l }
		job := jobOf(women[i], pattern.Measured).
			WithBody(measure.ShoulderToWaistBack, get(measure.BackNeckToWaist)+figure.In(0.75)-get(measure.ShoulderDrop)+figure.In(float64(i%4)/4)).
			WithBody(measure.TopHipGirth, (get(measure.WaistGirth)+2*get(measure.HipGirth))/3+figure.In(float64(i%3)))
		for _, waist := range []string{"none", "fisheye", "shaped_back"} {
			s := workroom.Draft(job.WithStyle("waist_shaping", pattern.PickValue(waist)))
			if len(s.Refused) > 0 {
				continue
			}
			outlinesSound(t, s, waist)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d: %s %s", women[i].Row, f.Code, f.Says.In(measure.In))
			}
		}
	}
}
