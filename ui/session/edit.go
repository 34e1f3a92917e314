package session

import (
	"bytes"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"chalkfold/measure"
)

// edit is one change of bytes: what stands from..to is dropped and text put
// there. Where path is given the text comes between before and after and is
// what that path means in the end.
type edit struct {
	from, to      int
	before, after string
	path          []string
	literal       string
}

// block is a table that the file has not yet: its header and its lines.
type block struct {
	header string
	lines  []string
}

// editor collects changes to a text together with the tree that it is meant
// to be afterwards.
type editor struct {
	*layout
	nl     string
	meant  map[string]any
	edits  []edit
	blocks []*block
	fresh  map[string]*block // new tables by path; nil: written inline
	whole  map[int]bool      // entries that are written anew as a whole
}

func newEditor(l *layout, doc map[string]any) *editor {
	nl := "\n"
	if i := bytes.IndexByte(l.text, '\n'); i > 0 && l.text[i-1] == '\r' {
		nl = "\r\n"
	}
	return &editor{layout: l, nl: nl, meant: copied(doc).(map[string]any), fresh: map[string]*block{}, whole: map[int]bool{}}
}

// copied is a tree that shares no table and no list with the first.
func copied(v any) any {
	switch v := v.(type) {
	case map[string]any:
		m := make(map[string]any, len(v))
		for k, w := range v {
			m[k] = copied(w)
		}
		return m
	case []map[string]any:
		out := make([]map[string]any, len(v))
		for i, w := range v {
			out[i] = copied(w).(map[string]any)
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, w := range v {
			out[i] = copied(w)
		}
		return out
	}
	return v
}

// understood is a literal as the decoder reads it.
func understood(literal string) any {
	var v map[string]any
	if _, err := toml.Decode("v = "+literal, &v); err != nil {
		return literal // no literal of ours: the check at the end will tell
	}
	return v["v"]
}

// set gives the value at a path, in place where it stands already.
func (e *editor) set(path []string, literal string) {
	parent, key := path[:len(path)-1], path[len(path)-1]
	e.assign(path, understood(literal))
	if k, ok := e.byPath[joined(path)]; ok {
		if !e.inWhole(e.entries[k]) {
			e.edits = append(e.edits, edit{from: e.entries[k].value, to: e.entries[k].end, literal: literal})
		}
		return
	}
	line := plainKey(key) + " = " + literal
	if b, ok := e.fresh[joined(parent)]; ok {
		if b != nil {
			b.lines = append(b.lines, line)
		}
		return
	}
	if k, ok := e.tables[joined(parent)]; ok {
		e.insert(e.sections[k].last, line)
		return
	}
	if k, ok := e.around(parent); ok {
		e.rewrite(k)
		return
	}
	if at, prefix, ok := e.dotted(parent); ok {
		e.insert(at, prefix+line)
		return
	}
	if n := len(parent); n > 1 && e.isElement(parent[:n-1]) {
		// A table of a list element stands in its line: [[earlier]] body = {}
		k := e.tables[joined(parent[:n-1])]
		e.fresh[joined(parent)] = nil
		at := e.sections[k].last
		e.edits = append(e.edits, edit{from: at, to: at, before: plainKey(parent[n-1]) + " = ", after: e.nl, path: parent})
		return
	}
	b := &block{header: "[" + dottedName(parent) + "]", lines: []string{line}}
	e.fresh[joined(parent)] = b
	e.blocks = append(e.blocks, b)
}

// insert puts a line at an offset that begins one.
func (e *editor) insert(at int, line string) {
	e.edits = append(e.edits, edit{from: at, to: at, literal: line + e.nl})
}

// remove takes a value away. A comment behind it stays.
func (e *editor) remove(path []string) {
	k, ok := e.byPath[joined(path)]
	e.unassign(path)
	if !ok {
		return
	}
	at := e.entries[k]
	if at.inside {
		if up, ok := e.around(path[:len(path)-1]); ok {
			e.rewrite(up)
		}
		return
	}
	rest := e.blank(at.end, false)
	if rest < len(e.text) && e.text[rest] == '#' {
		e.edits = append(e.edits, edit{from: at.from, to: rest})
		return
	}
	e.edits = append(e.edits, edit{from: lineStart(e.text, at.from), to: at.line})
}

// around is the outermost inline table or list that holds a path.
func (e *editor) around(path []string) (int, bool) {
	for n := 1; n <= len(path); n++ {
		if k, ok := e.byPath[joined(path[:n])]; ok {
			return k, true
		}
	}
	return 0, false
}

// rewrite writes an inline value anew as a whole. No comment can stand in
// one by TOML v1.0, so nothing is lost.
func (e *editor) rewrite(k int) {
	if e.whole[k] {
		return
	}
	e.whole[k] = true
	at := e.entries[k]
	e.edits = slices.DeleteFunc(e.edits, func(x edit) bool { return x.from >= at.value && x.to <= at.end && x.from < at.end })
	e.edits = append(e.edits, edit{from: at.value, to: at.end, path: at.path})
}

func (e *editor) inWhole(x entry) bool {
	for k := range e.whole {
		if w := e.entries[k]; x.from >= w.value && x.end <= w.end {
			return true
		}
	}
	return false
}

// dotted finds how a table that has no header is spelt: `body.waist_girth`.
func (e *editor) dotted(table []string) (at int, prefix string, ok bool) {
	for k := len(e.entries) - 1; k >= 0; k-- {
		x := e.entries[k]
		own := len(x.path) - len(table) // parts of the key below the table
		if x.inside || own < 1 || own >= len(x.written) || !slices.Equal(x.path[:len(table)], table) {
			continue
		}
		return x.line, dottedName(x.written[:len(x.written)-own]) + ".", true
	}
	return 0, "", false
}

// isElement says whether a path is an element of a [[list]].
func (e *editor) isElement(path []string) bool {
	if len(path) < 2 {
		return false
	}
	_, ok := e.tables[joined(path)]
	return ok && e.counts[joined(path[:len(path)-1])] > 0
}

// dropTable takes a table with all that is its own away.
func (e *editor) dropTable(path []string) {
	e.unassign(path)
	if k, ok := e.around(path); ok {
		e.rewrite(k)
		return
	}
	for k, s := range e.sections {
		if k > 0 && len(s.path) >= len(path) && slices.Equal(s.path[:len(path)], path) {
			e.edits = append(e.edits, edit{from: s.from, to: s.last})
		}
	}
	for _, x := range e.entries { // its keys that are spelt with dots elsewhere
		if !x.inside && len(x.path) > len(path) && slices.Equal(x.path[:len(path)], path) && len(e.sections[x.section].path) < len(path) {
			e.edits = append(e.edits, edit{from: lineStart(e.text, x.from), to: x.line})
		}
	}
}

// dropElement takes the i-th element of a list of tables away.
func (e *editor) dropElement(list string, i int) {
	if k, ok := e.byPath[list]; ok {
		e.meant[list] = without(e.meant[list], i)
		e.rewrite(k)
		return
	}
	e.dropTable([]string{list, strconv.Itoa(i)})
	e.meant[list] = without(e.meant[list], i)
	if n, _ := listLength(e.meant[list]); n == 0 {
		delete(e.meant, list)
	}
}

// addElement puts a table into a list before its i-th element as the file
// has it, or at the end.
func (e *editor) addElement(list string, i, meantAt int, keys, literals []string) {
	table := map[string]any{}
	b := &block{header: "[[" + plainKey(list) + "]]"}
	for n, k := range keys {
		table[k] = understood(literals[n])
		b.lines = append(b.lines, plainKey(k)+" = "+literals[n])
	}
	e.meant[list] = with(e.meant[list], meantAt, table)
	if k, ok := e.byPath[list]; ok {
		e.rewrite(k)
		return
	}
	if k, ok := e.tables[joined([]string{list, strconv.Itoa(i)})]; ok {
		at := e.sections[k].from
		e.edits = append(e.edits, edit{from: at, to: at, literal: b.text(e.nl) + e.nl})
		return
	}
	e.blocks = append(e.blocks, b)
}

func (b *block) text(nl string) string {
	return b.header + nl + strings.Join(b.lines, nl) + nl
}

// assign and unassign change the tree that is meant.
func (e *editor) assign(path []string, v any) {
	var t any = e.meant
	for _, p := range path[:len(path)-1] {
		next, ok := lookup(t, []string{p})
		if !ok {
			m, isTable := t.(map[string]any)
			if !isTable {
				return
			}
			next = map[string]any{}
			m[p] = next
		}
		t = next
	}
	if m, ok := t.(map[string]any); ok {
		m[path[len(path)-1]] = v
	}
}

func (e *editor) unassign(path []string) {
	t, ok := lookup(e.meant, path[:len(path)-1])
	if m, isTable := t.(map[string]any); ok && isTable {
		delete(m, path[len(path)-1])
	}
}

func without(list any, i int) any {
	if l, ok := list.([]map[string]any); ok {
		return slices.Delete(slices.Clone(l), i, i+1)
	}
	return slices.Delete(slices.Clone(list.([]any)), i, i+1)
}

func with(list any, i int, t map[string]any) any {
	switch l := list.(type) {
	case []map[string]any:
		return slices.Insert(slices.Clone(l), min(i, len(l)), t)
	case []any:
		return slices.Insert(slices.Clone(l), min(i, len(l)), any(t))
	}
	return []map[string]any{t}
}

// bytes is the text with all changes made. It is decoded once more and
// compared with what was meant.
func (e *editor) bytes() ([]byte, error) {
	if len(e.edits) == 0 && len(e.blocks) == 0 {
		return e.text, nil
	}
	slices.SortStableFunc(e.edits, func(a, b edit) int { return a.from - b.from })
	var out bytes.Buffer
	at := 0
	for _, x := range e.edits {
		if x.to < at {
			continue // inside what an earlier change took away
		}
		from := max(x.from, at)
		out.Write(e.text[at:from])
		if x.from == x.to && from == len(e.text) && out.Len() > 0 && out.Bytes()[out.Len()-1] != '\n' {
			out.WriteString(e.nl) // the last line had no break
		}
		out.WriteString(x.before)
		if x.path != nil {
			v, _ := lookup(e.meant, x.path)
			out.WriteString(e.inline(v, x.path))
		}
		out.WriteString(x.literal + x.after)
		at = x.to
	}
	out.Write(e.text[at:])
	for _, b := range e.blocks {
		if n := out.Len(); n > 0 && out.Bytes()[n-1] != '\n' {
			out.WriteString(e.nl)
		}
		if !bytes.HasSuffix(out.Bytes(), []byte(e.nl+e.nl)) && out.Len() > 0 {
			out.WriteString(e.nl)
		}
		out.WriteString(b.text(e.nl))
	}
	return out.Bytes(), e.proof(out.Bytes())
}

// proof reads what would be written.
func (e *editor) proof(text []byte) error {
	got := map[string]any{}
	if _, err := toml.Decode(string(bytes.TrimPrefix(text, bom)), &got); err != nil {
		return &measure.Refusal{
			Read: "the changed session", Wrong: "it would not be TOML any more (" + err.Error() + ")",
			Works: "save under another name; the file stays as it is",
		}
	}
	for _, key := range slices.Sorted(maps.Keys(e.meant)) {
		if !equal(e.meant[key], got[key]) && !(isEmpty(e.meant[key]) && got[key] == nil) {
			return &measure.Refusal{
				Read: "the changed session", Wrong: fmt.Sprintf("%q would not say what is meant", key),
				Works: "save under another name; the file stays as it is",
			}
		}
	}
	return nil
}

// isEmpty says whether a value holds nothing at all.
func isEmpty(v any) bool {
	if t, ok := v.(map[string]any); ok {
		for _, w := range t {
			if !isEmpty(w) {
				return false
			}
		}
		return true
	}
	n, ok := listLength(v)
	return ok && n == 0
}
