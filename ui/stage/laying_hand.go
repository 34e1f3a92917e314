package stage

import (
	"slices"

	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// nextPiece takes another piece in hand, from the cut end on.
func (s *Lay) nextPiece(by int) {
	n := len(s.best.Placed)
	i := s.index() + by
	if s.index() < 0 && by < 0 {
		i = n - 1
	}
	q := s.best.Placed[(i+n)%n]
	s.held, s.drawn = piece{q.Item, q.Copy}, nil
}

// farthest is how many steps of the tape a piece looks for a free place.
const farthest = 640

// tape is the step by which pieces are moved.
func (s *Lay) tape() int64 {
	if t := s.work.Problem.Cloth.Tape; t > 0 {
		return t
	}
	return 5 * lay.PerMM
}

// push moves the piece in hand to the next free place that way as she sees it;
// what lies between is passed over.
func (s *Lay) push(right, down int64) desk.Ask {
	i := s.index()
	if i < 0 {
		return desk.Ask{Say: s.d.Tell(text.LayTakeOne)}
	}
	way := lay.Point{X: down, Y: right} // the cloth lies, its cut end at the left
	if s.now {
		way = lay.Point{X: right, Y: down}
	}
	q := s.best.Placed[i]
	if q.OnFold && way.X != 0 {
		return desk.Ask{Say: s.d.Tell(text.LayOnFold, s.titleOf(q))}
	}
	return s.moved(i, q, way, 1, text.LayNoPlace)
}

// moved tries places from the first step on and takes the first where all the
// rules hold.
func (s *Lay) moved(i int, q lay.Placed, way lay.Point, first int64, none text.ID) desk.Ask {
	s.halt()
	from := q.At
	for n := first; n <= farthest; n++ {
		q.At = lay.Point{X: from.X + n*s.tape()*way.X, Y: from.Y + n*s.tape()*way.Y}
		if s.beyond(q, from) {
			break
		}
		if l, pins, ok := s.with(i, q); ok {
			l.Evaluations = s.best.Evaluations
			s.setPins(pins)
			s.anew()
			s.take(l, fromHand)
			return desk.Ask{Say: s.d.Tell(text.LayMoved, s.titleOf(q))}
		}
	}
	return desk.Ask{Say: s.d.Tell(none, s.titleOf(q))}
}

// beyond says that a piece moved from a place would leave the cloth there, so
// that no step farther can help. The outline is still that of the place.
func (s *Lay) beyond(q lay.Placed, from lay.Point) bool {
	lo := corner(q.Outline)
	x, y := lo.X+q.At.X-from.X, lo.Y+q.At.Y-from.Y
	return x < 0 || y < 0 || x > s.work.Problem.Cloth.Width
}

// with is the lay with one piece lying otherwise, and pinned there, if that
// keeps all the rules.
func (s *Lay) with(i int, q lay.Placed) (lay.Lay, []lay.Placed, bool) {
	q, err := s.work.Problem.Lie(q)
	if err != nil {
		return lay.Lay{}, nil, false
	}
	placed := slices.Clone(s.best.Placed)
	placed[i] = q
	p := s.work.Problem
	p.Pins, p.Cloth.Depth = s.pinsWith(q), s.best.Depth
	l, faults := lay.Kept(p, placed)
	return l, p.Pins, len(faults) == 0
}

// pinsWith are the pins with one more; a piece in the opened part cannot be
// pinned, since where that part begins may change.
func (s *Lay) pinsWith(q lay.Placed) []lay.Placed {
	pins := slices.Clone(s.work.Problem.Pins)
	if at := s.pinned(q); at >= 0 {
		pins = slices.Delete(pins, at, at+1)
	}
	if q.Opened {
		return pins
	}
	return append(pins, q)
}

// setPins takes other pins; the cloth stays folded as deep as they lie.
func (s *Lay) setPins(pins []lay.Placed) { s.work.Work = s.work.WithPins(pins, s.best.Depth) }

// pinned is the pin of a piece, -1 if it is loose.
func (s *Lay) pinned(q lay.Placed) int {
	return slices.IndexFunc(s.work.Problem.Pins, func(p lay.Placed) bool { return p.Item == q.Item && p.Copy == q.Copy })
}

// pin keeps the piece in hand where it is, or lets it go.
func (s *Lay) pin() desk.Ask {
	i := s.index()
	if i < 0 {
		return desk.Ask{Say: s.d.Tell(text.LayTakeOne)}
	}
	s.halt()
	q := s.best.Placed[i]
	s.anew()
	s.drawn = nil
	if at := s.pinned(q); at >= 0 {
		s.setPins(slices.Delete(slices.Clone(s.work.Problem.Pins), at, at+1))
		s.handled()
		return desk.Ask{Say: s.d.Tell(text.LayLoose, s.titleOf(q))}
	}
	s.setPins(s.pinsWith(q))
	s.handled()
	return desk.Ask{Say: s.d.Tell(text.LayPinned, s.titleOf(q))}
}

// handled says that the lay is not as it was kept any more.
func (s *Lay) handled() {
	if s.origin == fromSession {
		s.origin = fromHand
	}
}

// turnPiece turns the piece in hand end for end where it lies, or beyond that
// where it has room.
func (s *Lay) turnPiece() desk.Ask {
	i := s.index()
	if i < 0 {
		return desk.Ask{Say: s.d.Tell(text.LayTakeOne)}
	}
	q := s.best.Placed[i]
	if s.work.Problem.Cloth.Nap {
		return desk.Ask{Say: s.d.Tell(text.LayNoTurn, s.titleOf(q))}
	}
	was := corner(q.Outline)
	q.Turn = (q.Turn + 180) % 360
	if q.OnFold {
		q.Mirror = !q.Mirror
	}
	turned, err := s.work.Problem.Lie(q)
	if err != nil {
		return desk.Ask{Say: s.d.Plain(err.Error()), Warn: true}
	}
	now := corner(turned.Outline)
	q.At = lay.Point{X: q.At.X + was.X - now.X, Y: q.At.Y + was.Y - now.Y}
	if q, err = s.work.Problem.Lie(q); err != nil {
		return desk.Ask{Say: s.d.Plain(err.Error()), Warn: true}
	}
	return s.moved(i, q, lay.Point{Y: 1}, 0, text.LayNoPlace)
}

func corner(o []lay.Point) lay.Point {
	lo := o[0]
	for _, c := range o {
		lo.X, lo.Y = min(lo.X, c.X), min(lo.Y, c.Y)
	}
	return lo
}

// hers is her cloth as the session has it.
func (s *Lay) hers() pattern.Cloth {
	c, _ := s.d.Job().Cloth(s.work.Cloth.Name)
	c.Name = s.work.Cloth.Name
	return c
}
