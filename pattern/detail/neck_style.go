package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// The necklines. Every one leaves the shoulder square, on both pieces, so
// that the ring has no peak at the seam; only the centre may be a point.
const (
	RoundNeckline      = "round"
	JewelNeckline      = "jewel"
	SquareNeckline     = "square"
	VNeckline          = "v"
	BoatNeckline       = "boat"
	SweetheartNeckline = "sweetheart"
	SlitNeckline       = "slit"
	KeyholeNeckline    = "keyhole"
	FunnelNeckline     = "funnel"
)

// boatNeck holds the handles of a neck that runs nearly straight from
// shoulder to shoulder (common practice, no source).
var boatNeck = neckHandles{0.40, 0.65}

// Neckline is what a neck is drawn from.
type Neckline struct {
	Style string
	Back  bool
	Neck  geom.Point     // neck point, widened
	Along geom.Vector    // from the neck to the shoulder end
	Down  geom.Vector    // square to it, downwards
	Depth measure.Length // at the centre, from the top line
	Lean  measure.Length // how far an upright side leans in
	Bow   measure.Length // of a V, outwards
	Dip   measure.Length // of a sweetheart, from its lobes to the centre
	Rise  measure.Length // of a funnel, above the neck it stands on
	Bust  measure.Length // half the bust point distance, for a sweetheart
}

// NecklineOf gathers a neckline from the choices, for a shoulder.
func NecklineOf(k pattern.Known, s Shoulder, back bool) Neckline {
	depth := pattern.ChoiceID("front_neck_depth")
	if back {
		depth = "back_neck_depth"
	}
	return Neckline{
		Style: NeckStyle(k, back), Back: back, Neck: s.Neck, Along: s.Dir, Down: s.Down, Depth: k.Length(depth),
		Lean: k.Length("neck_lean"), Bow: k.Length("v_bow"), Dip: k.Length("sweetheart_dip"), Rise: k.Length("funnel_rise"),
		Bust: k.Body(measure.BustPointDistance) / 2,
	}
}

// NeckStyle is the chosen neckline of a half; by thumb every neck is round.
func NeckStyle(k pattern.Known, back bool) string {
	if back {
		return picked(k, "back_neckline", RoundNeckline)
	}
	return picked(k, "front_neckline", RoundNeckline)
}

// Centre is where the neck crosses the centre line.
func (n Neckline) Centre() geom.Point {
	if n.Style == FunnelNeckline {
		return geom.Point{Y: (n.Depth - n.Rise).MM()}
	}
	return geom.Point{Y: n.Depth.MM()}
}

// Top is the upper end of the shoulder seam: the neck point, or of a funnel
// the point that stands above it, a little nearer to her neck.
func (n Neckline) Top() geom.Point {
	if n.Style == FunnelNeckline {
		return n.Neck.Add(geom.Vector{X: -inch / 8, Y: -n.Rise.MM()})
	}
	return n.Neck
}

// FunnelSeam is the shoulder seam of a funnel: down from its top, and into
// the shoulder over the first inch beside the neck.
func (n Neckline) FunnelSeam(end geom.Point) geom.Path {
	t, q := n.Top(), n.Neck.Add(n.Along.Scale(inch))
	return geom.Path{geom.Curve(t, t.Add(geom.Vector{Y: 0.55 * n.Rise.MM()}), q.Add(n.Along.Scale(-0.6*inch)), q)}.Then(geom.Lines(q, end))
}

// Curve draws the neck from the centre to the neck point.
func (n Neckline) Curve() geom.Path {
	switch n.Style {
	case SquareNeckline:
		k := n.Corner()
		return geom.Lines(n.Centre(), k).Then(n.upright(k))
	case VNeckline:
		return n.vee()
	case BoatNeckline:
		return boatNeck.curve(n.Neck, n.Down, n.Depth)
	case SweetheartNeckline:
		return n.sweetheart()
	case FunnelNeckline:
		t, c := n.Top(), n.Centre()
		return geom.Path{geom.Curve(c, geom.Point{X: 0.50 * t.X, Y: c.Y}, geom.Point{X: 0.70 * t.X, Y: t.Y}, t)}
	}
	return RoundNeck(n.Neck, n.Down, n.Depth, n.Back)
}

// Corner is the lower end of the upright side of a square neck or a
// sweetheart.
func (n Neckline) Corner() geom.Point {
	y := n.Depth.MM()
	if n.Style == SweetheartNeckline {
		y = n.Lobe().Y + 0.25*inch
	}
	return geom.Point{X: n.Neck.X - n.Lean.MM(), Y: y}
}

// upright is the side of a square neck from its corner up to the shoulder:
// it looks upright because it leans in, and turns square at the seam.
func (n Neckline) upright(corner geom.Point) geom.Path {
	long := n.Neck.Dist(corner)
	return geom.Path{geom.Curve(corner, corner.Lerp(n.Neck, 1.0/3), n.Neck.Add(n.Down.Scale(long/4)), n.Neck)}
}

// vee is a straight slant, bowed outwards so that it lies flat on her, and
// turned square at the shoulder.
func (n Neckline) vee() geom.Path {
	c := n.Centre()
	slant := n.Neck.To(c)
	off := math.Abs(math.Atan2(n.Down.Cross(slant), n.Down.Dot(slant)))
	if off < math.Pi/180 {
		return geom.Lines(c, n.Neck)
	}
	h := math.Min(slant.Len()/2, 8.0/3*n.Bow.MM()/math.Sin(off))
	return geom.Path{geom.Curve(c, c.Lerp(n.Neck, 1.0/3), n.Neck.Add(n.Down.Scale(h)), n.Neck)}
}

// Lobe is the highest point of a sweetheart's arc over the bust.
func (n Neckline) Lobe() geom.Point {
	side, bust := n.Neck.X-n.Lean.MM(), n.Bust.MM()
	x := math.Max(math.Min(bust-0.5*inch, side-0.4*inch), math.Min(bust, side-0.75*inch))
	return geom.Point{X: x, Y: (n.Depth - n.Dip).MM()}
}

// sweetheart meets the centre at 45 degrees, arches over the bust and runs
// up to the shoulder like a square neck.
func (n Neckline) sweetheart() geom.Path {
	c, l, k := n.Centre(), n.Lobe(), n.Corner()
	dip := 0.75 * n.Dip.MM()
	return geom.Path{
		geom.Curve(c, geom.Point{X: dip, Y: c.Y - dip}, geom.Point{X: l.X / 2, Y: l.Y}, l),
		geom.Curve(l, geom.Point{X: l.X + float64(0.4*(k.X-l.X)), Y: l.Y}, k.Lerp(l, 1.0/3), k),
	}.Then(n.upright(k))
}

// Facing is the outer edge of the neck's facing, from the centre to the
// shoulder: a line of the same kind, width along the shoulder and depth below
// the neck at the centre. foot is the level of the foot of an opening in the
// neck, which the facing must cover; zero without one.
func (n Neckline) Facing(along geom.Vector, width, depth measure.Length, foot float64) geom.Path {
	outer := n
	outer.Neck = n.Neck.Add(along.Scale(width.MM()))
	outer.Depth = measure.Length(n.Centre().Y) + depth
	if foot > 0 {
		outer.Depth = max(outer.Depth, measure.Length(foot)+measure.Inch)
	}
	switch n.Style {
	case FunnelNeckline:
		outer.Style = RoundNeckline
	case SquareNeckline, SweetheartNeckline:
		// The side keeps its width down to the level of the lower edge.
		corner := geom.Point{X: n.Corner().X + width.MM(), Y: outer.Depth.MM()}
		return geom.Lines(outer.Centre(), corner).Then(outer.upright(corner))
	}
	return outer.Curve()
}

// Strap is the least width between a neck and an armhole.
func Strap(neck, armhole geom.Path) measure.Length {
	least := math.Inf(1)
	for _, q := range neck.Flatten(strapTolerance) {
		if _, _, d := armhole.Nearest(q); d < least {
			least = d
		}
	}
	return measure.Length(least)
}

// strapTolerance: a strap is judged to the nearest sixteenth.
const strapTolerance = 0.2
