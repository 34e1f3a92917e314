package stage

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/theme"
)

// strip is the tape as it lies along the edge of the table: her unit's numbers
// and strokes round a length, with a tick at it. One cell is an eighth of an
// inch or a millimetre.
func strip(d *desk.Desk, at measure.Length, cols int) string {
	if cols < 8 || at < 0 {
		return ""
	}
	u := d.Unit()
	per, one, step := 10, measure.Millimetre, 1
	switch u {
	case measure.In:
		per, one = 8, measure.Inch/8
	case measure.Mm:
		step = 10
	}
	tick := int(float64(at/one) + 0.5)
	from := max(tick-cols/2, 0)
	cells := make([]byte, cols)
	for i := range cells {
		switch (from + i) % per {
		case 0:
			cells[i] = '|'
		case per / 2:
			cells[i] = '+'
		default:
			cells[i] = '\''
		}
	}
	for whole := (from + per - 1) / per; whole*per-from < cols; whole++ {
		copy(cells[whole*per-from+1:], strconv.Itoa(whole*step))
	}
	i := tick - from
	line := d.Paint(theme.Muted, string(cells[:i])) + d.Paint(theme.Selected, "V") + d.Paint(theme.Muted, string(cells[i+1:]))
	return strings.TrimRight(line, " ")
}

// tape is the strip for the row in hand: what is typed, taken or proposed.
func (m *Measure) tape(cols int) string {
	id := m.id()
	if id == "" {
		return ""
	}
	if l, ok := m.reading(); ok {
		return strip(m.d, l, cols)
	}
	if l, ok := m.d.Job().Body.Get(id); ok && !m.form.dirty() {
		return strip(m.d, l, cols)
	}
	if p, ok := m.proposal(id); ok && !m.form.dirty() {
		return strip(m.d, p.Value, cols)
	}
	return ""
}
