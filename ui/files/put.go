package files

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
)

// Outcome is what Put did.
type Outcome int8

// What Put may have done.
const (
	Nothing  Outcome = iota // it was refused
	Written                 // a new file
	Replaced                // another content, because it was forced
	Equal                   // the same content was there and is left
)

// String says it in a word or two.
func (o Outcome) String() string {
	return [...]string{"not written", "written", "replaced", "unchanged"}[max(0, min(o, Equal))]
}

// Put writes an output. A file that is there and differs is only replaced
// when forced; one that is equal is left as it is. A new file never lands on
// one that somebody else made in the meantime.
func Put(path string, content []byte, force bool) (Outcome, error) {
	return job{}.put(path, content, force)
}

func (j job) put(path string, content []byte, force bool) (Outcome, error) {
	target, err := follow(path)
	if err != nil {
		return Nothing, trouble(path, err)
	}
	switch err := plain(target); {
	case errors.Is(err, fs.ErrNotExist):
		return j.putNew(path, target, content, force)
	case err != nil:
		return Nothing, err
	}
	old, err := os.ReadFile(target)
	if err != nil {
		return Nothing, trouble(path, err)
	}
	switch {
	case bytes.Equal(old, content):
		return Equal, nil
	case !force:
		return Nothing, exists(path)
	}
	if err := j.write(path, content, Options{Mode: Common}); err != nil {
		return Nothing, err
	}
	return Replaced, nil
}

// putNew gives the finished piece its name by a hard link, which fails where a
// file has appeared; where there are no hard links it renames.
func (j job) putNew(path, target string, content []byte, force bool) (Outcome, error) {
	part, err := j.beside(target, content, Common, false)
	if err != nil {
		return Nothing, trouble(path, err)
	}
	defer os.Remove(part) // gone already after a rename
	if err := j.stage("rename"); err != nil {
		return Nothing, trouble(path, err)
	}
	err = os.Link(part, target)
	if errors.Is(err, fs.ErrExist) && !force {
		return Nothing, exists(path)
	}
	if err != nil {
		err = os.Rename(part, target)
	}
	if err != nil {
		return Nothing, trouble(path, err)
	}
	syncFolder(folderOf(target))
	return Written, nil
}

func exists(path string) error {
	return &Trouble{
		Path: path, Wrong: "there is a file of that name already, with other content",
		Works: "--force replaces it, or choose another folder", Err: ErrExists,
	}
}
