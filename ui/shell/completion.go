package shell

import (
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
)

// shells that a script can be written for.
var shells = []string{"bash", "zsh", "fish", "powershell"}

func completionCommand(w *world) *cobra.Command {
	c := &cobra.Command{
		Use: "completion SHELL", Short: "a script that completes commands, options and names", Args: wants(1, 1, "shell"), ValidArgs: shells,
		Long:    "Writes a script for bash, zsh, fish or powershell to standard output.",
		Example: "  chalkfold completion bash > ~/.local/share/bash-completion/completions/chalkfold\n  chalkfold completion fish > ~/.config/fish/completions/chalkfold.fish",
		RunE: func(_ *cobra.Command, args []string) error {
			var err error
			switch args[0] {
			case "bash":
				err = w.root.GenBashCompletionV2(w.out, true)
			case "zsh":
				err = w.root.GenZshCompletion(w.out)
			case "fish":
				err = w.root.GenFishCompletion(w.out, true)
			case "powershell":
				err = w.root.GenPowerShellCompletionWithDesc(w.out)
			default:
				return refuse("completion", measure.Quoted(args[0]), "there is no script for that shell", "write one of "+strings.Join(shells, ", "))
			}
			if err != nil {
				return notDone(err)
			}
			return nil
		},
	}
	return c
}
