package ui

import (
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
)

func TestTheProjectorComesBackToTheExactState(t *testing.T) {
	for _, back := range []string{"f9", "esc"} {
		s := at(t, 80, 24, looks("dark", canvas.Braille))
		s.keys("esc", "3", " ", " ", " ", "z")
		s.m.d.Message = ""
		before := s.m.View()
		s.keys("f9")
		require.True(t, s.m.d.Projecting)
		require.Equal(t, "projector", s.m.d.Settings.Theme.Name())
		require.NotContains(t, s.text(), "Learner Four", "no name")
		require.NotContains(t, s.text(), "F1 Help", "no footer")
		s.keys(" ", " ", "7", "enter", "x", "+", "p", "ctrl+t", "f1", "esc", "b", "z")
		s.keys(back)
		require.Equal(t, before, s.m.View())
		require.False(t, s.m.d.Projecting)
	}
}

func TestTheProjectorAtItsLeastSize(t *testing.T) {
	s := at(t, 64, 20, looks("mono", canvas.ASCII))
	s.keys("esc", "3", "f9", "1", "2", "enter", "right")
	require.Contains(t, s.text(), "-> Next")
	golden.Check(t, "projector.txt", trimmed(s))
	require.Equal(t, 13, s.m.projector().Step())
	require.Equal(t, 1, s.m.draft.Step(), "the bench stands where it stood")
}

func TestAPressedKeyIsShownForTwoSeconds(t *testing.T) {
	s := at(t, 64, 20, looks("mono", canvas.ASCII))
	var due []tea.Msg
	s.m.later = func(d time.Duration, msg tea.Msg) tea.Cmd {
		require.Equal(t, 2*time.Second, d)
		due = append(due, msg)
		return nil
	}
	s.keys("esc", "3", "f9", " ", "left")
	require.Len(t, due, 2, "one for each key, none after")
	s.send(due[0])
	require.Contains(t, s.text(), "-> Back")
	s.send(due[1])
	require.NotContains(t, s.text(), "->")
	require.Len(t, due, 2)
}

func TestKeysOnTheProjector(t *testing.T) {
	s := at(t, 80, 24, looks("projector", canvas.Braille))
	s.edit()
	s.keys("f9")
	require.False(t, s.m.d.Projecting && s.m.onProjector() == nil)
	s.keys("f5")
	require.True(t, s.m.d.Unsaved(), "F5 is dead")
	light := s.m.d.Settings.Theme.Name()
	s.keys("ctrl+t")
	dark := s.m.d.Settings.Theme.Name()
	require.NotEqual(t, light, dark)
	require.True(t, s.m.d.Settings.Theme.Paints())
	s.keys("ctrl+t")
	require.Equal(t, light, s.m.d.Settings.Theme.Name())
	s.keys("b")
	require.Empty(t, strings.TrimSpace(s.text()))
	step := s.m.projector().Step()
	s.keys(" ")
	require.NotEmpty(t, strings.TrimSpace(s.text()))
	require.Equal(t, step, s.m.projector().Step(), "the key only wakes the screen")
	s.keys("f3")
	require.Same(t, s.m.onProjector(), s.m.projector(), "no list of names")
	require.Contains(t, s.text(), "F9 first")
	s.keys("f1")
	require.Contains(t, s.text(), "Reveal, then next")
	require.NotContains(t, s.text(), "Learner")
	s.keys("esc", "s", "enter")
	require.NotNil(t, s.m.onProjector())
	s.keys("q")
	require.NotContains(t, s.text(), "Learner", "what is not saved has no name here")
	require.False(t, s.m.leaving)
}

// Whatever is pressed on the projector: it fits, never fails, no name shows,
// and the bench comes back.
func TestTheProjectorHoldsWhateverIsPressed(t *testing.T) {
	s := at(t, 80, 24, looks("light", canvas.Braille))
	all := []string{
		" ", "right", "left", "pgup", "pgdown", "home", "end", "1", "2", "0", "9", "enter", "s", "b", ".", "y", "w", "a", "x", "d", "m", "r", "z", "+", "-", "h", "j",
		"f1", "f2", "f3", "f4", "f5", "f6", "f7", "ctrl+t", "ctrl+p", "ctrl+z", "ctrl+pgdown", "up", "down", "esc", "tab", "g", "o", "c", "?",
	}
	rapid.Check(t, func(t *rapid.T) {
		if s.m.projector() == nil {
			s.m.over = nil
			s.keys("f9")
		}
		for range rapid.IntRange(1, 10).Draw(t, "keys") {
			s.keys(rapid.SampledFrom(all).Draw(t, "key"))
			require.True(t, s.m.fault == nil, "a fault of its own")
			if s.m.projector() == nil {
				require.Equal(t, "light", s.m.d.Settings.Theme.Name())
				break // what is pressed now is for the bench
			}
		}
		w, h := rapid.IntRange(1, 200).Draw(t, "columns"), rapid.IntRange(1, 60).Draw(t, "rows")
		s.send(tea.WindowSizeMsg{Width: w, Height: h})
		fits(t, s.m.View(), w, h)
		if s.m.projector() != nil {
			require.NotContains(t, s.text(), "Learner Four")
		}
	})
}

// anna is another client in a file of her own.
func anna(t *testing.T, s screen) desk.Opened {
	job := figure()
	job.Client.Name = "Anna Example"
	x := session.New(t.TempDir()+"/anna.chalkfold.toml", job)
	require.NoError(t, x.Save(job))
	return desk.Opened{Store: x, Path: x.Path, Saved: job, Says: "Opened."}
}

func TestSeveralClientsInOneEvening(t *testing.T) {
	s := first(t)
	s.edit()
	s.keys("esc", "3", " ", " ", " ")
	four, a := s.m.d.At(), anna(t, s)
	s.m.fulfil(desk.Ask{Take: &a}, nil)
	require.Equal(t, "Anna Example", s.m.d.Client())
	require.False(t, s.m.d.CanUndo(), "each has its own history")
	require.Len(t, s.m.d.Seats(), 2)
	require.Equal(t, desk.Measure, s.m.at)
	s.send(rescueDue{})
	require.Len(t, rescues(t), 1)
	s.keys("pgup")
	s.send(rescueDue{})
	require.Len(t, rescues(t), 2, "and its own rescue")
	s.keys("f2", "c", "l", "i", "e", "n", "t", "s", "enter")
	require.Contains(t, s.text(), "Learner Four")
	require.Contains(t, s.text(), "step 4 of")
	s.keys("enter")
	require.Equal(t, four, s.m.d.At())
	require.Equal(t, desk.Draft, s.m.at, "she is where she was")
	require.Equal(t, 4, s.m.draft.Step())
	s.keys("ctrl+z")
	require.False(t, s.m.d.Unsaved())
	require.False(t, s.m.d.CanUndo())
	s.m.fulfil(desk.Ask{Take: &a}, nil)
	require.True(t, s.m.d.Unsaved(), "opened again it is the one that is open")
	require.Len(t, s.m.d.Seats(), 2)
}

// A client is put away by itself: what is saved at once, else after a question.
func TestAClientIsClosedByItself(t *testing.T) {
	s := first(t)
	s.edit()
	four, path, a := s.m.d.At(), s.m.d.Path(), anna(t, s)
	s.m.fulfil(desk.Ask{Take: &a}, nil)
	s.m.do(keys.Clients)
	s.keys("delete") // on the one that is not here, with unsaved work
	require.Contains(t, s.text(), "The work on Learner Four is not saved.")
	s.keys("esc")
	require.Len(t, s.m.d.Seats(), 2)
	s.m.do(keys.Clients)
	s.keys("delete", "enter")
	require.Contains(t, s.text(), "Learner Four is put away.")
	require.Len(t, s.m.d.Seats(), 1)
	require.Equal(t, "Anna Example", s.m.d.Client())
	got, err := session.Open(path)
	require.NoError(t, err)
	require.True(t, got.Job.Body.Has(measure.WaistToKnee), "saved before it went")
	require.Nil(t, s.m.bays[four])
	s.keys("pgup")
	s.send(rescueDue{})
	require.NotEmpty(t, rescues(t))
	s.run(s.m.do(keys.CloseClient))
	s.keys("down", "enter")
	require.Empty(t, rescues(t), "given up")
	require.Len(t, s.m.d.Seats(), 1)
	require.True(t, s.m.d.Empty(), "an empty desk")
	s.run(s.m.do(keys.CloseClient))
	require.Nil(t, s.m.fault)
	require.Len(t, s.m.d.Seats(), 1)
}

func TestLeavingNamesAllAndSavesAll(t *testing.T) {
	s := first(t)
	s.edit()
	path := s.m.d.Path()
	a := anna(t, s)
	s.m.fulfil(desk.Ask{Take: &a}, nil)
	s.keys("pgup", "esc", "q")
	require.Contains(t, s.text(), "Anna Example and Learner Four")
	s.keys("enter")
	require.True(t, s.m.leaving)
	for _, p := range []string{path, a.Path} {
		x, err := session.Open(p)
		require.NoError(t, err)
		require.NotEqual(t, figure().Body, x.Job.Body, p)
	}
	require.Empty(t, rescues(t))
}

func TestLeavingAsksForANameWhereThereIsNone(t *testing.T) {
	t.Chdir(t.TempDir())
	s := first(t)
	s.edit()
	s.keys("esc", "f2")
	s.keys("n", "e", "w", " ", "c", "enter")
	require.Len(t, s.m.d.Seats(), 2)
	s.keys("3", "6", "enter", "esc", "q", "enter")
	require.False(t, s.m.leaving, "the new client has no file yet")
	require.Contains(t, s.text(), "Save as")
	s.keys("enter")
	require.True(t, s.m.leaving, s.text())
}

func TestAnIdleSampleMakesRoom(t *testing.T) {
	s := first(t)
	s.m.take(desk.Opened{Saved: session.Demo().Job})
	s.m.take(desk.Opened{Saved: figure()})
	require.Len(t, s.m.d.Seats(), 2)
}

func TestTheFirstScreenTakesTheUnitAndHasItsOwnHelp(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	m := NewModel(looks("mono", canvas.ASCII))
	begin(m, nil, measure.Cm)
	s := screen{t: t, m: m}
	s.send(tea.WindowSizeMsg{Width: 80, Height: 24})
	require.Equal(t, measure.Cm, m.d.Unit())
	s.keys("f1")
	require.NotContains(t, s.text(), "tape step", "nothing of the stage below")
	require.Contains(t, s.text(), "In a list or window")
	s.keys("esc", "down", "enter")
	require.Equal(t, measure.Cm, m.d.Unit())
	require.Equal(t, pattern.Job{Unit: measure.Cm}, m.d.Job())
}

// Every row of the command list does something, or says why it cannot.
func TestEveryRowOfTheCommandListDoesSomething(t *testing.T) {
	for _, stage := range []string{"1", "3", "6"} {
		for _, o := range at(t, 80, 24, looks("mono", canvas.ASCII)).m.offers() {
			s := at(t, 80, 24, looks("mono", canvas.ASCII))
			s.edit()
			s.keys("esc", stage)
			if a, _ := s.m.d.Keys.Find(o.ID); o.WhyNot != "" || o.ID == "suspend" || a.Where == keys.Field {
				continue
			}
			ok := false
			for _, now := range s.m.offers() {
				ok = ok || now.ID == o.ID && now.WhyNot == ""
			}
			if !ok {
				continue
			}
			before, version, set := s.m.View(), s.m.d.Version(), s.m.d.Settings
			s.run(s.m.do(o.ID))
			changed := s.m.View() != before || s.m.d.Version() != version || s.m.d.Settings != set || s.m.leaving
			require.True(t, changed || o.ID == "measure" || o.ID == "draft" || o.ID == "cut", "%s at stage %s", o.ID, stage)
		}
	}
}

// trimmed is the screen without the blanks at the ends of its lines.
func trimmed(s screen) string {
	var b strings.Builder
	for _, l := range s.lines() {
		b.WriteString(strings.TrimRight(l, " ") + "\n")
	}
	return b.String()
}

// A lesson that runs on the bench is shown page by page before the class; its
// list can be opened there, and the bench is as it was afterwards.
func TestALessonBeforeTheClass(t *testing.T) {
	s := at(t, 64, 20, looks("mono", canvas.ASCII))
	s.begin("back")
	s.keys("f9")
	require.NotNil(t, s.m.onProjector())
	require.Contains(t, s.text(), "Lesson 2  The back by chalk")
	s.keys(" ", " ", " ")
	require.Contains(t, s.text(), "of 13")
	require.Equal(t, 1, s.m.d.Running().Page)
	require.Equal(t, 3, s.m.onProjector().Step())
	s.keys("c", "right", "right")
	require.Regexp(t, `\d out, .*\d down`, s.text())
	s.keys("esc", "p", "b")
	require.Equal(t, "", strings.TrimSpace(s.text()))
	s.keys(" ", "f9")
	require.Nil(t, s.m.projector())
	require.Equal(t, 1, s.m.d.Running().Page)
}

// With nobody on the table the projector offers the sample client, who comes
// before the class at once; at the end the bench has its own colours back.
func TestTheSampleClientComesBeforeTheClass(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	m := NewModel(looks("dark", canvas.ASCII))
	m.later = func(time.Duration, tea.Msg) tea.Cmd { return nil }
	s := screen{t: t, m: m}
	s.send(tea.WindowSizeMsg{Width: 64, Height: 20})
	s.keys("esc", "f9")
	require.Contains(t, s.text(), "Nobody is on the table yet.")
	s.keys("enter")
	require.True(t, s.m.d.Projecting)
	require.Equal(t, "projector", s.m.d.Settings.Theme.Name())
	require.True(t, session.IsDemo(s.m.d.Job()))
	require.False(t, s.m.d.Private, "all of hers may be seen")
	require.Contains(t, s.text(), "of 37")
	s.keys(" ")
	require.Equal(t, 2, s.m.projector().Step())
	s.keys("f9")
	require.False(t, s.m.d.Projecting)
	require.Equal(t, "dark", s.m.d.Settings.Theme.Name())
}
