package text

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// accented are stand-ins that take one cell each and can still be read.
var accented = map[rune]rune{
	'a': 'á', 'e': 'é', 'i': 'í', 'o': 'ó', 'u': 'ú', 'y': 'ý', 'c': 'ç', 'n': 'ñ', 's': 'š', 'z': 'ž', 'r': 'ŕ', 'l': 'ĺ', 'd': 'ď', 't': 'ť',
	'A': 'Á', 'E': 'É', 'I': 'Í', 'O': 'Ó', 'U': 'Ú', 'Y': 'Ý', 'C': 'Ç', 'N': 'Ñ', 'S': 'Š', 'Z': 'Ž', 'R': 'Ŕ', 'L': 'Ĺ', 'D': 'Ď', 'T': 'Ť',
}

// stretched accents a sentence and makes it two fifths longer: vowels are
// doubled, as longer languages have longer words, and what is still missing
// comes as short words at the end. What has been stretched is left alone, and
// so are slots.
func stretched(s string) string {
	var b strings.Builder
	was, is := 0, 0
	plain := false
	for i := 0; i < len(s); {
		if n := slot(s[i:]); n > 0 {
			b.WriteString(s[i : i+n])
			was, is = was+n, is+n
			i += n
			continue
		}
		r, n := utf8.DecodeRuneInString(s[i:])
		was, is = was+1, is+1
		if a, ok := accented[r]; ok {
			plain = true
			b.WriteRune(a)
			if strings.ContainsRune("aeiou", r) {
				b.WriteRune(a)
				is++
			}
		} else {
			b.WriteString(s[i : i+n])
		}
		i += n
	}
	if !plain {
		return s
	}
	const filler = " óóó"
	for want := was + (was*2+4)/5; is < want; is += utf8.RuneCountInString(filler) {
		b.WriteString(filler)
	}
	return b.String()
}

// slot is the length of the {1} that s begins with, 0 if it does not.
func slot(s string) int {
	if s[0] != '{' {
		return 0
	}
	end := strings.IndexByte(s, '}')
	if end < 2 || strings.Trim(s[1:end], "0123456789") != "" {
		return 0
	}
	return end + 1
}

// Leaks are the words on a screen that were never in a pseudo-language: those
// with a plain vowel. Names of keys are always plain; give them as allowed.
func Leaks(screen string, allowed ...string) []string {
	known := map[string]bool{}
	for _, a := range allowed {
		for _, w := range words(a) {
			known[w] = true
		}
	}
	var leaks []string
	for _, w := range words(screen) {
		if strings.ContainsAny(w, "aeiouAEIOU") && !known[w] {
			leaks = append(leaks, w)
		}
	}
	return leaks
}

func words(s string) []string {
	return strings.FieldsFunc(s, func(r rune) bool { return !unicode.IsLetter(r) })
}
