package pattern

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// CutKind says how a piece is cut from folded cloth.
type CutKind string

// On the fold (half is drawn), a pair of mirror images, or one alone.
const (
	OnFold CutKind = "on_fold"
	Pair   CutKind = "pair"
	Single CutKind = "single"
)

// Piece is one pattern piece, cut from the marks of the draft. Its edges are
// a closed ring, clockwise as seen on the sheet; the stitch outline and the
// cut outline both come from it.
type Piece struct {
	ID       PieceID
	Number   int // n of Of
	Of       int
	Title    string
	Cloth    string   // main
	Also     []string // further cloths it is cut from, net: interfacing
	Cut      CutKind
	Count    int
	Edges    []Edge
	Stitch   geom.Path // closed
	CutLine  geom.Path // closed
	Fold     *geom.Segment
	Grain    geom.Segment
	Darts    []Dart
	Notches  []Notch
	Holes    []geom.Point
	Balance  []Balance
	Label    geom.Point // where the label block begins
	FaceUp   bool       // cut single: drawn as the right side of the cloth shows it, else as the wrong side
	Included bool       // the allowance is part of the figure as drawn (thumb)
}

// Corner says how two cut edges meet at the end of an edge.
type Corner int8

// Both edges run on until they meet; the edge is cut square to its seam; the
// side below a turned hem mirrors the side above it; nothing to join.
const (
	Mitre Corner = iota
	Square
	Mirrored
	None
)

// Edge is one edge of a piece: a run of the ring with one name and one
// allowance. Where the allowance changes the edge is split, same name.
type Edge struct {
	Name      string // neck, shoulder, armhole, side, dart, hem, fold, centre_back, outer
	Stitch    geom.Path
	Cut       geom.Path      // its part of the cut line, corners not included
	Allowance measure.Length // square to the stitch line; of a level allowance the mean
	Corner    Corner         // at its end
	SewnTo    EdgeRef        // zero: to none
	Role      Role           // RoleStitch, RoleFold
}

// EdgeRef names an edge of another piece.
type EdgeRef struct {
	Piece PieceID
	Edge  string
}

// Length is the length of the stitch line of the edge.
func (e Edge) Length() measure.Length { return measure.Length(e.Stitch.Length()) }

// Dart is a dart as it is sewn: legs from the tip to the seam, and the cap
// that makes its folded end lie along the seam.
type Dart struct {
	Name    string
	Tip     geom.Point
	Legs    [2]geom.Point // upper, lower (on the stitch line)
	Cap     geom.Point
	Ends    [2]geom.Point // where the legs reach the cut line
	Intake  measure.Length
	Leg     measure.Length
	Degrees float64
	Pressed string // down, to the centre
	// Fisheye says that the dart lies inside the piece, widest at the waist:
	// this is one half of it, from Tip to the legs at the waist; Foot is the
	// tip of its other half, which is a Dart of the same legs beside it. Ends
	// are zero: it reaches no edge.
	Fisheye bool
	Foot    geom.Point
	// Waist says that the dart ends in a waist seam and shapes the waist
	// alone; a bust dart that lies there is none of these.
	Waist bool
}

// Notch is a mark at the edge that meets the same mark of another piece.
type Notch struct {
	At    geom.Point // on the cut line
	Edge  string
	Marks int     // one front, two back
	Into  float64 // degrees, 0 = +x, 90 = down
	Name  string  // what it marks: waist, hip, dart, zip end ...
}

// Balance is a thin line across a piece at a level of the body.
type Balance struct {
	Name string // bust, waist, hip
	Line geom.Segment
}

// EdgesNamed are the edges of that name, in the order of the ring.
func (p Piece) EdgesNamed(name string) []Edge {
	var out []Edge
	for _, e := range p.Edges {
		if e.Name == name {
			out = append(out, e)
		}
	}
	return out
}

// Along is the length of all edges of that name together.
func (p Piece) Along(name string) measure.Length {
	var sum measure.Length
	for _, e := range p.EdgesNamed(name) {
		sum += e.Length()
	}
	return sum
}
