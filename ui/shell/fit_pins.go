package shell

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern/fitting"
	"chalkfold/ui/session"
)

// parted parts a list at semicolons, or at commas where it has none: a comma
// may also stand in a number.
func parted(text string) []string {
	by := ","
	if strings.Contains(text, ";") {
		by = ";"
	}
	var out []string
	for _, p := range strings.Split(text, by) {
		if p = strings.TrimSpace(p); p != "" {
			out = append(out, p)
		}
	}
	return out
}

// readPins reads "side_waist pinned 1/4; hem_side higher 1/2".
func (f *fit) readPins(text string) ([]fitting.Pin, error) {
	const like = `write it like "side_waist pinned 1/4; hem_side higher 1/2"`
	var out []fitting.Pin
	for _, part := range parted(text) {
		id, rest, _ := strings.Cut(part, " ")
		spot, ok := fitting.FindSpot(id)
		if !ok {
			works := "chalkfold fit FILE --spots lists them"
			var ids []string
			for _, s := range fitting.Spots() {
				ids = append(ids, s.ID)
			}
			if near := session.Nearest(id, ids); near != "" {
				works = "did you mean " + near + "?"
			}
			return nil, refuse("--pins", measure.Quoted(id), "there is no such place", works)
		}
		rest = strings.TrimSpace(rest)
		amount, more := strings.CutPrefix(rest, spot.More)
		sign := measure.Length(1)
		if !more {
			var less bool
			if amount, less = strings.CutPrefix(rest, spot.Less); !less {
				return nil, refuse("--pins", measure.Quoted(part), "it does not say which way", `say "`+spot.More+`" or "`+spot.Less+`", then how much`)
			}
			sign = -1
		}
		l, err := f.length("--pins", strings.TrimSpace(amount))
		if err != nil {
			return nil, err
		}
		out = append(out, fitting.Pin{Spot: id, By: sign * l})
	}
	if len(out) == 0 {
		return nil, refuse("--pins", measure.Quoted(text), "nothing was pinned", like)
	}
	return out, nil
}

func (f *fit) fromPins() error {
	pins, err := f.readPins(f.pins)
	if err != nil {
		return err
	}
	if err := f.w.whole(f.path, f.sheet); err != nil {
		return err
	}
	e, err := fitting.Explain(f.sheet, pins)
	if err != nil {
		return notRead(err)
	}
	if f.keep {
		f.w.print(e.How.In(f.u) + "\n")
		return f.take(e.Proposal)
	}
	if f.w.json {
		f.w.print(f.pinsDocument(e).text())
		return nil
	}
	var p page
	p.para("", e.Seen)
	p.line()
	f.way1(&p, "", e.Proposal)
	p.line()
	p.para("", e.How.In(f.u))
	rows := [][]string{{"Place", "pinned", "drafted"}}
	for _, t := range e.Told {
		rows = append(rows, []string{t.Spot.Title, t.Spot.Says(t.By).In(f.u), t.Spot.Says(t.Gives).In(f.u)})
	}
	for _, t := range e.Also {
		rows = append(rows, []string{t.Spot.Title, "", t.Spot.Says(t.Gives).In(f.u)})
	}
	p.table(rows)
	f.w.print(p.String())
	return nil
}

func (f *fit) pinsDocument(e fitting.Explanation) object {
	s := scale{f.w.jsonUnit()}
	doc := s.document()
	doc.add("explains", number{math.Round(e.Share*1e4) / 1e4, 4})
	doc.add("says", e.How.In(s.unit))
	doc.add("possible", e.Possible())
	doc.add("why_not", e.WhyNot.In(s.unit))
	doc.add("changes", s.changes(e.Changes))
	for _, x := range []struct {
		key  string
		told []fitting.Told
	}{{"pins", e.Told}, {"also_moves", e.Also}} {
		all := list{}
		for _, t := range x.told {
			all = append(all, object{{"place", t.Spot.ID}, {"pinned", s.length(t.By)}, {"drafted", s.length(t.Gives)}})
		}
		doc.add(x.key, all)
	}
	return doc
}

func (f *fit) listSpots() error {
	var p page
	for i, place := range fitting.Places() {
		if i > 0 {
			p.line()
		}
		p.line(string(place))
		var rows [][]string
		for _, s := range fitting.Spots() {
			if s.Place == place {
				rows = append(rows, []string{"  " + s.ID, s.More + " or " + s.Less, s.Title + ": " + s.How + "."})
			}
		}
		p.table(rows)
	}
	f.w.print(p.String())
	return nil
}
