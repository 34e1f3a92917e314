package stage

import (
	"strconv"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/outlet"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// Study shows a page in Draft: a step, what if, or both methods.
func (s *Draft) Study(r desk.Running) {
	s.bench.Study(r)
	s.hidden, s.heard = false, nil
	if !s.OnPage() {
		return
	}
	show, steps := s.class.page.Show, s.d.Sheet().Steps
	switch show.What {
	case lesson.OfStep:
		for i := range steps {
			if steps[i].ID == show.ID {
				s.step = i + 1
			}
		}
		s.hidden = s.ask.open
	case lesson.OfWhatIf:
		open := s.ask
		s.tryOpen(show.ID)
		s.try.fixed, s.ask = true, open
	case lesson.OfCompare, lesson.OfTurn:
		s.step = len(steps)
	}
	if st, ok := s.current(); ok && s.ask.open && show.What == lesson.OfStep {
		s.ask.title = func(cols int) []string { return s.title(st, cols) }
	}
}

// veiled says that a page names a step which a later one asks about: what it
// does is not told before the question.
func (s *Draft) veiled() bool { return s.OnPage() && s.class.course.Veils(s.class.at.Page) }

// other is the sheet of the method that a page compares with, nil if it
// compares nothing.
func (s *Draft) other() (sheet *pattern.Sheet, method string) {
	if !s.OnPage() || s.class.page.Show.What != lesson.OfCompare {
		return nil, ""
	}
	method = s.class.page.Show.ID
	return s.d.SheetOf(s.d.Job().WithStyle(pattern.Method, pattern.PickValue(method))), method
}

// turned is the dart of a page that turns it.
func (s *Draft) turned() (lesson.Turn, bool) {
	if !s.OnPage() || s.class.page.Show.What != lesson.OfTurn {
		return lesson.Turn{}, false
	}
	return lesson.TurnOf(s.drafted(s.d.Job()), s.class.page.Show.ID, s.d.SheetOf), true
}

// turnTitle names the place.
func (s *Draft) turnTitle(t lesson.Turn, cols int) []string {
	d := s.d
	return []string{desk.Clip(" "+d.Paint(theme.Accent, d.Tell(text.TurnHead))+"   "+d.Paint(theme.Title, d.Trade(t.Title)), cols)}
}

// turnBody are the lines of a page that turns the dart: it there and in the
// side.
func (s *Draft) turnBody(t lesson.Turn, label, cols int) []string {
	d := s.d
	var out []string
	add := func(role theme.Role, words string) {
		out = append(out, labelled(d, "", label, cols, words, role)...)
	}
	for _, l := range s.heard {
		add(theme.Ok, l)
	}
	if !t.Drawn {
		add(theme.Warn, refused(d, t.Sheet))
		return out
	}
	add(theme.Title, turnSays(d, t))
	if t.Place != "side" {
		add(theme.Muted, turnSays(d, lesson.TurnOf(s.drafted(d.Job()), "side", d.SheetOf)))
		add(theme.Muted, d.Tell(text.TurnSeam, lower(d.Trade(t.Title))))
	}
	for _, x := range s.tryFindings(t.Side, t.Sheet) {
		add(theme.Warn, x)
	}
	add(theme.Muted, d.Tell(text.TurnHow))
	return out
}

// turnSays is a dart in a place, in numbers.
func turnSays(d *desk.Desk, t lesson.Turn) string {
	u := d.Unit()
	return d.Tell(text.TurnSays, d.Trade(t.Title), u.Say(t.Wide), u.Say(t.Far), strconv.FormatFloat(t.Degrees, 'f', 1, 64))
}

// turnKeep keeps the dart where the page shows it.
func (s *Draft) turnKeep() desk.Ask {
	t, ok := s.turned()
	if !ok || !t.Drawn {
		return desk.Ask{}
	}
	job := lesson.Turned(s.d.Job(), t.Place)
	return desk.Ask{Job: &job, Says: s.d.Tell(text.TurnKept, lower(s.d.Trade(t.Title)))}
}

// Study shows a page in True: a check, or a fault on purpose.
func (s *True) Study(r desk.Running) {
	s.bench.Study(r)
	if !s.OnPage() {
		return
	}
	show := s.class.page.Show
	if show.What == lesson.OfFault {
		s.spoil(show.ID)
		return
	}
	s.sound()
	s.refresh()
	for i, at := range s.rows {
		if s.sheet().Findings[at].Check == show.ID {
			s.at = i
			return
		}
	}
}

// Rest also takes a spoilt draft off the table.
func (s *True) Rest() {
	if s.class.page.Show.What == lesson.OfFault && s.class.at.On() {
		s.sound()
	}
	s.bench.Rest()
}

// Study shows a page in Measure: the row of its measurement, with the focus
// not yet in the field.
func (m *Measure) Study(r desk.Running) {
	m.bench.Study(r)
	if !m.OnPage() {
		return
	}
	m.refresh()
	if i := m.form.find(m.class.page.Show.ID); i >= 0 {
		m.form.to(i)
	}
	m.form.typing = false
}

// Study shows a page in Style: the row of its choice.
func (s *Style) Study(r desk.Running) {
	s.bench.Study(r)
	if !s.OnPage() {
		return
	}
	s.refresh()
	if i := s.form.find(s.class.page.Show.ID); i >= 0 {
		s.form.to(i)
	}
	s.form.typing = false
}

// Study shows a page in Cut: what it promises is ticked.
func (s *Cut) Study(r desk.Running) {
	s.bench.Study(r)
	if s.OnPage() {
		s.tickOnly(s.class.page.Show.ID)
	}
}

// tickOnly ticks one format and takes it in hand.
func (s *Cut) tickOnly(id string) {
	for i, f := range outlet.Formats() {
		if f.ID == id {
			clear(s.ticked)
			s.ticked[id] = true
			s.at = i
			return
		}
	}
}
