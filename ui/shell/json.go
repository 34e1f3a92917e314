package shell

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"

	"chalkfold/export"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Documents for programs: keys in a fixed order, numbers without noise, the
// same bytes for the same session.

// field is one key of an object.
type field struct {
	key   string
	value any
}

// object is keys in their order; list is elements; line is a list that is
// written on one line, say a point.
type (
	object []field
	list   []any
	line   []any
	number struct {
		value  float64
		places int
	}
)

// add appends a key.
func (o *object) add(key string, value any) { *o = append(*o, field{key, value}) }

// scale writes lengths of the drafting rooms in the unit of a document.
type scale struct{ unit measure.Unit }

func (s scale) places() int {
	if s.unit == measure.Mm {
		return 4
	}
	return 5
}

// length is a length, mm a bare one in millimetres.
func (s scale) length(l measure.Length) number { return number{s.unit.Of(l), s.places()} }
func (s scale) mm(x float64) number            { return s.length(measure.Length(x)) }

// area is square millimetres in square units.
func (s scale) area(x float64) number {
	one := s.unit.Of(1)
	return number{x * one * one, s.places()}
}

func (s scale) point(p geom.Point) line { return line{s.mm(p.X), s.mm(p.Y)} }

func degrees(x float64) number { return number{x, 4} }

// dimension is a length or an angle.
func (s scale) dimension(d pattern.Dimension) number {
	if d.Angle {
		return degrees(d.Degrees)
	}
	return s.length(d.Length)
}

// document is an object with what every document begins with.
func (s scale) document() object {
	return object{{"form", 1}, {"unit", s.unit.String()}}
}

// text writes a document: a line for each key, and for each element of its
// lists of objects.
func (o object) text() string {
	var b strings.Builder
	b.WriteString("{")
	for i, f := range o {
		if i > 0 {
			b.WriteString(",")
		}
		b.WriteString("\n" + quote(f.key) + ": ")
		if l, ok := f.value.(list); ok && len(l) > 0 {
			b.WriteString("[")
			for k, v := range l {
				if k > 0 {
					b.WriteString(",")
				}
				b.WriteString("\n ")
				encode(&b, v)
			}
			b.WriteString("\n]")
			continue
		}
		encode(&b, f.value)
	}
	b.WriteString("\n}\n")
	return b.String()
}

func encode(b *strings.Builder, v any) {
	switch v := v.(type) {
	case object:
		b.WriteString("{")
		for i, f := range v {
			if i > 0 {
				b.WriteString(", ")
			}
			b.WriteString(quote(f.key) + ": ")
			encode(b, f.value)
		}
		b.WriteString("}")
	case list:
		elements(b, v)
	case line:
		elements(b, v)
	case number:
		b.WriteString(v.String())
	case int:
		b.WriteString(strconv.Itoa(v))
	case bool:
		b.WriteString(strconv.FormatBool(v))
	case string:
		b.WriteString(quote(v))
	case nil:
		b.WriteString("null")
	default:
		panic("shell: a document holds something it has no words for")
	}
}

func elements(b *strings.Builder, l []any) {
	b.WriteString("[")
	for i, v := range l {
		if i > 0 {
			b.WriteString(", ")
		}
		encode(b, v)
	}
	b.WriteString("]")
}

// String is the number rounded to its places, without idle zeros and never
// minus nothing.
func (n number) String() string {
	if math.IsNaN(n.value) || math.IsInf(n.value, 0) {
		return "null"
	}
	text := strconv.FormatFloat(export.Round(n.value, math.Pow10(n.places)), 'f', n.places, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" || text == "" {
		return "0"
	}
	return text
}

// quote is a JSON string; controls of any kind are written as codes.
func quote(s string) string {
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(s); err != nil {
		return `""`
	}
	text := strings.TrimSuffix(b.String(), "\n")
	return escapeControls(text)
}

// escapeControls writes what JSON allows raw and a terminal would obey as
// codes: DEL and the controls above it.
func escapeControls(s string) string {
	if !strings.ContainsFunc(s, func(r rune) bool { return r >= 0x7F && r < 0xA0 }) {
		return s
	}
	var b strings.Builder
	for _, r := range s {
		if r >= 0x7F && r < 0xA0 {
			b.WriteString(`\u00` + strconv.FormatInt(int64(r), 16))
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// words is a list of strings.
func words[T ~string](all []T) list {
	out := make(list, 0, len(all))
	for _, s := range all {
		out = append(out, string(s))
	}
	return out
}
