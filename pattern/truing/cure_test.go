package truing_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
)

func find(s *pattern.Sheet, code string) (pattern.Finding, bool) {
	for _, f := range s.Findings {
		if f.Code == code {
			return f, true
		}
	}
	return pattern.Finding{}, false
}

// figure is a body of bust 36 as a client.
func figure(method string) pattern.Job {
	job := pattern.Job{Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.Height: 66 * measure.Inch, measure.BustGirth: 36 * measure.Inch, measure.WaistGirth: 28 * measure.Inch,
		measure.HipGirth: 38 * measure.Inch, measure.NeckBaseGirth: 14.5 * measure.Inch, measure.AcrossShoulders: 15 * measure.Inch,
		measure.AcrossFront: 12.75 * measure.Inch, measure.AcrossBack: 13.75 * measure.Inch, measure.ShoulderDrop: 1.5 * measure.Inch,
		measure.BackNeckToWaist: 16 * measure.Inch, measure.SideNeckToWaist: 17.75 * measure.Inch, measure.SideNeckToBustPoint: 10.25 * measure.Inch,
		measure.BustPointDistance: 7.25 * measure.Inch, measure.WaistToHip: 8 * measure.Inch, measure.WaistToKnee: 23 * measure.Inch,
		measure.WaistToFloor: 41 * measure.Inch, measure.UpperArmGirth: 11 * measure.Inch, measure.HeadGirth: 22 * measure.Inch,
	})}
	return job.WithStyle(pattern.Method, pattern.PickValue(method))
}

// A cure that is offered must cure: the same job with it has that finding no
// more.
func TestEveryTryCures(t *testing.T) {
	changes := map[pattern.ChoiceID][]float64{
		"side_dart_below": {1, 1.5, 4}, "dart_tip_back": {0.5, 2}, "neck_widening": {0, 1.5, 2}, "shoulder_inset": {0, 0.5, 1},
		"ease_hip": {0, 1, 1.75}, "ease_bust": {0, 4}, "slit_height": {0, 2, 4, 11, 14}, "zip_length": {1, 7, 12, 18, 20},
		"side_waist_limit": {0.5, 1}, "hem_peg": {0, 1.5}, "front_neck_depth": {2.5, 6}, "length": {30, 36, 45},
		"facing_armhole_width": {1, 3}, "armhole_depth": {6.5, 9},
	}
	tried := 0
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		for id, values := range changes {
			for _, v := range values {
				tried += cures(t, figure(method).WithStyle(id, pattern.LengthValue(measure.Length(v*25.4))), string(id))
			}
		}
	}
	require.Greater(t, tried, 20)
}

func cures(t *testing.T, job pattern.Job, what string) (tried int) {
	t.Helper()
	s := workroom.Draft(job)
	for _, f := range s.Findings {
		if f.Try == nil {
			continue
		}
		tried++
		after := workroom.Draft(job.WithStyle(pattern.ChoiceID(f.Input), *f.Try))
		require.True(t, after.Complete, "%s, %s: %s", what, f.Code, f.Cure.In(job.Unit))
		g, still := find(after, f.Code)
		require.False(t, still, "%s, %s (%s): %s %s THEN %s", job.Style.Method(), f.Code, what, f.Says.In(job.Unit), f.Cure.In(job.Unit), g.Says.In(job.Unit))
	}
	return tried
}

func TestEveryTryCuresWomen(t *testing.T) {
	for i, w := range ansur.Load(t) {
		if i%3 != 0 {
			continue
		}
		for _, method := range []string{pattern.Measured, pattern.Thumb} {
			for _, u := range []measure.Unit{measure.In, measure.Cm} {
				job := jobOf(w, method)
				job.Unit = u
				cures(t, job, fmt.Sprint("row ", w.Row))
			}
		}
	}
}
