package overlay

import (
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// Commands lists every action by name and synonym, with its key: likeliest
// first, what is not possible now last, greyed and with the reason.
func Commands(d *desk.Desk, offers []desk.Offer) desk.Overlay {
	here := map[keys.ID]bool{}
	var own, field, later []row
	for _, o := range offers {
		a, ok := d.Keys.Find(o.ID)
		if !ok || here[a.ID] || !listed(a) {
			continue
		}
		here[a.ID] = true
		r := commandRow(d, a, o)
		switch {
		case r.whyNot != "":
			later = append(later, r)
		case a.Where == keys.Field:
			field = append(field, r)
		default:
			own = append(own, r)
		}
	}
	for _, a := range d.Keys {
		if here[a.ID] || !listed(a) {
			continue
		}
		if a.Where == keys.Everywhere || a.Where == keys.NotTyping {
			own = append(own, commandRow(d, a, desk.Offer{}))
		} else {
			later = append(later, commandRow(d, a, desk.Offer{WhyNot: place(d, a.Where)}))
		}
	}
	rows := append(append(own, field...), later...)
	b := &board{d: d, title: d.Tell(text.CommandsTitle), how: text.CommandsHow, field: text.FindLabel}
	b.rows = func(typed string) []row { return found(rows, typed, true) }
	return b
}

// listed leaves out the keys of the list itself, and rows that only narrow
// another.
func listed(a keys.Action) bool { return a.Where != keys.Overlay && a.Special == "" }

// commandRow is an action by its name; its sentence only helps to find it.
func commandRow(d *desk.Desk, a keys.Action, o desk.Offer) row {
	r := actionRow(d, a, o)
	r.finds += " " + r.says
	r.says, r.right = "", a.Shown
	return r
}

// place says where an action belongs that is not possible here.
func place(d *desk.Desk, w keys.Where) string {
	title := d.Trade(w.Title())
	switch w {
	case keys.Measure, keys.Style, keys.Draft, keys.True, keys.Lay, keys.Cut:
		return d.Tell(text.NotAtStage, title)
	}
	return d.Tell(text.NotAtPlace, strings.ToLower(title[:1])+title[1:])
}
