package rule

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// BackWaist is the waist level of the back: the nape lies 3/4 below the top
// line, and her back length is counted from the nape.
func BackWaist(k pattern.Known) measure.Working {
	return measure.Of("nape", NapeDrop).Plus(measured(k, measure.BackNeckToWaist, "back length"))
}

// BackHip is the hip level of the back.
func BackHip(k pattern.Known) measure.Working {
	return measure.Of("waist level", BackWaist(k).Result()).Plus(measured(k, measure.WaistToHip, "waist to hip"))
}

// Knee is the level of the middle of the kneecap on the back.
func Knee(k pattern.Known) measure.Working {
	return measure.Of("waist level", BackWaist(k).Result()).Plus(measured(k, measure.WaistToKnee, "waist to knee"))
}

// FrontSurplus is how much longer her front is than her back, as measured.
func FrontSurplus(k pattern.Known) measure.Working {
	return measured(k, measure.SideNeckToWaist, "front length").
		Minus(measure.Of("back level", BackWaist(k).Result()))
}

const (
	// leastDart is the smallest dart worth sewing.
	leastDart = 0.375 * measure.Inch
	// mayBeDart: the surplus comes from two lengths that may each be 1/4
	// out, so down to this it is drafted with the least dart.
	mayBeDart = -0.25 * measure.Inch
	// slack keeps a length that was typed as just the limit on its side,
	// whatever the last binary digit says.
	slack = 1e-6 * measure.Millimetre
)

// DartIntake is what the front is drafted longer than the back, which the
// side dart takes up again. Found on 993 women of the ANSUR II survey
// (2012): a front that seems shorter by up to 1/4 still wants the least dart.
func DartIntake(k pattern.Known) measure.Working {
	d := FrontSurplus(k)
	switch x := d.Result(); {
	case x >= leastDart-slack:
		return d
	case x >= mayBeDart-slack && !Direct(k):
		return measure.Of("the least dart", leastDart)
	}
	return measure.Of("no dart", 0)
}

// DartIntakeWhy says how the intake follows from the surplus.
func DartIntakeWhy(k pattern.Known) measure.Sentence {
	switch x := FrontSurplus(k).Result(); {
	case x >= leastDart-slack:
		return measure.Tell("The front is {} longer than the back, and the dart takes up just that.", x)
	case Direct(k) && x >= 0:
		return measure.Tell("The front is only {} longer than the back: no dart. The armhole takes it up.", x)
	case Direct(k):
		return measure.Tell("The front is {} shorter than the back: no dart.", -x)
	case x >= 0:
		return measure.Tell("The front is only {} longer than the back; {} is the least dart worth sewing.", x, leastDart)
	case x >= mayBeDart-slack:
		return measure.Tell("The front is {} shorter than the back, which two lengths taken 1/4 out may give; drafted with {}.", -x, leastDart)
	default:
		return measure.Tell("The front is {} shorter than the back: no dart, and the front has the levels of the back.", -x)
	}
}

// Length is the length of the dress on the back, from the top line: a
// quarter inch below the middle of the knee.
var Length = Chain{
	{
		Name: "{1/4 in} below the middle of the knee", Source: "common practice, no source",
		Needs: []measure.ID{measure.BackNeckToWaist, measure.WaistToKnee},
		Work: func(k pattern.Known) measure.Working {
			return BackWaist(k).Plus(measured(k, measure.WaistToKnee, "waist to knee")).Plus(fixed(0.25))
		},
	},
	{
		Name: "the knee by height", Source: "waist to knee is 0.354 of height in the ANSUR II survey (2012)",
		Needs: []measure.ID{measure.BackNeckToWaist, measure.Height},
		Work: func(k pattern.Known) measure.Working {
			return BackWaist(k).Plus(measured(k, measure.Height, "height").Times(0.354)).Plus(fixed(0.25))
		},
	},
	{
		Name: "{40 in}", Source: "from memory",
		Work: func(pattern.Known) measure.Working { return measure.Of("usual length", In(40)) },
	},
}
