package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// Sway is a fold taken out of a back at the waist: all of it at the centre,
// nothing at the side. Half lies above the waist line and half below; what
// hangs below turns up about the side, so every edge keeps its length but the
// centre, which bends and is shorter by the fold. So the centre wants a seam.
type Sway struct {
	Pivot geom.Point  // of the side, on the waist line
	Bend  geom.Point  // of the centre, where the two lines of the fold meet
	Turn  geom.Matrix // what lies below the fold
	Half  geom.Matrix // what lies on the waist line
}

// NewSway folds a back whose side crosses the waist line at a point.
func NewSway(pivot geom.Point, fold measure.Length) Sway {
	angle := 2 * chord(fold.MM()/(2*pivot.X))
	s := Sway{Pivot: pivot, Turn: geom.TurnAbout(pivot, angle), Half: geom.TurnAbout(pivot, angle/2)}
	s.Bend = s.Half.Apply(geom.Point{Y: pivot.Y})
	return s
}

// Side is a side seam once the fold is out.
func (s Sway) Side(side geom.Path) geom.Path {
	at, _, _ := side.Nearest(s.Pivot)
	above, below := side.Split(at)
	below = below.Transform(s.Turn)
	below[0] = movedStart(below[0], above.End())
	return above.Then(below)
}

// Centre is a centre back from the neck to the hem once the fold is out. A
// ruled one is rounded where it bends; one that was shaped bends as it comes.
func (s Sway) Centre(neck, hem geom.Point, shaped geom.Path) geom.Path {
	if len(shaped) == 0 {
		upper, rest := Smoothed(neck, s.Bend, s.Turn.Apply(hem))
		return upper.Then(geom.Lines(rest, s.Turn.Apply(hem)))
	}
	cut := func(m geom.Matrix) float64 {
		line := geom.Lines(s.Pivot, m.Apply(geom.Point{X: -inch, Y: s.Pivot.Y}))
		if x := geom.Cross(shaped, line); len(x) > 0 {
			return x[0].S
		}
		return shaped.Length() / 2
	}
	back := geom.TurnAbout(s.Pivot, -s.angle()/2)
	above, _ := shaped.Split(cut(s.Half))
	_, below := shaped.Split(cut(back))
	below = below.Transform(s.Turn)
	below[0] = movedStart(below[0], above.End())
	return above.Then(below)
}

func (s Sway) angle() float64 { return math.Atan2(s.Turn[1], s.Turn[0]) }

// movedStart begins a segment at a point a hair away.
func movedStart(g geom.Segment, at geom.Point) geom.Segment {
	if !g.Curved {
		return geom.Straight(at, g.D)
	}
	return geom.Curve(at, g.B.Add(g.A.To(at)), g.C, g.D)
}

// SwayTaken is what is folded out of the back at the waist.
func SwayTaken(k pattern.Known) measure.Length {
	if k.Method == pattern.Thumb {
		return 0
	}
	return k.Length("sway_back")
}

// SwayHindered says why a fold at the waist cannot be taken out of a back, and
// what would do; empty where it can.
func SwayHindered(k pattern.Known) (why, cure string) {
	switch {
	case HasWaistSeam(k):
		return "the waist seam parts bodice and skirt, so there is no cloth across the waist to fold", "a dress without a waist seam; or take the skirt up at its waist behind when it is fitted"
	case HasPanels(k):
		return "panel seams run through the waist, and a fold would step every one of them", "a back without panels"
	case BackOnFold(k):
		return "the centre back is cut on the fold, and a fold at the waist bends the centre", "a zip behind, or a centre back that is shaped"
	}
	return "", ""
}

var swayBack = pattern.Choice{
	ID: "sway_back", Title: "Fold out of a hollow back", Says: "What is taken out of the length of the centre back at the waist, running out to nothing at the sides.",
	Group: "Shape", Kind: pattern.KindLength, Methods: onlyMeasured, Limits: between(0, 0.75),
	After: []pattern.ChoiceID{"closure", "hem_opening", "waist_shaping", "waist_seam", "panel_seam"},
	Default: func(k pattern.Known) pattern.Default {
		none := pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("Her back is not hollow, as far as it was measured.")}
		sway, ok := rule.Sway(k)
		if !ok || sway.Result() < rule.LeastSway-1e-6 {
			return none
		}
		if why, _ := SwayHindered(k); why != "" {
			none.Because = measure.Tell("Her waist lies {} lower behind, but "+why+".", sway.Result())
			return none
		}
		fold := min(rule.MostSway, sway.Result().Near(rule.Eighth))
		return pattern.Default{
			Value: pattern.LengthValue(fold), Sum: sway, GaveWay: true,
			Because: measure.Tell("Her waist lies {} lower behind than at the side: a hollow back. {} of its length is folded out, {} at most.", sway.Result(), fold, rule.MostSway),
		}
	},
}
