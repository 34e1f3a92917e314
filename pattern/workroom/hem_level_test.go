package workroom_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

// A hem raised where it hung low: each place moves by what was asked, front
// and back keep one side seam, and the hem stays square at the centre.
func TestHemLevelled(t *testing.T) {
	for _, line := range []string{"pegged", "straight", "a_line"} {
		for _, raised := range [][3]float64{{0.5, 0, 0}, {0, 0.75, 0}, {0, 0, 1}, {1, 0.5, 0}, {0.25, 0.25, 0.25}} {
			job := figure.Body36(t, pattern.Measured).WithStyle("skirt_line", pattern.PickValue(line))
			was := workroom.Draft(job)
			for i, id := range []pattern.ChoiceID{"hem_level_front", "hem_level_side", "hem_level_back"} {
				job = job.WithStyle(id, pattern.LengthValue(figure.In(raised[i])))
			}
			now := workroom.Draft(job)
			sound(t, now, line)
			for _, f := range now.Findings {
				switch f.Check {
				case "hem_level", "side_seams", "centre_square", "outline_simple", "hem_join":
					require.Equal(t, pattern.Pass, f.Verdict, "%s %v %s: %s", line, raised, f.Check, f.Says.In(0))
				}
			}
			for _, piece := range []pattern.PieceID{pattern.Front, pattern.Back} {
				want := figure.In(raised[0])
				if piece == pattern.Back {
					want = figure.In(raised[2])
				}
				a, _ := was.Point(piece, "hem_centre")
				b, _ := now.Point(piece, "hem_centre")
				require.InDelta(t, want.MM(), a.Y-b.Y, 1e-9, "%s at the centre", piece)
				a, _ = was.Point(piece, "hem_side")
				b, _ = now.Point(piece, "hem_side")
				hip, _ := now.Point(piece, "hip")
				require.InDelta(t, figure.In(raised[1]).MM(), hip.Dist(a)-hip.Dist(b), 0.1, "%s along the side", piece)
			}
		}
	}
}

// TestHemLevelledBelowAWaist: the same of a dress with a waist seam and of a
// skirt alone, in every line: at the centre each half ends higher by what was
// asked, along the side both by the same, and what opens the hem stays.
func TestHemLevelledBelowAWaist(t *testing.T) {
	dress := figure.Body36(t, pattern.Measured).WithStyle("waist_seam", pattern.SwitchValue(true))
	skirt := figure.Body36(t, pattern.Measured).WithStyle(pattern.Garment, pattern.PickValue(pattern.Skirt)).WithoutStyle("length")
	for _, start := range []struct {
		job         pattern.Job
		front, back pattern.PieceID
	}{{dress, pattern.SkirtFront, pattern.SkirtBack}, {skirt, pattern.Front, pattern.Back}} {
		for _, line := range []string{"pegged", "straight", "a_line", "flared"} {
			job := choose(start.job, "skirt_line", line)
			if start.job.Style.Garment() == pattern.Skirt {
				job = start.job.WithStyle("skirt_line", pattern.PickValue(line))
			}
			was := workroom.Draft(job)
			for _, raised := range [][3]float64{{0.5, 0, 0}, {0, 0.75, 0}, {0, 0, 1}, {1, 0.5, 0}, {0.25, 0.25, 0.25}} {
				now := job
				for i, id := range []pattern.ChoiceID{"hem_level_front", "hem_level_side", "hem_level_back"} {
					now = now.WithStyle(id, pattern.LengthValue(figure.In(raised[i])))
				}
				s := workroom.Draft(now)
				require.Empty(t, s.Refused, "%s %v", line, raised)
				sound(t, s, line)
				for _, f := range s.Findings {
					require.NotEqual(t, pattern.Fail, f.Verdict, "%s %v: %s", line, raised, f.Says.In(0))
					require.NotEqual(t, "hem_level", f.Code, "%s %v: %s", line, raised, f.Says.In(0))
				}
				for id, up := range map[pattern.PieceID]float64{start.front: raised[0], start.back: raised[2]} {
					a, _ := was.Piece(id)
					b, _ := s.Piece(id)
					end := func(p *pattern.Piece) float64 { return p.EdgesNamed("hem")[0].Stitch.End().Y / 25.4 }
					require.InDelta(t, up, end(a)-end(b), 1e-6, "%s %s at the centre", line, id)
					require.InDelta(t, raised[1], (a.Along("side") - b.Along("side")).Inches(), 0.02, "%s %s along the side", line, id)
				}
			}
		}
	}
}

func TestHemNotLevelledByThumb(t *testing.T) {
	job := figure.Body36(t, pattern.Thumb)
	was := workroom.Draft(job)
	now := workroom.Draft(job.WithStyle("hem_level_front", pattern.LengthValue(figure.In(1))))
	require.Equal(t, was.Marks, now.Marks)
	require.Len(t, now.Notes, 1, "it is kept, and said so")
}
