package shell

import (
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/outlet"
	"chalkfold/ui/session"
)

// demoName is the name of the session that demo writes.
const demoName = "work-dress" + session.Suffix

func demoCommand(w *world) *cobra.Command {
	var out string
	c := &cobra.Command{
		Use: "demo", Short: "the whole work on invented measures, from tape to files", Args: wants(0, 0, "argument"),
		Long: "Does the main job once on built-in data: an evening class drafts a work dress for\none of its learners. Drafts, trues, draws an outline, writes every output, and\ncompares the draft by measures with the draft by thumb.",
		RunE: func(*cobra.Command, []string) error { return w.demo(out) },
	}
	c.Flags().StringVar(&out, "out", "chalkfold-demo", "folder, made if it is not there")
	w.endsOn(c, "out", folders)
	return w.share(c, flagUnit|flagGlyphs|flagPlain|flagForce)
}

func (w *world) demo(out string) error {
	if err := folderOrNothing(out); err != nil {
		return notDone(err)
	}
	s := session.Demo()
	sheet := workroom.Draft(s.Job)
	if err := w.whole("the demonstration", sheet); err != nil {
		return err
	}
	u := w.inUnit(s.Job.Unit)
	w.print(demoDraft(sheet, u))
	w.print(drawing(sheet, "", 78, 20, w))
	w.print(demoChecks(sheet, u))
	if err := w.demoFiles(s, sheet, out); err != nil {
		return err
	}
	w.print(demoThumb(s.Job, sheet, u))
	w.print(fmt.Sprintf("\nNext: chalkfold %s opens the workbench on it.\n", plain(filepath.Join(out, demoName))))
	return nil
}

// demoDraft tells the measures and the steps in brief.
func demoDraft(sheet *pattern.Sheet, u measure.Unit) string {
	var p page
	p.line(heading(sheet), ", lengths in ", u.String())
	p.line()
	taken := ""
	for _, id := range []measure.ID{measure.BustGirth, measure.WaistGirth, measure.HipGirth, measure.BackNeckToWaist} {
		if l, ok := sheet.Job.Body.Get(id); ok {
			m, _ := measure.Find(id)
			taken += ", " + m.Short + " " + u.Tape(l)
		}
	}
	p.para("Measured: ", fmt.Sprintf("%d lengths by tape%s ...", sheet.Job.Body.Len(), taken))
	p.para("Drafted:  ", fmt.Sprintf("%d steps, each with its sum; three of them:", len(sheet.Steps)))
	shown := 0
	for _, st := range sheet.Steps {
		if sum := st.Sum.Sum(u); sum != "" && st.Piece == pattern.Front && len(st.From) > 1 && shown < 3 {
			p.para(fmt.Sprintf("  step %2d  ", st.Number), st.Title+": "+sum)
			shown++
		}
	}
	p.line()
	return p.String()
}

// demoChecks tells what truing found, and the pieces.
func demoChecks(sheet *pattern.Sheet, u measure.Unit) string {
	var p page
	p.line()
	p.para("Trued:    ", tally(sheet)+"; chalkfold check lists them. Two of them:")
	shown := 0
	for _, f := range sheet.Findings {
		if f.Verdict == pattern.Pass && f.In == pattern.InLength && f.Got != 0 && shown < 2 {
			p.line("  ", f.Title, ": ", gotWant(f, u))
			shown++
		}
	}
	for _, f := range sheet.Findings {
		if f.Verdict == pattern.Fail || f.Verdict == pattern.Advise {
			p.para("  "+string(f.Verdict)+" ", f.Title+": "+f.Says.In(u))
		}
	}
	names := ""
	for i := range sheet.Pieces {
		names += ", " + sheet.Pieces[i].Title
	}
	if len(names) > 2 {
		p.para("Pieces:   ", names[2:]+".")
	}
	p.line()
	return p.String()
}

// demoFiles writes the session and every output.
func (w *world) demoFiles(s *session.Session, sheet *pattern.Sheet, out string) error {
	formats, err := outlet.Parse(outlet.All)
	if err != nil {
		return notDone(err)
	}
	o := outlet.Options{Session: s.Job.Unit, Force: w.force, Numbers: session.IsDemo(s.Job)}
	if w.unit.given {
		o.Unit = &w.unit.unit
	}
	results, err := outlet.Export(sheet, session.Stem(demoName), out, formats, o, nil)
	if err != nil {
		return notDone(err)
	}
	if err := w.create(filepath.Join(out, demoName), session.DemoText()); err != nil {
		return err
	}
	for _, r := range results {
		if r.Err != nil {
			w.tell(r.Err)
			w.status = NotDone
			continue
		}
		w.print(plain(r.Says()) + "\n")
	}
	return nil
}

// demoCompared are the differences that show what the methods are about.
var demoCompared = []string{"front neck", "front shoulder", "front armhole", "finished neck", "finished armhole", "finished bust", "finished hem"}

// demoThumb compares the same job by thumb, in a few lines.
func demoThumb(job pattern.Job, sheet *pattern.Sheet, u measure.Unit) string {
	thumb := workroom.Draft(job.WithStyle(pattern.Method, pattern.PickValue(pattern.Thumb)))
	var p page
	p.line()
	p.line("The same dress by thumb, against the measures:")
	for _, d := range differences(sheet, thumb) {
		if d.inA && d.inB && !d.angle && contains(demoCompared, d.what) {
			p.line("  ", capital(d.says(u)))
		}
	}
	p.line("  chalkfold compare FILE --method measured,thumb lists all of it.")
	return p.String()
}
