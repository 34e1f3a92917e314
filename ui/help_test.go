package ui

import (
	"os"
	"reflect"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/vt"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
	"chalkfold/ui/theme"
)

// TestMain lets the test binary be the workbench itself: for what only a real
// terminal shows.
func TestMain(m *testing.M) {
	time.Local = time.UTC // hours on the screen are the same everywhere
	if path := os.Getenv("WORKBENCH_TEST_FILE"); path != "" {
		s, err := session.Open(path)
		if err != nil {
			os.Exit(2)
		}
		os.Exit(run(Options{Session: s, Settings: looks("plain", canvas.Braille)}, setTrap(os.Getenv("WORKBENCH_TEST_FAULT"))))
	}
	os.Exit(m.Run())
}

func looks(name string, g canvas.Glyphs) desk.Settings {
	t, _ := theme.For(name)
	return desk.Settings{Theme: t.With(theme.Colour256), Glyphs: g, Aspect: 2}
}

// figure is the check figure in inches.
func figure() pattern.Job {
	body := map[measure.ID]measure.Length{}
	for id, x := range map[measure.ID]float64{
		measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5, measure.AcrossShoulders: 15,
		measure.AcrossFront: 12.75, measure.AcrossBack: 13.75, measure.BackNeckToWaist: 16, measure.SideNeckToWaist: 17.75,
		measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25, measure.WaistToHip: 8, measure.ShoulderDrop: 1.5,
	} {
		body[id] = measure.In.Length(x)
	}
	return pattern.Job{Client: pattern.Client{Name: "Learner Four"}, Body: measure.NewBody(body)}
}

// screen is a model with someone at the keyboard.
type screen struct {
	t       testing.TB
	m       *Model
	watched bool // each message is followed by a View, as on a screen
}

// at opens the check figure, saved in a folder of the test, at so many cells.
func at(t testing.TB, cols, rows int, set desk.Settings) screen {
	t.Helper()
	if tt, ok := t.(*testing.T); ok {
		tt.Setenv("XDG_STATE_HOME", tt.TempDir())
	}
	m := NewModel(set)
	s := session.New(t.TempDir()+"/four.chalkfold.toml", figure())
	require.NoError(t, s.Save(figure()))
	m.Take(s)
	m.later = func(time.Duration, tea.Msg) tea.Cmd { return nil }
	m.d.Now = func() time.Time { return time.Date(2026, 3, 4, 14, 2, 0, 0, time.UTC) }
	sc := screen{t: t, m: m}
	sc.send(tea.WindowSizeMsg{Width: cols, Height: rows})
	return sc
}

// send gives a message to the model and then those that its commands bring. It
// waits for no clock: a test lets the rescue copy come due itself.
func (s screen) send(msg tea.Msg) {
	_, cmd := s.m.Update(msg)
	if s.watched {
		_ = s.m.View()
	}
	s.run(cmd)
}

func (s screen) run(cmd tea.Cmd) {
	if cmd == nil {
		return
	}
	msg := cmd()
	switch msg := msg.(type) {
	case nil, tea.QuitMsg:
	case tea.BatchMsg:
		for _, c := range msg {
			s.run(c)
		}
	default:
		if cmds, ok := sequence(msg); ok {
			for _, c := range cmds {
				s.run(c)
			}
			return
		}
		s.send(msg)
	}
}

var names = map[string]tea.KeyType{
	"enter": tea.KeyEnter, "esc": tea.KeyEsc, "up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight, "tab": tea.KeyTab,
	"shift+tab": tea.KeyShiftTab, "pgup": tea.KeyPgUp, "pgdown": tea.KeyPgDown, "home": tea.KeyHome, "end": tea.KeyEnd, "backspace": tea.KeyBackspace,
	"delete": tea.KeyDelete, "f1": tea.KeyF1, "f2": tea.KeyF2, "f3": tea.KeyF3, "f4": tea.KeyF4, "f5": tea.KeyF5, "f6": tea.KeyF6, "f7": tea.KeyF7, "f8": tea.KeyF8, "f9": tea.KeyF9,
	"ctrl+c": tea.KeyCtrlC, "ctrl+s": tea.KeyCtrlS, "ctrl+z": tea.KeyCtrlZ, "ctrl+y": tea.KeyCtrlY, "ctrl+u": tea.KeyCtrlU, "ctrl+t": tea.KeyCtrlT,
	"ctrl+p": tea.KeyCtrlP, "ctrl+o": tea.KeyCtrlO, "ctrl+pgup": tea.KeyCtrlPgUp, "ctrl+pgdown": tea.KeyCtrlPgDown, "shift+left": tea.KeyShiftLeft, "shift+up": tea.KeyShiftUp, "shift+right": tea.KeyShiftRight, "shift+down": tea.KeyShiftDown, "ctrl+k": tea.KeyCtrlK, "ctrl+r": tea.KeyCtrlR,
}

// keys presses keys by name; what is no name is typed.
func (s screen) keys(all ...string) {
	for _, k := range all {
		s.send(message(k))
	}
}

// lines are the lines on the screen without their looks.
func (s screen) lines() []string { return strings.Split(ansi.Strip(s.m.View()), "\n") }

func (s screen) text() string { return strings.Join(s.lines(), "\n") }

// shown is the screen as a terminal shows it, and under it a grid of letters
// for its looks: b bold, r reverse, u underline.
func (s screen) shown() string {
	term := vt.NewEmulator(s.m.cols, s.m.rows)
	_, _ = term.WriteString(strings.ReplaceAll(s.m.View(), "\n", "\r\n"))
	var text, look strings.Builder
	for y := range s.m.rows {
		var a, b strings.Builder
		for x := range s.m.cols {
			c := term.CellAt(x, y)
			if c == nil || c.Content == "" {
				a.WriteByte(' ')
				b.WriteByte(' ')
				continue
			}
			a.WriteString(c.Content)
			look := letter(c.Style.Attrs, c.Style.Underline != 0)
			if c.Content == " " && look == 'b' {
				look = ' ' // nobody sees a bold blank
			}
			b.WriteByte(look)
		}
		text.WriteString(strings.TrimRight(a.String(), " ") + "\n")
		if l := strings.TrimRight(b.String(), " "); l != "" {
			look.WriteString(l + "\n")
		} else {
			look.WriteString("\n")
		}
	}
	return text.String() + "---- looks\n" + strings.TrimRight(look.String(), "\n") + "\n"
}

// sequence takes a tea.Sequence apart.
func sequence(msg tea.Msg) (cmds []tea.Cmd, ok bool) {
	v := reflect.ValueOf(msg)
	if v.Kind() != reflect.Slice || v.Type().Elem() != reflect.TypeFor[tea.Cmd]() {
		return nil, false
	}
	for i := range v.Len() {
		cmds = append(cmds, v.Index(i).Interface().(tea.Cmd))
	}
	return cmds, true
}

// The terminal's attributes of a cell.
const (
	bold     = 1 << 0
	reversed = 1 << 5
)

func letter(attrs uint8, underlined bool) byte {
	switch {
	case attrs&reversed != 0:
		return 'r'
	case underlined:
		return 'u'
	case attrs&bold != 0:
		return 'b'
	}
	return ' '
}
