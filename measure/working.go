package measure

import "math"

// Working is how a length came to be: a sum as a tree. It is immutable plain
// data, so two Workings made the same way are equal and print alike. The zero
// Working is no sum at all.
type Working struct {
	kind  kind
	name  string
	value float64 // of a term in millimetres; of a number, a divisor, a step as such
	parts []Working
}

type kind int8

const (
	nothing kind = iota
	choice
	taken
	drawn
	number
	fixed
	over
	times
	plus
	minus
	least
	most
	down
	near
	squared
	root
	named
)

// Of is a choice or an earlier result, with its name.
func Of(name string, l Length) Working { return Working{kind: choice, name: name, value: float64(l)} }

// Measured is one of her own measurements. Private hides its value.
func Measured(name string, l Length) Working {
	return Working{kind: taken, name: name, value: float64(l)}
}

// Drawn is a length measured on the drawing.
func Drawn(name string, l Length) Working {
	return Working{kind: drawn, name: name, value: float64(l)}
}

// Number is a bare number, the same in every unit: a count, a share, degrees.
func Number(n float64) Working { return Working{kind: number, value: n} }

// Fixed is a length that the rule itself states; it is shown without a name.
func Fixed(l Length) Working { return Working{kind: fixed, value: float64(l)} }

// Over is w / n.
func (w Working) Over(n float64) Working {
	return Working{kind: over, value: n, parts: []Working{w}}
}

// Times is w x n.
func (w Working) Times(n float64) Working {
	return Working{kind: times, value: n, parts: []Working{w}}
}

// Plus is w + v.
func (w Working) Plus(v Working) Working { return Working{kind: plus, parts: []Working{w, v}} }

// Minus is w - v.
func (w Working) Minus(v Working) Working { return Working{kind: minus, parts: []Working{w, v}} }

// Least is the smallest of several.
func Least(ws ...Working) Working { return pick(least, ws) }

// Most is the largest of several.
func Most(ws ...Working) Working { return pick(most, ws) }

func pick(k kind, ws []Working) Working {
	switch len(ws) {
	case 0:
		return Working{}
	case 1:
		return ws[0]
	}
	return Working{kind: k, parts: append([]Working(nil), ws...)}
}

// Down is w brought down to a whole step.
func (w Working) Down(step Length) Working {
	return Working{kind: down, value: float64(step), parts: []Working{w}}
}

// Near is w brought to the nearest whole step.
func (w Working) Near(step Length) Working {
	return Working{kind: near, value: float64(step), parts: []Working{w}}
}

// Squared is w x w. It makes sense only under Root.
func (w Working) Squared() Working { return Working{kind: squared, parts: []Working{w}} }

// Root is the square root of w, a sum or difference of squares.
func (w Working) Root() Working { return Working{kind: root, parts: []Working{w}} }

// Hypot is the long side of the right triangle with the sides a and b.
func Hypot(a, b Working) Working { return a.Squared().Plus(b.Squared()).Root() }

// Named gives the result of w a name: inside a longer sum only the name and
// the result appear. By itself it still shows how it was worked out.
func (w Working) Named(name string) Working {
	if name == "" {
		return w
	}
	return Working{kind: named, name: name, parts: []Working{w}}
}

// IsZero reports whether w is no sum at all.
func (w Working) IsZero() bool { return w.kind == nothing }

// Result is what the sum comes to.
func (w Working) Result() Length { return Length(w.compute()) }

func (w Working) compute() float64 {
	at := func(i int) float64 { return w.parts[i].compute() }
	switch w.kind {
	case choice, taken, drawn, number, fixed:
		return w.value
	case over:
		return at(0) / w.value
	case times:
		return float64(at(0) * w.value)
	case plus:
		return at(0) + at(1)
	case minus:
		return at(0) - at(1)
	case least, most:
		x := at(0)
		for i := 1; i < len(w.parts); i++ {
			if w.kind == least {
				x = math.Min(x, at(i))
			} else {
				x = math.Max(x, at(i))
			}
		}
		return x
	case down:
		return float64(Length(at(0)).Down(Length(w.value)))
	case near:
		return float64(Length(at(0)).Near(Length(w.value)))
	case squared:
		x := at(0)
		return float64(x * x)
	case root:
		return math.Sqrt(math.Max(0, at(0)))
	case named:
		return at(0)
	}
	return 0
}
