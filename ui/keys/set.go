package keys

import (
	"fmt"
	"slices"
	"sort"
	"strings"
	"unicode/utf8"
)

// Set is a table of actions, ours or one with keys changed by the user.
type Set []Action

// Table is a copy of the whole table, in the order of help.
func Table() Set {
	var all Set
	for _, part := range [][]Action{everywhere, field, stages, table, draft, question, lesson, truing, lay, cut, projector, overlay} {
		all = append(all, part...)
	}
	for i := range all {
		all[i].Keys = slices.Clone(all[i].Keys)
	}
	return all
}

// In is the rows of one place in the built-in table.
func In(w Where) []Action { return Table().In(w) }

// ByKey is the action of a key in the built-in table.
func ByKey(w Where, key string) (ID, bool) { return Table().ByKey(w, key) }

// In is the rows of one place.
func (s Set) In(w Where) []Action {
	var rows []Action
	for _, a := range s {
		if a.Where == w {
			rows = append(rows, a)
		}
	}
	return rows
}

// Find is the row of an action.
func (s Set) Find(id ID) (Action, bool) {
	for _, a := range s {
		if a.ID == id {
			return a, true
		}
	}
	return Action{}, false
}

// Live is the rows that work in a place, its own first. A row of Everywhere
// whose only keys are taken by a narrower row is left out.
func (s Set) Live(w Where) []Action {
	var rows []Action
	for _, from := range reach(w) {
		for _, a := range s {
			if a.Where != from {
				continue
			}
			if len(a.Keys) > 0 && !slices.ContainsFunc(a.Keys, func(k string) bool { return s.reaches(w, k, a.ID) }) {
				continue
			}
			rows = append(rows, a)
		}
	}
	return rows
}

func (s Set) reaches(w Where, key string, id ID) bool {
	got, ok := s.ByKey(w, key)
	return ok && got == id
}

// ByKey is the action that a key asks for in a place: the place's own first,
// then the table's if the place has one, then those of a screen without a
// focused field, then those of everywhere.
func (s Set) ByKey(w Where, key string) (ID, bool) {
	for _, from := range reach(w) {
		for i := range s {
			a := &s[i]
			if a.Where != from {
				continue
			}
			if slices.Contains(a.Keys, key) || (!w.typing() && slices.Contains(a.Untyped, key)) {
				return a.ID, true
			}
		}
	}
	return "", false
}

// reach is the places whose keys work in a place. On the projector the digits
// are step numbers, so the stages are off.
func reach(w Where) []Where {
	switch {
	case w == Everywhere:
		return []Where{Everywhere}
	case w == Projector:
		return []Where{Projector, OnTable, Everywhere}
	case w.stage():
		return []Where{w, OnTable, NotTyping, Everywhere}
	case w == OnTable:
		return []Where{OnTable, NotTyping, Everywhere}
	}
	return []Where{w, Everywhere}
}

// Changed is the table with other keys for some actions. It refuses, in one
// sentence for each reason, actions that do not exist, keys that some keyboard
// cannot type, and two actions on one key.
func (s Set) Changed(keys map[ID][]string) (Set, error) {
	t := slices.Clone(s)
	var wrong []string
	for _, id := range sorted(keys) {
		i := slices.IndexFunc(t, func(a Action) bool { return a.ID == id })
		if i < 0 {
			wrong = append(wrong, fmt.Sprintf("%s: there is no such action; the command list names them", id))
			continue
		}
		for _, k := range keys[id] {
			if why := Untypable(k); why != "" {
				wrong = append(wrong, fmt.Sprintf("%s: %q %s; take another key", id, k, why))
			}
		}
		t[i].Keys, t[i].Untyped = nil, nil
		for _, k := range keys[id] {
			switch letter := utf8.RuneCountInString(k) == 1; {
			case letter && t[i].Where == Everywhere: // there it is text while she types
				t[i].Untyped = append(t[i].Untyped, k)
			case letter && t[i].Where.typing():
				wrong = append(wrong, fmt.Sprintf("%s: %q is a letter of what is typed there; take another key", id, k))
			default:
				t[i].Keys = append(t[i].Keys, k)
			}
		}
		t[i].Shown = Show(append(slices.Clone(t[i].Keys), t[i].Untyped...))
	}
	for _, c := range t.Clashes() {
		wrong = append(wrong, c)
	}
	if len(wrong) > 0 {
		return s, fmt.Errorf("keys: %s", strings.Join(wrong, "\n"))
	}
	return t, nil
}

func sorted(m map[ID][]string) []ID {
	ids := make([]ID, 0, len(m))
	for id := range m {
		ids = append(ids, id)
	}
	sort.Slice(ids, func(i, j int) bool { return ids[i] < ids[j] })
	return ids
}

// Clashes are the keys that two actions of one place want, one sentence each.
// A row that narrows an action of Everywhere may take its key.
func (s Set) Clashes() []string {
	var found []string
	said := map[string]bool{}
	for _, w := range Wheres() {
		owner := map[string]*Action{}
		for _, from := range reach(w) {
			for i := range s {
				a := &s[i]
				if a.Where != from {
					continue
				}
				keys := a.Keys
				if !w.typing() {
					keys = append(slices.Clone(a.Keys), a.Untyped...)
				}
				for _, k := range keys {
					o := owner[k]
					switch {
					case o == nil:
						owner[k] = a
					case o.Special != "" && o.Special == a.ID:
					default:
						line := fmt.Sprintf("%s: %s and %s want the same key in %s; give one of them another", Show([]string{k}), o.ID, a.ID, strings.ToLower(w.Title()))
						if !said[line] {
							said[line] = true
							found = append(found, line)
						}
					}
				}
			}
		}
	}
	return found
}
