package shell

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/session"
)

func draftCommand(w *world) *cobra.Command {
	var piece string
	upto := -1
	c := &cobra.Command{
		Use: "draft FILE", Short: "the steps: what to do, why, the sum, the result", Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		Long: "Prints the draft step by step: DO what to mark, SUM how its number came to be,\nWHY, and the usual SLIP. A step that cannot be drawn yet says what it waits for.",
		RunE: func(cmd *cobra.Command, args []string) error {
			_, sheet, err := w.draft(args[0])
			if err != nil {
				return err
			}
			steps, err := selected(cmd, sheet, piece, upto)
			if err != nil {
				return err
			}
			w.notes(sheet)
			if w.json {
				w.print(draftDocument(steps, w.jsonUnit()).text())
			} else {
				w.print(draftText(sheet, steps, w.inUnit(sheet.Job.Unit)))
			}
			return w.whole(args[0], sheet)
		},
	}
	c.Flags().StringVar(&piece, "piece", "", "only the steps of this piece: front, back ...")
	w.endsOn(c, "piece", ofSession(stepPieces))
	c.Flags().IntVar(&upto, "upto", -1, "only the steps up to this number")
	return w.share(c, flagUnit|flagJSON)
}

// selected are the steps that were asked for.
func selected(c *cobra.Command, sheet *pattern.Sheet, piece string, upto int) ([]pattern.Step, error) {
	if c.Flags().Changed("upto") && (upto < 0 || upto > len(sheet.Steps)) {
		return nil, refuse("--upto", fmt.Sprint(upto), "there is no such step", fmt.Sprintf("write a number from 0 to %d", len(sheet.Steps)))
	}
	if upto < 0 {
		upto = len(sheet.Steps)
	}
	if piece != "" {
		if err := known(piece, stepPieces(sheet)); err != nil {
			return nil, err
		}
	}
	var out []pattern.Step
	for _, s := range sheet.Steps {
		if s.Number <= upto && (piece == "" || string(s.Piece) == piece) {
			out = append(out, s)
		}
	}
	return out, nil
}

func stepPieces(sheet *pattern.Sheet) []string {
	var out []string
	seen := map[pattern.PieceID]bool{"": true}
	for _, s := range sheet.Steps {
		if !seen[s.Piece] {
			seen[s.Piece] = true
			out = append(out, string(s.Piece))
		}
	}
	return out
}

// known refuses a piece that there is not.
func known(piece string, pieces []string) error {
	for _, p := range pieces {
		if p == piece {
			return nil
		}
	}
	works := "write one of " + strings.Join(pieces, ", ")
	if like := session.Nearest(piece, pieces); like != "" {
		works = "did you mean " + like + "?"
	}
	return refuse("--piece", measure.Quoted(piece), "there is no such piece", works)
}

func draftDocument(steps []pattern.Step, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	all := list{}
	for _, st := range steps {
		o := object{
			{"number", st.Number},
			{"id", st.ID},
			{"piece", string(st.Piece)},
			{"title", st.Title},
			{"do", st.Do.In(u)},
			{"why", st.Why.In(u)},
			{"sum", st.Sum.Sum(u)},
		}
		if st.Sum.IsZero() {
			o.add("result", nil)
		} else {
			o.add("result", s.length(st.Sum.Result()))
		}
		o.add("slip", st.Slip.In(u))
		o.add("rule", st.Rule.In(u))
		o.add("from", words(st.From))
		o.add("marks", words(st.Marks))
		o.add("drawn", st.Drawn)
		if !st.Drawn {
			o.add("waits", st.Waits.In(u))
		}
		all = append(all, o)
	}
	doc.add("steps", all)
	return doc
}

func draftText(sheet *pattern.Sheet, steps []pattern.Step, u measure.Unit) string {
	var p page
	p.line(heading(sheet), ", lengths in ", u.String())
	for _, st := range steps {
		p.line()
		p.step(st, len(sheet.Steps), u)
	}
	return p.String()
}

// step is one step in words.
func (p *page) step(st pattern.Step, of int, u measure.Unit) {
	where := capital(spaced(st.Piece))
	if where != "" {
		where += "   "
	}
	p.line(fmt.Sprintf("Step %d of %d   %s%s", st.Number, of, where, st.Title))
	if !st.Drawn {
		p.para("  WAITS ", st.Waits.In(u))
		return
	}
	p.para("  DO    ", st.Do.In(u))
	if sum := st.Sum.Sum(u); sum != "" {
		p.para("  SUM   ", sum+" "+u.String())
	}
	p.para("  WHY   ", st.Why.In(u))
	p.para("  RULE  ", st.Rule.In(u))
	p.para("  SLIP  ", st.Slip.In(u))
}
