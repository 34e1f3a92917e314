package pattern

import "chalkfold/measure"

// Job is all that goes in: the client, her body, the style, the cloth, and
// what was seen at fittings. It is the only thing that a session keeps and
// the only thing that undo takes back. Treat it as immutable: its methods
// return changed copies.
type Job struct {
	Unit      measure.Unit
	Client    Client
	Body      measure.Body
	Left      measure.Body // only where her left side differs
	Style     Style
	Confirmed measure.Body // doubted values that she measured again and kept
	Cloths    []Cloth
	Lays      []KeptLay // the last lay kept of a cloth; verified again by whoever uses it
	Fittings  []Fitting
	Earlier   []Earlier // older sets of measurements, newest first
}

// Client says for whom the dress is made. Notes are private: no screen for
// others and no output shows them unless asked.
type Client struct {
	Name       string
	Measured   Date
	MeasuredBy string
	Shoes      string
	Notes      string
}

// Date is a day of the calendar; the zero value is no date.
type Date struct{ Year, Month, Day int }

// IsZero says that no date is known.
func (d Date) IsZero() bool { return d == Date{} }

// Fitting is what was seen on the body and what was changed for it.
type Fitting struct {
	Date   Date
	Seen   string
	Why    string
	Change []Change
	Out    bool // taken back; kept so that it can be made again
}

// Change is one input that a fitting changed.
type Change struct {
	Input string
	By    string // as she wrote it
}

// Earlier is an older set of measurements of the same client.
type Earlier struct {
	Measured Date
	Body     measure.Body
}

// WithBody returns the job with one measurement set.
func (j Job) WithBody(id measure.ID, l measure.Length) Job {
	j.Body = j.Body.With(id, l)
	return j
}

// WithoutBody returns the job with one measurement forgotten.
func (j Job) WithoutBody(id measure.ID) Job {
	j.Body = j.Body.Without(id)
	return j
}

// WithStyle returns the job with one choice made.
func (j Job) WithStyle(id ChoiceID, v Value) Job {
	j.Style = j.Style.With(id, v)
	return j
}

// WithoutStyle returns the job with one choice given back to its default.
func (j Job) WithoutStyle(id ChoiceID) Job {
	j.Style = j.Style.Without(id)
	return j
}

// Confirm returns the job with a doubted value marked as measured again.
func (j Job) Confirm(id measure.ID, l measure.Length) Job {
	j.Confirmed = j.Confirmed.With(id, l)
	return j
}

// Cloth is one cloth to cut from. A zero Width means that nothing is known.
type Cloth struct {
	Name         string // main, lining, interfacing
	Width        measure.Length
	Edges        measure.Length // each selvage, not cut
	Fold         string         // lengthwise, flat, to_middle, off_centre, across
	Nap          bool
	ShrinkAlong  float64 // per cent
	ShrinkAcross float64
	RepeatAlong  measure.Length
	RepeatAcross measure.Length
	Price        float64 // a metre
	Flaws        [][4]measure.Length
	Gap          measure.Length
	Step         measure.Length // tape step of the lay
	Stripe       string         // centre, midway: what lies on the fold
	OffGrain     float64        // whole degrees that a piece may lie off the grain, at most 3; 0: none
}

// Cloth returns the cloth of that name, if the job has one.
func (j Job) Cloth(name string) (Cloth, bool) {
	for _, c := range j.Cloths {
		if c.Name == name {
			return c, true
		}
	}
	return Cloth{}, false
}
