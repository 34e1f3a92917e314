package canvas

import (
	"fmt"
	"strings"
)

// Glyphs says which characters a canvas is drawn with.
type Glyphs int8

// The three sets. Braille is the finest; Blocks suits console fonts without
// braille; ASCII works everywhere.
const (
	Braille Glyphs = iota
	Blocks
	ASCII
)

var glyphNames = [...]string{Braille: "braille", Blocks: "block", ASCII: "ascii"}

// ParseGlyphs reads the name of a set, in any case.
func ParseGlyphs(name string) (Glyphs, error) {
	switch strings.ToLower(strings.TrimSpace(name)) {
	case "braille":
		return Braille, nil
	case "block", "blocks":
		return Blocks, nil
	case "ascii":
		return ASCII, nil
	}
	return Braille, fmt.Errorf("glyphs: %q is not a set of glyphs; use braille, block or ascii", name)
}

// String is the name that ParseGlyphs reads.
func (g Glyphs) String() string { return glyphNames[g.known()] }

// Sample is a curve in the set's own glyphs: gaps or boxes in it say that the
// font lacks them.
func (g Glyphs) Sample() string {
	return [...]string{Braille: "⢀⡠⠔⠒⠉⠉⠒⠢⢄⡀⣀⠤⠒⠉", Blocks: "▄▄▀▀▄▄██▀▄", ASCII: "_.-''-._|/\\+--"}[g.known()]
}

// Next is the set after this one; after the last comes the first.
func (g Glyphs) Next() Glyphs { return (g.known() + 1) % Glyphs(len(glyphNames)) }

// Cell is the number of dots across and down one cell. ASCII counts as two by
// four: these are samples from which the direction of a line is taken.
func (g Glyphs) Cell() (w, h int) {
	if g == Blocks {
		return 1, 2
	}
	return 2, 4
}

// known keeps an unheard-of set from reaching a table.
func (g Glyphs) known() Glyphs {
	if g < 0 || int(g) >= len(glyphNames) {
		return Braille
	}
	return g
}
