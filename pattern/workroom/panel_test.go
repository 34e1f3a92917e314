package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestPanels holds the panel seams to their figures: every handle of all four
// edges, their lengths and the notches between which the bust is eased.
func TestPanels(t *testing.T) {
	var ref map[string]struct {
		Centre       figure.Curve `json:"centre_curve"`
		Side         figure.Curve `json:"side_curve"`
		LengthCentre float64      `json:"length_centre"`
		LengthSide   float64      `json:"length_side"`
		NotchCentre  [][2]float64 `json:"notches_centre"`
		NotchSide    [][2]float64 `json:"notches_side"`
		BackCentre   figure.Curve `json:"back_centre_curve"`
		BackSide     figure.Curve `json:"back_side_curve"`
		BackLength   float64      `json:"back_length_centre"`
	}
	figure.StylesP36(t).Group(t, "princess", &ref)
	for _, place := range []string{"shoulder", "armhole"} {
		t.Run(place, func(t *testing.T) {
			want := ref[place]
			s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": place, "skirt_line": "straight"}))
			require.Empty(t, s.Refused)
			require.True(t, s.Complete)
			line := func(piece pattern.PieceID, name string) pattern.Mark { return drawnLine(s, piece, name) }
			samePath(t, want.Centre.Path(), line(pattern.Front, "panel_centre").Path, "front centre")
			samePath(t, want.Side.Path(), line(pattern.Front, "panel_side").Path, "front side")
			samePath(t, want.BackCentre.Path(), line(pattern.Back, "panel_centre").Path, "back centre")
			samePath(t, want.BackSide.Path(), line(pattern.Back, "panel_side").Path, "back side")
			for piece, length := range map[pattern.PieceID]float64{
				pattern.Front: want.LengthCentre, pattern.FrontSide: want.LengthSide, pattern.Back: want.BackLength, pattern.BackSide: want.BackLength,
			} {
				p, ok := s.Piece(piece)
				require.True(t, ok)
				require.InDelta(t, length, p.Along("panel").Inches(), near, piece)
				require.Empty(t, p.Darts, piece)
			}
			for piece, notches := range map[pattern.PieceID][][2]float64{pattern.Front: want.NotchCentre, pattern.FrontSide: want.NotchSide} {
				p, _ := s.Piece(piece)
				i := 0
				for _, n := range p.Notches {
					if n.Name != "ease" {
						continue
					}
					// A notch stands on the cutting line, half an inch outside.
					require.InDelta(t, 0.5, n.At.Dist(figure.Point(notches[i]))/25.4, 0.01, "%s %d", piece, i)
					i++
				}
				require.Equal(t, len(notches), i, piece)
			}
			waist, _ := s.Girth("waist")
			require.InDelta(t, 30, waist.Inches(), near)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s %s", f.Check, f.Says.In(measure.In))
				if f.Check == "side_seams" || f.Check == "underarm_join" || f.Check == "facing_fit" || f.Check == "centre_square" {
					require.Equal(t, pattern.Pass, f.Verdict, f.Check)
				}
			}
		})
	}
}

// TestPanelRefusals: without a dart there is nothing for the seam to take,
// and too much at the waist pulls.
func TestPanelRefusals(t *testing.T) {
	panels := figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": "shoulder"})
	for name, job := range map[string]pattern.Job{
		"no dart": panels.WithBody(measure.SideNeckToWaist, figure.In(16)),
		"waist":   panels.WithStyle("back_waist_dart", pattern.LengthValue(figure.In(2.5))),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}

// TestPanelFlare: panels overlap at the hem by what was asked for, at each of
// four seams; both edges of a seam stay as long as they were, so the hem hangs
// level and runs on without a point, and she needs less of an opening.
func TestPanelFlare(t *testing.T) {
	for _, place := range []string{"shoulder", "armhole"} {
		for _, line := range []string{"pegged", "straight", "a_line"} {
			for _, flare := range []float64{0.5, 1, 1.5} {
				plain := figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": place, "skirt_line": line})
				s, was := workroom.Draft(plain.WithStyle("panel_flare", pattern.LengthValue(figure.In(flare)))), workroom.Draft(plain)
				what := place + " " + line
				require.Empty(t, s.Refused, what)
				sound(t, s, what)
				for _, id := range []pattern.PieceID{pattern.Front, pattern.FrontSide, pattern.Back, pattern.BackSide} {
					now, before := pieceOf(t, s, id), pieceOf(t, was, id)
					require.InDelta(t, before.Along("panel").Inches(), now.Along("panel").Inches(), 1.0/64, "%s %s", what, id)
					require.InDelta(t, before.Along("hem").Inches()+flare/2, now.Along("hem").Inches(), 0.02, "%s %s", what, id)
				}
				for _, half := range []pattern.PieceID{pattern.Front, pattern.Back} {
					centre, side := drawnLine(s, half, "panel_centre").Path.End(), drawnLine(s, half, "panel_side").Path.End()
					require.InDelta(t, flare, (centre.X-side.X)/25.4, near)
					require.InDelta(t, centre.Y, side.Y, near)
				}
				now, _ := s.Girth("hem")
				before, _ := was.Girth("hem")
				require.InDelta(t, before.Inches()+4*flare, now.Inches(), 0.1, what)
				require.LessOrEqual(t, s.Known.Length("slit_height"), was.Known.Length("slit_height"), what)
				require.Less(t, s.Known.Length("hem_allowance"), figure.In(2), what)
				for _, f := range s.Findings {
					require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", what, f.Says.In(measure.In))
					require.NotEqual(t, "panel_hem", f.Code, what)
				}
			}
		}
	}
	far := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"panel_seam": "shoulder"}).WithStyle("panel_flare", pattern.LengthValue(figure.In(7))))
	require.NotEmpty(t, far.Refused)
	require.Equal(t, "panel_flare", far.Refused[0].Input)
	none := workroom.Draft(figure.Styled(t, nil).WithStyle("panel_flare", pattern.LengthValue(figure.In(1))))
	require.Empty(t, none.Refused)
	require.Zero(t, none.Known.Length("hem_allowance")-workroom.Draft(figure.Styled(t, nil)).Known.Length("hem_allowance"), "without panels nothing is flared")
}
