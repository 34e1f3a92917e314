package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// How the back shoulder gives a round back its hollow at the blade.
const (
	EasedShoulder  = "ease"
	DartedShoulder = "dart"
	PlainShoulder  = "none"
)

// BackShoulder is how a round back is shaped at the shoulder.
func BackShoulder(k pattern.Known) string { return picked(k, "back_shoulder", EasedShoulder) }

// BackEase is what the back shoulder is longer to be eased in; none where a
// dart shapes it, or nothing.
func BackEase(k pattern.Known) measure.Length {
	if BackShoulder(k) != EasedShoulder {
		return 0
	}
	return k.Length("back_shoulder_ease")
}

// HasBackDart says whether a dart is drawn in the back shoulder.
func HasBackDart(k pattern.Known) bool { return BackShoulder(k) == DartedShoulder }

// BackDart is a dart from the middle of the back shoulder, square to it, down
// to the shoulder blade. The outer part of the shoulder turns about its tip,
// so that with the dart closed the shoulder is one straight line again. What
// the end falls by that the shoulder line is raised first, so that a round
// back loses no length over the blade and the armhole keeps its own.
type BackDart struct {
	Closed            Shoulder // raised at its end
	Raised            measure.Length
	Tip, Inner, Outer geom.Point
	Cap               geom.Point // pressed to the centre
	End               geom.Point // of the shoulder, where it turned to
	Dir               geom.Vector
}

// NewBackDart opens a dart in a shoulder.
func NewBackDart(s Shoulder, intake, length measure.Length) BackDart {
	d, up := BackDart{}, 0.0
	for range levelTries {
		d = openBackDart(s.turnedAbout(s.Neck, -up), intake, length)
		up += math.Atan2(d.End.Y-s.End.Y, s.Left().MM())
	}
	d.Raised = measure.Length(s.End.Y - d.Closed.End.Y)
	return d
}

// levelTries are enough for the end to be level to a hair.
const levelTries = 8

func openBackDart(s Shoulder, intake, length measure.Length) BackDart {
	d := BackDart{Closed: s, Inner: s.Neck.Lerp(s.End, 0.5)}
	d.Tip = d.Inner.Add(s.Down.Scale(length.MM()))
	m := geom.TurnAbout(d.Tip, 2*chord(intake.MM()/(2*length.MM())))
	d.Outer, d.End, d.Dir = m.Apply(d.Inner), m.Apply(s.End), m.ApplyVector(s.Dir)
	d.Cap = CapDown(d.Tip, d.Outer, d.Inner, s.Dir.Scale(-1))
	return d
}

// turnedAbout is a shoulder turned about a point of it.
func (s Shoulder) turnedAbout(at geom.Point, angle float64) Shoulder {
	m := geom.TurnAbout(at, angle)
	s.Base, s.Bone, s.Neck, s.End = m.Apply(s.Base), m.Apply(s.Bone), m.Apply(s.Neck), m.Apply(s.End)
	s.Dir, s.Down = m.ApplyVector(s.Dir), m.ApplyVector(s.Down)
	return s
}

// backDarted is a back shoulder with its dart open: the outer part of it.
func backDarted(k pattern.Known, s Shoulder) Shoulder {
	length := k.Length("back_dart_length")
	if !HasBackDart(k) || length <= 0 {
		return s
	}
	d := NewBackDart(s, k.Length("back_shoulder_dart"), length)
	s.End, s.Dir, s.Down = d.End, d.Dir, d.Dir.Right()
	return s
}

// usualBackDart is what the dart takes up: what her back is longer, within
// what one dart can sew.
func usualBackDart(k pattern.Known) pattern.Default {
	round, ok := rule.RoundBack(k)
	switch {
	case !HasBackDart(k):
		return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("There is no dart in the back shoulder.")}
	case !ok || round.Result() < rule.LeastRound-1e-6 || rule.Direct(k):
		return usualLength(0.5)
	}
	dart := rule.RoundDart(round.Result())
	return pattern.Default{
		Value: pattern.LengthValue(dart), Sum: round, GaveWay: true,
		Because: measure.Tell("From the shoulder her back is {} longer than its slope gives; the dart takes up {}, between {} and {}.", round.Result(), dart, rule.LeastRoundDart, rule.MostRoundDart),
	}
}

// backShoulderChoices are the shapes of the back shoulder and the dart in it.
var backShoulderChoices = []pattern.Choice{
	{
		ID: "back_shoulder", Title: "Back shoulder", Says: "What gives a round back its hollow at the shoulder blade.", Group: "Shoulder",
		Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(EasedShoulder),
		Options: []pattern.Option{
			{Value: EasedShoulder, Title: "Eased", Says: "A longer back shoulder is eased in, where her back is round."},
			{Value: DartedShoulder, Title: "Dart", Says: "A dart from the middle of the back shoulder to the blade; it takes up more than ease."},
			{Value: PlainShoulder, Title: "Plain", Says: "Both shoulders are as long, round back or not."},
		},
	},
	{
		ID: "back_shoulder_dart", Title: "Back shoulder dart", Says: "What the dart in the back shoulder takes up.",
		Group: "Shoulder", Kind: pattern.KindLength, Methods: onlyMeasured, After: []pattern.ChoiceID{"back_shoulder"},
		Default: usualBackDart, Limits: between(0.375, 0.75),
	},
	length("back_dart_length", "Shoulder", "Back shoulder dart, length", "How far the dart in the back shoulder runs down to the blade.", 3, 2.5, 4, pattern.Measured),
}
