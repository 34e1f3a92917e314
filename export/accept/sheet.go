package accept

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func at(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }

// Sheet is a garment of two small pieces: a front on the fold with a dart, a
// curve, a notch and a balance line, and a facing cut as a pair, with double
// notches and interfacing.
func Sheet() *pattern.Sheet {
	s := &pattern.Sheet{Complete: true}
	s.Job.Client = pattern.Client{Name: "Learner Four", Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}}
	s.Job.Body = measure.NewBody(map[measure.ID]measure.Length{measure.BustGirth: 36 * measure.Inch})
	s.Garment, s.Method = pattern.Dress, pattern.Measured
	s.Figures = []pattern.Figure{
		{ID: measure.BustGirth, Value: 36 * measure.Inch},
		{ID: measure.NeckBaseGirth, Value: 14.5 * measure.Inch, Proposed: true},
	}
	s.Pieces = []pattern.Piece{front(), facing()}
	return s
}

func front() pattern.Piece {
	neck := geom.Path{geom.Curve(at(0, 60), at(40, 60), at(70, 45), at(70, 0))}
	neckCut := geom.Path{geom.Curve(at(0, 50), at(34, 50), at(60, 39), at(60, -12.5))}
	side := geom.Lines(at(150, 30), at(160, 100))
	dart := geom.Lines(at(160, 100), at(165, 112), at(160, 124))
	low := geom.Lines(at(160, 124), at(170, 260))
	corner := [...]geom.Point{at(163.4, 16.5), at(175.3, 100), at(180, 112), at(175.3, 124), at(187.7, 300)}
	p := pattern.Piece{
		ID: pattern.Front, Number: 1, Of: 2, Title: "Front", Cloth: "main", Cut: pattern.OnFold, Count: 1,
		Edges: []pattern.Edge{
			edge("neck", 10, neck, neckCut),
			edge("shoulder", 15, geom.Lines(at(70, 0), at(150, 30)), geom.Lines(at(60, -12.5), corner[0])),
			edge("side", 15, side, geom.Lines(corner[0], corner[1])),
			edge("dart", 15, dart, geom.Lines(corner[1], corner[2], corner[3])),
			edge("side", 15, low, geom.Lines(corner[3], corner[4])),
			edge("hem", 40, geom.Lines(at(170, 260), at(0, 260)), geom.Lines(corner[4], at(0, 300))),
			{Name: "fold", Stitch: geom.Lines(at(0, 260), at(0, 60)), Cut: geom.Lines(at(0, 300), at(0, 50)), Role: pattern.RoleFold},
		},
		Grain: geom.Straight(at(40, 250), at(40, 80)),
		Darts: []pattern.Dart{{
			Name: "side dart", Tip: at(90, 112), Legs: [2]geom.Point{at(160, 100), at(160, 124)}, Cap: at(165, 112),
			Ends: [2]geom.Point{corner[1], corner[3]}, Pressed: "down",
		}},
		Notches: []pattern.Notch{{At: at(177.76, 160), Edge: "side", Marks: 1, Into: 180, Name: "waist"}},
		Balance: []pattern.Balance{{Name: "waist", Line: geom.Straight(at(0, 160), at(162.6, 160))}},
	}
	return closed(p)
}

func facing() pattern.Piece {
	p := pattern.Piece{
		ID: pattern.BackNeckFacing, Number: 2, Of: 2, Title: "Back neck facing", Cloth: "main",
		Also: []string{"interfacing"}, Cut: pattern.Pair, Count: 2,
		Edges: []pattern.Edge{
			edge("neck", 10, geom.Lines(at(0, 40), at(60, 10)), geom.Lines(at(-10, 33.8), at(60, -1.2))),
			edge("shoulder", 10, geom.Lines(at(60, 10), at(100, 30)), geom.Lines(at(60, -1.2), at(122, 29.8))),
			edge("outer", 10, geom.Lines(at(100, 30), at(0, 90)), geom.Lines(at(122, 29.8), at(-10, 107.7))),
			edge("centre_back", 10, geom.Lines(at(0, 90), at(0, 40)), geom.Lines(at(-10, 107.7), at(-10, 33.8))),
		},
		Grain:   geom.Straight(at(10, 80), at(10, 45)),
		Notches: []pattern.Notch{{At: at(20, 18.8), Edge: "neck", Marks: 2, Into: 65, Name: "neck"}},
		Holes:   []geom.Point{at(50, 40)},
	}
	return closed(p)
}

func edge(name string, allowance measure.Length, stitch, cut geom.Path) pattern.Edge {
	return pattern.Edge{Name: name, Stitch: stitch, Cut: cut, Allowance: allowance, Role: pattern.RoleStitch}
}

// closed makes the two outlines from the edges and the fold from the edge of
// that name.
func closed(p pattern.Piece) pattern.Piece {
	for _, e := range p.Edges {
		p.Stitch = p.Stitch.Then(e.Stitch)
		p.CutLine = p.CutLine.Then(e.Cut)
		if e.Role == pattern.RoleFold {
			p.Fold = &e.Stitch[0]
		}
	}
	return p
}
