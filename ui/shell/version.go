package shell

import (
	"runtime/debug"

	"github.com/spf13/cobra"
)

// Version is the version of this Chalkfold.
const Version = "0.1.0"

func versionCommand(w *world) *cobra.Command {
	return &cobra.Command{
		Use: "version", Short: "which Chalkfold this is", Args: wants(0, 0, "argument"),
		RunE: func(*cobra.Command, []string) error {
			w.print(versionText())
			return nil
		},
	}
}

// versionText is the version and what it was built from.
func versionText() string {
	text := "chalkfold " + Version
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return text + "\n"
	}
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" && len(s.Value) >= 12 {
			text += " (" + s.Value[:12] + ")"
		}
	}
	return text + ", " + info.GoVersion + "\n"
}
