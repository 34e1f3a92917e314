package overlay

import (
	"chalkfold/measure"
	"chalkfold/pattern/fitting"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// pinning is what was pinned so far, by spot.
type pinning struct {
	*board
	by map[string]measure.Length
}

// Pins takes all that was pinned, place by place, and looks for the least
// change of inputs that accounts for it.
func Pins(d *desk.Desk) desk.Overlay {
	p := &pinning{by: map[string]measure.Length{}}
	p.board = &board{d: d, title: d.Tell(text.FitPinsTitle), how: text.FitPinsHow, field: text.FindLabel}
	p.rows = func(typed string) []row { return found(p.list(), typed, false) }
	p.hear = p.answer
	return p
}

// Actions are made anew each time: the amounts come from another window.
func (p *pinning) View(r desk.Rect) []string {
	p.renew()
	return p.board.View(r)
}

func (p *pinning) list() []row {
	d, u := p.d, p.d.Unit()
	look := row{title: d.Tell(text.FitLook), do: p.look}
	if len(p.by) == 0 {
		look.whyNot = d.Tell(text.FitNoPins)
	}
	rows := []row{look}
	for _, s := range fitting.Spots() {
		r := row{group: d.Trade(string(s.Place)), title: d.Trade(s.Title), finds: s.ID, do: func() desk.Ask { return desk.Ask{Open: p.amount(s)} }}
		if by, ok := p.by[s.ID]; ok {
			r.right = d.Trade(s.Says(by).In(u))
		}
		rows = append(rows, r)
	}
	return rows
}

// amount asks how much was pinned at a spot, and which way.
func (p *pinning) amount(s fitting.Spot) desk.Overlay {
	d := p.d
	b := &board{d: d, title: d.Trade(s.Title), how: text.FitAmountHow, field: text.FitAmount, entry: true, says: []string{capital(d.Trade(s.How)) + "."}}
	if by, ok := p.by[s.ID]; ok {
		b.typed = d.Unit().Tape(max(by, -by))
	}
	b.rows = func(typed string) []row {
		l, err := measure.Read(typed, d.Unit())
		take := func(title string, by measure.Length) row {
			r := row{title: capital(d.Trade(title)), do: func() desk.Ask {
				p.by[s.ID] = by
				return desk.Ask{Close: true}
			}}
			if err != nil {
				r.whyNot = wrong(err)
			}
			return r
		}
		return []row{take(s.Less, -l), take(s.More, l), {title: d.Tell(text.FitNoPin), do: func() desk.Ask {
			delete(p.by, s.ID)
			return desk.Ask{Close: true}
		}}}
	}
	return b
}

const errandPins = "pins"

// look does the fit beside the screen: it drafts many times.
func (p *pinning) look() desk.Ask {
	d := p.d
	sheet, version := drafted(d), d.Version()
	var pins []fitting.Pin
	for _, s := range fitting.Spots() {
		if by, ok := p.by[s.ID]; ok {
			pins = append(pins, fitting.Pin{Spot: s.ID, By: by})
		}
	}
	return desk.Ask{For: d.Tell(text.FitLooking), Run: func() desk.Answer {
		e, err := fitting.Explain(sheet, pins)
		return desk.Answer{Version: version, What: errandPins, Err: err, Value: e}
	}}
}

func (p *pinning) answer(a desk.Answer) desk.Ask {
	e, ok := a.Value.(fitting.Explanation)
	switch {
	case a.What != errandPins:
		return desk.Ask{}
	case a.Err != nil || !ok:
		return desk.Ask{Say: p.d.Plain(a.Err.Error()), Warn: true}
	}
	return desk.Ask{Open: explained(p.d, e)}
}

// explained shows a change that accounts for pins, pin by pin.
func explained(d *desk.Desk, e fitting.Explanation) desk.Overlay {
	u := d.Unit()
	b := &board{d: d, title: d.Tell(text.FitFound), how: text.RowsHow, says: []string{d.Trade(e.How.In(u))}}
	keep := proposalRow(d, e.Proposal)
	keep.title = d.Tell(text.FitKeep)
	rows := []row{keep}
	for _, t := range e.Told {
		rows = append(rows, row{
			group: d.Tell(text.FitAsked), title: d.Trade(t.Spot.Title), right: d.Trade(t.Spot.Says(t.By).In(u)),
			says: d.Tell(text.FitDrafted, d.Trade(t.Spot.Says(t.Gives).In(u))),
		})
	}
	for _, t := range e.Also {
		rows = append(rows, row{group: d.Tell(text.FitAlso), title: d.Trade(t.Spot.Title), says: d.Trade(t.Spot.Says(t.Gives).In(u))})
	}
	b.rows = func(string) []row { return rows }
	return b
}
