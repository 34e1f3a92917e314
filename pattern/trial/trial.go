package trial

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
)

// Option is one option of a pick, drafted.
type Option struct {
	pattern.Option
	Now    bool             // it stands now
	WhyNot measure.Sentence // it cannot be drafted, and why; empty: it can
	Cure   measure.Sentence // what would work
	Front  []Line
	Back   []Line
}

// Line is one line of an outline, flattened, in the drafting frame: x out from
// the centre, both halves.
type Line struct {
	Points []geom.Point
	Dart   bool
}

// Set is all options of a pick.
type Set struct {
	Choice  pattern.Choice
	Options []Option
	Behind  bool     // the options differ more behind: the back is shown
	Box     geom.Box // the part where they differ, both halves
	Alike   bool     // they draw the same outlines; Box is all of the front
}

// Of drafts every option of a pick.
func Of(job pattern.Job, c pattern.Choice) Set {
	set := Set{Choice: c}
	now, _ := workroom.Draft(job).Setting(c.ID)
	for _, o := range c.Options {
		t := Option{Option: o, Now: o.Value == now.Value.Pick}
		s := workroom.Draft(job.WithStyle(c.ID, pattern.PickValue(o.Value)))
		if len(s.Refused) > 0 {
			t.WhyNot, t.Cure = s.Refused[0].Says, s.Refused[0].Cure
		}
		t.Front, t.Back = lines(s, pattern.Front), lines(s, pattern.Back)
		set.Options = append(set.Options, t)
	}
	set.look()
	return set
}

// Lines are those of the side that is shown.
func (s Set) Lines(o Option) []Line {
	if s.Behind {
		return o.Back
	}
	return o.Front
}

// Picks are the picks of a job that have something to choose by looking: more
// than one option, used by its method.
func Picks(job pattern.Job) []pattern.Choice {
	var out []pattern.Choice
	for _, c := range workroom.Choices(job.Style.Garment()) {
		if c.Kind == pattern.KindPick && len(c.Options) > 1 && c.UsedBy(job.Style.Method()) && c.ID != pattern.Garment && c.ID != pattern.Method {
			out = append(out, c)
		}
	}
	return out
}

// flat is how far a flattened outline may lie off: less than a dot of a screen.
const flat = 0.5

// lines are the outlines of one half of the body with their mirror: the main
// piece, its panels and what else is drawn in its frame.
func lines(s *pattern.Sheet, half pattern.PieceID) []Line {
	var out []Line
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if !strings.HasPrefix(string(p.ID), string(half)) || strings.Contains(string(p.ID), "facing") || strings.Contains(string(p.ID), "lining") {
			continue
		}
		for _, e := range p.Edges {
			if e.Role != pattern.RoleFold {
				out = append(out, Line{Points: e.Stitch.Flatten(flat)})
			}
		}
		for _, d := range p.Darts {
			out = append(out, dartLines(d)...)
		}
	}
	for _, l := range append([]Line{}, out...) {
		m := Line{Dart: l.Dart, Points: make([]geom.Point, len(l.Points))}
		for i, q := range l.Points {
			m.Points[i] = geom.Point{X: -q.X, Y: q.Y}
		}
		out = append(out, m)
	}
	return out
}

func dartLines(d pattern.Dart) []Line {
	var out []Line
	for _, leg := range d.Legs {
		out = append(out, Line{Dart: true, Points: []geom.Point{leg, d.Tip}})
	}
	return out
}

// differs is how far apart lines must lie to be told apart by eye.
const differs = 3.0

// look finds the side and the part that the options differ in.
func (s *Set) look() {
	front, nf := s.difference(func(o Option) []Line { return o.Front })
	back, nb := s.difference(func(o Option) []Line { return o.Back })
	whole := geom.Box{}
	s.Behind, s.Box, s.Alike = nb > nf, front, nf+nb == 0
	if s.Behind {
		s.Box = back
	}
	for _, o := range s.Options {
		whole = whole.Union(box(s.Lines(o)))
	}
	if s.Alike || whole.Empty() {
		s.Box = whole
		return
	}
	s.Box = framed(s.Box, whole)
}

// framed gives a part air, a height that shows what it belongs to, and the
// width of the body there.
func framed(part, whole geom.Box) geom.Box {
	const air, least = 30.0, 260.0
	top, low := part.Min.Y-air, part.Max.Y+air
	if more := least - (low - top); more > 0 {
		top, low = top-more/2, low+more/2
	}
	if top < whole.Min.Y-air {
		low += whole.Min.Y - air - top
		top = whole.Min.Y - air
	}
	low = math.Min(low, whole.Max.Y+air/2)
	return geom.Box{Min: geom.Point{X: whole.Min.X - air/2, Y: top}, Max: geom.Point{X: whole.Max.X + air/2, Y: low}}
}

func box(all []Line) geom.Box {
	var b geom.Box
	for _, l := range all {
		for _, p := range l.Points {
			b = b.Add(p)
		}
	}
	return b
}

// difference is the box of what lies elsewhere in one option than in another,
// and how much that is.
func (s *Set) difference(of func(Option) []Line) (geom.Box, int) {
	var b geom.Box
	n := 0
	base := s.base()
	for i := range s.Options {
		if i == base || len(of(s.Options[i])) == 0 || len(of(s.Options[base])) == 0 {
			continue
		}
		for _, pair := range [][2][]Line{{of(s.Options[i]), of(s.Options[base])}, {of(s.Options[base]), of(s.Options[i])}} {
			for _, l := range pair[0] {
				for _, p := range spread(l.Points) {
					if p.X >= 0 && away(p, pair[1]) {
						b, n = b.Add(p), n+1
					}
				}
			}
		}
	}
	return b, n
}

// base is the option that stands now, or the first that can be drafted.
func (s *Set) base() int {
	first := 0
	for i := len(s.Options) - 1; i >= 0; i-- {
		if s.Options[i].Now && len(s.Options[i].Front) > 0 {
			return i
		}
		if len(s.Options[i].Front) > 0 {
			first = i
		}
	}
	return first
}

// spread puts points on a line so close that no difference falls between.
func spread(pts []geom.Point) []geom.Point {
	var out []geom.Point
	for i := range pts {
		out = append(out, pts[i])
		if i+1 < len(pts) {
			n := int(pts[i].Dist(pts[i+1]) / 40)
			for k := 1; k <= n; k++ {
				out = append(out, pts[i].Lerp(pts[i+1], float64(k)/float64(n+1)))
			}
		}
	}
	return out
}

func away(p geom.Point, all []Line) bool {
	for _, l := range all {
		for i := 0; i+1 < len(l.Points); i++ {
			if near(p, l.Points[i], l.Points[i+1]) {
				return false
			}
		}
	}
	return true
}

// near says that a point lies on a piece of line, for the eye.
func near(p, a, b geom.Point) bool {
	ab, ap := a.To(b), a.To(p)
	t := 0.0
	if d := ab.Dot(ab); d > 0 {
		t = math.Max(0, math.Min(1, ap.Dot(ab)/d))
	}
	return p.Dist(a.Lerp(b, t)) < differs
}
