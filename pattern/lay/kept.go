package lay

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Lie works out how a piece lies from its item, copy, turn, mirror and place,
// and whether it lies opened or wastes a layer: for what was kept in a file or
// set down by hand.
func (p Problem) Lie(q Placed) (Placed, error) {
	if q.Item < 0 || q.Item >= len(p.Items) || q.Copy < 1 || q.Copy > p.Items[q.Item].Count {
		return q, &measure.Refusal{Where: p.where(), Read: fmt.Sprintf("copy %d of piece %d", q.Copy, q.Item+1), Wrong: "no such piece is to be cut", Works: "lay the pieces anew"}
	}
	it := &p.Items[q.Item]
	o := it.Outline
	flat := p.Cloth.Fold == Flat || q.Opened
	q.Layers = 2
	switch {
	case q.Beside:
		q.Layers = 1
	case flat:
		q.Layers = 1
		if it.Cut == pattern.OnFold {
			o = opened(o)
		}
	case it.Cut == pattern.OnFold && p.Cloth.Fold == Across:
		o = opened(o)
	case it.Cut == pattern.OnFold:
		q.OnFold = true
		q.Far = q.Mirror != (q.Turn == 180)
	case q.OnFold:
		if o = halved(o); o == nil {
			return q, &measure.Refusal{Where: it.name(), Read: "laid as half on the fold", Wrong: "it is not its own mirror image", Works: "lay it off the fold"}
		}
		q.Far = q.Mirror != (q.Turn == 180)
	}
	if q.Mirror {
		o = mirrored(o)
	}
	q.Outline = moved(turned(o, q.Turn), q.At)
	return q, nil
}

// Kept puts a lay together again from its placed pieces and checks it; what
// no longer holds is listed. Of a fold off centre the cloth says how deep it is.
func Kept(p Problem, placed []Placed) (Lay, []error) {
	l := Lay{Width: p.Cloth.Width, Depth: p.Cloth.Depth}
	for _, q := range placed {
		q, err := p.Lie(q)
		if err != nil {
			return Lay{}, []error{err}
		}
		_, hi := bounds(q.Outline)
		l.Length = max(l.Length, hi.Y)
		if !q.Opened {
			l.Folded = max(l.Folded, hi.Y)
		}
		l.Placed = append(l.Placed, q)
	}
	anyOpened := false
	for _, q := range l.Placed {
		anyOpened = anyOpened || q.Opened
	}
	if !anyOpened {
		l.Folded = l.Length
	}
	if p.Cloth.Fold == Across {
		// It is folded where the tape says so, and lies double up to there.
		if anyOpened {
			l.Folded += p.Cloth.Gap
		}
		l.Folded = p.Cloth.onTapeAtLeast(l.Folded)
		l.Length = max(l.Length, l.Folded) + l.Folded
	}
	l.finish()
	return l, Verify(p, l)
}
