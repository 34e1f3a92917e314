package measure

import (
	"math"
	"slices"
	"strconv"
)

// Body holds the measurements taken of one person. It never changes: With and
// Without give a new one. The zero Body has nothing taken. Two Bodies with the
// same measurements are equal in depth, however they were made.
type Body struct {
	taken []entry // in table order; nil when empty
}

type entry struct {
	ID     ID
	Length Length
}

// NewBody is a Body with all of these measurements. Ids that are not in the
// table are left out.
func NewBody(lengths map[ID]Length) Body {
	var b Body
	for _, m := range rows {
		if l, ok := lengths[m.ID]; ok {
			b.taken = append(b.taken, entry{m.ID, l})
		}
	}
	return b
}

// With is the Body with one measurement taken, or taken anew.
func (b Body) With(id ID, l Length) Body {
	place, ok := order[id]
	if !ok {
		return b
	}
	at, found := b.find(place)
	next := slices.Clone(b.taken)
	if found {
		next[at].Length = l
	} else {
		next = slices.Insert(next, at, entry{id, l})
	}
	return Body{next}
}

// Without is the Body without that measurement.
func (b Body) Without(id ID) Body {
	at, found := b.at(id)
	if !found {
		return b
	}
	if len(b.taken) == 1 {
		return Body{}
	}
	return Body{slices.Delete(slices.Clone(b.taken), at, at+1)}
}

// Get is the measurement, and whether it was taken.
func (b Body) Get(id ID) (Length, bool) {
	if at, found := b.at(id); found {
		return b.taken[at].Length, true
	}
	return 0, false
}

// Has reports whether the measurement was taken.
func (b Body) Has(id ID) bool { _, ok := b.at(id); return ok }

// Len is how many measurements were taken.
func (b Body) Len() int { return len(b.taken) }

// IDs are the measurements taken, in the order of the table.
func (b Body) IDs() []ID {
	ids := make([]ID, len(b.taken))
	for i, e := range b.taken {
		ids[i] = e.ID
	}
	return ids
}

// Equal reports whether both hold the same measurements.
func (b Body) Equal(c Body) bool { return slices.Equal(b.taken, c.taken) }

func (b Body) at(id ID) (int, bool) {
	place, ok := order[id]
	if !ok {
		return 0, false
	}
	return b.find(place)
}

func (b Body) find(place int) (int, bool) {
	return slices.BinarySearchFunc(b.taken, place, func(e entry, p int) int { return order[e.ID] - p })
}

const (
	// What a tape can honestly give on a body.
	shortest = 5 * Millimetre
	longest  = 3000 * Millimetre
)

// Check refuses what no body has: less than 5 mm (a drop may be 0), more than
// 3 m. All between is possible; see Doubts.
func Check(id ID, l Length) error {
	m, ok := Find(id)
	if !ok {
		return &Refusal{Where: string(id), Wrong: "there is no measurement of that name", Works: "the table of measurements lists them all"}
	}
	from, says := shortest, "5 mm (1/4 in)"
	if m.Drop {
		from, says = 0, "0"
	}
	if l >= from && l <= longest {
		return nil
	}
	wrong := "that is longer than any body"
	if l < from {
		wrong = "that is too short to be taken with a tape"
	}
	if math.IsNaN(float64(l)) {
		wrong = "that is no length"
	}
	return &Refusal{Where: string(id), Read: inMM(l), Wrong: wrong, Works: "a measurement lies between " + says + " and 3 m (118 in)"}
}

func inMM(l Length) string { return strconv.FormatFloat(float64(l), 'f', -1, 64) + " mm" }
