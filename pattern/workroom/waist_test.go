package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

type waistDart struct {
	Centre float64    `json:"centre"`
	Intake float64    `json:"intake"`
	Top    [2]float64 `json:"top"`
	Left   [2]float64 `json:"left"`
	Right  [2]float64 `json:"right"`
	Foot   [2]float64 `json:"foot"`
}

// TestWaistShaping holds the waist darts and the shaped centre back to their
// figures.
func TestWaistShaping(t *testing.T) {
	var ref map[string]struct {
		Front  *waistDart   `json:"front_dart"`
		Back   []waistDart  `json:"back_darts"`
		Centre figure.Curve `json:"centre_back"`
		Girth  float64      `json:"waist_girth"`
	}
	figure.StylesP36(t).Group(t, "waist_shaping", &ref)
	for _, kind := range []string{"none", "fisheye", "two_back", "shaped_back"} {
		t.Run(kind, func(t *testing.T) {
			want := ref[kind]
			s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"waist_shaping": kind}))
			require.Empty(t, s.Refused)
			require.True(t, s.Complete)
			girth, _ := s.Girth("waist")
			require.InDelta(t, want.Girth, girth.Inches(), near)
			hold := func(piece pattern.PieceID, name string, d waistDart) {
				samePoint(t, s, piece, name+"_top", d.Top)
				samePoint(t, s, piece, name+"_inner", d.Left)
				samePoint(t, s, piece, name+"_outer", d.Right)
				samePoint(t, s, piece, name+"_foot", d.Foot)
			}
			darts := 0
			if want.Front != nil {
				hold(pattern.Front, "waist_dart", *want.Front)
				darts++
			}
			for i, d := range want.Back {
				hold(pattern.Back, []string{"waist_dart", "waist_dart_2"}[i], d)
				darts++
			}
			if len(want.Centre) > 0 {
				samePath(t, want.Centre.Path(), drawnLine(s, pattern.Back, "centre_back").Path[1:3], "centre back")
			}
			halves := 0
			for _, p := range s.Pieces {
				for _, d := range p.Darts {
					if d.Fisheye {
						halves++
						require.InDelta(t, d.Tip.Dist(d.Legs[0]), d.Tip.Dist(d.Legs[1]), 0.02)
						require.LessOrEqual(t, d.Intake.MM(), d.Tip.Dist(d.Cap)/5+0.02)
					}
				}
			}
			require.Equal(t, 2*darts, halves)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s %s", f.Check, f.Says.In(measure.In))
			}
		})
	}
}

// TestWaistRefusals: a dart that would point, and a centre seam pulled off
// the grain, are refused with a cure.
func TestWaistRefusals(t *testing.T) {
	for name, job := range map[string]pattern.Job{
		"wide front":  figure.Styled(t, map[pattern.ChoiceID]string{"waist_shaping": "fisheye"}).WithStyle("front_waist_dart", pattern.LengthValue(figure.In(1.5))),
		"wide centre": figure.Styled(t, map[pattern.ChoiceID]string{"waist_shaping": "shaped_back"}).WithStyle("centre_back_in", pattern.LengthValue(figure.In(1))).WithStyle("back_waist_dart", pattern.LengthValue(figure.In(2))),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}
