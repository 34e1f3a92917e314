package shell

import (
	"fmt"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
)

func (f *fit) listSigns() error {
	if f.w.json {
		doc := scale{f.w.jsonUnit()}.document()
		all := list{}
		for _, s := range fitting.Signs() {
			all = append(all, object{{"id", s.ID}, {"place", string(s.Place)}, {"seen", s.Seen}, {"pin", s.Pin}, {"ways", len(s.Ways)}})
		}
		doc.add("signs", all)
		f.w.print(doc.text())
		return nil
	}
	var p page
	for i, place := range fitting.Places() {
		if i > 0 {
			p.line()
		}
		p.line(string(place))
		var rows [][]string
		for _, s := range fitting.Signs() {
			if s.Place == place {
				rows = append(rows, []string{"  " + s.ID, s.Seen})
			}
		}
		p.table(rows)
	}
	f.w.print(p.String())
	return nil
}

// waysText is every cure of a sign, numbered.
func (f *fit) waysText(sign fitting.Sign, ways []fitting.Proposal) string {
	var p page
	p.para("", sign.Pin)
	for i, way := range ways {
		p.line()
		if i == 0 {
			p.para("", way.Seen)
			p.line()
		}
		f.way1(&p, strconv.Itoa(i+1)+"  ", way)
	}
	return p.String()
}

func (f *fit) proposalText(way fitting.Proposal) string {
	var p page
	p.para("", way.Seen)
	p.line()
	f.way1(&p, "", way)
	return p.String()
}

func (f *fit) way1(p *page, label string, way fitting.Proposal) {
	in := strings.Repeat(" ", len(label))
	p.line(label, way.Title)
	for _, c := range way.Changes {
		p.line(in, f.change(c))
	}
	p.para(in, way.Why)
	if !way.Possible() {
		p.para(in, "Not now: "+way.WhyNot.In(f.u)+".")
	}
	for _, warn := range way.Warns {
		p.para(in+"! ", warn.In(f.u))
	}
}

// change is a change in words, with the unit behind lengths.
func (f *fit) change(c fitting.Change) string {
	says := c.Says().In(f.u)
	if c.New.Kind == pattern.KindLength {
		says += " " + f.u.String()
	}
	return says
}

func (f *fit) waysDocument(ways []fitting.Proposal) object {
	s := scale{f.w.jsonUnit()}
	doc := s.document()
	all := list{}
	for i, way := range ways {
		warns := list{}
		for _, x := range way.Warns {
			warns = append(warns, x.In(s.unit))
		}
		all = append(all, object{
			{"number", i + 1},
			{"seen", way.Seen},
			{"title", way.Title},
			{"why", way.Why},
			{"possible", way.Possible()},
			{"why_not", way.WhyNot.In(s.unit)},
			{"changes", s.changes(way.Changes)},
			{"warns", warns},
		})
	}
	doc.add("ways", all)
	return doc
}

func (s scale) changes(all []fitting.Change) list {
	out := list{}
	for _, c := range all {
		out = append(out, object{{"input", c.Input}, {"title", c.Title}, {"old", s.value(c.Old)}, {"new", s.value(c.New)}, {"says", c.Says().In(s.unit)}})
	}
	return out
}

// list is the log of the session, and what has to be asked of it.
func (f *fit) list() error {
	if f.w.json {
		f.w.print(f.logDocument().text())
		return nil
	}
	f.w.print(f.logText(f.s.Job))
	return nil
}

func (f *fit) logText(job pattern.Job) string {
	var p page
	log := fitting.Log(job)
	if len(log) == 0 {
		p.line("No alteration is written down. chalkfold fit FILE --signs lists what may be seen.")
		return p.String()
	}
	for i, e := range log {
		if i > 0 {
			p.line()
		}
		p.line(fmt.Sprintf("%-3d", e.Number), strings.Join(nonEmpty(dateText(e.Kept.Date), e.State.String()), "  "))
		p.para("   ", plain(e.Kept.Seen))
		p.para("   ", e.Says(f.u))
		p.para("   ", plain(e.Kept.Why))
		for _, ask := range e.Asks() {
			p.para("   ? ", ask.In(f.u))
			p.para("     ", fmt.Sprintf("--settle %d leaves it, --again %d alters it again.", e.Number, e.Number))
		}
	}
	return p.String()
}

func (f *fit) logDocument() object {
	s := scale{f.w.jsonUnit()}
	doc := s.document()
	all := list{}
	for _, e := range fitting.Log(f.s.Job) {
		changes, asks := list{}, list{}
		for _, c := range e.Changes {
			o := object{{"input", c.Input}, {"title", c.Title}, {"written", c.By}, {"state", c.State.String()}}
			if c.State != fitting.Noted {
				o = append(o, field{"old", s.value(c.Old)}, field{"new", s.value(c.New)})
			}
			if c.Known {
				o = append(o, field{"now", s.value(c.Now)})
			}
			changes = append(changes, o)
		}
		for _, a := range e.Asks() {
			asks = append(asks, a.In(s.unit))
		}
		all = append(all, object{
			{"number", e.Number},
			{"date", dateText(e.Kept.Date)},
			{"state", e.State.String()},
			{"seen", e.Kept.Seen},
			{"why", e.Kept.Why},
			{"changes", changes},
			{"asks", asks},
		})
	}
	doc.add("alterations", all)
	return doc
}

func dateText(d pattern.Date) string {
	if d.IsZero() {
		return ""
	}
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day)
}

// overMonths is her measurements then and now: a table, then sentences.
func (f *fit) overMonths() error {
	job := f.s.Job
	months := fitting.Then(job)
	names := make([]string, len(job.Earlier))
	for i, e := range job.Earlier {
		if names[i] = dateText(e.Measured); names[i] == "" {
			names[i] = "an earlier set"
		}
	}
	if f.w.json {
		f.w.print(monthsDocument(job, months, names, scale{f.w.jsonUnit()}).text())
		return nil
	}
	if len(names) == 0 {
		f.w.print("There is one set of measurements. --new-set puts it away and begins the next.\n")
		return nil
	}
	now := dateText(job.Client.Measured)
	if now == "" {
		now = "now"
	}
	rows := [][]string{append([]string{"in " + f.u.String(), now}, append(append([]string{}, names...), "changed")...)}
	for _, m := range months {
		row := []string{m.Title, tapeOr(f.u, m.Now, m.Taken)}
		for i := range names {
			row = append(row, tapeOr(f.u, m.Before[i], m.Had[i]))
		}
		rows = append(rows, append(row, signed(f.u, m)))
	}
	var p page
	right := []int{1}
	for i := range names {
		right = append(right, i+2)
	}
	p.table(rows, append(right, len(names)+2)...)
	p.line()
	some := false
	for _, m := range months {
		if by, _, ok := m.By(); ok && f.u.Tape(by) != "0" {
			p.para("", m.Says(names).In(f.u))
			some = true
		}
	}
	if !some {
		p.line("Nothing changed.")
	}
	f.w.print(p.String())
	return nil
}

func tapeOr(u measure.Unit, l measure.Length, ok bool) string {
	if !ok {
		return "-"
	}
	return u.Tape(l)
}

func signed(u measure.Unit, m fitting.Month) string {
	by, _, ok := m.By()
	if !ok {
		return ""
	}
	if t := u.Tape(by); by > 0 && t != "0" {
		return "+" + t
	}
	return u.Tape(by)
}

func monthsDocument(job pattern.Job, months []fitting.Month, names []string, s scale) object {
	doc := s.document()
	doc.add("measured", dateText(job.Client.Measured))
	sets := list{}
	for _, e := range job.Earlier {
		sets = append(sets, dateText(e.Measured))
	}
	doc.add("earlier", sets)
	all := list{}
	for _, m := range months {
		o := object{{"id", string(m.ID)}}
		if m.Taken {
			o = append(o, field{"now", s.length(m.Now)})
		}
		before := list{}
		for i, had := range m.Had {
			if had {
				before = append(before, s.length(m.Before[i]))
			} else {
				before = append(before, nil)
			}
		}
		o = append(o, field{"before", before})
		if by, _, ok := m.By(); ok {
			o = append(o, field{"difference", s.length(by)})
		}
		all = append(all, append(o, field{"by_alterations", s.length(m.Fitted)}, field{"says", m.Says(names).In(s.unit)}))
	}
	doc.add("measurements", all)
	return doc
}
