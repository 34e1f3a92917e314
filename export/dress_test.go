package export_test

import (
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern"
)

func TestDressIsDrawnWhole(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		for _, whole := range []bool{false, true} {
			s := accept.Dress(method)
			require.True(t, s.Complete, method)
			d := export.New(s, export.Options{Whole: whole})
			require.Len(t, d.Pieces, len(s.Pieces))
			for _, p := range d.Pieces {
				requireClear(t, p)
				require.Len(t, find(p.Items, pattern.RoleCut), 1)
				require.Len(t, find(p.Items, pattern.RoleStitch), 1)
				require.Equal(t, !whole && p.Piece.Cut == pattern.OnFold, len(find(p.Items, pattern.RoleFold)) == 2, p.Piece.ID)
				requireLongGrain(t, p)
				requireNotchesOnTheEdge(t, p)
			}
		}
	}
}

// The grain arrow is upright, as the centre is. That it is long is said of
// front and back; a curved facing has no run as long as itself.
func requireLongGrain(t *testing.T, p export.Placed) {
	t.Helper()
	g := p.Piece.Grain
	require.InDelta(t, g.A.X, g.D.X, 1e-9)
	if id := p.Piece.ID; id == pattern.Front || id == pattern.Back {
		require.GreaterOrEqual(t, g.Length(), 2.0/3*p.Piece.Stitch.Bounds().Height(), id)
	}
}

func requireNotchesOnTheEdge(t *testing.T, p export.Placed) {
	t.Helper()
	ring := p.Piece.CutLine.Outline(0.02)
	for _, n := range find(p.Items, pattern.RoleNotch) {
		_, _, off := p.Piece.CutLine.Nearest(n.Path.Start())
		require.Less(t, off, 0.01, "%s %s", p.Piece.ID, n.Name)
		require.True(t, ring.Contains(n.Path.End()), "%s %s points outwards", p.Piece.ID, n.Name)
	}
}

func TestSameSheetSameDrawing(t *testing.T) {
	a := export.New(accept.Dress(pattern.Measured), export.Options{})
	b := export.New(accept.Dress(pattern.Measured), export.Options{})
	require.True(t, reflect.DeepEqual(a, b))
}

func BenchmarkNew(b *testing.B) {
	s := accept.Dress(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		export.New(s, export.Options{})
	}
}
