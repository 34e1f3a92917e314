package linear

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// at says where a point lies as a tape would find it: so far out from the fold
// or the centre line, so far down from the top line.
func (r *room) at(piece pattern.PieceID, x, y float64) string {
	u := r.d.Unit()
	from := r.d.Words.Say(r.edge(piece))
	out, down := u.Tape(measure.Length(x)), u.Tape(measure.Length(y))
	onEdge, onTop := out == zero(u), down == zero(u)
	if y < 0 && !onTop {
		up := u.Say(measure.Length(-y))
		if onEdge {
			return r.d.Words.Say(text.HearOnUp, from, up)
		}
		return r.d.Words.Say(text.HearOutUp, u.Say(measure.Length(x)), from, up)
	}
	switch {
	case onEdge && onTop:
		return r.d.Words.Say(text.HearOnTop, from)
	case onEdge:
		return r.d.Words.Say(text.HearOn, from, u.Say(measure.Length(y)))
	case onTop:
		return r.d.Words.Say(text.HearOutTop, u.Say(measure.Length(x)), from)
	}
	return r.d.Words.Say(text.HearOutDown, u.Say(measure.Length(x)), from, u.Say(measure.Length(y)))
}

func zero(u measure.Unit) string { return u.Tape(0) }

// edge is the line from which a piece is measured: the back has no fold.
func (r *room) edge(piece pattern.PieceID) text.ID {
	if strings.HasPrefix(string(piece), string(pattern.Front)+"_") {
		piece = pattern.Front // it is traced from the front
	}
	p, ok := r.d.Sheet().Piece(piece)
	if ok && p.Fold != nil || !ok && piece == pattern.Front {
		return text.HearFold
	}
	return text.HearCentre
}
