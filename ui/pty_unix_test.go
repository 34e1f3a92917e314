//go:build unix

package ui

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/stretchr/testify/require"
	"golang.org/x/sys/unix"

	"chalkfold/measure"
	_ "chalkfold/ui/early"
	"chalkfold/ui/session"
)

// patientWait is for a machine that has much else to do.
const patientWait = 10 * time.Second

// terminal is a terminal that answers nothing, with the workbench in it.
type terminal struct {
	cmd  *exec.Cmd
	file *os.File
	mu   sync.Mutex
	out  bytes.Buffer
	exit chan error
}

func open(t *testing.T, env ...string) (*terminal, string) {
	t.Helper()
	if testing.Short() {
		t.Skip("starts a process")
	}
	dir := t.TempDir()
	path := filepath.Join(dir, "four.chalkfold.toml")
	require.NoError(t, session.New(path, figure()).Save(figure()))
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "WORKBENCH_TEST_FILE="+path, "XDG_STATE_HOME="+dir, "TERM=xterm-256color", "LC_ALL=C.UTF-8")
	cmd.Env = append(cmd.Env, env...)
	f, err := pty.StartWithSize(cmd, &pty.Winsize{Rows: 24, Cols: 80})
	require.NoError(t, err)
	term := &terminal{cmd: cmd, file: f, exit: make(chan error, 1)}
	go func() {
		b := make([]byte, 1<<16)
		for {
			n, err := f.Read(b)
			term.mu.Lock()
			term.out.Write(b[:n])
			term.mu.Unlock()
			if err != nil {
				return
			}
		}
	}()
	go func() { term.exit <- cmd.Wait() }()
	t.Cleanup(func() {
		_ = cmd.Process.Kill()
		_ = f.Close()
	})
	return term, dir
}

func (s *terminal) text() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.out.String()
}

func (s *terminal) sees(what string, within time.Duration) bool {
	for end := time.Now().Add(within); time.Now().Before(end); time.Sleep(2 * time.Millisecond) {
		if strings.Contains(s.text(), what) {
			return true
		}
	}
	return false
}

func (s *terminal) types(keys string) { _, _ = io.WriteString(s.file, keys) }

// A terminal that answers no question must not hold the start up: without the
// early answer it takes five seconds. The limit is wide, for slow machines.
func TestTheFirstPictureWaitsForNoAnswer(t *testing.T) {
	s, _ := open(t)
	begun := time.Now()
	require.True(t, s.sees("Measure", patientWait))
	require.Less(t, time.Since(begun), 4*time.Second)
	require.NotContains(t, s.text(), "\x1b]11;?", "nothing is asked of the terminal")
	require.Contains(t, s.text(), frameBegin)
	s.types("\x1b")
	require.True(t, s.sees("Out of the field", patientWait))
	s.types("q")
	require.NoError(t, <-s.exit)
	require.True(t, s.sees("\x1b[?1049l", patientWait), "the first screen is back")
}

// While nobody does anything nothing is sent: no clock, no spinner, no blinking.
// And nothing is ever asked of the terminal, whatever it is called: a late
// answer would land in a field.
func TestNothingIsSentWhileIdleAndNothingIsAsked(t *testing.T) {
	query := regexp.MustCompile(`\x1b\[[?>=0-9;]*[cn]|\x1b\](1[0-9]|4;[0-9]+);\?|\x1bP\+q|\x1b\[\?[0-9]+\$p|\x1b_G`)
	for _, term := range []string{"xterm-256color", "screen", "tmux-256color"} {
		s, _ := open(t, "TERM="+term)
		require.True(t, s.sees("Measure", patientWait))
		s.types("\x1b")
		require.True(t, s.sees("Out of the field", patientWait))
		s.types("3 ")
		require.True(t, s.sees("Step 2 of", patientWait))
		time.Sleep(300 * time.Millisecond)
		before := len(s.text())
		time.Sleep(700 * time.Millisecond)
		require.Len(t, s.text(), before, "%s: %q", term, s.text()[before:])
		s.types("4")
		require.True(t, s.sees("Side seams meet", patientWait))
		s.types("q")
		require.NoError(t, <-s.exit)
		require.NotRegexp(t, query, s.text(), term)
	}
}

// The height of a cell comes from the window's size in pixels where the
// driver knows it, and from nowhere else.
func TestTheCellIsMeasuredByTheDriver(t *testing.T) {
	if testing.Short() {
		t.Skip("opens a terminal")
	}
	master, slave, err := pty.Open()
	require.NoError(t, err)
	defer master.Close()
	defer slave.Close()
	for _, tc := range []struct {
		size pty.Winsize
		want float64
		ok   bool
	}{
		{pty.Winsize{Rows: 24, Cols: 80}, 0, false},
		{pty.Winsize{Rows: 24, Cols: 80, X: 80 * 26, Y: 24 * 59}, 59. / 26, true},
		{pty.Winsize{Rows: 50, Cols: 100, X: 1000, Y: 1000}, 2, true},
		{pty.Winsize{Rows: 50, Cols: 100, X: 1000, Y: 10}, 0, false},
	} {
		require.NoError(t, pty.Setsize(slave, &tc.size))
		got, ok := cellAspect(slave)
		require.Equal(t, tc.ok, ok, "%+v", tc.size)
		if ok {
			require.InDelta(t, tc.want, got, 1e-9)
		}
	}
	s := first(t)
	s.m.d.Settings.Aspect = 1.8
	s.m.pixels = func() (float64, bool) { return 0, false }
	s.m.proportions()
	require.InDelta(t, 1.8, s.m.d.Settings.Aspect, 0, "the setting stands where nothing is known")
	s.m.pixels = func() (float64, bool) { return 2.27, true }
	s.m.proportions()
	require.InDelta(t, 2.27, s.m.d.Settings.Aspect, 0)
}

func TestSignalsRescueAndRestore(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGHUP, syscall.SIGTERM, syscall.SIGINT} {
		s, dir := open(t)
		require.True(t, s.sees("Measure", patientWait))
		s.types("\x15" + "37 1/4\r")
		require.True(t, s.sees("94.6", patientWait))
		require.NoError(t, s.cmd.Process.Signal(sig))
		err := <-s.exit
		var code *exec.ExitError
		require.ErrorAs(t, err, &code)
		require.Equal(t, exitSignal+int(sig), code.ExitCode())
		s.endsWell(t, dir, "")
	}
}

// A fault of our own, wherever it happens, ends with the terminal as it was,
// the work in a rescue copy and a plain sentence; what happened is in a log.
func TestFaultsRescueAndRestore(t *testing.T) {
	for _, kind := range traps {
		s, dir := open(t, "WORKBENCH_TEST_FAULT="+kind)
		require.True(t, s.sees("Measure", patientWait))
		s.types("\x1b[19~") // the mouse on
		require.True(t, s.sees("\x1b[?1002h", patientWait), kind)
		s.types("\x15" + "37 1/4\r")
		require.True(t, s.sees("94.6", patientWait), kind)
		s.types("!")
		err := <-s.exit
		var code *exec.ExitError
		require.ErrorAs(t, err, &code, kind)
		require.Equal(t, exitFault, code.ExitCode(), kind)
		s.endsWell(t, dir, "Chalkfold stopped by a fault of its own.")
		require.NotContains(t, s.text(), "goroutine", kind)
		log, err := os.ReadFile(filepath.Join(dir, "chalkfold", "fault.log"))
		require.NoError(t, err)
		require.Contains(t, string(log), "a trap in "+kind)
		require.Contains(t, string(log), "goroutine")
	}
}

// endsWell: the terminal is as it was, the work is rescued, and it is said.
func (s *terminal) endsWell(t *testing.T, dir, says string) {
	t.Helper()
	require.True(t, s.sees("Your work is safe in", patientWait))
	out := s.text()
	require.Contains(t, out, "\x1b[?1049l", "the first screen is back")
	tail := out[strings.LastIndex(out, "\x1b[?1049l"):]
	require.Contains(t, tail, says, "said where it can be read")
	require.Contains(t, tail, "Your work is safe in")
	require.Greater(t, strings.LastIndex(out, "\x1b[?25h"), strings.LastIndex(out, "\x1b[?25l"), "the cursor shows")
	for _, mouse := range []string{"1002", "1003", "1006"} {
		require.GreaterOrEqual(t, strings.LastIndex(out, "\x1b[?"+mouse+"l"), strings.LastIndex(out, "\x1b[?"+mouse+"h"), "the mouse is the terminal's")
	}
	state, err := unix.IoctlGetTermios(int(s.file.Fd()), termios)
	require.NoError(t, err)
	const cooked = unix.ICANON | unix.ECHO | unix.ISIG
	require.EqualValues(t, cooked, state.Lflag&cooked, "what is typed is echoed and sent by lines again")
	found, err := filepath.Glob(filepath.Join(dir, "chalkfold", "rescue", "*"))
	require.NoError(t, err)
	require.Len(t, found, 1)
	rescued, err := session.Open(found[0])
	require.NoError(t, err)
	saved, err := session.Open(filepath.Join(dir, "four.chalkfold.toml"))
	require.NoError(t, err)
	want := saved.Job.Body.With(measure.WaistToKnee, measure.In.Length(37.25))
	require.True(t, want.Equal(rescued.Job.Body), "the session's job with the change: %v", session.Differences(saved.Job, rescued.Job))
}
