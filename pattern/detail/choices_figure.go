package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// figureChoices fit the draft to a figure that the quarters do not fit. Each
// follows her own measurement where she has it.
var figureChoices = []pattern.Choice{
	{
		ID: "back_shoulder_ease", Title: "Back shoulder eased", Says: "How much longer the back shoulder is than the front; it is eased in over a round back.",
		Group: "Shoulder", Kind: pattern.KindLength, Methods: onlyMeasured, Limits: between(0, 0.375),
		After: []pattern.ChoiceID{"back_shoulder"},
		Default: func(k pattern.Known) pattern.Default {
			none := pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("Her back is not round, as far as it was measured.")}
			if BackShoulder(k) != EasedShoulder {
				none.Because = measure.Tell("Nothing is eased in at the back shoulder.")
				return none
			}
			round, ok := rule.RoundBack(k)
			if !ok || round.Result() < rule.LeastRound-1e-6 || rule.Direct(k) {
				return none
			}
			ease := rule.RoundEase(round.Result())
			return pattern.Default{
				Value: pattern.LengthValue(ease), Sum: round, GaveWay: true,
				Because: measure.Tell("From the shoulder her back is {} longer than its slope gives: a round back. Half of that is eased in, {} at most.", round.Result(), rule.MostRoundEase),
			}
		},
	},
	swayBack,
	{
		ID: "high_hip_out", Title: "Let out over the high hip", Says: "How much farther out the side lies half way between waist and hip, on each quarter.",
		Group: "Shape", Kind: pattern.KindLength, Methods: onlyMeasured, Limits: between(0, 0.375),
		After: []pattern.ChoiceID{"ease_bust", "ease_waist", "ease_hip", "side_waist_limit", "large_cup", "side_shape", "waist_shaping"},
		Default: func(k pattern.Known) pattern.Default {
			none := pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The drawn side goes round her high hip, as far as it was measured.")}
			top, ok := k.Measured(measure.TopHipGirth)
			if !ok || !k.Has(measure.BustGirth, measure.WaistGirth, measure.HipGirth, measure.WaistToHip) || k.Pick("side_shape") == "straight" {
				return none
			}
			short := (top + measure.Inch - highHipRound(k)) / 4
			if short <= 0 {
				return none
			}
			more := min(rule.In(0.375), short.Up(rule.Eighth/2))
			return pattern.Default{
				Value: pattern.LengthValue(more), GaveWay: true,
				Because: measure.Tell("Over the high hip she needs {} and an inch to move; the side goes out by {} on each quarter there.", top, more),
			}
		},
	},
	{
		ID: "heel_height", Title: "Heels", Says: "The heel she will wear, if her lengths to the floor were taken without it.",
		Group: "Hem", Kind: pattern.KindLength, Methods: onlyMeasured, Limits: between(0, 4),
		Default: func(pattern.Known) pattern.Default {
			return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("Measured in the shoes that she will wear.")}
		},
	},
}

// highHipRound is the girth of the drawn sides half way between waist and hip.
func highHipRound(k pattern.Known) measure.Length {
	down := k.Body(measure.WaistToHip).MM()
	sum := 0.0
	for _, back := range []bool{false, true} {
		w := geom.Point{X: rule.WaistWidthOf(k, back).Result().MM()}
		h := geom.Point{X: rule.HipWidthOf(k, back).Result().MM(), Y: down}
		x := (w.X + h.X) / 2
		if at := hipCurve(w, h).AtLevel(down / 2); len(at) > 0 {
			x = at[0].X
		}
		sum += 2 * x
	}
	return measure.Length(sum)
}
