package measure

// Proposal is a value to go on with until the measurement is taken.
type Proposal struct {
	ID         ID
	Value      Length
	Spread     Length // two of three women lie within Value +- Spread
	Source     string
	Working    Working
	FromMemory bool // no published data stands behind it
}

const (
	sourceSurvey = "ANSUR II survey 2012, 1,986 women"
	sourceTable  = "ASTM D5585-11e1, Table 1"
)

// Propose gives a likely value for a measurement that was not taken, from
// those that were. Bust, waist and hip girth are never proposed: without them
// there is nobody to draft for.
func Propose(b Body, id ID) (Proposal, bool) {
	for _, way := range ways(id) {
		if p, ok := way(b); ok {
			p.ID, p.Value = id, p.Working.Result()
			return p, true
		}
	}
	return Proposal{}, false
}

// way is one way to come to a value. It fails where it lacks a measurement.
type way func(b Body) (Proposal, bool)

// ways are the ways to come to a measurement, the best first.
func ways(id ID) []way {
	switch id {
	case NeckBaseGirth, BackNeckToFloor, WaistToFloor, WristGirth, ThighGirth:
		return []way{fitted(id, "")}
	case ArmLength:
		return []way{fitted(id, ""), constant(22.5*Inch, 25, fromMemory)}
	case ShoulderLength:
		return []way{fitted(id, "; hardly better than the middle, so take it"), shoulderLine}
	case NeckGirth:
		return []way{fitted(id, ""), share(NeckBaseGirth, 1/1.126, 11, sourceSurvey)}
	case BackNeckToWaist:
		return []way{fitted(id, ""), constant(16*Inch, 25, fromMemory)}
	case WaistToHip:
		return []way{fitted(id, ""), share(Height, 0.118, 18, sourceSurvey), constant(8*Inch, 20, fromMemory)}
	case WaistToKnee:
		return []way{share(Height, 0.354, 14, sourceSurvey), constant(23*Inch, 30, fromMemory)}
	case BodyRise:
		return []way{fitted(id, ""), share(Height, 0.149, 17, sourceSurvey)}
	case ShoulderToElbow:
		return []way{share(ArmLength, 0.573, 8, sourceSurvey)}
	case ShoulderDrop:
		return []way{constant(1.5*Inch, 10, trade)}
	case HeadGirth:
		return []way{constant(22*Inch, 19, fromMemory)}
	case ElbowGirth:
		return []way{share(UpperArmGirth, 0.91, 15, fromMemory)}
	case HandGirth:
		return []way{share(WristGirth, 1.28, 12, fromMemory), constant(8*Inch, 15, fromMemory)}
	case UpperArmGirth:
		return []way{share(BustGirth, 0.305, 22, fromMemory)}
	case BustPointDistance:
		return []way{fifthOfBust}
	case AcrossShoulders:
		return []way{acrossShoulders}
	case AcrossBack:
		return []way{less(AcrossShoulders, 1.25*Inch, 18)}
	case AcrossFront:
		return []way{less(AcrossBack, 1*Inch, 15)}
	case SideNeckToBustPoint:
		return []way{quarterOfBust}
	case SideNeckToWaist:
		return []way{overTheBust}
	case SideWaistLength:
		return []way{halfOfBack}
	case ShoulderToWaistBack:
		return []way{backFromBone}
	case ShoulderToWaistFront:
		return []way{between(SideNeckToWaist, ShoulderDrop, 20)}
	case UpperChestGirth:
		return []way{fromTable(upperChestRow, 20)}
	case UnderBustGirth:
		return []way{fromTable(underBustRow, 30)}
	}
	return nil
}

// fitted is the way of a published regression.
func fitted(id ID, caution string) way {
	return func(b Body) (Proposal, bool) {
		r, w, ok := regress(b, id)
		if !ok {
			return Proposal{}, false
		}
		return Proposal{Working: w, Spread: r.spread, Source: sourceSurvey + ", from " + r.from() + caution}, true
	}
}

// share is a fixed part of one other measurement.
func share(other ID, part float64, spread Length, source string) way {
	return func(b Body) (Proposal, bool) {
		w, _, ok := known(b, other)
		if !ok {
			return Proposal{}, false
		}
		return Proposal{Working: w.Times(part), Spread: spread, Source: source, FromMemory: source == fromMemory}, true
	}
}

// constant is the same for every body.
func constant(l, spread Length, source string) way {
	return func(Body) (Proposal, bool) {
		return Proposal{Working: Fixed(l), Spread: spread, Source: source, FromMemory: true}, true
	}
}

// known is a measurement as a term: taken, or itself proposed. The second
// result is the spread of the proposal, 0 where it was taken.
func known(b Body, id ID) (Working, Length, bool) {
	if l, ok := b.Get(id); ok {
		return Measured(short(id), l), 0, true
	}
	p, ok := Propose(b, id)
	if !ok {
		return Working{}, 0, false
	}
	return p.Working.Named(short(id)), p.Spread, true
}
