package fitting

import (
	"reflect"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Proposal is one way to cure what was seen, worked out on her draft: the
// inputs old and new, and the draft that comes of them.
type Proposal struct {
	Seen    string // the sign, with what was pinned
	Title   string
	Why     string
	Changes []Change
	Job     pattern.Job    // with the changes in it, not yet written down
	Sheet   *pattern.Sheet // that job drafted
	WhyNot  measure.Sentence
	Warns   []measure.Sentence // it can be done, but
}

// Possible says whether it can be done.
func (p Proposal) Possible() bool { return p.WhyNot.IsEmpty() }

// Propose works out every way of a sign by what was pinned.
func Propose(s *pattern.Sheet, sign Sign, pinned measure.Length) []Proposal {
	out := make([]Proposal, len(sign.Ways))
	for i, w := range sign.Ways {
		out[i] = propose(s, sign, w, pinned)
	}
	return out
}

func propose(s *pattern.Sheet, sign Sign, w Way, pinned measure.Length) Proposal {
	p := Proposal{Seen: seen(sign, w, pinned, s.Job.Unit), Title: w.Title, Why: w.Why}
	for _, m := range w.Moves {
		c, stays, whyNot := m.on(s, pinned)
		if !whyNot.IsEmpty() {
			p.WhyNot = whyNot
			return p
		}
		if !stays {
			p.Changes = append(p.Changes, c)
		}
	}
	p.work(s)
	return p
}

// seen is the sign in words with the amount, as it is written down.
func seen(sign Sign, w Way, pinned measure.Length, u measure.Unit) string {
	for _, m := range w.Moves {
		if m.Times != 0 || m.PerIn != 0 {
			return strings.TrimSuffix(sign.Seen, ".") + ": " + u.Say(pinned) + "."
		}
	}
	return sign.Seen
}

// on is what a move does to its input.
func (m Move) on(s *pattern.Sheet, pinned measure.Length) (c Change, stays bool, whyNot measure.Sentence) {
	c = Change{Input: m.Input, Title: Title(s.Garment, m.Input)}
	if !IsBody(m.Input) {
		set, ok := s.Setting(pattern.ChoiceID(m.Input))
		switch {
		case !ok:
			return c, false, measure.Tell("this garment has no choice \"" + c.Title + "\"")
		case !set.Used:
			return c, false, measure.Tell("this method has no choice \"" + c.Title + "\"")
		case m.Only && !set.Chosen:
			return c, true, measure.Sentence{}
		}
	}
	old, ok := present(s, m.Input)
	if !ok {
		return c, false, measure.Tell("\"" + c.Title + "\" is not known yet")
	}
	c.Old, c.New, c.Usual = old, m.moved(old, pinned), !own(s.Job, m.Input)
	switch {
	case same(c.Old, c.New):
		return c, false, measure.Tell("\""+c.Title+"\" is {} already", shown(c.Old, m.Input))
	case c.New.Kind == pattern.KindLength && c.New.Length < 0:
		return c, false, measure.Tell("\""+c.Title+"\" is {}; there is not so much to take off", old.Length)
	}
	return c, false, measure.Sentence{}
}

// moved is the value that a move makes of another.
func (m Move) moved(v pattern.Value, pinned measure.Length) pattern.Value {
	switch {
	case m.Option != "":
		return pattern.PickValue(m.Option)
	case m.Nought:
		v.Length, v.Number = 0, 0
	case v.Kind == pattern.KindPercent:
		v.Number = max(0, min(100, float64(int(v.Number+m.PerIn*pinned.Inches()+0.5))))
	default:
		v.Length += measure.Length(m.Times * pinned.MM())
		if near(v.Length, 0) {
			v.Length = 0
		}
	}
	return v
}

// shown is a value as a slot of a sentence takes it.
func shown(v pattern.Value, input string) any {
	if v.Kind == pattern.KindLength {
		return v.Length
	}
	return words(input, v)
}

// work drafts what a proposal comes to, and says what speaks against it.
func (p *Proposal) work(s *pattern.Sheet) {
	p.Job = s.Job
	for _, c := range p.Changes {
		p.Job = put(p.Job, c.Input, c.New)
		if IsBody(c.Input) && measure.Check(measure.ID(c.Input), c.New.Length) != nil {
			p.WhyNot = measure.Tell("\""+c.Title+"\" {} is more than a body can have", c.New.Length)
			return
		}
	}
	p.Sheet = workroom.Draft(p.Job)
	switch {
	case s.Complete && !p.Sheet.Complete && len(p.Sheet.Refused) > 0:
		r := p.Sheet.Refused[0]
		p.WhyNot = measure.Tell("then it could not be drafted: {}", r.Says)
		return
	case s.Complete && reflect.DeepEqual(s.Marks, p.Sheet.Marks):
		p.WhyNot = measure.Tell("on this draft it would move nothing")
		return
	}
	for _, c := range p.Changes {
		set, ok := p.Sheet.Setting(pattern.ChoiceID(c.Input))
		if ok && c.New.Kind == pattern.KindLength && set.Low < set.High && (c.New.Length < set.Low-hair || c.New.Length > set.High+hair) {
			p.Warns = append(p.Warns, measure.Tell(c.Title+" {} lies outside the usual {} to {}.", c.New.Length, set.Low, set.High))
		}
	}
	p.Warns = append(p.Warns, worse(s, p.Sheet)...)
}

// worse are the findings that fail or advise now and did not before.
func worse(was, now *pattern.Sheet) []measure.Sentence {
	bad := map[string]bool{}
	for _, f := range was.Findings {
		if f.Verdict == pattern.Fail || f.Verdict == pattern.Advise {
			bad[f.Check+" "+f.Code] = true
		}
	}
	var out []measure.Sentence
	for _, f := range now.Findings {
		if (f.Verdict == pattern.Fail || f.Verdict == pattern.Advise) && !bad[f.Check+" "+f.Code] {
			out = append(out, f.Says)
		}
	}
	return out
}
