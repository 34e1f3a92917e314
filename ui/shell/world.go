package shell

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime"
	"strings"

	"github.com/charmbracelet/x/term"
	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/canvas"
	"chalkfold/ui/session"
	"chalkfold/ui/settings"
	"chalkfold/ui/theme"
)

// world is what a call works in: its streams, its environment and the
// options that many commands share.
type world struct {
	in       io.Reader
	out, err io.Writer
	env      Env
	root     *cobra.Command
	commands []*cobra.Command // in the order of help
	status   int              // of a command that did its work and found something

	own  *settings.Settings // read when first asked for
	told []string

	unit   unitValue
	glyphs glyphsValue
	colour colourValue
	theme  themeValue
	plain  bool
	still  bool
	force  bool
	json   bool
}

// say writes words about the work.
func (w *world) say(format string, args ...any) {
	fmt.Fprintln(w.err, "chalkfold: "+plain(fmt.Sprintf(format, args...)))
}

// print writes results. A reader that went away is no fault of ours; the
// status tells.
func (w *world) print(text string) {
	if _, err := io.WriteString(w.out, text); err != nil && w.status == Done {
		w.status = NotDone
	}
}

// open reads a session file, or standard input for "-".
func (w *world) open(path string) (*session.Session, error) {
	var s *session.Session
	var err error
	if path == "-" {
		s, err = session.Read("standard input", w.in)
	} else {
		s, err = session.Open(path)
	}
	if err != nil {
		return nil, notRead(err)
	}
	for _, warning := range s.Warnings {
		w.say("%s", warning)
	}
	return s, nil
}

// draft opens a session and drafts it.
func (w *world) draft(path string) (*session.Session, *pattern.Sheet, error) {
	s, err := w.open(path)
	if err != nil {
		return nil, nil, err
	}
	return s, workroom.Draft(s.Job), nil
}

// inUnit is the unit that words are written in: the one asked for, or the
// session's own.
func (w *world) inUnit(of measure.Unit) measure.Unit {
	if w.unit.given {
		return w.unit.unit
	}
	return of
}

// settings is what her file of settings says.
func (w *world) settings() settings.Settings {
	if w.own == nil {
		own, told := settings.Read(w.config())
		w.own, w.told = &own, told
	}
	return *w.own
}

// newUnit is the unit of a new client: the one asked for, or that of the
// settings, or inches.
func (w *world) newUnit() measure.Unit {
	if own := w.settings(); own.Unit != nil {
		return w.inUnit(*own.Unit)
	}
	return w.inUnit(measure.In)
}

func first(words ...string) string {
	for _, s := range words {
		if s != "" {
			return s
		}
	}
	return ""
}

// jsonUnit is the unit of documents for programs.
func (w *world) jsonUnit() measure.Unit { return w.inUnit(measure.Mm) }

// whole says on standard error why a draft is not whole, and gives the work up
// as far as the exit status goes.
func (w *world) whole(path string, sheet *pattern.Sheet) error {
	if sheet.Complete {
		return nil
	}
	var all []error
	u := w.inUnit(sheet.Job.Unit)
	where := path
	if path == "-" {
		where = "standard input"
	}
	for _, m := range sheet.Missing {
		all = append(all, &measure.Refusal{Where: where, Read: string(m.ID) + " is missing", Wrong: m.For + " cannot be drawn without it", Works: "measure it and write it under [body]"})
	}
	for _, r := range sheet.Refused {
		all = append(all, &measure.Refusal{Where: where, Read: stepTitle(sheet, r.Step), Wrong: dot(r.Says.In(u)), Works: dot(r.Cure.In(u))})
	}
	if len(all) == 0 {
		all = append(all, &measure.Refusal{Where: where, Read: fmt.Sprintf("%d steps", len(sheet.Steps)), Wrong: "not every step could be drawn", Works: "chalkfold draft shows what each waits for"})
	}
	return notDone(errors.Join(all...))
}

func stepTitle(sheet *pattern.Sheet, id string) string {
	for _, s := range sheet.Steps {
		if s.ID == id {
			return fmt.Sprintf("step %d, %s", s.Number, s.Title)
		}
	}
	return id
}

// dot takes the full stop off a sentence that goes on.
func dot(s string) string { return strings.TrimSuffix(s, ".") }

// notes says what the draft kept but did not use, and what it proposed.
func (w *world) notes(sheet *pattern.Sheet) {
	u := w.inUnit(sheet.Job.Unit)
	for _, n := range sheet.Notes {
		w.say("%s", n.In(u))
	}
	for _, f := range sheet.Proposed() {
		term := string(f.ID)
		if m, ok := measure.Find(f.ID); ok {
			term = m.Term
		}
		w.say("%s is not measured; drafted with %s, give or take %s (%s)", term, u.Say(f.Value), u.Say(f.Proposal.Spread), f.Proposal.Source)
	}
}

// terminal says whether a stream is a terminal.
func terminal(stream any) bool {
	f, ok := stream.(*os.File)
	return ok && term.IsTerminal(f.Fd())
}

// size is the terminal's, or what a page takes.
func (w *world) size() (columns, rows int) {
	if f, ok := w.out.(*os.File); ok && term.IsTerminal(f.Fd()) {
		if c, r, err := term.GetSize(f.Fd()); err == nil && c > 0 && r > 0 {
			return c, r
		}
	}
	return 80, 24
}

// look is the theme for printing words, with no codes but on a terminal.
func (w *world) look() theme.Theme {
	own := w.settings()
	t, err := theme.Choose(first(string(w.theme), own.Theme), w.env)
	if err != nil {
		t = theme.Auto(w.env)
	}
	said := string(w.colour)
	if said == "" && w.env("NO_COLOR") == "" {
		said = own.Colour
	}
	when, err := theme.ParseWhen(said)
	if err != nil || w.plain {
		when = theme.WhenNever
	}
	tty := terminal(w.out) && !w.plain
	return t.With(theme.ColourFrom(w.env, tty, when))
}

// drawnWith is the set of glyphs: the one asked for, or what the terminal and
// the language settings can be trusted with.
func (w *world) drawnWith() canvas.Glyphs {
	if w.glyphs.given {
		return w.glyphs.glyphs
	}
	if own := w.settings(); own.Glyphs != "" && !w.plain && terminal(w.out) {
		g, _ := canvas.ParseGlyphs(own.Glyphs) // read once already
		return g
	}
	return glyphsOn(runtime.GOOS, w.env, w.plain)
}

// glyphsOn is the set of glyphs that a terminal can be trusted with. The old
// console of Windows, which names no session, has fonts without braille.
func glyphsOn(system string, env Env, plain bool) canvas.Glyphs {
	locale := localeOf(env)
	if t := env("TERM"); plain || t == "linux" || t == "dumb" || locale != "" && !strings.Contains(locale, "utf-8") && !strings.Contains(locale, "utf8") {
		return canvas.ASCII
	}
	if system == "windows" && env("WT_SESSION") == "" && env("TERM") == "" {
		return canvas.Blocks
	}
	return canvas.Braille
}

// localeOf is the language of letters, in lower case.
func localeOf(env Env) string {
	return strings.ToLower(first(env("LC_ALL"), env("LC_CTYPE"), env("LANG")))
}

// strict says that the terminal may give two cells to glyphs of which East
// Asia has a wide form: by the word of RUNEWIDTH_EASTASIAN, else by language.
func strict(env Env) bool {
	switch env("RUNEWIDTH_EASTASIAN") {
	case "1", "true", "yes":
		return true
	case "0", "false", "no":
		return false
	}
	l := localeOf(env)
	return strings.HasPrefix(l, "zh") || strings.HasPrefix(l, "ja") || strings.HasPrefix(l, "ko")
}
