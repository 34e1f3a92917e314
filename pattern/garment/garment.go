package garment

import (
	"maps"
	"slices"
	"sync"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
)

// Garment is one garment: its choices, and for each method what it needs and
// how it is drafted. What stands behind it is put together when it is first
// asked for: a program that drafts a skirt never builds the dress.
type Garment struct {
	ID, Title, Says string
	Choices         func() []pattern.Choice
	ways            map[string]func() Method
}

// Method is one way to draft a garment.
type Method struct {
	Needs []measure.ID
	// Further are the measurements that a style reads besides; nil: none.
	Further func(pattern.Style) []measure.ID
	Steps   []bench.Step
	// Finish cuts the pieces from the marks and reads the figures off them.
	Finish func(*pattern.Sheet)
}

// Methods lists the ways in which a garment can be drafted, by name.
func (g Garment) Methods() []string { return slices.Sorted(maps.Keys(g.ways)) }

// Method returns one way to draft a garment.
func (g Garment) Method(name string) (Method, bool) {
	way, ok := g.ways[name]
	if !ok {
		return Method{}, false
	}
	return way(), true
}

// All lists every garment.
func All() []Garment { return garments }

var (
	byMeasure = sync.OnceValue(func() Method {
		return Method{Needs: measuredNeeds, Further: styleNeeds, Steps: withRules(measuredSteps(), measuredRules, otherMeasured), Finish: finishMeasured}
	})
	asBlock = sync.OnceValue(func() Method {
		return Method{Needs: directNeeds, Further: styleNeeds, Steps: withRules(netSteps(byDirect()), allDirectRules(), otherMeasured), Finish: finishMeasured}
	})
	byThumb = sync.OnceValue(func() Method {
		return Method{Needs: thumbNeeds, Steps: withRules(thumbSteps(), thumbRules, otherThumb), Finish: finishThumb}
	})
	skirtAlone = sync.OnceValue(func() Method {
		return Method{Needs: skirtNeeds, Steps: withRules(skirtSteps(), skirtRules, otherMeasured), Finish: finishSkirt}
	})
)

var garments = []Garment{
	{
		ID: pattern.Dress, Title: "Dress",
		Says:    "A dress in one piece, sleeveless unless you give it sleeves: front on the fold, back a pair with a zip, faced neck and armholes, an opening at the hem.",
		Choices: sync.OnceValue(detail.DressChoices),
		ways:    map[string]func() Method{pattern.Measured: byMeasure, pattern.Direct: asBlock, pattern.Thumb: byThumb},
	},
	{
		ID: pattern.Top, Title: "Top",
		Says:    "A top to just below the hip, sleeveless unless you give it sleeves: the dress's own bodice, zip behind, faced neck and armholes.",
		Choices: sync.OnceValue(detail.TopChoices),
		ways:    map[string]func() Method{pattern.Measured: byMeasure, pattern.Direct: asBlock},
	},
	{
		ID: pattern.Shift, Title: "Shift",
		Says:    "A loose dress that is pulled on, sleeveless unless you give it sleeves: a slit in the neck, front and back on the fold, straight from the hip.",
		Choices: sync.OnceValue(detail.ShiftChoices),
		ways:    map[string]func() Method{pattern.Measured: byMeasure},
	},
	{
		ID: pattern.Tunic, Title: "Tunic",
		Says:    "A half-loose tunic to above the knee, sleeveless unless you give it sleeves: pulled on by a slit in the neck, open in the sides below the hip.",
		Choices: sync.OnceValue(detail.TunicChoices),
		ways:    map[string]func() Method{pattern.Measured: byMeasure},
	},
	{
		ID: pattern.Skirt, Title: "Skirt",
		Says:    "A skirt on its own: front on the fold, back a pair with a zip, darts at the waist, a facing or a band, an opening at the hem.",
		Choices: sync.OnceValue(detail.SkirtChoices),
		ways:    map[string]func() Method{pattern.Measured: skirtAlone},
	},
}

var measuredNeeds = []measure.ID{
	measure.NeckBaseGirth, measure.AcrossShoulders, measure.ShoulderDrop, measure.BustGirth, measure.WaistGirth,
	measure.HipGirth, measure.WaistToHip, measure.BackNeckToWaist, measure.SideNeckToWaist, measure.SideNeckToBustPoint,
	measure.BustPointDistance, measure.AcrossFront, measure.AcrossBack, measure.WaistToKnee,
}

var thumbNeeds = []measure.ID{
	measure.AcrossShoulders, measure.BustGirth, measure.WaistGirth, measure.HipGirth, measure.WaistToHip,
	measure.BackNeckToWaist, measure.SideNeckToBustPoint, measure.BustPointDistance, measure.WaistToKnee,
}

// styleNeeds are the measurements that only some styles of the dress read.
func styleNeeds(s pattern.Style) []measure.ID {
	kind, _ := s.Get("sleeve")
	return sleeveNeeds(kind.Pick)
}

// NeedsOf lists the measurements that a style reads, in taking order.
func (m Method) NeedsOf(s pattern.Style) []measure.ID {
	if m.Further == nil {
		return m.Needs
	}
	more := m.Further(s)
	if len(more) == 0 {
		return m.Needs
	}
	all := append(slices.Clone(m.Needs), more...)
	out := make([]measure.ID, 0, len(all))
	for _, row := range measure.All() {
		if slices.Contains(all, row.ID) {
			out = append(out, row.ID)
		}
	}
	return out
}

// half is one of the two halves that a dress is drafted in.
type half struct {
	piece  pattern.PieceID
	back   bool
	centre string // what its straight edge is called
}

var (
	theBack  = half{pattern.Back, true, "centre line"}
	theFront = half{pattern.Front, false, "fold"}
)

func (h half) id(step string) string { return string(h.piece) + "." + step }

// uses makes the full names of marks on this half.
func (h half) uses(names ...string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = h.id(n)
	}
	return out
}
