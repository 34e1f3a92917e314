package pdf

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

// The sheets joined on their lines show what the one large sheet shows,
// within 0.2 mm.
func TestJoinedTilesAreTheSheet(t *testing.T) {
	for name, d := range map[string]export.Drawing{
		"small": export.New(accept.Sheet(), export.Options{Whole: true}),
		"demo":  export.New(workroom.Draft(session.Demo().Job), export.Options{}),
	} {
		t.Run(name, func(t *testing.T) { joined(t, d) })
	}
}

func joined(t *testing.T, d export.Drawing) {
	x := TileUp(d, Paper{})
	require.Greater(t, len(x.Tiles), 2)
	whole := raster(t, saved(t, accept.Bytes(t, sheet, x.Placed(d))), 1)
	path := saved(t, accept.Bytes(t, tiles, d))
	near := image{wide: whole.wide, high: whole.high, gray: bytes.Repeat([]byte{255}, len(whole.gray))}
	for k, tile := range x.Tiles {
		page := raster(t, path, k+2)
		own, window := x.cell(tile), x.Window(tile)
		for py := int(own.Min.Y * perMM); py < int(own.Max.Y*perMM); py++ {
			for px := int(own.Min.X * perMM); px < int(own.Max.X*perMM); px++ {
				at := px - int(window.Min.X*perMM) + tileMargin*perMM
				down := py - int(window.Min.Y*perMM) + tileMargin*perMM
				if page.dark(at, down) {
					near.darken(px, py)
				}
			}
		}
	}
	lost, dark := 0, 0
	for y := range whole.high {
		for px := range whole.wide {
			if whole.dark(px, y) {
				dark++
				if !near.dark(px, y) {
					lost++
				}
			}
		}
	}
	require.Greater(t, dark, 10000)
	require.Zero(t, lost, "of %d dots", dark)
}

// darken marks all within two dots.
func (m image) darken(x, y int) {
	for dy := -2; dy <= 2; dy++ {
		for dx := -2; dx <= 2; dx++ {
			if px, py := x+dx, y+dy; px >= 0 && py >= 0 && px < m.wide && py < m.high {
				m.gray[py*m.wide+px] = 0
			}
		}
	}
}
