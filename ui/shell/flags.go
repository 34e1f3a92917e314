package shell

import (
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/ui/canvas"
	"chalkfold/ui/theme"
)

// The options that many commands share. Each reads its value itself, so that
// a wrong one is refused before anything is done.

type unitValue struct {
	unit  measure.Unit
	given bool
}

func (v *unitValue) String() string {
	if !v.given {
		return ""
	}
	return v.unit.String()
}
func (v *unitValue) Type() string { return "in|cm|mm" }
func (v *unitValue) Set(text string) error {
	u, err := measure.ParseUnit(text)
	v.unit, v.given = u, err == nil
	return err
}

type glyphsValue struct {
	glyphs canvas.Glyphs
	given  bool
}

func (v *glyphsValue) String() string {
	if !v.given {
		return ""
	}
	return v.glyphs.String()
}
func (v *glyphsValue) Type() string { return "ascii|block|braille" }
func (v *glyphsValue) Set(text string) error {
	g, err := canvas.ParseGlyphs(text)
	if err != nil {
		return &measure.Refusal{Read: measure.Quoted(text), Wrong: "there is no such set of glyphs", Works: "write ascii, block or braille"}
	}
	v.glyphs, v.given = g, true
	return nil
}

type colourValue string

func (v *colourValue) String() string { return string(*v) }
func (v *colourValue) Type() string   { return "auto|always|never" }
func (v *colourValue) Set(text string) error {
	if _, err := theme.ParseWhen(text); err != nil || strings.TrimSpace(text) == "" {
		return &measure.Refusal{Read: measure.Quoted(text), Wrong: "that is no answer to it", Works: "write auto, always or never"}
	}
	*v = colourValue(strings.ToLower(text))
	return nil
}

type themeValue string

func (v *themeValue) String() string { return string(*v) }
func (v *themeValue) Type() string   { return "name" }
func (v *themeValue) Set(text string) error {
	if _, err := theme.For(text); err != nil && !strings.EqualFold(text, "auto") {
		return &measure.Refusal{Read: measure.Quoted(text), Wrong: "there is no such theme", Works: "write auto or one of " + strings.Join(theme.Names(), ", ")}
	}
	*v = themeValue(strings.ToLower(text))
	return nil
}

// lengthValue is a length on the command line; without a unit of its own it
// is in the unit of --unit, or millimetres.
type lengthValue struct {
	text string
}

func (v *lengthValue) String() string { return v.text }
func (v *lengthValue) Type() string   { return "length" }
func (v *lengthValue) Set(text string) error {
	if _, err := measure.Read(text, measure.Mm); err != nil {
		return err
	}
	v.text = text
	return nil
}

func (v *lengthValue) length(u measure.Unit) measure.Length {
	if v.text == "" {
		return 0
	}
	l, _ := measure.Read(v.text, u) // read once already
	return l
}

// flag says which of the shared options a command has.
type flag int

const (
	flagUnit flag = 1 << iota
	flagLooks
	flagGlyphs
	flagPlain
	flagForce
	flagJSON
)

// share gives a command some of the shared options, with completion.
func (w *world) share(c *cobra.Command, which flag) *cobra.Command {
	f := c.Flags()
	if which&flagJSON != 0 {
		f.BoolVar(&w.json, "json", false, "a document for programs, millimetres unless --unit says otherwise")
	}
	if which&flagUnit != 0 {
		f.Var(&w.unit, "unit", "unit of lengths")
		w.completes(c, "unit", "in", "cm", "mm")
	}
	if which&flagGlyphs != 0 {
		f.Var(&w.glyphs, "glyphs", "what drawings are made of; the usual depends on the terminal")
		w.completes(c, "glyphs", "ascii", "block", "braille")
	}
	if which&flagLooks != 0 {
		f.Var(&w.colour, "color", "when to use colour; auto is on a terminal")
		f.Var(&w.theme, "theme", "auto, "+strings.Join(theme.Names(), ", "))
		w.completes(c, "color", "auto", "always", "never")
		w.completes(c, "theme", append([]string{"auto"}, theme.Names()...)...)
	}
	if which&flagPlain != 0 {
		f.BoolVar(&w.plain, "plain", false, "words only: no drawing characters, no colours, no full screen")
	}
	if which&flagForce != 0 {
		f.BoolVar(&w.force, "force", false, "replace files that differ")
	}
	return c
}

// completes offers values of an option to the shell.
func (w *world) completes(c *cobra.Command, name string, values ...string) {
	err := c.RegisterFlagCompletionFunc(name, cobra.FixedCompletions(values, cobra.ShellCompDirectiveNoFileComp))
	if err != nil {
		panic("shell: " + c.Name() + " has no option " + name)
	}
}

// sessions completes names of session files.
func sessions(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return []string{"toml"}, cobra.ShellCompDirectiveFilterFileExt
}
