package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// What collar the dress has.
const (
	NoCollar          = "none"
	StandCollar       = "stand"
	FlatCollar        = "flat"
	ConvertibleCollar = "convertible"
)

// CollarKind is the chosen collar; by thumb there is none.
func CollarKind(k pattern.Known) string { return picked(k, "collar", NoCollar) }

// HasCollar says whether a collar is sewn to the neck.
func HasCollar(k pattern.Known) bool { return CollarKind(k) != NoCollar }

const (
	// collarPoint is how far the point of a convertible collar reaches beyond
	// the front end of its neck edge; underLess is what an under collar is
	// shorter along its outer edge; collarRound is how far on each side of the
	// shoulder a flat collar's neck edge is drawn anew, with handles of
	// collarHandle (all common practice, no source).
	collarPoint  = measure.Inch / 2
	underLess    = measure.Inch / 8
	collarRound  = 1.5 * inch
	collarHandle = inch
)

// Collar is half a collar, in a frame of its own: the centre that it is folded
// or opened at upright at the left, its neck edge below, going right.
type Collar struct {
	Neck     geom.Path // from the centre to the other end
	Outer    geom.Path // likewise
	Shoulder geom.Point
}

// CollarIn is what a collar is drawn from: the halves of the neck seam, first
// the one at the centre that the collar begins from.
type CollarIn struct {
	First, Second measure.Length
	Height, Rise  measure.Length
}

// arcRise is the angle of an arc so long that rises by so much from level.
func arcRise(long, rise float64) float64 {
	if !(rise > 0) || !(long > 0) {
		return 0
	}
	// (1 - cos a)/a is a/2 at first, and grows all the way to a quarter turn.
	low, high := 0.0, math.Pi/2
	for range 80 {
		mid := (low + high) / 2
		if (1-math.Cos(mid))/mid < rise/long {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

// arc runs from a point to the right, level at first and turning upwards, on a
// circle of a radius; a zero angle is a straight line so long.
func arc(from geom.Point, radius, angle, long float64) geom.Path {
	if angle <= 0 {
		return geom.Lines(from, from.Add(geom.Vector{X: long}))
	}
	sin, cos := math.Sincos(angle)
	end := from.Add(geom.Vector{X: radius * sin, Y: -radius * (1 - cos)})
	h := 4.0 / 3 * math.Tan(angle/4) * radius
	return geom.Path{geom.Curve(from, from.Add(geom.Vector{X: h}), end.Add(geom.Vector{X: -h * cos, Y: h * sin}), end)}
}

// Stand draws a collar that stands up: one arc, whose upper edge is its
// parallel, so that it leans in to her neck.
func (c CollarIn) Stand() Collar {
	long, h := (c.First + c.Second).MM(), c.Height.MM()
	a := arcRise(long, c.Rise.MM())
	out := Collar{Neck: arc(geom.Point{}, 0, 0, long), Outer: arc(geom.Point{Y: -h}, 0, 0, long)}
	if a > 0 {
		r := long / a
		out.Neck, out.Outer = arc(geom.Point{}, r, a, long), arc(geom.Point{Y: -h}, r-h, a, long)
	}
	out.Shoulder, _ = out.Neck.At(c.First.MM())
	return out
}

// Convertible draws a collar that is worn open or closed: level behind, rising
// in front, its point a little beyond the front end.
func (c CollarIn) Convertible(less measure.Length) Collar {
	h := c.Height.MM()
	a := arcRise(c.Second.MM(), c.Rise.MM())
	from := geom.Point{X: c.First.MM()}
	front := arc(from, 0, 0, c.Second.MM())
	if a > 0 {
		front = arc(from, c.Second.MM()/a, a, 0)
	}
	neck := geom.Lines(geom.Point{}, from).Then(front)
	tip := geom.Point{X: neck.End().X + (collarPoint - less).MM(), Y: -h}
	return Collar{Neck: neck, Outer: geom.Lines(geom.Point{Y: -h}, tip), Shoulder: from}
}

// UnderLess is what the under collar of a convertible one is shorter along
// its outer edge, so that the seam rolls under.
const UnderLess = underLess

// FlatIn is what a flat collar is traced from: neck lines from the centre to
// the shoulder, and both shoulders.
type FlatIn struct {
	Front, Back       geom.Path
	FrontDir, BackDir geom.Vector // from the neck to the shoulder end
	Shoulder          measure.Length
	Lap, Width        measure.Length
	FromFront         bool // the collar is opened behind, so it is drawn from the centre front
}

// Lapped is the angle at which the back is laid onto the front.
func (in FlatIn) Lapped() float64 { return 2 * chord(in.Lap.MM()/2/in.Shoulder.MM()) }

// Draw lays the back onto the front at the neck point, shoulder ends lapping,
// and traces the neck: the lap makes the outer edge short, so that the collar
// rolls a little and covers its seam.
func (in FlatIn) Draw() Collar {
	to := in.onto()
	front, back := in.Front.Reverse(), in.Back.Transform(to) // towards the front centre
	n := front.Start()
	b, _ := back.Split(back.Length() - math.Min(collarRound, back.Length()/2))
	_, f := front.Split(math.Min(collarRound, front.Length()/2))
	mid := geom.Path{geom.Curve(b.End(), b.End().Add(b.EndTangent().Scale(collarHandle)), f.Start().Add(f.StartTangent().Scale(-collarHandle)), f.Start())}
	neck := geom.Chain(b, mid, f)
	_, shoulder, _ := neck.Nearest(n)
	if in.FromFront {
		// Mirrored, so that it again runs to the right from its centre.
		m := geom.MirrorIn(geom.Line{Dir: geom.Vector{Y: 1}})
		neck, shoulder = neck.Reverse().Transform(m), m.Apply(shoulder)
	}
	own := upright(neck)
	neck, shoulder = neck.Transform(own), own.Apply(shoulder)
	return Collar{Neck: neck, Outer: neck.Offset(in.Width.MM(), parallelTolerance), Shoulder: shoulder}
}

// onto carries the back to where it lies beside the front.
func (in FlatIn) onto() geom.Matrix {
	u, d := in.FrontDir, in.FrontDir.Right()
	v, e := in.BackDir, in.BackDir.Right()
	m := geom.Matrix{
		float64(u.X*v.X) - float64(d.X*e.X), float64(u.Y*v.X) - float64(d.Y*e.X),
		float64(u.X*v.Y) - float64(d.X*e.Y), float64(u.Y*v.Y) - float64(d.Y*e.Y), 0, 0,
	}
	n, nb := in.Front.End(), in.Back.End()
	return geom.Move(nb.To(geom.Point{})).Then(m).Then(geom.Move(geom.Point{}.To(n))).Then(geom.TurnAbout(n, in.Lapped()))
}

// upright carries a line to start at the origin, going right.
func upright(p geom.Path) geom.Matrix {
	t := p.StartTangent()
	return geom.Move(p.Start().To(geom.Point{})).Then(geom.TurnAbout(geom.Point{}, -math.Atan2(t.Y, t.X)))
}
