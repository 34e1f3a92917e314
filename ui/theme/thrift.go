package theme

import (
	"strings"

	"chalkfold/ui/canvas"
)

// manner is how a terminal writes at a moment: the codes of its two colours as
// they were sent, "" for its own.
type manner struct {
	fore, back               string
	bold, underline, reverse bool
}

// Thrift appends a line with as few codes as show the same: of a look that
// follows another only what differs, nothing for ink on blanks, one reset at
// the end. The line begins and ends in the terminal's own manner, so that each
// may be sent without the others. A line with a code that no theme writes is
// appended as it is.
func Thrift(to []byte, line string) []byte {
	begun := len(to)
	var now, want manner
	for rest := line; rest != ""; {
		if rest[0] == '\x1b' {
			end := strings.IndexByte(rest, 'm')
			if end < 2 || rest[1] != '[' || !want.take(rest[2:end]) {
				return append(to[:begun], line...)
			}
			rest = rest[end+1:]
			continue
		}
		end := strings.IndexByte(rest, '\x1b')
		if end < 0 {
			end = len(rest)
		}
		blanks := end - len(strings.TrimLeft(rest[:end], " "))
		if blanks > 0 {
			to = now.turn(to, want.onBlanks(now))
			to = append(to, rest[:blanks]...)
		}
		if blanks < end {
			to = now.turn(to, want)
			to = append(to, rest[blanks:end]...)
		}
		rest = rest[end:]
	}
	return now.turn(to, manner{})
}

// take follows the codes between "\x1b[" and "m". It tells whether all are
// known.
func (m *manner) take(codes string) bool {
	for first := true; first || codes != ""; first = false {
		code := codes
		if n := canvas.CodeLength(codes); n < len(codes) {
			code, codes = codes[:n], codes[n+1:]
		} else {
			codes = ""
		}
		switch {
		case code == "" || code == "0":
			*m = manner{}
		case code == "1":
			m.bold = true
		case code == "4":
			m.underline = true
		case code == "7":
			m.reverse = true
		case strings.HasPrefix(code, "38;"), len(code) == 2 && (code[0] == '3' || code[0] == '9') && code[1] < '8':
			m.fore = code
		case strings.HasPrefix(code, "48;"), len(code) == 2 && code[0] == '4' && code[1] < '8', len(code) == 3 && code[:2] == "10" && code[2] < '8':
			m.back = code
		default:
			return false
		}
	}
	return true
}

// onBlanks is this manner on blanks after another: ink and weight show nothing
// there and stay as they were, unless it is the ink that fills the cell or the
// line beneath it, or all has to go off anyway.
func (m manner) onBlanks(before manner) manner {
	stay := m
	stay.fore, stay.bold = before.fore, before.bold
	if m.reverse || m.underline || before.loses(stay) {
		return m
	}
	return stay
}

// loses tells whether something of this manner is off in another. It goes off
// only with all the rest.
func (m manner) loses(to manner) bool {
	return m.bold && !to.bold || m.underline && !to.underline || m.reverse && !to.reverse ||
		m.fore != "" && to.fore == "" || m.back != "" && to.back == ""
}

// turn appends what turns this manner into another, and turns it.
func (m *manner) turn(to []byte, want manner) []byte {
	was := *m
	if was == want {
		return to
	}
	*m = want
	if want == (manner{}) {
		return append(to, "\x1b[m"...)
	}
	to = append(to, "\x1b["...)
	if was.loses(want) {
		to = append(to, "0;"...)
		was = manner{}
	}
	begun := len(to)
	code := func(c string) {
		if len(to) > begun {
			to = append(to, ';')
		}
		to = append(to, c...)
	}
	if want.bold && !was.bold {
		code("1")
	}
	if want.underline && !was.underline {
		code("4")
	}
	if want.reverse && !was.reverse {
		code("7")
	}
	if want.fore != was.fore {
		code(want.fore)
	}
	if want.back != was.back {
		code(want.back)
	}
	return append(to, 'm')
}
