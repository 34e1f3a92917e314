package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// DirectBone is the end of the shoulder bone on the block by direct measure:
// at its level, as far from the neck point as her shoulder is long. Where the
// shoulder is shorter than the fall from one to the other there is none.
func DirectBone(base geom.Point, level, shoulder measure.Length) (geom.Point, bool) {
	fall, long := level.MM()-base.Y, shoulder.MM()
	if !(math.Abs(fall) < long) {
		return geom.Point{}, false
	}
	return geom.Point{X: base.X + math.Sqrt(float64(long*long)-float64(fall*fall)), Y: level.MM()}, true
}

// DirectBase is the neck point of the block, on the back 1 above the nape.
func DirectBase(k pattern.Known, back bool) geom.Point {
	p := geom.Point{X: rule.DirectNeckOut(k, back).Result().MM()}
	if back {
		p.Y = (rule.NapeDrop - rule.DirectNape).MM()
	}
	return p
}

// directShoulder is the shoulder of one half of the block. It is drawn in
// along its line, so that front and back, which may slope differently, stay
// equally long.
func directShoulder(k pattern.Known, shift, inset, widen measure.Length, back bool) Shoulder {
	base := DirectBase(k, back)
	bone, ok := DirectBone(base, rule.DirectTip(k, back).Result(), k.Body(measure.ShoulderLength))
	if !ok {
		bone = base.Add(geom.Vector{X: k.Body(measure.ShoulderLength).MM()})
	}
	down := geom.Vector{Y: shift.MM()}
	s := line(base.Add(down), bone.Add(down), widen)
	s.End = s.Bone.Add(s.Dir.Scale(-inset.MM()))
	return s
}

// mostHollow: a front armhole scooped deeper inside the shoulder end leaves
// the front narrow and its facing without room (common practice, no source).
const mostHollow = measure.Inch

// directInset is how far the block's shoulder end is drawn in: where she is
// narrow across the front for her shoulder, until the armhole is no deeper
// scooped than it should be, as far as the shoulder still covers a strap.
func directInset(k pattern.Known, widen measure.Length) measure.Length {
	if !k.Has(append(shoulderNeeds(k), measure.AcrossFront)...) {
		return usualInset
	}
	s := directShoulder(k, 0, usualInset, widen, false)
	deep := measure.Length(s.End.X) - k.Body(measure.AcrossFront)/2 - mostHollow
	if deep <= 0 || s.Dir.X <= 0 {
		return usualInset
	}
	most := k.Body(measure.ShoulderLength) - widen - strapCovers
	return max(usualInset, min(usualInset+measure.Length(deep.MM()/s.Dir.X), most).Up(rule.Eighth))
}

// UnderarmLevel is where the underarm of one half lies: at the depth of the
// armhole, on the front lower by what its levels lie lower and no dart takes
// up.
func UnderarmLevel(k pattern.Known, depth measure.Length, back bool) measure.Length {
	if back || !rule.Direct(k) || !k.Has(measure.SideNeckToWaist, measure.BackNeckToWaist) {
		return depth
	}
	return depth + rule.FrontSurplus(k).Result() - rule.DartIntake(k).Result()
}

// shoulderNeeds are what the shoulder of the draft rests on.
func shoulderNeeds(k pattern.Known) []measure.ID {
	if rule.Direct(k) {
		return []measure.ID{
			measure.NeckBaseGirth, measure.ShoulderLength, measure.BackNeckToWaist, measure.SideNeckToWaist,
			measure.ShoulderToWaistBack, measure.ShoulderToWaistFront,
		}
	}
	return []measure.ID{measure.NeckBaseGirth, measure.AcrossShoulders, measure.ShoulderDrop}
}

// fullShoulder is her shoulder from the base neck point to an end drawn in.
func fullShoulder(k pattern.Known, inset measure.Length) measure.Length {
	if rule.Direct(k) {
		return k.Body(measure.ShoulderLength) - inset
	}
	return FullShoulder(rule.NeckHalf(k).Result(), rule.BoneOut(k).Result(), k.Body(measure.ShoulderDrop), inset)
}
