package overlay

import (
	"strconv"

	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// sitting is the lesson that runs on the desk, at a page of the projector's
// own: the bench and her progress stay where they are.
type sitting struct {
	id    string
	page  int
	asked bool // its question stands, the answer is not shown yet
}

// sits is the lesson before the class with its page; false where none runs.
func (p *Projector) sits() (l lesson.Lesson, page lesson.Page, ok bool) {
	at := p.d.Running()
	l, ok = lesson.Find(at.ID)
	if !ok {
		p.sit = sitting{}
		return l, page, false
	}
	if p.sit.id != at.ID {
		p.sit = sitting{id: at.ID}
		p.turn(l, at.Page)
	}
	return l, l.Pages[p.sit.page-1], true
}

// turn shows a page of the lesson; its question comes first.
func (p *Projector) turn(l lesson.Lesson, n int) {
	p.sit.page, p.part = min(max(n, 1), len(l.Pages)), 0
	page := l.Pages[p.sit.page-1]
	_, p.sit.asked = page.Question(p.d.Sheet())
	p.what, p.why = nil, false
	p.eye = p.eye.Fit()
	p.eye.Hair = false
	if i := stepIndex(p.d.Sheet(), page.Show.ID); page.Show.What == lesson.OfStep && i > 0 {
		p.step = i
	}
}

// stepIndex is the number of a step, 0 where the draft has it not.
func stepIndex(s *pattern.Sheet, id string) int {
	for i := range s.Steps {
		if s.Steps[i].ID == id {
			return i + 1
		}
	}
	return 0
}

// lessonDo does what the keys of the steps do to the pages of a lesson; false:
// the key does what it always does.
func (p *Projector) lessonDo(id keys.ID) bool {
	l, page, ok := p.sits()
	if !ok {
		return false
	}
	switch id {
	case "show-next":
		switch {
		case p.more():
		case p.sit.asked:
			p.sit.asked, p.part = false, 0
		case p.sit.page >= len(l.Pages):
			p.note = p.d.Tell(text.ProjectorLast, capital(p.d.Trade(l.Ends.In(p.d.Unit()))))
		default:
			p.turn(l, p.sit.page+1)
		}
	case "show-back":
		if p.part > 0 {
			p.part--
			break
		}
		p.turn(l, p.sit.page-1)
	case "show-first":
		p.turn(l, 1)
	case "show-last":
		p.turn(l, len(l.Pages))
	case "show-step", keys.Accept:
		n, err := strconv.Atoi(p.number)
		switch {
		case err != nil:
		case n < 1 || n > len(l.Pages):
			p.note = p.d.Tell(text.NoPage, n, len(l.Pages))
		default:
			p.turn(l, n)
		}
		p.number = ""
	case "show-steps":
		p.note = p.d.Tell(text.ProjectorType)
	case "show-ask":
		p.part = 0
		_, asks := page.Question(p.d.Sheet())
		p.sit.asked = asks && !p.sit.asked
	default:
		return false
	}
	return true
}

// spoilt is the spoilt draft of a page about a fault.
func (p *Projector) spoilt(page lesson.Page) (f lesson.Fault, bad *pattern.Sheet, ok bool) {
	if page.Show.What != lesson.OfFault {
		return f, nil, false
	}
	f, ok = lesson.FindFault(page.Show.ID)
	if ok {
		bad, ok = f.Of(p.d.Sheet())
	}
	return f, bad, ok
}

// finding is the worst of a check, if it has a place.
func worstOf(s *pattern.Sheet, check string) (pattern.Finding, bool) {
	rank := map[pattern.Verdict]int{pattern.Skip: 1, pattern.Pass: 2, pattern.Advise: 3, pattern.Fail: 4}
	var worst pattern.Finding
	for _, f := range s.Findings {
		if f.Check == check && rank[f.Verdict] > rank[worst.Verdict] {
			worst = f
		}
	}
	return worst, worst.Check != ""
}

// pageScene is what a page lays on the table.
func (p *Projector) pageScene(l lesson.Lesson, page lesson.Page, rows int) view.Scene {
	s := view.Scene{Sheet: p.d.Sheet(), Unit: p.d.Unit(), Bold: true}
	spot := func(f pattern.Finding, ok bool) {
		if ok && f.Where.Piece != "" && !p.sit.asked && f.Verdict != pattern.Pass {
			s.Spot, s.Says = &f.Where, p.d.Trade(f.Title)
			if rows < bothPieces {
				s.Piece = f.Where.Piece
			}
		}
	}
	if rows < bothPieces {
		s.Piece = pattern.Front
	}
	switch page.Show.What {
	case lesson.OfStep:
		st, ok := p.current()
		if !ok {
			return s
		}
		s.Piece = st.Piece
		s.Step = st.Number
		if p.sit.asked && len(page.OwnWords()) == 0 || l.Veils(p.sit.page) {
			s.Step = max(st.Number-1, 1)
		}
	case lesson.OfTurn:
		t := p.turned(page)
		s.Sheet, s.Piece = t.Sheet, pattern.Front
		switch {
		case p.sit.asked && len(page.OwnWords()) == 0:
			s.Sheet = t.Side
		case t.Place != "side" && t.Drawn:
			s.Old = t.Side
		}
	case lesson.OfCompare:
		s.Old = p.d.SheetOf(p.d.Job().WithStyle(pattern.Method, pattern.PickValue(page.Show.ID)))
	case lesson.OfFault:
		if f, bad, ok := p.spoilt(page); ok {
			s.Sheet = bad
			found, there := f.Finding(bad)
			if there && rows < bothPieces && found.Where.Piece != "" {
				s.Piece = side(found.Where.Piece)
			}
			spot(found, there)
		}
	case lesson.OfCheck:
		spot(worstOf(s.Sheet, page.Show.ID))
	case lesson.OfMeasurement, lesson.OfChoice, lesson.OfWhatIf, lesson.OfOutput, lesson.OfNotes:
	}
	return s
}

// turned is the dart as a page turns it; turnedTo in any place.
func (p *Projector) turned(page lesson.Page) lesson.Turn { return p.turnedTo(page.Show.ID) }

func (p *Projector) turnedTo(place string) lesson.Turn {
	return lesson.TurnOf(p.d.Drafted(), place, p.d.SheetOf)
}

// turnSays is a dart in a place, in numbers.
func turnSays(d *desk.Desk, t lesson.Turn) string {
	u := d.Unit()
	return d.Tell(text.TurnSays, d.Trade(t.Title), u.Say(t.Wide), u.Say(t.Far), strconv.FormatFloat(t.Degrees, 'f', 1, 64))
}

// leastCloth is how many rows of the table stay, however much is said.
const leastCloth = 5

// pageCaption is the page below the table: its number, its words, then the
// question or the answer.
func (p *Projector) pageCaption(l lesson.Lesson, page lesson.Page, r desk.Rect) []string {
	d, cols := p.d, r.Columns
	number := canvas.Figures(strconv.Itoa(p.sit.page), d.Settings.Figures())
	n := 0
	for i, x := range lesson.All() {
		if x.ID == l.ID {
			n = i + 1
		}
	}
	beside := [3]string{
		d.Paint(theme.Muted, d.Tell(text.ProjectorPage, len(l.Pages))),
		d.Paint(theme.Muted, d.Tell(text.LessonHead, n, d.Trade(l.Title))),
		d.Paint(theme.Title, p.pageTitle(page)),
	}
	body := p.pageBody(l, page, cols)
	for len(body) < sentenceRows {
		body = append(body, "")
	}
	sum := ""
	if st, ok := p.current(); ok && page.Show.What == lesson.OfStep && !page.Asks() && !l.Veils(p.sit.page) {
		sum = p.sum(st)
	}
	most := max(r.Rows-leastCloth-len(number), 1)
	for _, row := range desk.Wrap(sum, cols-2) {
		body = append(body, " "+d.Paint(theme.Text, row))
	}
	if sum == "" && len(body) < most {
		body = append(body, "") // for the key that was pressed
	}
	p.parts = (len(body) + most - 1) / most
	p.part = min(p.part, p.parts-1)
	if p.parts > 1 {
		beside[0] += "   " + d.Paint(theme.Muted, d.Tell(text.ProjectorPart, p.part+1, p.parts))
		body = body[p.part*most : min((p.part+1)*most, len(body))]
	}
	var out []string
	for i, row := range number {
		out = append(out, desk.Clip(" "+d.Paint(theme.Accent, row)+"  "+beside[i], cols))
	}
	return p.under(append(out, body...), cols)
}

// pageTitle is what a page is about.
func (p *Projector) pageTitle(page lesson.Page) string {
	d := p.d
	switch page.Show.What {
	case lesson.OfStep:
		if st, ok := p.current(); ok {
			return d.Trade(st.Title)
		}
	case lesson.OfMeasurement, lesson.OfWhatIf, lesson.OfChoice:
		return p.measureOf(page.Show.ID)
	case lesson.OfCheck:
		if f, ok := worstOf(d.Sheet(), page.Show.ID); ok {
			return d.Trade(f.Title)
		}
	case lesson.OfFault:
		return d.Tell(text.FaultHead)
	case lesson.OfTurn:
		return d.Trade(p.turned(page).Title)
	case lesson.OfCompare:
		return d.Tell(text.CompareTitle)
	case lesson.OfOutput:
		return d.Trade(capital(plainID(page.Show.ID)))
	case lesson.OfNotes:
	}
	return ""
}

// pageBody is what is said on a page, line by line.
func (p *Projector) pageBody(l lesson.Lesson, page lesson.Page, cols int) []string {
	d, u := p.d, p.d.Unit()
	var out []string
	add := func(role theme.Role, words string) {
		for _, w := range desk.Wrap(words, cols-2) {
			out = append(out, " "+d.Paint(role, w))
		}
	}
	if p.what != nil {
		title, moves := p.what.told(p)
		add(theme.Title, title)
		add(theme.Text, moves)
		return out
	}
	add(theme.Title, d.Trade(page.Words.In(u)))
	q, asks := page.Question(d.Sheet())
	switch {
	case asks && p.sit.asked:
		add(theme.Accent, d.Plain(q.Prompt(d.Words, u)))
		for i, o := range q.Pick {
			add(theme.Text, strconv.Itoa(i+1)+". "+d.Trade(o.Says.In(u)))
		}
	case asks:
		add(theme.Accent, d.Plain(q.Answer(d.Words, u, d.Private)))
		if why := q.Because(); !why.IsEmpty() {
			add(theme.Text, d.Trade(why.In(u)))
		}
		if page.Show.What == lesson.OfTurn {
			p.pageShown(l, page, add)
		}
		if _, bad, ok := p.spoilt(page); ok {
			if f, found := worstOf(bad, q.Check); found {
				add(theme.Text, d.Trade(f.Title)+": "+d.Trade(f.Says.In(u)))
			}
		}
	default:
		p.pageShown(l, page, add)
	}
	return out
}

// pageShown is what stands under the words of a page that asks nothing.
func (p *Projector) pageShown(l lesson.Lesson, page lesson.Page, add func(theme.Role, string)) {
	d, u := p.d, p.d.Unit()
	switch page.Show.What {
	case lesson.OfStep:
		if st, ok := p.current(); ok && !l.Veils(p.sit.page) {
			add(theme.Text, p.body(st))
		}
	case lesson.OfCheck:
		if f, ok := worstOf(d.Sheet(), page.Show.ID); ok {
			add(theme.Text, d.Trade(f.Says.In(u)))
		}
	case lesson.OfWhatIf:
		add(theme.Muted, d.Tell(text.ProjectorTry))
	case lesson.OfTurn:
		t := p.turned(page)
		if !t.Drawn {
			for _, r := range t.Sheet.Refused {
				add(theme.Warn, capital(d.Trade(r.Says.In(u)))+".")
			}
			return
		}
		add(theme.Text, turnSays(d, t))
		if t.Place != "side" {
			add(theme.Muted, turnSays(d, p.turnedTo("side")))
		}
	case lesson.OfCompare:
		other := text.CompareThumb
		if page.Show.ID == pattern.Direct {
			other = text.CompareDirect
		}
		add(theme.Text, d.Tell(text.LessonCompare, d.Tell(other), d.Tell(text.CompareMeasured)))
	case lesson.OfMeasurement, lesson.OfChoice, lesson.OfFault, lesson.OfOutput, lesson.OfNotes:
	}
}
