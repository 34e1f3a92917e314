package linear

import (
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/ui/text"
)

// fit is what comes after the fitting: alone it lists what may be seen, with a
// number it tells one sign and its cures, with an amount it keeps a cure.
// "14 1/4" is the first cure of sign 14 by 1/4, "14.2 1/4" its second.
func (r *room) fit(rest string) {
	sheet := r.d.SheetOf(r.d.Job())
	if !sheet.Complete {
		r.say(text.HearNotWhole)
		return
	}
	rest = strings.TrimSpace(rest)
	if rest == "" {
		r.listSigns()
		return
	}
	which, amount, _ := strings.Cut(rest, " ")
	number, cure, _ := strings.Cut(which, ".")
	n, err := strconv.Atoi(number)
	signs := fitting.Signs()
	if err != nil || n < 1 || n > len(signs) {
		r.say(text.HearFitWhich, len(signs))
		return
	}
	sign := signs[n-1]
	pinned, keeps := sign.Usual, strings.TrimSpace(amount) != ""
	if keeps {
		if pinned, err = measure.Read(amount, r.d.Unit()); err != nil {
			r.warn(err)
			return
		}
	}
	ways := fitting.Propose(sheet, sign, pinned)
	if !keeps {
		r.tellSign(n, sign, ways)
		return
	}
	r.keepWay(ways, cure)
}

func (r *room) listSigns() {
	place := fitting.Place("")
	for i, s := range fitting.Signs() {
		if s.Place != place {
			place = s.Place
			r.tell(r.d.Words.Pass(string(place)) + ".")
		}
		r.tell(strconv.Itoa(i+1) + ". " + r.d.Words.Pass(s.Seen))
	}
	r.say(text.HearFitHow)
}

// tellSign tells what to pin, and each cure by a usual amount.
func (r *room) tellSign(n int, sign fitting.Sign, ways []fitting.Proposal) {
	u := r.d.Unit()
	r.tell(r.d.Words.Pass(sign.Seen))
	r.tell(r.d.Words.Pass(sign.Pin))
	for i, p := range ways {
		if len(p.Changes) == 0 {
			r.say(text.HearFitBare, i+1, r.d.Words.Pass(p.Title), r.d.Words.Pass(p.Why))
		} else {
			r.say(text.HearFitCure, i+1, r.d.Words.Pass(p.Title), r.changes(p), r.d.Words.Pass(p.Why))
		}
		if !p.Possible() {
			r.say(text.NotNow, r.d.Words.Pass(p.WhyNot.In(u)))
		}
	}
	r.say(text.HearFitKeep, n, u.Tape(sign.Usual))
	if len(ways) > 1 {
		r.say(text.HearFitMore, n, u.Tape(sign.Usual))
	}
}

func (r *room) changes(p fitting.Proposal) string {
	parts := make([]string, len(p.Changes))
	for i, c := range p.Changes {
		parts[i] = r.d.Words.Pass(c.Says().In(r.d.Unit()))
	}
	return strings.Join(parts, ", ")
}

// keepWay keeps one cure, the first that is possible where none is named.
func (r *room) keepWay(ways []fitting.Proposal, cure string) {
	at := 0
	if cure != "" {
		n, err := strconv.Atoi(cure)
		if err != nil || n < 1 || n > len(ways) {
			r.say(text.HearFitCures, len(ways))
			return
		}
		at = n - 1
	} else {
		for at < len(ways)-1 && !ways[at].Possible() {
			at++
		}
	}
	p, u := ways[at], r.d.Unit()
	if !p.Possible() {
		r.say(text.NotNow, r.d.Words.Pass(p.WhyNot.In(u)))
		return
	}
	t := r.d.Now()
	job := p.Keep(pattern.Date{Year: t.Year(), Month: int(t.Month()), Day: t.Day()})
	r.change(job, r.d.Words.Say(text.FitKept, r.changes(p)))
	for _, w := range p.Warns {
		r.say(text.FitWarns, r.d.Words.Pass(w.In(u)))
	}
}
