package files

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
)

// Stamp remembers what a file held when it was read. The zero Stamp remembers
// that there was none.
type Stamp struct {
	sum   [sha256.Size]byte
	there bool
}

// StampOf is the stamp of a file that holds these bytes.
func StampOf(content []byte) Stamp { return Stamp{sum: sha256.Sum256(content), there: true} }

// There tells whether there was a file.
func (s Stamp) There() bool { return s.there }

// Changed tells whether the file at path now holds something else than when
// the stamp was taken; a file that came or went counts as changed.
func (s Stamp) Changed(path string) (bool, error) {
	f, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return s.there, nil
	}
	if err != nil {
		return false, trouble(path, err)
	}
	defer f.Close() // only read
	h := sha256.New()
	if _, err := io.Copy(h, f); err != nil {
		return false, trouble(path, err)
	}
	return !s.there || !bytes.Equal(h.Sum(nil), s.sum[:]), nil
}

// Read reads a whole file of at most limit bytes, with its stamp. A limit of
// zero reads any length.
func Read(path string, limit int64) ([]byte, Stamp, error) {
	if err := plain(path); err != nil {
		return nil, Stamp{}, err
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, Stamp{}, trouble(path, err)
	}
	defer f.Close() // only read
	var from io.Reader = f
	if limit > 0 {
		from = io.LimitReader(f, limit+1)
	}
	content, err := io.ReadAll(from)
	if err != nil {
		return nil, Stamp{}, trouble(path, err)
	}
	if limit > 0 && int64(len(content)) > limit {
		return nil, Stamp{}, &Trouble{
			Path: path, Wrong: fmt.Sprintf("the file is larger than %s", size(limit)),
			Works: "look whether it is the right one", Err: ErrTooBig,
		}
	}
	return content, StampOf(content), nil
}

// plain refuses what is there but is no file: a folder, a device, a pipe that
// would never end.
func plain(path string) error {
	info, err := os.Stat(path)
	if err != nil {
		return trouble(path, err)
	}
	switch {
	case info.IsDir():
		return &Trouble{Path: path, Wrong: "this is a folder", Works: "give the name of a file in it", Err: ErrNotFile}
	case !info.Mode().IsRegular():
		return &Trouble{Path: path, Wrong: "this is no plain file", Works: "give the name of a file", Err: ErrNotFile}
	}
	return nil
}

// size is a number of bytes for people.
func size(n int64) string {
	switch {
	case n >= 1<<20 && n%(1<<20) == 0:
		return fmt.Sprintf("%d MiB", n>>20)
	case n >= 1<<10 && n%(1<<10) == 0:
		return fmt.Sprintf("%d KiB", n>>10)
	}
	return fmt.Sprintf("%d bytes", n)
}
