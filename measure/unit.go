package measure

import "strings"

// Unit is a unit of the tape.
type Unit int8

const (
	In Unit = iota
	Cm
	Mm
)

// unitWords holds every way to write a unit, in small letters, without a
// closing full stop. Metres read well but nobody measures a client in them,
// so they count as centimetres from there on.
var unitWords = map[string]struct {
	unit Unit
	// num/den millimetres make one of it.
	num, den int64
}{
	"in": {In, 254, 10}, "inch": {In, 254, 10}, "inches": {In, 254, 10}, `"`: {In, 254, 10}, "''": {In, 254, 10},
	"cm": {Cm, 10, 1}, "centimetre": {Cm, 10, 1}, "centimetres": {Cm, 10, 1}, "centimeter": {Cm, 10, 1}, "centimeters": {Cm, 10, 1}, //nolint:misspell // both spellings are read
	"mm": {Mm, 1, 1}, "millimetre": {Mm, 1, 1}, "millimetres": {Mm, 1, 1}, "millimeter": {Mm, 1, 1}, "millimeters": {Mm, 1, 1}, //nolint:misspell // both spellings are read
	"m": {Cm, 1000, 1}, "metre": {Cm, 1000, 1}, "metres": {Cm, 1000, 1}, "meter": {Cm, 1000, 1}, "meters": {Cm, 1000, 1},
}

// ParseUnit reads the name of a unit of the tape: in, cm or mm, also written
// out. Metres are no unit of the tape.
func ParseUnit(text string) (Unit, error) {
	word := strings.ToLower(strings.TrimSuffix(strings.TrimSpace(text), "."))
	if w, ok := unitWords[word]; ok && !strings.HasPrefix(word, "me") && word != "m" {
		return w.unit, nil
	}
	return In, &Refusal{Read: Quoted(text), Wrong: "that is no unit of the tape", Works: "write in, cm or mm"}
}

// String is the short name of the unit: "in", "cm" or "mm".
func (u Unit) String() string {
	switch u {
	case Cm:
		return "cm"
	case Mm:
		return "mm"
	}
	return "in"
}

// one is the length of one unit.
func (u Unit) one() Length {
	switch u {
	case Cm:
		return Centimetre
	case Mm:
		return Millimetre
	}
	return Inch
}

// Of is the number that l has in this unit.
func (u Unit) Of(l Length) float64 { return float64(l) / float64(u.one()) }

// Length is x of this unit.
func (u Unit) Length(x float64) Length { return Length(x * float64(u.one())) }

// Step is one step of the tape, for nudging a length up and down.
func (u Unit) Step() Length {
	switch u {
	case Cm, Mm:
		return 5 * Millimetre
	}
	return Inch / 8
}

// fine is the smallest mark of the tape, to which Tape rounds.
func (u Unit) fine() Length {
	if u == In {
		return Inch / 16
	}
	return Millimetre
}

// rough is the step of a length that is only said roughly.
func (u Unit) rough() Length {
	if u == In {
		return Inch / 2
	}
	return Centimetre
}

// word is the unit as a sentence has it.
func (u Unit) word() string {
	switch u {
	case Cm:
		return "centimetres"
	case Mm:
		return "millimetres"
	}
	return "inches"
}
