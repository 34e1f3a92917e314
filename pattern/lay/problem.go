package lay

import (
	"fmt"
	"math"
	"slices"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Match is the place of an item that must lie at the same phase of the
// cloth's repeat as that of every other item.
type Match struct {
	Along, Across bool // which of its coordinates count
	At            Point
}

// Item is a piece to be laid, as it is drafted: grain along y, top first. Of a
// piece cut on the fold the outline is the half, its fold edge at x = 0.
type Item struct {
	Sheet   int // of several clients on one cloth
	ID      string
	Title   string
	Cut     pattern.CutKind
	Count   int // pieces; a pair counts two
	Outline []Point
	Turns   []int    // in degrees, x towards y; with nap only 0 is used
	Grain   [2]Point // both ends of the grain arrow
	Match   Match
}

// Flaw is a part of the flat cloth that cannot be used, counted from the cut
// end and from the left selvage.
type Flaw struct{ Along, Across, Length, Width int64 }

// Cloth is the washed cloth, in steps.
type Cloth struct {
	Name         string
	Width        int64  // after the wash, selvages included
	Edge         int64  // each selvage, not cut
	Fold         string // lengthwise, flat, to_middle, off_centre, across
	Depth        int64  // off centre: how far in it is folded, where that is settled; 0: as the pieces need
	Nap          bool
	OffGrain     int // degrees that a piece may lie off the grain; at most 3
	Gap          int64
	RepeatAlong  int64
	RepeatAcross int64
	Stripe       string // centre, midway: what lies on the fold
	Flaws        []Flaw
	Tape         int64 // places are set to whole steps of the tape; 0: they are not
	ShrinkAlong  float64
}

// The ways to fold.
const (
	Lengthwise = "lengthwise"
	Flat       = "flat"
	ToMiddle   = "to_middle"
	OffCentre  = "off_centre" // as far in as what is cut double needs, the rest single
	Across     = "across"     // along the weft, end to end
)

// Folds are all ways to fold, as they are offered.
var Folds = []string{Lengthwise, Flat, ToMiddle, OffCentre, Across}

// Lies is how long the lay lies on the table: cloth folded across lies double
// as far as Folded, and takes that much more.
func (c Cloth) Lies(l Lay) int64 {
	if c.Fold == Across {
		return l.Length - l.Folded
	}
	return l.Length
}

// Opens says whether part of the lay lies opened out flat, from l.Folded on.
func (c Cloth) Opens(l Lay) bool { return l.Folded < c.Lies(l) }

// Lying is how wide the cloth lies, where it is folded.
func (c Cloth) Lying(l Lay) int64 {
	switch c.Fold {
	case Flat, Across:
		return c.Width
	case OffCentre:
		return c.Width - l.Depth
	}
	return c.Width / 2
}

// Warps says whether places across are counted from a fold along the warp.
func (c Cloth) Warps() bool { return c.Fold != Flat && c.Fold != Across }

// Problem is what is to be laid on which cloth. Pins are pieces that she has
// laid herself; they stay.
type Problem struct {
	Name  string
	Unit  measure.Unit // for what is said
	Cloth Cloth
	Items []Item
	Pins  []Placed
}

// Placed is one piece where it lies. The outline is the item's, mirrored in x
// if Mirror says so, then turned, then carried by At. A half on the fold lies
// with its fold edge on the fold; with a half turn it is mirrored too, so that
// the opened piece is turned.
type Placed struct {
	Item    int // in Problem.Items
	Copy    int // from 1
	Layers  int
	OnFold  bool
	Far     bool // on the fold at half the width
	Wasted  bool // two layers where one was wanted
	Opened  bool // in the part that is opened flat
	Beside  bool // of cloth folded off centre: in the single part beside
	Turn    int
	Mirror  bool
	At      Point
	Outline []Point
}

// Lay is the answer: where each piece lies, and how long the cloth must be.
type Lay struct {
	Placed      []Placed // from the cut end on
	Width       int64
	Length      int64
	Folded      int64   // where the opened part begins; how long it lies, if there is none
	Depth       int64   // of a fold off centre: how wide the double part is, selvage included
	Density     float64 // per cent of the cloth, all layers
	Evaluations int64
	First       bool  // no search was made, or none was of use
	Tape        int64 // the tape step on which all places are; 0: none
}

// Limits of what is laid.
const (
	mostPieces   = 5000   // refused above
	mostSearched = 500    // above, the first lay is all
	mostOutlines = 120    // different ones; above, the shelf lay is all
	mostCorners  = 200000 // in all
)

const most = math.MaxInt64

// Pieces is the number of pieces to be cut.
func (p Problem) Pieces() int {
	n := 0
	for _, it := range p.Items {
		if it.Count > mostPieces {
			return it.Count
		}
		n += it.Count
	}
	return n
}

// Check says what cannot be laid, and what would work.
func (p Problem) Check() error {
	if err := p.Cloth.check(); err != nil {
		return err
	}
	if len(p.Items) == 0 || p.Pieces() <= 0 {
		return &measure.Refusal{Where: p.where(), Read: "no pieces", Wrong: "there is nothing to lay", Works: "name at least one piece with a count of 1"}
	}
	corners := 0
	for _, it := range p.Items {
		if it.Count < 1 {
			return &measure.Refusal{Where: it.name(), Read: fmt.Sprintf("count %d", it.Count), Wrong: "nothing is to be cut", Works: fmt.Sprintf("a count from 1 to %d", mostPieces)}
		}
		if n := p.Pieces(); n > mostPieces {
			return &measure.Refusal{Where: it.name(), Read: fmt.Sprintf("count %d", it.Count), Wrong: fmt.Sprintf("that makes more than %d pieces", mostPieces), Works: fmt.Sprintf("lay at most %d at a time", mostPieces)}
		}
		corners += len(it.Outline)
	}
	if corners > mostCorners {
		return &measure.Refusal{Where: p.where(), Read: fmt.Sprintf("%d corners", corners), Wrong: "that is more than can be checked", Works: fmt.Sprintf("at most %d corners in all outlines together", mostCorners)}
	}
	for i := range p.Items {
		if err := p.Items[i].check(); err != nil {
			return err
		}
	}
	return nil
}

func (p Problem) where() string {
	if p.Name != "" {
		return p.Name
	}
	return "the lay"
}

func (it Item) name() string {
	if it.Title != "" {
		return it.Title
	}
	return it.ID
}

func (it Item) check() error {
	if len(it.Outline) < 3 {
		return &measure.Refusal{Where: it.name(), Read: fmt.Sprintf("%d corners", len(it.Outline)), Wrong: "an outline has at least 3 that do not lie on one line", Works: "give all corners, in order"}
	}
	lo, hi := bounds(it.Outline)
	if d := hi.minus(lo); d.X > mostSteps || d.Y > mostSteps || max(hi.X, -lo.X, hi.Y, -lo.Y) > 2*mostSteps {
		return &measure.Refusal{Where: it.name(), Read: metres(max(d.X, d.Y)), Wrong: "that is longer than any cloth", Works: "pieces of up to 53 m"}
	}
	if i, j, ok := selfCrossing(it.Outline); ok {
		return &measure.Refusal{
			Where: it.name(), Read: fmt.Sprintf("edges %d and %d", i+1, j+1),
			Wrong: "the outline crosses or touches itself at " + at(it.Outline[j]), Works: "give the corners in order, once round",
		}
	}
	if it.Cut == pattern.OnFold {
		return it.checkFold()
	}
	return nil
}

// checkFold wants one straight fold edge at x = 0 and the half beside it.
func (it Item) checkFold() error {
	n, folds := len(it.Outline), 0
	lo, _ := bounds(it.Outline)
	for i, p := range it.Outline {
		if q := it.Outline[(i+1)%n]; p.X == 0 && q.X == 0 {
			folds++
		}
	}
	switch {
	case lo.X < 0:
		return &measure.Refusal{Where: it.name(), Read: "an edge " + metres(-lo.X) + " beyond the fold", Wrong: "half a piece lies on one side of its fold", Works: "draw the half right of the fold"}
	case folds == 0:
		return &measure.Refusal{Where: it.name(), Read: "no fold edge", Wrong: "a piece cut on the fold has one, straight and along the grain", Works: "give it a straight edge at the fold, or cut a pair"}
	case folds > 1:
		return &measure.Refusal{Where: it.name(), Read: fmt.Sprintf("%d fold edges", folds), Wrong: "a piece lies on one fold with one edge", Works: "leave one edge at the fold"}
	}
	return nil
}

func (c Cloth) check() error {
	refuse := func(read, wrong, works string) error {
		where := "cloth"
		if c.Name != "" {
			where = "cloth " + c.Name
		}
		return &measure.Refusal{Where: where, Read: read, Wrong: wrong, Works: works}
	}
	switch {
	case c.Width <= 0 || c.Width > mostSteps:
		return refuse("width "+metres(c.Width), "no cloth has that width", "more than 0 and up to 53 m")
	case c.Edge < 0 || 2*c.Edge >= c.Width:
		return refuse("selvages of "+metres(c.Edge), "nothing is left between them", "from 0 to less than half the width")
	case c.ShrinkAlong < 0 || c.ShrinkAlong >= 100 || math.IsNaN(c.ShrinkAlong):
		return refuse(fmt.Sprintf("shrinkage %g per cent", c.ShrinkAlong), "nothing would be left", "from 0 to less than 100 per cent")
	case c.RepeatAlong < 0 || c.RepeatAcross < 0 || c.RepeatAlong > mostSteps || c.RepeatAcross > mostSteps:
		return refuse("repeat "+metres(min(c.RepeatAlong, c.RepeatAcross)), "no cloth repeats so", "0 where there is no repeat, or its length")
	case c.Gap < 0 || c.Gap > 1000*PerMM:
		return refuse("gap "+metres(c.Gap), "pieces cannot stand so", "from 0 to 1 m")
	case c.OffGrain < 0 || c.OffGrain > 3:
		return refuse(fmt.Sprintf("%d degrees off the grain", c.OffGrain), "the piece would hang askew", "from 0 to 3 degrees")
	case c.Tape < 0:
		return refuse("tape step "+metres(c.Tape), "a tape has no such step", "0, or the step of her tape")
	case !slices.Contains(Folds, c.Fold):
		return refuse("fold "+measure.Quoted(c.Fold), "no cloth is folded so", "lengthwise, flat, to_middle, off_centre or across")
	case c.Depth < 0 || 2*c.Depth > c.Width:
		return refuse("folded in by "+metres(c.Depth), "no more than half the cloth can lie double", "from 0 to half the width")
	}
	for _, f := range c.Flaws {
		if f.Length <= 0 || f.Width <= 0 || f.Length > mostSteps || f.Width > mostSteps || f.Across < -mostSteps || f.Across > mostSteps || f.Along < -mostSteps || f.Along > 64*mostSteps {
			return refuse(fmt.Sprintf("a flaw of %s by %s", metres(f.Length), metres(f.Width)), "that is no part of the cloth", "along, across, length and width, the last two above 0")
		}
	}
	return nil
}

// metres writes steps as millimetres.
func metres(steps int64) string { return fmt.Sprintf("%.5g mm", float64(steps)/PerMM) }

func at(p Point) string {
	return fmt.Sprintf("(%.6g, %.6g)", float64(p.X)/PerMM, float64(p.Y)/PerMM)
}
