package shell

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/charmbracelet/x/ansi"
	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/classroom"
	"chalkfold/ui/session"
	"chalkfold/ui/theme"
)

func classCommand(w *world) *cobra.Command {
	c := &cobra.Command{
		Use: "class DIR", Short: "a folder of learners' sessions at a glance", Args: wants(1, 1, "folder"), ValidArgsFunction: folders,
		Long:    "Reads every session of a folder and drafts it: what is measured of what the\ndraft reads, the last step before one that waits, what truing says, and the\nlesson begun last. A file that cannot be read has its line and stops nobody else.\nThe exit status is 1 when a check failed or a file cannot be read; advice and\nmeasurements still to come are no failure.",
		Example: "  chalkfold class evening\n  chalkfold class . --json",
		RunE: func(_ *cobra.Command, args []string) error {
			class, err := classroom.Folder(args[0])
			if err != nil {
				return notRead(err)
			}
			if w.json {
				w.print(classDocument(class, w.jsonUnit()).text())
			} else {
				w.print(w.classText(class, args[0]))
			}
			w.classFailures(class, args[0])
			return nil
		},
	}
	return w.share(c, flagUnit|flagJSON|flagLooks)
}

// folders completes names of folders.
func folders(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return nil, cobra.ShellCompDirectiveFilterDirs
}

func classDocument(class classroom.Class, u measure.Unit) object {
	doc := scale{u}.document()
	learners := list{}
	for _, r := range class.Rows {
		learners = append(learners, object{
			{"file", r.File},
			{"client", r.Client},
			{"taken", r.Taken},
			{"of", r.Of},
			{"step", r.Step},
			{"verdict", string(r.Verdict)},
			{"lesson", r.Lesson},
			{"error", r.Trouble},
		})
	}
	doc.add("learners", learners)
	return doc
}

// The widest that names may be: with these a line fits a terminal of 80.
const (
	fileWidth   = 18
	clientWidth = 18
	lessonWidth = 8
)

// cell is a name in so many cells. It may come from anywhere: one that would
// run into the blanks beside it, as a lone accent does, is spelt out.
func cell(name string, width int) string {
	s := ansi.Truncate(plain(name), width, "...")
	if ansi.StringWidth(" "+s+" ") != ansi.StringWidth(s)+2 {
		s = ansi.Truncate(strconv.QuoteToASCII(name), width, "...")
	}
	return s
}

// unread is the word for a file without a verdict.
const unread = "unread"

func (w *world) classText(class classroom.Class, dir string) string {
	var p page
	if len(class.Rows) == 0 {
		p.line("No sessions in ", plain(dir), ". A session is called NAME", session.Suffix, ".")
		return p.String()
	}
	rows := [][]string{{"  file", "client", "taken", "step", "truing", "lesson"}}
	for _, r := range class.Rows {
		file := cell(session.Stem(r.File), fileWidth)
		if r.Trouble != "" {
			rows = append(rows, []string{"! " + file, "", "", "", w.verdictWord(r.Verdict), ""})
			continue
		}
		mark := "  "
		if !r.Fine() {
			mark = "! "
		}
		rows = append(rows, []string{
			mark + file, cell(r.Client, clientWidth), outOf(r.Taken, r.Of), outOf(r.Step, r.Steps),
			w.verdictWord(r.Verdict), cell(r.Lesson, lessonWidth),
		})
	}
	p.table(rows, 2, 3)
	p.line()
	p.line(classTally(class))
	return p.String()
}

func outOf(n, of int) string { return fmt.Sprintf("%d of %d", n, of) }

// verdictWord is a verdict in its look.
func (w *world) verdictWord(v pattern.Verdict) string {
	role, word := roles[v], string(v)
	switch v {
	case "":
		role, word = theme.Warn, unread
	case classroom.Missing:
		role = theme.Muted
	}
	return w.look().Style(role).Render(word)
}

func classTally(class classroom.Class) string {
	var parts []string
	for _, v := range []pattern.Verdict{pattern.Pass, pattern.Advise, pattern.Fail, classroom.Missing, ""} {
		word := string(v)
		if v == "" {
			word = unread
		}
		parts = append(parts, fmt.Sprintf("%d %s", class.Count(v), word))
	}
	return strings.Join(parts, ", ")
}

// classFailures says a sentence for each session that needs to be put right.
func (w *world) classFailures(class classroom.Class, dir string) {
	for _, r := range class.Rows {
		if r.Fine() {
			continue
		}
		w.status = NotDone
		if r.Trouble != "" {
			w.say("%s", r.Trouble)
			continue
		}
		wrong := "it fails"
		if len(r.Failed) > 1 {
			wrong = "they fail"
		}
		w.say("%s", measure.Refusal{
			Where: r.File, Read: strings.Join(r.Failed, ", "), Wrong: wrong,
			Works: "chalkfold check " + filepath.Join(dir, r.File) + " says what to do",
		}.Error())
	}
	if class.More > 0 {
		w.say("%d more sessions in %s are not shown; a class holds %d", class.More, dir, classroom.Most)
	}
}
