package text

import "strings"

// Comma is a text with its decimals written with a comma: 92,5. What has more
// than one point, a letter before its number or a slash is no decimal but a
// name, and stays. Escape sequences stay too.
func Comma(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	b := []byte(s)
	for at := 0; at < len(b); {
		if b[at] == '\x1b' {
			for at < len(b) && b[at] != 'm' {
				at++
			}
			at++
			continue
		}
		end := at
		for end < len(b) && b[end] > ' ' {
			end++
		}
		if dot := decimal(b[at:end]); dot >= 0 {
			b[at+dot] = ','
		}
		at = max(end, at+1)
	}
	return string(b)
}

// decimal is where the point of a number stands in a word, -1 if it is none.
func decimal(word []byte) int {
	dot := -1
	for i, c := range word {
		switch {
		case c == '/' || c == '\\' || c == '~':
			return -1
		case c != '.' || i+1 == len(word): // a full stop
		case dot >= 0:
			return -1
		default:
			dot = i
		}
	}
	if dot < 1 || !isDigit(word[dot-1]) || !isDigit(word[dot+1]) {
		return -1
	}
	for i := dot - 1; i >= 0; i-- {
		if c := word[i] | 0x20; c >= 'a' && c <= 'z' {
			return -1
		}
	}
	return dot
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }
