package session

import (
	"bytes"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"chalkfold/measure"
)

// Limits of a file. A session of many years has a few ten thousand bytes.
const (
	SizeLimit = 1 << 20
	deepest   = 64 // lists and tables in each other, parts of a dotted key
)

var bom = []byte("\xef\xbb\xbf")

// source is the text of a file with the name that faults are told by.
type source struct {
	name string
	text []byte
}

// at is the place of an offset: file, line and column, both counted from 1,
// the column in characters.
func (s source) at(offset int) string {
	offset = max(0, min(offset, len(s.text)))
	before := s.text[:offset]
	line := bytes.Count(before, []byte("\n")) + 1
	start := bytes.LastIndexByte(before, '\n') + 1
	column := utf8.RuneCount(bytes.TrimPrefix(before[start:], bom)) + 1
	return fmt.Sprintf("%s:%d:%d", s.name, line, column)
}

// guard refuses what the decoder must not see: bytes that are no text, and
// nesting that would take it long or its stack away.
func (s source) guard() *measure.Refusal {
	if len(s.text) > SizeLimit {
		return &measure.Refusal{
			Where: s.name, Read: "more than 1 MiB", Wrong: "a session file is much smaller",
			Works: "look whether it is the right file",
		}
	}
	if len(bytes.TrimSpace(bytes.TrimPrefix(s.text, bom))) == 0 {
		return &measure.Refusal{
			Where: s.name, Read: "an empty file", Wrong: "there is no session in it",
			Works: "chalkfold new writes one to fill in",
		}
	}
	if i := bytes.IndexByte(s.text, 0); i >= 0 {
		return &measure.Refusal{
			Where: s.at(i), Read: "a NUL byte", Wrong: "a session file is plain text",
			Works: "look whether it is the right file",
		}
	}
	for i := 0; i < len(s.text); {
		r, n := utf8.DecodeRune(s.text[i:])
		if r == utf8.RuneError && n == 1 {
			return &measure.Refusal{
				Where: s.at(i), Read: fmt.Sprintf("the byte 0x%02x", s.text[i]),
				Wrong: "a session file is text in UTF-8", Works: "save it as UTF-8 in the editor",
			}
		}
		if unicode.IsControl(r) && r != '\n' && r != '\t' && !(r == '\r' && bytes.HasPrefix(s.text[i:], []byte("\r\n"))) {
			return &measure.Refusal{
				Where: s.at(i), Read: fmt.Sprintf("the control character U+%04X", r),
				Wrong: "a session file holds none", Works: "take it out",
			}
		}
		i += n
	}
	return s.nesting()
}

// nesting walks over strings and comments and counts brackets and the parts
// of dotted keys.
func (s source) nesting() *measure.Refusal {
	depth, dots := 0, 0
	for i := 0; i < len(s.text); i++ {
		switch c := s.text[i]; c {
		case '#':
			i = lineEnd(s.text, i) - 1
		case '"', '\'':
			i = stringEnd(s.text, i) - 1
		case '[', '{':
			depth++
		case ']', '}':
			depth = max(0, depth-1)
		case '\n', '=', ',':
			dots = 0
		case '.':
			dots++
		}
		if depth > deepest || dots > deepest {
			return &measure.Refusal{
				Where: s.at(i), Read: fmt.Sprintf("more than %d lists or tables in each other", deepest),
				Wrong: "no session needs as many", Works: "take them out",
			}
		}
	}
	return nil
}

// stringEnd is the offset behind the string that begins at i; where it never
// ends, that of the end of its line or of the text.
func stringEnd(text []byte, i int) int {
	q := text[i]
	if long := bytes.Repeat([]byte{q}, 3); bytes.HasPrefix(text[i:], long) {
		for j := i + 3; j < len(text); j++ {
			if text[j] == '\\' && q == '"' {
				j++
			} else if bytes.HasPrefix(text[j:], long) {
				// Up to two quotes may stand before the closing three.
				for j+3 < len(text) && text[j+3] == q {
					j++
				}
				return j + 3
			}
		}
		return len(text)
	}
	for j := i + 1; j < len(text) && text[j] != '\n'; j++ {
		if text[j] == '\\' && q == '"' {
			j++
		} else if text[j] == q {
			return j + 1
		}
	}
	return lineEnd(text, i)
}

// lineEnd is the offset of the line break that ends the line of i, or of the
// end of the text.
func lineEnd(text []byte, i int) int {
	if j := bytes.IndexByte(text[i:], '\n'); j >= 0 {
		return i + j
	}
	return len(text)
}

// oneLine says why a text cannot stand as a name on one line, or "".
func oneLine(text string) string {
	for _, r := range text {
		switch {
		case unicode.IsControl(r):
			return "it holds a control character"
		case r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069:
			return "it holds a character that turns the text round"
		}
	}
	if strings.ToValidUTF8(text, "") != text {
		return "it is not UTF-8"
	}
	return ""
}
