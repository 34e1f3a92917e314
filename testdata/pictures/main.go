// Pictures makes README's pictures from real screens: it builds the program,
// runs it in a terminal of its own, presses keys, and draws each screen cell
// by cell as SVG.
//
//	go run ./testdata/pictures          # writes testdata/pictures/*.svg
//
// Dots of drawings are drawn as shapes, so that no font decides how they
// look.
package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"time"

	"github.com/charmbracelet/x/vt"
	"github.com/creack/pty"
)

// shot is one picture: a size, a theme, the keys that lead to the screen.
type shot struct {
	name       string
	cols, rows int
	theme      string
	more       []string // further options
	keys       []string
}

const (
	esc   = "\x1b"
	space = " "
	down  = "\x1b[B"
	f1    = "\x1bOP"
	f9    = "\x1b[20~"
)

var shots = []shot{
	{"draft-light", 120, 36, "light", nil, []string{esc, "3", space, space, space, space, space, space, space, space, space}},
	{"draft-dark", 120, 36, "dark", nil, []string{esc, "3", space, space, space, space, space, space, space, space, space}},
	{"measure-light", 80, 24, "light", nil, []string{down, down}},
	{"style-dark", 80, 24, "dark", nil, []string{esc, "2", down, down, down, down}},
	{"true-light", 80, 24, "light", nil, []string{esc, "4", down, down, down}},
	{"ascii-plain", 80, 24, "mono", []string{"--glyphs", "ascii"}, []string{esc, "4"}},
}

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "pictures:", err)
		os.Exit(1)
	}
}

func run() error {
	work, err := os.MkdirTemp("", "chalkfold-pictures")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	program := filepath.Join(work, "chalkfold")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		return fmt.Errorf("building: %w\n%s", err, out)
	}
	demo := exec.Command(program, "demo", "--out", filepath.Join(work, "demo"))
	demo.Env = environment(work)
	if out, err := demo.CombinedOutput(); err != nil {
		return fmt.Errorf("the demonstration: %w\n%s", err, out)
	}
	session := filepath.Join(work, "demo", "work-dress.chalkfold.toml")
	for _, s := range shots {
		screen, err := s.take(program, session, work)
		if err != nil {
			return fmt.Errorf("%s: %w", s.name, err)
		}
		if err := os.WriteFile(filepath.Join("testdata", "pictures", s.name+".svg"), []byte(screen), 0o644); err != nil {
			return err
		}
	}
	return nil
}

func environment(home string) []string {
	return []string{
		"HOME=" + home, "PATH=" + os.Getenv("PATH"), "TERM=xterm-256color", "COLORTERM=truecolor", "LANG=C.UTF-8", "LC_ALL=C.UTF-8",
	}
}

// quiet is how long a screen must stand still before it is drawn.
const quiet = 400 * time.Millisecond

func (s shot) take(program, session, home string) (string, error) {
	args := append([]string{"--theme", s.theme, "--color", "always"}, s.more...)
	c := exec.Command(program, append(args, session)...)
	c.Env = environment(home)
	c.Dir = home
	term, err := pty.StartWithSize(c, &pty.Winsize{Rows: uint16(s.rows), Cols: uint16(s.cols)})
	if err != nil {
		return "", err
	}
	screen := vt.NewSafeEmulator(s.cols, s.rows)
	seen := make(chan struct{}, 1024)
	go func() {
		buf := make([]byte, 32<<10)
		for {
			n, err := term.Read(buf)
			if n > 0 {
				_, _ = screen.Write(buf[:n])
				select {
				case seen <- struct{}{}:
				default:
				}
			}
			if err != nil {
				return
			}
		}
	}()
	settle(seen, 3*time.Second)
	for _, k := range s.keys {
		if _, err := term.WriteString(k); err != nil {
			return "", err
		}
		settle(seen, quiet)
	}
	picture := draw(screen)
	_, _ = term.WriteString("\x03")
	time.Sleep(50 * time.Millisecond)
	_ = c.Process.Kill()
	_ = c.Wait()
	return picture, term.Close()
}

// settle waits until something came and then nothing for a while.
func settle(seen <-chan struct{}, longest time.Duration) {
	end := time.After(longest)
	for {
		select {
		case <-seen:
			select {
			case <-seen:
			case <-time.After(quiet / 2):
				return
			}
		case <-end:
			return
		}
	}
}
