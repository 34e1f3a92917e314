package theme

import "strconv"

// ink is one colour in the three ways a terminal can be told it. The 256
// colours are chosen by hand: the nearest one is not always the one with
// enough contrast.
type ink struct {
	rgb  uint32
	c256 int16
	c16  int8 // 0 to 15, or own
}

// own is the colour that the terminal writes in by itself.
const own = -1

var terminal = ink{c256: own, c16: own}

func (k ink) isOwn() bool { return k.c256 == own }

// sgr is the code that switches the ink on, in front or behind; "" for the
// terminal's own.
func (k ink) sgr(c Colour, behind bool) string {
	lead, shift := "38", 30
	if behind {
		lead, shift = "48", 40
	}
	switch {
	case k.isOwn() || c <= NoColour:
		return ""
	case c == TrueColour:
		return lead + ";2;" + num(k.rgb>>16&255) + ";" + num(k.rgb>>8&255) + ";" + num(k.rgb&255)
	case c == Colour256:
		return lead + ";5;" + num(uint32(k.c256))
	case k.c16 == own:
		return ""
	case k.c16 >= 8:
		return num(uint32(shift + 60 + int(k.c16) - 8))
	}
	return num(uint32(shift + int(k.c16)))
}

func num(n uint32) string { return strconv.FormatUint(uint64(n), 10) }
