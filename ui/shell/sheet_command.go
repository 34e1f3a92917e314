package shell

import (
	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// sheetCommand is a command that drafts one session and tells the sheet, as a
// document for programs or as text.
func (w *world) sheetCommand(
	use, short, long string, document func(*pattern.Sheet, measure.Unit) object, words func(*pattern.Sheet, measure.Unit) string,
) *cobra.Command {
	c := &cobra.Command{
		Use: use, Short: short, Long: long, Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		RunE: func(_ *cobra.Command, args []string) error {
			_, sheet, err := w.draft(args[0])
			if err != nil {
				return err
			}
			w.notes(sheet)
			if w.json {
				w.print(document(sheet, w.jsonUnit()).text())
			} else {
				w.print(words(sheet, w.inUnit(sheet.Job.Unit)))
			}
			return w.whole(args[0], sheet)
		},
	}
	return w.share(c, flagUnit|flagJSON)
}
