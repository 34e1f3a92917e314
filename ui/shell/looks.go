package shell

import (
	"bytes"
	"io"
	"path/filepath"

	"github.com/spf13/cobra"

	"chalkfold/export/looks"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/trial"
	"chalkfold/ui/files"
	"chalkfold/ui/session"
)

func looksCommand(w *world) *cobra.Command {
	var pick, out, paper string
	c := &cobra.Command{
		Use: "looks FILE", Short: "one sheet to choose by looking: every option drafted for her", Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		Long:    "Drafts every option of each pick from the client's measurements and writes them\nas small outlines on one sheet, with their names, and with the reason where one\ncannot be drafted for her: STEM-looks.svg and STEM-looks.pdf. Picks whose options\nlook alike are left out.",
		Example: "  chalkfold looks anna.chalkfold.toml --pick front_neckline\n  chalkfold looks anna.chalkfold.toml --out anna",
		RunE: func(_ *cobra.Command, args []string) error {
			size, err := pdf.ParsePaper(paper)
			if err != nil {
				return notRead(err)
			}
			s, sheet, err := w.draft(args[0])
			if err != nil {
				return err
			}
			if err := w.whole(args[0], sheet); err != nil {
				return err
			}
			picks, err := picked(s.Job, pick)
			if err != nil {
				return err
			}
			var sets []trial.Set
			for _, c := range picks {
				sets = append(sets, trial.Of(s.Job, c))
			}
			o := looks.Options{Unit: w.inUnit(s.Job.Unit), Paper: size, Warn: func(words string) { w.say("%s", words) }}
			return w.writeLooks(filepath.Join(out, session.Stem(args[0])), sheet, sets, o)
		},
	}
	f := c.Flags()
	f.StringVar(&pick, "pick", "", "only this pick")
	f.StringVar(&out, "out", ".", "folder, made if it is not there")
	f.StringVar(&paper, "paper", "", "paper: a4, letter, a3, legal, tabloid, a4-letter (the usual)")
	w.completes(c, "paper", paperIDs()...)
	w.endsOn(c, "pick", ofSession(pickIDs))
	w.endsOn(c, "out", folders)
	return w.share(c, flagUnit|flagForce)
}

// picked are the picks that were asked for.
func picked(job pattern.Job, id string) ([]pattern.Choice, error) {
	all := trial.Picks(job)
	if id == "" {
		return all, nil
	}
	var ids []string
	for _, c := range all {
		if string(c.ID) == id {
			return []pattern.Choice{c}, nil
		}
		ids = append(ids, string(c.ID))
	}
	works := "chalkfold choices lists them"
	if like := session.Nearest(id, ids); like != "" {
		works = "did you mean " + like + "?"
	}
	return nil, refuse("--pick", measure.Quoted(id), "this garment and method have no such pick", works)
}

func (w *world) writeLooks(stem string, sheet *pattern.Sheet, sets []trial.Set, o looks.Options) error {
	if err := files.Folder(filepath.Dir(stem)); err != nil {
		return notDone(err)
	}
	for _, f := range []struct {
		end   string
		write func(io.Writer, *pattern.Sheet, []trial.Set, looks.Options) error
	}{{".svg", looks.WriteSVG}, {".pdf", looks.WritePDF}} {
		var b bytes.Buffer
		if err := f.write(&b, sheet, sets, o); err != nil {
			return notDone(err)
		}
		path := stem + "-looks" + f.end
		outcome, err := files.Put(path, b.Bytes(), w.force)
		if err != nil {
			return notDone(err)
		}
		w.print(plain(path) + ": " + outcome.String() + "\n")
	}
	return nil
}
