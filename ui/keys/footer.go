package keys

// footers are the likeliest actions of each place, likeliest first. The
// footer shows as many as fit and always ends with Commands and Help.
var footers = [numWheres][]ID{
	Everywhere: {Open, Save},
	Field:      {Accept, "field-down", OtherUnit, Undo},
	NotTyping:  {Accept, Undo, Save},
	OnTable:    {"zoom-newest", "zoom-in", "fit", "dimensions"},
	Measure:    {Accept, "field-down", OtherUnit, Undo},
	Style:      {"text-right", "field-down", "old-new", Undo},
	Draft:      {"step-next", "step-back", "zoom-newest", "ask-first"},
	Question:   {"answer", "skip"},
	True:       {"go-there", "try-cure", FieldNext},
	Lay:        {"piece-next", "pin", "search-on", "widths"},
	Cut:        {"write", "tick", "variant-next"},
	Projector:  {"show-next", "show-back", "blank", "show-end"},
	Overlay:    {"choose", "row-down", "close"},
	Lesson:     {"page-next", "page-back", "lesson-end"},
}

// Footer is the actions to show at the foot of a place: up to four of its own,
// then Commands and Help.
func (s Set) Footer(w Where) []Action {
	if w < 0 || w >= numWheres {
		w = Everywhere
	}
	var rows []Action
	for _, id := range append(append([]ID(nil), footers[w]...), Commands, Help) {
		if a, ok := s.Find(id); ok {
			rows = append(rows, a)
		}
	}
	return rows
}

// Short is the key a footer shows: the first one.
func (a Action) Short() string {
	if len(a.Keys) == 0 {
		return ""
	}
	return show(a.Keys[0])
}
