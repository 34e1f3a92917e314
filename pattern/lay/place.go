package lay

import (
	"fmt"
	"math"
	"sort"

	"chalkfold/measure"
)

// lay puts the best places of a plan's strips together.
func (p *Problem) lay(pl *planned) Lay {
	folded, whole := pl.length(&p.Cloth)
	l := Lay{Width: p.Cloth.Width, Length: whole, Folded: folded, Depth: pl.depth}
	for k, h := range pl.searches {
		var from Point
		if k > 0 {
			from.Y = folded
		}
		for i := range h.s.members {
			m := &h.s.members[i]
			if m.fixed {
				if m.item >= 0 {
					l.Placed = append(l.Placed, *p.pinned(m.item, m.copy))
				}
				continue
			}
			st := &m.stances[h.places[i].stance]
			at := st.offset(h.places[i].at).plus(from)
			l.Placed = append(l.Placed, Placed{
				Item: m.item, Copy: m.copy, Layers: m.layers, OnFold: m.onFold, Far: st.far, Wasted: m.wasted, Opened: k > 0, Beside: m.beside,
				Turn: st.turn, Mirror: st.mirror, At: at, Outline: moved(st.outline, at),
			})
		}
	}
	l.finish()
	return l
}

// finish puts the pieces in order from the cut end on and works out how much
// of the cloth they use.
func (l *Lay) finish() {
	sort.SliceStable(l.Placed, func(a, b int) bool {
		pa, _ := bounds(l.Placed[a].Outline)
		pb, _ := bounds(l.Placed[b].Outline)
		if pa.Y != pb.Y {
			return pa.Y < pb.Y
		}
		return pa.X < pb.X
	})
	used := 0.0
	for _, q := range l.Placed {
		layers := q.Layers
		if q.Wasted {
			layers = 1
		}
		used += float64(layers) * float64(twiceArea(q.Outline)) / 2
	}
	if l.Length > 0 && l.Width > 0 {
		l.Density = 100 * used / (float64(l.Width) * float64(l.Length))
	}
}

func (p *Problem) pinned(item, copy int) *Placed {
	for k := range p.Pins {
		if q := &p.Pins[k]; q.Item == item && q.Copy == copy {
			return q
		}
	}
	return nil
}

// nothingFits is said where no lay passed the check.
func (p *Problem) nothingFits() error {
	return &measure.Refusal{Where: p.where(), Read: fmt.Sprintf("%d pieces", p.Pieces()), Wrong: "no lay keeps all the rules", Works: "unpin a piece, or take wider cloth"}
}

// checkPins names pins that cannot stay: outside the cloth, over a flaw, or
// over each other, with the depth of it.
func (p *Problem) checkPins() error {
	if len(p.Pins) == 0 {
		return nil
	}
	l := Lay{Width: p.Cloth.Width, Placed: p.Pins, Depth: p.Cloth.Depth}
	for i := range p.Pins {
		q := &p.Pins[i]
		if q.Item < 0 || q.Item >= len(p.Items) || q.Copy < 1 || q.Copy > p.Items[q.Item].Count {
			return &measure.Refusal{Where: p.where(), Read: fmt.Sprintf("a pinned piece, copy %d", q.Copy), Wrong: "no such piece is to be cut", Works: "unpin it"}
		}
		name := p.Items[q.Item].name()
		for j := range i {
			if p.Pins[j].Item == q.Item && p.Pins[j].Copy == q.Copy {
				return &measure.Refusal{Where: name, Read: fmt.Sprintf("copy %d pinned twice", q.Copy), Wrong: "one piece cannot lie in two places", Works: "unpin one"}
			}
			if o := &p.Pins[j]; !apart(o.Outline, q.Outline, p.Cloth.Gap) {
				return &measure.Refusal{
					Where: name, Read: "pinned over " + p.Items[o.Item].name(),
					Wrong: "they overlap by " + p.Unit.Say(length(int64(math.Ceil(overlapDepth(o.Outline, q.Outline, p.Cloth.Gap))))), Works: "move one of them, or unpin it",
				}
			}
		}
		if q.Opened {
			return &measure.Refusal{Where: name, Read: "pinned in the opened part", Wrong: "where that part begins is not known beforehand", Works: "unpin it, or pin it on the folded cloth"}
		}
		if bad := verifyOne(p, &l, q); bad != nil {
			return &measure.Refusal{Where: name, Read: "pinned by hand", Wrong: bad.Error(), Works: "move it, or unpin it"}
		}
	}
	return nil
}

// overlapDepth is the shortest move that parts two outlines.
func overlapDepth(a, b []Point, gap int64) float64 {
	var k kinds
	i, j := k.add(forSearch(a, mostOutlineCorners)), k.add(forSearch(b, mostOutlineCorners))
	k.build(float64(gap) + reachSteps)
	alo, _ := bounds(forSearch(a, mostOutlineCorners))
	blo, _ := bounds(forSearch(b, mostOutlineCorners))
	d := blo.minus(alo)
	s := strip{kinds: &k}
	return s.depth(i, j, float64(d.X), float64(d.Y), float64(gap))
}
