package settings

import (
	"bytes"
	"errors"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"chalkfold/measure"
	"chalkfold/ui/files"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
)

// Settings is what the file says. The zero value is a file that says nothing.
type Settings struct {
	Theme, Glyphs, Colour string // empty: auto
	Unit                  *measure.Unit
	Comma, Mouse          bool
	Still, Plain          bool
	Aspect                float64              // 0: the usual
	Keys                  map[keys.ID][]string // the actions that have other keys
}

// limit is more than any file of settings is long.
const limit = 1 << 18

// Read reads the file of a folder. What is wrong with it is told, a sentence
// each, and the usual is taken instead; a folder without the file says nothing.
func Read(folder string) (Settings, []string) {
	if folder == "" {
		return Settings{}, nil
	}
	path := filepath.Join(folder, File)
	data, _, err := files.Read(path, limit)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Settings{}, nil
	case err != nil:
		return Settings{}, []string{err.Error() + usual}
	}
	s, told := Parse(data)
	for i := range told {
		told[i] = files.Shown(path) + ":" + told[i]
	}
	return s, told
}

const usual = "; the usual is taken instead"

// Parse reads the text of the file. Each sentence begins with the line.
func Parse(data []byte) (Settings, []string) {
	var s Settings
	var doc map[string]any
	if _, err := toml.Decode(string(bytes.TrimPrefix(data, []byte("\ufeff"))), &doc); err != nil {
		line, why := 1, err.Error()
		var at toml.ParseError
		if errors.As(err, &at) {
			line, why = at.Position.Line, at.Message
		}
		return s, []string{tell(line, "the file", "it is no TOML ("+why+")"+usual, "mend that line, or take the file away")}
	}
	var told []string
	for _, name := range inOrder(data, doc) {
		v, line := doc[name], lineOf(data, name)
		i := slices.IndexFunc(table, func(r row) bool { return r.name == name })
		switch {
		case name == Keys:
			told = append(told, s.keys(data, v)...)
		case i < 0:
			told = append(told, tell(line, name, "there is no such setting", suggestion(name)))
		case !table[i].read(&s, v):
			told = append(told, tell(line, name+" = "+literal(v), "that is no answer to it"+usual, "write "+table[i].works))
		}
	}
	return s, told
}

// keys reads the table of keys: a key, or a list of them, for an action.
func (s *Settings) keys(data []byte, v any) []string {
	t, ok := v.(map[string]any)
	if !ok {
		return []string{tell(lineOf(data, Keys), Keys, "it is no table", `write [keys] and a line such as why = "i"`)}
	}
	s.Keys = map[keys.ID][]string{}
	var told []string
	for _, id := range inOrder(data, t) {
		if all := listed(t[id]); len(all) > 0 {
			s.Keys[keys.ID(id)] = all
			continue
		}
		told = append(told, tell(lineOf(data, id), id+" = "+literal(t[id]), "that is no key", `write a key in quotes, or several: ["i", "f4"]`))
	}
	return told
}

// listed are the keys of one action; none where something else stands there.
func listed(v any) []string {
	switch v := v.(type) {
	case string:
		return []string{v}
	case []any:
		all := make([]string, 0, len(v))
		for _, k := range v {
			text, ok := k.(string)
			if !ok {
				return nil
			}
			all = append(all, text)
		}
		return all
	}
	return nil
}

// On is the key table with her keys in it. Where two actions would want one
// key, or a key cannot be typed everywhere, nothing is changed and it is told.
func (s Settings) On(t keys.Set) (keys.Set, []string) {
	if len(s.Keys) == 0 {
		return t, nil
	}
	changed, err := t.Changed(s.Keys)
	if err != nil {
		return t, []string{strings.ReplaceAll(err.Error(), "\n", ". ") + ". The usual keys are kept."}
	}
	return changed, nil
}

func tell(line int, read, wrong, works string) string {
	return (&measure.Refusal{Where: strconv.Itoa(line), Read: read, Wrong: wrong, Works: works}).Error()
}

func suggestion(name string) string {
	if near := session.Nearest(name, Names()); near != "" {
		return "write " + near
	}
	return "the settings are " + strings.Join(Names(), ", ")
}

func literal(v any) string {
	switch v := v.(type) {
	case string:
		return measure.Quoted(v)
	case bool:
		return strconv.FormatBool(v)
	case int64:
		return strconv.FormatInt(v, 10)
	case float64:
		return strconv.FormatFloat(v, 'g', -1, 64)
	}
	return "..."
}

// lineOf is the line on which a name stands first.
func lineOf(data []byte, name string) int {
	for i, l := range strings.Split(string(data), "\n") {
		l = strings.TrimLeft(strings.TrimSpace(l), `["'`)
		if rest, ok := strings.CutPrefix(l, name); ok && (rest == "" || strings.ContainsRune(" \t=]\"'.", rune(rest[0]))) {
			return i + 1
		}
	}
	return 1
}

// inOrder are the names of a table as they stand in the file.
func inOrder(data []byte, t map[string]any) []string {
	names := make([]string, 0, len(t))
	for name := range t {
		names = append(names, name)
	}
	slices.SortFunc(names, func(a, b string) int {
		if d := lineOf(data, a) - lineOf(data, b); d != 0 {
			return d
		}
		return strings.Compare(a, b)
	})
	return names
}
