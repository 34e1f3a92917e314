package lay

import (
	"math"
	"slices"
)

// mirrored reflects an outline in x; the ring keeps its sense.
func mirrored(o []Point) []Point {
	out := make([]Point, len(o))
	for i, p := range o {
		out[len(o)-1-i] = Point{-p.X, p.Y}
	}
	return out
}

// turned turns an outline by degrees, x towards y. Quarter turns are exact;
// of others the corners are rounded to whole steps.
func turned(o []Point, degrees int) []Point {
	out := make([]Point, len(o))
	for i, p := range o {
		out[i] = turnedPoint(p, degrees)
	}
	return out
}

func turnedPoint(p Point, degrees int) Point {
	switch ((degrees % 360) + 360) % 360 {
	case 0:
		return p
	case 90:
		return Point{-p.Y, p.X}
	case 180:
		return Point{-p.X, -p.Y}
	case 270:
		return Point{p.Y, -p.X}
	}
	s, c := math.Sincos(float64(degrees) * math.Pi / 180)
	x, y := float64(p.X), float64(p.Y)
	return Point{
		int64(math.Round(float64(x*c) - float64(y*s))),
		int64(math.Round(float64(x*s) + float64(y*c))),
	}
}

// opened is the whole piece of a half: the half and its reflection, the fold
// edge gone.
func opened(half []Point) []Point {
	n := len(half)
	for i := range half {
		if half[i].X == 0 && half[(i+1)%n].X == 0 {
			// From the end of the fold edge round to its start, and back.
			out := make([]Point, 0, 2*n-2)
			for k := range n {
				out = append(out, half[(i+1+k)%n])
			}
			for k := n - 2; k > 0; k-- {
				p := half[(i+1+k)%n]
				out = append(out, Point{-p.X, p.Y})
			}
			return out
		}
	}
	return half
}

// ownMirror says whether the outline is its own mirror image, and about which
// doubled x.
func ownMirror(o []Point) (twice int64, ok bool) {
	lo, hi := bounds(o)
	m := moved(mirrored(o), Point{lo.X + hi.X, 0})
	return lo.X + hi.X, sameOutline(o, m)
}

// halved is the half right of a middle line at x = 0; nil where the line does
// not cut the outline in one straight edge.
func halved(o []Point) []Point {
	twice, ok := ownMirror(o)
	if !ok || twice%2 != 0 {
		return nil
	}
	o = moved(o, Point{-twice / 2, 0})
	var out []Point
	n := len(o)
	crossings := 0
	for i, p := range o {
		q := o[(i+1)%n]
		if p.X >= 0 {
			out = append(out, p)
		}
		if p.X == 0 {
			crossings++
		}
		if p.X < 0 && q.X > 0 || p.X > 0 && q.X < 0 {
			// An edge and its mirror image are one: it lies square to the line.
			if p.Y != q.Y {
				return nil
			}
			out = append(out, Point{0, p.Y})
			crossings++
		}
	}
	if crossings != 2 {
		return nil
	}
	return tidy(out)
}

// placing is how a member of a strip is to lie.
type placing int8

const (
	freely placing = iota
	freelyMirrored
	onTheFold
	wholly // opened and laid whole
)

// stances lists the ways in which an item may lie in the strip.
func (b *builder) stances(across zone, it *Item, simple, outline []Point, how placing) []stance {
	var out []stance
	add := func(turn int, mirror, far, fixed bool, f func([]Point) []Point, m Point) {
		st := stance{turn: turn, mirror: mirror, far: far, outline: f(outline), simple: f(simple)}
		lo, hi := bounds(st.outline)
		st.xlo, st.xhi = float64(across.from-lo.X), float64(across.to-hi.X)
		if fixed {
			x := 0.0
			if far {
				x = float64(across.to)
			}
			st.xlo, st.xhi = x, x
		}
		st.gx, st.gy = b.gratings(it, m, fixed)
		b.onTape(&st, f([]Point{it.Grain[0]})[0].X, it.Grain[0] != it.Grain[1])
		for _, o := range out {
			if sameOutline(moved(o.outline, o.box()), moved(st.outline, st.box())) && o.gx == st.gx && o.gy == st.gy && o.far == st.far && !fixed {
				return
			}
		}
		out = append(out, st)
	}
	for _, t := range b.turns(it, how == onTheFold) {
		switch how {
		case onTheFold:
			half := t != 0
			add(t, half, false, true, func(o []Point) []Point {
				if half {
					return turned(mirrored(o), 180)
				}
				return o
			}, turnedPoint(it.Match.At, t))
			if b.cloth.Fold == ToMiddle {
				add(t, !half, true, true, func(o []Point) []Point {
					if half {
						return turned(o, 180)
					}
					return mirrored(o)
				}, turnedPoint(it.Match.At, t))
			}
		case freelyMirrored:
			add(t, true, false, false, func(o []Point) []Point { return turned(mirrored(o), t) }, turnedPoint(Point{-it.Match.At.X, it.Match.At.Y}, t))
		default:
			add(t, false, false, false, func(o []Point) []Point { return turned(o, t) }, turnedPoint(it.Match.At, t))
		}
	}
	return out
}

// box is what brings the box corner of the outline to 0.
func (st *stance) box() Point {
	lo, _ := bounds(st.outline)
	return Point{-lo.X, -lo.Y}
}

// turns are the turns that an item may take on this cloth.
func (b *builder) turns(it *Item, fold bool) []int {
	var out []int
	add := func(t int) {
		if t = ((t % 360) + 360) % 360; !slices.Contains(out, t) {
			out = append(out, t)
		}
	}
	for _, t := range it.Turns {
		if b.cloth.Nap && t != 0 || fold && t != 0 && t != 180 {
			continue
		}
		add(t)
	}
	if !fold && !b.cloth.Nap && b.cloth.OffGrain > 0 {
		for _, t := range slices.Clone(out) {
			add(t + b.cloth.OffGrain)
			add(t - b.cloth.OffGrain)
		}
	}
	if len(out) == 0 {
		out = []int{0}
	}
	return out
}

// gratings are the places that the repeats leave to a match point m.
func (b *builder) gratings(it *Item, m Point, fixed bool) (gx, gy grating) {
	gx, gy = grating{0, 1}, grating{0, 1}
	if b.cloth.RepeatAlong > 0 && it.Match.Along {
		gy = grating{float64(b.phase - m.Y), float64(b.cloth.RepeatAlong)}
	}
	if b.cloth.RepeatAcross > 0 && it.Match.Across && !fixed {
		gx = grating{float64(b.cloth.stripeAt() - m.X), float64(b.cloth.RepeatAcross)}
	}
	return gx, gy
}

// onTape sets the places of a stance to the tape, where no repeat does: its
// grain line, or else its nearest edge, and its end towards the cut end. Where
// the cloth leaves no whole step across, finer marks do.
func (b *builder) onTape(st *stance, grain int64, hasGrain bool) {
	if b.grid.along == 0 {
		return
	}
	lo, _ := bounds(st.outline)
	if !hasGrain {
		grain = lo.X
	}
	if st.gx.step == 1 && st.xlo < st.xhi {
		for _, step := range []int64{b.grid.across, finer(b.grid.across, b.p.Unit)} {
			if g := (grating{float64(-grain), float64(step)}); step > 1 && g.has(st.xlo, st.xhi) {
				st.gx = g
				break
			}
		}
	}
	if st.gy.step == 1 {
		st.gy = grating{float64(-lo.Y), float64(b.grid.along)}
	}
}

// stripeAt is where, from the fold or the left selvage, a stripe centre lies.
func (c Cloth) stripeAt() int64 {
	if c.Stripe == "midway" {
		return c.RepeatAcross / 2
	}
	return 0
}
