package measure

import (
	"math"
	"math/big"
	"strconv"
	"strings"
)

// exactPlaces ends the search for a decimal that reads back to the same
// length. A length on a body needs 17 figures at most.
const exactPlaces = 40

// sameFraction is how far, in millimetres, a length may lie from a sixteenth
// and still be it: a sum in float64 strays this far, a typed number never.
const sameFraction = 1e-9

// Exact is l as it is stored, without a unit. Inches are a fraction where
// sixteenths hit l exactly; all else is the shortest decimal that reads back
// to the very same length, so nothing that was typed is lost.
func (u Unit) Exact(l Length) string {
	x := float64(l)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	if x < 0 {
		return "-" + u.Exact(-l)
	}
	if u == In {
		n := math.Round(x / float64(Inch/16))
		if n < 1<<40 && math.Abs(float64(n*float64(Inch/16))-x) <= sameFraction {
			return sixteenths(int64(n))
		}
	}
	num, den := int64(10), int64(1)
	switch u {
	case In:
		num, den = 254, 10
	case Mm:
		num, den = 1, 1
	}
	want := new(big.Rat).SetFloat64(x)
	want.Mul(want, new(big.Rat).SetFrac64(den, num))
	text := ""
	for places := 0; places <= exactPlaces; places++ {
		text = want.FloatString(places)
		back, _ := new(big.Rat).SetString(text)
		if toMM(back, num, den) == l {
			break
		}
	}
	return text
}

// toMM is the one place where an exact number becomes a length.
func toMM(x *big.Rat, num, den int64) Length {
	mm, _ := new(big.Rat).Mul(x, new(big.Rat).SetFrac64(num, den)).Float64()
	return Length(mm)
}

// Tape is l as one reads it off a tape, without a unit: inches to a
// sixteenth, centimetres to a tenth, millimetres whole.
func (u Unit) Tape(l Length) string {
	x := float64(l)
	if math.IsNaN(x) || math.IsInf(x, 0) || math.Abs(x) > 1e12 {
		return strconv.FormatFloat(u.Of(l), 'g', 6, 64)
	}
	if x < 0 {
		if text := u.Tape(-l); text != "0" {
			return "-" + text
		}
		return "0"
	}
	n := int64(math.Floor(float64(l+stepSlack)/float64(u.fine()) + 0.5))
	switch u {
	case Cm:
		text := strconv.FormatInt(n/10, 10)
		if n%10 != 0 {
			text += "." + strconv.FormatInt(n%10, 10)
		}
		return text
	case Mm:
		return strconv.FormatInt(n, 10)
	}
	return sixteenths(n)
}

// Say is Tape with the unit behind it: "9 5/8 in".
func (u Unit) Say(l Length) string { return u.Tape(l) + " " + u.String() }

// sixteenths writes n/16 in lowest terms: "9 5/8", "1/2", "0".
func sixteenths(n int64) string {
	whole, part, of := n/16, n%16, int64(16)
	for part != 0 && part%2 == 0 {
		part, of = part/2, of/2
	}
	fraction := strconv.FormatInt(part, 10) + "/" + strconv.FormatInt(of, 10)
	switch {
	case part == 0:
		return strconv.FormatInt(whole, 10)
	case whole == 0:
		return fraction
	}
	return strconv.FormatInt(whole, 10) + " " + fraction
}

// plain writes a bare number with at most the given places, no idle zeros.
func plain(x float64, places int) string {
	text := strconv.FormatFloat(x, 'f', places, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}
