package pattern

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// PieceID names a piece: front, back, front_neck_facing ...
type PieceID string

// The pieces of a dress.
const (
	Front              PieceID = "front"
	Back               PieceID = "back"
	FrontNeckFacing    PieceID = "front_neck_facing"
	BackNeckFacing     PieceID = "back_neck_facing"
	FrontArmholeFacing PieceID = "front_armhole_facing"
	BackArmholeFacing  PieceID = "back_armhole_facing"
	// Instead of those four, by the chosen finish: a facing of each half that
	// goes round neck and armhole in one, or bias strips.
	FrontFacing PieceID = "front_facing"
	BackFacing  PieceID = "back_facing"
	NeckStrip   PieceID = "neck_strip"
	// Beside front and back, which are the centre panels then, where seams
	// part them.
	FrontSide    PieceID = "front_side"
	BackSide     PieceID = "back_side"
	ArmholeStrip PieceID = "armhole_strip"
	// The left halves, where her two sides differ.
	FrontLeft PieceID = "front_left"
	BackLeft  PieceID = "back_left"
	// Set into the armholes, onto the neck, and into an opening in front.
	Sleeve      PieceID = "sleeve"
	Collar      PieceID = "collar"
	UnderCollar PieceID = "under_collar"
	Placket     PieceID = "placket"
	// Below front and back, which are the bodice then, where a waist seam parts
	// them.
	SkirtFront PieceID = "skirt_front"
	SkirtBack  PieceID = "skirt_back"
	// What finishes the waist of a skirt on its own.
	FrontWaistFacing PieceID = "front_waist_facing"
	BackWaistFacing  PieceID = "back_waist_facing"
	WaistBand        PieceID = "waist_band"
)

// Step is the record of one step of the draft: one action, one new thing on
// the drawing. A step whose needs are missing stands here undrawn, with what
// it waits for.
type Step struct {
	Number  int    // from 1, over all steps listed
	ID      string // "front.bust_width"
	Piece   PieceID
	Title   string
	Do      measure.Sentence
	Why     measure.Sentence
	Slip    measure.Sentence
	Sum     measure.Working // zero where nothing is worked out
	Rule    measure.Sentence
	Slips   []Slip
	From    []string // ids of the measurements and choices that it used
	Marks   []string // names of the marks it made, without the piece
	Drawn   bool
	Waits   measure.Sentence // of an undrawn step: what is missing
	Assumed []measure.ID     // proposals that it rests on
}

// Slip is what people really do wrong at a step, with what they then get.
type Slip struct {
	Sum  measure.Working
	Says measure.Sentence
}

// MarkKind says what a mark is.
type MarkKind int8

// A mark is a point with a name, a line that stays, or a line that only
// helps to draw.
const (
	MarkPoint MarkKind = iota
	MarkLine
	MarkGuide
)

// Mark is one thing on the drawing. It keeps the number of the step that
// made it and of the step that replaced it: the draft at step k is the marks
// alive at k.
type Mark struct {
	Piece PieceID
	Name  string // "underarm", "armhole"
	Kind  MarkKind
	At    geom.Point // of a point
	Path  geom.Path  // of a line
	Role  Role       // of a line
	Born  int
	Gone  int // 0: still there
}

// AliveAt says whether the mark stands on the drawing after step k.
func (m Mark) AliveAt(k int) bool { return m.Born <= k && (m.Gone == 0 || m.Gone > k) }

// Role says what a line means; every view turns roles into its own pens,
// dashes and layers.
type Role int8

// The roles of lines, of pieces and of drawings.
const (
	RoleGuide   Role = iota // helps to draw, not cut and not sewn
	RoleStitch              // sewn
	RoleCut                 // cut
	RoleFold                // on the fold of the cloth, never cut
	RoleGrain               // along the warp
	RoleDart                // legs of a dart
	RoleNotch               // short marks at the edge
	RoleBalance             // bust, waist and hip line
	RoleHole                // a point drilled or pricked
	RoleText
)

// RoleCount is the number of roles; a writer must know what to do with each.
const RoleCount = int(RoleText) + 1

// String names the role.
func (r Role) String() string {
	return [...]string{"guide", "stitch", "cut", "fold", "grain", "dart", "notch", "balance", "hole", "text"}[r]
}
