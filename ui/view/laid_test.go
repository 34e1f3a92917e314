package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/ui/canvas"
)

// The table shows the cloth with every piece where the lay has it, lying and
// standing.
func TestALayLiesOnItsCloth(t *testing.T) {
	laid := &Laid{Hand: 1, Opened: 900, Flaws: []geom.Box{{Min: geom.Point{X: 300, Y: 700}, Max: geom.Point{X: 340, Y: 740}}}, Pieces: []LaidPiece{
		{ID: "front", Outline: []geom.Point{{X: 0, Y: 0}, {X: 250, Y: 0}, {X: 300, Y: 600}, {X: 0, Y: 600}}},
		{ID: "front", Outline: []geom.Point{{X: 350, Y: 0}, {X: 600, Y: 0}, {X: 600, Y: 600}, {X: 350, Y: 600}}, Pinned: true},
	}}
	sheet := &pattern.Sheet{Pieces: []pattern.Piece{{ID: "front", Title: "Front"}}}
	for _, stand := range []bool{false, true} {
		s := Scene{Sheet: sheet, Unit: measure.Cm, Stand: stand, Cloth: &Cloth{Half: 700, Long: 1200, Laid: laid}}
		v := Look(s, Eye{}, 90, 36, canvas.ASCII, 2)
		for i, p := range laid.Pieces {
			box := geom.Box{}
			for _, q := range p.Outline {
				if !stand {
					q.X, q.Y = q.Y, q.X
				}
				box = box.Add(q)
			}
			require.InDelta(t, box.Min.X, v.pieces[i].box.Min.X, 1e-9)
			require.InDelta(t, box.Max.Y, v.pieces[i].box.Max.Y, 1e-9)
		}
		c := canvas.New(90, 36, canvas.ASCII)
		v.Draw(c)
		text := c.String(canvas.Palette{})
		require.Equal(t, 2, strings.Count(text, "Front"), "both copies have their name")
		require.Contains(t, text, "20", "lengths along the edge")
	}
}
