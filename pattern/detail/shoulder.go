package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Shoulder is the shoulder line of one piece and what lies on it.
type Shoulder struct {
	Base geom.Point  // base neck point, after the forward shift
	Bone geom.Point  // end at the shoulder bone, after the shift
	Dir  geom.Vector // from the neck to the bone
	Down geom.Vector // square to it, downwards: it leans towards the centre
	Neck geom.Point  // neck point, widened
	End  geom.Point  // shoulder end, drawn in by the inset
}

// NewShoulder draws the line from the base neck point to the bone, shifts it
// (front down, back up, so that the seam lies a little forward), takes the
// shoulder end in along it until it lies inset nearer the centre, and slides
// the neck point along it.
func NewShoulder(neckHalf, boneOut, drop, shift, inset, widen measure.Length) Shoulder {
	s := line(geom.Point{X: neckHalf.MM(), Y: shift.MM()}, geom.Point{X: boneOut.MM(), Y: drop.MM() + shift.MM()}, widen)
	s.End = s.Base
	if span := s.Bone.X - s.Base.X; span != 0 {
		s.End = s.Base.Lerp(s.Bone, (s.Bone.X-inset.MM()-s.Base.X)/span)
	}
	return s
}

// line is a shoulder from its base neck point to the bone, not drawn in yet.
func line(base, bone geom.Point, widen measure.Length) Shoulder {
	s := Shoulder{Base: base, Bone: bone, End: bone}
	s.Dir = s.Base.To(s.Bone).Unit()
	s.Down = s.Dir.Right()
	s.Neck = s.Base.Add(s.Dir.Scale(widen.MM()))
	return s
}

// Left is the finished shoulder: neck point to shoulder end, negative where
// they have passed each other.
func (s Shoulder) Left() measure.Length {
	return measure.Length(s.Neck.To(s.End).Dot(s.Dir))
}

// FullShoulder is the length along the shoulder line from the base neck
// point to a shoulder end drawn in by inset.
func FullShoulder(neckHalf, boneOut, drop, inset measure.Length) measure.Length {
	s := NewShoulder(neckHalf, boneOut, drop, 0, inset, 0)
	return s.Left()
}
