package shell

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"chalkfold/export/pdf"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/files"
	"chalkfold/ui/outlet"
	"chalkfold/ui/session"
)

func exportCommand(w *world) *cobra.Command {
	var list, out, before string
	var o outlet.Options
	var roll, across, along lengthValue
	var toile, asPrinted bool
	c := &cobra.Command{
		Use: "export FILE... --format LIST", Short: "write the pieces for cutter, printer or other software", ValidArgsFunction: sessions,
		Args:    wants(1, 10_000, "session file"),
		Example: "  chalkfold export four.chalkfold.toml --format svg,card\n  chalkfold export *.toml --format all --out class",
		RunE: func(c *cobra.Command, args []string) error {
			if !c.Flags().Changed("format") {
				return refuse("--format", "nothing", "no format was named", "choose from "+formatNames())
			}
			formats, err := outlet.Parse(list)
			if err != nil {
				return notRead(err)
			}
			if _, err := pdf.ParsePaper(o.Paper); err != nil {
				return notRead(err)
			}
			u := w.jsonUnit()
			o.Force, o.Roll, o.PrintedAcross, o.PrintedAlong = w.force, roll.length(u), across.length(u), along.length(u)
			if w.unit.given {
				o.Unit = &w.unit.unit
			}
			if err := w.printer(&o, asPrinted, tiled(formats)); err != nil {
				return err
			}
			if o.Before, err = w.draftBefore(before); err != nil {
				return err
			}
			return w.export(args, formats, out, o, toile)
		},
	}
	c.Long = "Writes the chosen formats of each session into a folder, pieces of one session\nin one file a format, named after the session. A file that is there and differs\nis left alone without --force.\n\nFormats:\n" + formatLines()
	f := c.Flags()
	f.StringVar(&list, "format", "", "formats with commas between them, or all")
	f.StringVar(&out, "out", ".", "folder, made if it is not there")
	f.BoolVar(&o.Whole, "whole", false, "pieces on the fold opened")
	f.BoolVar(&o.Each, "each", false, "a drawing for each piece")
	f.BoolVar(&o.Web, "web", false, "drawings for a web page, without a size of their own")
	f.Var(&roll, "roll", "width of the paper; the usual is 914 mm")
	f.StringVar(&o.Paper, "paper", "", "paper of tiles and documents: a4, letter, a3, legal, tabloid, a4-letter (the usual)")
	f.BoolVar(&o.Notes, "notes", false, "private notes on the client card")
	f.StringVar(&before, "before", "", "session before a change, for what moved; else her measures under [[earlier]]")
	f.Var(&across, "printed-across", "how long the control line across came out, to correct the next print")
	f.Var(&along, "printed-along", "the same of the control line along")
	f.BoolVar(&asPrinted, "as-printed", false, "correct tiles by the lines that were measured before on this paper")
	f.BoolVar(&toile, "toile", false, "pieces for a trial in cheap cloth: 1 in (2.5 cm) all round, no facings")
	w.completes(c, "paper", paperIDs()...)
	w.endsOn(c, "format", listOf(append(formatIDs(), outlet.All)...))
	w.endsOn(c, "out", folders)
	w.endsOn(c, "before", sessions)
	return w.share(c, flagUnit|flagForce)
}

// export writes every session; one that fails does not stop the others. Several
// are worked on side by side, and each is told whole, in the order of the call.
func (w *world) export(args []string, formats []outlet.Format, out string, o outlet.Options, toile bool) error {
	inputs := make([]outlet.Input, len(args))
	for i, a := range args {
		inputs[i] = outlet.Input{File: a, Stem: session.Stem(a)}
	}
	if err := outlet.Clash(inputs); err != nil {
		return notRead(err)
	}
	if len(inputs) == 1 {
		_, err := w.exportOne(inputs[0], formats, out, o, toile)
		return err
	}
	if o.Before != nil {
		return refuse("--before", "several sessions", "one draft before cannot belong to all of them", "export them one at a time, or keep older measures under [[earlier]]")
	}
	failed, files := 0, 0
	w.sideBySide(args, func(part *world, i int) (int, error) {
		return part.exportOne(inputs[i], formats, out, o, toile)
	}, func(n int, err error) {
		files += n
		if err != nil {
			failed++
		}
	})
	w.print(fmt.Sprintf("%d of %d sessions done, %d files\n", len(inputs)-failed, len(inputs), files))
	if failed > 0 {
		w.status = NotDone
	}
	return nil
}

func (w *world) exportOne(in outlet.Input, formats []outlet.Format, out string, o outlet.Options, toile bool) (int, error) {
	s, sheet, err := w.draft(in.File)
	if err != nil {
		return 0, err
	}
	if err := w.whole(in.File, sheet); err != nil {
		return 0, err
	}
	w.notes(sheet)
	if n := sheet.Count(pattern.Fail); n > 0 {
		w.say("%s: %d checks fail; chalkfold check says which", in.File, n)
	}
	if toile {
		sheet, in.Stem = workroom.Toile(s.Job), in.Stem+"-toile"
	}
	o.Session, o.Numbers = s.Job.Unit, session.IsDemo(s.Job)
	if o.Before == nil && !toile {
		o.Before = earlier(s.Job)
	}
	results, err := outlet.Export(sheet, in.Stem, out, formats, o, nil)
	if err != nil {
		return 0, notDone(err)
	}
	done := 0
	for _, r := range results {
		if r.Err != nil {
			w.tell(r.Err)
			err = r.Err
			continue
		}
		done++
		w.print(plain(r.Says()) + "\n")
	}
	if err != nil {
		return done, notDone(fmt.Errorf("%s: %d of %d files were not written", in.File, len(results)-done, len(results)))
	}
	return done, nil
}

func tiled(formats []outlet.Format) bool {
	return slices.ContainsFunc(formats, func(f outlet.Format) bool { return f.ID == "tiles" })
}

// printer takes what was measured on a printed cover: lines that are given are
// kept for the paper, and those kept before are taken where that is asked for.
func (w *world) printer(o *outlet.Options, asPrinted, tiled bool) error {
	if !tiled || !asPrinted && o.PrintedAcross == 0 && o.PrintedAlong == 0 {
		return nil
	}
	if err := o.Check(); err != nil {
		return notRead(err)
	}
	folders, err := files.Paths(w.env)
	if err != nil && asPrinted {
		return notDone(err)
	}
	if o.PrintedAcross > 0 || o.PrintedAlong > 0 {
		if err == nil {
			err = outlet.KeepPrinted(folders.Config, o.Paper, o.PrintedAcross, o.PrintedAlong)
		}
		if err != nil {
			w.say("%s", "not kept for the next time: "+err.Error())
		}
	}
	if !asPrinted {
		return nil
	}
	across, along := outlet.Printed(folders.Config, o.Paper)
	if across == 0 && along == 0 {
		return refuse("--as-printed", "no line of this paper", "none was measured yet", "print the cover, measure its lines, give them once with --printed-across and --printed-along")
	}
	if o.PrintedAcross == 0 {
		o.PrintedAcross = across
	}
	if o.PrintedAlong == 0 {
		o.PrintedAlong = along
	}
	return nil
}

// earlier is the draft of her measures before these, where the session keeps
// them and they are enough for one. What was chosen is as it is now.
func earlier(job pattern.Job) *pattern.Sheet {
	if len(job.Earlier) == 0 {
		return nil
	}
	job.Body, job.Client.Measured = job.Earlier[0].Body, job.Earlier[0].Measured
	if sheet := workroom.Draft(job); sheet.Complete {
		return sheet
	}
	return nil
}

// draftBefore is the draft of the session that --before names.
func (w *world) draftBefore(path string) (*pattern.Sheet, error) {
	if path == "" {
		return nil, nil
	}
	_, sheet, err := w.draft(path)
	if err != nil {
		return nil, err
	}
	return sheet, w.whole(path, sheet)
}

func paperIDs() []string {
	var out []string
	for _, p := range pdf.Papers() {
		out = append(out, p.ID)
	}
	return out
}

// everyFormat lists also those that need a draft before.
func everyFormat() []outlet.Format {
	return outlet.Offered(outlet.Options{Before: &pattern.Sheet{}})
}

func formatIDs() []string {
	var out []string
	for _, f := range everyFormat() {
		out = append(out, f.ID)
	}
	return out
}

func formatNames() string {
	text := ""
	for _, id := range formatIDs() {
		text += id + ", "
	}
	return text + "or " + outlet.All
}

func formatLines() string {
	var p page
	var rows [][]string
	for _, f := range everyFormat() {
		rows = append(rows, []string{"  " + f.ID, f.Says})
	}
	p.table(append(rows, []string{"  " + outlet.All, "every one of these"}))
	return p.String()
}
