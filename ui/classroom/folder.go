package classroom

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

// Folder reads the sessions of a folder on the disk. What is no folder, or may
// not be read, is a measure.Refusal.
func Folder(path string) (Class, error) {
	info, err := os.Stat(path)
	if err == nil && !info.IsDir() {
		return Class{}, &measure.Refusal{Where: path, Wrong: "this is a file, not a folder", Works: "name the folder it lies in: " + filepath.Dir(path)}
	}
	var c Class
	if err == nil {
		c, err = Read(os.DirFS(path))
	}
	switch {
	case err == nil:
		return c, nil
	case errors.Is(err, fs.ErrNotExist):
		return Class{}, &measure.Refusal{Where: path, Wrong: "there is no such folder", Works: "look at the name"}
	}
	return Class{}, &measure.Refusal{Where: path, Wrong: reason(err), Works: "name a folder with sessions in it"}
}

// open reads a session out of a folder. A pipe or a device is not opened: it
// could keep everybody waiting.
func open(dir fs.FS, name string) (*session.Session, error) {
	info, err := fs.Stat(dir, name)
	if err != nil {
		return nil, untold(name, err)
	}
	if !info.Mode().IsRegular() {
		return nil, &measure.Refusal{Where: name, Wrong: "this is no plain file", Works: "look whether it is the right one"}
	}
	f, err := dir.Open(name)
	if err != nil {
		return nil, untold(name, err)
	}
	defer f.Close() // only read
	return session.Read(name, f)
}

// untold tells what the system says about a file.
func untold(name string, err error) error {
	works := "look at the file"
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return &measure.Refusal{Where: name, Wrong: "there is a name, but no file behind it", Works: "look where the link leads"}
	case errors.Is(err, fs.ErrInvalid):
		return &measure.Refusal{Where: name, Wrong: "its name is no text in UTF-8", Works: "give it another name"}
	case errors.Is(err, fs.ErrPermission):
		works = "ask its owner"
	}
	return &measure.Refusal{Where: name, Wrong: reason(err), Works: works}
}

// reason is the system's own, without the path.
func reason(err error) string {
	if errors.Is(err, fs.ErrPermission) {
		return "you may not read it"
	}
	var p *fs.PathError
	if errors.As(err, &p) {
		err = p.Err
	}
	return fmt.Sprintf("the system says %q", err)
}

// sentence is the first fault of a file, and how many more there are.
func sentence(err error) string {
	first, rest, _ := strings.Cut(err.Error(), "\n")
	if rest == "" {
		return first
	}
	return fmt.Sprintf("%s (and %d more)", first, strings.Count(rest, "\n")+1)
}
