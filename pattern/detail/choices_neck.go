package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

var neckChoices = []pattern.Choice{
	byMethod(pattern.Choice{
		ID: "front_neck_depth", Title: "Front neck depth", Says: "From the top line down the centre front.",
		Group: "Neck", Kind: pattern.KindLength, After: []pattern.ChoiceID{"front_neckline", "collar"},
		Default: frontDepth, Limits: between(2.5, 8),
	}, 3),
	byMethod(pattern.Choice{
		ID: "back_neck_depth", Title: "Back neck depth", Says: "From the top line down the centre back; shallower than the front.",
		Group: "Neck", Kind: pattern.KindLength,
		After:   []pattern.ChoiceID{"back_neckline", "neck_widening", "shoulder_inset", "shoulder_forward", "collar"},
		Default: backDepth, Limits: between(0.75, 4),
	}, 1),
}

// frontDepth is how deep each neckline usually is in front (common
// practice, no source).
func frontDepth(k pattern.Known) pattern.Default {
	if d, ok := collared(k, false); ok {
		return d
	}
	switch NeckStyle(k, false) {
	case SquareNeckline:
		return usualLength(5)
	case VNeckline:
		return usualLength(6)
	case JewelNeckline, SlitNeckline, KeyholeNeckline:
		return sixthOfNeck(k, 0.25, "A sixth of the neck base and {1/4 in}: it lies at the pit of the neck.")
	case BoatNeckline:
		return sixthOfNeck(k, 0.5, "A sixth of the neck base and {1/2 in}: a boat neck runs nearly straight across.")
	case FunnelNeckline:
		return sixthOfNeck(k, 0.625, "A sixth of the neck base and {5/8 in}: the funnel stands up from there.")
	case SweetheartNeckline:
		if w := waits(k, measure.SideNeckToBustPoint); w != nil {
			return pattern.Default{Waits: w}
		}
		work := measure.Measured("side neck to bust point", k.Body(measure.SideNeckToBustPoint)).Minus(measure.Fixed(rule.In(3)))
		return pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("{3 in} above the bust point; lower is not for the office."),
		}
	}
	return usualLength(4.5)
}

func sixthOfNeck(k pattern.Known, more float64, why string) pattern.Default {
	if w := waits(k, measure.NeckBaseGirth); w != nil {
		return pattern.Default{Waits: w}
	}
	work := measure.Measured("neck base", k.Body(measure.NeckBaseGirth)).Over(6).Plus(measure.Fixed(rule.In(more)))
	return pattern.Default{Value: pattern.LengthValue(work.Result()), Sum: work, Because: measure.Tell(why)}
}

func backDepth(k pattern.Known) pattern.Default {
	if d, ok := collared(k, true); ok {
		return d
	}
	switch NeckStyle(k, true) {
	case JewelNeckline:
		return usualLength(0.875)
	case FunnelNeckline:
		return usualLength(1)
	case SquareNeckline:
		return usualLength(2.5)
	case VNeckline:
		return usualLength(4)
	case BoatNeckline:
		if w := waits(k, shoulderNeeds(k)...); w != nil {
			return pattern.Default{Waits: w}
		}
		work := measure.Most(measure.Fixed(measure.Inch),
			measure.Drawn("neck point", measure.Length(plainShoulder(k, true).Neck.Y)).Plus(measure.Fixed(rule.In(0.5))))
		return pattern.Default{
			Value: pattern.LengthValue(work.Result()), Sum: work,
			Because: measure.Tell("{1/2 in} below the neck point, and no less than {1 in}: the back of a boat neck stays high."),
		}
	}
	return usualLength(1.5)
}

var frontNecklines = []pattern.Option{
	{Value: RoundNeckline, Title: "Round", Says: "One smooth ring."},
	{Value: JewelNeckline, Title: "Jewel", Says: "Round and close to the base of the neck."},
	{Value: SquareNeckline, Title: "Square", Says: "An upright side that leans in a little, and level across."},
	{Value: VNeckline, Title: "V", Says: "A slant from the shoulder to a point, bowed a little so that it lies flat."},
	{Value: BoatNeckline, Title: "Boat", Says: "Wide and high, nearly straight across."},
	{Value: SweetheartNeckline, Title: "Sweetheart", Says: "An arc over each side of the bust that dips to a point at the centre."},
	{Value: SlitNeckline, Title: "Slit", Says: "A jewel neck, slashed down the centre."},
	{Value: KeyholeNeckline, Title: "Keyhole", Says: "A jewel neck with a drop below it, closed at its top by a loop."},
	{Value: FunnelNeckline, Title: "Funnel", Says: "Stands up round her neck; wants the zip behind to its top."},
}

var backNecklines = []pattern.Option{frontNecklines[0], frontNecklines[1], frontNecklines[2], frontNecklines[3], frontNecklines[4], frontNecklines[8]}

// necklineChoices are what a neckline is made of.
var necklineChoices = []pattern.Choice{
	{
		ID: "front_neckline", Title: "Front neckline", Says: "The shape of the neck in front.", Group: "Neck",
		Kind: pattern.KindPick, Methods: onlyMeasured, Options: frontNecklines, Default: pick(RoundNeckline),
		After: []pattern.ChoiceID{"collar", "closure"},
	},
	{
		ID: "back_neckline", Title: "Back neckline", Says: "The shape of the neck behind; it shares the widening of the front.", Group: "Neck",
		Kind: pattern.KindPick, Methods: onlyMeasured, Options: backNecklines,
		After: []pattern.ChoiceID{"front_neckline"}, Default: backNeckline,
	},
	length("neck_lean", "Neck", "Side of the neck leans in", "How far the upright side of a square or sweetheart neck comes in on its way down.", 0.375, 0.25, 0.5, pattern.Measured),
	length("v_bow", "Neck", "V bowed by", "How far the slant of a V is bowed outwards in its middle.", 0.1875, 0.125, 0.25, pattern.Measured),
	length("sweetheart_dip", "Neck", "Sweetheart dips by", "How far the centre lies below the arcs over the bust.", 1, 0.75, 1.5, pattern.Measured),
	length("funnel_rise", "Neck", "Funnel rises by", "How far a funnel stands up above the neck it is drawn from.", 1, 0.75, 1.5, pattern.Measured),
	length("keyhole_width", "Neck", "Keyhole width", "The whole width of the drop where it is widest.", 1, 0.75, 1.5, pattern.Measured),
	{
		ID: "neck_opening_length", Title: "Opening in the neck", Says: "How long the slit or keyhole is, below the neck.", Group: "Neck",
		Kind: pattern.KindLength, Methods: onlyMeasured,
		After: []pattern.ChoiceID{
			"front_neckline", "back_neckline", "front_neck_depth", "back_neck_depth", "neck_widening", "shoulder_inset", "shoulder_forward",
			"neck_lean", "v_bow", "sweetheart_dip", "funnel_rise", "neck_pinch",
		},
		Default: neckOpeningLength, Limits: between(3, 6),
	},
}

// backNeckline: a jewel, a boat neck or a funnel runs round her whole neck; behind any
// other front the back is round.
func backNeckline(k pattern.Known) pattern.Default {
	style := RoundNeckline
	switch NeckStyle(k, false) {
	case JewelNeckline, SlitNeckline, KeyholeNeckline:
		style = JewelNeckline
	case BoatNeckline, FunnelNeckline:
		style = NeckStyle(k, false)
	}
	return pick(style)(k)
}

// neckOpeningLength: together with the ring, the opening passes her head.
func neckOpeningLength(k pattern.Known) pattern.Default {
	usual := usualLength(4.5)
	style := NeckStyle(k, false)
	if !HasNeckOpening(k) || !k.Has(shoulderNeeds(k)...) {
		return usual
	}
	head, ok := k.Measured(measure.HeadGirth)
	if !ok {
		p, proposed := measure.Propose(k.Job.Body, measure.HeadGirth)
		if !proposed {
			return usual
		}
		head = p.Value
	}
	work := measure.Measured("head", head).Minus(measure.Drawn("ring of the neck", NeckRing(k))).Over(2).Plus(measure.Fixed(measure.Inch))
	l := max(rule.In(3), work.Result().Up(rule.Eighth))
	d := pattern.Default{
		Value: pattern.LengthValue(l), Sum: work, Proposed: !ok,
		Because: measure.Tell("Half of what the ring lacks to pass her head, and {1 in}; up to the next {1/8 in}."),
	}
	if most := MostNeckOpening(style); l > most {
		d.Value, d.GaveWay = pattern.LengthValue(most), true
		d.Because = measure.Tell("Her head would want {}; {} is the most for a "+style+", and the zip behind does the rest.", l, most)
	}
	return d
}

// NeckRing is the neck all round, as it is drawn by the measured method, less
// what is pinched out of it.
func NeckRing(k pattern.Known) measure.Length {
	sum := 0.0
	for _, back := range []bool{false, true} {
		sum += 2 * NecklineOf(k, plainShoulder(k, back), back).Curve().Length()
	}
	return measure.Length(sum) - 2*k.Length("neck_pinch")
}
