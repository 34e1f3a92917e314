package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

func lowerLeft(job pattern.Job, inches float64) pattern.Job {
	drop, ok := job.Body.Get(measure.ShoulderDrop)
	if !ok {
		drop = figure.In(1.5)
	}
	job.Left = job.Left.With(measure.ShoulderDrop, drop+figure.In(inches))
	return job
}

func outlinesSound(t *testing.T, s *pattern.Sheet, what string) {
	t.Helper()
	for _, p := range s.Pieces {
		stitch, cut := p.Stitch.Outline(0.02), p.CutLine.Outline(0.02)
		require.True(t, stitch.Simple(), "%s: stitch line of %s", what, p.ID)
		require.True(t, cut.Simple(), "%s: cutting line of %s", what, p.ID)
		require.Positive(t, stitch.Area(), "%s: %s", what, p.ID)
		require.Greater(t, cut.Area(), stitch.Area()-0.5, "%s: %s", what, p.ID)
		require.True(t, p.Stitch.Closed(), "%s: %s", what, p.ID)
		for i, e := range p.Edges {
			next := p.Edges[(i+1)%len(p.Edges)]
			require.True(t, e.Stitch.End().Near(next.Stitch.Start(), 0.02), "%s: %s, %s to %s", what, p.ID, e.Name, next.Name)
		}
	}
}

// TestTwoSides: one shoulder lower. Right and left are drafted apart; what
// lay on the fold is one whole piece, what was a pair a right and a left one;
// each half is that of a body that has it on both sides.
func TestTwoSides(t *testing.T) {
	right := figure.Styled(t, nil).WithoutStyle("armhole_depth")
	job := lowerLeft(right, 0.5)
	s := workroom.Draft(job)
	require.Empty(t, s.Refused)
	require.True(t, s.Complete)
	outlinesSound(t, s, "two sides")
	plain := workroom.Draft(right)
	lower := workroom.Draft(right.WithBody(measure.ShoulderDrop, figure.In(2)))

	front, ok := s.Piece(pattern.Front)
	require.True(t, ok)
	require.Equal(t, pattern.Single, front.Cut)
	require.Nil(t, front.Fold)
	require.Len(t, front.Darts, 2)
	require.Contains(t, front.Title, "whole")
	a, _ := plain.Piece(pattern.Front)
	b, _ := lower.Piece(pattern.Front)
	area := func(p *pattern.Piece) float64 { return p.Stitch.Outline(0.02).Area() }
	require.InDelta(t, area(a)+area(b), area(front), 1)

	for _, id := range []pattern.PieceID{"back", "front_armhole_facing", "back_armhole_facing"} {
		r, okR := s.Piece(id)
		l, okL := s.Piece(id + "_left")
		require.True(t, okR && okL, id)
		require.Equal(t, pattern.Single, r.Cut, id)
		require.Contains(t, r.Title, "right", id)
		require.Contains(t, l.Title, "left", id)
		require.LessOrEqual(t, l.Stitch.Bounds().Max.X, 0.01, "%s: the left is the mirror image", id)
		require.Equal(t, 1, r.Count, id)
	}
	for i, p := range s.Pieces {
		require.Equal(t, i+1, p.Number)
		require.Equal(t, len(s.Pieces), p.Of)
	}
	low, ok := s.Point(pattern.FrontLeft, "bone_end")
	require.True(t, ok)
	high, _ := s.Point(pattern.Front, "bone_end")
	require.InDelta(t, high.Y+12.7, low.Y, 1e-6)
	require.InDelta(t, -high.X, low.X, 1e-6)
	for i, st := range s.Steps {
		require.Equal(t, i+1, st.Number)
	}
	found := map[string]pattern.Verdict{}
	for _, f := range s.Findings {
		if f.Title == "Right and left meet" || f.Title == "Balance, left side" || f.Title == "Side seams meet, left side" {
			found[f.Title] = f.Verdict
		}
		require.NotEqual(t, pattern.Fail, f.Verdict, "%s %s", f.Code, f.Says.In(measure.In))
	}
	require.Equal(t, map[string]pattern.Verdict{"Right and left meet": pattern.Pass, "Side seams meet, left side": pattern.Pass}, found)
}

// TestTwoSidesMiss: two drafts that do not meet at the centre are found out.
func TestTwoSidesMiss(t *testing.T) {
	job := figure.Styled(t, nil)
	f := truing.Sides(workroom.Draft(job), workroom.Draft(job.WithBody(measure.SideNeckToWaist, figure.In(18.25))))
	require.Equal(t, pattern.Fail, f.Verdict)
	require.NotEmpty(t, f.Cure.In(measure.In))
	f = truing.Sides(workroom.Draft(job), workroom.Draft(job.WithoutBody(measure.BustGirth)))
	require.Equal(t, pattern.Skip, f.Verdict)
}

// TestOneSide: a left that is as the right, or that differs only in what both
// sides share, leaves the draft alone and says so.
func TestOneSide(t *testing.T) {
	job := figure.Styled(t, nil)
	plain := workroom.Draft(job)
	same := job
	same.Left = same.Left.With(measure.ShoulderDrop, figure.In(1.5))
	require.Equal(t, plain.Pieces, workroom.Draft(same).Pieces)
	girth := job
	girth.Left = girth.Left.With(measure.BustGirth, figure.In(37))
	s := workroom.Draft(girth)
	require.Equal(t, plain.Pieces, s.Pieces)
	require.Len(t, s.Notes, len(plain.Notes)+1)
}

// TestTwoSidesOnWomen lowers one shoulder, or raises one hip, of women of the
// survey, in every style in turn and by both methods.
func TestTwoSidesOnWomen(t *testing.T) {
	women := ansur.Load(t)
	for i := 0; i < len(women); i += everyWoman {
		method := []string{pattern.Measured, pattern.Direct}[i/everyWoman%2]
		job := lowerLeft(jobOf(women[i], method), 0.25+0.25*float64(i%3))
		if i%2 == 0 {
			hip, _ := job.Body.Get(measure.WaistToHip)
			job.Left = job.Left.With(measure.WaistToHip, hip-figure.In(0.5))
		}
		for id, options := range styles() {
			o := options[i%len(options)]
			if (i/everyWoman+len(id))%4 != 0 || o == "funnel" || id == "closure" {
				continue
			}
			s := workroom.Draft(job.WithStyle(id, pattern.PickValue(o)))
			if len(s.Refused) > 0 {
				continue
			}
			require.True(t, s.Complete)
			outlinesSound(t, s, string(id)+" "+o)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d %s %s: %s %s", women[i].Row, id, o, f.Code, f.Says.In(measure.In))
			}
		}
	}
}
