package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// The measured figure: the same constructions as the steps of the dress,
// called with all that is known, for defaults that hang on a drawn line.

// MeasuredShoulder is the shoulder of one piece by the measured method.
func MeasuredShoulder(k pattern.Known, back bool) Shoulder {
	s := plainShoulder(k, back)
	if back {
		s = backShaped(k, s)
	}
	return s
}

// plainShoulder is a shoulder before a round back gets its hollow: the neck
// hangs on it.
func plainShoulder(k pattern.Known, back bool) Shoulder {
	shift := k.Length("shoulder_forward")
	if back {
		shift = -shift
	}
	if rule.Direct(k) {
		return directShoulder(k, shift, k.Length("shoulder_inset"), k.Length("neck_widening"), back)
	}
	return NewShoulder(rule.NeckHalf(k).Result(), rule.BoneOut(k).Result(), k.Body(measure.ShoulderDrop),
		shift, k.Length("shoulder_inset"), k.Length("neck_widening"))
}

// backShaped is a back shoulder with what a round back wants of it: longer, or
// with its dart open.
func backShaped(k pattern.Known, s Shoulder) Shoulder {
	s.End = s.End.Add(s.Dir.Scale(BackEase(k).MM()))
	return backDarted(k, s)
}

// MeasuredArmhole is the armhole of one piece and its middle, for a shoulder
// and an underarm level.
func MeasuredArmhole(k pattern.Known, s Shoulder, depth measure.Length, back bool) (mid geom.Point, path geom.Path) {
	hollow := rule.FrontHollow(k, measure.Length(s.End.X))
	if back {
		hollow = rule.BackHollow(k, measure.Length(s.End.X))
	}
	mid = ArmholeMid(s.End, UnderarmLevel(k, depth, back), hollow.Result())
	underarm := geom.Point{X: rule.BustWidthOf(k, back).Result().MM(), Y: UnderarmLevel(k, depth, back).MM()}
	return mid, Armhole(s.End, s.Down, mid, underarm)
}

// MeasuredDart collects what the side dart is drawn from.
func MeasuredDart(k pattern.Known, below measure.Length) DartIn {
	u := geom.Point{X: rule.BustWidthOf(k, false).Result().MM(), Y: k.Length("armhole_depth").MM()}
	intake := rule.DartIntake(k).Result()
	waist := geom.Point{X: rule.WaistWidthOf(k, false).Result().MM(), Y: rule.BackWaist(k).Result().MM()}
	backU := geom.Point{X: rule.BustWidthOf(k, true).Result().MM(), Y: u.Y}
	backW := geom.Point{X: rule.WaistWidthOf(k, true).Result().MM(), Y: waist.Y}
	return DartIn{
		Underarm: u, Waist: waist.Add(geom.Vector{Y: intake.MM()}), BackSide: backU.Dist(backW),
		Bust:  geom.Point{X: k.Body(measure.BustPointDistance).MM() / 2, Y: rule.BustLevel(k).MM()},
		Below: below, TipBack: k.Length("dart_tip_back"), Intake: intake, Swings: rule.SeamSwings(k) != 0,
	}
}
