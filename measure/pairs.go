package measure

import "math"

// pair is a relation that her own measurements should have among themselves.
// Rules of the trade, from memory; each gives a note, never more.
type pair struct {
	needs []ID // the first is the one to doubt, the second stands beside it
	holds func(at []Length) bool
	says  string
}

var pairs = []pair{
	{
		[]ID{SideNeckToWaist, BackNeckToWaist},
		func(at []Length) bool {
			d := at[0] - at[1] - napeBelowSideNeck
			return d >= -stepSlack && d <= 3*Inch+stepSlack
		},
		"Side neck to waist {say} and back neck to waist {say} do not go together: the front is mostly {say} to {say} longer than the back.",
	},
	{
		[]ID{AcrossFront, AcrossBack},
		func(at []Length) bool { return at[0] <= at[1] && at[1]-at[0] <= 2*Inch },
		"Across front {say} beside across back {say}: the front is mostly up to {about} narrower.",
	},
	{
		// Small busts may be below the chest: ASTM D5585-11e1 has up to 5/8 in.
		[]ID{UpperChestGirth, BustGirth},
		func(at []Length) bool { return at[0] <= at[1]+1*Inch },
		"Upper chest {say} is larger than bust {say}: were the two changed round?",
	},
	{
		[]ID{UnderBustGirth, BustGirth},
		func(at []Length) bool { return at[0] <= at[1] },
		"Under bust {say} is larger than bust {say}: were the two changed round?",
	},
	{
		[]ID{TopHipGirth, WaistGirth},
		func(at []Length) bool { return at[0] >= at[1]-1*Inch },
		"Top hip {say} is smaller than waist {say}: it lies lower, where she is mostly wider.",
	},
	{
		[]ID{FrontWaistArc, WaistGirth},
		func(at []Length) bool { return at[0] >= 0.40*at[1] && at[0] <= 0.62*at[1] },
		"Front waist arc {say} beside waist {say}: mostly it is about half.",
	},
	{
		[]ID{FrontHipArc, HipGirth},
		func(at []Length) bool { return at[0] >= 0.38*at[1] && at[0] <= 0.60*at[1] },
		"Front hip arc {say} beside hip {say}: mostly it is about half.",
	},
	{
		[]ID{NeckBaseGirth, AcrossShoulders},
		func(at []Length) bool { return at[0] >= 0.80*at[1] && at[0] <= 1.15*at[1] },
		"Neck base {say} and across shoulders {say}: the two are mostly about alike.",
	},
	{
		[]ID{ShoulderLength, AcrossShoulders, NeckBaseGirth, ShoulderDrop},
		shoulderMeets,
		"Shoulder length {say} does not meet across shoulders {say} with neck base {say} and shoulder drop {say}: one of the four is out.",
	},
	{
		[]ID{SideWaistLength, BackNeckToWaist},
		func(at []Length) bool { return at[0] >= 0.35*at[1] && at[0] <= 0.65*at[1] },
		"Side length {say} beside back neck to waist {say}: mostly it is about half.",
	},
	{
		[]ID{ArmscyeGirth, UpperArmGirth},
		func(at []Length) bool { return at[0] > at[1] },
		"Armscye {say} is not larger than upper arm {say}: it goes round the whole shoulder.",
	},
	{
		[]ID{WristGirth, ElbowGirth},
		func(at []Length) bool { return at[0] < at[1] },
		"Wrist {say} is not smaller than elbow {say}: were the two changed round?",
	},
	{
		[]ID{HandGirth, WristGirth},
		func(at []Length) bool { return at[0] > at[1] },
		"Hand {say} is not larger than wrist {say}: were the two changed round?",
	},
}

// shoulderMeets compares her shoulder with the straight line that the draft
// makes of neck, width and drop. Hers goes over a round bone, so the line may
// be 1 1/4 in shorter, but only 1/2 in longer.
func shoulderMeets(at []Length) bool {
	neckHalf := at[2]/6 + Inch/2
	line := Length(math.Hypot(float64(at[1]/2-neckHalf), float64(at[3])))
	return line-at[0] >= -1.25*Inch && line-at[0] <= 0.5*Inch
}

// pair gives a note where a relation does not hold.
func (d doubter) pair(p pair) {
	at := make([]Length, len(p.needs))
	args := make([]any, 0, len(p.needs)+2)
	for i, id := range p.needs {
		l, ok := d.body.Get(id)
		if !ok || d.wrong[id] {
			return
		}
		at[i] = l
		args = append(args, l)
	}
	if p.holds(at) {
		return
	}
	switch p.needs[0] {
	case SideNeckToWaist:
		args = append(args, napeBelowSideNeck, napeBelowSideNeck+3*Inch)
	case AcrossFront:
		args = append(args, 2*Inch)
	}
	d.add(Doubt{ID: p.needs[0], Other: p.needs[1], Says: Tell(p.says, args...)})
}
