package shell

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/export/ease"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
)

func easeCommand(w *world) *cobra.Command {
	var svg bool
	c := w.sheetCommand(
		"ease FILE", "how much wider the garment is than she is, level by level",
		"Lists body, garment and ease from the shoulders to the hem, and what is good\nat each level for the class of ease and the cloth. The bar shows it: [===] is\ngood, x the garment, | the body itself.",
		easeDocument, easeText,
	)
	inWords := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if !svg {
			return inWords(c, args)
		}
		_, sheet, err := w.draft(args[0])
		if err != nil {
			return err
		}
		w.notes(sheet)
		var b strings.Builder
		if ok, err := ease.WriteSVG(&b, sheet, w.inUnit(sheet.Job.Unit)); err != nil || !ok {
			return errors.Join(err, w.whole(args[0], sheet), refuse("ease", "--svg", "there is no level to draw yet", "measure bust, waist or hip"))
		}
		w.print(b.String())
		return w.whole(args[0], sheet)
	}
	c.Example = "  chalkfold ease anna.chalkfold.toml\n  chalkfold ease anna.chalkfold.toml --svg > anna-ease.svg"
	c.Flags().BoolVar(&svg, "svg", false, "draw it, as SVG on standard output")
	return c
}

func easeDocument(sheet *pattern.Sheet, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	doc.add("class", sheet.Pick("ease_class"))
	doc.add("cloth_kind", sheet.Pick("cloth_kind"))
	rows := list{}
	for _, r := range truing.EaseTable(sheet) {
		rows = append(rows, object{
			{"level", r.Level},
			{"body", s.length(r.Body)},
			{"garment", s.length(r.Garment)},
			{"ease", s.length(r.Ease())},
			{"low", s.length(r.Low)},
			{"high", s.length(r.High)},
			{"depth", s.length(r.Depth)},
			{"says", r.Says()},
		})
	}
	doc.add("levels", rows)
	return doc
}

// easeColumns is how wide the bar of ease is.
const easeColumns = 25

func easeText(sheet *pattern.Sheet, u measure.Unit) string {
	var b strings.Builder
	line := func(level, body, garment, ease, good, bar, says string) {
		text := fmt.Sprintf("%-20s %9s %9s %8s  %-16s %s  %s", level, body, garment, ease, good, bar, says)
		b.WriteString(strings.TrimRight(text, " ") + "\n")
	}
	line("Level", "body", "garment", "ease", "good", strings.Repeat(" ", easeColumns), "")
	for _, r := range truing.EaseTable(sheet) {
		good := u.Tape(r.Low) + " to " + u.Tape(r.High)
		if r.Low < -r.Garment/2 {
			good = "the hem opens"
		}
		line(r.Level, u.Tape(r.Body), u.Tape(r.Garment), u.Tape(r.Ease()), good, r.Bar(easeColumns), r.Says())
	}
	return b.String()
}
