package truing

import "chalkfold/measure"

// inch is the tape that the limits are stated on, in millimetres.
const inch = measure.Inch

// slack keeps a length that lies on a limit from failing by rounding. It is
// far below any tape.
const slack = 1e-6

// Pairs and joins. Teaching practice gives a home accuracy of 1/16 to 1/8
// (common practice): pass to the first, advise to the second, fail beyond.
// Where practice names only one limit, advice runs to twice that.
const (
	pairPass   = inch / 16
	pairAdvise = inch / 8

	// easedBack: a back shoulder may be a little longer, eased in.
	easedBack = inch / 8

	// legsPass: a dart's two legs are sewn on top of each other.
	legsPass   = inch / 32
	legsAdvise = inch / 16

	// A ring of neck or armhole shows a kink of more than 5 degrees.
	joinPass   = 5.0
	joinAdvise = 10.0

	// The armhole arrives level at the underarm, so each corner lacks the
	// side's slant: of 993 women the middle is 16, one in a hundred over 21.
	underarmPass   = 20.0
	underarmAdvise = 28.0

	// A pegged side meets the hem at 90 and its slant: 4.5 to 6.9 together.
	hemPass   = 8.0
	hemAdvise = 16.0

	// Half of a piece is drawn: at the fold an angle doubles into a point.
	squarePass   = 1.0
	squareAdvise = 2.0

	// capPass: how far a folded cap may turn off the seam below it.
	capPass = 5.0
)

// The shoulder line against her shoulder length: the tape goes over a round
// bone, so the drawn line is shorter; the middle of 993 women is -0.44.
const (
	shoulderShort = -1.25 * inch
	shoulderLong  = 0.5 * inch
)

// Darts.
const (
	leastDart = 0.375 * inch // the least worth sewing (common practice)
	mostDart  = 2.5 * inch   // beyond it one dart looks pointed (common practice)
	// sharpDart: a tip of more degrees points unless it stands well back.
	sharpDart  = 18.0
	sharpBack  = 1.5 * inch
	fallMost   = 10.0 // a dart should point at the bust, level or rising
	aimPass    = 5.0  // off the bust point (common practice)
	bustUnder  = 0.5 * inch
	thumbDart  = 5 * inch // how long a dart is by thumb
	lowestDart = 4 * inch // below the underarm
)

// Facings: as long as their edge, or up to 1/8 shorter so that the seam
// rolls inwards (common practice).
const (
	facingShort  = -inch / 8
	facingOver   = 0.05 // what flattening may add
	facingWidth  = inch / 16
	facingAdvise = inch / 8
	// facingDip: a thumb-drawn neck facing dips up to 1/8 below its ends and
	// still covers; this is twice that (our judgement).
	facingDip = inch / 4
	// facingCross, millimetres on lines flattened at flat: chosen so that of
	// 993 women 83 are told, as an independent drawing of them found; lines
	// that cross at all are 90, the rest by less than a chalk line.
	facingCross = 0.1
)

// Girths.
const (
	girthPass   = inch / 16
	girthAdvise = inch / 8
	spareMost   = 1.25 * inch // a quarter, to leave undarted (common practice)

	armLeast = 3.75 * inch // over the upper arm, sleeveless (common practice)
	armFail  = 3 * inch
	armMost  = 8 * inch
	armWide  = 1.5 // out over down, of the hollow under the arm
	armRound = inch
	hollow   = inch
	// usualInset is what a sleeveless shoulder end is drawn in.
	usualInset = 0.75 * inch
	armStep    = 0.2 * inch // what 1/2 of ease adds round an armhole at least, 0.3 at most
	backUnder  = -0.25 * inch
	backOver   = 0.75 * inch
	// backUnderCup: with front and back shares of their own the front
	// armhole is the longer one.
	backUnderCup = -0.625 * inch
	// backUnderBlock: the block's back is framed by the chest alone, so its
	// front armhole is longer still; of 993 women one in ten is beyond this.
	backUnderBlock = -1.25 * inch
	// thumbDeep: how far the sewn underarm may lie off the measured depth.
	thumbDeep = 0.5 * inch

	// Beyond these heights what rules propose for lengths is doubted: ready-made
	// sizes are short at 160 cm and long at 176 (from memory).
	petite = 157 * measure.Centimetre
	tall   = 176 * measure.Centimetre

	neckNatural = 0.5 * inch  // a natural neck against her neck base
	neckWidened = 0.25 * inch // from here on the neck is no natural one
	highHip     = inch        // ease wanted over the high hip
	// askBust, askSurplus: from here on her upper chest decides.
	askBust    = 38 * inch
	askSurplus = 1.75 * inch
)

// Wearing.
const (
	headOver  = inch     // a woven neck over the head (common practice)
	bodyOver  = inch     // a woven waist over the bust, arms up (common practice)
	zipAbove  = 2 * inch // of the hip line: low enough to step in
	diveMost  = 20.0     // degrees a side may slant from waist to hip
	thumbLong = inch     // front too long or too short by thumb
	sitFail   = 1.5 * inch
	sitLeast  = 2 * inch // a seat gains 1 1/2 to 3 (common practice)
	bareFail  = 1.5 * inch
	bareLeast = 2.5 * inch // covers a bra strap (common practice)
	slitClear = 6 * inch   // unbroken seam above an opening (common practice)
	// sideSlitClear is what slits in the sides keep below the waist (common
	// practice, no source).
	sideSlitClear = 6 * inch
	slitMost      = 9.5 * inch // higher is not for the office (common practice)
)

// Cutting.
const (
	// flat is the chord tolerance of outlines here, millimetres: a tenth of
	// what a pair may be out, and few enough chords to compare all of them.
	flat         = 0.2
	allowanceOff = inch / 16
	grainOff     = inch / 8
)
