package pdf

import (
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"codeberg.org/go-fonts/dejavu/dejavusans"
)

// Another reader of faces must find the same glyphs and widths as ours.
func TestFaceAgreesWithAnotherReader(t *testing.T) {
	other, err := sfnt.Parse(dejavusans.TTF)
	require.NoError(t, err)
	f := theFace()
	var buf sfnt.Buffer
	for r := rune(1); r < 0xffff; r++ {
		g, err := other.GlyphIndex(&buf, r)
		require.NoError(t, err)
		require.Equal(t, uint16(g), f.glyph[r], "%U", r)
	}
	for _, r := range "AjŵễΩЖ½→□ 1" {
		g, _ := other.GlyphIndex(&buf, r)
		wide, err := other.GlyphAdvance(&buf, g, fixed.I(int(f.units)), font.HintingNone)
		require.NoError(t, err)
		require.InDelta(t, float64(wide)/64, f.width(string(r), f.units), 1e-9, "%c", r)
	}
}

// The small face draws its letters with the same outlines, accents included.
func TestSubsetKeepsOutlines(t *testing.T) {
	letters := []rune("Learner 1/4 Nguyễn Thị Ánh Ελένη ½ \u00a0Ω\u2126□")
	small, err := sfnt.Parse(theFace().subset(sorted(set(letters))))
	require.NoError(t, err)
	whole, err := sfnt.Parse(dejavusans.TTF)
	require.NoError(t, err)
	var a, b sfnt.Buffer
	for _, r := range letters {
		ga, err := whole.GlyphIndex(&a, r)
		require.NoError(t, err)
		gb, err := small.GlyphIndex(&b, r)
		require.NoError(t, err)
		require.NotZero(t, gb, "%U", r)
		sa, err := whole.LoadGlyph(&a, ga, fixed.I(1000), nil)
		require.NoError(t, err)
		sb, err := small.LoadGlyph(&b, gb, fixed.I(1000), nil)
		require.NoError(t, err)
		require.Equal(t, append(sfnt.Segments(nil), sa...), append(sfnt.Segments(nil), sb...), "%c", r)
	}
	g, err := small.GlyphIndex(&b, 'Q')
	require.NoError(t, err)
	require.Zero(t, g, "a letter that was not asked for")
}

func set(letters []rune) map[rune]bool {
	out := map[rune]bool{}
	for _, r := range letters {
		out[r] = true
	}
	return out
}
