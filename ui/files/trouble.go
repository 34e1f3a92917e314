package files

import (
	"errors"
	"fmt"
	"io/fs"
	"strconv"
	"strings"
	"syscall"
)

// The reasons of ours that a caller may want to tell apart with errors.Is.
var (
	ErrChanged = errors.New("the file was changed elsewhere since it was read")
	ErrExists  = errors.New("a file with other content is already there")
	ErrTooBig  = errors.New("the file is larger than it may be")
	ErrNotFile = errors.New("not a plain file")
)

// Trouble is what went wrong with a path, in a plain sentence.
type Trouble struct {
	Path  string
	Wrong string
	Works string
	Err   error // the system's own, or one of ours
}

// Error is "path: what is wrong; what would work".
func (t *Trouble) Error() string {
	s := shown(t.Path) + ": " + t.Wrong
	if t.Works != "" {
		s += "; " + t.Works
	}
	return s
}

// Unwrap is the error behind it.
func (t *Trouble) Unwrap() error { return t.Err }

// shown is a path as it may be printed: a name may hold anything, also codes
// that a terminal would obey.
func shown(path string) string {
	if q := strconv.Quote(path); q != `"`+path+`"` && strings.ContainsFunc(path, func(r rune) bool { return r < ' ' || r == 0x7F || r == '\uFFFD' || (r >= 0x80 && r < 0xA0) }) {
		return q
	}
	return path
}

// known are the system's reasons that have a sentence of ours.
var known = []struct {
	err          error
	wrong, works string
}{
	{fs.ErrNotExist, "there is no such file or folder", "look at the name, or make the folder first"},
	{syscall.ENOSPC, "the disk is full", "make room, or choose another disk"},
	{syscall.EDQUOT, "your share of the disk is used up", "make room, or choose another disk"},
	{syscall.EFBIG, "no file may become that large here", "choose another folder, or lift the limit (ulimit -f)"},
	{syscall.EROFS, "this disk can only be read", "choose another folder"},
	{fs.ErrPermission, "you may not do that here", "choose another folder, or ask its owner"},
	{syscall.ENAMETOOLONG, "the name is too long", "take a shorter one"},
	{syscall.ENOTDIR, "a part of the path is a file, not a folder", "look at the path"},
	{syscall.EISDIR, "this is a folder", "give the name of a file in it"},
	{syscall.ELOOP, "the links go round in a circle", "give the file itself"},
	{syscall.EMFILE, "too many files are open", "close some programs and try again"},
	{fs.ErrExist, "there is something of that name already", "take another name"},
}

// trouble makes a sentence of a system error.
func trouble(path string, err error) error {
	var t *Trouble
	if err == nil || errors.As(err, &t) {
		return err
	}
	for _, k := range known {
		if errors.Is(err, k.err) {
			return &Trouble{Path: path, Wrong: k.wrong, Works: k.works, Err: err}
		}
	}
	var p *fs.PathError
	if errors.As(err, &p) {
		return &Trouble{Path: path, Wrong: fmt.Sprintf("the system says %q", p.Err), Err: err}
	}
	return &Trouble{Path: path, Wrong: fmt.Sprintf("the system says %q", err), Err: err}
}
