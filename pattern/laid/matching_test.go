package laid_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

// A stripe goes on at the side seam below the dart: where the match points of
// front and back lie level, the seam from there to the hem is as long on both.
func TestAStripeGoesOnAtTheSideSeam(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		sheet := workroom.Draft(job().WithStyle(pattern.Method, pattern.PickValue(method)))
		c := lay.DefaultCloth("main", measure.In)
		c.RepeatAlong = measure.In.Length(2)
		w, err := laid.On(sheets(sheet), c)
		require.NoError(t, err)
		var below []float64
		for _, id := range []string{"front", "back"} {
			for i := range w.Problem.Items {
				if it := w.Problem.Items[i]; it.ID == id {
					require.True(t, it.Match.Along, "%s %s", method, id)
					below = append(below, belowOnSide(t, sheet, id, float64(it.Match.At.Y)/lay.PerMM))
				}
			}
		}
		require.Len(t, below, 2)
		require.InDelta(t, below[0], below[1], 3.2, "%s: within a mark of the tape", method)
		require.Greater(t, below[0], 100.0)
	}
}

// belowOnSide is the length of a piece's side seam from a level to the hem.
func belowOnSide(t *testing.T, s *pattern.Sheet, id string, level float64) float64 {
	t.Helper()
	long, found := 0.0, false
	for i := range s.Pieces {
		if string(s.Pieces[i].ID) != id {
			continue
		}
		for _, e := range s.Pieces[i].EdgesNamed("side") {
			line := e.Stitch.Flatten(0.1)
			for k := 1; k < len(line); k++ {
				a, b := line[k-1], line[k]
				if a.Y > b.Y {
					a, b = b, a
				}
				if b.Y <= level {
					continue
				}
				if a.Y <= level+1e-3 {
					f := (level - a.Y) / (b.Y - a.Y)
					a = geom.Point{X: a.X + f*(b.X-a.X), Y: level}
					found = true
				}
				long += math.Hypot(b.X-a.X, b.Y-a.Y)
			}
		}
	}
	require.True(t, found, "the level crosses the side of %s", id)
	return long
}
