package measure

import "math"

// Length is a length in millimetres, the one unit used inside.
type Length float64

const (
	Millimetre Length = 1
	Centimetre Length = 10
	Inch       Length = 25.4 // exact since the international yard of 1959
)

// MM is the length in millimetres.
func (l Length) MM() float64 { return float64(l) }

// Inches is the length in inches.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

const (
	// stepSlack forgives what adding and dividing leaves behind: a length
	// that lies this close below a step counts as being on it.
	stepSlack = 1e-6
	// tidiness is the number of parts of a millimetre that a stepped length
	// is set to. Every sixteenth of an inch is a whole number of them, so a
	// stepped inch is the same float64 as the one that was typed.
	tidiness = 1e7
	// tidyTo is where whole parts stop fitting a float64 exactly.
	tidyTo = 1e8
)

// Down is the largest whole step that is not above l.
func (l Length) Down(step Length) Length {
	return l.steps(step, math.Floor(float64(l+stepSlack)/float64(step)))
}

// Near is the whole step nearest to l; a half goes up.
func (l Length) Near(step Length) Length {
	return l.steps(step, math.Floor(float64(l+stepSlack)/float64(step)+0.5))
}

// Up is the smallest whole step that is not below l.
func (l Length) Up(step Length) Length {
	return l.steps(step, math.Ceil(float64(l-stepSlack)/float64(step)))
}

func (l Length) steps(step Length, n float64) Length {
	if step <= 0 {
		return l
	}
	x := n * float64(step)
	if math.Abs(x) < tidyTo {
		x = math.Round(x*tidiness) / tidiness
	}
	return Length(x + 0) // no negative zero
}
