package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// What is lined. A full lining goes to the edges of neck and armholes, or to
// the waist of a skirt, and takes the place of the facings; the other begins
// where the facing ends.
const (
	NoLining     = "none"
	FullLining   = "full"
	FacingLining = "to_facing"
)

// Lining is what is lined; by thumb nothing is.
func Lining(k pattern.Known) string { return picked(k, "lining", NoLining) }

// HasLining says whether the garment is lined.
func HasLining(k pattern.Known) bool { return Lining(k) != NoLining }

const (
	// LiningHigher is how much higher a lining is hemmed than the garment,
	// SleeveHigher that of a sleeve: so that neither shows (common practice,
	// no source).
	LiningHigher = measure.Inch
	SleeveHigher = measure.Inch / 2
	// LiningHem is turned up at the hem of a lining, twice half of it (common
	// practice, no source).
	LiningHem = measure.Inch
	// LiningOpen is how far above an opening in the hem the lining begins to
	// be open, so that it is not strained there (common practice, no source).
	LiningOpen = measure.Inch / 2
	// LiningSeam is the allowance where a lining is sewn to a facing (common
	// practice, no source).
	LiningSeam = measure.Inch / 2
)

// lining is the choice of a garment that hangs from the shoulders; a skirt says it in its own words.
var lining = pattern.Choice{
	ID: "lining", Title: "Lining", Says: "Whether the garment is lined, and from where.", Group: "Facings",
	Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(NoLining),
	Options: []pattern.Option{
		{Value: NoLining, Title: "None", Says: "The seams are finished inside."},
		{Value: FullLining, Title: "Full", Says: "To the edges of neck and armholes: it takes the place of the facings."},
		{Value: FacingLining, Title: "To the facing", Says: "It begins at the lower edge of a facing all in one, or with sleeves at that of the neck facing."},
	},
}

// skirtLining is the same of a skirt on its own.
var skirtLining = func() pattern.Choice {
	c := lining
	c.Options = []pattern.Option{
		{Value: NoLining, Title: "None", Says: "The seams are finished inside."},
		{Value: FullLining, Title: "Full", Says: "To the waist: caught in the band, or instead of the facing."},
		{Value: FacingLining, Title: "To the facing", Says: "It begins at the lower edge of the waist facing."},
	}
	return c
}()
