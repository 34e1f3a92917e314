package session

import (
	"errors"
	"io"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// Suffix is the end of the name of every session file.
const Suffix = ".chalkfold.toml"

// The reasons why a session was not saved that a caller asks about.
var (
	ErrChanged = files.ErrChanged // changed elsewhere since it was read
	ErrExists  = files.ErrExists  // another file has that name
)

// Session is a session file as it was read or as it will be.
type Session struct {
	Path     string // empty: it has no file yet
	Job      pattern.Job
	Lesson   map[string]int // last question answered, by lesson
	Warnings []string       // keys that look mistyped; they are kept

	text       []byte
	layout     *layout
	doc        map[string]any
	read       pattern.Job // what text says
	readLesson map[string]int
	stated     map[string]bool
	stamp      files.Stamp
	rescue     string // name of its rescue copy

	// Saving and the rescue copy may run beside each other.
	mu sync.Mutex
}

// Open reads a session file. All its faults come at once, joined.
func Open(path string) (*Session, error) {
	text, stamp, err := files.Read(path, SizeLimit)
	if err != nil {
		return nil, err
	}
	s, err := Parse(path, text)
	if err != nil {
		return nil, err
	}
	s.Path, s.stamp = path, stamp
	s.ResumePlace()
	return s, nil
}

// Read reads a session from a stream, say standard input.
func Read(name string, from io.Reader) (*Session, error) {
	text, err := io.ReadAll(io.LimitReader(from, SizeLimit+1))
	if err != nil {
		return nil, &measure.Refusal{Where: name, Wrong: "reading it ended early: " + err.Error(), Works: "try it again"}
	}
	return Parse(name, text)
}

// Parse reads the text of a session; name is what its faults are told by.
func Parse(name string, text []byte) (*Session, error) {
	src := source{name: shownName(name), text: text}
	if fault := src.guard(); fault != nil {
		return nil, fault
	}
	doc, syntax := src.decode()
	if doc == nil {
		return nil, joinFaults(syntax)
	}
	r := &reader{source: src, doc: doc, layout: scan(text), stated: map[string]bool{}}
	r.all()
	if faults := append(syntax, r.refusals()...); len(faults) > 0 {
		return nil, joinFaults(faults)
	}
	return &Session{
		Job: r.job, Lesson: r.lesson, Warnings: r.warnings, text: text, layout: r.layout, doc: doc,
		read: r.job, readLesson: maps.Clone(r.lesson), stated: r.stated,
	}, nil
}

// shownName is the name of a file as a message can hold it.
func shownName(name string) string { return strings.Trim(measure.Refusal{Read: name}.Error(), " ") }

func joinFaults(faults []*measure.Refusal) error {
	all := make([]error, len(faults))
	for i, f := range faults {
		all[i] = f
	}
	return errors.Join(all...)
}

// New is a session that has no file yet; path is where Save will put it, and
// may be empty.
func New(path string, job pattern.Job) *Session {
	text := []byte("form = 1\nunit = \"" + job.Unit.String() + "\"\n")
	s, err := Parse("a new session", text)
	if err != nil {
		panic("session: the text of a new session does not parse: " + err.Error())
	}
	s.Path, s.Job = path, job
	return s
}

// Bytes is the file with this job in it, everything else as it was. A job
// that changes nothing gives the same bytes.
func (s *Session) Bytes(job pattern.Job) ([]byte, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.bytes(job)
}

func (s *Session) bytes(job pattern.Job) ([]byte, error) {
	text, err := s.edited(job)
	if err != nil {
		return nil, err
	}
	// What cannot be read again must not be written.
	if _, err := Parse(s.name(), text); err != nil {
		return nil, err
	}
	return text, nil
}

func (s *Session) name() string {
	if s.Path == "" {
		return "the new session"
	}
	return s.Path
}

// Changed says whether the job differs from what the file says.
func (s *Session) Changed(job pattern.Job) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	text, err := s.edited(job)
	return err != nil || string(text) != string(s.text)
}

// Save writes the job into the session's file: whole or not at all, the
// former version kept as NAME~. ErrChanged says that the file is not what was
// read; nothing is written then.
func (s *Session) Save(job pattern.Job) error { return s.save(job, false) }

// SaveOver is Save without that question.
func (s *Session) SaveOver(job pattern.Job) error { return s.save(job, true) }

func (s *Session) save(job pattern.Job, over bool) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.Path == "" {
		return &measure.Refusal{Where: "save", Wrong: "this session has no file yet", Works: "give it a name"}
	}
	text, err := s.bytes(job)
	if err != nil {
		return err
	}
	options := files.Options{Mode: files.Private, Previous: true}
	stamp := files.StampOf(text)
	if over {
		err = files.Write(s.Path, text, options)
	} else {
		stamp, err = files.Save(s.Path, text, s.stamp, options)
	}
	if err != nil {
		return err
	}
	s.stamp = stamp
	return s.rebase(text, job)
}

// rebase makes the written text the one that later changes go by.
func (s *Session) rebase(text []byte, job pattern.Job) error {
	next, err := Parse(s.name(), text)
	if err != nil {
		return err
	}
	s.Job, s.Lesson, s.Warnings = job, next.Lesson, next.Warnings
	s.text, s.layout, s.doc = next.text, next.layout, next.doc
	s.read, s.readLesson, s.stated = next.read, next.readLesson, next.stated
	return nil
}

// SaveAs writes the job to another file, which is the session's from then on.
// A file that is there already is left alone: ErrExists.
func (s *Session) SaveAs(path string, job pattern.Job) error {
	if path == s.Path && path != "" {
		return s.Save(job)
	}
	if _, err := os.Lstat(path); err == nil {
		return &files.Trouble{Path: path, Wrong: "there is a file of that name already", Works: "take another name, or write over it", Err: ErrExists}
	}
	return s.saveAs(path, job, func(text []byte) (files.Stamp, error) {
		return files.Save(path, text, files.Stamp{}, files.Options{Mode: files.Private})
	})
}

// SaveAsOver writes the job to another file in place of what stands there,
// which is kept as NAME~: whole or not at all, as with every save.
func (s *Session) SaveAsOver(path string, job pattern.Job) error {
	if path == s.Path && path != "" {
		return s.SaveOver(job)
	}
	return s.saveAs(path, job, func(text []byte) (files.Stamp, error) {
		return files.StampOf(text), files.Write(path, text, files.Options{Mode: files.Private, Previous: true})
	})
}

func (s *Session) saveAs(path string, job pattern.Job, write func([]byte) (files.Stamp, error)) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	text, err := s.bytes(job)
	if err != nil {
		return err
	}
	stamp, err := write(text)
	if err != nil {
		return err
	}
	s.Path, s.stamp = path, stamp
	return s.rebase(text, job)
}

// Reload reads the session's file again.
func (s *Session) Reload() (*Session, error) { return Open(s.Path) }

// Stem is the name that the outputs of a session go by: the file's name
// without its suffix; that of standard input is "session".
func Stem(path string) string {
	if path == "-" || path == "" {
		return "session"
	}
	base := filepath.Base(path)
	for _, suffix := range []string{Suffix, ".toml"} {
		if stem, ok := strings.CutSuffix(base, suffix); ok && stem != "" {
			return stem
		}
	}
	return base
}
