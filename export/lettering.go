package export

import (
	"strings"
	"unicode"
)

// Lettering is measured without a font: a writer may have any face, so the
// widths are those of a wide common sans-serif, in parts of the size. From
// memory of such faces, rounded up.
const (
	ascent  = 0.80
	descent = 0.22
	leading = 1.32
)

// TextWidth is the room along the base line that the words take, in the
// measure of the size.
func TextWidth(text string, size float64) float64 {
	sum := 0.0
	for _, r := range text {
		sum += letterWidth(r)
	}
	return float64(sum * size)
}

func letterWidth(r rune) float64 {
	switch {
	case r < 128:
		return asciiWidths[r&127]
	case unicode.Is(unicode.Mn, r):
		return 0
	case r >= 0x1100 && unicode.In(r, unicode.Han, unicode.Hangul, unicode.Hiragana, unicode.Katakana), r > 0xffff:
		return 1.05
	case unicode.IsUpper(r):
		return 0.76
	}
	return 0.64
}

var asciiWidths = func() (table [128]float64) {
	for r := range table {
		switch {
		case strings.ContainsRune("iIjl.,:;'|! ()[]/ftr-", rune(r)):
			table[r] = 0.40
		case strings.ContainsRune("mwMW%@", rune(r)):
			table[r] = 0.98
		case r >= 'A' && r <= 'Z':
			table[r] = 0.76
		default:
			table[r] = 0.64
		}
	}
	return table
}()

// together stands between words that stay on one line.
const together = "\u00a0"

func apart(text string) string { return strings.ReplaceAll(text, together, " ") }

// Unbroken parts a text into what stays on one line each: words, and mixed
// numbers such as "1 1/2" with their blank.
func Unbroken(text string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return unicode.IsSpace(r) && string(r) != together }) {
		w = apart(w)
		if n := len(out); n > 0 && isDigit(w[0]) && strings.Contains(w, "/") && isDigit(out[n-1][len(out[n-1])-1]) {
			out[n-1] += " " + w
			continue
		}
		out = append(out, w)
	}
	return out
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// wrap breaks the words into lines no wider than width. A word wider than
// that stands alone on its line and runs over.
func wrap(text string, size, width float64) []string {
	var out []string
	line := ""
	for _, word := range Unbroken(text) {
		switch {
		case line == "":
			line = word
		case TextWidth(line+" "+word, size) <= width:
			line += " " + word
		default:
			out = append(out, line)
			line = word
		}
	}
	if line != "" {
		out = append(out, line)
	}
	return out
}
