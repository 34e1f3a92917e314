package overlay

import (
	"strconv"
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// captionRows are the rows below the table: three of the step's number, two of
// its sentence, one of its sum. Words that need more run beside the number, and
// what is longer still comes in parts: Space shows the next.
const (
	captionRows  = 6
	numberRows   = 3
	sentenceRows = 2
)

// said is what stands below the table.
type said struct {
	of, piece, title string
	body, sum        string
}

// caption is the number of the step, what to do, and the sum.
func (p *Projector) caption(cols int) []string {
	d := p.d
	st, ok := p.current()
	if !ok || p.nobodyThere() {
		p.parts = 1
		return p.nobody(cols)
	}
	s := said{
		of: d.Tell(text.ProjectorOf, len(d.Sheet().Steps)), piece: p.piece(st.Piece),
		title: d.Trade(st.Title), body: p.body(st), sum: p.sum(st),
	}
	switch {
	case p.what != nil:
		s.title, s.body = p.what.told(p)
		s.sum = ""
	case p.asked:
		q, _ := p.question()
		s.title, s.body, s.sum = d.Tell(text.ProjectorAsks), d.Plain(q.Prompt(d.Words, d.Unit())), ""
		if len(q.Pick) > 0 {
			s.title, s.body = d.Trade(st.Title), s.title
		}
	}
	number := canvas.Figures(strconv.Itoa(st.Number), d.Settings.Figures())
	parts := p.compose(s, number[:], cols)
	p.parts = len(parts)
	p.part = min(p.part, len(parts)-1)
	return p.under(parts[p.part], cols)
}

// nobody says that nobody is on the desk.
func (p *Projector) nobody(cols int) []string {
	d := p.d
	out := []string{""}
	for _, l := range desk.Wrap(d.Tell(text.ProjectorNobody), cols-2) {
		out = append(out, " "+d.Paint(theme.Title, l))
	}
	for len(out) < captionRows {
		out = append(out, "")
	}
	return p.under(out[:captionRows], cols)
}

// compose lays out what is said: the usual way where it fits, else beside the
// number, else in parts of six rows each.
func (p *Projector) compose(s said, number []string, cols int) [][]string {
	d := p.d
	wide := cols - ansi.StringWidth(number[0]) - 4
	beside := func(row int, words string) string {
		if row >= numberRows {
			return " " + words
		}
		return " " + d.Paint(theme.Accent, number[row]) + "  " + words
	}
	body, sum := desk.Wrap(s.body, cols-2), desk.Wrap(s.sum, cols-2)
	if len(body) <= sentenceRows && len(sum) <= 1 && ansi.StringWidth(s.title) <= wide {
		heads := [numberRows]string{d.Paint(theme.Muted, s.of), d.Paint(theme.Muted, s.piece), d.Paint(theme.Title, s.title)}
		out := make([]string, captionRows)
		for i, h := range heads {
			out[i] = beside(i, h)
		}
		for i, l := range body {
			out[numberRows+i] = " " + d.Paint(theme.Title, l)
		}
		for _, l := range sum {
			out[captionRows-1] = " " + d.Paint(theme.Text, l)
		}
		return [][]string{out}
	}
	if one := p.parted(s, func(int) string { return s.of }, wide, cols, beside); len(one) == 1 {
		return one
	}
	for n := 2; ; {
		label := func(k int) string { return s.of + "   " + d.Tell(text.ProjectorPart, k, n) }
		out := p.parted(s, label, wide, cols, beside)
		if len(out) == n || len(out) > 9 {
			return out
		}
		n = len(out) // the label is as wide for every number of one figure
	}
}

// parted is what is said in as many parts as it takes, each with a head.
func (p *Projector) parted(s said, of func(part int) string, wide, cols int, beside func(int, string) string) [][]string {
	var out [][]string
	for s.body != "" || s.sum != "" || len(out) == 0 {
		var rows []string
		rows, s = p.rowsOf(s, of(len(out)+1), wide, cols, beside)
		out = append(out, rows)
	}
	return out
}

// rowsOf fills six rows: the head, as much of the words as go in, and the sum
// at the foot once all the words are said. It gives back what is left to say.
func (p *Projector) rowsOf(s said, of string, wide, cols int, beside func(int, string) string) ([]string, said) {
	d := p.d
	width := func(row int) int {
		if row < numberRows {
			return wide
		}
		return cols - 2
	}
	var plain, painted []string
	put := func(role theme.Role, lines ...string) {
		for _, l := range lines {
			plain, painted = append(plain, l), append(painted, beside(len(painted), d.Paint(role, l)))
		}
	}
	head := of + "   " + s.piece
	if one := head + "   " + s.title; ansi.StringWidth(one) <= wide {
		plain, painted = append(plain, one), append(painted, beside(0, d.Paint(theme.Muted, head)+"   "+d.Paint(theme.Title, s.title)))
	} else {
		put(theme.Muted, head)
		put(theme.Title, flow(s.title, len(plain), width)...)
	}
	sum := desk.Wrap(s.sum, cols-2)
	lines := flow(s.body, len(plain), width)
	if len(plain)+len(lines)+len(sum) > captionRows && s.body != "" {
		at, room := len(plain), max(captionRows-len(plain), 1)
		now := upTo(s.body, func(words string) bool { return len(flow(words, at, width)) <= room })
		put(theme.Title, flow(now, at, width)...)
		s.body = strings.TrimSpace(strings.TrimPrefix(s.body, now))
		sum = nil // it stands under the last of the words
	} else {
		put(theme.Title, lines...)
		s.body, s.sum = "", ""
	}
	for len(plain) < captionRows-len(sum) {
		put(theme.Text, "")
	}
	put(theme.Text, sum...)
	return painted[:captionRows], s
}

// flow breaks words into lines from a row on, where the width may differ from
// row to row.
func flow(words string, row int, width func(int) int) []string {
	var out []string
	for words != "" {
		line := desk.Wrap(words, max(width(row), 1))[0]
		out = append(out, line)
		rest, ok := strings.CutPrefix(words, line)
		if !ok || line == "" {
			return append(out, desk.Wrap(words, width(row))[1:]...)
		}
		words = strings.TrimLeft(rest, " ")
		row++
	}
	return out
}

// upTo is the longest beginning of a text that fits: whole sentences if one
// fits, else whole words.
func upTo(words string, fits func(string) bool) string {
	if fits(words) {
		return words
	}
	sentence, word := "", ""
	for i := 1; i < len(words); i++ {
		if words[i] != ' ' || !fits(words[:i]) {
			continue
		}
		word = words[:i]
		if words[i-1] == '.' || words[i-1] == ':' || words[i-1] == ';' {
			sentence = word
		}
	}
	switch {
	case sentence != "":
		return sentence
	case word != "":
		return word
	}
	return words
}

// under puts the note, the cross-hair or the pressed key over the last rows:
// the key at the right end of the lowest row that has room for it.
func (p *Projector) under(rows []string, cols int) []string {
	d := p.d
	out := append([]string(nil), rows...)
	note := p.note
	if note == "" && p.eye.Hair {
		note = p.hairSays()
	}
	if note != "" {
		lines := desk.Wrap(note, cols-2)
		lines = lines[:min(len(lines), len(out))]
		for i, l := range lines {
			out[len(out)-len(lines)+i] = " " + d.Paint(theme.Accent, l)
		}
	}
	right := p.pressed
	if p.number != "" {
		right = d.Tell(text.ProjectorStep, p.number+"_")
	}
	if right == "" {
		return out
	}
	right = d.Tell(text.ProjectorPressed, right)
	w := ansi.StringWidth(right)
	for i := len(out) - 1; i >= 0; i-- {
		if ansi.StringWidth(strings.TrimRight(ansi.Strip(out[i]), " "))+2+w <= cols {
			out[i] = desk.Fit(out[i], cols-w-1) + d.Paint(theme.Key, right)
			break
		}
	}
	return out
}

func (p *Projector) piece(id pattern.PieceID) string { return pieceTitle(p.d, p.d.Sheet(), id) }

// body is what to do, or why.
func (p *Projector) body(st pattern.Step) string {
	d, u := p.d, p.d.Unit()
	switch {
	case !st.Drawn:
		return capital(d.Trade(st.Waits.In(u))) + "."
	case p.why && !st.Why.IsEmpty():
		return d.Trade(st.Why.In(u))
	}
	return d.Trade(st.Do.In(u))
}

// sum names her measures where they must not be seen.
func (p *Projector) sum(st pattern.Step) string {
	d, u := p.d, p.d.Unit()
	sum := st.Sum.Sum(u)
	if d.Private {
		sum = st.Sum.Private(u)
	}
	if sum == "" {
		return ""
	}
	return d.Trade(sum) + " " + u.String()
}
