package overlay

import (
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// Help shows what can be done here, grouped, with a sentence for each. Typing
// finds, Enter does it.
func Help(d *desk.Desk, offers []desk.Offer) desk.Overlay {
	rows := grouped(d, offers)
	b := &board{d: d, title: d.Tell(text.HelpHead), how: text.HelpHow, says: []string{d.Tell(text.HelpCopy)}, field: text.FindLabel}
	b.rows = func(typed string) []row { return found(rows, typed, false) }
	return b
}

// grouped puts the offers of one place together, in the order in which the
// places come up; what works everywhere comes last.
func grouped(d *desk.Desk, offers []desk.Offer) []row {
	var places []keys.Where
	rows := map[keys.Where][]row{}
	for _, o := range offers {
		a, ok := d.Keys.Find(o.ID)
		if !ok {
			continue
		}
		if rows[a.Where] == nil && a.Where != keys.Everywhere {
			places = append(places, a.Where)
		}
		r := actionRow(d, a, o)
		r.group = d.Trade(a.Where.Title())
		rows[a.Where] = append(rows[a.Where], r)
	}
	var out []row
	for _, w := range append(places, keys.Everywhere) {
		out = append(out, rows[w]...)
	}
	return out
}

// actionRow is a row of the key table as a row of a list.
func actionRow(d *desk.Desk, a keys.Action, o desk.Offer) row {
	r := row{title: d.Trade(a.Title), says: d.Trade(a.Says), right: a.Shown, whyNot: o.WhyNot}
	if o.Title != "" {
		r.title = o.Title
	}
	if r.right == "" {
		r.right = d.Tell(text.ByName)
	}
	for _, s := range a.Synonyms {
		r.finds += " " + s
	}
	id := a.ID
	r.do = func() desk.Ask { return desk.Ask{Close: true, Do: id} }
	return r
}
