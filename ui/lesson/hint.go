package lesson

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/text"
)

// Hints is how many levels of help there are; the last gives the answer.
const Hints = 3

// Hint is help at a level: 1 says where to look, 2 shows the sum as names
// alone, 3 shows it with her numbers and the answer. Private leaves her
// numbers out of the third.
func (q Question) Hint(level int, words text.Catalogue, u measure.Unit, private bool) string {
	level = min(max(level, 1), Hints)
	return words.Say(text.AskHint, level, q.hint(level, words, u, private))
}

func (q Question) hint(level int, words text.Catalogue, u measure.Unit, private bool) string {
	switch {
	case level == 1:
		return q.look(words)
	case q.Kind == Number && level == 2:
		return words.Pass(q.Right.Names(u)) + "."
	case q.Kind == Number && private:
		return words.Pass(q.Right.Private(u)) + " " + u.String() + "."
	case q.Kind == Number:
		return words.Pass(q.Right.Sum(u)) + " " + u.String() + "."
	case q.Kind == Place && level == 2:
		return strings.TrimSpace(words.Pass(q.Why.In(u)))
	case q.Kind == Place:
		return words.Say(text.AskAtPlace, u.Tape(q.X), u.Tape(q.Y))
	case level == 2:
		return words.Say(text.AskNotThat, q.RightPick()%len(q.Pick)+1)
	}
	return words.Say(text.AskThat, q.RightPick())
}

// look says where to look: what the step is worked out from, or which step it
// is.
func (q Question) look(words text.Catalogue) string {
	if q.Kind != Sentence && len(q.From) > 0 {
		names := make([]string, len(q.From))
		for i, n := range q.From {
			names[i] = words.Pass(n)
		}
		return words.Say(text.AskLook, strings.Join(names, ", "))
	}
	what := strings.ToLower(q.Title)
	if q.Piece != "" {
		what = "the " + spaced(string(q.Piece)) + ", " + what
	}
	return words.Say(text.AskPiece, words.Pass(what))
}
