package measure

// Where the usual values of the table come from.
const (
	// survey covers what the survey took just as the tape does.
	survey = "ANSUR II survey 2012, women, p1 to p99"
	// surveyLevel covers lengths to the waist. The survey's waist is at the
	// navel; the standard's level lies midway between lowest rib and hip bone,
	// and both heights were taken.
	surveyLevel = survey + ", waist level from rib and hip bone"
	// surveyStraight covers the arm, which the survey took straight.
	surveyStraight = survey + ", arm straight"
	// fromMemory and trade mark what no source was found for.
	fromMemory = "from memory"
	trade      = "common practice, no source"
)

// Groups of the table, in the order of taking.
const (
	groupStart   = "height"
	groupNeck    = "neck and shoulders"
	groupGirths  = "girths"
	groupLengths = "lengths of the body"
	groupWidths  = "widths and armhole"
	groupArm     = "arm"
	groupLegs    = "head and legs"
)

// forDress marks what a dress needs, or is better for, and what else hangs
// from the shoulders.
var forDress = []string{"dress", "top", "shift", "tunic"}

// forAll marks what a skirt needs, or is better for, too.
var forAll = []string{"dress", "top", "shift", "tunic", "skirt"}
