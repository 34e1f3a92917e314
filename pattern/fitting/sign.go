package fitting

import (
	"slices"

	"chalkfold/measure"
)

// Place is where on the body a sign is looked for, in the order in which a
// fitting goes: what hangs from the shoulder is only true once that is right.
type Place string

// The places.
const (
	NeckAndShoulder Place = "Neck and shoulder"
	Bust            Place = "Bust"
	Armhole         Place = "Armhole"
	WaistAndBack    Place = "Waist and back"
	HipAndSkirt     Place = "Hip and skirt"
	Hem             Place = "Hem"
)

// Places are all places in their order.
func Places() []Place {
	return []Place{NeckAndShoulder, Bust, Armhole, WaistAndBack, HipAndSkirt, Hem}
}

// Sign is one thing that is seen on the body.
type Sign struct {
	ID    string
	Place Place
	Seen  string         // what she sees, one sentence
	Pin   string         // what to pin or open, and what to measure of it
	Usual measure.Length // an amount to begin with; zero: there is nothing to measure
	Ways  []Way          // what would cure it, likeliest first
}

// Way is one cure: the inputs that change, and why those.
type Way struct {
	Title string
	Why   string
	Moves []Move
}

// Move is one input of a way. The input changes by Times the amount that was
// pinned, or takes the option, or is set to nought.
type Move struct {
	Input  string
	Times  float64
	Option string  // of a pick
	Nought bool    // to 0, whatever was pinned
	Only   bool    // only where she chose it herself: its default follows the others
	PerIn  float64 // of a percentage: points an inch
}

// Signs lists every sign, place by place.
func Signs() []Sign {
	return slices.Concat(shoulderSigns, bustSigns, armholeSigns, waistSigns, hipSigns, hemSigns)
}

// Find is a sign by its id.
func Find(id string) (Sign, bool) {
	for _, s := range Signs() {
		if s.ID == id {
			return s, true
		}
	}
	return Sign{}, false
}

func by(input string, times float64) Move { return Move{Input: input, Times: times} }

// follows is an input whose default follows by itself: it is moved only where
// she chose it.
func follows(input string, times float64) Move {
	return Move{Input: input, Times: times, Only: true}
}

const (
	quarter = measure.Inch / 4
	eighth  = measure.Inch / 8
	half    = measure.Inch / 2
)
