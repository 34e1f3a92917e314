package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// outlineSimple: no outline may cross or touch itself, neither the line that
// is sewn nor the line that is cut.
var outlineSimple = Check{
	ID: "outline_simple", Title: "Outlines simple",
	Applies: hasPieces,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		var out []pattern.Finding
		for i := range s.Pieces {
			p := &s.Pieces[i]
			for _, line := range []struct {
				name string
				path geom.Path
			}{{"stitch line", p.Stitch}, {"cutting line", p.CutLine}} {
				if f, bad := tangled(p, line.name, line.path); bad {
					out = append(out, f)
				}
			}
		}
		if len(out) > 0 {
			return out
		}
		n := float64(len(s.Pieces))
		return one(pattern.Finding{
			Verdict: pattern.Pass, In: pattern.InCount, Got: n, Want: n, Where: pattern.Place{Piece: s.Pieces[0].ID},
			Says: measure.Tell("{} of {} pieces: no line crosses itself.", len(s.Pieces), len(s.Pieces)),
		})
	},
}

func tangled(p *pattern.Piece, name string, path geom.Path) (pattern.Finding, bool) {
	o := path.Outline(flat)
	if o.Simple() {
		return pattern.Finding{}, false
	}
	f := pattern.Finding{Code: "outline_simple", Verdict: pattern.Fail, In: pattern.InCount, Got: 1, Where: pattern.Place{Piece: p.ID}}
	f.Says = measure.Tell("1 crossing and 0 wanted: the " + name + " of " + p.Title + " touches itself.")
	f.Cure = measure.Tell("Look at the place, and take back the choice that was changed last.")
	if _, _, where, found := o.Crossing(); found {
		f.Where.At = where
		f.Says = measure.Tell("1 crossing and 0 wanted: the "+name+" of "+p.Title+" crosses itself, {} out and {} down.",
			measure.Length(where.X), measure.Length(where.Y))
	}
	return f, true
}

// allowanceFits: the cutting line lies outside the stitch line at every
// edge's own distance; in a hollow sharper than its allowance it would not.
var allowanceFits = Check{
	ID: "allowance_fits", Title: "Allowances fit",
	Applies: hasPieces,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		var worst strayed
		for i := range s.Pieces {
			p := &s.Pieces[i]
			for j := range p.Edges {
				if st := stray(p, &p.Edges[j]); worst.edge == nil || st.edge != nil && max(st.by, -st.by) > max(worst.by, -worst.by) {
					worst = st
				}
			}
		}
		if worst.edge == nil {
			return one(skip("", measure.Tell("No edge has an allowance.")))
		}
		return one(worst.finding())
	},
}

// strayed is the spot of an edge where its allowance is most out.
type strayed struct {
	piece *pattern.Piece
	edge  *pattern.Edge // nil: nothing to measure
	by    float64       // millimetres too far out
	at    geom.Point
}

// stray leaves out the ends of an edge, where the corner has its say, and
// the end of a dart, which is cut with the dart folded.
func stray(p *pattern.Piece, e *pattern.Edge) strayed {
	var st strayed
	if len(e.Cut) == 0 || len(e.Stitch) == 0 || e.Allowance <= 0 || e.Name == "dart" {
		return st
	}
	stitch := e.Stitch.Flatten(flat)
	for _, seg := range e.Cut {
		for _, t := range [...]float64{0.25, 0.5, 0.75} {
			q := seg.At(t)
			d, end := nearest(stitch, q)
			if end {
				continue
			}
			if out := d - e.Allowance.MM(); st.edge == nil || max(out, -out) > max(st.by, -st.by) {
				st = strayed{p, e, out, q}
			}
		}
	}
	return st
}

func (st strayed) finding() pattern.Finding {
	e := st.edge
	got := e.Allowance + measure.Length(st.by)
	f := within(allowanceOff).compare("allowance_fits", got, e.Allowance)
	f.Where = on(st.piece.ID, st.at)
	f.Says = measure.Tell("{} and {}, "+st.piece.Title+", "+spaced(e.Name)+".", got, e.Allowance)
	if f.Verdict != pattern.Pass {
		f.Says = measure.Tell("{} and {}: the "+spaced(e.Name)+" of "+st.piece.Title+" has not its own allowance.", got, e.Allowance)
		f.Input = allowanceInput(e.Name)
		f.Cure = measure.Tell("The line turns more sharply than its allowance lets it: take a smaller one, or trim and clip it there.")
	}
	return f
}

func allowanceInput(edge string) string {
	switch edge {
	case "centre_back":
		return "zip_allowance"
	case "outer":
		return "facing_neck_width"
	}
	return edge + "_allowance"
}
