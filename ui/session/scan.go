package session

import (
	"bytes"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"
)

// entry is one `key = value`, or one element of a list, and where it stands.
type entry struct {
	path    []string // from the root; elements of lists by their number
	written []string // the key as it stands there, relative to its section
	section int      // the section it stands in
	from    int      // first byte of the key; of an element, of the value
	value   int      // first byte of the value
	end     int      // behind the value
	line    int      // behind the line break of its last line
	inside  bool     // in an inline table or list
}

// section is one [table] or [[table]], or the root before the first.
type section struct {
	path  []string
	from  int // first byte of the header line
	last  int // behind the last own line: the header's or a key's
	until int // first byte of the next section
}

// layout is where everything stands in a text that the decoder has accepted.
type layout struct {
	text     []byte
	entries  []entry
	sections []section
	byPath   map[string]int // of entries
	tables   map[string]int // of sections
	counts   map[string]int // elements of [[tables]]
}

func joined(path []string) string { return strings.Join(path, "\x00") }

// scan reads the layout. The text must be TOML: what is not makes it stop
// early, never fail.
func scan(text []byte) *layout {
	l := &layout{text: text, byPath: map[string]int{}, tables: map[string]int{}, counts: map[string]int{}}
	start := 0
	if bytes.HasPrefix(text, bom) {
		start = len(bom)
	}
	l.sections = []section{{from: start, last: start}}
	l.tables[""] = 0
	for i := start; i < len(text); {
		i = l.blank(i, true)
		if i >= len(text) {
			break
		}
		if text[i] == '[' {
			i = l.header(i)
		} else {
			i = l.pair(i, nil, false)
		}
	}
	l.sections[len(l.sections)-1].until = len(text)
	return l
}

// blank skips blanks, and where lines are no matter, line breaks and comments.
func (l *layout) blank(i int, lines bool) int {
	for i < len(l.text) {
		switch c := l.text[i]; {
		case c == ' ' || c == '\t':
			i++
		case lines && (c == '\n' || c == '\r'):
			i++
		case lines && c == '#':
			i = lineEnd(l.text, i)
		default:
			return i
		}
	}
	return i
}

// lineAfter is the offset behind the line break of the line of i.
func (l *layout) lineAfter(i int) int {
	return min(lineEnd(l.text, min(i, len(l.text)))+1, len(l.text))
}

func (l *layout) header(i int) int {
	from := i
	double := bytes.HasPrefix(l.text[i:], []byte("[["))
	i++
	if double {
		i++
	}
	parts, i := l.key(i)
	path := l.resolve(parts, double)
	end := l.lineAfter(i)
	l.sections[len(l.sections)-1].until = lineStart(l.text, from)
	l.tables[joined(path)] = len(l.sections)
	l.sections = append(l.sections, section{path: path, from: lineStart(l.text, from), last: end})
	return end
}

// resolve puts the number of the last element behind each name of a [[table]].
func (l *layout) resolve(parts []string, double bool) []string {
	var path []string
	for k, p := range parts {
		path = append(path, p)
		name := joined(path)
		if double && k == len(parts)-1 {
			l.counts[name]++
		}
		if n := l.counts[name]; n > 0 {
			path = append(path, strconv.Itoa(n-1))
		}
	}
	return path
}

// key reads a dotted key.
func (l *layout) key(i int) ([]string, int) {
	var parts []string
	for {
		i = l.blank(i, false)
		if i >= len(l.text) {
			return parts, i
		}
		from := i
		if c := l.text[i]; c == '"' || c == '\'' {
			i = stringEnd(l.text, i)
			parts = append(parts, unquoted(string(l.text[from:i])))
		} else {
			for i < len(l.text) && bareKey(l.text[i]) {
				i++
			}
			parts = append(parts, string(l.text[from:i]))
			if i == from {
				return parts, i + 1
			}
		}
		i = l.blank(i, false)
		if i >= len(l.text) || l.text[i] != '.' {
			return parts, i
		}
		i++
	}
}

func bareKey(c byte) bool {
	return c == '-' || c == '_' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
}

// unquoted is a quoted key as the decoder understands it.
func unquoted(raw string) string {
	var v struct{ V string }
	if _, err := toml.Decode("V = "+raw, &v); err != nil {
		return raw
	}
	return v.V
}

// pair reads `key = value`; inside an inline table, below base.
func (l *layout) pair(i int, base []string, inside bool) int {
	at := len(l.sections) - 1
	e := entry{section: at, from: i, inside: inside}
	e.written, i = l.key(i)
	if !inside {
		base = l.sections[at].path
	}
	e.path = append(append([]string(nil), base...), e.written...)
	if i < len(l.text) && l.text[i] == '=' {
		i++
	}
	e.value = l.blank(i, false)
	k := l.add(e)
	end := l.valueAt(e.value, e.path)
	l.entries[k].end = end
	if inside {
		return end
	}
	l.entries[k].line = l.lineAfter(end)
	l.sections[at].last = l.entries[k].line
	return l.entries[k].line
}

func (l *layout) add(e entry) int {
	l.byPath[joined(e.path)] = len(l.entries)
	l.entries = append(l.entries, e)
	return len(l.entries) - 1
}

// valueAt reads the value that begins at i and stands at path; it returns the
// offset behind it.
func (l *layout) valueAt(i int, path []string) int {
	if i >= len(l.text) {
		return i
	}
	switch l.text[i] {
	case '"', '\'':
		return stringEnd(l.text, i)
	case '[':
		return l.inner(i, path, ']')
	case '{':
		return l.inner(i, path, '}')
	}
	end := i
	for end < len(l.text) && !strings.ContainsRune(",]}#\n", rune(l.text[end])) {
		end++
	}
	for end > i && strings.ContainsRune(" \t\r", rune(l.text[end-1])) {
		end--
	}
	return end
}

// inner reads a list or an inline table. Of the elements of lists only tables
// are kept: nothing else in a list is ever looked for.
func (l *layout) inner(i int, path []string, closing byte) int {
	i++
	for n := 0; ; n++ {
		i = l.blank(i, true)
		if i >= len(l.text) {
			return i
		}
		if l.text[i] == closing {
			return i + 1
		}
		before := i
		switch {
		case closing == '}':
			i = l.pair(i, path, true)
		case l.text[i] == '{':
			element := append(append([]string(nil), path...), strconv.Itoa(n))
			k := l.add(entry{path: element, from: i, value: i, inside: true, section: len(l.sections) - 1})
			i = l.valueAt(i, element)
			l.entries[k].end = i
		default: // of a list in a list nothing is kept
			i = l.valueAt(i, nil)
		}
		i = l.blank(i, true)
		if i < len(l.text) && l.text[i] == ',' {
			i++
		} else if i == before {
			return i + 1
		}
	}
}

func lineStart(text []byte, i int) int { return bytes.LastIndexByte(text[:i], '\n') + 1 }

// find is the entry at a path.
func (l *layout) find(path []string) (entry, bool) {
	k, ok := l.byPath[joined(path)]
	if !ok {
		return entry{}, false
	}
	return l.entries[k], true
}

// place is the offset to name for a path: its value, the header of its table,
// or the nearest thing above it.
func (l *layout) place(path []string) int {
	for n := len(path); n > 0; n-- {
		if e, ok := l.find(path[:n]); ok {
			return e.value
		}
		if k, ok := l.tables[joined(path[:n])]; ok {
			return l.sections[k].from
		}
	}
	return 0
}
