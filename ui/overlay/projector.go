package overlay

import (
	"slices"
	"strconv"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// Projector shows the draft large for a class, over everything else: the table,
// the step's number, one sentence, the sum. It has its own step and its own
// look at the table, so that the bench below is as it was when it ends.
type Projector struct {
	d     *desk.Desk
	step  int
	eye   view.Eye
	paper view.Paper
	seen  view.View
	stand bool
	turns bool // x was pressed: it lies or stands as she wants

	number string // being typed
	note   string // in place of the sum, until the next key
	part   int    // of what is said, where that is too long for its rows
	parts  int    // how many there are
	why    bool
	blank  bool
	ask    bool // a question comes before each step
	asked  bool // the question of this step stands, the step does not yet
	what   *whatIf
	sit    sitting // of the lesson that runs

	pressed string
	serial  int
}

// NewProjector begins at a step.
func NewProjector(d *desk.Desk, step int) *Projector {
	return &Projector{d: d, step: max(step, 1)}
}

// Title names it.
func (p *Projector) Title() string {
	a, _ := p.d.Keys.Find(keys.Project)
	return p.d.Trade(a.Title)
}

// Covers the whole screen, line 1 and footer too.
func (p *Projector) Covers() bool { return true }

// Typing: numbers go to Type whatever is typed else.
func (p *Projector) Typing() bool { return false }

// Hear nothing: it has no errands.
func (p *Projector) Hear(desk.Answer) desk.Ask { return desk.Ask{} }

// Raw says that the arrows and Enter are those of "what if" or of the
// cross-hair, not of the steps.
func (p *Projector) Raw() bool { return p.what != nil || p.eye.Hair }

// Blank says that the screen is empty; Wake shows it again.
func (p *Projector) Blank() bool { return p.blank }

// Wake shows the screen again.
func (p *Projector) Wake() { p.blank = false }

// Press shows the name of a pressed key; Release takes it away again, unless
// another was pressed since. Both count.
func (p *Projector) Press(words string) int {
	p.pressed = words
	p.serial++
	return p.serial
}

// Release takes the name of that key away.
func (p *Projector) Release(serial int) {
	if serial == p.serial {
		p.pressed = ""
	}
}

// Note says something in place of the sum, until the next key.
func (p *Projector) Note(words string) { p.note = words }

// Step is the number shown large: of the step, or of the page of a lesson.
func (p *Projector) Step() int {
	if _, _, ok := p.sits(); ok {
		return p.sit.page
	}
	return p.at()
}

func (p *Projector) at() int { return max(min(p.step, len(p.d.Sheet().Steps)), 1) }

// goTo shows a step; a question comes before it if she asked for that.
func (p *Projector) goTo(n int) {
	p.step = n
	p.step, p.part = p.at(), 0
	p.eye = p.eye.Fit()
	p.asked = false
	if _, ok := p.question(); ok && p.ask {
		p.asked = true
	}
}

// nobodyThere says that there are no measures to draw anybody by.
func (p *Projector) nobodyThere() bool { return p.d.Job().Body.Len() == 0 }

// question is that of the step shown.
func (p *Projector) question() (lesson.Question, bool) {
	st, ok := p.current()
	if !ok {
		return lesson.Question{}, false
	}
	return lesson.Ask(p.d.Sheet(), st.ID)
}

func (p *Projector) current() (pattern.Step, bool) {
	steps := p.d.Sheet().Steps
	if len(steps) == 0 {
		return pattern.Step{}, false
	}
	return steps[p.at()-1], true
}

// Actions are what can be done here.
func (p *Projector) Actions() []desk.Offer {
	var out []desk.Offer
	for _, a := range p.d.Keys.In(keys.Projector) {
		out = append(out, desk.Offer{ID: a.ID})
	}
	for _, id := range tableKeys {
		out = append(out, desk.Offer{ID: id, Quiet: true})
	}
	return out
}

// tableKeys are those of the table that work here too.
var tableKeys = []keys.ID{"zoom-in", "zoom-out", "fit", "zoom-newest", "pan-left", "pan-right", "pan-up", "pan-down", "stand", "dimensions", "marks", "grid", "cross"}

// alone are the actions that need nobody on the table.
var alone = []keys.ID{"show-step", keys.Accept, "blank", "show-end", "show-esc", keys.Project, keys.Back}

// Do an action.
func (p *Projector) Do(id keys.ID) desk.Ask {
	p.note = ""
	if id != "show-step" {
		p.number = ""
	}
	d := p.d
	if p.lessonDo(id) || p.nobodyThere() && !slices.Contains(alone, id) {
		return desk.Ask{}
	}
	switch id {
	case "show-next":
		return p.next()
	case "show-back":
		if p.part > 0 {
			p.part--
			break
		}
		p.goTo(p.at() - 1)
	case "show-first":
		p.goTo(1)
	case "show-last":
		p.goTo(len(d.Sheet().Steps))
	case "show-step", keys.Accept:
		if p.nobodyThere() {
			return desk.Ask{Take: sampleOpened(d, d.Tell(text.ProjectorSample))}
		}
		p.enter()
	case "show-steps":
		return desk.Ask{Open: Steps(d, p.at(), func(n int) desk.Ask { p.goTo(n); return desk.Ask{} })}
	case "show-number":
		p.note = d.Tell(text.ProjectorType)
	case "blank":
		p.blank = true
	case keys.HideNumbers:
		d.Private = !d.Private
		p.note = d.Tell(text.ProjectorShown)
		if d.Private {
			p.note = d.Tell(text.ProjectorPrivate)
		}
	case "show-why":
		p.why, p.part = !p.why, 0
	case "show-ask":
		p.ask, p.asked, p.part = !p.ask, false, 0
		p.note = d.Tell(text.DraftAskOff)
		if p.ask {
			p.note = d.Tell(text.DraftAskOn)
		}
	case "show-what-if":
		p.begin()
	case "show-end", "show-esc", keys.Project, keys.Back:
		return desk.Ask{Close: true}
	default:
		p.look(id)
	}
	return desk.Ask{}
}

// more shows the next part of what is said; false where all of it was shown.
func (p *Projector) more() bool {
	if p.what != nil || p.part+1 >= p.parts {
		return false
	}
	p.part++
	return true
}

// next shows what is still to be said, reveals what is asked, then goes on.
func (p *Projector) next() desk.Ask {
	switch n := len(p.d.Sheet().Steps); {
	case p.more():
	case p.asked:
		p.asked, p.part = false, 0
	case p.at() >= n:
		p.note = p.d.Tell(text.ProjectorDone)
	default:
		p.goTo(p.at() + 1)
	}
	return desk.Ask{}
}

// enter goes to the step whose number was typed.
func (p *Projector) enter() {
	n, err := strconv.Atoi(p.number)
	steps := len(p.d.Sheet().Steps)
	switch {
	case err != nil:
	case n < 1 || n > steps:
		p.note = p.d.Tell(text.NoStep, n, steps)
	default:
		p.goTo(n)
	}
	p.number = ""
}

// longestNumber is enough for every step there is.
const longestNumber = 3

// Type is a digit of a step's number; 0 alone shows all of the table. While
// "what if" is on, arrows and Enter are its own.
func (p *Projector) Type(k desk.Key) desk.Ask {
	switch {
	case len(k.Name) < 2:
	case p.what != nil:
		return p.move(k.Name)
	case p.eye.Hair:
		return p.point(k.Name)
	}
	p.note = ""
	for _, r := range k.Runes {
		switch {
		case r < '0' || r > '9' || k.Paste:
		case r == '0' && p.number == "":
			p.eye = p.eye.Fit()
		case len(p.number) < longestNumber:
			p.number += string(r)
		}
	}
	return desk.Ask{}
}

// look is a key of the table.
func (p *Projector) look(id keys.ID) {
	e, v := p.eye, p.seen
	switch id {
	case "zoom-in":
		e = e.Closer(v)
	case "zoom-out":
		e = e.Farther(v)
	case "fit":
		e = e.Fit()
	case "zoom-newest":
		if e.Fits() {
			e = e.On(v, v.Newest())
		} else {
			e = e.Fit()
		}
	case "pan-left":
		e = e.Panned(v, -0.25, 0)
	case "pan-right":
		e = e.Panned(v, 0.25, 0)
	case "pan-up":
		e = e.Panned(v, 0, -0.25)
	case "pan-down":
		e = e.Panned(v, 0, 0.25)
	case "stand":
		p.stand, p.turns = !p.stand, true
		e = e.Fit()
	case "dimensions":
		e.Plain = !e.Plain
	case "marks":
		e.Names = !e.Names
	case "grid":
		e.Grid = !e.Grid
	case "cross":
		p.cross()
		return
	}
	p.eye = e
}
