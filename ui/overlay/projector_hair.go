package overlay

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// Steps of the cross-hair, in dots.
const (
	hairStep = 2
	hairFar  = 12
)

// cross shows the cross-hair in the middle of the table, or puts it away.
func (p *Projector) cross() {
	p.eye.Hair = !p.eye.Hair
	p.eye.Hairs = p.seen.Middle()
}

// point is a key while the cross-hair is shown: arrows move it, Enter holds it
// against the question that stands, Esc ends it.
func (p *Projector) point(key string) desk.Ask {
	step := float64(hairStep)
	if strings.HasPrefix(key, "shift+") {
		step = hairFar
	}
	right, down := 0.0, 0.0
	switch strings.TrimPrefix(key, "shift+") {
	case "left":
		right = -step
	case "right":
		right = step
	case "up":
		down = -step
	case "down":
		down = step
	case "enter":
		p.answer()
		return desk.Ask{}
	case "esc":
		p.eye.Hair = false
		return desk.Ask{}
	}
	p.note = ""
	p.eye = p.eye.Stepped(p.seen, right, down)
	return desk.Ask{}
}

// hairSays is where the cross-hair stands, by tape.
func (p *Projector) hairSays() string {
	at, ok := p.seen.Under(p.eye.Hairs)
	if !ok {
		return ""
	}
	u := p.d.Unit()
	return p.d.Tell(text.CrossAt, u.Tape(measure.Length(at.At.X)), u.Tape(measure.Length(at.At.Y)))
}

// standing is the question that stands before the class.
func (p *Projector) standing() (lesson.Question, bool) {
	if _, page, ok := p.sits(); ok {
		q, asks := page.Question(p.d.Sheet())
		return q, asks && p.sit.asked
	}
	q, ok := p.question()
	return q, ok && p.asked
}

// answer judges the place that the class pointed at.
func (p *Projector) answer() {
	q, ok := p.standing()
	at, there := p.seen.Under(p.eye.Hairs)
	if !ok || !there || q.Mark == "" {
		return
	}
	across, down := p.seen.Cell()
	halfX, halfY := down/2, across/2 // lying: out is down the screen
	if p.stand {
		halfX, halfY = halfY, halfX
	}
	v := q.Within(measure.Length(halfX), measure.Length(halfY)).JudgePlace(measure.Length(at.At.X), measure.Length(at.At.Y))
	v.Why = measure.Sentence{} // it stands above, once the answer is shown
	says := v.Say(p.d.Words, p.d.Unit())
	if v.Outcome == lesson.Missed {
		says = p.d.Tell(text.ProjectorMiss, p.hairSays())
	}
	p.note = p.d.Plain(says)
	if v.Closed() {
		p.asked, p.sit.asked, p.eye.Hair = false, false, false
	}
}
