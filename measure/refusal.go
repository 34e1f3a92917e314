package measure

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Refusal says why something that was given could not be used, in four
// parts. Parts that do not apply stay empty.
type Refusal struct {
	Where string // the field, the key, or the file with line and column
	Read  string // what was read there
	Wrong string // what is wrong with it
	Works string // what would work
}

// Error is the Refusal as one line: "Where: Read; Wrong; Works".
func (r Refusal) Error() string {
	parts := make([]string, 0, 3)
	for _, p := range []string{clean(r.Read), clean(r.Wrong), clean(r.Works)} {
		if p != "" {
			parts = append(parts, p)
		}
	}
	text := strings.Join(parts, "; ")
	if r.Where == "" {
		return text
	}
	return clean(r.Where) + ": " + text
}

// At is the same Refusal with the place it belongs to.
func (r Refusal) At(where string) *Refusal {
	r.Where = where
	return &r
}

const (
	// partLimit and quoteLimit keep a hostile text from filling the screen.
	// A part may be a sentence; what was typed is known to the one who typed it.
	partLimit  = 400
	quoteLimit = 48
)

// Quoted is text in quotes, fit for one line of a message: control
// characters escaped, and cut where it is long.
func Quoted(text string) string { return `"` + show(text, quoteLimit) + `"` }

// Shown is text as in Quoted, without quotes round it where it has some of its
// own.
func Shown(text string) string {
	if strings.Contains(text, `"`) {
		return show(text, quoteLimit)
	}
	return Quoted(text)
}

func clean(text string) string { return show(text, partLimit) }

// show keeps what a reader can see and spells out the rest, so that a hostile
// text can neither move the cursor nor turn the line around.
func show(text string, limit int) string {
	var b strings.Builder
	n := 0
	for i := 0; i < len(text); {
		if n == limit {
			b.WriteString("...")
			break
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&b, `\x%02x`, text[i])
		case unicode.IsControl(r) || unicode.In(r, unicode.Cf, unicode.Zl, unicode.Zp):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
		i += size
		n++
	}
	return b.String()
}
