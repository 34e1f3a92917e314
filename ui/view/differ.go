package view

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Differences says in words how a sheet differs from an older one, girths
// first, at most so many; what moves less than the tape shows is left out.
func Differences(old, now *pattern.Sheet, u measure.Unit, most int) []string {
	if old == nil || now == nil {
		return nil
	}
	var out []string
	for _, d := range now.Girths {
		if o, ok := old.Girth(d.Name); ok && len(out) < most {
			if says := differs(o, d.Length, u, "more", "less"); says != "" {
				out = append(out, plain(d.Name)+" all round "+says)
			}
		}
	}
	said := map[string]bool{}
	for _, d := range now.Lengths {
		o, ok := old.Dimension(d.Piece, d.Name)
		if !ok || d.Angle || len(out) >= most || strings.HasSuffix(d.Name, "_drawn") {
			continue
		}
		says := differs(o.Length, d.Length, u, "longer", "shorter")
		if says == "" || said[d.Name+says] {
			continue
		}
		said[d.Name+says] = true
		out = append(out, plain(string(d.Piece))+" "+plain(d.Name)+" "+says)
	}
	return out
}

// differs is a difference by the tape, empty if the tape does not show it.
func differs(old, now measure.Length, u measure.Unit, more, less string) string {
	d := now - old
	amount := u.Tape(measure.Length(math.Abs(float64(d))))
	switch {
	case amount == u.Tape(0):
		return ""
	case d > 0:
		return amount + " " + more
	}
	return amount + " " + less
}

func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }
