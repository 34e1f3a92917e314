package shell

import (
	"os"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/ui/session"
	"chalkfold/ui/settings"
)

// workbenchCommand is the root: chalkfold [FILE].
func workbenchCommand(w *world) *cobra.Command {
	version := false
	c := &cobra.Command{
		Use: "chalkfold [FILE]", Short: "the workbench on the screen",
		Args: cobra.ArbitraryArgs, ValidArgsFunction: sessions, DisableFlagsInUseLine: true,
		RunE: func(_ *cobra.Command, args []string) error {
			if version {
				w.print(versionText())
				return nil
			}
			return w.workbench(args)
		},
	}
	c.Flags().BoolVar(&version, "version", false, "which Chalkfold this is")
	c.Flags().BoolVar(&w.still, "no-motion", false, "a new line stands at once; nothing moves by itself")
	return w.share(c, flagUnit|flagLooks|flagGlyphs|flagPlain)
}

// workbench starts the screen, or the linear mode where a screen is not
// wanted or cannot be.
func (w *world) workbench(args []string) error {
	if len(args) > 1 || len(args) == 1 && !looksLikeFile(args[0]) {
		if args[0] == "" {
			return refuse("the call", `""`, "an empty name", "write chalkfold FILE")
		}
		return w.noCommand(args[0])
	}
	why := w.linearBecause()
	if why == "" && (!terminal(w.out) || !terminal(w.in)) {
		return refuse("the call", "no terminal", "the workbench needs a screen and a keyboard", "chalkfold --plain works without, and chalkfold help lists the commands")
	}
	var s *session.Session
	if len(args) == 1 {
		var err error
		if s, err = w.open(args[0]); err != nil {
			return err
		}
		s.Job = session.InUnit(s.Job, w.inUnit(s.Job.Unit))
	}
	if why != "" {
		w.status = w.linear(s, why)
	} else {
		w.status = w.screen(s)
	}
	return nil
}

// looksLikeFile tells the name of a file from a mistyped command: it is
// there, or it has a dot or a slash.
func looksLikeFile(name string) bool {
	if strings.ContainsAny(name, `./\`) || name == "-" {
		return true
	}
	_, err := os.Lstat(name)
	return err == nil
}

// linearBecause is why the linear mode is on, or "".
func (w *world) linearBecause() string {
	switch accessible := w.env("ACCESSIBLE"); {
	case w.plain:
		return "--plain"
	case accessible != "" && accessible != "0":
		return "ACCESSIBLE"
	case w.env("TERM") == "dumb" && terminal(w.out):
		return "TERM=dumb"
	case accessible == "" && w.settings().Plain:
		return "plain in " + settings.File
	}
	return ""
}
