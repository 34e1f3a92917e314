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
	"chalkfold/ui/view"
)

// captionRows are the rows below the table: three of the step's number, two of
// its sentence, one of its sum.
const (
	captionRows  = 6
	sentenceRows = 2
	bothPieces   = 26 // rows from which front and back are shown together
)

// View is the table and the caption, or nothing while the screen is blanked.
func (p *Projector) View(r desk.Rect) []string {
	if p.blank || r.Rows <= 0 || r.Columns <= 0 {
		return desk.Block(nil, r)
	}
	if l, page, ok := p.sits(); ok {
		foot := p.pageCaption(l, page, r)
		return desk.Block(append(p.table(r.Columns, r.Rows-len(foot)), foot...), r)
	}
	out := p.table(r.Columns, r.Rows-captionRows)
	return desk.Block(append(out, p.caption(r.Columns)...), r)
}

func (p *Projector) table(cols, rows int) []string {
	if rows < 1 || cols < 1 {
		return nil
	}
	set, s := p.d.Settings, p.scene(rows)
	if !p.turns {
		up := s
		up.Stand = true
		p.stand = view.Look(up, view.Eye{}, cols, rows, set.Glyphs, set.Aspect).DotsPerInch() > 1.15*view.Look(s, view.Eye{}, cols, rows, set.Glyphs, set.Aspect).DotsPerInch()
	}
	s.Stand = p.stand
	lines, seen := p.paper.Rows(s, p.eye, cols, rows, set.Glyphs, set.Aspect, set.Theme.Pens())
	p.seen = seen
	return lines
}

// scene is the draft after the step shown, the step before it while a question
// stands, or both outlines of "what if".
func (p *Projector) scene(rows int) view.Scene {
	sheet := p.d.Sheet()
	s := view.Scene{Sheet: sheet, Step: p.at(), Unit: p.d.Unit(), Bold: true}
	st, ok := p.current()
	if !ok {
		return s
	}
	if p.what != nil {
		s.Old, s.Sheet, s.Step = sheet, p.d.SheetOf(p.what.job), 0
		if rows < bothPieces {
			s.Piece = side(st.Piece)
		}
		return s
	}
	if l, page, ok := p.sits(); ok {
		return p.pageScene(l, page, rows)
	}
	if p.at() < len(sheet.Steps) && (rows < bothPieces || !view.Started(sheet, p.at())) {
		s.Piece = st.Piece
	}
	if p.asked {
		s.Step = max(p.at()-1, 1)
	}
	return s
}

// side is the large piece that a piece belongs to.
func side(id pattern.PieceID) pattern.PieceID {
	if strings.HasPrefix(string(id), string(pattern.Back)) {
		return pattern.Back
	}
	return pattern.Front
}

// caption is the number of the step, what to do, and the sum.
func (p *Projector) caption(cols int) []string {
	d := p.d
	st, ok := p.current()
	if !ok {
		return append(make([]string, captionRows-1), p.last("", cols))
	}
	number := canvas.Figures(strconv.Itoa(st.Number), d.Settings.Glyphs)
	title, body, sum := d.Trade(st.Title), p.body(st), p.sum(st)
	switch {
	case p.what != nil:
		title, body = p.what.told(p)
		sum = ""
	case p.asked:
		q, _ := p.question()
		title, body, sum = d.Tell(text.ProjectorAsks), d.Plain(q.Prompt(d.Words, d.Unit())), ""
		if len(q.Pick) > 0 {
			body = title
			title = d.Trade(st.Title)
		}
	}
	beside := [3]string{
		d.Paint(theme.Muted, d.Tell(text.ProjectorOf, len(d.Sheet().Steps))),
		d.Paint(theme.Muted, p.piece(st.Piece)),
		d.Paint(theme.Title, title),
	}
	var out []string
	for i, n := range number {
		out = append(out, desk.Clip(" "+d.Paint(theme.Accent, n)+"  "+beside[i], cols))
	}
	for _, l := range within(body, cols-2, sentenceRows) {
		out = append(out, " "+d.Paint(theme.Title, l))
	}
	for len(out) < captionRows-1 {
		out = append(out, "")
	}
	return append(out, p.last(sum, cols))
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

// last is the sum with the pressed key at its right end.
func (p *Projector) last(sum string, cols int) string {
	d := p.d
	role := theme.Text
	if p.eye.Hair {
		sum, role = p.hairSays(), theme.Accent
	}
	if p.note != "" {
		sum, role = p.note, theme.Accent
	}
	right := p.pressed
	if p.number != "" {
		right = d.Tell(text.ProjectorStep, p.number+"_")
	}
	if right != "" {
		right = d.Tell(text.ProjectorPressed, right)
	}
	room := cols - 2
	if right != "" {
		room -= ansi.StringWidth(right) + 2
	}
	line := " " + d.Paint(role, shortSum(sum, room))
	if right == "" {
		return line
	}
	return desk.Fit(line, cols-ansi.StringWidth(right)-1) + d.Paint(theme.Key, right)
}

// shortSum leaves out the beginning of a sum that is too long: the result must
// be seen.
func shortSum(sum string, room int) string {
	if ansi.StringWidth(sum) <= room {
		return sum
	}
	const dots = "... "
	words := strings.Fields(sum)
	for i := range words {
		if s := dots + strings.Join(words[i:], " "); ansi.StringWidth(s) <= room {
			return s
		}
	}
	return desk.Clip(sum, room)
}

// within is a text in at most so many lines: whole sentences as far as they go,
// else as many words.
func within(words string, width, most int) []string {
	lines := desk.Wrap(words, width)
	if len(lines) <= most {
		return lines
	}
	for i := len(words) - 1; i > 0; i-- {
		if words[i] != '.' || i+1 < len(words) && words[i+1] != ' ' {
			continue
		}
		if short := desk.Wrap(words[:i+1], width); len(short) <= most {
			return short
		}
	}
	lines = lines[:most]
	last := lines[most-1]
	for ansi.StringWidth(last)+4 > width {
		cut := strings.LastIndexByte(last, ' ')
		if cut < 0 {
			break
		}
		last = last[:cut]
	}
	lines[most-1] = last + " ..."
	return lines
}
