package stage

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// The columns of the form.
const (
	titleCells = 24
	valueCells = 10
	echoCells  = 15 // "= 118 15/16 in" and a sign
	listCells  = 1 + titleCells + valueCells + echoCells + 1
	explainGap = 2
	leastRight = 25 // below it, what is explained stands under the list
)

// words are the form, and at its right or under it what is to be known of the
// row in hand.
func (m *Measure) words(cols, rows int) ([]string, string) {
	right := cols - listCells - explainGap
	if right < leastRight {
		return m.stacked(cols, rows), m.caption()
	}
	list := m.list(listCells, rows-1)
	return m.columns(list, listCells+explainGap, m.explain(right, rows-1), right, rows), m.caption()
}

func (m *Measure) stacked(cols, rows int) []string {
	low := min(max(rows/3, 3), 12)
	if rows < 8 {
		low = 2
	}
	out := []string{}
	if rows > 12 {
		out = append(out, "")
	}
	out = append(out, m.list(cols, rows-low-len(out)-1)...)
	if m.alone {
		out = append(out, m.tape(cols))
	} else {
		out = append(out, "")
	}
	for _, l := range m.cropped(m.explain(cols-1, low), "", cols-1, low) {
		out = append(out, " "+l)
	}
	return out
}

func (m *Measure) list(cols, lines int) []string {
	from, to := window(m.form.at, len(m.form.rows), max(lines, 1))
	var out []string
	for i := from; i < to; i++ {
		out = append(out, desk.Clip(m.line(i, cols), cols))
	}
	for len(out) < lines {
		out = append(out, "")
	}
	return out
}

// line is one row: marker, name, value, and how it reads in the other unit,
// or that it is proposed or not yet there.
func (m *Measure) line(i, cols int) string {
	d, r := m.d, m.form.rows[i]
	here := i == m.form.at
	title := desk.Fit(marker(here)+shortTitle(r.title, titleCells-1), titleCells) + " "
	if here {
		title = d.Paint(theme.Title, title)
	}
	if here && m.form.typing && !r.pick {
		return title + m.form.field.view(d, valueCells-1) + " " + m.echo(r, here)
	}
	value := r.text
	if u, ok := m.form.kept[r.id]; ok {
		value = u.text
	}
	if value == "" {
		value = m.sign(r)
	}
	wide := valueCells
	if r.id == clientRow {
		wide = max(cols-titleCells-2, valueCells)
		if len([]rune(value)) < valueCells {
			wide = valueCells
		}
	}
	shown := desk.Fit(d.Plain(value), wide)
	if r.pick && here && m.form.typing {
		shown = d.Paint(theme.Selected, d.Plain(value)) + strings.Repeat(" ", max(wide-len(value), 0))
	}
	echo := m.echo(r, here)
	if echo != "" && ansi.StringWidth(value) >= wide {
		shown += " " // a long value and what is said of it are two words
	}
	return title + shown + echo
}

// echo says what the value of a row amounts to.
func (m *Measure) echo(r row, here bool) string {
	d, id := m.d, measure.ID(r.id)
	if r.id == clientRow || r.pick {
		return ""
	}
	if _, bad := m.form.kept[r.id]; bad && !(here && m.form.typing) {
		return d.Paint(theme.Warn, "! "+d.Tell(text.NotRead))
	}
	u := m.d.Unit()
	if here && m.form.typing && m.form.dirty() {
		l, ok := m.reading()
		if !ok {
			return ""
		}
		return d.Paint(theme.Muted, d.Tell(text.MeasureEquals, other(u).Say(l)))
	}
	if l, ok := m.d.Job().Body.Get(id); ok {
		says := desk.Fit(d.Tell(text.MeasureEquals, other(u).Say(l)), echoCells-1)
		if x, doubted := m.doubts[id]; doubted && (x.Strong || x.HasOther) {
			return d.Paint(theme.Muted, says) + d.Paint(theme.Warn, "!")
		}
		return d.Paint(theme.Muted, says)
	}
	_, proposed := m.proposal(id)
	switch {
	case !m.needs[id]:
		return ""
	case proposed && here && m.form.typing:
		return d.Paint(theme.Muted, m.sign(r))
	case proposed:
		return d.Paint(theme.Muted, d.Tell(text.MeasureProposed))
	}
	return d.Paint(theme.Muted, d.Tell(text.MeasureNotYet))
}

// sign stands in place of a value that is needed and not taken: the proposal
// that the draft uses, or a dot.
func (m *Measure) sign(r row) string {
	id := measure.ID(r.id)
	if !m.needs[id] {
		return ""
	}
	if p, ok := m.proposal(id); ok {
		return "~ " + m.d.Unit().Tape(p.Value)
	}
	return "."
}

// explain is what is to be known of the row in hand: the name, how to take it,
// the slip, and any doubt.
func (m *Measure) explain(cols, rows int) []string {
	d := m.d
	r, ok := m.form.row()
	if !ok {
		return nil
	}
	var out []string
	add := func(role theme.Role, words string) {
		for _, l := range desk.Wrap(words, cols) {
			out = append(out, d.Paint(role, l))
		}
	}
	switch r.id {
	case clientRow:
		add(theme.Title, strings.ToUpper(r.title))
		add(theme.Text, d.Tell(text.NameHow))
		return out
	case unitRow:
		add(theme.Title, strings.ToUpper(r.title))
		add(theme.Text, d.Tell(text.UnitHow))
		return out
	}
	x, _ := measure.Find(measure.ID(r.id))
	add(theme.Title, strings.ToUpper(r.title))
	if u, bad := m.form.kept[r.id]; bad {
		add(theme.Warn, "! "+d.Plain(u.why))
	}
	if doubt, doubted := m.doubts[x.ID]; doubted && !m.form.dirty() {
		add(theme.Warn, "! "+d.Trade(doubt.Says.In(d.Unit())))
		settle := d.Tell(text.DoubtKeys, m.key(againID))
		if doubt.HasOther {
			settle = d.Tell(text.DoubtOther, m.key(keys.OtherUnit)) + " " + settle
		}
		add(theme.Muted, settle)
	}
	if why := refused(d, m.scene(desk.Rect{}).Sheet); why != "" {
		add(theme.Warn, "! "+why)
	}
	add(theme.Text, d.Trade(x.How))
	if x.Slip != "" {
		add(theme.Muted, d.Tell(text.MeasureSlip, d.Trade(x.Slip)))
	}
	if p, ok := m.proposal(x.ID); ok {
		add(theme.Muted, d.Tell(text.ProposalKeys, d.Trade(strings.TrimSuffix(p.Source, ".")), m.key(keepID)))
	}
	if len(out) < rows && x.Landmarks != "" {
		add(theme.Muted, capital(d.Trade(x.Landmarks))+".")
	}
	return out
}

// key is the key of an action, as it stands on keyboards.
func (m *Measure) key(id keys.ID) string {
	a, _ := m.d.Keys.Find(id)
	return a.Short()
}

// caption is the stage in one line.
func (m *Measure) caption() string {
	r, ok := m.form.row()
	if !ok {
		return ""
	}
	line := " " + r.title + "  " + m.d.Plain(r.text)
	if r.text != "" && m.id() != "" {
		line += " " + m.d.Unit().String()
	}
	return line
}
