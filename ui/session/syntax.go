package session

import (
	"bytes"
	"errors"
	"strings"

	"github.com/BurntSushi/toml"

	"chalkfold/measure"
)

// retries is how often a text is decoded again with a faulty line left out,
// so that the faults of all its lines are said at once. Large texts get fewer.
func retries(size int) int { return min(20, 4*SizeLimit/(size+1)) }

// decode is the text as a tree, with a Refusal for each line that is no TOML.
// The tree is that of the other lines; nil where nothing could be read.
func (s source) decode() (map[string]any, []*measure.Refusal) {
	var faults []*measure.Refusal
	text := bytes.Clone(s.text)
	seen := map[int]bool{}
	for try := retries(len(text)); ; try-- {
		doc := map[string]any{}
		_, err := toml.Decode(string(bytes.TrimPrefix(text, bom)), &doc)
		if err == nil {
			return doc, faults
		}
		at, fault := s.syntax(err)
		start, end := lineStart(text, at), lineEnd(text, at)
		if seen[start] {
			return nil, faults
		}
		seen[start] = true
		faults = append(faults, fault)
		line := bytes.TrimSpace(text[start:end])
		if try <= 0 || bytes.HasPrefix(line, []byte("[")) || !bytes.ContainsRune(line, '=') {
			return nil, faults
		}
		copy(text[start:end], bytes.Repeat([]byte(" "), end-start))
	}
}

// syntax is the decoder's complaint in our words, and its offset.
func (s source) syntax(err error) (int, *measure.Refusal) {
	var p toml.ParseError
	if !errors.As(err, &p) {
		return 0, &measure.Refusal{Where: s.name, Wrong: "this cannot be read as TOML", Works: lineWorks}
	}
	at := p.Position.Start
	if bytes.HasPrefix(s.text, bom) {
		at += len(bom)
	}
	at = max(0, min(at, len(s.text)-1))
	// The decoder may point at the break behind the line that it means.
	for at > 0 && (s.text[at] == '\n' || s.text[at] == '\r') {
		at--
	}
	start := lineStart(s.text, at)
	for at < len(s.text)-1 && (s.text[at] == ' ' || s.text[at] == '\t') && s.text[at+1] != '\n' {
		at++
	}
	line := strings.TrimSpace(string(s.text[start:lineEnd(s.text, at)]))
	fault := &measure.Refusal{Where: s.at(at), Read: measure.Shown(line), Wrong: "this line is not written as TOML", Works: lineWorks}
	for _, c := range complaints {
		if strings.Contains(p.Message, c.part) {
			fault.Wrong, fault.Works = c.wrong, c.works
			break
		}
	}
	return at, fault
}

const lineWorks = `write lines like bust_girth = "36 1/2", and # before a note`

// complaints are the decoder's messages by a part of each, first fit first.
var complaints = []struct{ part, wrong, works string }{
	{"already been defined", "this stands in the file twice", "keep one of them"},
	{"already created", "this stands in the file twice", "keep one of them"},
	{"is not a table", "this is a value already and cannot be a table too", "keep one of them"},
	{"to end with a newline", "something follows the value", `write lengths and words in quotes, like bust_girth = "36 1/2"`},
	{"newline", "the quotes are not closed", `close them on the same line, like name = "Learner Four"`},
	{`expected '"`, "the quotes are not closed", `close them on the same line, like name = "Learner Four"`},
	{`expected "'`, "the quotes are not closed", `close them on the same line, like name = "Learner Four"`},
	{"scape", "a backslash in quotes begins a code", `write \\ for a backslash`},
	{"hexadecimal digits", "a backslash in quotes begins a code", `write \\ for a backslash`},
	{"out of range", "that number is too large to read", "write a number such as 36.5"},
	{"atetime", "there is no such date", "write a date like 2026-03-04"},
	{"leading zeroes", "a number has no zeros in front", "write it like 36.5"},
	{"table name", "the name of a table is not closed", "write it like [body]"},
	{"table array name", "the name of a table is not closed", "write it like [[fitting]]"},
	{"array terminator", "the list is not closed", "write it like [1, 2, 3]"},
	{"inline table", "the table is not closed", `write it like { dart_extra = "1/4" }`},
	{"expected value", "there is no value that can be read", `write lengths and words in quotes, like bust_girth = "36 1/2"`},
	{"'='", "this line is no key with a value", lineWorks},
}
