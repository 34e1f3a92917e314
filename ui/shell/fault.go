package shell

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

// fault is what ended a command, with its exit status.
type fault struct {
	status int
	err    error
}

func (f *fault) Error() string { return f.err.Error() }
func (f *fault) Unwrap() error { return f.err }

// notRead is a call or a file that could not be understood.
func notRead(err error) error { return &fault{NotUnderstood, err} }

// notDone is work that could not be done.
func notDone(err error) error { return &fault{NotDone, err} }

// refuse is a Refusal of a call.
func refuse(where, read, wrong, works string) error {
	return notRead(&measure.Refusal{Where: where, Read: read, Wrong: wrong, Works: works})
}

// Limits of what is said about faults: a file of nothing but mistakes must
// not fill the screen.
const (
	mostFaults = 40
	mostBytes  = 18_000
)

// each gives every error that was joined.
func each(err error) []error {
	var f *fault
	if errors.As(err, &f) && err == error(f) { //nolint:errorlint // only where it stands outermost
		return each(f.err)
	}
	if j, ok := err.(interface{ Unwrap() []error }); ok {
		var out []error
		for _, e := range j.Unwrap() {
			out = append(out, each(e)...)
		}
		return out
	}
	return []error{err}
}

// tell says what went wrong, a line each.
func (w *world) tell(err error) {
	all := each(err)
	said := 0
	for i, e := range all {
		line := "chalkfold: " + plain(e.Error())
		if i == mostFaults || said+len(line) > mostBytes {
			fmt.Fprintf(w.err, "chalkfold: and %d more of the kind\n", len(all)-i)
			return
		}
		said += len(line) + 1
		fmt.Fprintln(w.err, line)
	}
}

// plain spells control characters out and cuts what is far too long for a
// sentence: a message may hold anything that was typed.
func plain(s string) string {
	var b strings.Builder
	for i := 0; i < len(s) && b.Len() < 2000; {
		r, n := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == utf8.RuneError && n == 1:
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case unicode.IsControl(r) || r >= 0x202A && r <= 0x202E || r >= 0x2066 && r <= 0x2069:
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
		i += n
	}
	return b.String()
}

// flagFault turns what the flag reader complains about into our words.
func (w *world) flagFault(c *cobra.Command, err error) error {
	where := whereOf(c)
	var none *pflag.NotExistError
	var empty *pflag.ValueRequiredError
	var wrong *pflag.InvalidValueError
	switch {
	case errors.As(err, &none):
		name := none.GetSpecifiedName()
		read := "--" + name
		if none.GetSpecifiedShortnames() != "" {
			read = "-" + name
		}
		works := helpHint(c)
		var known []string
		c.Flags().VisitAll(func(f *pflag.Flag) { known = append(known, f.Name) })
		if like := session.Nearest(name, known); like != "" {
			works = "did you mean --" + like + "?"
		}
		return refuse(where, read, "there is no such option", works)
	case errors.As(err, &empty):
		return refuse(where, "--"+empty.GetSpecifiedName()+" and nothing behind it", "it wants a value", helpHint(c))
	case errors.As(err, &wrong):
		var r *measure.Refusal
		if errors.As(wrong.Unwrap(), &r) {
			return notRead(r.At(where + ": --" + wrong.GetFlag().Name))
		}
		return refuse(where, "--"+wrong.GetFlag().Name+" "+measure.Quoted(wrong.GetValue()), "it wants "+kindWords(wrong.GetFlag()), helpHint(c))
	}
	return refuse(where, "the options", err.Error(), helpHint(c))
}

func kindWords(f *pflag.Flag) string {
	switch f.Value.Type() {
	case "int":
		return "a whole number"
	case "bool":
		return "no value"
	}
	return "another value"
}

func helpHint(c *cobra.Command) string {
	if !c.HasParent() {
		return "chalkfold help lists them"
	}
	return "chalkfold help " + c.Name() + " lists them"
}

// wants says how many arguments a command takes.
func wants(low, high int, what string) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		switch {
		case len(args) < low:
			return refuse(whereOf(c), "no "+what, "it wants one", "write "+c.UseLine())
		case len(args) > high:
			return refuse(whereOf(c), fmt.Sprintf("%d arguments", len(args)), "that is more than it takes", "write "+c.UseLine())
		}
		for _, a := range args {
			if a == "" {
				return refuse(whereOf(c), `""`, "an empty name", "write "+c.UseLine())
			}
		}
		return nil
	}
}

// whereOf names a command as the place of a refusal.
func whereOf(c *cobra.Command) string {
	if !c.HasParent() {
		return "the call"
	}
	return c.Name()
}
