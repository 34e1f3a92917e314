package session

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"chalkfold/measure"
)

// asRefusal finds the Refusal in an error.
func asRefusal(err error, into **measure.Refusal) bool { return errors.As(err, into) }

// lengthText is a length of the file as measure reads it: the text, or a
// number written out. What is neither text nor a finite number is none.
func lengthText(v any) (string, bool) {
	switch v := v.(type) {
	case string:
		return v, true
	case int64:
		return strconv.FormatInt(v, 10), true
	case float64:
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return "", false
		}
		return strconv.FormatFloat(v, 'f', -1, 64), true
	}
	return "", false
}

// lookup follows a path through tables and lists of tables.
func lookup(v any, path []string) (any, bool) {
	for _, p := range path {
		switch t := v.(type) {
		case map[string]any:
			next, ok := t[p]
			if !ok {
				return nil, false
			}
			v = next
		case []map[string]any:
			n, err := strconv.Atoi(p)
			if err != nil || n < 0 || n >= len(t) {
				return nil, false
			}
			v = t[n]
		case []any:
			n, err := strconv.Atoi(p)
			if err != nil || n < 0 || n >= len(t) {
				return nil, false
			}
			v = t[n]
		default:
			return nil, false
		}
	}
	return v, true
}

// listLength is the number of elements where v is a list of tables.
func listLength(v any) (int, bool) {
	switch v := v.(type) {
	case []map[string]any:
		return len(v), true
	case []any:
		return len(v), true
	}
	return 0, false
}

// Limits of words: a label has to hold a name.
const (
	longestName  = 200
	longestNotes = 100_000
)

// name1 reads words of one line.
func (r *reader) name1(t map[string]any, path ...string) string {
	text := r.notes(t, path...)
	if utf8.RuneCountInString(text) > longestName {
		r.refuse(path, fmt.Sprintf("that is longer than %d letters", longestName), "shorten it; there is room in notes")
		return ""
	}
	if wrong := oneLine(text); wrong != "" {
		r.refuse(path, wrong, "write letters only, on one line")
		return ""
	}
	return text
}

// notes reads words of any number of lines.
func (r *reader) notes(t map[string]any, path ...string) string {
	v, ok := t[path[len(path)-1]]
	if !ok {
		return ""
	}
	text, ok := v.(string)
	if !ok {
		r.refuse(path, "this is text in quotes", `write it like "Learner Four"`)
		return ""
	}
	if len(text) > longestNotes {
		r.refuse(path, fmt.Sprintf("that is longer than %d letters", longestNotes), "shorten it")
		return ""
	}
	for _, line := range strings.FieldsFunc(text, func(r rune) bool { return r == '\n' || r == '\t' }) {
		if wrong := oneLine(line); wrong != "" {
			r.refuse(path, wrong, "write letters only")
			return ""
		}
	}
	return text
}

// number reads a bare number between two limits.
func (r *reader) number(v any, low, high float64, path ...string) (float64, bool) {
	var n float64
	switch v := v.(type) {
	case int64:
		n = float64(v)
	case float64:
		n = v
	default:
		r.refuse(path, "this is a number without quotes", "write it like 3 or 2.5")
		return 0, false
	}
	if !(n >= low && n <= high) {
		r.refuse(path, "that number is outside what can be", fmt.Sprintf("write one from %g to %g", low, high))
		return 0, false
	}
	return n, true
}

// bool reads true or false.
func (r *reader) bool(v any, path ...string) (bool, bool) {
	on, ok := v.(bool)
	if !ok {
		r.refuse(path, "this is true or false, without quotes", "write true or false")
	}
	return on, ok
}

// equal compares two decoded trees; not-a-number equals itself here.
func equal(a, b any) bool {
	switch a := a.(type) {
	case map[string]any:
		b, ok := b.(map[string]any)
		if !ok || len(a) != len(b) {
			return false
		}
		for k, v := range a {
			w, ok := b[k]
			if !ok || !equal(v, w) {
				return false
			}
		}
		return true
	case float64:
		f, ok := b.(float64)
		return ok && (a == f || a != a && f != f)
	case time.Time:
		t, ok := b.(time.Time)
		return ok && a.Equal(t) && a.Location().String() == t.Location().String()
	}
	n, ok := listLength(a)
	m, also := listLength(b)
	if !ok || !also {
		return a == b
	}
	if n != m {
		return false
	}
	for i := range n {
		if !equal(element(a, i), element(b, i)) {
			return false
		}
	}
	return true
}

func element(v any, i int) any {
	if t, ok := v.([]map[string]any); ok {
		return t[i]
	}
	return v.([]any)[i]
}
