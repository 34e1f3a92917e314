package measure

// band says what one measurement is beside another, as a share of it. Outside
// low..high is a note (1 woman in 100 lies below, 1 above); outside
// least..most she is asked to measure again (1 in 1,000).
type band struct {
	id, other              ID
	least, low, high, most float64
}

// bands come from the ANSUR II survey of 2012 (1,986 soldiers) unless it says
// otherwise. They are widened where that survey cannot speak for everybody:
//   - girths against girths to the union with a Spanish sample of 600 women;
//   - waists downwards by 0.93, since the survey's waist is at the navel;
//   - girths against height, and whatever shrinks beside a large bust, since
//     soldiers are screened and both ends of the size tables rare among them;
//   - lengths from the waist, since few waist strings lie where the survey's
//     level does, and the tape goes over the hip;
//   - the upper arm, which the survey took with the muscle tight.
var bands = []band{
	{BustGirth, Height, 0.42, 0.46, 0.80, 0.95},
	{HipGirth, Height, 0.47, 0.51, 0.82, 1.00},
	{HipGirth, BustGirth, 0.88, 0.938, 1.227, 1.40},
	{WaistGirth, BustGirth, 0.70, 0.733, 1.048, 1.12},
	{WaistGirth, HipGirth, 0.64, 0.672, 0.992, 1.05},
	{NeckBaseGirth, BustGirth, 0.29, 0.31, 0.455, 0.473},
	{NeckBaseGirth, NeckGirth, 1.038, 1.055, 1.204, 1.223},
	{ShoulderLength, Height, 0.067, 0.071, 0.098, 0.104},
	{BackNeckToWaist, Height, 0.201, 0.207, 0.258, 0.266},
	{WaistToHip, Height, 0.078, 0.091, 0.150, 0.160},
	{WaistToKnee, Height, 0.320, 0.334, 0.380, 0.390},
	{WaistToFloor, Height, 0.585, 0.600, 0.665, 0.680},
	{BackNeckToFloor, Height, 0.836, 0.840, 0.873, 0.878},
	{BodyRise, Height, 0.117, 0.126, 0.175, 0.181},
	{ArmLength, Height, 0.301, 0.310, 0.365, 0.380},
	{UpperArmGirth, BustGirth, 0.23, 0.255, 0.376, 0.42},
	{WristGirth, UpperArmGirth, 0.392, 0.417, 0.65, 0.70},
	{ThighGirth, HipGirth, 0.547, 0.558, 0.649, 0.670},
	// From memory: wide, so that only a slip of the unit or a half falls out.
	{AcrossShoulders, BustGirth, 0.28, 0.32, 0.50, 0.56},
	{AcrossBack, BustGirth, 0.27, 0.30, 0.46, 0.518},
	{AcrossFront, BustGirth, 0.25, 0.28, 0.43, 0.49},
	{BustPointDistance, BustGirth, 0.14, 0.16, 0.24, 0.28},
	{SideNeckToBustPoint, BustGirth, 0.20, 0.23, 0.36, 0.42},
}

const (
	// noteZ and askZ are how many spreads from a regression is worth a note,
	// and worth measuring again. On the survey's women 1 in 6 gets such a
	// note, 1 in 80 is asked.
	noteZ = 2.5
	askZ  = 3.5
	// The usual values of the table leave the public out at both ends. Beyond
	// noteBelow and noteAbove times them is a note; beyond askBelow and
	// askAbove, which no slip of the unit or half girth reaches by being small,
	// she is asked.
	noteBelow, noteAbove = 0.90, 1.20
	askBelow, askAbove   = 0.75, 1.50
)
