package measure

import "math"

// A regression gives one measurement from others: base + height x ... . They
// were fitted to the 1,986 women of the ANSUR II survey of 2012, in
// centimetres. Rows whose measurement the survey took in another way than the
// tape does (across back, across shoulders, upper arm) are left out.
type regression struct {
	id                      ID
	base, height, bust, hip float64
	spread                  Length // standard deviation of what is left over
}

// regressions lists the better row of an id first: one that knows height,
// bust and hip, then one that knows a single one of them.
var regressions = []regression{
	{NeckBaseGirth, 10.834, 0.0685, 0.1124, 0.0439, 13.8},
	{NeckBaseGirth, 22.332, 0, 0.1561, 0, 14.8},
	{NeckGirth, 11.893, 0.0224, 0.1318, 0.0485, 12.8},
	{ShoulderLength, 3.093, 0.0617, 0.0018, 0.0022, 9.4},
	{ShoulderLength, 3.229, 0.0633, 0, 0, 9.4},
	{BackNeckToFloor, -9.190, 0.9092, -0.0037, 0.0102, 10.5},
	{BackNeckToFloor, -9.041, 0.9126, 0, 0, 10.5},
	{BackNeckToWaist, 4.776, 0.1858, 0.0339, -0.0040, 17.8},
	{BackNeckToWaist, 6.025, 0.1954, 0, 0, 18.0},
	{WaistToFloor, -14.470, 0.7131, -0.0332, 0.0401, 17.4},
	{WaistToFloor, -14.637, 0.7199, 0, 0, 17.5},
	{WaistToHip, 0.144, 0.1167, -0.0540, 0.0508, 17.1},
	{BodyRise, 1.020, 0.0998, 0.0171, 0.0535, 16.6},
	{WristGirth, 3.043, 0.0479, 0.0246, 0.0227, 5.7},
	{ArmLength, -5.535, 0.3571, 0.0063, 0.0112, 17.9},
	{ArmLength, -4.955, 0.3642, 0, 0, 17.9},
	{ThighGirth, -3.577, -0.0403, -0.0099, 0.7118, 19.0},
}

// regress is the best regression for id that this body allows.
func regress(b Body, id ID) (regression, Working, bool) {
	for _, r := range regressions {
		if r.id != id {
			continue
		}
		if w, ok := r.working(b); ok {
			return r, w, true
		}
	}
	return regression{}, Working{}, false
}

// working is the sum of the regression, if all that it needs was taken.
func (r regression) working(b Body) (Working, bool) {
	var w Working
	for _, t := range r.terms() {
		l, ok := b.Get(t.id)
		if !ok {
			return Working{}, false
		}
		term := Measured(short(t.id), l).Times(math.Abs(t.factor))
		switch {
		case w.IsZero():
			w = term
		case t.factor < 0:
			w = w.Minus(term)
		default:
			w = w.Plus(term)
		}
	}
	return w.Plus(Fixed(Length(r.base) * Centimetre)), true
}

type factor struct {
	id     ID
	factor float64
}

// terms are the factors that count, those that add first, so that no sum
// begins with a minus.
func (r regression) terms() []factor {
	var terms []factor
	all := []factor{{Height, r.height}, {BustGirth, r.bust}, {HipGirth, r.hip}}
	for _, adds := range []bool{true, false} {
		for _, t := range all {
			if t.factor != 0 && adds == (t.factor > 0) {
				terms = append(terms, t)
			}
		}
	}
	return terms
}

// from names what the regression works from.
func (r regression) from() string {
	switch {
	case r.height != 0 && r.bust != 0:
		return "height, bust and hip"
	case r.height != 0:
		return "height"
	}
	return "bust"
}

// short is the short name of a measurement, for sums and sentences.
func short(id ID) string {
	if place, ok := order[id]; ok {
		return rows[place].Short
	}
	return string(id)
}
