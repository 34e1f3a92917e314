package lay

import (
	"math"
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Need is what the pieces of a sheet ask of the cloth.
type Need struct {
	Halves  []measure.Length // of each full-length piece, at its widest, as it lies on folded cloth
	Longest measure.Length
	Facing  measure.Length // the widest of the small pieces; 0: there are none
}

// Hand is the answer of the hand rule for one width of cloth.
type Hand struct {
	Width   measure.Length
	Half    measure.Length // what half the width gives, washed and without the selvage
	Lengths int            // 1: all side by side; 0: the cloth is too narrow
	Extra   bool           // the facings need a part of their own
	Lay     measure.Working
	Buy     measure.Working // with what the cloth loses in the wash
	Yards   measure.Length  // Buy, up to the next 1/8 yd
	Metric  measure.Length  // Buy, up to the next 10 cm
}

// Facings is the length that facings take where they do not fit beside the
// large pieces: common practice, no source.
const Facings = 10 * measure.Inch

// fullLength is the least part of the longest piece from which on a piece
// counts as full length.
const fullLength = 0.5

// Selvage is what is not cut at each edge where nothing else is known: the
// usual allowance of an inch in all; common practice, no source.
const Selvage = measure.Inch / 2

// Yard and the steps in which cloth is sold.
const (
	Yard       = 36 * measure.Inch
	YardStep   = Yard / 8
	MetricStep = 10 * measure.Centimetre
)

// NeedOf reads off the pieces of a complete sheet what they ask.
func NeedOf(s *pattern.Sheet) (Need, bool) {
	var n Need
	type size struct{ wide, long measure.Length }
	var sizes []size
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if len(p.CutLine) == 0 {
			continue
		}
		b := p.CutLine.Bounds()
		sizes = append(sizes, size{measure.Length(b.Width()), measure.Length(b.Height())})
		n.Longest = max(n.Longest, measure.Length(b.Height()))
	}
	for _, z := range sizes {
		if z.long >= n.Longest*fullLength {
			n.Halves = append(n.Halves, z.wide)
		} else {
			n.Facing = max(n.Facing, z.wide)
		}
	}
	return n, len(n.Halves) > 0 && s.Complete
}

// Rule is the hand rule for one cloth, folded lengthwise. Selvages that are
// not given count half an inch each.
func Rule(n Need, c pattern.Cloth) Hand {
	edge := c.Edges
	if edge == 0 {
		edge = Selvage
	}
	h := Hand{Width: c.Width, Half: measure.Length(float64(c.Width)*(1-c.ShrinkAcross/100))/2 - edge}
	var room measure.Length
	h.Lengths, room = rows(n.Halves, h.Half)
	if h.Lengths == 0 {
		return h
	}
	h.Extra = n.Facing > 0 && (h.Lengths == 1 || n.Facing > room)
	h.Lay = measure.Drawn("longest piece", n.Longest)
	if h.Lengths > 1 {
		h.Lay = measure.Drawn("longest piece", n.Longest).Times(float64(h.Lengths))
	}
	if h.Extra {
		h.Lay = h.Lay.Plus(measure.Of("facings", Facings))
	}
	h.Buy = Bought(h.Lay, c.ShrinkAlong)
	h.Yards = h.Buy.Result().Up(YardStep)
	h.Metric = h.Buy.Result().Up(MetricStep)
	return h
}

// rows lays the widths side by side, widest first, into as few lengths as this
// simple way finds; room is the least that is left beside them.
func rows(halves []measure.Length, half measure.Length) (n int, room measure.Length) {
	var left []measure.Length
	for _, w := range descending(halves) {
		if w > half {
			return 0, 0
		}
		placed := false
		for i := range left {
			if w <= left[i] {
				left[i] -= w
				placed = true
				break
			}
		}
		if !placed {
			left = append(left, half-w)
		}
	}
	for i, l := range left {
		if i == 0 || l > room {
			room = l
		}
	}
	return len(left), room
}

func descending(ls []measure.Length) []measure.Length {
	out := append([]measure.Length(nil), ls...)
	for i := range out {
		for j := i; j > 0 && out[j] > out[j-1]; j-- {
			out[j], out[j-1] = out[j-1], out[j]
		}
	}
	return out
}

// Bought is what must be bought to have so much after the wash: it is divided
// by what stays, not multiplied by what goes.
func Bought(needed measure.Working, percent float64) measure.Working {
	if percent <= 0 || percent >= 100 {
		return needed
	}
	return needed.Over(1 - percent/100)
}

// Says is a length as it is asked for in a shop: "1 5/8 yd (1.5 m)".
func Says(yards, metric measure.Length) string {
	return eighths(yards) + " yd (" + strconv.FormatFloat(float64(metric)/1000, 'f', 1, 64) + " m)"
}

func eighths(l measure.Length) string {
	n := int(math.Round(float64(l / YardStep)))
	whole, part, of := n/8, n%8, 8
	for part > 0 && part%2 == 0 {
		part, of = part/2, of/2
	}
	switch {
	case part == 0:
		return strconv.Itoa(whole)
	case whole == 0:
		return strconv.Itoa(part) + "/" + strconv.Itoa(of)
	}
	return strconv.Itoa(whole) + " " + strconv.Itoa(part) + "/" + strconv.Itoa(of)
}
