package shell

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/pattern"
	"chalkfold/ui/view"
)

// Limits of a drawing in characters: from what still shows a piece to what no
// screen has.
const (
	leastColumns, mostColumns = 10, 1000
	leastRows, mostRows       = 4, 1000
)

func outlineCommand(w *world) *cobra.Command {
	var piece string
	var columns, rows int
	c := &cobra.Command{
		Use: "outline FILE", Short: "scaled outlines as text", Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		Long: "Draws the pieces as text, lying as they lie on the table: the fold of the\nfront along the top, the back below it, the side seams facing each other.",
		RunE: func(cmd *cobra.Command, args []string) error {
			c, r := w.size()
			if !cmd.Flags().Changed("columns") {
				columns = min(max(c, 40), 200)
			}
			if !cmd.Flags().Changed("rows") {
				rows = min(max(r-2, 20), 60)
			}
			if err := within("--columns", columns, leastColumns, mostColumns); err != nil {
				return err
			}
			if err := within("--rows", rows, leastRows, mostRows); err != nil {
				return err
			}
			_, sheet, err := w.draft(args[0])
			if err != nil {
				return err
			}
			if piece != "" {
				if err := known(piece, drawable(sheet)); err != nil {
					return err
				}
			}
			w.notes(sheet)
			w.print(drawing(sheet, piece, columns, rows, w))
			return w.whole(args[0], sheet)
		},
	}
	c.Flags().StringVar(&piece, "piece", "", "only this piece: front, back_neck_facing ...")
	w.endsOn(c, "piece", ofSession(pieceIDs))
	c.Flags().IntVar(&columns, "columns", 80, "width in characters; the usual is the terminal's")
	c.Flags().IntVar(&rows, "rows", 22, "height in lines")
	return w.share(c, flagGlyphs|flagPlain)
}

func within(name string, n, low, high int) error {
	if n < low || n > high {
		return refuse(name, fmt.Sprint(n), "nothing can be drawn in that", fmt.Sprintf("write a number from %d to %d", low, high))
	}
	return nil
}

// drawable are the pieces that can be drawn, whole or so far.
func drawable(sheet *pattern.Sheet) []string {
	var out []string
	for _, p := range sheet.Pieces {
		out = append(out, string(p.ID))
	}
	if len(out) == 0 {
		return stepPieces(sheet)
	}
	return out
}

// drawing is the outline without empty lines round it.
func drawing(sheet *pattern.Sheet, piece string, columns, rows int, w *world) string {
	text := view.Outline(sheet, pattern.PieceID(piece), columns, rows, w.drawnWith())
	return strings.TrimRight(strings.TrimLeft(text, "\n"), "\n ") + "\n"
}
