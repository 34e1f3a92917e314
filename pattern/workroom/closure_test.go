package workroom_test

import (
	"strings"
	"testing"

	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestPassage holds every neckline with every closure to the table of what
// lets her in: which of head and body does not pass.
func TestPassage(t *testing.T) {
	type answers map[string]any
	var ref map[string]struct {
		Passage float64 `json:"passage_girth"`
		Loose   answers `json:"waist_loose"`
		Shaped  answers `json:"waist_shaped"`
		Short   float64 `json:"placket_short"`
		Long    float64 `json:"placket_long"`
	}
	figure.StylesP36(t).Group(t, "passage", &ref)
	for _, neck := range styles()["front_neckline"] {
		if neck == "funnel" {
			continue // refused without its zip: TestNeckRefusals
		}
		for waist, table := range map[string]answers{"none": ref[neck].Loose, "fisheye": ref[neck].Shaped} {
			for closure, column := range map[string]string{
				"none": "none", "zip_back": "centre_back_zip", "zip_side": "side_zip", "placket": "front_placket_long", "short placket": "front_placket_short",
			} {
				pick := strings.TrimPrefix(closure, "short ")
				job := figure.Styled(t, map[pattern.ChoiceID]string{
					"front_neckline": neck, "waist_shaping": waist, "closure": pick,
				}, "neck_widening", "front_neck_depth", "back_neck_depth")
				if closure != pick {
					job = job.WithStyle("placket_length", pattern.LengthValue(figure.In(ref[neck].Short)))
				}
				s := workroom.Draft(job)
				if pick == "placket" && (neck == "slit" || neck == "keyhole") {
					require.Equal(t, "no: the front is already open", table[column])
					require.Equal(t, "R33", s.Refused[0].Code)
					continue
				}
				if closure == "placket" {
					require.InDelta(t, ref[neck].Long, s.Known.Length("placket_length").Inches(), near, neck)
				}
				require.True(t, s.Complete, "%s %s %s", neck, waist, closure)
				want, ok := table[column].(string)
				require.True(t, ok)
				for check, word := range map[string]string{"head_passage": "head", "body_passage": "body"} {
					for _, f := range s.Findings {
						if f.Check != check {
							continue
						}
						bad := strings.Contains(want, word)
						require.Equal(t, bad, f.Verdict == pattern.Fail, "%s, waist %s, %s: %s, want %s", neck, waist, closure, check, want)
						if bad {
							require.Equal(t, pick == "placket", f.Input == "placket_length", f.Input)
							require.Contains(t, []string{"closure", "placket_length"}, f.Input)
							require.NotNil(t, f.Try)
						}
					}
				}
			}
		}
	}
}

// TestSideZip holds the zip in the side to its figures, and marks it on both
// pieces.
func TestSideZip(t *testing.T) {
	var ref struct {
		Zip struct {
			Start [2]float64 `json:"start"`
			End   [2]float64 `json:"end"`
			Stock float64    `json:"stock"`
		} `json:"zip_side"`
	}
	figure.StylesP36(t).Group(t, "openings", &ref)
	s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"closure": "zip_side", "hem_opening": "none", "front_neckline": "square"}))
	require.Empty(t, s.Refused)
	samePoint(t, s, pattern.Back, "side_zip_start", ref.Zip.Start)
	samePoint(t, s, pattern.Back, "side_zip_end", ref.Zip.End)
	require.InDelta(t, ref.Zip.Stock, s.Known.Length("zip_length").Inches(), near)
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p, _ := s.Piece(id)
		require.Equal(t, pattern.OnFold, p.Cut, id)
		require.NotNil(t, p.Fold, id)
		n := 0
		for _, notch := range p.Notches {
			if strings.Contains(notch.Name, "left side") {
				n++
			}
		}
		require.Equal(t, 2, n, id)
	}
	require.Empty(t, backSeams(s))
	slit := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"closure": "zip_side"}))
	require.NotEmpty(t, backSeams(slit))
}

func backSeams(s *pattern.Sheet) []pattern.Edge {
	p, _ := s.Piece(pattern.Back)
	return p.EdgesNamed("centre_back")
}
