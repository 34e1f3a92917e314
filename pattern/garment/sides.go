package garment

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Two sides that differ: right and left are drafted apart, and what was on
// the fold or a pair is cut single.

// sided are the measurements that may differ from one side to the other and
// still leave one centre line: the levels and girths are those of the right.
var sided = []measure.ID{
	measure.ShoulderLength, measure.ShoulderDrop, measure.SideNeckToBustPoint, measure.ShoulderToWaistBack, measure.ShoulderToWaistFront,
	measure.ArmscyeGirth, measure.WaistToHip, measure.SideWaistLength, measure.UpperArmGirth, measure.ElbowGirth, measure.WristGirth,
	measure.ArmLength, measure.ShoulderToElbow,
}

// Sided lists the measurements that her left side may have for itself.
func Sided() []measure.ID { return append([]measure.ID(nil), sided...) }

// shared are the choices that both sides have in common, as the right settled
// them: what lies at the centre, and what shows side by side.
var shared = []pattern.ChoiceID{
	"length", "skirt_length", "front_neck_depth", "back_neck_depth", "neck_widening", "shoulder_inset", "neck_opening_length", "zip_length", "slit_height",
	"facing_neck_width", "facing_neck_depth", "facing_depth", "hem_allowance",
}

// LeftJob is the job of her left side, if any measurement differs there that
// can be drafted: her right with the left's own measurements. It says how many
// of them there are, and how many are kept without being used.
func LeftJob(right *pattern.Sheet) (job pattern.Job, used, kept int) {
	job = right.Job
	for _, id := range right.Job.Left.IDs() {
		l, _ := right.Job.Left.Get(id)
		kept++
		for _, s := range sided {
			if s == id {
				kept--
				if own, ok := right.Job.Body.Get(id); !ok || own != l {
					job.Body = job.Body.With(id, l)
					used++
				}
			}
		}
	}
	job.Left = measure.Body{}
	for _, id := range shared {
		if set, ok := right.Setting(id); ok && set.Known() && !set.Chosen {
			job.Style = job.Style.With(id, set.Value)
		}
	}
	return job, used, kept
}

// Join puts the left side's draft into the right's sheet: its steps and marks
// beside those of the right, its pieces as single pieces.
func Join(right, left *pattern.Sheet) {
	n := len(right.Steps)
	rename := map[pattern.PieceID]pattern.PieceID{pattern.Front: pattern.FrontLeft, pattern.Back: pattern.BackLeft}
	taken := map[int]int{}
	for _, st := range left.Steps {
		id, ok := rename[st.Piece]
		if !ok {
			continue
		}
		n++
		taken[st.Number] = n
		st.Number, st.ID, st.Piece, st.Title = n, "left."+st.ID, id, st.Title+", left side"
		right.Steps = append(right.Steps, st)
	}
	m := mirror()
	for _, mk := range left.Marks {
		id, ok := rename[mk.Piece]
		if !ok || taken[mk.Born] == 0 {
			continue
		}
		mk.Piece, mk.Born, mk.Gone = id, taken[mk.Born], taken[mk.Gone]
		mk.At, mk.Path = m.Apply(mk.At), mk.Path.Transform(m)
		right.Marks = append(right.Marks, mk)
	}
	right.Pieces = single(right.Pieces, left.Pieces)
	number(right.Pieces)
	right.Complete = right.Complete && left.Complete
	for _, r := range left.Refused {
		r.Step = "left." + r.Step
		right.Refused = append(right.Refused, r)
	}
}

func mirror() geom.Matrix { return geom.MirrorIn(geom.Line{Dir: geom.Vector{Y: 1}}) }

// single makes of each pair of pieces what is cut: as it was where both sides
// are alike, one whole piece of what lay on the fold, a right and a left one of
// what was a pair.
func single(right, left []pattern.Piece) []pattern.Piece {
	var out []pattern.Piece
	for _, r := range right {
		var l *pattern.Piece
		for i := range left {
			if left[i].ID == r.ID {
				l = &left[i]
			}
		}
		switch {
		case l == nil || alike(r, *l):
			out = append(out, r)
		case r.Cut == pattern.OnFold:
			out = append(out, whole(r, *l))
		case r.Cut == pattern.Pair:
			other := mirrored(*l)
			other.ID, other.Title = r.ID+"_left", r.Title+", left"
			r.Title += ", right"
			for _, p := range []*pattern.Piece{&r, &other} {
				p.Cut, p.Count = pattern.Single, max(1, p.Count/2)
				unsewn(p)
				faceUp(p)
			}
			out = append(out, r, other)
		case l.Stitch.Length() > r.Stitch.Length():
			out = append(out, *l) // a strip: the longer one serves both
		default:
			out = append(out, r)
		}
	}
	return out
}

// faceUp says which side of the cloth is seen where the piece is cut alone. A
// front is drawn with her right on the right, as seen from inside; backs and
// sleeves as seen from outside.
func faceUp(p *pattern.Piece) {
	p.FaceUp = !strings.HasPrefix(string(p.ID), string(pattern.Front))
	if p.FaceUp {
		p.Title += ", right side of the cloth up"
	} else {
		p.Title += ", wrong side of the cloth up"
	}
}

// alike says whether both sides have the same piece.
func alike(a, b pattern.Piece) bool {
	same := func(p, q geom.Path) bool {
		if len(p) != len(q) {
			return false
		}
		for i := range p {
			if !p[i].A.Near(q[i].A, sameSide) || !p[i].B.Near(q[i].B, sameSide) || !p[i].C.Near(q[i].C, sameSide) {
				return false
			}
		}
		return true
	}
	return same(a.Stitch, b.Stitch) && same(a.CutLine, b.CutLine)
}

// sameSide, millimetres: two sides that differ by less are one.
const sameSide = 0.01

// unsewn takes off what an edge is sewn to: with single pieces the name of
// another piece says no longer which side of it.
func unsewn(p *pattern.Piece) {
	for i := range p.Edges {
		p.Edges[i].SewnTo = pattern.EdgeRef{}
	}
}

// mirrored is the mirror image of a piece about its centre line; its ring
// still runs clockwise.
func mirrored(p pattern.Piece) pattern.Piece {
	m := mirror()
	p.Edges = mirroredEdges(p.Edges)
	p.Stitch, p.CutLine = p.Stitch.Transform(m).Reverse(), p.CutLine.Transform(m).Reverse()
	if p.Fold != nil {
		f := p.Fold.Transform(m).Reverse()
		p.Fold = &f
	}
	p.Grain, p.Label = p.Grain.Transform(m), m.Apply(p.Label)
	p.Darts, p.Notches, p.Holes, p.Balance = mirroredDarts(p.Darts), mirroredNotches(p.Notches), mirroredHoles(p.Holes), mirroredBalance(p.Balance)
	return p
}

// mirroredEdges turns the order round, so that a corner that stood at the end
// of an edge stands at the end of the one that came after it.
func mirroredEdges(edges []pattern.Edge) []pattern.Edge {
	m, n := mirror(), len(edges)
	out := make([]pattern.Edge, 0, n)
	for i := n - 1; i >= 0; i-- {
		e := edges[i]
		e.Stitch, e.Cut = e.Stitch.Transform(m).Reverse(), e.Cut.Transform(m).Reverse()
		e.Corner = edges[(i+n-1)%n].Corner
		out = append(out, e)
	}
	return out
}

func mirroredDarts(darts []pattern.Dart) []pattern.Dart {
	m := mirror()
	out := make([]pattern.Dart, 0, len(darts))
	for _, d := range darts {
		d.Tip, d.Cap, d.Foot = m.Apply(d.Tip), m.Apply(d.Cap), m.Apply(d.Foot)
		for i := range d.Legs {
			d.Legs[i], d.Ends[i] = m.Apply(d.Legs[i]), m.Apply(d.Ends[i])
		}
		out = append(out, d)
	}
	return out
}

func mirroredNotches(notches []pattern.Notch) []pattern.Notch {
	m := mirror()
	out := make([]pattern.Notch, 0, len(notches))
	for _, n := range notches {
		sin, cos := math.Sincos(n.Into * math.Pi / 180)
		n.At, n.Into = m.Apply(n.At), degrees(geom.Vector{X: -cos, Y: sin})
		out = append(out, n)
	}
	return out
}

func mirroredHoles(holes []geom.Point) []geom.Point {
	out := make([]geom.Point, 0, len(holes))
	for _, h := range holes {
		out = append(out, mirror().Apply(h))
	}
	return out
}

func mirroredBalance(lines []pattern.Balance) []pattern.Balance {
	out := make([]pattern.Balance, 0, len(lines))
	for _, b := range lines {
		out = append(out, pattern.Balance{Name: b.Name, Line: b.Line.Transform(mirror())})
	}
	return out
}

// whole joins the right half of a piece on the fold and the left half at the
// centre.
func whole(right, left pattern.Piece) pattern.Piece {
	l := mirrored(left)
	p := right
	p.Title += ", whole"
	p.Cut, p.Count, p.Fold = pattern.Single, 1, nil
	p.Edges = append(offCentre(right.Edges), offCentre(l.Edges)...)
	p.Stitch = geom.Chain(openAtCentre(right.Stitch), openAtCentre(l.Stitch))
	p.CutLine = geom.Chain(openAtCentre(right.CutLine), openAtCentre(l.CutLine))
	p.Darts = append(append([]pattern.Dart(nil), right.Darts...), l.Darts...)
	p.Holes = append(append([]geom.Point(nil), right.Holes...), l.Holes...)
	p.Notches = append([]pattern.Notch(nil), right.Notches...)
	for _, n := range l.Notches {
		if n.At.X < -sameSide {
			p.Notches = append(p.Notches, n)
		}
	}
	p.Balance = nil
	for i, b := range right.Balance {
		if i < len(l.Balance) {
			b.Line = geom.Straight(l.Balance[i].Line.D, b.Line.D)
		}
		p.Balance = append(p.Balance, b)
	}
	if right.Fold != nil {
		p.Balance = append(p.Balance, pattern.Balance{Name: "centre", Line: *right.Fold})
	}
	unsewn(&p)
	faceUp(&p)
	return p
}

// offCentre is a ring of edges without the fold, from one end of it round to
// the other.
func offCentre(edges []pattern.Edge) []pattern.Edge {
	n, start := len(edges), 0
	for i, e := range edges {
		if e.Role == pattern.RoleFold {
			start = i + 1
		}
	}
	var out []pattern.Edge
	for i := range n {
		if e := edges[(start+i)%n]; e.Role != pattern.RoleFold {
			out = append(out, e)
		}
	}
	return out
}

// openAtCentre is a ring without the run that lies on the centre line.
func openAtCentre(ring geom.Path) geom.Path {
	on := func(s geom.Segment) bool { return math.Abs(s.A.X) < sameSide && math.Abs(s.D.X) < sameSide }
	n := len(ring)
	for i := range ring {
		if on(ring[(i+n-1)%n]) && !on(ring[i]) {
			var out geom.Path
			for j := range n {
				if s := ring[(i+j)%n]; !on(s) {
					out = append(out, s)
				}
			}
			return out
		}
	}
	return ring
}
