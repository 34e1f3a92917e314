package canvas

import (
	"strings"
	"testing"

	"chalkfold/testdata/golden"
)

// One of everything, in the three sets of glyphs, without and with pens.
func TestScene(t *testing.T) {
	for _, g := range []Glyphs{Braille, Blocks, ASCII} {
		golden.Check(t, "scene-"+g.String()+".txt", scene(g).String(Palette{})+"\n")
	}
	pens := scene(Braille).String(signs)
	golden.Check(t, "scene-pens.txt", strings.ReplaceAll(pens, "\x1b", "ESC")+"\n")
}
