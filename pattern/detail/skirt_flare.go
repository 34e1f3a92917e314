package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// Skirt is one half of a skirt from the waist down: its waistline, its side
// and the ends of its hem.
type Skirt struct {
	Waist      Waistline
	Side       geom.Path // from the waist to the hem
	Hip        geom.Point
	HemSide    geom.Point
	HemCentre  geom.Point
	Feet       [][2]geom.Point // of each slash below a dart, on the hem: its two edges
	Closed     bool            // a dart is turned into flare altogether
	LessOpened measure.Length  // what the darts could not give of the flare
}

// Opened lets a skirt flare through its darts: below the tip of each it is cut
// to the hem, and all that lies outside turns about the tip until the hem has
// opened by an equal share. A dart gives no more than it has. The outermost
// opens first.
func (s Skirt) Opened(opening measure.Length) Skirt {
	n := len(s.Waist.Darts)
	if n == 0 || opening <= 0 {
		return s
	}
	each := opening.MM() / float64(n)
	w := Waistline{Parts: append([]geom.Path{}, s.Waist.Parts...), Darts: append([]SeamDart{}, s.Waist.Darts...)}
	s.Feet = make([][2]geom.Point, n)
	for i := n - 1; i >= 0; i-- {
		d := &w.Darts[i]
		long := s.HemCentre.Y - d.Tip.Y
		want := 2 * chord(each/(2*long))
		angle := math.Min(want, d.Angle())
		if angle < want {
			s.Closed = true
			s.LessOpened += measure.Length(each - 2*long*math.Sin(angle/2))
		}
		m := geom.TurnAbout(d.Tip, -angle)
		foot := geom.Point{X: d.Tip.X, Y: s.HemCentre.Y}
		s.Feet[i] = [2]geom.Point{foot, m.Apply(foot)}
		for j := i + 1; j < n; j++ {
			w.Darts[j] = w.Darts[j].transform(m)
			s.Feet[j] = [2]geom.Point{m.Apply(s.Feet[j][0]), m.Apply(s.Feet[j][1])}
		}
		for j := i + 1; j <= n; j++ {
			w.Parts[j] = w.Parts[j].Transform(m)
		}
		d.Outer = m.Apply(d.Outer)
		s.Side, s.Hip, s.HemSide = s.Side.Transform(m), m.Apply(s.Hip), m.Apply(s.HemSide)
	}
	s.Waist = w.withoutClosed().Capped()
	return s
}

func (d SeamDart) transform(m geom.Matrix) SeamDart {
	return SeamDart{Tip: m.Apply(d.Tip), Inner: m.Apply(d.Inner), Outer: m.Apply(d.Outer), Cap: m.Apply(d.Cap)}
}

// closedBelow: a dart that is left smaller is no dart, its legs meet.
const closedBelow = inch / 64

// withoutClosed joins the parts on both sides of a dart that has nothing left.
func (w Waistline) withoutClosed() Waistline {
	out := Waistline{Parts: []geom.Path{w.Parts[0]}}
	for i, d := range w.Darts {
		last := len(out.Parts) - 1
		if d.Intake().MM() < closedBelow {
			out.Parts[last] = append(append(geom.Path{}, out.Parts[last]...), meeting(out.Parts[last].End(), w.Parts[i+1])...)
			continue
		}
		out.Darts = append(out.Darts, d)
		out.Parts = append(out.Parts, w.Parts[i+1])
	}
	return out
}

// FlaredSkirtHem is the hem of a skirt that flares all round, from the side
// to the centre: square to both.
func FlaredSkirtHem(side, above, centre geom.Point) geom.Path {
	p := above.To(side).Unit().Right()
	h := panelHandle * side.X
	return geom.Path{geom.Curve(side, side.Add(p.Scale(h)), geom.Point{X: h, Y: centre.Y}, centre)}
}

// OffHem is how far the marks below the opened darts lie off the hem, at most.
func (s Skirt) OffHem(hem geom.Path) measure.Length {
	worst := 0.0
	for _, f := range s.Feet {
		for _, at := range f {
			_, _, d := hem.Nearest(at)
			worst = math.Max(worst, d)
		}
	}
	return measure.Length(worst)
}

// meeting is a path begun at a point that lies a hair off its own start.
func meeting(at geom.Point, p geom.Path) geom.Path {
	out := append(geom.Path{}, p...)
	if first := &out[0]; first.Curved {
		*first = geom.Curve(at, first.B, first.C, first.D)
	} else {
		*first = geom.Straight(at, first.D)
	}
	return out
}
