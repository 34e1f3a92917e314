package truing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// lined is the trial's sheet with a lining drawn by hand: the outlines of front
// and back, hemmed by so much higher and longer at the side by so much.
func lined(higher, longer, neck float64) *pattern.Sheet {
	s := newTrial().sheet()
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p, _ := s.Piece(id)
		l := *p
		l.ID, l.Cloth = id+"_lining", "lining"
		l.Edges = append([]pattern.Edge(nil), p.Edges...)
		for i := range l.Edges {
			e := &l.Edges[i]
			switch move := geom.Move(geom.Vector{Y: -higher * 25.4}); {
			case e.Name == "hem":
				e.Stitch = e.Stitch.Transform(move)
			case e.Name == "side" && id == pattern.Front && longer > 0:
				e.Stitch = e.Stitch.Then(geom.Lines(e.Stitch.End(), e.Stitch.End().Add(geom.Vector{Y: longer * 25.4})))
				longer = 0
			case e.Name == "neck" && neck != 0:
				e.Stitch, _ = e.Stitch.Split(e.Stitch.Length() - neck*25.4)
			}
		}
		s.Pieces = append(s.Pieces, l)
	}
	return s
}

func TestLiningFit(t *testing.T) {
	require.False(t, liningFit.Wanted(newTrial().sheet()), "nothing to judge without a lining")
	for _, f := range findings(t, lined(1, 0, 0), "lining_fit") {
		require.Equal(t, pattern.Pass, f.Verdict, f.Code)
	}
	for _, c := range []struct {
		higher, longer, neck float64
		code                 string
		verdict              pattern.Verdict
	}{
		{1, 0.5, 0, "lining_sides", pattern.Fail},
		{1, 1.0 / 10, 0, "lining_sides", pattern.Advise},
		{0.6, 0, 0, "lining_hem", pattern.Advise},
		{0.1, 0, 0, "lining_hem", pattern.Fail},
		{-0.5, 0, 0, "lining_hem", pattern.Fail},
		{1, 0, 0.5, "lining_edge", pattern.Fail},
	} {
		var got *pattern.Finding
		for _, f := range findings(t, lined(c.higher, c.longer, c.neck), "lining_fit") {
			if f.Code == c.code {
				got = &f
			}
		}
		require.NotNil(t, got, c)
		require.Equal(t, c.verdict, got.Verdict, c)
		require.Equal(t, "lining", got.Input)
	}
}
