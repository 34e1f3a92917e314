package measure

import (
	"strings"
	"unicode"
)

// token is one piece of a typed length.
type token struct {
	kind  tokenKind
	text  string // digits with at most one point, a fraction "1/2", or a unit word
	glued bool   // no blank stands before it
}

type tokenKind int8

const (
	digits   tokenKind = iota
	fraction           // one character such as ½
	slash
	hyphen
	word
)

// glyphs are the fractions that have a character of their own.
var glyphs = map[rune]string{
	'½': "1/2", '⅓': "1/3", '⅔': "2/3", '¼': "1/4", '¾': "3/4", '⅕': "1/5", '⅖': "2/5", '⅗': "3/5", '⅘': "4/5",
	'⅙': "1/6", '⅚': "5/6", '⅐': "1/7", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8", '⅑': "1/9", '⅒': "1/10",
}

// alike gives typographers' characters the meaning of the typed ones.
var alike = map[rune]rune{
	'⁄': '/', '∕': '/', '″': '"', '”': '"', '“': '"', '„': '"', '＂': '"', '′': '\'', '’': '\'', '‘': '\'',
	'−': '-', '‐': '-', '‑': '-', '–': '-', ',': '.', '٫': '.',
}

// scan cuts the text into tokens, or says which character has no business in
// a length.
func scan(text string) ([]token, *Refusal) {
	var tokens []token
	glued := false
	rs := []rune(text)
	for i := 0; i < len(rs); i++ {
		r := rs[i]
		if a, ok := alike[r]; ok {
			r = a
		}
		t := token{text: string(r), glued: glued}
		switch {
		case unicode.IsSpace(r) || r == '\u2060' || r == '\ufeff':
			glued = false
			continue
		case r >= '0' && r <= '9' || r == '.':
			t.kind, t.text = digits, span(rs[i:], func(r rune) bool { return r >= '0' && r <= '9' || r == '.' })
			i += len(t.text) - 1
		case glyphs[r] != "":
			t.kind, t.text = fraction, glyphs[r]
		case r == '/':
			t.kind = slash
		case r == '-':
			t.kind = hyphen
		case r == '\'' && i+1 < len(rs) && (rs[i+1] == rs[i] || alike[rs[i+1]] == '\''):
			t.kind, t.text = word, "''"
			i++
		case r == '"' || r == '\'':
			t.kind = word
		case unicode.IsLetter(r):
			t.kind, t.text = word, span(rs[i:], unicode.IsLetter)
			i += len([]rune(t.text)) - 1
			t.text = strings.ToLower(t.text)
			if i+1 < len(rs) && rs[i+1] == '.' { // "in." is a unit with its full stop
				i++
			}
		default:
			return nil, &Refusal{Wrong: Quoted(string(r)) + " is no part of a length", Works: "write it like 36 1/2 or 92.5 cm"}
		}
		tokens = append(tokens, t)
		glued = true
	}
	return tokens, nil
}

// span is the run of characters at the start of rs that belong together.
func span(rs []rune, belongs func(rune) bool) string {
	var b strings.Builder
	for _, r := range rs {
		if a, ok := alike[r]; ok {
			r = a
		}
		if !belongs(r) {
			break
		}
		b.WriteRune(r)
	}
	return b.String()
}
