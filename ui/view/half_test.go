package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
)

// sewn is the invented draft with pieces that the view has never heard of: a
// panel cut from the front's marks, a skirt cut below it, a skirt and a sleeve
// with marks of their own, a band.
func sewn() *pattern.Sheet {
	s := sheet()
	add := func(id pattern.PieceID, out, down, wide, long float64, marks bool) {
		r := geom.Lines(geom.Point{X: out, Y: down}, geom.Point{X: out + wide, Y: down}, geom.Point{X: out + wide, Y: down + long}, geom.Point{X: out, Y: down + long}, geom.Point{X: out, Y: down})
		s.Pieces = append(s.Pieces, pattern.Piece{ID: id, Title: plain(string(id)), Stitch: r, CutLine: r})
		if marks {
			s.Marks = append(s.Marks, pattern.Mark{Piece: id, Name: "end", At: geom.Point{X: out + wide, Y: down + long}, Born: 2})
		}
	}
	add("front_side", 130, 150, 110, 850, false)
	add("front_skirt", 0, 1000, 260, 500, false)
	add("back_skirt", 0, 0, 280, 500, true)
	add("sleeve", 0, 0, 320, 600, true)
	add("waistband", 0, 0, 60, 360, false)
	add("back_neck_facing", 0, 30, 120, 90, false)
	return s
}

func TestUnknownPiecesFindTheirPlace(t *testing.T) {
	s := Scene{Sheet: sewn()}
	for _, stand := range []bool{false, true} {
		s.Stand = stand
		v := Look(s, Eye{}, 120, 40, canvas.Braille, 2)
		require.Len(t, v.pieces, len(s.Sheet.Pieces))
		for i, a := range v.pieces {
			for _, b := range v.pieces[:i] {
				apart := a.box.Min.X >= b.box.Max.X || b.box.Min.X >= a.box.Max.X || a.box.Min.Y >= b.box.Max.Y || b.box.Min.Y >= a.box.Max.Y
				require.True(t, apart, "%s lies on %s", a.id, b.id)
			}
			mid := a.back(a.box.Centre())
			got, ok := v.Under(a.box.Centre())
			require.True(t, ok)
			require.Equal(t, a.id, got.Piece)
			require.True(t, got.At.Near(mid, 1e-6))
		}
	}
	back, _ := at(Look(s, Eye{}, 120, 40, canvas.Braille, 2).pieces, "back_skirt")
	require.True(t, back.far, "it lies as the back does")
}

func TestOnePieceWithWhatBelongsToIt(t *testing.T) {
	ids := func(s Scene) string {
		var out []string
		for _, l := range s.place() {
			out = append(out, string(l.id))
		}
		return strings.Join(out, " ")
	}
	all := sewn()
	require.Equal(t, "front front_side front_skirt", ids(Scene{Sheet: all, Piece: pattern.Front}))
	require.Equal(t, "front front_side front_skirt", ids(Scene{Sheet: all, Piece: "front_side"}))
	require.Equal(t, "back back_neck_facing", ids(Scene{Sheet: all, Piece: "back_neck_facing"}))
	require.Equal(t, "back_skirt", ids(Scene{Sheet: all, Piece: "back_skirt"}))
	require.Equal(t, "sleeve", ids(Scene{Sheet: all, Piece: "sleeve", Step: 2}))
	require.Equal(t, "front", ids(Scene{Sheet: all, Piece: pattern.Front, Step: 1}), "while it is drawn, its own marks alone")
	require.Equal(t, "front back back_skirt front_side front_skirt sleeve back_neck_facing", ids(Scene{Sheet: all, Step: 2}))
}

func TestPicturesOfUnknownPieces(t *testing.T) {
	all := Scene{Sheet: sewn()}
	front := Scene{Sheet: sewn(), Piece: pattern.Front}
	golden.Check(t, "unknown.txt", "== all\n"+draw(all, Eye{Names: true}, 100, 36, canvas.ASCII)+"== the front\n"+draw(front, Eye{}, 78, 16, canvas.ASCII))
}
