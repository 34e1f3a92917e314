package stage

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// words are the choices, and beside or under them what the one in hand does.
func (s *Style) words(cols, rows int) ([]string, string) {
	right := cols - choiceList - explainGap
	if right < leastRight {
		low := min(max(rows/3, 3), 9)
		if rows < 8 {
			low = 2
		}
		var out []string
		if rows > 12 {
			out = append(out, "")
		}
		out = append(out, s.list(cols, rows-low-len(out)-1)...)
		out = append(out, "")
		for _, l := range s.cropped(s.explain(cols-1, low), "", cols-1, low) {
			out = append(out, " "+l)
		}
		return out, s.caption()
	}
	return s.columns(s.list(choiceList, rows-1), choiceList+explainGap, s.explain(right, rows-1), right, rows), s.caption()
}

// list shows the rows, a heading before each group.
func (s *Style) list(cols, lines int) []string {
	type entry struct {
		row     int
		heading string
	}
	var all []entry
	at, group := 0, ""
	for i, r := range s.form.rows {
		if r.group != group {
			group = r.group
			all = append(all, entry{-1, group})
		}
		if i == s.form.at {
			at = len(all)
		}
		all = append(all, entry{row: i})
	}
	from, to := window(at, len(all), max(lines, 1))
	if to < len(all) && to-1 > at && all[to-1].row < 0 {
		to-- // a heading with nothing under it
	}
	var out []string
	for _, e := range all[from:to] {
		if e.row < 0 {
			out = append(out, " "+s.d.Paint(theme.Muted, s.d.Trade(e.heading)))
			continue
		}
		out = append(out, desk.Clip(s.line(e.row, cols), cols))
	}
	for len(out) < lines {
		out = append(out, "")
	}
	return out
}

// line is one choice: marker, name, value, and a mark where it is not the
// usual one.
func (s *Style) line(i, cols int) string {
	d, r := s.d, s.form.rows[i]
	set, _ := d.Sheet().Setting(s.choices[i].ID)
	here := i == s.form.at
	title := desk.Fit(marker(here)+shortTitle(r.title, choiceCells-1), choiceCells) + " "
	if here {
		title = d.Paint(theme.Title, title)
	}
	value := r.text
	u, bad := s.form.kept[r.id]
	if bad {
		value = u.text
	}
	switch {
	case here && s.form.typing && !r.pick:
		title += s.form.field.view(d, valueCells-1) + " "
	case here && s.form.typing:
		title += d.Paint(theme.Selected, d.Plain(value)) + " "
	default:
		title += desk.Fit(d.Plain(value), max(valueCells, len([]rune(value))+1))
	}
	switch {
	case bad && !(here && s.form.typing):
		return title + d.Paint(theme.Warn, "! "+d.Tell(text.NotRead))
	case !set.Used:
		return title + d.Paint(theme.Muted, d.Tell(text.StyleKept))
	case set.Chosen && !same(set.Value, set.Default.Value):
		usual := "* " + d.Paint(theme.Muted, d.Tell(text.StyleUsually, s.short(s.choices[i], set.Default.Value)))
		if ansi.StringWidth(title+usual) > cols {
			usual = "*" // what is usual is said of the row in hand
		}
		return title + usual
	}
	return title
}

// shortTitle leaves out the last words of a title that is too long.
func shortTitle(s string, cells int) string {
	for ansi.StringWidth(s) > cells {
		cut := strings.LastIndexByte(s, ' ')
		if cut < 0 {
			break
		}
		s = s[:cut]
	}
	return s
}

// choiceCells is the width of the titles of choices, choiceList of their list.
const (
	choiceCells = 29
	choiceList  = 1 + choiceCells + valueCells + 13
)

// explain is what the choice in hand does, why its usual value is what it is,
// its limits on a ruler, and what the last change moved.
func (s *Style) explain(cols, rows int) []string {
	d := s.d
	c, set, ok := s.choice()
	if !ok {
		return nil
	}
	var out []string
	add := func(role theme.Role, words string) {
		for _, l := range desk.Wrap(words, cols) {
			out = append(out, d.Paint(role, l))
		}
	}
	add(theme.Title, strings.ToUpper(d.Trade(c.Title)))
	if u, bad := s.form.kept[string(c.ID)]; bad {
		add(theme.Warn, "! "+d.Plain(u.why))
	}
	add(theme.Text, d.Trade(c.Says))
	if asks := s.loose(c.ID); asks != "" {
		add(theme.Accent, asks)
	}
	if !set.Used {
		add(theme.Muted, d.Tell(text.StyleUnused, d.Job().Style.Method()))
	}
	if c.Kind == pattern.KindPick {
		s.options(c, set, add)
	}
	now := set.Value
	if s.Dirty() {
		if v, err := s.read(c, s.form.field.string()); err == nil {
			now = v
		}
	}
	if c.Kind == pattern.KindLength && set.Low < set.High {
		out = append(out, s.ruler(set, now.Length, cols))
		if now.Length < set.Low || now.Length > set.High {
			add(theme.Warn, "! "+d.Tell(text.StyleOutside, d.Unit().Tape(now.Length), d.Unit().Tape(set.Low), d.Unit().Tape(set.High)))
		}
	}
	if why := refused(d, s.scene(desk.Rect{}).Sheet); why != "" {
		add(theme.Warn, "! "+why)
	}
	usual := s.says(c, set.Default.Value)
	if sum := set.Default.Sum.Sum(d.Unit()); strings.Contains(sum, "=") {
		usual = sum
	}
	add(theme.Muted, d.Tell(text.StyleWhy, usual))
	if because := set.Default.Because.In(d.Unit()); because != "" {
		add(theme.Muted, d.Trade(because))
	}
	for _, l := range s.moved() {
		add(theme.Newest, l)
	}
	return out
}

func (s *Style) options(c pattern.Choice, set pattern.Setting, add func(theme.Role, string)) {
	not := s.refusals()
	for _, o := range c.Options {
		role := theme.Muted
		if o.Value == set.Value.Pick {
			role = theme.Text
		}
		line := s.d.Trade(o.Title)
		if o.Says != "" {
			line += ": " + s.d.Trade(o.Says)
		}
		if why := not[o.Value]; why != "" {
			line = "! " + line + " " + why
		}
		add(role, line)
	}
}

// moved says what the change that is being typed, or the last one, moves.
func (s *Style) moved() []string {
	sc := s.scene(desk.Rect{})
	if sc.Old == nil {
		return nil
	}
	diff := view.Differences(sc.Old, sc.Sheet, s.d.Unit(), 3)
	if len(diff) == 0 {
		if s.Dirty() && sc.Sheet.Complete {
			return []string{s.d.Tell(text.StyleSame)}
		}
		return nil
	}
	return []string{s.d.Trade(capital(strings.Join(diff, ", ")) + ".")}
}

// ruler draws the limits with the value on it: "2 |----+-----------| 7".
func (s *Style) ruler(set pattern.Setting, now measure.Length, cols int) string {
	u := s.d.Unit()
	low, high := u.Tape(set.Low), u.Tape(set.High)
	n := min(cols-len(low)-len(high)-4, 30)
	if n < 5 {
		return ""
	}
	at := int(float64(n-1)*float64((now-set.Low)/(set.High-set.Low)) + 0.5)
	at = max(0, min(at, n-1))
	bar := []byte(strings.Repeat("-", n))
	return s.d.Paint(theme.Muted, low+" |"+string(bar[:at])) + s.d.Paint(theme.Newest, "o") + s.d.Paint(theme.Muted, string(bar[at+1:])+"| "+high)
}

func (s *Style) caption() string {
	r, ok := s.form.row()
	if !ok {
		return ""
	}
	return " " + r.title + "  " + r.text
}
