package pattern

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Verdict is what a check says.
type Verdict string

// Pass, advise, fail; skip says why the check does not apply.
const (
	Pass   Verdict = "pass"
	Advise Verdict = "advise"
	Fail   Verdict = "fail"
	Skip   Verdict = "skip"
)

// Quantity says what Got, Want, Low and High of a finding count.
type Quantity int8

// Lengths are millimetres, angles degrees, counts numbers.
const (
	InLength Quantity = iota
	InDegrees
	InCount
)

// Finding is one result of truing: two figures first, then the fault, then
// a cure that names the input to change and both values.
type Finding struct {
	Check   string // side_seams
	Code    string // the advice's id, empty on a pass
	Title   string // "Side seams meet"
	Verdict Verdict
	In      Quantity
	Got     float64 // millimetres, degrees or a count
	Want    float64
	Low     float64 // limits of Got - Want where HasLimits
	High    float64
	Limits  bool
	Where   Place
	Says    measure.Sentence
	Cure    measure.Sentence
	Input   string // id of the choice or measurement to change
	Try     *Value // the value that the cure would set, of a choice
}

// Place is a spot on a piece.
type Place struct {
	Piece PieceID
	At    geom.Point
}
