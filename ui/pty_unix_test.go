//go:build unix

package ui

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/stretchr/testify/require"

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

func open(t *testing.T) (*terminal, string) {
	t.Helper()
	if testing.Short() {
		t.Skip("starts a process")
	}
	dir := t.TempDir()
	path := filepath.Join(dir, "four.chalkfold.toml")
	require.NoError(t, session.New(path, figure()).Save(figure()))
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "WORKBENCH_TEST_FILE="+path, "XDG_STATE_HOME="+dir, "TERM=xterm-256color", "LC_ALL=C.UTF-8")
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

func TestSignalsRescueAndRestore(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGHUP, syscall.SIGTERM} {
		s, dir := open(t)
		require.True(t, s.sees("Measure", patientWait))
		s.types("\x15" + "37 1/4\r")
		require.True(t, s.sees("94.6", patientWait))
		require.NoError(t, s.cmd.Process.Signal(sig))
		err := <-s.exit
		var code *exec.ExitError
		require.ErrorAs(t, err, &code)
		require.Equal(t, exitSignal+int(sig), code.ExitCode())
		require.True(t, s.sees("\x1b[?1049l", patientWait), "the first screen is back")
		require.True(t, s.sees("Your work is safe in", patientWait))
		found, err := filepath.Glob(filepath.Join(dir, "chalkfold", "rescue", "*"))
		require.NoError(t, err)
		require.NotEmpty(t, found)
	}
}
