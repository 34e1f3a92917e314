package text

import "strings"

// signs are the characters of ours beyond ASCII and what stands for them.
var signs = map[rune]string{
	'½': "1/2", '¼': "1/4", '¾': "3/4", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8", '⁄': "/",
	'→': "->", '←': "<-", '↑': "^", '↓': "v", '✓': "ok", '✗': "x", '•': "*", '·': ".", '…': "...",
	'–': "-", '—': "-", '−': "-", '×': "x", '°': " degrees", '′': "'", '″': "\"",
	'‘': "'", '’': "'", '“': "\"", '”': "\"", '\u00a0': " ", '\u202f': " ",
	'│': "|", '─': "-", '┌': "+", '┐': "+", '└': "+", '┘': "+", '├': "+", '┤': "+", '┼': "+",
}

// Plain writes our signs in ASCII, for the ASCII set of glyphs. Letters of
// names stay: a terminal may well have letters and no signs. A whole number
// keeps its distance from its fraction: 9½ becomes 9 1/2.
func Plain(s string) string {
	if !strings.ContainsFunc(s, func(r rune) bool { return r >= 0x80 }) {
		return s
	}
	var b strings.Builder
	digit := false
	for _, r := range s {
		sign, ok := signs[r]
		switch {
		case !ok:
			b.WriteRune(r)
		case digit && strings.HasSuffix(sign, "/2"), digit && strings.HasSuffix(sign, "/4"), digit && strings.HasSuffix(sign, "/8"):
			b.WriteString(" " + sign)
		default:
			b.WriteString(sign)
		}
		digit = r >= '0' && r <= '9'
	}
	return b.String()
}
