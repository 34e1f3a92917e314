package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

// How the dress is closed.
const (
	ZipBehind = "zip_back"
	ZipSide   = "zip_side"
	NoClosure = "none"
)

// Closure is how the dress is closed; by thumb by the zip behind.
func Closure(k pattern.Known) string { return picked(k, "closure", ZipBehind) }

// BackOnFold says that nothing opens or shapes the centre back, so that it
// is cut on the fold.
func BackOnFold(k pattern.Known) bool {
	return Closure(k) != ZipBehind && !BackOpens(k) && WaistShaping(k) != ShapedBack
}

// sideZipBelow is how far below the waist a side zip ends (common practice,
// no source).
const sideZipBelow = 6.5 * measure.Inch

// SideZipStart is how far below the underarm a side zip begins: below the
// facing, and below a side dart.
func SideZipStart(k pattern.Known) measure.Length {
	start := 2 * measure.Inch
	if k.Has(measure.SideNeckToWaist, measure.BackNeckToWaist) && rule.DartIntake(k).Result() > 0 && DartInSide(k) {
		start = max(start, k.Length("side_dart_below")+measure.Inch/4)
	}
	return start
}

// SideZip is where a side zip begins and ends on the back, and how long it
// is, along the straight figure from underarm to waist and hip.
func SideZip(underarm, waist, hip geom.Point, start measure.Length) (from, to geom.Point, long measure.Length) {
	from = underarm.Add(underarm.To(waist).Unit().Scale(start.MM()))
	to = waist.Add(waist.To(hip).Unit().Scale(sideZipBelow.MM()))
	return from, to, sideZipLong(underarm.Dist(waist), start)
}

func sideZipLong(side float64, start measure.Length) measure.Length {
	return measure.Length(side) - start + sideZipBelow
}

// zipDefault is the zip to buy for the chosen closure.
func zipDefault(k pattern.Known) (pattern.Default, bool) {
	switch Closure(k) {
	case NoClosure, PlacketFront:
		return pattern.Default{Value: pattern.LengthValue(0), Because: measure.Tell("The dress has no zip.")}, true
	case ZipSide:
		if w := waits(k, measure.BustGirth, measure.WaistGirth, measure.BackNeckToWaist, measure.WaistToHip); w != nil {
			return pattern.Default{Waits: w}, true
		}
		if s, _ := k.Setting("armhole_depth"); !s.Known() {
			return pattern.Default{Waits: s.Default.Waits}, true
		}
		u := geom.Point{X: rule.BustWidthOf(k, true).Result().MM(), Y: k.Length("armhole_depth").MM()}
		w := geom.Point{X: rule.WaistWidthOf(k, true).Result().MM(), Y: rule.BackWaist(k).Result().MM()}
		long := sideZipLong(u.Dist(w), SideZipStart(k))
		return pattern.Default{
			Value: pattern.LengthValue(rule.ZipFor(long)), Sum: measure.Drawn("side opening", long),
			Because: measure.Tell("The opening in the side is {} long; the next zip in the shops is taken and shortened.", long),
		}, true
	}
	return pattern.Default{}, false
}

// usualClosure is the zip behind, but in front where a collar opens there.
func usualClosure(k pattern.Known) pattern.Default {
	if CollarKind(k) == ConvertibleCollar {
		return pattern.Default{Value: pattern.PickValue(PlacketFront), Because: measure.Tell("A convertible collar opens in front.")}
	}
	return pick(ZipBehind)(k)
}

var closureChoices = []pattern.Choice{{
	ID: "closure", Title: "Closure", Says: "How the dress is closed once it is on.", Group: "Opening",
	Kind: pattern.KindPick, Methods: onlyMeasured, After: []pattern.ChoiceID{"collar"}, Default: usualClosure,
	Options: []pattern.Option{
		{Value: ZipBehind, Title: "Zip behind", Says: "From the back neck down to above the hip: passes head and hips."},
		{Value: ZipSide, Title: "Zip in the side", Says: "In the left side; only for a neck that passes her head."},
		{Value: PlacketFront, Title: "Placket in front", Says: "Buttoned down the front, from the neck to above the hip or less."},
		{Value: NoClosure, Title: "None", Says: "Pulled on; only where neck and waist pass head and bust."},
	},
}, placketTo, placketLength}
