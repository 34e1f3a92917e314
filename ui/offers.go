package ui

import (
	"slices"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// offers are all actions as they stand now: those of the stage first, on the
// projector its own, then those of the whole workbench.
func (m *Model) offers() []desk.Offer {
	if p := m.projector(); p != nil {
		return m.with(p.Actions(), keys.Everywhere)
	}
	return m.with(m.acts(), keys.Everywhere, keys.NotTyping)
}

// help are the actions of what is on top: what can be done here.
func (m *Model) help() []desk.Offer {
	o := m.top()
	if o == nil || m.onProjector() != nil {
		return m.offers()
	}
	return m.with(o.Actions(), keys.Everywhere)
}

// with adds what works in these places to the actions of one.
func (m *Model) with(own []desk.Offer, places ...keys.Where) []desk.Offer {
	var out []desk.Offer
	seen := map[keys.ID]bool{}
	add := func(o desk.Offer) {
		if !seen[o.ID] {
			seen[o.ID] = true
			out = append(out, o)
		}
	}
	for _, o := range own {
		add(o)
	}
	for _, a := range m.d.Keys {
		if slices.Contains(places, a.Where) {
			add(desk.Offer{ID: a.ID, WhyNot: m.whyNot(a.ID), Quiet: true})
		}
	}
	return out
}

// whyNot says why an action of the workbench is not possible now.
func (m *Model) whyNot(id keys.ID) string {
	if why := m.hidden(id); why != "" {
		return why
	}
	switch id {
	case keys.Undo:
		if !m.d.CanUndo() {
			return m.d.Tell(text.NothingToUndo)
		}
	case keys.Redo:
		if !m.d.CanRedo() {
			return m.d.Tell(text.NothingToRedo)
		}
	case keys.Fitting:
		if !m.d.SheetOf(m.d.Job()).Complete {
			return m.d.Tell(text.FitNotYet)
		}
	case keys.Accept:
		return m.d.Tell(text.NothingToTake)
	case keys.OtherUnit:
		return m.d.Tell(text.NoOtherUnit)
	}
	return ""
}

// footerKeys is how many actions of its own a footer shows at most.
const footerKeys = 4

// footer are the actions of the footer, likeliest first; Commands and Help
// come after them.
func (m *Model) footer() []desk.Offer {
	var own []desk.Offer
	if o := m.top(); o != nil {
		own = o.Actions()
	} else {
		own = m.acts()
	}
	var out []desk.Offer
	said := map[string]bool{}
	for _, o := range own {
		_, words := m.foot(o)
		if !o.Quiet && o.WhyNot == "" && len(out) < footerKeys && !said[words] {
			said[words] = true
			out = append(out, o)
		}
	}
	if m.top() == nil && m.d.CanUndo() && len(out) < footerKeys {
		out = append(out, desk.Offer{ID: keys.Undo})
	}
	if m.d.Settings.Mouse && m.onProjector() == nil { // how the terminal marks text again
		out = slices.DeleteFunc(out, func(o desk.Offer) bool { return o.ID == keys.Mouse })
		out = append(out[:min(len(out), footerKeys-1)], desk.Offer{ID: keys.Mouse})
	}
	return append(out, desk.Offer{ID: keys.Commands}, desk.Offer{ID: keys.Help})
}
