package session

import (
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// Rescue is a copy of work that was never saved, left by a program that
// ended without asking.
type Rescue struct {
	File    string // the copy
	Path    string // the session's own file; empty: it had none
	Client  string
	Saved   time.Time
	Job     pattern.Job
	Differs []string // what it says otherwise than the file
}

// RescueDir is the folder of the copies.
func RescueDir() string { return stateFolder("rescue") }

// stateFolder is a place in the user's state folder, "" where there is none.
func stateFolder(name string) string {
	f, err := files.Paths(os.Getenv)
	if err != nil {
		return ""
	}
	return filepath.Join(f.State, name)
}

// rescueTable is put into a copy to say what it is a copy of.
const rescueTable = "rescued"

// WriteRescue puts the job into the session's copy, readable by nobody else.
func (s *Session) WriteRescue(job pattern.Job) error {
	dir := RescueDir()
	if dir == "" {
		return &measure.Refusal{Where: "rescue copy", Wrong: "there is no folder for it", Works: "set HOME, or XDG_STATE_HOME"}
	}
	if err := files.Folder(dir); err != nil {
		return err
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	text, err := s.bytes(job)
	if err != nil {
		return err
	}
	copied, err := Parse("the rescue copy", text)
	if err != nil {
		return err
	}
	e := newEditor(copied.layout, copied.doc)
	path := s.Path
	if abs, err := filepath.Abs(path); err == nil && path != "" {
		path = abs
	}
	e.set([]string{rescueTable, "path"}, quoted(path))
	e.set([]string{rescueTable, "at"}, time.Now().UTC().Format(time.RFC3339))
	if text, err = e.bytes(); err != nil {
		return err
	}
	if s.rescue == "" {
		s.rescue = rescueName(path)
	}
	return files.Write(filepath.Join(dir, s.rescue), text, files.Options{Mode: files.Private})
}

// rescueName is a hash of the path, or a random number, and the process.
func rescueName(path string) string {
	sum := sha256.Sum256([]byte(path))
	if path == "" {
		_, _ = rand.Read(sum[:]) // never fails
	}
	return fmt.Sprintf("%s-%d%s", hex.EncodeToString(sum[:8]), os.Getpid(), Suffix)
}

// DropRescue takes the session's copy away: it was saved, or given up.
func (s *Session) DropRescue() {
	s.mu.Lock()
	defer s.mu.Unlock()
	if dir := RescueDir(); dir != "" && s.rescue != "" {
		_ = files.Remove(filepath.Join(dir, s.rescue)) // a copy that stays is offered again
	}
}

// FindRescues are the copies that dead processes left, newest first. A copy
// that cannot be read is left out; it stays where it is.
func FindRescues() []Rescue {
	dir := RescueDir()
	if dir == "" {
		return nil
	}
	names, err := os.ReadDir(dir)
	if err != nil {
		return nil
	}
	var out []Rescue
	for _, n := range names {
		if pid, ok := rescuePID(n.Name()); !ok || files.Alive(pid) {
			continue
		}
		if r, err := readRescue(filepath.Join(dir, n.Name())); err == nil {
			out = append(out, r)
		}
	}
	slices.SortStableFunc(out, func(a, b Rescue) int { return b.Saved.Compare(a.Saved) })
	return out
}

func readRescue(file string) (Rescue, error) {
	s, err := Open(file)
	if err != nil {
		return Rescue{}, err
	}
	r := Rescue{File: file, Client: s.Job.Client.Name, Job: s.Job}
	if t, ok := s.doc[rescueTable].(map[string]any); ok {
		r.Path, _ = t["path"].(string)
		r.Saved, _ = t["at"].(time.Time)
	}
	if r.Path != "" {
		if was, err := Open(r.Path); err == nil {
			r.Differs = Differences(was.Job, r.Job)
		}
	}
	return r, nil
}

// Session is the session that a copy belongs to, with the copied job: the
// file as it is now, or a new one where the file is gone.
func (r Rescue) Session() *Session {
	if r.Path != "" {
		if s, err := Open(r.Path); err == nil {
			s.Job = r.Job
			return s
		}
	}
	return New(r.Path, r.Job)
}

// Drop takes the copy away.
func (r Rescue) Drop() { _ = files.Remove(r.File) }

// rescuePID is the process that wrote a copy, by its name.
func rescuePID(name string) (int, bool) {
	base, ok := strings.CutSuffix(name, Suffix)
	_, number, cut := strings.Cut(base, "-")
	if !ok || !cut {
		return 0, false
	}
	pid, err := strconv.Atoi(number)
	return pid, err == nil && pid > 0
}
