package dxf

import (
	"fmt"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"chalkfold/export"
)

const (
	// textLong is what old readers take of one value, in bytes.
	textLong = 250
	// nameLong is the longest name of a block in release 12. From memory.
	nameLong = 31
)

// ascii is text for a TEXT entity. Other letters are written as \U+nnnn, those
// beyond the first plane as a question mark; what a reader would take for a
// code of its own is written the same way. Control characters become blanks.
func ascii(text string) string {
	var b strings.Builder
	for _, r := range norm.NFC.String(text) {
		var w string
		switch {
		case unicode.IsControl(r) || unicode.Is(unicode.Zl, r) || unicode.Is(unicode.Zp, r):
			w = " "
		case r > 0xffff:
			w = "?"
		case r > 126 || r == '\\' || r == '%' || r == '^':
			w = fmt.Sprintf(`\U+%04X`, r)
		default:
			w = string(r)
		}
		if b.Len()+len(w) > textLong {
			break
		}
		b.WriteString(w)
	}
	return strings.TrimSpace(b.String())
}

// plain are letters that do not come apart into a Latin letter and a mark.
var plain = map[rune]string{
	'ß': "SS", 'æ': "AE", 'Æ': "AE", 'œ': "OE", 'Œ': "OE", 'ø': "O", 'Ø': "O",
	'đ': "D", 'Đ': "D", 'ð': "D", 'Ð': "D", 'ł': "L", 'Ł': "L", 'þ': "TH", 'Þ': "TH", 'ı': "I",
}

// name is text as a name: A-Z, 0-9, $, _ and -, the nearest Latin letter for
// others, else a low line.
func name(text string) string {
	var b strings.Builder
	for _, r := range norm.NFD.String(text) {
		switch p, ok := plain[r]; {
		case ok:
			b.WriteString(p)
		case unicode.Is(unicode.Mn, r):
		case r >= 'a' && r <= 'z':
			b.WriteRune(r - 'a' + 'A')
		case r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '$', r == '_', r == '-':
			b.WriteRune(r)
		default:
			b.WriteByte('_')
		}
	}
	return b.String()
}

// blockNames are the names of the pieces' blocks, all different.
func blockNames(d export.Drawing) []string {
	out := make([]string, len(d.Pieces))
	seen := map[string]bool{}
	for i, p := range d.Pieces {
		base := name(string(p.Piece.ID))
		end := "_" + size
		for n := 2; ; n++ {
			out[i] = base[:min(len(base), nameLong-len(end))] + end
			if !seen[out[i]] {
				break
			}
			end = fmt.Sprintf("-%d_%s", n, size)
		}
		seen[out[i]] = true
	}
	return out
}
