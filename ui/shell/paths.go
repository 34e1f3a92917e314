package shell

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"chalkfold/ui/files"
)

func pathsCommand(w *world) *cobra.Command {
	return &cobra.Command{
		Use: "paths", Short: "where settings, rescue copies and caches are kept", Args: wants(0, 0, "argument"),
		Long: "Prints the folders that Chalkfold uses. They follow XDG_CONFIG_HOME,\nXDG_STATE_HOME, XDG_DATA_HOME and XDG_CACHE_HOME on every system.",
		RunE: func(*cobra.Command, []string) error {
			f, err := files.Paths(w.env)
			if err != nil {
				return notDone(err)
			}
			var p page
			p.table([][]string{
				{"settings", f.Config},
				{"state", f.State},
				{"rescue copies", filepath.Join(f.State, "rescue")},
				{"data", f.Data},
				{"cache", f.Cache},
			})
			w.print(p.String())
			return nil
		},
	}
}

// config is the folder of settings, empty where there is none.
func (w *world) config() string {
	f, err := files.Paths(w.env)
	if err != nil {
		return ""
	}
	return f.Config
}
