package export

import (
	"strconv"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/lay"
)

// cloth are the edges of the cloth, its fold, its selvages, its flaws and the
// lengths along it.
func (l *layout) cloth() []Item {
	c, found := &l.shown.Problem.Cloth, &l.shown.Lay
	wide, long := l.folded(), l.long()
	end := min(found.Folded, long)
	var out []Item
	line := func(role pattern.Role, name string, points ...lay.Point) {
		var at []geom.Point
		for _, p := range points {
			at = append(at, l.point(p))
		}
		out = append(out, Item{Role: role, Name: name, Path: geom.Lines(at...)})
	}
	if c.Fold == lay.Across {
		line(pattern.RoleFold, "fold of the cloth", lay.Point{}, lay.Point{X: wide})
	} else {
		line(pattern.RoleGuide, "cut end", lay.Point{}, lay.Point{X: wide})
	}
	if c.Warps() {
		line(pattern.RoleFold, "fold of the cloth", lay.Point{}, lay.Point{Y: end})
	} else {
		line(pattern.RoleGuide, "selvage", lay.Point{}, lay.Point{Y: end})
	}
	if c.Fold == lay.OffCentre { // the selvage that is folded in
		line(pattern.RoleGuide, "selvage of the upper layer", lay.Point{X: found.Depth}, lay.Point{X: found.Depth, Y: end})
		if c.Edge > 0 {
			line(pattern.RoleBalance, "not cut beyond", lay.Point{X: found.Depth - c.Edge}, lay.Point{X: found.Depth - c.Edge, Y: end})
		}
	}
	role, name := pattern.RoleGuide, "selvage"
	if c.Fold == lay.ToMiddle {
		role, name = pattern.RoleFold, "far fold of the cloth"
		line(pattern.RoleGuide, "selvages", lay.Point{X: wide / 2}, lay.Point{X: wide / 2, Y: end})
	}
	line(role, name, lay.Point{X: wide}, lay.Point{X: wide, Y: end})
	if e := c.Edge; e > 0 && c.Fold != lay.ToMiddle {
		line(pattern.RoleBalance, "not cut beyond", lay.Point{X: wide - e}, lay.Point{X: wide - e, Y: end})
		if !c.Warps() {
			line(pattern.RoleBalance, "not cut beyond", lay.Point{X: e}, lay.Point{X: e, Y: end})
		}
	}
	last := wide
	if l.opened() {
		last = c.Width
		name := "opened out flat"
		if c.Fold == lay.Across {
			name = "cut end of the upper layer"
		}
		line(pattern.RoleGuide, name, lay.Point{Y: end}, lay.Point{X: last, Y: end})
		line(pattern.RoleGuide, "selvage", lay.Point{Y: end}, lay.Point{Y: long})
		line(pattern.RoleGuide, "selvage", lay.Point{X: last, Y: end}, lay.Point{X: last, Y: long})
	}
	line(pattern.RoleGuide, "end", lay.Point{Y: long}, lay.Point{X: last, Y: long})
	if c.Fold == lay.Flat {
		for _, f := range c.Flaws {
			a, b := lay.Point{X: max(f.Across, 0), Y: f.Along}, lay.Point{X: min(f.Across+f.Width, c.Width), Y: min(f.Along+f.Length, long)}
			if a.X < b.X && a.Y < b.Y {
				line(pattern.RoleBalance, "flaw", a, lay.Point{X: b.X, Y: a.Y}, b, lay.Point{X: a.X, Y: b.Y}, a)
			}
		}
	}
	return append(out, l.ruler(wide, long)...)
}

// ruler marks the lengths along the cloth from its cut end, and its width.
func (l *layout) ruler(wide, long int64) []Item {
	step := 20 * measure.Centimetre
	if l.unit == measure.In {
		step = 6 * measure.Inch
	}
	var out []Item
	words := func(text string, at geom.Point) {
		out = append(out, Item{Role: pattern.RoleText, Kind: Words, Name: "length", Text: text, At: at, Height: leastSize})
	}
	mark := func(along measure.Length) {
		y := int64(float64(along) * lay.PerMM)
		p := l.point(lay.Point{Y: y})
		out = append(out, Item{Role: pattern.RoleGuide, Name: "length", Path: geom.Lines(geom.Point{X: p.X - 2, Y: p.Y}, p)})
		text := l.unit.Tape(along)
		words(text, geom.Point{X: micron(p.X - 3 - TextWidth(text, leastSize)), Y: micron(p.Y + leastSize/3)})
	}
	end := length(long)
	for along := measure.Length(0); along < end-step/3; along += step {
		mark(along)
	}
	mark(end)
	p := l.point(lay.Point{X: wide})
	text := l.unit.Say(length(wide))
	words(text, geom.Point{X: micron(p.X - TextWidth(text, leastSize)), Y: micron(p.Y - 1)})
	for _, f := range l.marks() {
		words(f.text, geom.Point{X: l.point(lay.Point{X: f.at}).X, Y: micron(l.at.Y - 1)})
	}
	return out
}

// clothMark is a word above the cloth.
type clothMark struct {
	text string
	at   int64 // across
}

// marks name the fold, and of cloth folded off centre what is double and what
// is single.
func (l *layout) marks() []clothMark {
	c, found := &l.shown.Problem.Cloth, &l.shown.Lay
	switch c.Fold {
	case lay.Flat:
		return nil
	case lay.Across:
		return []clothMark{{"fold, double up to " + l.unit.Say(length(found.Folded)), 0}}
	case lay.OffCentre:
		return []clothMark{{"fold", 0}, {"single from " + l.unit.Tape(length(found.Depth)), found.Depth}}
	}
	return []clothMark{{"fold", 0}}
}

func length(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

// pieces are the placed pieces with their names and numbers, the numbers those
// of the words below.
func (l *layout) pieces() []Placed {
	var out []Placed
	for k, q := range l.shown.Lay.Placed {
		it := &l.shown.Problem.Items[q.Item]
		p := Placed{Place: geom.Identity}
		if from, ok := l.shown.Sheets[it.Sheet].Piece(pattern.PieceID(it.ID)); ok {
			p.Piece = *from
		}
		p.Piece.ID = pattern.PieceID(it.ID + "-" + strconv.Itoa(q.Copy))
		p.Piece.Title, p.Piece.Cloth, p.Cut = it.Title, l.shown.Cloth.Name, layers(q)
		var ring []geom.Point
		for _, c := range q.Outline {
			ring = append(ring, l.point(c))
		}
		p.Piece.CutLine = geom.Lines(append(ring, ring[0])...)
		p.Items = []Item{{Role: pattern.RoleCut, Name: "cut line", Path: p.Piece.CutLine}}
		p.Items = append(p.Items, l.grain(it, q)...)
		if l.k != 1 {
			p.Items = append(p.Items, l.names(k+1, it.Title, q, p.Items)...)
		}
		out = append(out, p)
	}
	if l.k != 1 {
		l.besides(out)
	}
	return out
}

// besides puts the number of a strip that is narrower than a figure beside it,
// on free cloth.
func (l *layout) besides(all []Placed) {
	var r *room
	for k := range all {
		items := all[k].Items
		if items[len(items)-1].Kind == Words {
			continue
		}
		if r == nil {
			r = l.freeCloth(all)
		}
		if found, ok := evenBlock([]string{strconv.Itoa(k + 1)}, leastSize).within(r, bounds(items).Centre(), layAir); ok {
			all[k].Items = append(items, found...)
			r.take(found[0].Bounds())
		}
	}
}

// freeCloth is the room on the cloth that no piece takes.
func (l *layout) freeCloth(all []Placed) *room {
	far := l.point(lay.Point{X: l.folded(), Y: l.shown.Lay.Length})
	near := l.at
	cloth := geom.Lines(near, geom.Point{X: far.X, Y: near.Y}, far, geom.Point{X: near.X, Y: far.Y}, near)
	var drawn []Item
	for _, p := range all {
		drawn = append(drawn, p.Items...)
	}
	r := newRoomIn(drawn, cloth, layCell)
	for _, p := range all {
		r.inside(p.Piece.CutLine.Outline(0.1))
	}
	return r
}

func layers(q lay.Placed) string {
	switch {
	case q.OnFold:
		return "Cut 1 on fold"
	case q.Layers == 2:
		return "Cut 2 (one pair)"
	}
	return "Cut 1"
}

// grain is the grain arrow where the piece lies.
func (l *layout) grain(it *lay.Item, q lay.Placed) []Item {
	if it.Grain[0] == it.Grain[1] || q.Turn%180 != 0 {
		return nil
	}
	var ends [2]geom.Point
	for i, g := range it.Grain {
		if q.Mirror {
			g.X = -g.X
		}
		if q.Turn == 180 {
			g = lay.Point{X: -g.X, Y: -g.Y}
		}
		ends[i] = l.point(lay.Point{X: g.X + q.At.X, Y: g.Y + q.At.Y})
	}
	if l.k != 1 { // the words stand below it
		ends[1] = ends[0].Lerp(ends[1], 0.4)
	}
	heads := HeadsBoth
	if l.k != 1 && ends[0].Dist(ends[1]) < 4*headLength {
		heads = NoHeads // they would hide so short a line
	}
	return []Item{{Role: pattern.RoleGrain, Name: "grain", Path: geom.Lines(ends[0], ends[1]), Heads: heads}}
}

// How finely names look for their place in a drawing to scale.
const (
	layCell = 0.8
	layAir  = 0.4 // round them
)

// names are the number and name of a piece and where it lies along: both lines
// where they fit within the piece, clear of what is drawn, else the name, else
// the number alone; each level, or else upright; nil where not even that fits.
func (l *layout) names(number int, title string, q lay.Placed, drawn []Item) []Item {
	lo, hi := q.Outline[0].Y, q.Outline[0].Y
	for _, c := range q.Outline {
		lo, hi = min(lo, c.Y), max(hi, c.Y)
	}
	short := strconv.Itoa(number)
	name := short + ". " + title
	along := l.unit.Tape(length(lo)) + " to " + l.unit.Tape(length(hi))
	ring := drawn[0].Path
	r, wish := newRoomIn(drawn, ring, layCell), ring.Bounds().Centre()
	for _, b := range []block{
		evenBlock([]string{name, along}, layName), evenBlock([]string{name}, layName),
		evenBlock([]string{short}, layName), evenBlock([]string{short}, leastSize),
	} {
		if items, ok := b.within(r, wish, layAir); ok {
			return items
		}
	}
	return nil
}
