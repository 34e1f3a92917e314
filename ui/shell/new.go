package shell

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
)

func newCommand(w *world) *cobra.Command {
	var from string
	kind := pattern.Dress
	c := &cobra.Command{
		Use: "new FILE", Short: "a session file to fill in, or a copy of one", Args: wants(1, 1, "file name"),
		Long:    "Writes a session with every measurement of the garment as a commented line.\nWith --from it is a copy of that session, comments and unknown keys included.\nFILE - writes to standard output.",
		Example: "  chalkfold new four.chalkfold.toml --unit cm\n  chalkfold new five.chalkfold.toml --from four.chalkfold.toml",
		RunE: func(c *cobra.Command, args []string) error {
			if err := knownGarment(kind); err != nil {
				return err
			}
			text := session.Template(kind, pattern.Measured, w.newUnit())
			if c.Flags().Changed("from") {
				if c.Flags().Changed("garment") {
					return refuse("--garment", measure.Quoted(kind), "with --from the garment is copied too", "leave one of the two out")
				}
				var err error
				if text, err = w.copyOf(from); err != nil {
					return err
				}
			}
			if args[0] == "-" {
				w.print(string(text))
				return nil
			}
			return w.create(args[0], text)
		},
	}
	c.Flags().StringVar(&from, "from", "", "the session to copy")
	c.Flags().StringVar(&kind, "garment", pattern.Dress, "the garment: "+strings.Join(garmentIDs(), ", "))
	w.completes(c, "garment", garmentIDs()...)
	if err := c.RegisterFlagCompletionFunc("from", sessions); err != nil {
		panic("shell: new has no option from")
	}
	return w.share(c, flagUnit|flagForce)
}

// copyOf is the text of a session, in another unit if one was asked for.
func (w *world) copyOf(from string) ([]byte, error) {
	s, err := w.open(from)
	if err != nil {
		return nil, err
	}
	job := s.Job
	if w.unit.given {
		job = session.InUnit(job, w.unit.unit)
	}
	text, err := s.Bytes(job)
	if err != nil {
		return nil, notDone(err)
	}
	return text, nil
}

// create writes a session file. One that is there and differs is only
// replaced with --force, and then kept beside it.
func (w *world) create(path string, text []byte) error {
	old, _, err := files.Read(path, 0)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		if _, err := files.Save(path, text, files.Stamp{}, files.Options{Mode: files.Private}); err != nil {
			return notDone(err)
		}
		w.print(plain(path) + ": written\n")
		return nil
	case err != nil:
		return notDone(err)
	case bytes.Equal(old, text):
		w.print(plain(path) + ": unchanged, it holds this already\n")
		return nil
	case !w.force:
		return notDone(&files.Trouble{
			Path: path, Wrong: "there is a file of that name already, with other content",
			Works: "--force replaces it and keeps it as " + path + "~", Err: files.ErrExists,
		})
	}
	if err := files.Write(path, text, files.Options{Mode: files.Private, Previous: true}); err != nil {
		return notDone(err)
	}
	w.print(plain(path) + ": replaced, the former is " + plain(path) + "~\n")
	return nil
}

// folderOrNothing refuses a path that is a file where a folder is wanted.
func folderOrNothing(path string) error {
	info, err := os.Stat(path)
	if err == nil && !info.IsDir() {
		return &files.Trouble{Path: path, Wrong: "this is a file, not a folder", Works: "name a folder, or one that is not there yet", Err: files.ErrExists}
	}
	return nil
}
