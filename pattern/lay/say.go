package lay

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Told is a lay told by tape.
type Told struct {
	Folding []measure.Sentence // how to fold, where that is more than edge to edge
	Pieces  []measure.Sentence // of each placed piece, from the cut end on
	Opened  measure.Sentence   // what is opened, said before the piece At; empty: nothing
	At      int
	After   []measure.Sentence // what decides the length, what is left over, what to do before cutting
}

// Say tells the lay by tape, from the cut end on, piece by piece: each number
// comes from the placed outline. Then what is opened, what decides the length,
// what is left over, and what to do before cutting.
func Say(p Problem, l Lay) []measure.Sentence {
	t := Tell(p, l)
	out := t.Folding
	for k, s := range t.Pieces {
		if k == t.At && !t.Opened.IsEmpty() {
			out = append(out, t.Opened)
		}
		out = append(out, s)
	}
	return append(out, t.After...)
}

// Tell is the same by its parts.
func Tell(p Problem, l Lay) Told {
	t := Told{Folding: Folding(p, l)}
	for k, q := range l.Placed {
		if q.Opened && t.Opened.IsEmpty() {
			says := "Opened out flat from {say} on."
			if p.Cloth.Fold == Across {
				says = "One layer from {say} on."
			}
			t.Opened, t.At = measure.Tell(says, length(l.Folded)), k
		}
		t.Pieces = append(t.Pieces, sayPiece(&p, &q, k+1))
	}
	t.After = sayAfter(&p, &l)
	return t
}

func sayAfter(p *Problem, l *Lay) []measure.Sentence {
	var out []measure.Sentence
	if last := deciding(p, l); last != "" {
		if lies := p.Cloth.Lies(*l); lies != l.Length {
			out = append(out, measure.Tell(last+" decides the length: it lies {say} long, so it takes {say}.", length(lies), length(l.Length)))
		} else {
			out = append(out, measure.Tell(last+" decides the length, {say}.", length(l.Length)))
		}
	}
	if w, h, layers, ok := leftOver(&p.Cloth, l); ok {
		says := "Left over: {} by {say}."
		switch {
		case layers == 2:
			says = "Left over, in two layers: {} by {say}."
		case p.Cloth.Fold == OffCentre:
			says = "Left over, in the single part: {} by {say}."
		}
		out = append(out, measure.Tell(says, length(w), length(h)))
	}
	nap := ""
	if p.Cloth.Nap {
		nap = " check that every top lies the same way,"
	}
	return append(out, measure.Tell("Before cutting: wash the cloth, count the pieces,"+nap+" measure a long grain line twice."))
}

// Folding says how to fold the cloth where that is more than edge to edge; of
// other folds it says nothing.
func Folding(p Problem, l Lay) []measure.Sentence {
	switch p.Cloth.Fold {
	case OffCentre:
		return []measure.Sentence{measure.Tell(
			"Fold one selvage in, right sides together, until it lies {say} from the fold all along; beyond it the cloth is single, {say} wide.",
			length(l.Depth), length(p.Cloth.Width-2*l.Depth))}
	case Across:
		out := []measure.Sentence{measure.Tell(
			"Fold the cloth across, right sides together, selvages on selvages, until the cut end lies {say} from the fold; lengths along are from the fold.",
			length(l.Folded))}
		if p.Cloth.Nap {
			out = append(out, measure.Tell("It has a nap: cut along the fold, and turn the upper layer end for end, so that the nap of both runs the same way."))
		}
		return out
	}
	return nil
}

// sayPiece is one line: which piece, how it lies, where along and across.
func sayPiece(p *Problem, q *Placed, number int) measure.Sentence {
	it := &p.Items[q.Item]
	words := strconv.Itoa(number) + ". " + it.name()
	if it.Count > 1 && !(it.Cut == pattern.Pair && it.Count == 2) {
		words += " " + strconv.Itoa(q.Copy)
	}
	words += ", " + sayLayers(p, q, it)
	if q.OnFold {
		words += ", on the fold"
		if q.Far {
			words = words[:len(words)-len("on the fold")] + "on the far fold"
		}
	}
	words += ", " + sayTurn(q.Turn, &p.Cloth) + ": "
	lo, hi := bounds(q.Outline)
	if q.OnFold {
		return sayOnFold(p, q, words)
	}
	from := "the left selvage"
	if p.Cloth.Warps() && !q.Opened {
		from = "the fold"
	}
	args := []any{length(lo.Y), length(hi.Y), length(lo.X), length(hi.X)}
	words += "from {} to {say} along, from {} to {say} across from " + from
	if q.Turn%180 == 0 && it.Grain[0] != it.Grain[1] {
		words += "; both ends of the arrow {say} from " + from
		args = append(args, length(q.grain(it)))
	}
	return measure.Tell(words+".", args...)
}

// grain is how far across the placed grain line lies.
func (q *Placed) grain(it *Item) int64 {
	g := it.Grain[0]
	if q.Mirror {
		g.X = -g.X
	}
	return turnedPoint(g, q.Turn).plus(q.At).X
}

// sayOnFold tells the fold edge and the corner farthest from it.
func sayOnFold(p *Problem, q *Placed, words string) measure.Sentence {
	fold, from := int64(0), "the fold"
	if q.Far {
		fold, from = p.Cloth.Width/2, "the far fold"
	}
	off := func(c Point) int64 { return max(c.X-fold, fold-c.X) }
	lo, hi := int64(most), int64(-most)
	far := q.Outline[0]
	for _, c := range q.Outline {
		if c.X == fold {
			lo, hi = min(lo, c.Y), max(hi, c.Y)
		}
		if off(c) > off(far) {
			far = c
		}
	}
	return measure.Tell(words+"fold edge from {} to {say}, farthest corner {say} from "+from+" at {say}.",
		length(lo), length(hi), length(off(far)), length(far.Y))
}

func sayLayers(p *Problem, q *Placed, it *Item) string {
	switch {
	case q.OnFold:
		return "one"
	case q.Wasted:
		return "one, the second layer is wasted"
	case q.Layers == 2:
		return "two, from both layers"
	case q.Beside && it.Cut == pattern.Pair && q.Mirror:
		return "the mirror image, from the single part"
	case q.Beside:
		return "one, from the single part"
	case q.Opened:
		return "one layer"
	case it.Cut == pattern.Pair && q.Mirror:
		return "the mirror image"
	}
	return "one"
}

func sayTurn(turn int, c *Cloth) string {
	end := "the cut end"
	if c.Fold == Across {
		end = "the fold"
	}
	switch turn {
	case 0:
		return "top to " + end
	case 180:
		return "turned, top away from " + end
	}
	return "turned by " + strconv.Itoa(turn) + " degrees"
}

// deciding names the piece that reaches the end.
func deciding(p *Problem, l *Lay) string {
	end, name := int64(-1), ""
	for i := range l.Placed {
		if _, hi := bounds(l.Placed[i].Outline); hi.Y > end {
			end, name = hi.Y, p.Items[l.Placed[i].Item].name()
		}
	}
	return name
}

const (
	mostForLeftOver = 60          // pieces, above which no rest is looked for
	leastLeftOver   = 100 * PerMM // side of a rest that is worth keeping
)

// leftOver is the largest upright rectangle that no piece's box reaches into,
// and in how many layers.
func leftOver(c *Cloth, l *Lay) (w, h int64, layers int, ok bool) {
	if len(l.Placed) > mostForLeftOver || c.Opens(*l) {
		return 0, 0, 0, false
	}
	layers = 2
	var largest float64
	for k, z := range c.zones(l) {
		if a, b, area := z.leftOver(l, c.Lies(*l)); area > largest {
			w, h, largest = a, b, area
			if c.Fold == Flat || k == 1 {
				layers = 1
			}
		}
	}
	return w, h, layers, largest > 0
}

// zones are the stretches across that are looked through: what is double, then
// what is single.
func (c *Cloth) zones(l *Lay) []zone {
	switch c.Fold {
	case Flat, Across:
		return []zone{{c.Edge, c.Width - c.Edge}}
	case ToMiddle:
		return []zone{{0, c.Width/4 - c.Edge}}
	case OffCentre:
		return []zone{{0, l.Depth - c.Edge}, {l.Depth, c.Width - l.Depth - c.Edge}}
	}
	return []zone{{0, c.Width/2 - c.Edge}}
}

func (z zone) leftOver(l *Lay, end int64) (w, h int64, best float64) {
	left, right := z.from, z.to
	xs, ys := []int64{left, right}, []int64{0, end}
	type box struct{ lo, hi Point }
	var boxes []box
	for i := range l.Placed {
		lo, hi := bounds(l.Placed[i].Outline)
		boxes = append(boxes, box{lo, hi})
		xs, ys = append(xs, lo.X, hi.X), append(ys, lo.Y, hi.Y)
	}
	for _, x0 := range xs {
		for _, x1 := range xs {
			if x0 < left || x1 > right || x1-x0 < leastLeftOver {
				continue
			}
			for _, y0 := range ys {
				// As far along as nothing is in the way.
				y1 := end
				for _, b := range boxes {
					if b.lo.X < x1 && b.hi.X > x0 && b.hi.Y > y0 {
						y1 = min(y1, max(b.lo.Y, y0))
					}
				}
				if a := float64(x1-x0) * float64(y1-y0); y1-y0 >= leastLeftOver && a > best {
					best, w, h = a, x1-x0, y1-y0
				}
			}
		}
	}
	return w, h, best
}
