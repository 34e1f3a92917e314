package measure

import (
	"math/big"
	"strings"
)

// Reading is what was understood of a typed length.
type Reading struct {
	Length Length
	Unit   Unit   // the unit it was read in; metres count as centimetres
	Stated bool   // whether she wrote the unit herself
	Echo   string // what was understood, to stand beside the field
}

// readLimit is the longest text that is looked at. The longest honest one,
// "36 15/16 centimetres", is far below it; a number that fits is exact and
// quick.
const readLimit = 80

// Read reads a length as people write it: "36 1/2", "36½", "92,5 cm",
// "36-1/2\"". Without a unit of its own it is in u.
func Read(text string, u Unit) (Length, error) {
	r, err := ReadAll(text, u)
	return r.Length, err
}

// ReadAll is Read, with the unit that was written and an echo for the field.
// The number stays exact until it becomes millimetres, once.
func ReadAll(text string, u Unit) (Reading, error) {
	refuse := func(wrong, works string) (Reading, error) {
		return Reading{}, &Refusal{Read: Quoted(text), Wrong: wrong, Works: works}
	}
	if len(text) > readLimit {
		return refuse("that is too long for a length", "write it like 36 1/2 or 92.5 cm")
	}
	if strings.TrimSpace(text) == "" {
		return refuse("nothing was written", "write it like 36 1/2 or 92.5 cm")
	}
	tokens, bad := scan(text)
	if bad == nil {
		var p phrase
		if p, bad = understand(tokens); bad == nil {
			return p.reading(u), nil
		}
	}
	return refuse(bad.Wrong, bad.Works)
}

// reading turns the phrase into a length, in the unit it names or else in u.
func (p phrase) reading(u Unit) Reading {
	word := p.unit
	if word == "" {
		word = u.String()
	}
	w := unitWords[word]
	r := Reading{Length: toMM(p.value, w.num, w.den), Unit: w.unit, Stated: p.unit != ""}
	r.Echo = echo(r.Length, u)
	return r
}

// echo says the length in her unit and, in brackets, in the other one.
func echo(l Length, u Unit) string {
	other := In
	if u == In {
		other = Cm
	}
	sign := "= "
	if d := l - l.Near(u.fine()); d > stepSlack || d < -stepSlack {
		sign = "about "
	}
	return sign + u.Say(l) + " (" + other.Say(l) + ")"
}

// phrase is a length as it was written, understood.
type phrase struct {
	value *big.Rat
	unit  string // a key of unitWords, or "" where none was written
}
