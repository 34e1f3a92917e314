package lesson

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/text"
)

// Kind says what a question asks for.
type Kind int8

// A length, a place on the cloth, or one of a few sentences. Any takes the
// first of these that the step is good for.
const (
	Any Kind = iota
	Number
	Place
	Sentence
)

// Question is asked before a step is shown. Beside the right answer it carries
// the slips: the answers that people really give who do it wrong.
type Question struct {
	Step   string // id of the step; empty for a question of a page alone
	Number int    // of the step
	Piece  pattern.PieceID
	Check  string // of a fault: the check that finds it
	Title  string
	Kind   Kind
	Asks   measure.Sentence // the instruction with a gap, or what is asked
	Right  measure.Working  // of a number
	Slips  []pattern.Slip   // of a number: held apart from it and from each other
	Mark   string           // of a place: which mark; empty where the step has none to ask for
	X, Y   measure.Length   // where it lies
	Spots  []Spot           // slips of a place
	Pick   []Option         // of a sentence
	Why    measure.Sentence
	Rule   measure.Sentence // the longer why, where the step has one
	From   []string         // names of what the step is worked out from

	halfX, halfY measure.Length // half a cell
}

// Spot is a place where the mark ends up if it is done wrong.
type Spot struct {
	X, Y measure.Length
	Says measure.Sentence
}

// Option is one of a few sentences to choose from.
type Option struct {
	Says    measure.Sentence
	Right   bool
	Because measure.Sentence // what to say if it is taken
	Other   string           // of a wrong one: the step that it belongs to
}

// gap stands in an instruction where the answer would be.
const gap = "?"

// apart is how far a slip must lie from the right result and from other slips,
// so that an answer tells them apart: the coarser of 1/16 in and 0.2 cm.
const apart = 2 * measure.Millimetre

// leastSlips is how many ways to be wrong a question must know.
const leastSlips = 2

// Ask makes the question of a step: a number where its sum is worth asking
// for, else a place, else a sentence. There is none for a step that is not
// drawn.
func Ask(sheet *pattern.Sheet, step string) (Question, bool) { return AskFor(sheet, step, Any) }

// AskFor makes a question of one kind, where the step is good for it.
func AskFor(sheet *pattern.Sheet, step string, kind Kind) (Question, bool) {
	for i := range sheet.Steps {
		st := &sheet.Steps[i]
		if st.ID != step || !st.Drawn {
			continue
		}
		for _, k := range []Kind{Number, Place, Sentence} {
			if kind != Any && kind != k {
				continue
			}
			q := begin(sheet, st)
			if q.become(sheet, i, k) {
				return q, true
			}
		}
	}
	return Question{}, false
}

func begin(sheet *pattern.Sheet, st *pattern.Step) Question {
	q := Question{
		Step: st.ID, Number: st.Number, Piece: st.Piece, Title: st.Title,
		Why: st.Why, Rule: st.Rule, From: sources(sheet, st),
	}
	q.place(sheet, st)
	return q
}

// become makes q a question of a kind; false where the step is not good for
// it.
func (q *Question) become(sheet *pattern.Sheet, i int, k Kind) bool {
	st := &sheet.Steps[i]
	q.Kind = k
	switch k {
	case Number:
		return q.number(st)
	case Place:
		q.Asks = measure.Tell(st.Title)
		return q.Mark != "" && len(q.Spots) >= leastSlips
	}
	return q.sentences(sheet, i)
}

// number asks for the result of the step's sum. Slips that this body makes
// equal to the right result, or to each other, are left out.
func (q *Question) number(st *pattern.Step) bool {
	if st.Sum.IsZero() {
		return false
	}
	var ok bool
	right := st.Sum.Result()
	if q.Asks, ok = st.Do.Without(right, gap); !ok {
		return false
	}
	q.Right = st.Sum
	for _, s := range st.Slips {
		l := s.Sum.Result()
		clear := l > 0 && !near(l, right, apart)
		for _, other := range q.Slips {
			clear = clear && !near(l, other.Sum.Result(), apart)
		}
		if clear {
			q.Slips = append(q.Slips, s)
		}
	}
	return len(q.Slips) >= leastSlips
}

// sentences asks why the step is done; the wrong sentences are the reasons of
// the steps next to it.
func (q *Question) sentences(sheet *pattern.Sheet, i int) bool {
	const few = 3
	steps := sheet.Steps
	if steps[i].Why.IsEmpty() {
		return false
	}
	said := map[string]bool{steps[i].Why.In(sheet.Job.Unit): true}
	var others []Option
	for off := 1; off < len(steps) && len(others) < few-1; off++ {
		for _, j := range [...]int{i + off, i - off} {
			if j < 0 || j >= len(steps) || steps[j].Why.IsEmpty() || len(others) == few-1 {
				continue
			}
			if words := steps[j].Why.In(sheet.Job.Unit); !said[words] {
				said[words] = true
				others = append(others, Option{Says: steps[j].Why, Other: steps[j].Title})
			}
		}
	}
	if len(others) < leastSlips {
		return false
	}
	at := i % few // so that the right one does not always stand first
	q.Pick = append(q.Pick, others[:at]...)
	q.Pick = append(q.Pick, Option{Says: steps[i].Why, Right: true})
	q.Pick = append(q.Pick, others[at:]...)
	q.Asks = measure.Tell(steps[i].Title)
	return true
}

// sources are the names of what a step is worked out from.
func sources(sheet *pattern.Sheet, st *pattern.Step) []string {
	var out []string
	for _, id := range st.From {
		if m, ok := measure.Find(measure.ID(id)); ok {
			out = append(out, m.Term)
		} else if c, ok := workroom.FindChoice(sheet.Garment, pattern.ChoiceID(id)); ok {
			out = append(out, strings.ToLower(c.Title))
		}
	}
	return out
}

// Answer is the right answer in words; Private leaves her numbers out of a sum.
func (q Question) Answer(words text.Catalogue, u measure.Unit, private bool) string {
	if q.Kind == Sentence {
		for i, o := range q.Pick {
			if o.Right {
				return strconv.Itoa(i+1) + ". " + words.Pass(o.Says.In(u))
			}
		}
	}
	return q.hint(Hints, words, u, private)
}

// Because is why the answer is right.
func (q Question) Because() measure.Sentence {
	for _, o := range q.Pick {
		if o.Right && !o.Because.IsEmpty() {
			return o.Because
		}
	}
	return q.Why
}

// Prompt is the question in words.
func (q Question) Prompt(words text.Catalogue, u measure.Unit) string {
	asks := words.Pass(q.Asks.In(u))
	switch {
	case q.Step == "":
		return asks
	case q.Kind == Place:
		return words.Say(text.AskWhere, words.Pass(spaced(q.Mark)))
	case q.Kind == Sentence:
		return words.Say(text.AskReason)
	}
	return asks
}

// RightPick is the number of the right sentence, from 1.
func (q Question) RightPick() int {
	for i, o := range q.Pick {
		if o.Right {
			return i + 1
		}
	}
	return 0
}

func near(a, b, within measure.Length) bool { return a-b <= within && b-a <= within }

// spaced turns an id into words.
func spaced(id string) string { return strings.ReplaceAll(id, "_", " ") }
