package shell

import (
	"fmt"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/text"
)

// mmOf is steps of a lay as a length.
func mmOf(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

// heading names whose pieces lie on which cloth.
func (l *laying) heading(p *page) {
	for i, s := range l.Sheets {
		line := heading(s)
		if len(l.Sheets) > 1 {
			line = owners(l.Sheets, l.files)[i] + ": " + line
		}
		p.line(line)
	}
	c := l.Cloth
	words := capital(c.Name) + " cloth, " + l.unit.Say(c.Width) + " wide, " + laid.Folds(c)
	if c.Nap {
		words += ", with a nap"
	}
	p.line(words)
	p.line()
}

// text is the lay for people.
func (l *laying) text(found lay.Lay, widths []laid.Width) string {
	var p page
	u := l.unit
	l.heading(&p)
	l.amount(&p, found)
	p.line()
	l.where(&p, l.Work, found)
	if len(l.Problem.Pins) == 0 {
		p.para("", l.NapCost(found, l.search).In(u))
	}
	l.searched(&p, found)
	if len(widths) > 0 {
		p.line()
		l.widthTable(&p, widths)
	}
	return p.String()
}

// suspect is the part of the hand rule below which a lay is doubted.
const suspect = 0.6

// amount is how much to buy, the hand rule beside it.
func (l *laying) amount(p *page, found lay.Lay) {
	u, buy := l.unit, l.Buy(found)
	p.para("", "Buy "+buy.Says+": laid out "+u.Say(mmOf(found.Length))+l.wash()+".")
	if h, ok := l.Hand(l.Cloth.Width); ok {
		words := "By the hand rule " + lay.Says(h.Yards, h.Metric)
		if sum := h.Lay.Sum(u); sum != "" {
			words += ": " + sum + " " + u.String()
		}
		p.para("", words+".")
		switch {
		case h.Yards < buy.Yards:
			p.para("", "The hand rule asks for less than the lay: search longer, or look at the widths and the fold.")
		case float64(buy.Needed) < suspect*float64(h.Buy.Result()):
			p.para("", "That is much less than the hand rule: look at the width, the unit, and whether all pieces are there.")
		}
	} else {
		p.para("", "The hand rule has no answer: a piece is wider than half the cloth.")
	}
	if cost := l.Cost(buy); cost > 0 {
		p.para("", "Price: "+money(cost)+", at "+money(l.Cloth.Price)+" a metre.")
	}
}

// wash says what the wash takes.
func (l *laying) wash() string {
	c := l.Cloth
	if c.ShrinkAlong <= 0 {
		return ""
	}
	return ", and " + number{c.ShrinkAlong, 1}.String() + " per cent for the wash"
}

func money(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// where tells the lay by tape.
func (l *laying) where(p *page, w laid.Work, found lay.Lay) {
	for _, s := range lay.Say(w.Problem, found) {
		words := plain(s.In(l.unit))
		if number, rest, ok := strings.Cut(words, " "); ok && strings.HasSuffix(number, ".") && len(number) < 5 {
			p.para(number+strings.Repeat(" ", 5-len(number)), rest)
			continue
		}
		p.para("", words)
	}
}

// searched says how the lay was found, so that it can be found again.
func (l *laying) searched(p *page, found lay.Lay) {
	if found.First {
		p.para("", "This is a first lay: the search found none that is shorter.")
	}
	p.para("", fmt.Sprintf("%s per cent of the cloth is used. Searched for %s evaluations; the same count, %s, lays the same again.",
		number{found.Density, 1}, text.Count(found.Evaluations), text.Count(l.search.Evaluations)))
}

func (l *laying) widthTable(p *page, widths []laid.Width) {
	priced := false
	for _, r := range widths {
		priced = priced || r.Cost > 0
	}
	head := []string{"width", "laid out", "to buy", "by hand"}
	if priced {
		head = append(head, "price")
	}
	rows := [][]string{head}
	for _, r := range widths {
		row := []string{l.unit.Say(r.Width), "-", "-", "-"}
		if r.Own {
			row[0] += " (hers)"
		}
		if r.Err == nil {
			row[1], row[2] = l.unit.Say(mmOf(r.Lay.Length)), r.Buy.Says
		}
		if r.Hand.Lengths > 0 {
			row[3] = lay.Says(r.Hand.Yards, r.Hand.Metric)
		}
		if priced {
			cost := "-"
			if r.Err == nil {
				cost = money(r.Cost)
			}
			row = append(row, cost)
		}
		rows = append(rows, row)
	}
	p.table(rows)
	for _, r := range widths {
		if r.Err != nil {
			p.para("", l.unit.Say(r.Width)+": "+plain(r.Err.Error())+".")
		}
	}
}

// remnantText answers whether a remnant is enough.
func (l *laying) remnantText(f laid.Fit) string {
	var p page
	u := l.unit
	l.Cloth = f.Work.Cloth
	l.heading(&p)
	p.para("", "The remnant: "+u.Tape(f.Along)+" by "+u.Say(f.Across)+". "+f.Says().In(u))
	if f.Narrow != nil {
		p.para("", capital(plain(f.Narrow.Error()))+".")
	}
	for _, c := range f.Cures {
		p.para("  ", c.Says.In(u))
	}
	switch {
	case f.Fits || len(f.Cures) > 0:
	case f.Narrow != nil:
		p.para("", "No other fold helps.")
	default:
		p.para("", "No other fold, no other cloth for the facings and no shorter dress was found that makes it fit.")
	}
	if f.Narrow == nil && f.Fits {
		p.line()
		l.where(&p, f.Work, f.Lay)
		l.searched(&p, f.Lay)
	}
	return p.String()
}
