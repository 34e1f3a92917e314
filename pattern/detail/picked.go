package detail

import (
	"slices"

	"chalkfold/pattern"
)

// drawable are the picks that a step knows: to draw, or to refuse with a
// reason.
var drawable = map[pattern.ChoiceID][]string{
	"front_neckline": {
		RoundNeckline, JewelNeckline, SquareNeckline, VNeckline, BoatNeckline, SweetheartNeckline, SlitNeckline, KeyholeNeckline, FunnelNeckline,
	},
	"back_neckline": {
		RoundNeckline, JewelNeckline, SquareNeckline, VNeckline, BoatNeckline, SweetheartNeckline, SlitNeckline, KeyholeNeckline, FunnelNeckline,
	},
	"back_shoulder": {EasedShoulder, DartedShoulder, PlainShoulder},
	"armhole_shape": {plainArmhole, cutIn},
	"bust_dart":     {SideDartPlace, FrenchDart, ArmholeDart, ShoulderDart, NeckDart, WaistDart, CentreDart, SplitDart},
	"waist_shaping": {NoWaistShaping, FisheyeWaist, TwoBackWaist, ShapedBack},
	"panel_seam":    {NoPanel, ShoulderPanel, ArmholePanel},
	"skirt_line":    {PeggedSkirt, StraightSkirt, ALineSkirt, FlaredSkirt},
	"hem_opening":   {NoOpening, SlitOpening, VentOpening, KickPleat, InvertedPleat, SideSlits},
	"closure":       {ZipBehind, ZipSide, PlacketFront, NoClosure},
	"placket_to":    {PlacketNeeded, PlacketHip, PlacketHem},
	"hem_finish":    {TurnedHem, FacedHem},
	"waist_finish":  {FacedWaist, BandedWaist},
	"facing":        {SeparateFacings, AllInOneFacing, BiasFacing},
	"lining":        {NoLining, FullLining, FacingLining},
	"collar":        {NoCollar, StandCollar, FlatCollar, ConvertibleCollar},
	"sleeve":        {NoSleeve, CapSleeve, ShortSleeve, ThreeQuarterSleeve, LongSleeve},
}

// picked is the option of a choice of the measured method. Where the method
// has no such choice, or no step knows the value, which reading a session
// refuses, it is the usual one.
func picked(k pattern.Known, id pattern.ChoiceID, usual string) string {
	if p := k.Pick(id); k.Method != pattern.Thumb && slices.Contains(drawable[id], p) {
		return p
	}
	return usual
}
