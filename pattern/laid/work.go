package laid

import (
	"slices"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Work is what is to be laid on one cloth.
type Work struct {
	Sheets  []*pattern.Sheet
	Cloth   pattern.Cloth // with what is usual where she said nothing
	Named   bool          // its width is hers
	Problem lay.Problem
}

// New takes the pieces of one or more sheets for a cloth; the cloth is that of
// the first.
func New(sheets []*pattern.Sheet, cloth string) (Work, error) {
	c, named := ClothOf(sheets[0].Job, cloth)
	w, err := On(sheets, c)
	w.Named = named
	return w, err
}

// On is New for a cloth that the session need not have.
func On(sheets []*pattern.Sheet, c pattern.Cloth) (Work, error) {
	if c.Name == "" {
		c.Name = Main
	}
	w := Work{Sheets: sheets, Cloth: c}
	var names []string
	for _, s := range sheets {
		names = append(names, Names(s)...)
	}
	if !slices.Contains(names, c.Name) {
		works := "draft the pieces first"
		if len(names) > 0 {
			slices.Sort(names)
			works = "name one of " + strings.Join(slices.Compact(names), ", ")
		}
		return w, &measure.Refusal{Where: "cloth " + c.Name, Read: "no piece", Wrong: "nothing is cut from this cloth", Works: works}
	}
	p, err := lay.FromSheet(sheets, c)
	w.Problem = p
	return w, err
}

// Folded is the work on the cloth folded otherwise.
func (w Work) Folded(fold string) (Work, error) {
	c, named := w.Cloth, w.Named
	c.Fold = fold
	w, err := On(w.Sheets, c)
	w.Named = named
	return w, err
}

// Whose names the owner of each piece; it is for several sheets on one cloth.
func (w Work) Whose(owners []string) Work {
	items := slices.Clone(w.Problem.Items)
	for i := range items {
		items[i].Title += " of " + owners[items[i].Sheet]
	}
	w.Problem.Items = items
	return w
}

// Keep writes a lay of one sheet down for its session, with the pins that it
// was laid round.
func (w Work) Keep(l lay.Lay) pattern.KeptLay {
	k := pattern.KeptLay{Cloth: w.Cloth.Name, Width: w.Cloth.Width, Fold: w.Cloth.Fold, Depth: length(l.Depth), Evaluations: l.Evaluations}
	for _, q := range w.Problem.Pins {
		k.Pins = append(k.Pins, w.piece(q))
	}
	for _, q := range l.Placed {
		k.Placed = append(k.Placed, w.piece(q))
	}
	return k
}

// piece is a placed piece as a session has it.
func (w Work) piece(q lay.Placed) pattern.LaidPiece {
	it := &w.Problem.Items[q.Item]
	lo := corner(q.Outline)
	p := pattern.LaidPiece{
		Piece: pattern.PieceID(it.ID), Copy: q.Copy, Across: length(lo.X), Along: length(lo.Y), Turn: q.Turn, Mirror: q.Mirror,
	}
	switch {
	case q.Opened:
		p.How = pattern.LaidOpened
	case q.Wasted:
		p.How = pattern.LaidWasted
	case q.Beside:
		p.How = pattern.LaidBeside
	case q.OnFold && it.Cut == pattern.Single:
		p.How = pattern.LaidHalf
	}
	return p
}

// placed is the other way round; it fails where there is no such piece now.
func (w Work) placed(p pattern.LaidPiece) (lay.Placed, error) {
	q := lay.Placed{
		Item: -1, Copy: p.Copy, Turn: p.Turn, Mirror: p.Mirror,
		Opened: p.How == pattern.LaidOpened, Wasted: p.How == pattern.LaidWasted, OnFold: p.How == pattern.LaidHalf, Beside: p.How == pattern.LaidBeside,
	}
	for i := range w.Problem.Items {
		if w.Problem.Items[i].ID == string(p.Piece) {
			q.Item = i
		}
	}
	q, err := w.Problem.Lie(q)
	if err != nil {
		return q, err
	}
	lo := corner(q.Outline)
	q.At = lay.Point{X: steps(p.Across) - lo.X, Y: steps(p.Along) - lo.Y}
	return w.Problem.Lie(q)
}

// Pinned is the work with the pins of a kept lay that are still pieces of it.
func (w Work) Pinned(k pattern.KeptLay) Work {
	var pins []lay.Placed
	for _, p := range k.Pins {
		if q, err := w.placed(p); err == nil {
			pins = append(pins, q)
		}
	}
	return w.WithPins(pins, steps(k.Depth))
}

// WithPins is the work with these pins, which lie on cloth that is folded so
// deep off centre: with pins it stays so.
func (w Work) WithPins(pins []lay.Placed, depth int64) Work {
	w.Problem.Pins, w.Problem.Cloth.Depth = pins, 0
	if len(pins) > 0 && w.Cloth.Fold == lay.OffCentre && 2*depth <= w.Problem.Cloth.Width {
		w.Problem.Cloth.Depth = depth
	}
	return w
}

// corner is the least across and the least along of an outline.
func corner(o []lay.Point) lay.Point {
	lo := o[0]
	for _, c := range o {
		lo.X, lo.Y = min(lo.X, c.X), min(lo.Y, c.Y)
	}
	return lo
}
