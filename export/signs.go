package export

import (
	"math"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const (
	bracketIn   = 16.0  // how far inside the edge the bracket runs
	bracketLong = 240.0 // longer helps nobody
	shortOf     = 1.5   // between an arrow's tip and the edge it points at
	signSize    = 5.0   // lettering along signs
	leastSize   = 2.6   // below this nobody reads at the table
)

// foldSign is the bracketed arrow that points at the fold edge from both its
// ends, and the words along it.
func foldSign(p pattern.Piece) []Item {
	_, edge := offFold(p.CutLine, p.Fold)
	if edge == nil {
		return nil
	}
	a, b := edge.Start(), edge.End()
	along := a.To(b).Unit()
	in := along.Left()
	middle := a.Lerp(b, 0.5)
	if middle.To(p.CutLine.Bounds().Centre()).Dot(in) < 0 {
		in = in.Scale(-1)
	}
	long := min(bracketLong, 0.6*a.Dist(b))
	deep := min(bracketIn, 0.25*long)
	from, to := middle.Add(along.Scale(-long/2)), middle.Add(along.Scale(long/2))
	path := geom.Lines(
		from.Add(in.Scale(shortOf)), from.Add(in.Scale(deep)),
		to.Add(in.Scale(deep)), to.Add(in.Scale(shortOf)),
	)
	words := "place on fold"
	size := max(min(signSize, 0.9*long/TextWidth(words, 1)), leastSize)
	// The words read upwards along the fold, on the inner side of the bracket.
	at := middle.Add(in.Scale(deep + 1.5))
	turn := upright(along)
	if sin, cos := math.Sincos(turn * degree); in.Dot(geom.Vector{X: sin, Y: -cos}) < 0 {
		at = at.Add(in.Scale(ascent * size))
	} else {
		at = at.Add(in.Scale(descent * size))
	}
	text := Item{Role: pattern.RoleText, Kind: Words, Name: "fold", Text: words, At: at, Height: size, Turn: turn, Middle: true}
	return []Item{
		{Role: pattern.RoleFold, Name: "place on fold", Path: path, Heads: HeadsBoth, Sign: true},
		offLines(text, along, (long-TextWidth(words, size))/2, p.Balance),
	}
}

// offLines slides words along until no balance line crosses them, at most
// reach either way; where there is no such place they stay.
func offLines(i Item, along geom.Vector, reach float64, lines []pattern.Balance) Item {
	crossed := func(b geom.Box) bool {
		for _, l := range lines {
			if b.Grow(1).Overlaps(l.Line.Bounds()) {
				return true
			}
		}
		return false
	}
	at := i.At
	for s := 0.0; s <= reach; s += 2 {
		for _, way := range [2]float64{s, -s} {
			i.At = at.Add(along.Scale(way))
			if !crossed(i.Bounds()) {
				return i
			}
		}
	}
	i.At = at
	return i
}

// upright is the turn in degrees of words along v that are not upside down;
// along a level from left to right, along an upright line upwards.
func upright(v geom.Vector) float64 {
	t := math.Atan2(v.Y, v.X) / degree
	for t >= 90-1e-9 {
		t -= 180
	}
	for t < -90-1e-9 {
		t += 180
	}
	return t
}

// grainSign is the long arrow along the warp. Cloth with a nap has one head,
// down; else both ways are alike.
func grainSign(p pattern.Piece, oneWay bool) []Item {
	g := p.Grain
	if g.A.Near(g.D, onLine) {
		return nil
	}
	heads := HeadsBoth
	if oneWay {
		heads = HeadAtEnd
		if g.D.Y < g.A.Y {
			g = g.Reverse()
		}
	}
	return []Item{{Role: pattern.RoleGrain, Name: "grain", Path: geom.Path{g}, Heads: heads}}
}
