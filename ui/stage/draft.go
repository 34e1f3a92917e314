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
	why    bool
	first  bool            // a question comes before each step
	hidden bool            // the step is asked about and not shown yet
	heard  []string        // what came of the question of this step
	done   map[string]bool // the steps whose questions are settled
	blank  *pattern.Sheet  // the table before the first step
	terms  terms
	part   float64 // how much of the newest lines is drawn yet; 0: all
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

// Stand is the step she went to, however many there are now: it asks for no
// draft.
func (s *Draft) Stand() int { return max(s.step, 1) }

// GoTo shows a step.
func (s *Draft) GoTo(n int) {
	if n != s.step {
		s.step, s.scroll, s.eye = n, 0, s.eye.Fit()
		s.hidden, s.heard = false, nil
		if s.ask.open {
			s.askClose()
		}
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

// Typing: the cross-hair, what if and a question take letters.
func (s *Draft) Typing() bool { return s.eye.Hair || s.try.open || s.ask.open }

// Actions are what can be done here.
func (s *Draft) Actions() []desk.Offer {
	switch {
	case s.ask.open:
		offers, _ := s.Offers()
		return offers
	case s.try.open:
		return s.tryOffers()
	case s.eye.Hair:
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
	if t, ok := s.turned(); ok && t.Drawn {
		out = append([]desk.Offer{{ID: keys.Accept, Title: s.d.Tell(text.TurnKeep)}}, out...)
	}
	try := quiet("what-if")
	if len(s.d.Sheet().Figures) == 0 {
		try.WhyNot = s.d.Tell(text.WhatIfNothing, waits(s.d, s.d.Sheet()))
	}
	return append(append(out, offer("ask-first"), quiet("why"), quiet("steps"), try, s.fitOffer("draft-fitting")), table...)
}

// Do an action.
func (s *Draft) Do(id keys.ID) desk.Ask {
	switch {
	case s.ask.open:
		return s.AskDo(id)
	case s.try.open:
		ask, _ := s.tryDo(id)
		return ask
	case s.eye.Hair:
		ask, _ := s.tableDo(id)
		return ask
	}
	n := len(s.d.Sheet().Steps)
	switch id {
	case "step-next":
		return s.next()
	case "step-back":
		if s.at() <= 1 {
			return desk.Ask{Say: s.d.Tell(text.DraftFirst)}
		}
		s.GoTo(s.at() - 1)
		return desk.Ask{}
	case keys.Accept:
		return s.turnKeep()
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
	case "ask-first":
		return s.askFirst()
	case "what-if":
		return s.whatIf()
	case "draft-fitting":
		return desk.Ask{Do: keys.Fitting}
	case keys.FieldNext, keys.FieldBack:
		s.swap()
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

// next draws the next step, or asks about it first.
func (s *Draft) next() desk.Ask {
	if s.at() >= len(s.d.Sheet().Steps) {
		return desk.Ask{Say: s.d.Tell(text.DraftDone)}
	}
	s.GoTo(s.at() + 1)
	if s.question() {
		return desk.Ask{}
	}
	return desk.Ask{Say: s.marked()}
}

// Type is a letter at a question, at what if or at the cross-hair.
func (s *Draft) Type(k desk.Key) desk.Ask {
	if s.ask.open {
		return s.AskType(k)
	}
	if s.try.open && s.OnPage() && k.Name == " " {
		return s.nextPage()
	}
	return s.hairType(k)
}

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
	if s.try.open && !s.ask.open {
		return s.compose(r, 10, s.tryWords, s.scene(r))
	}
	if s.veiled() { // the lines, not yet their lengths
		defer func(plain bool) { s.eye.Plain = plain }(s.eye.Plain)
		s.eye.Plain = true
	}
	return s.compose(r, 10, s.words, s.scene(r))
}

func (s *Draft) scene(r desk.Rect) view.Scene {
	sheet := s.d.Sheet()
	out := view.Scene{Sheet: sheet, Step: s.at(), Part: s.part}
	st, ok := s.current()
	if !ok {
		return out
	}
	if s.try.open {
		piece := pattern.PieceID("")
		if r.Rows < bothRows {
			piece = s.trySide(st)
		}
		return s.tryScene(piece)
	}
	if t, ok := s.turned(); ok {
		out.Sheet, out.Step, out.Piece = t.Sheet, 0, pattern.Front
		switch {
		case s.ask.open && len(s.class.page.OwnWords()) == 0: // how wide it opens is what is asked
			out.Sheet = t.Side
		case t.Place != "side" && t.Drawn:
			out.Old = t.Side
		}
		return out
	}
	if old, _ := s.other(); old != nil {
		out.Old, out.Step = old, 0
		if r.Rows < bothRows {
			out.Piece = pattern.Front
		}
		return out
	}
	if s.hidden {
		if out.Step--; out.Step == 0 {
			out.Step, out.Sheet = 1, s.blankOf(sheet)
		}
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
	if t, ok := s.turned(); ok {
		title = s.turnTitle(t, cols)
	}
	if s.veiled() {
		return append([]string{""}, title...), strings.Join(title, "\n")
	}
	body := s.body(st, cols)
	out := append(append([]string{""}, title...), "")
	if rows < 8 {
		out = title
	}
	room := max(rows-len(out), 1)
	s.scroll = max(0, min(s.scroll, len(body)-room))
	out = append(out, body[s.scroll:]...)
	return append(out, s.list(rows-len(out), cols)...), s.caption(st, cols)
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
	changed := Changed(d)
	from, to := window(s.at()-1, len(steps), rows-2)
	for i := from; i < to; i++ {
		st := steps[i]
		line := marker(i == s.at()-1) + desk.Fit(strconv.Itoa(st.Number), 4) + desk.Fit(pieceTitle(d, st.Piece), 16) + d.Trade(st.Title)
		if changed[st.ID] {
			line += "   " + d.Tell(text.DraftChanged)
		}
		role := theme.Muted
		if i == s.at()-1 {
			role = theme.Title
		}
		out = append(out, d.Paint(role, desk.Brief(line, cols)))
	}
	return out
}

// caption is what cannot be done without while the table has the screen: the
// title, what to do and the sum.
func (s *Draft) caption(st pattern.Step, cols int) string {
	const label, most = 5, 3
	if t, ok := s.turned(); ok {
		lines := s.turnBody(t, 0, cols)
		return strings.Join(append(s.turnTitle(t, cols), lines[:min(len(lines), most)]...), "\n")
	}
	if old, method := s.other(); old != nil {
		lines := s.compared(old, method, 0, cols)
		return strings.Join(lines[:min(len(lines), most+1)], "\n")
	}
	out := s.title(st, cols)
	do := labelled(s.d, s.d.Tell(text.DraftDo), label, cols, s.short(st), theme.Text)
	if len(s.heard) > 0 {
		do = nil
		for _, l := range s.heard {
			do = append(do, labelled(s.d, "", label, cols, l, theme.Ok)...)
		}
	}
	out = append(out, do[:min(len(do), most)]...)
	if sum := st.Sum.Sum(s.d.Unit()); sum != "" {
		out = append(out, labelled(s.d, s.d.Tell(text.DraftSum), label, cols, s.d.Trade(sum)+" "+s.d.Unit().String(), theme.Title)...)
	}
	return strings.Join(out, "\n")
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
	for _, l := range s.heard {
		out = append(out, labelled(d, "", label, cols, l, theme.Ok)...)
	}
	if t, ok := s.turned(); ok {
		return s.turnBody(t, label, cols)
	}
	if old, method := s.other(); old != nil {
		return s.compared(old, method, label, cols)
	}
	words := map[string]bool{}
	for _, w := range s.terms.first(d.Sheet(), st.ID) {
		words[w] = true
	}
	if !st.Drawn {
		out = append(out, labelled(d, d.Tell(text.DraftDo), label, cols, capital(d.Trade(st.Waits.In(u)))+".", theme.Warn)...)
	} else {
		out = append(out, labelledTerms(d, d.Tell(text.DraftDo), label, cols, d.Trade(st.Do.In(u)), theme.Text, words)...)
	}
	if sum := st.Sum.Sum(u); sum != "" {
		out = append(out, labelled(d, d.Tell(text.DraftSum), label, cols, d.Trade(sum)+" "+u.String(), theme.Title)...)
	}
	if why := st.Why.In(u); why != "" {
		out = append(out, labelledTerms(d, d.Tell(text.DraftWhy), label, cols, d.Trade(why), theme.Text, words)...)
	}
	if s.why {
		if rule := st.Rule.In(u); rule != "" {
			out = append(out, labelled(d, "", label, cols, d.Trade(rule), theme.Muted)...)
		}
	}
	if slip := st.Slip.In(u); slip != "" {
		out = append(out, labelledTerms(d, d.Tell(text.DraftSlip), label, cols, d.Trade(slip), theme.Muted, words)...)
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
