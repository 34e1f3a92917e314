package lay

import (
	"errors"
	"fmt"
	"math"

	"chalkfold/pattern"
)

// Verify checks a lay by the rules of the cloth, with exact tests that share
// nothing with the search: whole numbers only. It lists all that is wrong; an
// empty list means that the lay may be cut.
func Verify(p Problem, l Lay) []error {
	var out []error
	for i := range l.Placed {
		q := &l.Placed[i]
		if q.Item < 0 || q.Item >= len(p.Items) {
			return append(out, fmt.Errorf("piece %d of the lay is none of the problem", i+1))
		}
		if err := verifyOne(&p, &l, q); err != nil {
			out = append(out, err)
		}
		if err := verifyRoom(&p, &l, q); err != nil {
			out = append(out, err)
		}
	}
	out = append(out, verifyPairs(&p, &l)...)
	out = append(out, verifyCount(&p, &l)...)
	out = append(out, verifyPins(&p, &l)...)
	return append(out, verifyRepeats(&p, &l)...)
}

// verifyOne checks one placed piece by itself: that it is the piece as it was
// drafted, its grain, its fold, the selvages and the flaws.
func verifyOne(p *Problem, l *Lay, q *Placed) error {
	it := &p.Items[q.Item]
	for _, check := range []func(*Problem, *Lay, *Placed, *Item) error{verifyTurn, verifyFold, verifyDepth, verifyShape, verifySelvages, verifyFlaws} {
		if err := check(p, l, q, it); err != nil {
			return fmt.Errorf("%s %d: %w", it.name(), q.Copy, err)
		}
	}
	return nil
}

// verifyTurn: only turns that the piece, the nap and the grain allow.
func verifyTurn(p *Problem, _ *Lay, q *Placed, it *Item) error {
	if p.Cloth.Nap && q.Turn != 0 {
		return errors.New("it is turned, on cloth with a nap")
	}
	off := p.Cloth.OffGrain
	if q.OnFold || p.Cloth.Nap {
		off = 0
	}
	allowed := it.Turns
	if len(allowed) == 0 {
		allowed = []int{0}
	}
	for _, t := range allowed {
		d := ((q.Turn-t)%360 + 360) % 360
		if d == 0 || off > 0 && (d == off || d == 360-off) {
			return verifyGrain(it, q)
		}
	}
	return fmt.Errorf("it is turned by %d degrees, off the grain", q.Turn)
}

// verifyGrain: at an upright turn both ends of an upright grain line have the
// same place across.
func verifyGrain(it *Item, q *Placed) error {
	if q.Turn%180 != 0 || it.Grain[0] == it.Grain[1] || it.Grain[0].X != it.Grain[1].X {
		return nil
	}
	if a, b := drafted(it.Grain[0], q), drafted(it.Grain[1], q); a.X != b.X {
		return fmt.Errorf("the ends of its grain line lie %d steps apart across", a.X-b.X)
	}
	return nil
}

// drafted carries a drafted point to where the placed piece has it.
func drafted(p Point, q *Placed) Point {
	if q.Mirror {
		p.X = -p.X
	}
	switch q.Turn {
	case 0:
	case 90:
		p.X, p.Y = -p.Y, p.X
	case 180:
		p.X, p.Y = -p.X, -p.Y
	case 270:
		p.X, p.Y = p.Y, -p.X
	default:
		a := float64(q.Turn) / 180 * math.Pi
		x, y := float64(p.X), float64(p.Y)
		p.X = int64(math.Floor(x*math.Cos(a) - y*math.Sin(a) + 0.5))
		p.Y = int64(math.Floor(x*math.Sin(a) + y*math.Cos(a) + 0.5))
	}
	return Point{p.X + q.At.X, p.Y + q.At.Y}
}

// verifyShape: the outline is the drafted one, carried; at a slant turn within
// the one step that rounding takes.
func verifyShape(p *Problem, _ *Lay, q *Placed, it *Item) error {
	want := make([]Point, 0, 2*len(it.Outline))
	for _, c := range it.Outline {
		want = append(want, drafted(c, q))
	}
	if it.Cut == pattern.OnFold && !q.OnFold {
		// Laid whole: the other half too, without the points of the fold.
		for k := len(it.Outline) - 1; k >= 0; k-- {
			c := it.Outline[k]
			want = append(want, drafted(Point{-c.X, c.Y}, q))
		}
		return sameArea(want, q.Outline, it)
	}
	if q.OnFold && it.Cut == pattern.Single {
		return verifyHalf(p, q, it)
	}
	slack := int64(0)
	if q.Turn%90 != 0 {
		slack = 1
	}
	if len(want) != len(q.Outline) {
		return errors.New("its outline is not the drafted one")
	}
	if q.Mirror {
		for i, j := 0, len(want)-1; i < j; i, j = i+1, j-1 {
			want[i], want[j] = want[j], want[i]
		}
	}
	for i := range want {
		a, b := want[i], q.Outline[i]
		if dx, dy := a.X-b.X, a.Y-b.Y; max(dx, -dx, dy, -dy) > slack {
			return errors.New("its outline is not the drafted one")
		}
	}
	return nil
}

// sameArea: every corner of the outline is one of the drafted corners, and the
// area is that of both halves.
func sameArea(want, got []Point, it *Item) error {
	known := map[Point]bool{}
	for _, c := range want {
		known[c] = true
	}
	for _, c := range got {
		if !known[c] {
			return errors.New("its opened outline has a corner that was not drafted")
		}
	}
	if area2(got) != 2*area2(it.Outline) {
		return errors.New("its opened outline is not twice its half")
	}
	return nil
}

// area2 is twice the area within an outline.
func area2(o []Point) int64 {
	var sum int64
	for i := 1; i < len(o); i++ {
		a, b := o[i-1], o[i]
		sum += (a.X-o[0].X)*(b.Y-o[0].Y) - (a.Y-o[0].Y)*(b.X-o[0].X)
	}
	return max(sum, -sum)
}

// verifyHalf: a single piece laid as its half is its own mirror image.
func verifyHalf(_ *Problem, q *Placed, it *Item) error {
	if 2*area2(q.Outline) != area2(it.Outline) {
		return errors.New("its half is not half of it")
	}
	lo, hi := it.Outline[0], it.Outline[0]
	for _, c := range it.Outline {
		lo.X, hi.X = min(lo.X, c.X), max(hi.X, c.X)
	}
	known := map[Point]bool{}
	for _, c := range it.Outline {
		known[c] = true
	}
	for _, c := range it.Outline {
		if !known[Point{lo.X + hi.X - c.X, c.Y}] {
			return errors.New("it is not its own mirror image, so its half cannot lie on the fold")
		}
	}
	return nil
}

// verifyFold: what is cut on the fold touches the fold with its whole fold
// edge, in two layers, and only on folded cloth.
func verifyFold(p *Problem, _ *Lay, q *Placed, it *Item) error {
	if !q.OnFold {
		if it.Cut == pattern.OnFold && p.Cloth.Fold != Flat && p.Cloth.Fold != Across {
			return errors.New("it is to be cut on the fold and lies off it")
		}
		return verifyLayers(p, q, it)
	}
	switch p.Cloth.Fold {
	case Flat:
		return errors.New("it lies on a fold, and the cloth has none")
	case Across:
		return errors.New("it lies on a fold, and the cloth has none along the grain")
	}
	fold := int64(0)
	if q.Far {
		if p.Cloth.Fold != ToMiddle {
			return errors.New("it lies on the far fold, and the cloth has none")
		}
		fold = p.Cloth.Width / 2
	}
	edges := 0
	for i, c := range q.Outline {
		d := q.Outline[(i+1)%len(q.Outline)]
		if c.X == fold && d.X == fold {
			edges++
		}
	}
	switch {
	case edges != 1:
		return errors.New("its fold edge does not lie on the fold")
	case q.Layers != 2:
		return errors.New("on the fold it is cut from two layers")
	case q.Turn != 0 && q.Turn != 180:
		return errors.New("on the fold it may only lie top up or top down")
	case q.Mirror != (q.Turn == 180) != q.Far:
		return errors.New("its half is turned off the fold")
	}
	return nil
}

// verifyLayers: a pair gives two mirror images, from two layers or as two
// entries; what is cut once has one layer, or its second one is wasted.
func verifyLayers(p *Problem, q *Placed, it *Item) error {
	single := p.Cloth.Fold == Flat || q.Opened || q.Beside
	once := it.Cut == pattern.Single || it.Cut == pattern.OnFold && p.Cloth.Fold == Across
	switch {
	case q.Opened && (p.Cloth.Fold == Flat || !once):
		return errors.New("it lies in an opened part where it does not belong")
	case single && q.Layers != 1 || !single && q.Layers != 2:
		return fmt.Errorf("it lies in %d layers", q.Layers)
	}
	wantMirror := single && it.Cut == pattern.Pair && q.Copy%2 == 0
	if q.Mirror != wantMirror {
		return errors.New("it is the wrong one of the two mirror images")
	}
	return nil
}
