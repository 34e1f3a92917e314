package shell

import (
	"strings"

	"github.com/charmbracelet/x/ansi"
	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"chalkfold/ui/keys"
)

func manCommand(w *world) *cobra.Command {
	return &cobra.Command{
		Use: "man", Short: "the manual page, for man -l", Args: wants(0, 0, "argument"),
		Long:    "Writes the manual page to standard output.",
		Example: "  chalkfold man | man -l -\n  chalkfold man > ~/.local/share/man/man1/chalkfold.1",
		RunE: func(*cobra.Command, []string) error {
			w.print(w.manual())
			return nil
		},
	}
}

// roff collects a manual page.
type roff struct{ strings.Builder }

// manWidth keeps the lines of the source short, as the checkers like them.
const manWidth = 72

// words writes text, guarded against what the language would read as its own.
func (r *roff) words(text string) {
	for _, line := range strings.Split(ansi.Wordwrap(strings.TrimRight(text, "\n"), manWidth, ""), "\n") {
		if strings.TrimSpace(line) == "" {
			r.WriteString(".PP\n")
			continue
		}
		r.WriteString(guarded(line) + "\n")
	}
}

// folded writes lines that are roff already, the long ones on several.
func (r *roff) folded(source string) {
	for _, line := range strings.Split(strings.TrimRight(source, "\n"), "\n") {
		if strings.HasPrefix(line, ".") {
			r.WriteString(line + "\n")
			continue
		}
		for _, part := range strings.Split(ansi.Wordwrap(line, manWidth, ""), "\n") {
			if strings.HasPrefix(part, ".") || strings.HasPrefix(part, "'") {
				part = `\&` + part
			}
			r.WriteString(part + "\n")
		}
	}
}

func guarded(line string) string {
	line = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(line)
	if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
		line = `\&` + line
	}
	return line
}

func (r *roff) section(title string) { r.WriteString(".SH " + title + "\n") }

// literal writes lines as they stand.
func (r *roff) literal(text string) {
	r.WriteString(".nf\n")
	for _, line := range strings.Split(strings.TrimRight(text, "\n"), "\n") {
		r.WriteString(guarded(line) + "\n")
	}
	r.WriteString(".fi\n")
}

// item writes a term and what it means.
func (r *roff) item(term, words string) {
	r.WriteString(".TP\n.B " + guarded(term) + "\n")
	r.words(words)
}

// manual is the page, made from the commands and the key table.
func (w *world) manual() string {
	var r roff
	r.WriteString(".TH CHALKFOLD 1 \"\" \"chalkfold " + Version + "\" \"\"\n")
	r.section("NAME")
	r.words("chalkfold - draft a made-to-measure dress from tape measures")
	r.section("SYNOPSIS")
	r.WriteString(".B chalkfold\n.RI [ FILE ]\n.br\n.B chalkfold\n.I COMMAND\n.RI [ OPTIONS ]\n.RI [ FILE ...]\n")
	r.section("DESCRIPTION")
	r.words(about)
	r.WriteString(".PP\n")
	r.words("Without a command it opens the workbench on the screen. With one it works without a screen: results go to standard output, words about the work to standard error. FILE is a session, NAME.chalkfold.toml; - reads standard input.")
	r.section("COMMANDS")
	for _, c := range w.commands {
		r.command(c)
	}
	r.section("OPTIONS OF THE WORKBENCH")
	r.options(w.root)
	r.section("KEYS")
	r.words("Keys of the workbench, by place.")
	r.folded(keys.Roff())
	r.section("SESSION FILE")
	r.words("A session is a text file in TOML. Lengths are text in quotes or numbers, in the unit of the file unless they name their own. Comments and keys that Chalkfold does not know are kept when it saves.")
	r.literal("form = 1\nunit = \"in\"\n\n[client]\nname = \"Learner Four\"\n\n[body]\nbust_girth = \"36 1/2\"\nwaist_girth = \"71 cm\"\n\n[style]\ngarment = \"dress\"\nmethod = \"measured\"")
	r.section("SETTINGS")
	r.words("settings.toml in the folder that chalkfold paths names; chalkfold settings prints all that can stand in it: theme, glyphs, unit and more, and under [keys] other keys for actions. Two actions of one place cannot have the same key. An option of the call counts before the environment, that before the file.")
	r.section("EXIT STATUS")
	r.item("0", "Done; advice is allowed.")
	r.item("1", "The work could not be done, or a check failed.")
	r.item("2", "The call or the file could not be understood.")
	r.section("ENVIRONMENT")
	r.item("NO_COLOR", "No colours.")
	r.item("ACCESSIBLE", "Words only, as with --plain.")
	r.item("COLORFGBG", "Light or dark, where the terminal says so by it.")
	r.item("LC_ALL, LC_CTYPE, LANG", "Where the letters are not UTF-8, drawings are ASCII.")
	r.item("RUNEWIDTH_EASTASIAN", "1 where the terminal gives two cells to doubtful signs; none is sent then.")
	r.item("XDG_CONFIG_HOME, XDG_STATE_HOME, XDG_DATA_HOME, XDG_CACHE_HOME", "Where settings, rescue copies and caches are kept; chalkfold paths prints them.")
	return r.String()
}

func (r *roff) command(c *cobra.Command) {
	r.WriteString(".SS " + guarded(c.UseLine()) + "\n")
	if c.Long != "" {
		first, rest, _ := strings.Cut(c.Long, "\n\n")
		r.words(strings.ReplaceAll(first, "\n", " "))
		if rest != "" {
			r.literal(rest)
		}
	} else {
		r.words(capital(c.Short) + ".")
	}
	if c.Example != "" {
		r.WriteString(".PP\n")
		r.literal(c.Example)
	}
	r.options(c)
}

func (r *roff) options(c *cobra.Command) {
	c.LocalFlags().VisitAll(func(f *pflag.Flag) {
		if !f.Hidden && f.Name != "help" {
			r.item(optionName(f), capital(f.Usage)+".")
		}
	})
}
