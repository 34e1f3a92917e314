package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

func pieceIf(s *pattern.Sheet, id pattern.PieceID) *pattern.Piece {
	p, ok := s.Piece(id)
	if !ok {
		return &pattern.Piece{}
	}
	return p
}

// TestPlackets: as far as needed, above the hip and to the hem, on a front in
// one, with a seam in it, with a waist seam and with panels; the bands are as
// long as the opening, and nothing fails.
func TestPlackets(t *testing.T) {
	for _, c := range []struct {
		what          string
		picks         map[pattern.ChoiceID]string
		waist, centre bool
		long          float64 // of the placket where it is chosen
		cut, skirtCut pattern.CutKind
	}{
		{"needed", nil, false, false, 0, pattern.OnFold, ""},
		{"hip", map[pattern.ChoiceID]string{"placket_to": "hip"}, false, false, 0, pattern.OnFold, ""},
		{"hem", map[pattern.ChoiceID]string{"placket_to": "hem"}, false, false, 0, pattern.Pair, ""},
		{"sweetheart", map[pattern.ChoiceID]string{"front_neckline": "sweetheart"}, false, false, 0, pattern.OnFold, ""},
		{"sweetheart to the hem", map[pattern.ChoiceID]string{"front_neckline": "sweetheart", "placket_to": "hem"}, false, false, 0, pattern.Pair, ""},
		{"front seam", nil, false, true, 0, pattern.Pair, ""},
		{"front seam, hem", map[pattern.ChoiceID]string{"placket_to": "hem"}, false, true, 0, pattern.Pair, ""},
		{"waist seam, short", nil, true, false, 6, pattern.OnFold, pattern.OnFold},
		{"waist seam, hip", map[pattern.ChoiceID]string{"placket_to": "hip", "waist_shaping": "fisheye"}, true, false, 0, pattern.Pair, pattern.OnFold},
		{"waist seam, hem", map[pattern.ChoiceID]string{"placket_to": "hem", "waist_shaping": "fisheye"}, true, false, 0, pattern.Pair, pattern.Pair},
		{"waist seam and front seam", map[pattern.ChoiceID]string{"placket_to": "hip"}, true, true, 0, pattern.Pair, pattern.OnFold},
		{"flared", map[pattern.ChoiceID]string{"placket_to": "hem", "waist_shaping": "fisheye", "skirt_line": "flared"}, true, false, 0, pattern.Pair, pattern.Pair},
		{"panels", map[pattern.ChoiceID]string{"placket_to": "hem", "panel_seam": "shoulder"}, false, false, 0, pattern.Pair, ""},
		{"faced hem", map[pattern.ChoiceID]string{"placket_to": "hem", "hem_finish": "faced"}, false, false, 0, pattern.Pair, ""},
		{"all in one", map[pattern.ChoiceID]string{"placket_to": "hem", "facing": "all_in_one"}, false, false, 0, pattern.Pair, ""},
		{"lined", map[pattern.ChoiceID]string{"placket_to": "hem", "lining": "full"}, false, false, 0, pattern.Pair, ""},
		{"lined to the facing", map[pattern.ChoiceID]string{"placket_to": "hem", "lining": "to_facing"}, false, false, 0, pattern.Pair, ""},
		{"lined, waist seam", map[pattern.ChoiceID]string{"placket_to": "hip", "lining": "full"}, true, false, 0, pattern.Pair, pattern.OnFold},
		{"lined to the facing, waist seam", map[pattern.ChoiceID]string{"placket_to": "hip", "lining": "to_facing"}, true, false, 0, pattern.Pair, pattern.OnFold},
		{"collar", map[pattern.ChoiceID]string{"placket_to": "hem", "collar": "convertible"}, false, false, 0, pattern.Pair, ""},
	} {
		picks := map[pattern.ChoiceID]string{"closure": "placket", "front_neckline": "jewel", "back_neckline": "jewel"}
		for id, o := range c.picks {
			picks[id] = o
		}
		if picks["collar"] != "" {
			delete(picks, "front_neckline")
			delete(picks, "back_neckline")
		}
		job := figure.Styled(t, picks, "neck_widening", "front_neck_depth", "back_neck_depth").
			WithStyle("waist_seam", pattern.SwitchValue(c.waist)).WithStyle("front_seam", pattern.SwitchValue(c.centre))
		if c.long > 0 {
			job = job.WithStyle("placket_length", pattern.LengthValue(figure.In(c.long)))
		}
		s := workroom.Draft(job)
		for _, r := range s.Refused {
			t.Errorf("%s: %s", c.what, r.Says.In(measure.In))
		}
		require.True(t, s.Complete, c.what)
		sound(t, s, c.what)
		require.Equal(t, c.cut, pieceOf(t, s, pattern.Front).Cut, c.what)
		require.Equal(t, c.skirtCut, pieceIf(s, pattern.SkirtFront).Cut, c.what)
		band := pieceOf(t, s, pattern.Placket).Along("placket").Inches()
		open := pieceOf(t, s, pattern.Front).Along("placket") + pieceIf(s, pattern.SkirtFront).Along("placket")
		require.InDelta(t, open.Inches(), band, near, c.what)
		if picks["placket_to"] == "hem" {
			centre, _ := s.Point(pattern.Front, "neck_centre")
			hem, _ := s.Point(pattern.Front, "hem_centre")
			require.InDelta(t, (hem.Y-centre.Y)/25.4, band, 0.6, c.what)
		}
		for _, f := range s.Findings {
			if c.long > 0 && f.Check == "body_passage" {
				continue // so short a one is for her head alone
			}
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s %s", c.what, f.Check, f.Says.In(measure.In))
		}
	}
}

// TestPlacketRefusals: what a placket cannot be cut into says so.
func TestPlacketRefusals(t *testing.T) {
	base := map[pattern.ChoiceID]string{"closure": "placket", "front_neckline": "jewel"}
	dart := figure.Styled(t, map[pattern.ChoiceID]string{"closure": "placket", "front_neckline": "jewel", "bust_dart": "centre_front"}).WithStyle("front_seam", pattern.SwitchValue(true))
	atWaist := figure.Styled(t, base).WithStyle("waist_seam", pattern.SwitchValue(true)).WithStyle("placket_length", pattern.LengthValue(figure.In(13.25)))
	nearHem := figure.Styled(t, base).WithStyle("placket_length", pattern.LengthValue(figure.In(37.5)))
	for input, job := range map[string]pattern.Job{"bust_dart": dart, "placket_length": atWaist, "placket_length ": nearHem} {
		s := workroom.Draft(job)
		require.NotEmpty(t, s.Refused, input)
		require.Equal(t, "R33", s.Refused[0].Code)
		require.Contains(t, input, s.Refused[0].Input)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In))
	}
}
