package theme

import (
	"math"
	"testing"

	"chalkfold/ui/canvas"
	"github.com/stretchr/testify/require"
)

// light is the relative luminance of WCAG 2.1.
func light(rgb uint32) float64 {
	lin := func(c uint32) float64 {
		v := float64(c&255) / 255
		if v <= 0.03928 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*lin(rgb>>16) + 0.7152*lin(rgb>>8) + 0.0722*lin(rgb)
}

// contrast is the ratio of WCAG 2.1: 1 to 21.
func contrast(a, b uint32) float64 {
	x, y := light(a), light(b)
	if x < y {
		x, y = y, x
	}
	return (x + 0.05) / (y + 0.05)
}

// place256 is the colour behind a number of xterm's 256, from 16 on.
func place256(n int16) uint32 {
	if n >= 232 {
		v := uint32(8 + 10*(n-232))
		return v<<16 | v<<8 | v
	}
	steps := [6]uint32{0, 95, 135, 175, 215, 255}
	n -= 16
	return steps[n/36]<<16 | steps[n/6%6]<<8 | steps[n%6]
}

// xterm16 are xterm's own sixteen. Other terminals have others near them.
var xterm16 = [16]uint32{
	0x000000, 0xCD0000, 0x00CD00, 0xCDCD00, 0x0000EE, 0xCD00CD, 0x00CDCD, 0xE5E5E5,
	0x7F7F7F, 0xFF0000, 0x00FF00, 0xFFFF00, 0x5C5CFF, 0xFF00FF, 0x00FFFF, 0xFFFFFF,
}

func (k ink) in(c Colour) uint32 {
	switch c {
	case Colour16:
		return xterm16[k.c16]
	case Colour256:
		return place256(k.c256)
	}
	return k.rgb
}

func TestTheFormula(t *testing.T) {
	require.InDelta(t, 21, contrast(0, 0xFFFFFF), 1e-9)
	require.InDelta(t, 4.54, contrast(0x767676, 0xFFFFFF), 0.01)
	require.InDelta(t, 6.6, contrast(0xA23B00, 0xFFFFFF), 0.05)
	require.Equal(t, uint32(0xAF5F00), place256(130))
	require.Equal(t, uint32(0x767676), place256(243))
}

// needs is the least contrast of each ink: words 4.5 (7 for a class), lines
// and marks of the focus 3.
func needs(name string, i int) float64 {
	switch {
	case i == guideInk:
		return 3
	case name == "projector", name == "projector-dark", name == "high-contrast":
		return 7
	}
	return 4.5
}

func TestContrastOfThePaintedThemes(t *testing.T) {
	painted := 0
	for _, th := range table {
		if th.back.isOwn() {
			continue
		}
		painted++
		for _, c := range []Colour{Colour16, Colour256, TrueColour} {
			for i, k := range th.inks {
				require.False(t, k.isOwn(), "%s: ink %d would be the terminal's own on a background that is not", th.name, i)
				got := contrast(k.in(c), th.back.in(c))
				require.GreaterOrEqual(t, got, needs(th.name, i), "%s, ink %d, colours %d", th.name, i, c)
			}
		}
	}
	require.Equal(t, 5, painted)
}

// The plain theme does not know its background: its accents show on all three,
// and what must be read is in the terminal's own colour.
func TestContrastOfThePlainTheme(t *testing.T) {
	plain, err := For("plain")
	require.NoError(t, err)
	accents := map[uint32]bool{}
	for i, k := range plain.inks {
		if i == textInk || i == lineInk || i == selectedInk {
			require.True(t, k.isOwn(), "ink %d", i)
			continue
		}
		accents[k.rgb] = true
		for _, back := range []uint32{0xFFFFFF, 0x000000, 0x101214} {
			require.GreaterOrEqual(t, contrast(k.rgb, back), 3.0, "ink %d on %06X", i, back)
			require.GreaterOrEqual(t, contrast(place256(k.c256), back), 3.0, "ink %d on %06X, 256 colours", i, back)
			if k.c16 != own {
				require.GreaterOrEqual(t, contrast(xterm16[k.c16], back), 3.0, "ink %d on %06X, 16 colours", i, back)
			}
		}
	}
	require.Len(t, accents, 3)
}

func TestMonoHasNoColour(t *testing.T) {
	mono, err := For("mono")
	require.NoError(t, err)
	for _, k := range append(mono.inks[:], mono.back) {
		require.True(t, k.isOwn())
	}
	require.False(t, mono.With(TrueColour).Paints())
}

// Without colours what differs still differs: newest and selected are not
// written like plain text.
func TestWeightWithoutColour(t *testing.T) {
	for _, name := range Names() {
		th, err := For(name)
		require.NoError(t, err)
		th = th.With(NoColour)
		require.Equal(t, "\x1b[0;1mx\x1b[0m", th.Style(Newest).Render("x"))
		require.Equal(t, "\x1b[0;1;7mx\x1b[0m", th.Style(Selected).Render("x"))
		require.Equal(t, "\x1b[0;1mx\x1b[0m", th.Style(Warn).Render("x"))
		require.Equal(t, "x", th.Style(Text).Render("x"))
		require.Equal(t, "\x1b[0;1m", th.Pens()[canvas.Newest])
		require.Equal(t, "", th.Pens()[canvas.Line])
	}
}
