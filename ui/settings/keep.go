package settings

import (
	"errors"
	"io/fs"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"

	"chalkfold/ui/files"
)

// Value is one setting and what is to stand for it, as Word, Truth and Number
// write it.
type Value struct{ Name, Literal string }

// Keep writes settings into the file of a folder, in place. A file that cannot
// be read is left as it is, and told.
func Keep(folder string, values ...Value) error {
	path := filepath.Join(folder, File)
	data, stamp, err := files.Read(path, limit)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	text, err := Edit(data, values...)
	if err != nil {
		return &files.Trouble{Path: path, Wrong: "it cannot be read, so nothing was kept in it", Works: "mend it, or take it away", Err: err}
	}
	if err := files.Folder(folder); err != nil {
		return err
	}
	_, err = files.Save(path, text, stamp, files.Options{})
	return err
}

// header begins a file that was not there.
const header = "# How Chalkfold looks. `chalkfold settings` prints all that can stand here.\n"

// Edit is the text of the file with other values; every other line stays.
func Edit(data []byte, values ...Value) ([]byte, error) {
	text := string(data)
	if text == "" {
		text = header
	}
	var meant map[string]any
	if _, err := toml.Decode(strings.TrimPrefix(text, "\ufeff"), &meant); err != nil {
		return nil, err
	}
	if meant == nil {
		meant = map[string]any{}
	}
	nl := "\n"
	if strings.Contains(text, "\r\n") {
		nl = "\r\n"
	}
	lines := strings.SplitAfter(text, "\n")
	for _, v := range values {
		lines = edited(lines, v, nl)
		var one map[string]any
		if _, err := toml.Decode("v = "+v.Literal, &one); err != nil {
			return nil, err
		}
		meant[v.Name] = one["v"]
	}
	out := strings.Join(lines, "")
	var got map[string]any
	if _, err := toml.Decode(strings.TrimPrefix(out, "\ufeff"), &got); err != nil {
		return nil, err
	}
	if !reflect.DeepEqual(got, meant) {
		return nil, errors.New("it would not say what is meant")
	}
	return []byte(out), nil
}

// value is a setting's line: what comes before the value, the value, and what
// comes behind it.
var value = regexp.MustCompile(`^(\x{FEFF}?\s*"?)([a-z_]+)("?\s*=\s*)("(?:[^"\\]|\\.)*"|'[^']*'|[^#\s]+)(.*(?s:.*))$`)

// edited are the lines with one value put in its place: where it stands
// already, else before the first table.
func edited(lines []string, v Value, nl string) []string {
	first := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(strings.TrimSpace(l), "[") })
	if first < 0 {
		first = len(lines)
	}
	for i, l := range lines[:first] {
		if m := value.FindStringSubmatch(l); m != nil && m[2] == v.Name {
			lines[i] = m[1] + m[2] + m[3] + v.Literal + m[5]
			return lines
		}
	}
	at := first
	for at > 0 && strings.TrimSpace(lines[at-1]) == "" {
		at-- // behind what stands there, before the blank line of the table
	}
	if at > 0 && !strings.HasSuffix(lines[at-1], "\n") {
		lines[at-1] += nl
	}
	return slices.Insert(lines, at, v.Name+" = "+v.Literal+nl)
}
