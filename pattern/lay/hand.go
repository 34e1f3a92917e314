package lay

import (
	"math"
	"slices"
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Need is what the pieces of a sheet ask of the cloth.
type Need struct {
	Halves    []measure.Length // of each full-length piece, at its widest, as it lies on folded cloth
	OnFold    []measure.Length // those of them that lie on the fold: no two in one length
	Longest   measure.Length
	Facing    measure.Length // the widest of the small pieces; 0: there are none
	Small     measure.Length // the longest of them
	Smalls    measure.Length // the widths of all of them, side by side
	SmallFold measure.Length // how long those of them are that lie on the fold, one below the other
}

// And is what both ask together.
func (n Need) And(m Need) Need {
	return Need{
		Halves: append(slices.Clone(n.Halves), m.Halves...), OnFold: append(slices.Clone(n.OnFold), m.OnFold...),
		Longest: max(n.Longest, m.Longest), Facing: max(n.Facing, m.Facing), Small: max(n.Small, m.Small), Smalls: n.Smalls + m.Smalls, SmallFold: n.SmallFold + m.SmallFold,
	}
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
// large pieces; sleeves, and facings that must lie on the fold one below the
// other, take theirs if that is more: common practice, no source.
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
	type size struct {
		wide, long measure.Length
		onFold     bool
	}
	var sizes []size
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if len(p.CutLine) == 0 {
			continue
		}
		b := p.CutLine.Bounds()
		z := size{measure.Length(b.Width()), measure.Length(b.Height()), p.Cut == pattern.OnFold}
		copies := max(p.Count, 1)
		if p.Cut == pattern.Pair {
			copies = max((p.Count+1)/2, 1)
		}
		for range min(copies, mostPieces) {
			sizes = append(sizes, z)
		}
		n.Longest = max(n.Longest, z.long)
	}
	for _, z := range sizes {
		switch {
		case z.long < n.Longest*fullLength:
			n.Facing, n.Small, n.Smalls = max(n.Facing, z.wide), max(n.Small, z.long), n.Smalls+z.wide
			if z.onFold {
				n.SmallFold += z.long
			}
			continue
		case z.onFold:
			n.OnFold = append(n.OnFold, z.wide)
		}
		n.Halves = append(n.Halves, z.wide)
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
	h.Lengths, room = rows(n, h.Half)
	if h.Lengths == 0 {
		return h
	}
	folds := n.SmallFold > 0 && len(n.OnFold) == h.Lengths // no length has its fold free
	h.Extra = n.Facing > 0 && (h.Lengths == 1 || n.Facing > room || folds)
	h.Lay = measure.Drawn("longest piece", n.Longest)
	if h.Lengths > 1 {
		h.Lay = measure.Drawn("longest piece", n.Longest).Times(float64(h.Lengths))
	}
	if h.Extra {
		h.Lay = h.Lay.Plus(extra(n, h.Half, folds))
	}
	h.Buy = Bought(h.Lay, c.ShrinkAlong)
	h.Yards = h.Buy.Result().Up(YardStep)
	h.Metric = h.Buy.Result().Up(MetricStep)
	return h
}

// sleeve is how much longer than "about" a small piece is that counts by its own
// length.
const sleeve = 1.2

// extra is what the small pieces take beyond the large ones: facings once, or
// as often as they do not lie side by side (they nest, so half a row more is not
// counted); a sleeve its length; those on the fold, where no length has its fold
// free, theirs one below the other.
func extra(n Need, half measure.Length, folds bool) measure.Working {
	w := measure.Of("facings", Facings)
	if rows := math.Round(float64(n.Smalls / half)); rows > 1 {
		w = w.Times(rows)
	}
	if n.Small > w.Result()*sleeve {
		w = measure.Drawn("longest small piece", n.Small)
	}
	if folds && n.SmallFold > w.Result() {
		w = measure.Drawn("facings on the fold", n.SmallFold)
	}
	return w
}

// rows lays the widths side by side, widest first, into as few lengths as this
// simple way finds; of those on the fold each has a length of its own. Room is
// the most that is left beside them.
func rows(need Need, half measure.Length) (n int, room measure.Length) {
	var left []measure.Length
	rest := descending(need.Halves)
	for _, w := range need.OnFold {
		if w > half {
			return 0, 0
		}
		left = append(left, half-w)
		if i := slices.Index(rest, w); i >= 0 {
			rest = slices.Delete(rest, i, i+1)
		}
	}
	for _, w := range rest {
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
