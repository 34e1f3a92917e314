package overlay

import (
	"fmt"
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// Fitting lists what may be seen on the body, place by place. Each sign leads
// to the inputs to change; below it is what takes everything at once.
func Fitting(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.FitTitle), how: text.RowsHow, field: text.FindLabel, says: []string{d.Tell(text.FitSays)}}
	b.rows = func(typed string) []row {
		var rows []row
		for _, s := range fitting.Signs() {
			rows = append(rows, row{
				group: d.Trade(string(s.Place)), title: d.Trade(s.Seen), finds: strings.ReplaceAll(s.ID, "_", " ") + " " + s.Pin,
				do: func() desk.Ask { return desk.Ask{Open: signOverlay(d, s)} },
			})
		}
		return found(append(rows, atOnce(d)...), typed, false)
	}
	return b
}

// atOnce is what is no single sign.
func atOnce(d *desk.Desk) []row {
	opens := func(o func(*desk.Desk) desk.Overlay) func() desk.Ask {
		return func() desk.Ask { return desk.Ask{Open: o(d)} }
	}
	group := d.Tell(text.FitAtOnce)
	return []row{
		{group: group, title: d.Tell(text.FitPins), says: d.Tell(text.FitPinsSays), do: opens(Pins)},
		{group: group, title: d.Tell(text.FitFloor), says: d.Tell(text.FitFloorSays), do: opens(Floor)},
		{group: group, title: d.Tell(text.FitLogRow), says: d.Tell(text.FitLogSays), do: opens(Alterations)},
		{group: group, title: d.Tell(text.FitMonths), says: d.Tell(text.FitMonthsSays), do: opens(Months)},
		newSetRow(d, group),
	}
}

// newSetRow puts her measures away and begins a new set.
func newSetRow(d *desk.Desk, group string) row {
	r := row{group: group, title: d.Tell(text.FitNewSet), says: d.Tell(text.FitNewSetSays)}
	job, err := fitting.NewSet(d.Job(), today(d))
	if err != nil {
		r.whyNot = wrong(err)
		return r
	}
	r.do = func() desk.Ask {
		return desk.Ask{Job: &job, Says: d.Words.Say(text.FitSetKept), Close: true, Go: desk.Measure, Say: d.Tell(text.FitBegun)}
	}
	return r
}

// wrong is what is wrong, of an error from the rooms of the trade.
func wrong(err error) string {
	if r, ok := err.(*measure.Refusal); ok { //nolint:errorlint // it comes from there as it is
		return r.Wrong
	}
	return err.Error()
}

func today(d *desk.Desk) pattern.Date {
	t := d.Now()
	return pattern.Date{Year: t.Year(), Month: int(t.Month()), Day: t.Day()}
}

func dayOf(d *desk.Desk, day pattern.Date) string {
	if day.IsZero() {
		return d.Tell(text.FitNoDate)
	}
	return fmt.Sprintf("%04d-%02d-%02d", day.Year, day.Month, day.Day)
}

// drafted is the work as it stands, without what a lesson shows over it.
func drafted(d *desk.Desk) *pattern.Sheet { return d.SheetOf(d.Job()) }

// signOverlay is one sign: what to pin, the amount, and the cures old -> new.
func signOverlay(d *desk.Desk, s fitting.Sign) desk.Overlay {
	b := &board{d: d, title: d.Trade(s.Seen), how: text.FitHow, field: text.FitPinned, entry: true, typed: d.Unit().Tape(s.Usual)}
	b.rows = func(typed string) []row {
		b.says = []string{d.Trade(s.Pin)}
		pinned, err := measure.Read(typed, d.Unit())
		if err != nil {
			b.says = append(b.says, err.Error())
			return nil
		}
		var rows []row
		for _, p := range fitting.Propose(drafted(d), s, pinned) {
			rows = append(rows, proposalRow(d, p))
		}
		return rows
	}
	return b
}

// narrowRow is what a title and its change may take together, to be seen whole
// on the narrowest screen.
const narrowRow = 52

// proposalRow is a change that Enter keeps: one entry of the history.
func proposalRow(d *desk.Desk, p fitting.Proposal) row {
	u := d.Unit()
	r := row{title: d.Trade(p.Title), right: changesSay(d, p.Changes), says: d.Trade(p.Why)}
	if ansi.StringWidth(r.title)+ansi.StringWidth(r.right) > narrowRow {
		r.right, r.says = "", r.right+". "+r.says
	}
	for _, w := range p.Warns {
		r.says += " " + d.Tell(text.FitWarns, d.Trade(w.In(u)))
	}
	if !p.Possible() {
		r.whyNot = d.Trade(p.WhyNot.In(u))
		return r
	}
	r.do = func() desk.Ask {
		job := p.Keep(today(d))
		return desk.Ask{Job: &job, Says: d.Words.Say(text.FitKept, changesSay(d, p.Changes)), Close: true, Say: d.Tell(text.FitThen)}
	}
	return r
}

// changesSay is every change in one line, old -> new.
func changesSay(d *desk.Desk, all []fitting.Change) string {
	parts := make([]string, len(all))
	for i, c := range all {
		parts[i] = d.Trade(c.Says().In(d.Unit()))
	}
	return strings.Join(parts, ", ")
}

// Floor levels a hem by three readings.
func Floor(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.FitFloor), how: text.FitFloorHow, field: text.FitReadings, entry: true}
	b.rows = func(typed string) []row {
		b.says = nil
		r, ok := readings(typed, d.Unit())
		if !ok {
			u := d.Unit()
			like := [3]measure.Length{16 * measure.Inch, 15.5 * measure.Inch, 15.75 * measure.Inch}
			if u != measure.In {
				like = [3]measure.Length{400, 390, 395}
			}
			b.says = []string{d.Tell(text.FitFloorLike, u.Tape(like[0])+"  "+u.Tape(like[1])+"  "+u.Tape(like[2]))}
			return nil
		}
		p, err := fitting.Level(drafted(d), r)
		if err != nil {
			b.says = []string{err.Error()}
			return nil
		}
		return []row{proposalRow(d, p)}
	}
	return b
}

// readings are three or four lengths with spaces between; one of them may have
// a fraction behind a space: "16 15 1/2 15 3/4".
func readings(typed string, u measure.Unit) (fitting.Readings, bool) {
	var all []measure.Length
	words := strings.FieldsFunc(typed, func(r rune) bool { return r == ' ' || r == ';' })
	for i := 0; i < len(words); i++ {
		word := strings.TrimSuffix(words[i], ",")
		if i+1 < len(words) && strings.Contains(words[i+1], "/") {
			i++
			word += " " + strings.TrimSuffix(words[i], ",")
		}
		l, err := measure.Read(word, u)
		if err != nil {
			return fitting.Readings{}, false
		}
		all = append(all, l)
	}
	if len(all) != 3 && len(all) != 4 {
		return fitting.Readings{}, false
	}
	r := fitting.Readings{Front: all[0], Side: all[1], Back: all[2]}
	if len(all) == 4 {
		r.Wanted = all[3]
	}
	return r, true
}
