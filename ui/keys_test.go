package ui

import (
	"os"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
)

func first(t *testing.T) screen { return at(t, 80, 24, looks("mono", canvas.ASCII)) }

// edit changes one number through the keyboard, as anybody would.
func (s screen) edit() {
	s.keys("esc", "1", "ctrl+u", "3", "7", " ", "1", "/", "4", "enter")
}

func TestAnEditIsStarredUndoneAndDoneAgain(t *testing.T) {
	s := first(t)
	s.edit()
	require.Contains(t, s.lines()[0], "*")
	s.keys("ctrl+z")
	require.NotContains(t, s.lines()[0], "*")
	require.Contains(t, s.text(), "Undone: ")
	s.keys("ctrl+y")
	require.Contains(t, s.text(), "Done again: ")
	require.Contains(t, s.lines()[0], "*")
}

func TestLettersReadAtOnceAreAllTaken(t *testing.T) {
	s := first(t)
	s.keys("esc", "1", "ctrl+u", "37 1/4", "enter")
	require.Contains(t, s.lines()[0], "*")
	s.keys("esc", "23") // two keys in one message: Style, then text in its field
	require.Equal(t, desk.Style, s.m.at)
	s.keys("ctrl+z", "esc", "3")
	require.Equal(t, desk.Draft, s.m.at)
}

func TestEscNeverLeavesAndQAsks(t *testing.T) {
	s := first(t)
	for range 20 {
		s.keys("esc")
	}
	require.False(t, s.m.leaving)
	require.Contains(t, s.text(), "Esc goes back")
	s.edit()
	s.keys("esc", "q")
	require.False(t, s.m.leaving)
	require.Contains(t, s.text(), "Save and leave")
	s.keys("esc")
	require.Nil(t, s.m.top())
	s.keys("esc", "q", "enter")
	require.True(t, s.m.leaving, "saving is the first answer")
	got, err := session.Open(s.m.d.Path())
	require.NoError(t, err)
	require.True(t, got.Job.Body.Has(measure.WaistToKnee), "the number typed is in the file")
}

func TestQIsALetterWhileTyping(t *testing.T) {
	s := first(t)
	s.keys("q")
	require.False(t, s.m.leaving)
}

func TestCtrlCTwiceLeavesAtOnceAndRescues(t *testing.T) {
	s := first(t)
	s.edit()
	s.keys("ctrl+c")
	require.False(t, s.m.leaving)
	s.keys("ctrl+c")
	require.True(t, s.m.leaving)
	require.NotEmpty(t, rescues(t))
	s = first(t)
	s.edit()
	s.keys("ctrl+c")
	s.m.d.Now = func() time.Time { return time.Date(2026, 3, 4, 15, 0, 0, 0, time.UTC) }
	s.keys("esc", "ctrl+c")
	require.False(t, s.m.leaving, "an hour later it asks again")
}

func rescues(t *testing.T) []os.DirEntry {
	t.Helper()
	all, err := os.ReadDir(session.RescueDir())
	if err != nil {
		return nil
	}
	return all
}

func TestTheRescueCopyFollowsTheWork(t *testing.T) {
	s := first(t)
	s.edit()
	s.send(rescueDue{})
	require.Len(t, rescues(t), 1)
	s.keys("ctrl+s")
	require.Empty(t, rescues(t), "saved work needs none")
	s.keys("ctrl+z")
	s.send(rescueDue{})
	require.Len(t, rescues(t), 1)
	s.keys("ctrl+y")
	s.send(rescueDue{})
	require.Empty(t, rescues(t), "neither does what is as saved")
	s.keys("ctrl+z", "esc", "q", "down", "enter")
	require.True(t, s.m.leaving)
	require.Empty(t, rescues(t), "declined")
}

func TestSavingSaysWhatAndWhen(t *testing.T) {
	s := first(t)
	s.edit()
	s.keys("f5")
	require.Contains(t, s.text(), "Saved four.chalkfold.toml 14:02")
	require.NotContains(t, s.lines()[0], "*")
}

func TestSavingTakesWhatIsStillInTheField(t *testing.T) {
	s := first(t)
	s.keys("ctrl+u", "38", "ctrl+s")
	got, err := session.Open(s.m.d.Path())
	require.NoError(t, err)
	require.True(t, got.Job.Body.Has(measure.WaistToKnee))
}

func TestAFileChangedElsewhereIsAskedAbout(t *testing.T) {
	s := first(t)
	s.edit()
	data, err := os.ReadFile(s.m.d.Path())
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(s.m.d.Path(), append(data, "# mine\n"...), 0o600))
	s.keys("ctrl+s")
	require.Contains(t, s.text(), "changed elsewhere")
	require.True(t, s.m.d.Unsaved())
	s.keys("down", "enter")
	require.False(t, s.m.d.Unsaved(), "written over")
}

func TestWithoutAFileSavingAsksForAName(t *testing.T) {
	s := first(t)
	s.m.take(desk.Opened{Saved: figure()})
	s.m.d.Change(s.m.d.Job().WithBody(measure.HipGirth, 1000), "hip")
	s.keys("ctrl+s")
	require.NotNil(t, s.m.top())
}

func TestStagesGoRoundAndKeepWhatIsTyped(t *testing.T) {
	s := first(t)
	s.keys("ctrl+u", "38", "ctrl+pgdown")
	require.Equal(t, desk.Style, s.m.at)
	require.True(t, s.m.d.Unsaved(), "what was typed is accepted on leaving")
	for range 5 {
		s.keys("ctrl+pgdown")
	}
	require.Equal(t, desk.Measure, s.m.at)
	s.keys("ctrl+pgup")
	require.Equal(t, desk.Cut, s.m.at)
}

func TestHelpComesBackToTheSameState(t *testing.T) {
	s := first(t)
	s.keys("esc", "3", " ", " ", "z")
	before := s.text()
	s.keys("f1")
	require.NotEqual(t, before, s.text())
	s.keys("esc")
	require.Equal(t, before, s.text())
}

func TestLooksChangeAtOnce(t *testing.T) {
	s := first(t)
	ascii := s.text()
	s.keys("f6")
	require.NotEqual(t, ascii, s.text())
	s.keys("f6", "f6")
	s.keys("ctrl+t")
	require.NotEqual(t, "mono", s.m.d.Settings.Theme.Name())
	require.Contains(t, s.text(), "Theme ")
}

func TestAStepIsChosenFromTheList(t *testing.T) {
	s := first(t)
	s.keys("esc", "3", "s", "1", "2", "enter")
	require.Equal(t, 12, s.m.draft.Step())
	require.Contains(t, s.text(), "Step 12 of")
}

func TestAFaultEndsInOrderAndRescues(t *testing.T) {
	s := first(t)
	s.edit()
	s.m.stages[0] = nil // a fault of our own
	s.m.at = desk.Measure
	s.keys("x")
	require.NotNil(t, s.m.fault)
	require.True(t, s.m.leaving)
	require.Contains(t, s.m.keepWork(), session.RescueDir())
	require.NotEmpty(t, rescues(t))
	var said strings.Builder
	require.Equal(t, exitFault, farewell(s.m, &said, nil, nil))
	require.Contains(t, said.String(), "fault of its own")
	require.NotContains(t, said.String(), "goroutine")
}

func TestAFaultInACommandComesBack(t *testing.T) {
	s := first(t)
	s.run(s.m.guard(func() tea.Msg { panic("no") }))
	require.NotNil(t, s.m.fault)
}

// Whatever is typed into the forms: taking everything back is where it began.
func TestUndoingAllIsTheStart(t *testing.T) {
	s := first(t)
	start := s.m.d.Job()
	rapid.Check(t, func(t *rapid.T) {
		for range rapid.IntRange(1, 12).Draw(t, "keys") {
			s.keys(rapid.SampledFrom([]string{"pgup", "pgdown", "ctrl+u", "38", "92 cm", "enter", "down", "up", "right", "left", "esc", "1", "2", "4", "t", "f4", "abc", "ctrl+pgdown"}).Draw(t, "key"))
		}
		for range 200 {
			s.keys("ctrl+z")
			if !s.m.d.CanUndo() {
				break
			}
		}
		require.Equal(t, start, s.m.d.Job())
		require.False(t, s.m.d.Unsaved())
	})
}

func TestTheMouseClicksWhatIsShown(t *testing.T) {
	s := first(t)
	click := func(x, y int) {
		s.send(tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	}
	at := strings.Index(s.lines()[0], "4 True")
	click(at, 0)
	require.Equal(t, desk.Measure, s.m.at, "off at first: the terminal marks text")
	s.keys("f8")
	s.text()
	click(at, 0)
	require.Equal(t, desk.True, s.m.at)
	last := s.lines()[23]
	click(strings.Index(last, "F1")+1, 23)
	require.NotNil(t, s.m.top())
	s.send(tea.MouseMsg{Button: tea.MouseButtonWheelDown})
	s.keys("esc", "3")
	s.send(tea.MouseMsg{Button: tea.MouseButtonWheelUp})
	require.Nil(t, s.m.fault)
}

func TestSavingThatFailsSaysSoAndKeepsTheWork(t *testing.T) {
	s := first(t)
	s.edit()
	s.send(saved{job: s.m.d.Job(), path: s.m.d.Path(), err: os.ErrPermission})
	require.True(t, s.m.d.Unsaved())
	require.Contains(t, s.text(), "Not saved")
	s.keys("esc")
	require.Contains(t, s.lines()[0], "*")
}

// Sleep is in the command list; the framework does it, and wakes again.
func TestSleepIsInTheCommandList(t *testing.T) {
	s := first(t)
	s.edit()
	s.keys("f2", "sleep")
	require.Contains(t, s.text(), "Put Chalkfold to sleep")
	_, cmd := s.m.Update(message("enter"))
	require.NotNil(t, cmd)
	require.IsType(t, tea.SuspendMsg{}, asked(cmd))
	before := s.m.d.Job()
	s.send(tea.ResumeMsg{})
	require.Equal(t, before, s.m.d.Job())
	require.True(t, s.m.d.Unsaved())
	s.send(tea.KeyMsg{Type: tea.KeyCtrlZ})
	require.False(t, s.m.d.Unsaved(), "Ctrl+Z takes back; it never puts to sleep")
}

// asked is the one message that a command brings.
func asked(cmd tea.Cmd) tea.Msg {
	msg := cmd()
	if all, ok := msg.(tea.BatchMsg); ok {
		for _, c := range all {
			if c != nil {
				return asked(c)
			}
		}
	}
	return msg
}
