package pattern

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Sheet is everything drafted for one Job. It is plain data: two sheets of
// the same job are equal by reflect.DeepEqual, on every machine.
type Sheet struct {
	Known
	Steps    []Step
	Marks    []Mark
	Pieces   []Piece
	Lengths  []Dimension // of the figure as drawn
	Girths   []Dimension // finished, all round
	Sewn     []Dimension // thumb: lengths on the stitching line
	SewnAt   []Mark      // thumb: points on the stitching line
	Findings []Finding
	Missing  []Missing
	Refused  []Refused
	Notes    []measure.Sentence // choices kept but not used, left side kept ...
	Complete bool
	// MeasuredDepth is the armhole depth that the measured method would
	// take, for the comparison; zero where it cannot be known.
	MeasuredDepth measure.Length
}

// Dimension is one figure read off the drawing.
type Dimension struct {
	Piece   PieceID // empty for girths
	Name    string  // neck, shoulder, side, dart_angle ...
	Length  measure.Length
	Degrees float64 // of an angle
	Angle   bool
}

// Refused is an impossibility that stopped the draft at a step.
type Refused struct {
	Code  string // R1 ...
	Step  string
	Says  measure.Sentence // what was read, what is wrong
	Cure  measure.Sentence // what would work
	Input string
}

// Point returns a named point of the finished draft.
func (s *Sheet) Point(piece PieceID, name string) (geom.Point, bool) {
	return point(s.Marks, piece, name)
}

// SewnPoint returns a named point on the stitching line; of a net draft it
// is the point itself.
func (s *Sheet) SewnPoint(piece PieceID, name string) (geom.Point, bool) {
	if p, ok := point(s.SewnAt, piece, name); ok {
		return p, true
	}
	return s.Point(piece, name)
}

func point(marks []Mark, piece PieceID, name string) (geom.Point, bool) {
	for i := len(marks) - 1; i >= 0; i-- {
		m := &marks[i]
		if m.Kind == MarkPoint && m.Gone == 0 && m.Piece == piece && m.Name == name {
			return m.At, true
		}
	}
	return geom.Point{}, false
}

// Dimension looks a figure up by piece and name.
func (s *Sheet) Dimension(piece PieceID, name string) (Dimension, bool) {
	return dimension(s.Lengths, piece, name)
}

// SewnDimension is the figure on the stitching line.
func (s *Sheet) SewnDimension(piece PieceID, name string) (Dimension, bool) {
	if d, ok := dimension(s.Sewn, piece, name); ok {
		return d, true
	}
	return s.Dimension(piece, name)
}

// Girth is a finished girth: neck, armhole, bust, waist, hip, hem.
func (s *Sheet) Girth(name string) (measure.Length, bool) {
	d, ok := dimension(s.Girths, "", name)
	return d.Length, ok
}

func dimension(list []Dimension, piece PieceID, name string) (Dimension, bool) {
	for i := range list {
		if list[i].Piece == piece && list[i].Name == name {
			return list[i], true
		}
	}
	return Dimension{}, false
}

// Piece returns a piece by its id.
func (s *Sheet) Piece(id PieceID) (*Piece, bool) {
	for i := range s.Pieces {
		if s.Pieces[i].ID == id {
			return &s.Pieces[i], true
		}
	}
	return nil, false
}

// Proposed lists the figures that are not hers.
func (s *Sheet) Proposed() []Figure {
	var out []Figure
	for _, f := range s.Figures {
		if f.Proposed {
			out = append(out, f)
		}
	}
	return out
}

// Drawn is the number of the last step that could be drawn.
func (s *Sheet) Drawn() int {
	n := 0
	for _, st := range s.Steps {
		if st.Drawn {
			n = st.Number
		}
	}
	return n
}

// Count gives how many findings have that verdict.
func (s *Sheet) Count(v Verdict) int {
	n := 0
	for _, f := range s.Findings {
		if f.Verdict == v {
			n++
		}
	}
	return n
}
