package overlay

import (
	"fmt"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// Alterations is the log: what was altered, how it stands, and what has to be
// asked since she was measured anew.
func Alterations(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.FitLogTitle), how: text.FitLogHow}
	version := -1
	var rows []row
	b.rows = func(string) []row {
		if version != d.Version() {
			rows, version = logRows(d), d.Version()
		}
		return rows
	}
	if len(d.Job().Fittings) == 0 {
		b.says, b.reads, b.how = []string{d.Tell(text.FitLogEmpty)}, true, text.ReadHow
	}
	return &logBoard{b}
}

// logBoard makes its rows anew when an entry was turned in another window.
type logBoard struct{ *board }

// View makes the rows anew.
func (l *logBoard) View(r desk.Rect) []string {
	l.renew()
	return l.board.View(r)
}

func logRows(d *desk.Desk) []row {
	var rows []row
	for _, e := range fitting.Log(d.Job()) {
		r := row{
			title: fmt.Sprintf("%d  %s", e.Number, dayOf(d, e.Kept.Date)), right: d.Trade(e.State.String()),
			says: d.Trade(e.Kept.Seen) + " " + d.Trade(e.Says(d.Unit())) + ".",
			here: e.State == fitting.Overtaken, do: func() desk.Ask { return desk.Ask{Open: alteration(d, e)} },
		}
		for _, a := range e.Asks() {
			r.says += " " + d.Trade(a.In(d.Unit()))
		}
		rows = append(rows, r)
	}
	return rows
}

// alteration is one entry: what it moves, and what may be done with it.
func alteration(d *desk.Desk, e fitting.Entry) desk.Overlay {
	u, n := d.Unit(), e.Number
	b := &board{d: d, title: fmt.Sprintf("%d  %s", n, d.Trade(e.Says(u))), how: text.RowsHow, says: []string{d.Trade(e.Kept.Seen), d.Trade(e.Kept.Why)}}
	for _, a := range e.Asks() {
		b.says = append(b.says, d.Trade(a.In(u)))
	}
	if before, err := fitting.Before(d.Job(), n); err == nil && e.State == fitting.Stands {
		if diff := view.Differences(d.SheetOf(before), drafted(d), u, 4); len(diff) > 0 {
			b.says = append(b.says, d.Tell(text.FitMoves, d.Trade(strings.Join(diff, ", "))))
		}
	}
	turn := func(title, says text.ID, job pattern.Job, err error, done text.ID) row {
		r := row{title: d.Tell(title), says: d.Tell(says)}
		if err != nil {
			r.whyNot = wrong(err)
			return r
		}
		r.do = func() desk.Ask { return desk.Ask{Job: &job, Says: d.Words.Say(done, n), Close: true} }
		return r
	}
	var rows []row
	if e.State == fitting.Overtaken {
		job, err := fitting.Settle(d.Job(), n)
		rows = append(rows, turn(text.FitSettle, text.FitSettleSays, job, err, text.FitSettled))
	} else {
		job, err := fitting.Back(d.Job(), n)
		rows = append(rows, turn(text.FitBack, text.FitBackSays, job, err, text.FitBackDone))
	}
	job, err := fitting.Again(d.Job(), n, today(d))
	rows = append(rows, turn(text.FitAgain, text.FitAgainSays, job, err, text.FitAgainDone))
	b.rows = func(string) []row { return rows }
	return b
}

// mostSets is how many earlier sets stand beside the present one.
const mostSets = 2

// Months is her measures over the months: figures in columns, and in words what
// changed.
func Months(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.FitMonths), how: text.ReadHow, reads: true}
	job := d.Job()
	if len(job.Earlier) == 0 {
		b.says = []string{d.Tell(text.FitOneSet)}
		return b
	}
	var names []string
	for _, e := range job.Earlier {
		names = append(names, dayOf(d, e.Measured))
	}
	heads := []string{dayOf(d, job.Client.Measured)}
	heads = append(heads, names[:min(mostSets, len(names))]...)
	rows := []row{{right: monthCells(heads)}}
	for _, m := range fitting.Then(job) {
		cells := []string{tapeOr(d, m.Now, m.Taken)}
		for i := range heads[1:] {
			cells = append(cells, tapeOr(d, m.Before[i], m.Had[i]))
		}
		r := row{title: d.Trade(m.Title), right: monthCells(cells)}
		if by, i, ok := m.By(); ok && d.Unit().Tape(by) != "0" {
			r.says, r.here = signedTape(d.Unit(), by)+" "+d.Tell(text.FitSince, names[i]), true
		}
		rows = append(rows, r)
	}
	b.rows = func(string) []row { return rows }
	return b
}

func signedTape(u measure.Unit, l measure.Length) string {
	if l > 0 {
		return "+" + u.Tape(l)
	}
	return u.Tape(l)
}

func tapeOr(d *desk.Desk, l measure.Length, ok bool) string {
	if !ok {
		return "-"
	}
	return d.Plain(d.Unit().Tape(l))
}

// monthCells are columns of figures, each ending where the others end.
func monthCells(values []string) string {
	var b strings.Builder
	for _, v := range values {
		b.WriteString(fmt.Sprintf("%11s", v))
	}
	return b.String()
}
