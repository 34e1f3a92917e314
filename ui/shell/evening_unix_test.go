//go:build unix

package shell_test

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"chalkfold/ui/session"
	"chalkfold/ui/shell"

	"github.com/stretchr/testify/require"
)

// A whole evening of each of the three users, in a terminal of its own, as
// they would sit at it: keys in, the screen read back.

// table is a tmux of its own with a shell in it.
type table struct {
	t      *testing.T
	socket string
	home   string
	prog   string
}

// program builds the program once for all evenings, into a folder that is gone
// when the tests of this room have run.
var program = sync.OnceValues(func() (string, error) {
	prog := filepath.Join(shell.Built(), "chalkfold")
	if out, err := exec.Command("go", "build", "-o", prog, "chalkfold").CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w: %s", err, out)
	}
	return prog, nil
})

func sitDown(t *testing.T, cols, rows int) *table {
	t.Helper()
	if testing.Short() {
		t.Skip("builds and drives the program")
	}
	if _, err := exec.LookPath("tmux"); err != nil {
		t.Skip("tmux is not here: an evening in a terminal cannot be played")
	}
	home := t.TempDir()
	prog, err := program()
	require.NoError(t, err)
	tb := &table{t: t, home: home, prog: prog, socket: filepath.Join(home, "s")}
	tb.tmux("-f", os.DevNull, "new-session", "-d", "-x", fmt.Sprint(cols), "-y", fmt.Sprint(rows), "-c", home, "PS1='READY> ' exec sh")
	t.Cleanup(func() { tb.tmux("kill-server") })
	tb.sees("READY>")
	return tb
}

func (tb *table) tmux(args ...string) string {
	c := exec.Command("tmux", append([]string{"-S", tb.socket}, args...)...)
	c.Env = append(os.Environ(), "HOME="+tb.home, "XDG_CONFIG_HOME="+tb.home+"/c", "XDG_STATE_HOME="+tb.home+"/s-state", "XDG_CACHE_HOME="+tb.home+"/k",
		"XDG_DATA_HOME="+tb.home+"/d", "LC_ALL=C.UTF-8", "TERM=xterm-256color", "TMUX=")
	out, _ := c.CombinedOutput()
	return string(out)
}

func (tb *table) screen() string { return tb.tmux("capture-pane", "-p") }

// sees waits until the screen holds the words, whatever the case.
func (tb *table) sees(words string) {
	tb.t.Helper()
	for range 400 {
		if strings.Contains(strings.ToLower(tb.screen()), strings.ToLower(words)) {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	tb.t.Fatalf("the screen never showed %q:\n%s", words, tb.screen())
}

// press sends keys by name (Enter, Escape, F1, Space, C-s, Down ...).
func (tb *table) press(keys ...string) {
	for _, k := range keys {
		tb.tmux("send-keys", k)
		time.Sleep(120 * time.Millisecond)
	}
}

func (tb *table) write(text string) { tb.tmux("send-keys", "-l", "--", text) }

func (tb *table) starts(args string) {
	tb.write(tb.prog + " " + args)
	tb.press("Enter")
}

// leaves goes by Esc and q, and waits for the shell.
func (tb *table) leaves() {
	tb.press("Escape", "Escape", "q")
	tb.sees("READY>")
}

// demo writes the demonstration's session into the home.
func (tb *table) demo() string {
	path := filepath.Join(tb.home, "learner.chalkfold.toml")
	require.NoError(tb.t, os.WriteFile(path, session.DemoText(), 0o600))
	return path
}

// A beginner comes for the first time: the sample client, a step at a time,
// what and why, and out again.
func TestEveningOfABeginner(t *testing.T) {
	tb := sitDown(t, 80, 24)
	tb.starts("--glyphs ascii")
	tb.sees("Learn a draft")
	tb.sees("sample client")
	for !strings.Contains(selected(tb.screen()), "sample") {
		tb.press("Down")
	}
	tb.press("Enter")
	tb.sees("1 Measure 14/14")
	tb.press("Escape", "3")
	tb.sees("Step 1 of")
	for range 40 {
		tb.press("Space")
		if strings.Contains(tb.screen(), "Step 37 of 37") {
			break
		}
	}
	tb.sees("Step 37 of 37")
	tb.press("4")
	tb.sees("Side seams meet")
	tb.press("F1")
	tb.sees("Help")
	tb.press("Escape")
	tb.leaves()
}

func selected(screen string) string {
	for line := range strings.SplitSeq(screen, "\n") {
		if strings.HasPrefix(strings.TrimSpace(line), ">") {
			return strings.ToLower(line)
		}
	}
	return ""
}

// A tutor shows a draft to the class: projector, step by step, a blank
// screen, figures hidden, and back to the same place.
func TestEveningOfATutor(t *testing.T) {
	tb := sitDown(t, 64, 20)
	tb.starts(tb.demo())
	tb.sees("Measure")
	tb.press("Escape", "3")
	tb.sees("Step 1 of")
	tb.press("F9")
	tb.sees("of 37")
	require.NotContains(t, tb.screen(), "Maro", "the client's name is not shown to a class")
	tb.press("Space", "Space", "Space", "Left")
	tb.press("b")
	time.Sleep(300 * time.Millisecond)
	require.Empty(t, strings.TrimSpace(tb.screen()), "a blank screen is blank")
	tb.press("b", "F9")
	tb.sees("Draft")
	tb.sees("Maro")
	tb.leaves()
}

// A dressmaker reopens a client, changes the waist, undoes and redoes it,
// looks at truing, saves, and finds it saved the next time.
func TestEveningOfADressmaker(t *testing.T) {
	tb := sitDown(t, 100, 30)
	path := tb.demo()
	tb.starts(path)
	tb.sees("Maro Tellin")
	for !strings.Contains(selected(tb.screen()), "waist girth") {
		tb.press("Down")
	}
	tb.press("C-u")
	tb.write("76")
	tb.press("Enter")
	tb.sees("Waist girth 78 -> 76")
	tb.sees("*")
	tb.press("C-z")
	tb.sees("Undone")
	tb.press("C-y")
	tb.sees("76")
	tb.press("Escape", "4")
	tb.sees("Side seams meet")
	tb.press("C-s")
	tb.sees("Saved")
	tb.leaves()
	s, err := session.Open(path)
	require.NoError(t, err)
	waist, _ := s.Job.Body.Get("waist_girth")
	require.InDelta(t, 760, waist.MM(), 1e-9)
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Contains(t, string(text), "# over the bra she will wear", "comments are kept")
	tb.starts(path)
	tb.sees("Maro Tellin")
	tb.leaves()
}
