package session

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"

	"chalkfold/pattern"
)

// quoted is text as TOML writes it, on one line.
func quoted(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteString(`\` + string(r))
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(`\t`)
		case unicode.IsControl(r):
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	b.WriteByte('"')
	return b.String()
}

// plainKey is a key as TOML writes it, in quotes only where it must be.
func plainKey(key string) string {
	for i := range len(key) {
		if !bareKey(key[i]) {
			return quoted(key)
		}
	}
	if key == "" {
		return `""`
	}
	return key
}

func dottedName(path []string) string {
	parts := make([]string, len(path))
	for i, p := range path {
		parts[i] = plainKey(p)
	}
	return strings.Join(parts, ".")
}

func dateLiteral(d pattern.Date) string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

func numberLiteral(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// inline is any decoded value on one line, keys in the order they stand in
// the file, new ones last by the alphabet.
func (e *editor) inline(v any, path []string) string {
	switch v := v.(type) {
	case map[string]any:
		keys := make([]string, 0, len(v))
		for k := range v {
			keys = append(keys, k)
		}
		place := func(k string) int {
			if i, ok := e.byPath[joined(append(slices.Clone(path), k))]; ok {
				return i
			}
			return len(e.entries)
		}
		slices.SortFunc(keys, func(a, b string) int {
			if d := place(a) - place(b); d != 0 {
				return d
			}
			return strings.Compare(a, b)
		})
		parts := make([]string, len(keys))
		for i, k := range keys {
			parts[i] = plainKey(k) + " = " + e.inline(v[k], append(slices.Clone(path), k))
		}
		if len(parts) == 0 {
			return "{}"
		}
		return "{ " + strings.Join(parts, ", ") + " }"
	case []map[string]any, []any:
		n, _ := listLength(v)
		parts := make([]string, n)
		for i := range n {
			parts[i] = e.inline(element(v, i), append(slices.Clone(path), strconv.Itoa(i)))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case string:
		return quoted(v)
	case bool:
		return strconv.FormatBool(v)
	case int64:
		return strconv.FormatInt(v, 10)
	case float64:
		return floatLiteral(v)
	case time.Time:
		return timeLiteral(v)
	}
	return fmt.Sprint(v)
}

// floatLiteral keeps a float a float.
func floatLiteral(v float64) string {
	switch {
	case math.IsNaN(v):
		return "nan"
	case math.IsInf(v, 0):
		return strings.ToLower(strings.TrimPrefix(fmt.Sprintf("%+f", v), "+"))
	}
	text := strconv.FormatFloat(v, 'g', -1, 64)
	if !strings.ContainsAny(text, ".e") {
		text += ".0"
	}
	return text
}

// timeLiteral writes the kind of time that the decoder marked by its zone.
func timeLiteral(t time.Time) string {
	switch t.Location().String() {
	case "date-local":
		return t.Format(time.DateOnly)
	case "time-local":
		return t.Format("15:04:05.999999999")
	case "datetime-local":
		return t.Format("2006-01-02T15:04:05.999999999")
	}
	return t.Format(time.RFC3339Nano)
}
