package shell

import (
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

func helpCommand(w *world) *cobra.Command {
	return &cobra.Command{
		Use: "help [COMMAND]", Short: "all commands, or all about one", Args: wants(0, 1, "command"),
		ValidArgsFunction: func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
			return w.commandNames(), cobra.ShellCompDirectiveNoFileComp
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				w.print(w.help(w.root))
				return nil
			}
			for _, c := range w.commands {
				if c.Name() == args[0] {
					w.print(w.help(c))
					return nil
				}
			}
			return w.noCommand(args[0])
		},
	}
}

func (w *world) commandNames() []string {
	var out []string
	for _, c := range w.commands {
		out = append(out, c.Name())
	}
	return out
}

// noCommand refuses a command that there is not, with the nearest.
func (w *world) noCommand(name string) error {
	works := "chalkfold help lists them"
	if like := session.Nearest(name, w.commandNames()); like != "" {
		works = "did you mean " + like + "?"
	}
	return refuse("the call", measure.Quoted(name), "there is no such command", works)
}

const about = `Chalkfold drafts a made-to-measure dress from a client's tape measures: step by
step with every sum, trued, and ready for chalk, printer or cutter.`

// help is all about a command; of the root, all commands.
func (w *world) help(c *cobra.Command) string {
	var p page
	if c.HasParent() {
		p.line(capital(c.Short), ".")
		p.line()
		p.line("  ", c.UseLine())
		if c.Long != "" {
			p.line()
			p.line(strings.TrimRight(c.Long, "\n"))
		}
		if c.Example != "" {
			p.line()
			p.line("Examples:")
			p.line(c.Example)
		}
		p.options(c)
		return p.String()
	}
	p.line(about)
	p.line()
	rows := [][]string{{"  chalkfold [FILE]", "the workbench on the screen"}}
	for _, sub := range w.commands {
		rows = append(rows, []string{"  " + sub.UseLine(), sub.Short})
	}
	p.table(rows)
	p.options(c)
	p.line()
	p.line("FILE is a session, NAME.chalkfold.toml; - reads standard input. Results go to")
	p.line("standard output, words about the work to standard error. Exit status: 0 done,")
	p.line("1 not done or a check failed, 2 the call or the file could not be understood.")
	return p.String()
}

// options lists the options of a command.
func (p *page) options(c *cobra.Command) {
	var rows [][]string
	c.LocalFlags().VisitAll(func(f *pflag.Flag) {
		if !f.Hidden && f.Name != "help" {
			rows = append(rows, []string{"  " + optionName(f), f.Usage})
		}
	})
	if len(rows) == 0 {
		return
	}
	p.line()
	p.line("Options:")
	p.table(rows)
}

// optionName is an option as one types it.
func optionName(f *pflag.Flag) string {
	name := "--" + f.Name
	if f.Shorthand != "" {
		name = "-" + f.Shorthand + ", " + name
	}
	switch f.Value.Type() {
	case "bool":
		return name
	case "string":
		return name + " TEXT"
	case "int":
		return name + " N"
	}
	if t := f.Value.Type(); !strings.Contains(t, "|") {
		return name + " " + strings.ToUpper(t)
	}
	return name + " " + f.Value.Type()
}
