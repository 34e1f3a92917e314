package shell

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/theme"
)

func checkCommand(w *world) *cobra.Command {
	c := &cobra.Command{
		Use: "check FILE", Short: "truing: what must match, and what does not", Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		Long: "Trues the draft: seams that are sewn together are laid against each other,\nopenings against the head, girths against the body. Every finding names two\nlengths, and if something is to be done, the input to change.\nThe exit status is 1 when a check failed; advice is no failure.",
		RunE: func(_ *cobra.Command, args []string) error {
			_, sheet, err := w.draft(args[0])
			if err != nil {
				return err
			}
			w.notes(sheet)
			if w.json {
				w.print(checkDocument(sheet, w.jsonUnit()).text())
			} else {
				w.print(w.checkText(sheet, w.inUnit(sheet.Job.Unit)))
			}
			if err := w.whole(args[0], sheet); err != nil {
				return err
			}
			w.failures(sheet)
			return nil
		},
	}
	return w.share(c, flagUnit|flagJSON|flagLooks)
}

// failures puts a line for each failed finding on standard error.
func (w *world) failures(sheet *pattern.Sheet) {
	u := w.inUnit(sheet.Job.Unit)
	for _, f := range sheet.Findings {
		if f.Verdict == pattern.Fail {
			w.status = NotDone
			w.say("%s", f.Title+": "+strings.Join(nonEmpty(dot(gotWant(f, u)), dot(f.Says.In(u)), dot(f.Cure.In(u))), "; "))
		}
	}
}

func nonEmpty(parts ...string) []string {
	var out []string
	for _, p := range parts {
		if p != "" {
			out = append(out, p)
		}
	}
	return out
}

// verdict is the worst of all findings; a draft that is not whole fails.
func verdict(sheet *pattern.Sheet) pattern.Verdict {
	switch {
	case sheet.Count(pattern.Fail) > 0 || !sheet.Complete:
		return pattern.Fail
	case sheet.Count(pattern.Advise) > 0:
		return pattern.Advise
	}
	return pattern.Pass
}

func checkDocument(sheet *pattern.Sheet, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	doc.add("verdict", string(verdict(sheet)))
	doc.add("complete", sheet.Complete)
	findings := list{}
	for _, f := range sheet.Findings {
		findings = append(findings, object{
			{"check", f.Check},
			{"code", f.Code},
			{"title", f.Title},
			{"verdict", string(f.Verdict)},
			{"got", s.quantity(f, f.Got)},
			{"want", s.quantity(f, f.Want)},
			{"low", s.quantity(f, f.Low)},
			{"high", s.quantity(f, f.High)},
			{"where", object{{"piece", string(f.Where.Piece)}, {"at", s.point(f.Where.At)}}},
			{"says", f.Says.In(u)},
			{"cure", f.Cure.In(u)},
			{"input", f.Input},
		})
	}
	doc.add("findings", findings)
	return doc
}

// quantity is a figure of a finding in what it counts.
func (s scale) quantity(f pattern.Finding, x float64) number {
	switch f.In {
	case pattern.InDegrees:
		return degrees(x)
	case pattern.InCount:
		return number{x, 4}
	}
	return s.mm(x)
}

// sayQuantity is the same in words.
func sayQuantity(f pattern.Finding, x float64, u measure.Unit) string {
	switch f.In {
	case pattern.InDegrees:
		return number{x, 1}.String() + " degrees"
	case pattern.InCount:
		return number{x, 2}.String()
	}
	return u.Tape(measure.Length(x))
}

func gotWant(f pattern.Finding, u measure.Unit) string {
	if f.Verdict == pattern.Skip || f.Got == 0 && f.Want == 0 {
		return ""
	}
	return "got " + sayQuantity(f, f.Got, u) + ", want " + sayQuantity(f, f.Want, u)
}

// roles are the looks of verdicts on a terminal.
var roles = map[pattern.Verdict]theme.Role{pattern.Pass: theme.Ok, pattern.Advise: theme.Warn, pattern.Fail: theme.Warn, pattern.Skip: theme.Muted}

func (w *world) checkText(sheet *pattern.Sheet, u measure.Unit) string {
	var p page
	look := w.look()
	p.line(heading(sheet), ", lengths in ", u.String())
	p.line()
	for _, f := range sheet.Findings {
		word := string(f.Verdict)
		mark := " "
		if f.Verdict == pattern.Fail || f.Verdict == pattern.Advise {
			mark = "!"
		}
		label := mark + " " + look.Style(roles[f.Verdict]).Render(word) + strings.Repeat(" ", 7-len(word)) + f.Title
		switch g := gotWant(f, u); {
		case f.Verdict == pattern.Pass && !f.Says.IsEmpty():
			label += ": " + f.Says.In(u)
		case g != "":
			label += ": " + g
		}
		p.line(label)
		if f.Verdict != pattern.Pass {
			p.para("         ", f.Says.In(u))
			if cure := f.Cure.In(u); cure != "" {
				p.para("         ", "Cure: "+cure)
			}
		}
	}
	p.line()
	p.line(tally(sheet))
	return p.String()
}

func tally(sheet *pattern.Sheet) string {
	return fmt.Sprintf("%d pass, %d advise, %d fail, %d skipped", sheet.Count(pattern.Pass), sheet.Count(pattern.Advise), sheet.Count(pattern.Fail), sheet.Count(pattern.Skip))
}
