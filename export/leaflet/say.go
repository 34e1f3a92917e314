package leaflet

import (
	"fmt"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Day is a date as it stands in sessions; empty: none is known.
func Day(d pattern.Date) string {
	if d.IsZero() {
		return ""
	}
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day)
}

// Words are an id as words.
func Words(id string) string { return strings.ReplaceAll(id, "_", " ") }

// Title are an id as words, the first letter a capital.
func Title(id string) string {
	w := Words(id)
	if w == "" {
		return ""
	}
	return strings.ToUpper(w[:1]) + w[1:]
}

// Term is what a measurement is called.
func Term(id measure.ID) string {
	if m, ok := measure.Find(id); ok {
		return m.Term
	}
	return Words(string(id))
}

// Value is a choice's value in words.
func Value(c pattern.Choice, v pattern.Value, u measure.Unit) string {
	switch v.Kind {
	case pattern.KindPick:
		for _, o := range c.Options {
			if o.Value == v.Pick && o.Title != "" {
				return o.Title
			}
		}
		return Words(v.Pick)
	case pattern.KindSwitch:
		if v.On {
			return "yes"
		}
		return "no"
	case pattern.KindCount:
		return strconv.FormatFloat(v.Number, 'f', -1, 64)
	case pattern.KindPercent:
		return strconv.FormatFloat(v.Number, 'f', -1, 64) + " %"
	}
	return u.Tape(v.Length)
}

// UnitWords are the units written out.
func UnitWords(u measure.Unit) string {
	return map[measure.Unit]string{measure.In: "inches", measure.Cm: "centimetres", measure.Mm: "millimetres"}[u]
}

// For is what is made and for whom.
func For(s *pattern.Sheet) string {
	garment := Title(s.Garment)
	if garment == "" {
		garment = "Garment"
	}
	if name := s.Job.Client.Name; name != "" {
		return garment + " for " + name
	}
	return garment
}

// MethodWords are the drafting methods in words.
func MethodWords(m string) string {
	switch m {
	case pattern.Measured:
		return "drafted from her measurements"
	case pattern.Direct:
		return "drafted as a block by direct measure"
	case pattern.Thumb:
		return "drafted by the rule of thumb"
	}
	return Words(m)
}

// Cut is the cut count as a cutter says it.
func Cut(p *pattern.Piece) string {
	n := max(p.Count, 1)
	switch p.Cut {
	case pattern.OnFold:
		return fmt.Sprintf("%d on the fold", n)
	case pattern.Pair:
		return fmt.Sprintf("%d, a pair", n)
	}
	return strconv.Itoa(n)
}
