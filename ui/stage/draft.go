package stage

import (
	"strconv"
	"strings"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// Draft goes through the draft step by step: one action, one new thing on the
// cloth.
type Draft struct {
	bench
	step   int // the step shown; 0: none yet
	scroll int
	why    bool
}

// NewDraft is the third stage.
func NewDraft(d *desk.Desk) *Draft { return &Draft{bench: bench{d: d, table: true}} }

// Title names the stage.
func (s *Draft) Title() string { return s.d.Tell(text.StageDraft) }

// Fact is the step and how many there are; before the first, how many.
func (s *Draft) Fact() string {
	n := len(s.d.Sheet().Steps)
	switch {
	case n == 0:
		return ""
	case s.step == 0:
		return strconv.Itoa(n)
	}
	return strconv.Itoa(s.at()) + "/" + strconv.Itoa(n)
}

// at is the step shown; there is always one if there are any.
func (s *Draft) at() int {
	n := len(s.d.Sheet().Steps)
	return min(max(s.step, 1), n)
}

// Visit begins with the first step.
func (s *Draft) Visit() { s.step = s.at() }

// Step is the step shown, for the list of steps and the projector.
func (s *Draft) Step() int { return s.at() }

// GoTo shows a step.
func (s *Draft) GoTo(n int) {
	if n != s.step {
		s.step, s.scroll, s.eye = n, 0, s.eye.Fit()
	}
}

// current is the step shown.
func (s *Draft) current() (pattern.Step, bool) {
	steps := s.d.Sheet().Steps
	if len(steps) == 0 {
		return pattern.Step{}, false
	}
	return steps[s.at()-1], true
}

// Typing: only the cross-hair takes letters here.
func (s *Draft) Typing() bool { return s.eye.Hair }

// Actions are what can be done here.
func (s *Draft) Actions() []desk.Offer {
	if s.eye.Hair {
		return s.hairOffers()
	}
	n := len(s.d.Sheet().Steps)
	next, back := offer("step-next"), offer("step-back")
	if s.at() >= n {
		next.WhyNot = s.d.Tell(text.DraftDone)
	}
	if s.at() <= 1 {
		back.WhyNot = s.d.Tell(text.DraftFirst)
	}
	out := []desk.Offer{next, back, quiet("step-first"), quiet("step-last"), quiet("words-up"), quiet("words-down")}
	table := s.tableOffers()
	for i, o := range table {
		switch o.ID {
		case "zoom-newest":
			o.Quiet = false
			out = append(out, o)
		case "zoom-in":
			table[i].Quiet = true
		}
	}
	return append(append(out, offer("why"), offer("steps")), table...)
}

// Do an action.
func (s *Draft) Do(id keys.ID) desk.Ask {
	if s.eye.Hair {
		ask, _ := s.tableDo(id)
		return ask
	}
	n := len(s.d.Sheet().Steps)
	switch id {
	case "step-next":
		if s.at() >= n {
			return desk.Ask{Say: s.d.Tell(text.DraftDone)}
		}
		s.GoTo(s.at() + 1)
		return desk.Ask{Say: s.marked()}
	case "step-back":
		if s.at() <= 1 {
			return desk.Ask{Say: s.d.Tell(text.DraftFirst)}
		}
		s.GoTo(s.at() - 1)
		return desk.Ask{}
	case "step-first":
		s.GoTo(1)
	case "step-last":
		s.GoTo(n)
	case "words-up":
		s.scroll = max(0, s.scroll-1)
	case "words-down":
		s.scroll++
	case "why":
		s.why = !s.why
		s.scroll = 0
		if st, ok := s.current(); ok && s.why && st.Rule.IsEmpty() {
			return desk.Ask{Say: s.d.Tell(text.NoRule)}
		}
	case keys.FieldNext, keys.FieldBack:
		s.swap()
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

// Type is the cross-hair's.
func (s *Draft) Type(k desk.Key) desk.Ask { return s.hairType(k) }

// Hear nothing: this stage has no errands.
func (s *Draft) Hear(desk.Answer) desk.Ask { return desk.Ask{} }

// marked says what the step has marked.
func (s *Draft) marked() string {
	st, ok := s.current()
	if !ok || len(st.Marks) == 0 {
		return ""
	}
	var names []string
	for i, m := range st.Marks {
		if i == 4 {
			break
		}
		names = append(names, name(m))
	}
	return s.d.Tell(text.DraftMarked, strings.Join(names, ", "))
}

// View is the step above the cloth.
func (s *Draft) View(r desk.Rect) []string {
	s.Visit()
	return s.compose(r, 10, s.words, s.scene(r))
}

func (s *Draft) scene(r desk.Rect) view.Scene {
	sheet := s.d.Sheet()
	out := view.Scene{Sheet: sheet, Step: s.at()}
	st, ok := s.current()
	if !ok {
		return out
	}
	last := s.at() >= len(sheet.Steps)
	if !last && (r.Rows < bothRows || !started(sheet, s.at())) {
		out.Piece = st.Piece
	}
	return out
}

// started says that front and back both have marks at that step.
func started(s *pattern.Sheet, k int) bool {
	seen := map[pattern.PieceID]bool{}
	for i := range s.Marks {
		if s.Marks[i].AliveAt(k) {
			seen[s.Marks[i].Piece] = true
		}
	}
	return seen[pattern.Front] && seen[pattern.Back]
}

// words say what to do, the sum, why, and the slip.
func (s *Draft) words(cols, rows int) ([]string, string) {
	d := s.d
	st, ok := s.current()
	if !ok {
		begin := d.Tell(text.DraftEmpty, waits(d, d.Sheet()))
		return []string{"", " " + begin}, " " + begin
	}
	title := s.title(st, cols)
	body := s.body(st, cols)
	out := append(append([]string{""}, title...), "")
	if rows < 8 {
		out = title
	}
	room := max(rows-len(out), 1)
	s.scroll = max(0, min(s.scroll, len(body)-room))
	out = append(out, body[s.scroll:]...)
	return append(out, s.list(rows-len(out), cols)...), title[0] + "   " + s.short(st)
}

// title is the step's number, piece and name, on two lines where one is too
// narrow.
func (s *Draft) title(st pattern.Step, cols int) []string {
	d := s.d
	head := " " + d.Paint(theme.Accent, d.Tell(text.DraftStep, st.Number, len(d.Sheet().Steps))) + "   " + pieceTitle(d, st.Piece)
	name := d.Paint(theme.Title, d.Trade(st.Title))
	if !st.Drawn {
		name += "   " + d.Paint(theme.Muted, d.Tell(text.DraftNotYet))
	}
	if one := head + "   " + name; desk.Clip(one, cols) == one {
		return []string{one}
	}
	return []string{head, " " + name}
}

// leastList is how many rows must be free before the list of steps fills them.
const leastList = 9

// list shows the steps round the present one in the rows that are left.
func (s *Draft) list(rows, cols int) []string {
	d, steps := s.d, s.d.Sheet().Steps
	if rows < leastList {
		return nil
	}
	out := []string{"", ""}
	from, to := window(s.at()-1, len(steps), rows-2)
	for i := from; i < to; i++ {
		st := steps[i]
		line := marker(i == s.at()-1) + desk.Fit(strconv.Itoa(st.Number), 4) + desk.Fit(pieceTitle(d, st.Piece), 16) + d.Trade(st.Title)
		role := theme.Muted
		if i == s.at()-1 {
			role = theme.Title
		}
		out = append(out, d.Paint(role, desk.Clip(line, cols)))
	}
	return out
}

func (s *Draft) short(st pattern.Step) string {
	if !st.Drawn {
		return s.d.Trade(st.Waits.In(s.d.Unit()))
	}
	return s.d.Trade(st.Do.In(s.d.Unit()))
}

// body are the labelled lines of a step.
func (s *Draft) body(st pattern.Step, cols int) []string {
	d, u := s.d, s.d.Unit()
	const label = 5
	var out []string
	if !st.Drawn {
		out = append(out, labelled(d, d.Tell(text.DraftDo), label, cols, capital(d.Trade(st.Waits.In(u)))+".", theme.Warn)...)
	} else {
		out = append(out, labelled(d, d.Tell(text.DraftDo), label, cols, d.Trade(st.Do.In(u)), theme.Text)...)
	}
	if sum := st.Sum.Sum(u); sum != "" {
		out = append(out, labelled(d, d.Tell(text.DraftSum), label, cols, d.Trade(sum)+" "+u.String(), theme.Title)...)
	}
	if why := st.Why.In(u); why != "" {
		out = append(out, labelled(d, d.Tell(text.DraftWhy), label, cols, d.Trade(why), theme.Text)...)
	}
	if s.why {
		if rule := st.Rule.In(u); rule != "" {
			out = append(out, labelled(d, "", label, cols, d.Trade(rule), theme.Muted)...)
		}
	}
	if slip := st.Slip.In(u); slip != "" {
		out = append(out, labelled(d, d.Tell(text.DraftSlip), label, cols, d.Trade(slip), theme.Muted)...)
	}
	return out
}

// pieceTitle is the name of a piece for people.
func pieceTitle(d *desk.Desk, id pattern.PieceID) string {
	if p, ok := d.Sheet().Piece(id); ok && p.Title != "" {
		return d.Trade(p.Title)
	}
	return capital(name(string(id)))
}
