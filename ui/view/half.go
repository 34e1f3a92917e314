package view

import (
	"slices"
	"strings"

	"chalkfold/pattern"
)

// half is the half of the body that a piece covers.
type half int8

const (
	neither half = iota
	frontHalf
	backHalf
)

// ownParts are words for what is sewn to the body and lies apart from it, even
// where its name says front or back.
var ownParts = []string{"sleeve", "cuff", "collar", "band", "waistband", "strip"}

// halfOf reads off the name of a piece where it belongs, so that pieces unknown
// here find their place: front_side and skirt_front lie with the front.
func halfOf(id pattern.PieceID) half {
	words := strings.Split(string(id), "_")
	for _, w := range words {
		if slices.Contains(ownParts, w) {
			return neither
		}
	}
	switch {
	case slices.Contains(words, "front"):
		return frontHalf
	case slices.Contains(words, "back"):
		return backHalf
	}
	return neither
}

// facing says that a piece lies under another one: along its edge, or as its
// lining.
func facing(id pattern.PieceID) bool { return strings.HasSuffix(string(id), "facing") || lining(id) }

func lining(id pattern.PieceID) bool { return strings.HasSuffix(string(id), "_lining") }

// members are the pieces of a half, the main one first: front or back itself,
// else the first that there is. While the draft is under way a piece that is
// cut from the marks of another is none, and one with marks of its own is from
// its first mark on.
func (s Scene) members(h half) []pattern.PieceID {
	if h == neither {
		return nil
	}
	var out []pattern.PieceID
	add := func(id pattern.PieceID) {
		if halfOf(id) != h || facing(id) || slices.Contains(out, id) {
			return
		}
		if len(out) > 0 && s.stepping() && !(s.drawn(id) && s.alive(id)) {
			return
		}
		out = append(out, id)
	}
	main := pattern.Front
	if h == backHalf {
		main = pattern.Back
	}
	if _, ok := s.boxOf(main); ok {
		add(main)
	}
	for i := range s.Sheet.Pieces {
		add(s.Sheet.Pieces[i].ID)
	}
	for i := range s.Sheet.Marks {
		if id := s.Sheet.Marks[i].Piece; id != main {
			add(id)
		}
	}
	return out
}

// drawn says that a piece has marks of its own; others are cut from the marks
// of the piece that they belong to.
func (s Scene) drawn(id pattern.PieceID) bool {
	return slices.ContainsFunc(s.Sheet.Marks, func(m pattern.Mark) bool { return m.Piece == id })
}

// alive says that a piece has marks at the step shown.
func (s Scene) alive(id pattern.PieceID) bool {
	return slices.ContainsFunc(s.Sheet.Marks, func(m pattern.Mark) bool { return m.Piece == id && m.AliveAt(s.Step) })
}

// stepping says that a step of the draft is shown, not the finished pieces.
func (s Scene) stepping() bool { return s.Step > 0 && s.Step < s.Sheet.Drawn() }

// roomy says that there is more beside front and back than facings: parts of
// their own, which may lie below them.
func (s Scene) roomy() bool {
	if s.Sheet == nil || s.placed() || s.Piece != "" || s.stepping() {
		return false
	}
	for i := range s.Sheet.Pieces {
		if id := s.Sheet.Pieces[i].ID; halfOf(id) == neither && s.drawn(id) {
			return true
		}
	}
	return false
}
