package measure

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Sentence is a sentence with lengths in it. Only a unit makes it text, so the
// same Sentence serves an inch tape and a centimetre tape.
type Sentence struct {
	words string
	args  []slot
}

// slot is what fills a gap: words, or something that a unit turns into words.
type slot struct {
	words  string
	mm     float64
	length bool
	inner  Sentence
}

// Tell makes a Sentence. Each "{}" in words takes the next of args: a Length
// (as on the tape), a Working (its result), an int, a float64 (at most one
// decimal), a string or a Sentence. "{say}" is a length with its unit,
// "{about}" the same to the half inch or the centimetre. A figure of the trade
// stands in the words themselves, "{3/4 in}" with its unit or "{3/4 in:}"
// without, and follows the unit like the others.
func Tell(words string, args ...any) Sentence {
	s := Sentence{words: words}
	for _, a := range args {
		switch a := a.(type) {
		case Length:
			s.args = append(s.args, slot{mm: float64(a), length: true})
		case Working:
			if a.bare() {
				s.args = append(s.args, slot{words: plain(a.compute(), 1)})
				continue
			}
			s.args = append(s.args, slot{mm: a.compute(), length: true})
		case Sentence:
			s.args = append(s.args, slot{inner: a})
		case int:
			s.args = append(s.args, slot{words: strconv.Itoa(a)})
		case float64:
			s.args = append(s.args, slot{words: plain(a, 1)})
		case string:
			s.args = append(s.args, slot{words: a})
		default:
			s.args = append(s.args, slot{words: fmt.Sprint(a)})
		}
	}
	return s
}

// Without puts words in place of every length of s that a tape cannot tell
// from l, also in sentences within, and says whether there was one. A question
// made from an instruction hides its answer so.
func (s Sentence) Without(l Length, words string) (Sentence, bool) {
	found := false
	args := append([]slot(nil), s.args...)
	for i, a := range args {
		switch {
		case a.length && math.Abs(a.mm-float64(l)) < hidden:
			args[i], found = slot{words: words}, true
		case !a.inner.IsEmpty():
			inner, ok := a.inner.Without(l, words)
			args[i].inner, found = inner, found || ok
		}
	}
	s.args = args
	return s, found
}

// hidden is less than the finest tape shows, in millimetres.
const hidden = 0.5

// IsEmpty reports whether nothing is said.
func (s Sentence) IsEmpty() bool { return s.words == "" }

// In is the sentence in the unit u. A gap without anything to fill it stays.
func (s Sentence) In(u Unit) string {
	var b strings.Builder
	rest, args := s.words, s.args
	for {
		open := strings.IndexByte(rest, '{')
		if open < 0 {
			break
		}
		shut := strings.IndexByte(rest[open:], '}')
		if shut < 0 {
			break
		}
		gap := rest[open+1 : open+shut]
		b.WriteString(rest[:open])
		rest = rest[open+shut+1:]
		if text, ok := ownFigure(gap, u); ok {
			b.WriteString(text)
			continue
		}
		if len(args) == 0 {
			b.WriteString("{" + gap + "}")
			continue
		}
		b.WriteString(args[0].in(u, gap))
		args = args[1:]
	}
	b.WriteString(rest)
	return b.String()
}

// What may stand in a gap that takes an argument.
const (
	gapTape  = ""
	gapSay   = "say"
	gapAbout = "about"
)

func (a slot) in(u Unit, gap string) string {
	switch {
	case !a.inner.IsEmpty():
		return a.inner.In(u)
	case !a.length:
		return a.words
	case gap == gapSay:
		return u.Say(Length(a.mm))
	case gap == gapAbout:
		return u.Say(Length(a.mm).Near(u.rough()))
	default:
		return u.Tape(Length(a.mm))
	}
}

// ownFigure is a figure of the trade that stands in the words themselves.
func ownFigure(gap string, u Unit) (string, bool) {
	if gap == gapTape || gap == gapSay || gap == gapAbout {
		return "", false
	}
	figure, bare := strings.CutSuffix(gap, ":")
	l, err := Read(figure, In)
	if err != nil {
		return "", false
	}
	if bare {
		return u.Tape(l), true
	}
	return u.Say(l), true
}
