package shell

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"chalkfold/ui/desk"
	"chalkfold/ui/settings"
)

func settingsCommand(w *world) *cobra.Command {
	return &cobra.Command{
		Use: "settings", Short: "every setting and every key, as a file to take over", Args: wants(0, 0, "argument"),
		Long: "Prints what can stand in settings.toml in the folder of settings, each line\nwith a # before it, and says what is wrong with the file that is there.\n" +
			"An option of the call counts before the environment, that before the file.",
		Example: "  chalkfold settings\n  chalkfold paths",
		RunE: func(*cobra.Command, []string) error {
			_, wrong := w.settings().On(desk.Keys())
			told := append(w.told, wrong...)
			w.warn(told)
			if len(told) > 0 {
				w.status = NotDone
			}
			text := settings.Template(desk.Keys())
			if dir := w.config(); dir != "" {
				text = "# " + plain(filepath.Join(dir, settings.File)) + "\n" + text
			}
			w.print(text)
			return nil
		},
	}
}
