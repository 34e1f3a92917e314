package files

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
)

// Private is the mode of a new file that holds somebody's measures; Common
// that of an output made to be passed on.
const (
	Private fs.FileMode = 0o600
	Common  fs.FileMode = 0o644
)

// Options of a write.
type Options struct {
	Mode     fs.FileMode // of a new file; 0 is Private. An old file keeps its own
	Previous bool        // keep what was there as NAME~
}

// Write puts the content at path, whole or not at all. Links are followed: the
// link stays and the file it points to is replaced. A file that already holds
// this content is left alone.
func Write(path string, content []byte, o Options) error {
	return job{}.write(path, content, o)
}

// Save is Write after a look whether the file is still what the stamp
// remembers. If not it refuses with ErrChanged. It returns the new stamp.
func Save(path string, content []byte, since Stamp, o Options) (Stamp, error) {
	changed, err := since.Changed(path)
	if err != nil {
		return since, err
	}
	if changed {
		wrong := "it was changed elsewhere since it was opened"
		if !since.There() {
			wrong = "there is a file of that name already"
		}
		return since, &Trouble{Path: path, Wrong: wrong, Works: "save under another name, or look at it first", Err: ErrChanged}
	}
	Sweep(filepath.Dir(path))
	if err := Write(path, content, o); err != nil {
		return since, err
	}
	return StampOf(content), nil
}

// job is one write. A test may break it before any of its stages.
type job struct {
	before func(stage string) error
}

func (j job) stage(name string) error {
	if j.before == nil {
		return nil
	}
	return j.before(name)
}

func (j job) write(path string, content []byte, o Options) error {
	target, err := follow(path)
	if err != nil {
		return trouble(path, err)
	}
	mode := o.Mode
	if mode == 0 {
		mode = Private
	}
	there := false
	info, err := os.Stat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return trouble(path, err)
	default:
		if err := plain(target); err != nil {
			return trouble(path, err)
		}
		old, err := os.ReadFile(target)
		if err == nil && bytes.Equal(old, content) {
			return nil
		}
		there, mode = true, info.Mode().Perm()
		// A rename would get round a file that may only be read.
		if mode&0o200 == 0 {
			return &Trouble{Path: path, Wrong: "this file may only be read", Works: "save under another name, or allow writing first", Err: fs.ErrPermission}
		}
		if o.Previous {
			if err != nil {
				return trouble(path, err)
			}
			if err := j.place(target+"~", old, mode, true); err != nil {
				return trouble(path, err)
			}
		}
	}
	return trouble(path, j.place(target, content, mode, there))
}

// place writes beside the target and renames. On any trouble it takes the
// piece away again.
func (j job) place(target string, content []byte, mode fs.FileMode, exact bool) (err error) {
	f, err := j.beside(target, content, mode, exact)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			os.Remove(f) // the trouble itself is already being told
		}
	}()
	if err = j.stage("rename"); err != nil {
		return err
	}
	if err = os.Rename(f, target); err != nil {
		return err
	}
	syncFolder(filepath.Dir(target))
	return nil
}

// beside writes the content to a new file in the target's folder and sees it
// safely on the disk.
func (j job) beside(target string, content []byte, mode fs.FileMode, exact bool) (name string, err error) {
	if err := j.stage("create"); err != nil {
		return "", err
	}
	f, err := newBeside(target, mode)
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name()) // the trouble itself is already being told
		}
	}()
	half := len(content) / 2
	if _, err = f.Write(content[:half]); err != nil {
		return "", err
	}
	if err = j.stage("write"); err != nil {
		return "", err
	}
	if _, err = f.Write(content[half:]); err != nil {
		return "", err
	}
	// A new file gets its mode when it is made, less what the user's umask
	// takes; an old one has exactly the mode it had.
	if exact {
		if err = f.Chmod(mode); err != nil && runtime.GOOS != "windows" {
			return "", err
		}
	}
	if err = j.stage("sync"); err != nil {
		return "", err
	}
	if err = f.Sync(); err != nil {
		return "", err
	}
	if err = j.stage("close"); err != nil {
		return "", err
	}
	if err = f.Close(); err != nil {
		return "", err
	}
	return f.Name(), nil
}

// newBeside makes a file of a name that nobody has.
func newBeside(target string, mode fs.FileMode) (*os.File, error) {
	dir, base := filepath.Split(target)
	for range 1000 {
		part := filepath.Join(dir, fmt.Sprintf(".%s.%s.%08x%s", short(base), ownMark(), rand.Uint32(), partEnd))
		f, err := os.OpenFile(part, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode|0o200)
		if !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
	return nil, fs.ErrExist
}

// short keeps the name beside within what file systems take.
func short(name string) string {
	if len(name) > 100 {
		return name[:100]
	}
	return name
}

// follow goes through links to the file they mean, also where that file is not
// there yet.
func follow(path string) (string, error) {
	for range 40 { // as deep as systems go
		info, err := os.Lstat(path)
		if errors.Is(err, fs.ErrNotExist) || (err == nil && info.Mode()&fs.ModeSymlink == 0) {
			return path, nil
		}
		if err != nil {
			return "", err
		}
		to, err := os.Readlink(path)
		if err != nil {
			return "", err
		}
		if !filepath.IsAbs(to) {
			to = filepath.Join(filepath.Dir(path), to)
		}
		path = to
	}
	return "", &Trouble{Path: path, Wrong: "the links go round in a circle", Works: "give the file itself"}
}

// syncFolder makes the rename last over a power cut. Some systems cannot sync
// a folder; the file itself is safe already, so that is no trouble.
func syncFolder(dir string) {
	if d, err := os.Open(dir); err == nil {
		_ = d.Sync()
		_ = d.Close()
	}
}
