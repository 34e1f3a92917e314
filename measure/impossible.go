package measure

// within says that one measurement cannot be more than a share of another.
type within struct {
	small, large ID
	share        float64
	why          string
}

// orders are true of every body. Proportions are not among them.
var orders = []within{
	{NeckGirth, NeckBaseGirth, 1, "the neck is narrower than its base"},
	{NeckBaseGirth, AcrossShoulders, 3, "the neck is narrower than the shoulders"},
	{ShoulderLength, AcrossShoulders, 1, "one shoulder is less than both"},
	{ShoulderDrop, ShoulderLength, 1, "the shoulder falls less than it is long"},
	{AcrossShoulders, BustGirth, 1, "a width is less than the whole girth"},
	{AcrossBack, BustGirth, 1, "a width is less than the whole girth"},
	{AcrossFront, BustGirth, 1, "a width is less than the whole girth"},
	{FrontWaistArc, WaistGirth, 1, "the front is a part of the whole"},
	{FrontHipArc, HipGirth, 1, "the front is a part of the whole"},
	{BustPointDistance, BustGirth, 0.5, "both bust points lie in the front half"},
	{SideNeckToBustPoint, SideNeckToWaist, 1, "the bust lies above the waist"},
	{ArmscyeDepth, BackNeckToWaist, 1, "the armpit lies above the waist"},
	{SideWaistLength, BackNeckToWaist, 1, "the armpit lies below the neck"},
	{BackNeckToWaist, Height, 0.5, "the waist lies above the middle of the body"},
	{BackNeckToFloor, Height, 1, "the neck lies below the top of the head"},
	{WaistToFloor, BackNeckToFloor, 1, "the waist lies below the neck"},
	{WaistToFloor, Height, 1, "the waist lies below the top of the head"},
	{WaistToFloorBack, Height, 1, "the waist lies below the top of the head"},
	{WaistToKnee, WaistToFloor, 1, "the knee lies above the floor"},
	{WaistToHip, WaistToKnee, 1, "the hip lies above the knee"},
	{WaistToHip, WaistToFloor, 1, "the hip lies above the floor"},
	{BodyRise, WaistToFloor, 1, "the seat lies above the floor"},
	{ThighGirth, HipGirth, 1, "one thigh is less than the hips"},
	{ShoulderToElbow, ArmLength, 1, "the elbow lies above the wrist"},
	{ArmLength, BackNeckToWrist, 1, "the arm begins beyond the neck"},
}

const (
	// orderSlack is what two readings of a soft body can differ by.
	orderSlack = 10 * Millimetre
	// Neck to waist and waist to floor make up the neck's height. The back is
	// curved and the tape bridges it: on the survey's women the two come out
	// from 33 mm below it to 56 mm above. Backs more round or more hollow, and
	// a string that sits otherwise, get as much again.
	stackBelow = 70 * Millimetre
	stackAbove = 120 * Millimetre
)

// Impossible is what no body can have, whatever its proportions: a Refusal
// for each pair that contradicts itself, in table order of the first.
func Impossible(b Body) []error {
	var all []error
	for _, id := range b.IDs() {
		l, _ := b.Get(id)
		for _, o := range orders {
			large, ok := b.Get(o.large)
			if o.small != id || !ok || l <= large*Length(o.share)+orderSlack {
				continue
			}
			all = append(all, &Refusal{
				Where: string(id), Read: bothUnits(l),
				Wrong: "that cannot go with " + short(o.large) + " " + bothUnits(large) + ", because " + o.why,
				Works: "measure both again",
			})
		}
		if id == BackNeckToFloor {
			all = append(all, stack(b, l)...)
		}
	}
	return all
}

// stack holds the neck's height against the two lengths that make it up.
func stack(b Body, neck Length) []error {
	back, ok := b.Get(BackNeckToWaist)
	waist, also := b.Get(WaistToFloor)
	sum := back + waist
	if !ok || !also || sum >= neck-stackBelow && sum <= neck+stackAbove {
		return nil
	}
	return []error{&Refusal{
		Where: string(BackNeckToFloor), Read: bothUnits(neck),
		Wrong: "back neck to waist and waist to floor together make " + bothUnits(sum),
		Works: "measure the three again",
	}}
}

// bothUnits is a length for a message that does not know her tape.
func bothUnits(l Length) string { return In.Say(l) + " (" + Cm.Say(l) + ")" }
