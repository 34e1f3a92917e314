package measure

import "slices"

// Measurement is one row of the table: what it is and how it is taken.
type Measurement struct {
	ID          ID
	Term        string // the term of the standard, or the trade's
	Standard    string // the standard and its clause, where it has one
	Short       string // one or two words, for a label or a sum
	Plain       string // the name in plain words
	Landmarks   string // from where to where
	How         string
	Slip        string   // the common mistake
	Low, High   Length   // usual values; 0, 0 where there is no data
	RangeSource string   // where Low and High come from
	NeededFor   []string // garments that cannot do without
	UsefulFor   []string // garments that it makes better
	Group       string
	Drop        bool // a height difference that may be 0
}

// rows is the table, in the order of taking.
var rows = slices.Concat(neckRows, girthRows, lengthRows, widthRows, armRows, legRows)

// order is the place of each measurement in the table.
var order = func() map[ID]int {
	places := make(map[ID]int, len(rows))
	for i, m := range rows {
		places[m.ID] = i
	}
	return places
}()

// All is the whole table, in the order of taking.
func All() []Measurement { return slices.Clone(rows) }

// Find is the row of one measurement.
func Find(id ID) (Measurement, bool) {
	if place, ok := order[id]; ok {
		return rows[place], true
	}
	return Measurement{}, false
}
