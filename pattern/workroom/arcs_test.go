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

// TestArcs: a belly, then a seat. Each half goes round its own part of her,
// girths stay, and sides meet.
func TestArcs(t *testing.T) {
	for name, c := range map[string]struct{ waist, hip float64 }{"belly": {15.5, 19.5}, "seat": {13.5, 17.5}, "waist alone": {15, 0}, "hip alone": {0, 18}} {
		job := figure.Styled(t, nil)
		if c.waist > 0 {
			job = job.WithBody(measure.FrontWaistArc, figure.In(c.waist))
		}
		if c.hip > 0 {
			job = job.WithBody(measure.FrontHipArc, figure.In(c.hip))
		}
		s := workroom.Draft(job)
		require.Empty(t, s.Refused, name)
		sound(t, s, name)
		require.InDelta(t, 40, girthOf(t, s, "hip"), 1e-6, name)
		require.InDelta(t, 38.5, girthOf(t, s, "bust"), 1e-6, name)
		require.GreaterOrEqual(t, girthOf(t, s, "waist"), 30.0-1e-6, name)
		hip, _ := s.Point(pattern.Front, "hip")
		if c.hip > 0 {
			require.InDelta(t, c.hip/2+0.5, hip.X/25.4, 1e-6, name)
		}
		if c.waist > 0 {
			waist, _ := s.Point(pattern.Front, "waist")
			require.GreaterOrEqual(t, waist.X/25.4, c.waist/2+0.5-1e-6, name)
		}
		require.NotContains(t, codes(s), "seam_swings", name)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s %s", name, f.Code, f.Says.In(measure.In))
		}
	}
}

// TestHalfArcs: arcs of just half leave the quarters as they are.
func TestHalfArcs(t *testing.T) {
	job := figure.Styled(t, nil)
	want := workroom.Draft(job)
	got := workroom.Draft(job.WithBody(measure.FrontHipArc, figure.In(19)).WithBody(measure.FrontWaistArc, figure.In(14)))
	require.Equal(t, want.Pieces, got.Pieces)
}

// TestArcsFar: a seam that swings far is advised on, one that no body has is
// refused.
func TestArcsFar(t *testing.T) {
	job := figure.Styled(t, nil)
	f, ok := codes(workroom.Draft(job.WithBody(measure.FrontHipArc, figure.In(21))))["seam_swings"]
	require.True(t, ok)
	require.NotEmpty(t, f.Cure.In(measure.In))
	s := workroom.Draft(job.WithBody(measure.FrontHipArc, figure.In(24)))
	require.NotEmpty(t, s.Refused)
	require.Equal(t, "R21", s.Refused[0].Code)
}

// TestArcsOnWomen gives women of the survey a belly or a seat, also those
// without a dart, by both methods and in turning styles.
func TestArcsOnWomen(t *testing.T) {
	women := ansur.Load(t)
	drafted, refused := 0, map[string]int{}
	for i := 0; i < len(women); i += everyWoman {
		hip, _ := women[i].Body.Get(measure.HipGirth)
		waist, _ := women[i].Body.Get(measure.WaistGirth)
		more := figure.In(float64(i%7-3) / 2)
		job := jobOf(women[i], []string{pattern.Measured, pattern.Direct}[i/everyWoman%2]).
			WithBody(measure.FrontHipArc, hip/2+more).WithBody(measure.FrontWaistArc, waist/2+more)
		if i%5 == 0 {
			back, _ := job.Body.Get(measure.BackNeckToWaist)
			job = job.WithBody(measure.SideNeckToWaist, back+figure.In(0.25)) // no dart
		}
		for id, options := range styles() {
			if (i/everyWoman+len(id))%5 != 0 || id == "closure" {
				continue
			}
			o := options[i%len(options)]
			if o == "funnel" {
				continue
			}
			s := workroom.Draft(job.WithStyle(id, pattern.PickValue(o)))
			drafted++
			if len(s.Refused) > 0 {
				refused[s.Refused[0].Code]++
				continue
			}
			sound(t, s, string(id)+" "+o)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d %s %s: %s %s", women[i].Row, id, o, f.Code, f.Says.In(measure.In))
			}
		}
	}
	t.Logf("%d drafted, refused %v", drafted, refused)
}
