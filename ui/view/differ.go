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
		more, less := "longer", "shorter"
		switch {
		case strings.HasSuffix(d.Name, "_intake"):
			more, less = "wider", "narrower"
		case strings.HasSuffix(d.Name, "_spare"):
			more, less = "more", "less"
		}
		says := differs(o.Length, d.Length, u, more, less)
		if says == "" || said[d.Name+says] {
			continue
		}
		said[d.Name+says] = true
		name := plain(d.Name)
		if n, ok := called[d.Name]; ok {
			name = n
		}
		out = append(out, plain(string(d.Piece))+" "+name+" "+says)
	}
	return append(out, levelsMoved(old, now, u, most-len(out))...)
}

// called are figures that nobody calls by their names here.
var called = map[string]string{"waist_spare": "room at the waist"}

// levelsMoved says which levels of front and back lie elsewhere; one that moved
// alike on both is said once.
func levelsMoved(old, now *pattern.Sheet, u measure.Unit, most int) []string {
	var out []string
	for _, level := range [...][2]string{{"underarm", "underarm line"}, {"waist", "waist line"}, {"hip", "hip line"}, {"hem_centre", "hem"}} {
		var says [2]string
		for i, id := range [...]pattern.PieceID{pattern.Front, pattern.Back} {
			a, ok := old.Point(id, level[0])
			b, also := now.Point(id, level[0])
			if ok && also {
				says[i] = differs(measure.Length(a.Y), measure.Length(b.Y), u, "lower", "higher")
			}
		}
		for i, piece := range [...]string{"front ", "back "} {
			switch {
			case says[i] == "" || len(out) >= most:
			case says[0] != says[1]:
				out = append(out, piece+level[1]+" "+says[i])
			case i == 0:
				out = append(out, level[1]+" "+says[i])
			}
		}
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

// Changed are the steps that another sheet has otherwise, by id: other words or
// figures, or a mark that lies elsewhere by more than the tape shows.
func Changed(old, now *pattern.Sheet, u measure.Unit) map[string]bool {
	type said struct{ do, sum string }
	was := map[string]said{}
	for _, s := range old.Steps {
		was[s.ID] = said{s.Do.In(u), s.Sum.Sum(u)}
	}
	moved := movedAt(old, now)
	out := map[string]bool{}
	for _, s := range now.Steps {
		w, ok := was[s.ID]
		if !ok || w != (said{s.Do.In(u), s.Sum.Sum(u)}) || moved[s.Number] {
			out[s.ID] = true
		}
	}
	return out
}

// seen is the least that a mark must move to be another.
const seen = 0.5

// movedAt are the numbers of the steps that put a point elsewhere.
func movedAt(old, now *pattern.Sheet) map[int]bool {
	type key struct {
		piece pattern.PieceID
		name  string
		nth   int
	}
	place := func(s *pattern.Sheet, each func(key, *pattern.Mark)) {
		count := map[key]int{}
		for i := range s.Marks {
			m := &s.Marks[i]
			if m.Kind != pattern.MarkPoint {
				continue
			}
			k := key{piece: m.Piece, name: m.Name}
			count[k]++
			each(key{m.Piece, m.Name, count[k]}, m)
		}
	}
	was := map[key]*pattern.Mark{}
	place(old, func(k key, m *pattern.Mark) { was[k] = m })
	out := map[int]bool{}
	place(now, func(k key, m *pattern.Mark) {
		if o := was[k]; o != nil && o.At.Dist(m.At) > seen {
			out[m.Born] = true
		}
	})
	return out
}
