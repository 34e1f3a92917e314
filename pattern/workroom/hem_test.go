package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestSkirtLines holds the hem of each skirt to its figures.
func TestSkirtLines(t *testing.T) {
	type hemHalf struct {
		Side   [2]float64   `json:"hem_side"`
		Curve  figure.Curve `json:"hem_curve"`
		Length float64      `json:"hem_length"`
	}
	for _, line := range []string{"pegged", "straight", "a_line"} {
		t.Run(line, func(t *testing.T) {
			var ref map[string]struct {
				Front hemHalf `json:"front"`
				Back  hemHalf `json:"back"`
				Girth float64 `json:"hem_girth"`
			}
			figure.StylesP36(t).Group(t, "dress_hem", &ref)
			want := ref[line]
			s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"skirt_line": line}))
			require.Empty(t, s.Refused)
			require.True(t, s.Complete)
			for piece, h := range map[pattern.PieceID]hemHalf{pattern.Front: want.Front, pattern.Back: want.Back} {
				samePoint(t, s, piece, "hem_side", h.Side)
				samePath(t, h.Curve.Path(), drawnLine(s, piece, "hem").Path.Reverse(), string(piece))
				d, _ := s.Dimension(piece, "hem")
				require.InDelta(t, h.Length, d.Length.Inches(), near)
			}
			girth, _ := s.Girth("hem")
			require.InDelta(t, want.Girth, girth.Inches(), near)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s %s", f.Check, f.Says.In(measure.In))
			}
		})
	}
}

// TestHemOpenings holds height and extension of each opening to its figures.
func TestHemOpenings(t *testing.T) {
	var ref map[string]struct {
		Height float64      `json:"height"`
		Points [][2]float64 `json:"points"`
	}
	figure.StylesP36(t).Group(t, "openings", &ref)
	for kind, name := range map[string]string{"slit": "slit", "vent": "vent", "kick_pleat": "kick_pleat", "inverted": "inverted_pleat"} {
		t.Run(kind, func(t *testing.T) {
			want := ref[name]
			job := figure.Styled(t, map[pattern.ChoiceID]string{"hem_opening": kind}).
				WithBody(measure.Height, figure.In(66)).WithBody(measure.WaistToFloor, figure.In(41))
			s := workroom.Draft(job)
			require.Empty(t, s.Refused)
			require.True(t, s.Complete)
			require.InDelta(t, want.Height, s.Known.Length("slit_height").Inches(), near)
			samePoint(t, s, pattern.Back, "slit_top", [2]float64{0, 40 - want.Height})
			if len(want.Points) == 0 {
				return
			}
			line := drawnLine(s, pattern.Back, "opening").Path
			require.Len(t, line, 3)
			for i, p := range want.Points {
				at := line[2-i].D
				require.InDelta(t, p[0], at.X/25.4, near)
				require.InDelta(t, p[1], at.Y/25.4, near)
			}
			back, _ := s.Piece(pattern.Back)
			require.Contains(t, back.Balance[len(back.Balance)-1].Name, "fold")
		})
	}
	none := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"hem_opening": "none"}))
	require.True(t, none.Complete)
	require.Zero(t, none.Known.Length("slit_height"))
	back, _ := none.Piece(pattern.Back)
	require.Len(t, back.EdgesNamed("centre_back"), 1)
}

// TestHemRefusals: too much flare and an opening without room are refused.
func TestHemRefusals(t *testing.T) {
	for name, job := range map[string]pattern.Job{
		"flare":     figure.Styled(t, map[pattern.ChoiceID]string{"skirt_line": "a_line"}).WithStyle("hem_flare", pattern.LengthValue(figure.In(6))),
		"high vent": figure.Styled(t, map[pattern.ChoiceID]string{"hem_opening": "vent"}).WithStyle("slit_height", pattern.LengthValue(figure.In(18))),
		"no height": figure.Styled(t, map[pattern.ChoiceID]string{"hem_opening": "kick_pleat"}).WithStyle("slit_height", pattern.LengthValue(0)),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}

// A faced hem is seamed to a strip of its own shape, on every piece that has
// one; what opens by lapping cannot be faced.
func TestFacedHem(t *testing.T) {
	for _, more := range []map[pattern.ChoiceID]string{{}, {"skirt_line": "a_line"}, {"panel_seam": "shoulder"}, {"hem_opening": "none", "closure": "zip_side", "front_neckline": "square"}} {
		more["hem_finish"] = "faced"
		s := workroom.Draft(figure.Styled(t, more, "hem_allowance"))
		require.True(t, s.Complete, "%v", more)
		sound(t, s, "faced hem")
		n := 0
		for _, p := range s.Pieces {
			for _, e := range p.EdgesNamed("hem") {
				to, ok := s.Piece(e.SewnTo.Piece)
				require.True(t, ok, p.ID)
				require.Equal(t, p.Cut, to.Cut)
				require.InDelta(t, 0.375, e.Allowance.Inches(), 1e-9)
				n++
			}
		}
		require.GreaterOrEqual(t, n, 4)
	}
	vent := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"hem_finish": "faced", "hem_opening": "vent"}))
	require.Equal(t, "hem_finish", vent.Refused[0].Input)
}
