package ui

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// randomKeys is how many keys are pressed on each session; a full View follows
// every tenth.
const (
	randomKeys  = 20_000
	viewEach    = 10
	randomShort = 600
)

// sessions are what the random keys begin with.
var randomSessions = map[string]func(t testing.TB) screen{
	"figure": func(t testing.TB) screen { return seated(t, 80, 24) },
	"half":   func(t testing.TB) screen { return half(t, 60, 16) },
	"nobody": func(t testing.TB) screen {
		s := bareDesk(t, 100, 30)
		s.m.Begin()
		return s
	},
	"sample": func(t testing.TB) screen { return seatedWith(t, 120, 40, session.Demo().Job) },
	"thumb": func(t testing.TB) screen {
		job := figure().WithStyle("method", pattern.PickValue(pattern.Thumb)).WithBody(measure.WaistGirth, 0)
		return seatedWith(t, 64, 20, job.WithoutBody(measure.WaistGirth))
	},
}

// A hundred thousand random keys, over several sessions: no fault, every
// screen exactly as large as its window, and what was done can be taken back
// to where it began and made again. What fails comes back with the name of its
// subtest, which holds the seed; the last keys are printed.
func TestRandomKeys(t *testing.T) {
	keys := randomKeys
	if testing.Short() {
		keys = randomShort
	}
	for i, name := range slices.Sorted(maps.Keys(randomSessions)) {
		t.Run(fmt.Sprintf("%s/seed %d", name, i+1), func(t *testing.T) {
			p := &player{screen: randomSessions[name](t), rand: rand.New(rand.NewPCG(uint64(i+1), 1)), all: alphabet()} //nolint:gosec // to be repeated, not to be secret
			defer p.told()
			for p.pressed < keys {
				p.press()
			}
			p.takeBack()
		})
	}
}

// player presses random keys.
type player struct {
	screen
	rand    *rand.Rand
	all     []string
	last    []string
	burst   []string // keys that make sense together
	pressed int
}

// alphabet are the keys, those of moving about more than once.
func alphabet() []string {
	all := slices.Sorted(maps.Keys(names))
	moves := []string{"up", "down", "left", "right", "enter", "enter", "esc", "esc", "tab", "pgup", "pgdown", "ctrl+u", "f2", "ctrl+pgdown"}
	for range 4 {
		all = append(all, moves...)
	}
	for r := ' '; r <= '~'; r++ {
		if r != '/' && r != '~' { // no path leads out of the test's folder
			all = append(all, string(r))
		}
	}
	for range 3 {
		all = append(all, strings.Split("1234560+-zxcoagwyrmdtpn", "")...)
	}
	return append(all, "36 1/2", "½", "92,5 cm", "83", "1", "Nguyễn 漢字", "measure", "lesson", "new client", "unit")
}

// bursts are what a person would do, among what a cat would.
var bursts = [][]string{
	{"esc", "esc", "esc", "1", "1", "ctrl+u", "36 1/2", "enter", "ctrl+u", "29", "enter"},
	{"esc", "esc", "esc", "2", "2", "ctrl+u", "42", "enter", "down", "pgup", "down"},
	{"esc", "esc", "esc", "3", " ", " ", "w", "up", "enter"},
	{"esc", "esc", "esc", "4", "t", "w", "up", "enter"},
	{"esc", "esc", "esc", "2", "2", "down", "right", "down", "right"},
}

// folders are the overlays whose Enter may go to or write into a folder that
// is not the test's.
var folders = []text.ID{text.OpenTitle, text.SaveTitle, text.OverwriteTitle, text.SaveFailed}

// press presses one key and looks at the screen after every tenth.
func (p *player) press() {
	if len(p.burst) == 0 && p.rand.IntN(60) == 0 {
		p.burst = append(p.burst, bursts[p.rand.IntN(len(bursts))]...)
	}
	k := p.all[p.rand.IntN(len(p.all))]
	if len(p.burst) > 0 {
		k, p.burst = p.burst[0], p.burst[1:]
	}
	if o := p.m.top(); o != nil && k == "enter" {
		for _, id := range folders {
			if o.Title() == p.m.d.Tell(id) {
				k = "esc"
			}
		}
	}
	p.pressed++
	p.last = append(p.last, k)
	if len(p.last) > 200 {
		p.last = p.last[1:]
	}
	p.m.d.Now = func() time.Time { return time.Date(2026, 3, 4, 14, 2, p.pressed, 0, time.UTC) }
	switch {
	case p.rand.IntN(50) == 0:
		p.get(tea.MouseMsg{X: p.rand.IntN(p.m.cols + 1), Y: p.rand.IntN(p.m.rows + 1), Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
	case p.rand.IntN(80) == 0:
		p.get(tea.KeyMsg{Type: tea.KeyRunes, Paste: true, Runes: []rune("bust 36\nwaist\t28\n" + k)})
	default:
		p.get(message(k))
	}
	if p.m.leaving {
		p.m.leaving, p.m.over = false, nil
	}
	if p.pressed%viewEach == 0 {
		p.look()
	}
}

// get gives a message to the model. What a command brings is heard now and
// then: it may come late or never.
func (p *player) get(msg tea.Msg) {
	_, cmd := p.m.Update(msg)
	require.Nil(p.t, p.m.fault, "a fault of its own")
	if cmd == nil || p.rand.IntN(40) > 0 {
		return
	}
	got := cmd()
	if cmds, ok := got.(tea.BatchMsg); ok && len(cmds) > 0 && cmds[0] != nil {
		got = cmds[0]()
	}
	if _, quit := got.(tea.QuitMsg); !quit && got != nil {
		_, _ = p.m.Update(got)
		require.Nil(p.t, p.m.fault, "a fault of its own")
	}
}

// look makes the window another size and reads the screen.
func (p *player) look() {
	w, h := 40+p.rand.IntN(90), 12+p.rand.IntN(30)
	switch p.rand.IntN(12) {
	case 0:
		w, h = 1+p.rand.IntN(220), 1+p.rand.IntN(70)
	case 1:
		w, h = 80, 24
	}
	p.get(tea.WindowSizeMsg{Width: w, Height: h})
	lines := strings.Split(p.m.View(), "\n")
	require.Nil(p.t, p.m.fault, "a fault of its own")
	require.Len(p.t, lines, h, "%d x %d", w, h)
	for _, l := range lines {
		if n := ansi.StringWidth(l); n > w {
			p.t.Fatalf("%d wide in %d x %d: %q", n, w, h, l)
		}
	}
}

// takeBack undoes all in every open session and does it again.
func (p *player) takeBack() {
	d := p.m.d
	p.m.over = nil
	p.m.curtain()
	d.Study(desk.Running{})
	changes := 0
	for _, seat := range d.Seats() {
		d.Switch(seat.ID)
		end, undone := d.Job(), 0
		for ; d.CanUndo(); undone++ {
			d.Undo()
		}
		changes += undone
		require.Equal(p.t, d.Opened(), d.Job(), "all taken back is the start")
		for range undone {
			d.Redo()
		}
		require.Equal(p.t, end, d.Job(), "and all made again is the end")
	}
	require.Greater(p.t, changes+d.Version(), p.pressed/50, "the keys changed something")
	require.Positive(p.t, changes)
}

// told prints the last keys of a run that failed.
func (p *player) told() {
	if p.t.Failed() {
		quoted := make([]string, len(p.last))
		for i, k := range p.last {
			quoted[i] = strconv.Quote(k)
		}
		p.t.Logf("after %d keys, the last of them: %s", p.pressed, strings.Join(quoted, ", "))
	}
}

// message is a key as the terminal sends it.
func message(k string) tea.KeyMsg {
	if t, ok := names[k]; ok {
		return tea.KeyMsg{Type: t}
	}
	if k == " " {
		return tea.KeyMsg{Type: tea.KeySpace, Runes: []rune{' '}}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(k)}
}
