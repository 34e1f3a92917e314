package linear

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// told are the findings in the order told: what fails, what is advised; what
// passes is only counted.
func (r *room) told() []pattern.Finding {
	var out []pattern.Finding
	for _, v := range []pattern.Verdict{pattern.Fail, pattern.Advise} {
		for _, f := range r.d.Sheet().Findings {
			if f.Verdict == v {
				out = append(out, f)
			}
		}
	}
	return out
}

func (r *room) countTrue() int { return len(r.told()) }

func (r *room) enterTrue() {
	r.sayTrue()
	r.finding = 0
	if len(r.told()) > 0 {
		r.tellFinding()
	}
}

// sayTrue counts the verdicts.
func (r *room) sayTrue() {
	s := r.d.Sheet()
	r.tell(sentence(r.d.Words.Say(text.TrueTally, s.Count(pattern.Pass), s.Count(pattern.Advise), s.Count(pattern.Fail), s.Count(pattern.Skip))))
	r.refused()
	if len(r.told()) == 0 && s.Complete {
		r.say(text.HearAllPass)
	}
}

var verdicts = map[pattern.Verdict]text.ID{pattern.Pass: text.TruePass, pattern.Advise: text.TrueAdvise, pattern.Fail: text.TrueFail, pattern.Skip: text.TrueSkip}

func (r *room) findingLine(f pattern.Finding) {
	r.say(text.HearFinding, r.d.Words.Pass(f.Title), r.d.Words.Say(verdicts[f.Verdict]), sentence(capital(r.d.Words.Pass(f.Says.In(r.d.Unit())))))
}

// tellFinding says two figures, where, and the cure.
func (r *room) tellFinding() {
	all := r.told()
	if len(all) == 0 {
		r.say(text.HearAllPass)
		return
	}
	r.finding = min(r.finding, len(all)-1)
	f := all[r.finding]
	r.tellOne(f)
	if f.Try != nil {
		r.say(text.HearCureHow)
	}
}

// tellOne tells a finding: two figures, where, and the cure.
func (r *room) tellOne(f pattern.Finding) {
	r.findingLine(f)
	if f.Verdict == pattern.Pass || f.Verdict == pattern.Skip {
		return
	}
	if f.Got != f.Want {
		r.say(text.HearGot, r.quantity(f, f.Got), r.quantity(f, f.Want))
	}
	if f.Where.Piece != "" {
		r.say(text.HearPlace, strings.ToLower(r.pieceName(f.Where.Piece)), r.at(f.Where.Piece, f.Where.At.X, f.Where.At.Y))
	}
	cure := strings.TrimSuffix(r.d.Words.Pass(f.Cure.In(r.d.Unit())), ".")
	if cure != "" {
		r.say(text.HearCure, cure)
	}
}

func (r *room) quantity(f pattern.Finding, x float64) string {
	switch f.In {
	case pattern.InDegrees:
		return r.d.Words.Say(text.HearDegrees, strconv.FormatFloat(x, 'f', 0, 64))
	case pattern.InCount:
		return strconv.FormatFloat(x, 'g', 4, 64)
	}
	return r.d.Unit().Say(measure.Length(x))
}

func (r *room) whereTrue(string) {
	all := r.told()
	if len(all) == 0 {
		r.say(text.HearAllPass)
		return
	}
	f := all[min(r.finding, len(all)-1)]
	if f.Where.Piece != "" {
		r.say(text.HearPlace, strings.ToLower(r.pieceName(f.Where.Piece)), r.at(f.Where.Piece, f.Where.At.X, f.Where.At.Y))
	}
}

func (r *room) hintTrue() { r.tellFinding() }

func (r *room) moveTrue(by int) {
	n := len(r.told())
	if n == 0 {
		r.say(text.HearAllPass)
		return
	}
	r.end(r.finding+by, n, "lay", r.jumpTrue)
}

func (r *room) jumpTrue(n int) bool {
	r.finding = n - 1
	r.tellFinding()
	return true
}

func (r *room) listTrue() {
	for _, f := range r.told() {
		r.findingLine(f)
	}
	for _, v := range []pattern.Verdict{pattern.Pass, pattern.Skip} {
		for _, f := range r.d.Sheet().Findings {
			if f.Verdict == v {
				r.findingLine(f)
			}
		}
	}
}

// cure makes the change that the finding proposes and says what became of it.
func (r *room) cure(string) {
	all := r.told()
	if len(all) == 0 {
		r.say(text.HearAllPass)
		return
	}
	f := all[min(r.finding, len(all)-1)]
	cure := strings.TrimSuffix(r.d.Words.Pass(f.Cure.In(r.d.Unit())), ".")
	if f.Try == nil {
		r.say(text.HearNoCure, sentence(cure))
		return
	}
	if !r.change(r.d.Job().WithStyle(pattern.ChoiceID(f.Input), *f.Try), r.d.Words.Say(text.TrueTried, cure)) {
		return
	}
	for _, g := range r.d.Sheet().Findings {
		if g.Check == f.Check && g.Code == f.Code && g.Verdict != pattern.Pass {
			r.say(text.TrueStill, r.quantity(g, g.Got))
			r.sayTrue()
			return
		}
	}
	r.say(text.TrueCured, r.d.Words.Pass(f.Title))
	r.sayTrue()
}
