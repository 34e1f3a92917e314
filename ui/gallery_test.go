package ui

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/keys"
	"chalkfold/ui/overlay"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// scene is one screen of the gallery: how to come to it, and what it shows.
type scene struct {
	name  string
	stage desk.StageID // the stage that is seen; NoStage under an overlay
	over  string       // the constructor of the overlay that is on top
	state string       // the state that it is an example of, of states
	begin func(t testing.TB, cols, rows int) screen
	keys  []string
	do    func(s screen)
	sizes [][2]int // other sizes than the usual
	once  bool     // it takes long: the window is resized instead
}

// usualSizes are those at which every screen was looked at.
var usualSizes = [][2]int{{60, 16}, {80, 24}, {120, 40}}

// states are those that a screen can be in beside its usual one.
var states = []string{
	"empty", "partly filled", "unread field", "doubted", "stale", "unsaved", "saving failed", "changed elsewhere", "rescue found", "foreign file",
	"newer file", "too small", "no colour", "nothing found", "done", "working", "learning", "standing", "zoomed", "words only", "table only",
}

// seated is the check figure in a file of her own home, which has no other
// place than ~.
func seated(t testing.TB, cols, rows int) screen { return seatedWith(t, cols, rows, figure()) }

func seatedWith(t testing.TB, cols, rows int, job pattern.Job) screen {
	s, home := atHome(t, cols, rows)
	path := filepath.Join(home, "clients", "four.chalkfold.toml")
	require.NoError(t, files.Folder(filepath.Dir(path)))
	x := session.New(path, job)
	require.NoError(t, x.Save(job))
	s.m.Take(x)
	return s
}

// atHome is an empty desk and a home folder.
func atHome(t testing.TB, cols, rows int) (screen, string) {
	t.Helper()
	home := t.TempDir()
	if tt, ok := t.(*testing.T); ok {
		tt.Setenv("HOME", home)
		tt.Setenv("XDG_STATE_HOME", filepath.Join(home, ".state"))
		tt.Setenv("XDG_CONFIG_HOME", filepath.Join(home, ".config"))
		tt.Chdir(home)
	}
	m := NewModel(looks("mono", canvas.Braille))
	m.later = func(time.Duration, tea.Msg) tea.Cmd { return nil }
	m.d.Now = func() time.Time { return time.Date(2026, 3, 4, 14, 2, 0, 0, time.UTC) }
	s := screen{t: t, m: m, watched: true}
	s.send(tea.WindowSizeMsg{Width: cols, Height: rows})
	return s, home
}

// bareDesk is no client at all.
func bareDesk(t testing.TB, cols, rows int) screen {
	s, _ := atHome(t, cols, rows)
	return s
}

// half has seven of her measures taken.
func half(t testing.TB, cols, rows int) screen {
	job := figure()
	for _, id := range []measure.ID{measure.AcrossFront, measure.AcrossBack, measure.BackNeckToWaist, measure.SideNeckToWaist, measure.WaistToHip, measure.ShoulderDrop} {
		job = job.WithoutBody(id)
	}
	return seatedWith(t, cols, rows, job)
}

// folded is the figure with cloth that is folded otherwise.
func folded(fold string) func(t testing.TB, cols, rows int) screen {
	return func(t testing.TB, cols, rows int) screen {
		return seatedWith(t, cols, rows, figure().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(58), Fold: fold}))
	}
}

// learnersIn puts a few sessions into the folder of the open one.
func learnersIn(s screen) {
	dir := filepath.Dir(s.m.d.Path())
	for _, l := range []struct {
		file, name string
		drop       []measure.ID
	}{
		{"anna", "Anna Example", []measure.ID{measure.WaistGirth, measure.AcrossFront}},
		{"berta-in-the-evening-class", "Berta Example With A Rather Long Name", nil},
		{"carla", "", nil},
	} {
		job := figure()
		job.Client.Name = l.name
		for _, id := range l.drop {
			job = job.WithoutBody(id)
		}
		require.NoError(s.t, session.New(filepath.Join(dir, l.file+session.Suffix), job).Save(job))
	}
	torn := filepath.Join(dir, "torn"+session.Suffix)
	require.NoError(s.t, os.WriteFile(torn, []byte("form = 1\n[body]\nbust_girth = \"abc\"\nwaist_girth = -1\n"), 0o600))
}

// recently puts clients into the list of those worked on last.
func recently(s screen) {
	home, err := os.UserHomeDir()
	require.NoError(s.t, err)
	f, err := files.Paths(os.Getenv)
	require.NoError(s.t, err)
	require.NoError(s.t, files.Folder(f.State))
	var all []session.Client
	for i, name := range []string{"Learner Four", "Anna Example", "A Name That Has Become Somewhat Long Over Years"} {
		all = append(all, session.Client{Name: name, Path: filepath.Join(home, "clients", []string{"four", "anna", "a-name-that-has-become-somewhat-long"}[i]+session.Suffix), Garment: "dress", Taken: 13, Seen: time.Date(2026, 3, 3-i, 12, 0, 0, 0, time.UTC)})
	}
	text, err := json.Marshal(all)
	require.NoError(s.t, err)
	require.NoError(s.t, os.WriteFile(filepath.Join(f.State, "recent.json"), text, 0o600))
}

// toStep goes to a step of the draft.
func toStep(n int) func(screen) {
	return func(s screen) {
		s.keys("esc", "3")
		s.m.draft.GoTo(n)
		s.m.d.Message = ""
	}
}

// act does actions by their ids.
func act(ids ...string) func(screen) {
	return func(s screen) {
		for _, id := range ids {
			_ = s.m.View()
			s.run(s.m.do(keys.ID(id)))
		}
	}
}

// then does one thing after the other.
func then(all ...func(screen)) func(screen) {
	return func(s screen) {
		for _, f := range all {
			f(s)
		}
	}
}

func press(all ...string) func(screen) {
	return func(s screen) {
		for _, k := range all {
			_ = s.m.View() // as on a screen: keys go by what is shown
			s.keys(k)
		}
	}
}

// left is a rescue copy as an earlier run leaves it.
func left(s screen) {
	job := figure().WithBody(measure.WaistGirth, measure.In.Length(29)).WithoutBody(measure.HipGirth)
	s.m.Offer([]session.Rescue{
		{Path: s.m.d.Path(), Client: "Learner Four", Saved: time.Date(2026, 3, 3, 12, 0, 0, 0, time.UTC), Job: job, Differs: []string{"waist girth: 28 in in the file, 29 in unsaved", "hip girth: 38 in in the file, nothing unsaved"}},
		{Client: "", Saved: time.Date(2026, 3, 2, 12, 0, 0, 0, time.UTC), Job: pattern.Job{}},
	})
}

// failed is saving that the disk did not allow.
func failed(s screen) {
	s.edit()
	path := s.m.d.Path()
	s.send(saved{job: s.m.d.Job(), path: path, err: &files.Trouble{Path: files.Shown(path), Wrong: "the disk is full", Works: "make room, or save in another place", Err: errors.New("no space left")}})
}

// changedElsewhere is a file that another program wrote.
func changedElsewhere(s screen) {
	s.edit()
	data, err := os.ReadFile(s.m.d.Path())
	require.NoError(s.t, err)
	require.NoError(s.t, os.WriteFile(s.m.d.Path(), append(data, "# mine\n"...), 0o600))
	s.keys("ctrl+s")
}

// openText writes a file and opens it by its path.
func openText(text string) func(screen) {
	return func(s screen) {
		path := filepath.Join(filepath.Dir(s.m.d.Path()), "other"+session.Suffix)
		require.NoError(s.t, os.WriteFile(path, []byte(text), 0o600))
		s.keys("f3", "~/clients/other"+session.Suffix, "enter")
	}
}

// two clients are open, both with work that is not saved.
func two(s screen) {
	s.edit()
	job := figure()
	job.Client.Name = "Anna Example"
	path := filepath.Join(filepath.Dir(s.m.d.Path()), "anna"+session.Suffix)
	x := session.New(path, job)
	require.NoError(s.t, x.Save(job))
	s.m.fulfil(desk.Ask{Take: &desk.Opened{Store: x, Path: path, Saved: job}}, nil)
	s.keys("pgup")
}

// gallery is every stage, overlay and state.
func gallery() []scene {
	var all []scene
	all = append(all, stageScenes()...)
	all = append(all, learningScenes()...)
	all = append(all, windowScenes()...)
	return append(all, fileScenes()...)
}

func stageScenes() []scene {
	colour := func(name string, c theme.Colour) func(screen) {
		return func(s screen) {
			t, err := theme.For(name)
			require.NoError(s.t, err)
			s.m.d.Settings.Theme = t.With(c)
			s.keys("esc", "4")
		}
	}
	out := []scene{
		{name: "measure", stage: desk.Measure},
		{name: "measure-empty", stage: desk.Measure, begin: bareDesk, state: "empty"},
		{name: "measure-half", stage: desk.Measure, begin: half, state: "partly filled"},
		{name: "measure-unread", stage: desk.Measure, state: "unread field", keys: []string{"ctrl+u", "abc", "down", "up"}},
		{name: "measure-left-unread", stage: desk.Measure, state: "unread field", keys: []string{"ctrl+u", "36 2", "down"}},
		{name: "measure-typing", stage: desk.Measure, keys: []string{"up", "ctrl+u", "11/4"}},
		{name: "measure-doubt", stage: desk.Measure, state: "doubted", do: func(s screen) {
			waist := s.m.d.Job().WithBody(measure.WaistGirth, measure.In.Length(83))
			s.m.d.Change(waist, "Waist girth 28 -> 83 in")
			for i := 0; i < 40 && !selects(s, "Waist girth"); i++ {
				s.keys("up")
			}
		}},
		{name: "measure-unsaved", stage: desk.Measure, state: "unsaved", do: screen.edit},
		{name: "measure-table", stage: desk.Measure, state: "table only", keys: []string{"esc", "f7", "f7"}},
		{name: "style", stage: desk.Style, keys: []string{"esc", "2"}},
		{name: "style-empty", stage: desk.Style, begin: bareDesk, state: "empty", keys: []string{"esc", "2"}},
		{name: "style-half", stage: desk.Style, begin: half, state: "partly filled", keys: []string{"esc", "2"}},
		{name: "style-typing", stage: desk.Style, keys: []string{"esc", "2", "ctrl+u", "44"}},
		{name: "style-outside", stage: desk.Style, state: "doubted", keys: []string{"esc", "2", "ctrl+u", "90", "enter", "up"}},
		{name: "style-unread", stage: desk.Style, state: "unread field", keys: []string{"esc", "2", "ctrl+u", "long", "enter", "up"}},
		{name: "draft", stage: desk.Draft, do: toStep(10)},
		{name: "draft-first", stage: desk.Draft, do: toStep(1)},
		{name: "draft-empty", stage: desk.Draft, begin: bareDesk, state: "empty", keys: []string{"esc", "3"}},
		{name: "draft-half", stage: desk.Draft, begin: half, state: "partly filled", keys: []string{"esc", "3"}},
		{name: "draft-dart", stage: desk.Draft, do: toStep(22)},
		{name: "draft-last", stage: desk.Draft, state: "done", do: then(toStep(1), press("end"))},
		{name: "draft-why", stage: desk.Draft, do: then(toStep(10), press("y"))},
		{name: "draft-stands", stage: desk.Draft, state: "standing", do: then(toStep(10), press("x"))},
		{name: "draft-zoom", stage: desk.Draft, state: "zoomed", do: then(toStep(10), press("z"))},
		{name: "draft-cross", stage: desk.Draft, do: then(toStep(10), press("c", "right", "right", "down"))},
		{name: "draft-grid", stage: desk.Draft, do: then(toStep(10), press("r", "m"))},
		{name: "draft-words", stage: desk.Draft, state: "words only", do: then(toStep(10), press("f7", "f7"))},
		{name: "draft-stale", stage: desk.Draft, state: "stale", do: then(toStep(10), func(s screen) {
			s.m.d.Change(s.m.d.Job().WithBody(measure.BustGirth, measure.In.Length(38)), "Bust girth 36 -> 38 in")
		}, press("f7", "f7"))},
		{name: "true", stage: desk.True, keys: []string{"esc", "4"}},
		{name: "true-empty", stage: desk.True, begin: bareDesk, state: "empty", keys: []string{"esc", "4"}},
		{name: "true-half", stage: desk.True, begin: half, state: "partly filled", keys: []string{"esc", "4"}},
		{name: "true-there", stage: desk.True, state: "zoomed", keys: []string{"esc", "4", "enter"}},
		{name: "true-what-if", stage: desk.True, keys: []string{"esc", "4", "w", "up", "up"}},
		{name: "lay", stage: desk.Lay, once: true, keys: []string{"esc", "5"}},
		{name: "lay-flaw", stage: desk.Lay, do: then(unsearched, press("esc", "f", "20, 4, 1"))},
		{name: "lay-off-centre", stage: desk.Lay, begin: folded("off_centre"), do: then(unsearched, press("esc"))},
		{name: "lay-across", stage: desk.Lay, begin: folded("across"), do: then(unsearched, press("esc"))},
		{name: "lay-widths", stage: desk.Lay, once: true, do: then(unsearched, press("esc", "v"))},
		{name: "lay-empty", stage: desk.Lay, begin: bareDesk, state: "empty", keys: []string{"esc", "5"}},
		{name: "lay-half", stage: desk.Lay, begin: half, state: "partly filled", do: then(unsearched, press("esc"))},
		{name: "lay-searching", stage: desk.Lay, state: "working", do: unsearched},
		{name: "cut", stage: desk.Cut, keys: []string{"esc", "6"}},
		{name: "cut-tiles", stage: desk.Cut, do: func(s screen) {
			s.keys("esc", "6")
			for i := 0; i < 20 && !selects(s, "Tiles"); i++ {
				s.keys("down")
			}
			s.keys(" ")
		}},
		{name: "cut-folder", stage: desk.Cut, do: func(s screen) {
			s.keys("esc", "6")
			for range 30 {
				s.keys("down")
			}
			for i := 0; i < 20 && !selects(s, "Folder"); i++ {
				s.keys("up")
			}
			s.keys("enter", "/patterns")
		}},
		{name: "cut-empty", stage: desk.Cut, begin: bareDesk, state: "empty", keys: []string{"esc", "6"}},
		{name: "cut-half", stage: desk.Cut, begin: half, state: "partly filled", keys: []string{"esc", "6"}},
		{name: "cut-done", stage: desk.Cut, state: "done", keys: []string{"esc", "6", "enter"}},
		{name: "no-colour", stage: desk.True, state: "no colour", do: colour("mono", theme.NoColour)},
		{name: "no-codes", stage: desk.True, state: "no colour", do: colour("plain", theme.NoCodes)},
		{name: "too-small", state: "too small", sizes: [][2]int{{59, 15}, {40, 10}, {30, 6}, {20, 2}}},
	}
	return out
}

// unsearched goes to the lay and does not wait for its search.
func unsearched(s screen) {
	s.keys("esc")
	s.m.do("lay")
	_ = s.m.View()
}

// selects says that the row in hand begins with these words.
func selects(s screen, words string) bool {
	for _, l := range s.lines() {
		if len(l) > 1 && l[0] == '>' && len(words) <= len(l) {
			rest := l[1:]
			for _, skip := range []string{"[ ] ", "[x] ", "    "} {
				if len(rest) > len(skip) && rest[:len(skip)] == skip {
					rest = rest[len(skip):]
				}
			}
			if len(rest) >= len(words) && rest[:len(words)] == words {
				return true
			}
		}
	}
	return false
}

func learningScenes() []scene {
	asked := func(s screen) {
		s.keys("esc", "3", "a")
		for range 7 {
			s.keys(" ", "esc")
		}
		s.keys("left", "left", "a", "a", " ")
	}
	page := func(id string, n int) func(screen) {
		return func(s screen) {
			s.begin(id)
			for range n {
				s.keys(" ")
			}
		}
	}
	fault := func(s screen) {
		s.m.do(keys.Faults)
		s.keys("enter")
	}
	return []scene{
		{name: "question-place", stage: desk.Draft, state: "learning", do: asked},
		{name: "question", stage: desk.Draft, state: "learning", do: then(asked, press("esc", " "))},
		{name: "question-slip", stage: desk.Draft, state: "learning", do: then(asked, press("esc", " ", "11 1/2", "enter"))},
		{name: "question-hint", stage: desk.Draft, state: "learning", do: then(asked, press("esc", " ", "enter", "enter"))},
		{name: "question-right", stage: desk.Draft, state: "learning", do: then(asked, press("esc", " ", "9 5/8", "enter"))},
		{name: "what-if", stage: desk.Draft, do: then(toStep(10), press("w", "up", "up"))},
		{name: "lesson", stage: desk.Draft, state: "learning", do: page("back", 0)},
		{name: "lesson-question", stage: desk.Draft, state: "learning", do: page("front", 2)},
		{name: "lesson-turn", stage: desk.Draft, state: "learning", do: page("dart", 0)},
		{name: "lesson-tape", stage: desk.Measure, state: "learning", do: page("tape", 0)},
		{name: "lesson-done", state: "done", stage: desk.Cut, do: func(s screen) {
			s.begin("back")
			for i := 0; i < 40 && s.m.d.Running().On(); i++ {
				if p, ok := s.m.stage().(pupil); ok && p.Asking() {
					s.keys("esc")
				}
				s.keys(" ")
			}
		}},
		{name: "fault", stage: desk.True, state: "learning", do: fault},
		{name: "fault-found", stage: desk.True, state: "learning", do: then(fault, press("enter"))},
	}
}

func windowScenes() []scene {
	filter := func(id, words string) func(screen) {
		return then(act(id), func(s screen) {
			if words != "" {
				s.keys(words)
			}
		})
	}
	show := func(more ...string) func(screen) { return then(toStep(13), press("f9"), press(more...)) }
	return []scene{
		{name: "start", over: "Start", begin: bareDesk, do: func(s screen) { s.m.Begin() }},
		{name: "start-again", over: "Start", begin: bareDesk, do: func(s screen) { recently(s); s.m.Begin() }},
		{name: "help", over: "Help", do: then(toStep(10), filter("help", ""))},
		{name: "help-found", over: "Help", do: then(toStep(10), filter("help", "zoom"))},
		{name: "help-nothing", over: "Help", state: "nothing found", do: then(toStep(10), filter("help", "zzzz"))},
		{name: "commands", over: "Commands", do: then(toStep(1), filter("commands", ""))},
		{name: "commands-found", over: "Commands", do: then(toStep(10), filter("commands", "undo"))},
		{name: "commands-nothing", over: "Commands", state: "nothing found", do: filter("commands", "zzzz")},
		{name: "steps", over: "Steps", do: then(toStep(10), press("s"))},
		{name: "compare", over: "Compare", do: act("compare")},
		{name: "compare-half", over: "Compare", begin: half, state: "partly filled", do: act("compare")},
		{name: "settings", over: "Settings", do: act("settings")},
		{name: "words", over: "Words", do: act("words")},
		{name: "words-at", over: "WordsAt", do: then(toStep(10), press("g"))},
		{name: "words-nothing", over: "Words", state: "nothing found", do: filter("words", "zzzz")},
		{name: "lessons", over: "Lessons", state: "learning", do: act("lessons")},
		{name: "lessons-empty", over: "Lessons", begin: bareDesk, state: "empty", do: act("lessons")},
		{name: "faults", over: "Faults", state: "learning", do: act("faults")},
		{name: "readout", over: "Readout", do: then(press("esc", "6"), press("e", "enter", "enter", "enter", "enter"))},
		{name: "readout-words", over: "Readout", do: then(press("esc", "6"), press("e", "enter"))},
		{name: "projector", over: "NewProjector", do: show("right")},
		{name: "projector-plain", over: "NewProjector", do: show()},
		{name: "projector-number", over: "NewProjector", do: show("2", "1")},
		{name: "projector-private", over: "NewProjector", do: show("p")},
		{name: "projector-asks", over: "NewProjector", do: show("a", "right")},
		{name: "projector-why", over: "NewProjector", do: show("y")},
		{name: "projector-what-if", over: "NewProjector", do: show("w", "up")},
		{name: "projector-last", over: "NewProjector", do: show("end")},
		{name: "projector-blank", over: "NewProjector", do: show("b")},
		{name: "projector-empty", over: "NewProjector", begin: bareDesk, state: "empty", do: press("f9")},
		{name: "ease", over: "Ease", do: act("ease")},
		{name: "fitting", over: "Fitting", do: act("fitting")},
		{name: "fitting-sign", over: "Fitting", do: then(act("fitting"), press("enter"))},
		{name: "fitting-pins", over: "Pins", do: then(act("fitting"), press(string(text.FitPins), "enter"))},
		{name: "fitting-floor", over: "Floor", do: then(act("fitting"), press(string(text.FitFloor), "enter"))},
		{name: "fitting-log", over: "Alterations", do: then(act("fitting"), press(string(text.FitLogRow), "enter"))},
		{name: "fitting-months", over: "Months", do: then(act("fitting"), press(string(text.FitMonths), "enter"))},
		{name: "clients", over: "Clients", do: then(two, recently, act("clients"))},
		{name: "close-client", over: "CloseClient", do: then(two, act("close-client"))},
		{name: "class", over: "Class", do: then(learnersIn, act("class"))},
		{name: "class-reading", over: "Class", state: "working", do: func(s screen) { learnersIn(s); s.m.do(keys.Class) }},
		{name: "class-empty", over: "Class", begin: bareDesk, state: "empty", do: act("class")},
	}
}

func fileScenes() []scene {
	return []scene{
		{name: "open", over: "Open", do: then(learnersIn, recently, press("f3"))},
		{name: "open-path", over: "Open", do: then(learnersIn, press("f3", "~/clients/a"))},
		{name: "open-nothing", over: "Open", state: "nothing found", do: then(learnersIn, press("f3", "zzzz"))},
		{name: "open-torn", over: "Open", state: "foreign file", do: then(learnersIn, press("f3", "~/clients/torn"+session.Suffix, "enter"))},
		{name: "open-foreign", over: "Open", state: "foreign file", do: openText("\x00\x01\x02 not a session")},
		{name: "open-newer", over: "Open", state: "newer file", do: openText("form = 99\n")},
		{name: "saveas", over: "SaveAs", do: then(screen.edit, act("save-as"))},
		{name: "saveas-new", over: "SaveAsThen", begin: bareDesk, do: func(s screen) {
			s.m.take(desk.Opened{Saved: figure()})
			s.edit()
			s.keys("ctrl+s")
		}},
		{name: "saveas-folder", over: "SaveAs", do: then(screen.edit, act("save-as"), press("ctrl+u", "~/new/anna"))},
		{name: "overwrite", over: "question", do: then(learnersIn, screen.edit, act("save-as"), press("ctrl+u", "~/clients/anna", "enter"))},
		{name: "save-failed", over: "NotSaved", state: "saving failed", do: failed},
		{name: "message", over: "Message", do: func(s screen) {
			s.m.lay(overlay.Message(s.m.d, "What happened", "One thing. Another thing, which takes more words to say than fit on a line of the usual screen."))
		}},
		{name: "changed", over: "Changed", state: "changed elsewhere", do: changedElsewhere},
		{name: "rescue", over: "RescueOffer", state: "rescue found", do: left},
		{name: "rescue-new", over: "RescueOffer", state: "rescue found", do: then(left, press("down", "enter"))},
		{name: "leave", over: "Leave", state: "unsaved", do: then(screen.edit, press("esc", "q"))},
		{name: "leave-two", over: "Leave", state: "unsaved", do: then(two, press("esc", "q"))},
	}
}

func nameAt(size [2]int) string { return strconv.Itoa(size[0]) + "x" + strconv.Itoa(size[1]) }
