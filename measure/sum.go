package measure

import "strings"

// Sum is the working as one reads it, in the unit u: "bust 36 / 4 + ease
// 2 1/2 / 4 = 9 5/8". A single term has no "=". A zero Working gives "".
func (w Working) Sum(u Unit) string { return scribe{unit: u}.sum(w) }

// Private is Sum with her measurements by name only, for a room with other
// people in it: "bust / 4 + ease 2 1/2 / 4 = 9 5/8".
func (w Working) Private(u Unit) string { return scribe{unit: u, private: true}.sum(w) }

// Names is the sum as names alone, without its result: "bust / 4 + ease / 4".
// What has no name, a figure of the rule itself, still shows its number.
func (w Working) Names(u Unit) string {
	for w.kind == named {
		w = w.parts[0]
	}
	text, _ := scribe{unit: u, names: true}.text(w)
	if w.kind == nothing {
		return ""
	}
	return text
}

// scribe writes a Working in one unit, with or without her numbers.
type scribe struct {
	unit    Unit
	private bool
	names   bool // only what has no name shows its number
}

// How tightly a text holds together; what holds less than its place asks for
// is put in parentheses.
const (
	loose   = iota // words such as "the lesser of"
	sumLike        // a + b
	mulLike        // a x 2
	tight          // a term
)

func (s scribe) sum(w Working) string {
	for w.kind == named { // by itself a named working shows how it came to be
		w = w.parts[0]
	}
	switch w.kind {
	case nothing:
		return ""
	case choice, taken, drawn, number, fixed:
		text, _ := s.term(w)
		return text
	}
	text, _ := s.text(w)
	if w.bare() {
		return text + " = " + plain(w.compute(), 4)
	}
	return text + " = " + s.unit.Tape(w.Result())
}

// bare reports whether w is made of bare numbers alone.
func (w Working) bare() bool {
	if len(w.parts) == 0 {
		return w.kind == number
	}
	for _, p := range w.parts {
		if !p.bare() {
			return false
		}
	}
	return true
}

// text writes w and says how tightly it holds together.
func (s scribe) text(w Working) (string, int) {
	switch w.kind {
	case nothing:
		return "0", tight
	case over:
		return s.inner(w.parts[0], mulLike) + " / " + plain(w.value, 4), mulLike
	case times:
		return s.inner(w.parts[0], mulLike) + " x " + plain(w.value, 4), mulLike
	case plus:
		right := w.parts[1]
		if right.kind == fixed && right.value < 0 {
			return s.first(w.parts[0]) + " - " + s.unit.Tape(Length(-right.value)), sumLike
		}
		return s.first(w.parts[0]) + " + " + s.inner(right, sumLike), sumLike
	case minus:
		return s.first(w.parts[0]) + " - " + s.inner(w.parts[1], mulLike), sumLike
	case least:
		return s.of([]string{"the lesser of ", "the least of "}, w.parts), loose
	case most:
		return s.of([]string{"the greater of ", "the greatest of "}, w.parts), loose
	case down:
		return s.first(w.parts[0]) + ", down to a whole " + s.step(w.value), loose
	case near:
		return s.first(w.parts[0]) + ", to the nearest " + s.step(w.value), loose
	case squared:
		return s.inner(w.parts[0], tight) + " squared", mulLike
	case root:
		return "the root of (" + s.first(w.parts[0]) + ")", tight
	}
	return s.term(w)
}

// term writes a term: its name and its number. A negative one holds loosely,
// so that its sign cannot be taken for a minus of the sum.
func (s scribe) term(w Working) (string, int) {
	value, hold := s.unit.Tape(Length(w.compute())), tight
	if w.bare() {
		value = plain(w.compute(), 4)
	}
	if s.private && w.hers() || s.names && w.name != "" {
		value = ""
	} else if strings.HasPrefix(value, "-") {
		hold = loose
	}
	return strings.TrimSpace(w.name + " " + value), hold
}

// hers reports whether one of her measurements is in w.
func (w Working) hers() bool {
	if w.kind == taken {
		return true
	}
	for _, p := range w.parts {
		if p.hers() {
			return true
		}
	}
	return false
}

// first writes w where nothing stands before it.
func (s scribe) first(w Working) string {
	text, hold := s.text(w)
	if hold == loose && w.kind > fixed && w.kind != named {
		return "(" + text + ")"
	}
	return text
}

// inner writes w as an operand that has to hold at least as tightly as asked.
func (s scribe) inner(w Working, asked int) string {
	text, hold := s.text(w)
	if hold < asked {
		return "(" + text + ")"
	}
	return text
}

func (s scribe) of(words []string, parts []Working) string {
	texts := make([]string, len(parts))
	for i, p := range parts {
		texts[i] = s.inner(p, tight)
	}
	last := len(texts) - 1
	head := words[0]
	if len(texts) > 2 {
		head = words[1]
	}
	return head + strings.Join(texts[:last], ", ") + " and " + texts[last]
}

// step writes the step of a rounding, finer than the tape where it must be.
func (s scribe) step(mm float64) string {
	if s.unit == In {
		return s.unit.Tape(Length(mm))
	}
	return plain(s.unit.Of(Length(mm)), 2)
}
