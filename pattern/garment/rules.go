package garment

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern/bench"
)

// measuredRules say by which rule a step of the measured method goes and
// where the rule comes from, for steps whose rule does not hang on the body.
// A step that picks a rule for this body says so itself.
var measuredRules = map[string]string{
	"levels":         "Her own lengths; the nape lies {3/4 in} below the top line, common practice, no source.",
	"neck_base":      "A sixth of the neck base and {1/2 in}, as teaching pages print it.",
	"bone_end":       "Half of across shoulders, and her own shoulder drop.",
	"shoulder_line":  "Both ends move by the same, so that the slope stays; common practice, no source.",
	"shoulder_end":   "Half of across shoulders less the inset; common practice, no source.",
	"neck_point":     "Along the shoulder, never on the top line; common practice, no source.",
	"neck":           "One curve with handles of about half the depth and half the width; common practice, no source.",
	"bust_width":     "A quarter of the girth and a quarter of the ease, as teaching pages print it.",
	"armhole_mid":    "Half the width she was measured, but never outside the hollow below the shoulder end; common practice, no source.",
	"armhole":        "Two curves that meet upright at the middle; common practice, no source.",
	"waist":          "A quarter of the waist and its ease; the side comes in no farther than its limit.",
	"hip":            "A quarter of the hip and a quarter of the ease, as teaching pages print it.",
	"hem":            "The side is as long from hip to hem as the centre is; arithmetic.",
	"side":           "Straight between the marks, the waist and the hip rounded; lengths are those of the straight lines.",
	"opening":        "The zip ends {1 1/2 in} above the hip line; the opening is high enough to step; an estimate.",
	"bust_point":     "Half the distance of the bust points, at her own depth.",
	"dart_start":     "{2 in} below the underarm, or lower where the dart would hang; common practice, no source.",
	"dart_legs":      "The upper leg turned about the tip; geometry.",
	"dart_cap":       "The seam below the dart, mirrored in the lower leg; geometry.",
	"neck_facing":    "No more than half the shoulder, so that facings do not lie double; common practice, no source.",
	"armhole_facing": "What the neck facing leaves of the shoulder, and clear of the dart; common practice, no source.",
	"allowances":     "Square out from the stitching line, each edge its own; common practice, no source.",
}

// thumbRules are the same of drafting by thumb.
var thumbRules = map[string]string{
	"levels":    "Her own lengths; below the bust the front lies {1 1/2 in} lower for the dart.",
	"hem":       "Straight across at the knee's width; where the hem is above the knee, on the line from hip to knee.",
	"side":      "Straight between the marks, the waist and the hip rounded.",
	"stitching": "The allowance is part of the figure: {1 in} at the sides, taken level.",
}

const (
	otherMeasured = "Settled for this style by construction; common practice, no source."
	otherThumb    = "By thumb; common practice, no source."
)

// withRules gives every step the rule it goes by.
func withRules(steps []bench.Step, rules map[string]string, other string) []bench.Step {
	for i := range steps {
		_, name, _ := strings.Cut(steps[i].ID, ".")
		words, ok := rules[name]
		if !ok {
			words = other
		}
		steps[i].Rule = measure.Tell(words)
	}
	return steps
}
