package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// A full upper arm makes a wide sleeve, and a cap on it that is as long as the
// armhole lies low: it folds when the arm hangs. What is let in at the upper
// arm alone widens the underarm line and leaves the cap as high as it was; the
// cap is longer by it, and has that much more to ease in.
const (
	// MostLetIn is what is let in at most.
	MostLetIn = 3 * measure.Inch
	// fullestCap is what a cap eases in at most (common practice, no source).
	fullestCap = 1.75 * measure.Inch
)

// LetIn is what of the sleeve's width is let in at the upper arm alone.
func LetIn(k pattern.Known) measure.Length { return k.Length("full_arm") }

// fullArm lets in what lifts a low cap to the lowest that hangs well, as far as
// the cloth eases it in.
func fullArm(k pattern.Known) pattern.Default {
	none := pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The cap stands high enough on a sleeve as wide as her arm wants it.")}
	if !HasSleeve(k) {
		none.Because = measure.Tell("The dress has no sleeve.")
		return none
	}
	if w := capNeeds(k); w != nil {
		return pattern.Default{Waits: w}
	}
	if s, _ := k.Setting("armhole_depth"); !s.Known() {
		return pattern.Default{Waits: s.Default.Waits}
	}
	front, back := DressArmholes(k)
	round := measure.Length(front.Length() + back.Length())
	wide, low, ease := SleeveWidth(k).Result(), measure.Length(LowestCap*round.MM()), k.Length("cap_ease")
	if NewCap(wide, low).Length() <= round+ease {
		return none
	}
	let := measure.Length(0)
	for let+rule.Eighth <= MostLetIn && NewCap(wide-let, low).Length() > round+ease {
		high, ok := CapHeightFor(wide-let-rule.Eighth, round, ease)
		if ok && NewCap(wide, high).Length() > round+fullestCap {
			break
		}
		let += rule.Eighth
	}
	if let == 0 {
		none.Because = measure.Tell("The cap is low on so full an arm, and has all in it that cloth eases in.")
		return none
	}
	return pattern.Default{
		Value: pattern.LengthValue(let), GaveWay: true,
		Because: measure.Tell("On a sleeve of {} the cap would lie too low: {} of it are let in at the upper arm alone, so the cap keeps its height and is eased in more.", wide, let),
	}
}
