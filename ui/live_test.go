package ui

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/overlay"
)

// sits are a place of the key table each, with something in it for every key.
var sits = []struct {
	name string
	open func(t *testing.T) screen
}{
	{"field", func(t *testing.T) screen { s := first(t); s.edit(); s.keys("ctrl+z", "up", "9"); return s }},
	{"doubted field", func(t *testing.T) screen {
		s := first(t)
		for i := 0; i < 40 && !selects(s, "Waist girth"); i++ {
			s.keys("up")
		}
		s.keys("ctrl+u", "83", "enter", "up")
		return s
	}},
	{"proposed field", func(t *testing.T) screen {
		s := first(t)
		s.m.d.Change(s.m.d.Job().WithoutBody("across_back"), "out")
		for i := 0; i < 40 && !selects(s, "Across back"); i++ {
			s.keys("up")
		}
		return s
	}},
	{"measure", func(t *testing.T) screen { s := first(t); s.edit(); s.keys("esc"); return s }},
	{"style", func(t *testing.T) screen { s := first(t); s.edit(); s.keys("esc", "2", "esc"); return s }},
	{"pick", func(t *testing.T) screen { s := first(t); s.keys("esc", "2", "up", "up"); return s }},
	{"draft", func(t *testing.T) screen {
		s := first(t)
		s.keys("esc", "3")
		s.m.draft.GoTo(12)
		s.keys("+")
		return s
	}},
	{"draft in little room", func(t *testing.T) screen { return scrolled(t, "down") }},
	{"draft in little room, at the top", func(t *testing.T) screen { return scrolled(t, "up") }},
	{"question", func(t *testing.T) screen {
		s := first(t)
		s.keys("esc", "3")
		s.m.draft.GoTo(9)
		s.keys("a", " ")
		return s
	}},
	{"lesson", func(t *testing.T) screen { s := first(t); onPage(s); return s }},
	{"true", func(t *testing.T) screen { s := first(t); s.keys("esc", "4", "down", "down"); return s }},
	{"advice", func(t *testing.T) screen {
		s := first(t)
		s.keys("esc", "2", "ctrl+u", "90", "enter", "esc", "4")
		return s
	}},
	{"lay", func(t *testing.T) screen { s := first(t); unsearched(s); return s }},
	{"cut", func(t *testing.T) screen { s := first(t); s.keys("esc", "6", "down", "down"); return s }},
	{"projector", func(t *testing.T) screen {
		s := first(t)
		s.keys("esc", "3")
		s.m.draft.GoTo(12)
		s.keys("f9")
		return s
	}},
	{"projector, a number typed", func(t *testing.T) screen {
		s := first(t)
		s.keys("esc", "3", "f9", "7")
		return s
	}},
	{"list", func(t *testing.T) screen { s := first(t); s.keys("esc", "3", "f2"); s.keys("down", "down"); return s }},
	{"clients", func(t *testing.T) screen { s := seated(t, 80, 24); two(s); act("clients")(s); return s }},
}

// scrolled is a step with more words than there is room for.
func scrolled(t *testing.T, key string) screen {
	s := at(t, 60, 16, looks("mono", canvas.ASCII))
	s.keys("esc", "3", "f7", "f7", "y")
	for k := 1; k < len(s.m.d.Sheet().Steps); k++ {
		s.m.draft.GoTo(k)
		was := s.m.View()
		if s.keys("down"); s.m.View() != was {
			break
		}
	}
	s.keys(key)
	_ = s.m.View()
	return s
}

// onPage is a page of a lesson that asks nothing, and not its first.
func onPage(s screen) {
	s.begin("front")
	for range 20 {
		if id, _ := s.m.learnKey("esc"); id == "lesson-end" && s.m.d.Running().Page > 0 {
			return
		}
		if p := s.m.pupil(); p != nil && p.Asking() {
			s.keys("esc")
		}
		s.keys(" ")
	}
	s.t.Fatal("no page without a question")
}

// state is all that a key may change.
func state(s screen) string {
	v := s.m.View()
	set := s.m.d.Settings
	return v + "\x00" + set.Theme.Name() + set.Glyphs.String() + strings.Repeat("m", boolInt(set.Mouse)) + strings.Repeat("l", boolInt(s.m.leaving)) + string(rune('0'+s.m.d.Version()%1000))
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

// Every key of the table does something in some place where it works; and no
// key does anything that the table does not name, but for the letters and the
// usual keys of a text that is being typed.
func TestEveryKeyIsLiveAndNoOtherIs(t *testing.T) {
	if testing.Short() {
		t.Skip("presses every key everywhere")
	}
	live := map[keys.ID]bool{}
	all := alphabet()
	for _, sit := range sits {
		t.Run(sit.name, func(t *testing.T) {
			s := sit.open(t)
			tried := map[string]bool{}
			for _, k := range all {
				if tried[k] || len([]rune(k)) > 1 && names[k] == 0 {
					continue
				}
				tried[k] = true
				s.m.d.Message = ""
				where := s.m.where()
				id, named := s.m.learnKey(k)
				if !named {
					id, named = s.m.d.Keys.ByKey(where, k)
				}
				letter := len([]rune(k)) == 1 && k != "?" && k != "1"
				if id == "suspend" || named && live[id] || !named && letter && typedHere(where, k) {
					continue // letters have a test of their own
				}
				before := state(s)
				s.keys(k)
				changed := state(s) != before || s.m.d.Message != ""
				switch {
				case named && changed:
					live[id] = true
				case !named && changed:
					require.True(t, typedHere(where, k), "%q does something in %s, and the table does not say so", k, sit.name)
				}
				if changed {
					s = sit.open(t)
				}
			}
		})
	}
	live["search-on"] = true // TestTheSearchGoesOnInSlicesAndEnds holds it: a search that has ended takes long
	for _, a := range desk.Keys() {
		if !live[a.ID] && len(a.Keys)+len(a.Untyped) > 0 {
			t.Errorf("%s (%s, %s) does nothing anywhere", a.ID, a.Shown, a.Where.Title())
		}
	}
}

// typedHere says that a key belongs to a text in hand: letters, and the keys
// that every field of a terminal knows.
func typedHere(where keys.Where, k string) bool {
	switch where {
	case keys.Field, keys.Question, keys.Overlay:
	case keys.Projector:
		return k == "0" // a digit of the number
	default:
		return false
	}
	return len([]rune(k)) == 1 || k == "backspace" || k == "delete" || k == "home" || k == "end" || k == "left" || k == "right" || k == "ctrl+u"
}

// Every action is found in the command list by its name and by each of its
// synonyms; its key stands beside it, and where it cannot be done the reason.
func TestEveryActionIsFoundByEverySynonym(t *testing.T) {
	s := first(t)
	s.keys("esc", "3")
	offered := s.m.offers()
	for _, o := range offered {
		a, ok := s.m.d.Keys.Find(o.ID)
		require.True(t, ok)
		title := a.Title
		if o.Title != "" {
			title = o.Title
		}
		for _, word := range append([]string{a.Title}, a.Synonyms...) {
			list := overlay.Commands(s.m.d, offered)
			list.Type(desk.Key{Runes: []rune(word)})
			shown := strings.Join(list.View(desk.Rect{Columns: 200, Rows: 60}), "\n")
			require.Contains(t, shown, title, "%s by %q", o.ID, word)
			if a.Shown != "" {
				require.Contains(t, shown, a.Shown, "the key of %s", o.ID)
			}
			if o.WhyNot != "" {
				require.Contains(t, strings.ToLower(shown), strings.ToLower(strings.TrimSuffix(o.WhyNot, ".")), o.ID)
			}
		}
	}
}

// Help lists everything that works here with a sentence; what is typed finds
// at once, Enter does it.
func TestHelpIsWholeEverywhere(t *testing.T) {
	for _, sit := range sits {
		s := sit.open(t)
		if s.m.onProjector() != nil {
			continue
		}
		offered := s.m.help()
		over := overlay.Help(s.m.d, offered)
		shown := strings.Join(strings.Fields(strings.Join(over.View(desk.Rect{Columns: 400, Rows: 400}), " ")), " ")
		for _, o := range offered {
			if o.WhyNot != "" {
				continue
			}
			a, ok := s.m.d.Keys.Find(o.ID)
			require.True(t, ok, o.ID)
			require.Contains(t, shown, a.Says, "%s in %s", o.ID, sit.name)
		}
	}
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	s.keys("esc", "3")
	at := s.m.draft.Step()
	s.keys("f1", "n", "e", "x", "t", " ", "s", "t", "e", "p", "enter")
	require.Equal(t, at+1, s.m.draft.Step())
	require.Nil(t, s.m.top())
}
