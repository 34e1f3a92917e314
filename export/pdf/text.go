package pdf

import (
	"fmt"
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// box stands for a letter that the face lacks.
const box = '\u25a1'

// Clean makes any text fit to be set: valid UTF-8, composed, without control
// and format characters. A letter that the face lacks becomes a visible box;
// those letters are returned, each once, in order.
func Clean(text string) (string, []rune) {
	plain := true
	for i := range len(text) {
		if c := text[i]; c < 0x20 || c > 0x7e {
			plain = false
			break
		}
	}
	if plain {
		return text, nil
	}
	face := theFace()
	lacking := map[rune]bool{}
	var b strings.Builder
	for _, r := range norm.NFC.String(strings.ToValidUTF8(text, string(utf8.RuneError))) {
		switch {
		case r == '\t' || r == '\n' || r == '\r' || r == '\u2028' || r == '\u2029':
			b.WriteByte(' ')
		case unicode.Is(unicode.Cc, r) || unicode.Is(unicode.Cf, r) || isSelector(r):
		case face.has(r):
			b.WriteRune(r)
		default:
			lacking[r] = true
			b.WriteRune(box)
		}
	}
	var out []rune
	for r := range lacking {
		out = append(out, r)
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return b.String(), out
}

// isSelector says that the letter only chooses between two looks of the one
// before it.
func isSelector(r rune) bool { return unicode.Is(unicode.Variation_Selector, r) }

// lackSays is the one warning about letters that became boxes.
func lackSays(lacking []rune) string {
	const shown = 5
	names := make([]string, 0, shown)
	for i, r := range lacking {
		if i == shown {
			names = append(names, fmt.Sprintf("and %d more", len(lacking)-shown))
			break
		}
		names = append(names, fmt.Sprintf("U+%04X", r))
	}
	return "a box stands in print for letters that the typeface lacks: " + strings.Join(names, ", ")
}
