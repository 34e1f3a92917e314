package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// NeckOpening is a slit or a keyhole at the centre front: the line that is
// stitched, from its foot on the fold up to the neck. It is cut along the
// fold and trimmed after it is faced.
type NeckOpening struct {
	Foot geom.Point
	Line geom.Path
	// Meets is where the line runs into the neck, as a length along the neck
	// from the centre: a slit takes a little of the neck away, a keyhole none.
	Meets float64
}

const (
	slitTop  = 3.0 / 16 * inch // half width of a slit at the neck (common practice)
	slitFoot = 1.0 / 32 * inch // one stitch across its point
	// Shares of the length of a keyhole, and of its half width (ours).
	dropWidest, dropHandle, dropFoot = 0.65, 0.30, 0.55
)

// HasNeckOpening says whether the front neck is opened at the centre.
func HasNeckOpening(k pattern.Known) bool {
	s := NeckStyle(k, false)
	return s == SlitNeckline || s == KeyholeNeckline
}

// MostNeckOpening is the longest opening: a longer slit shows, a longer
// keyhole gapes (common practice, no source).
func MostNeckOpening(style string) measure.Length {
	if style == KeyholeNeckline {
		return 5 * measure.Inch
	}
	return 6 * measure.Inch
}

// OpenNeck draws the opening below a neck curve that starts at the centre.
func OpenNeck(style string, neck geom.Path, length, width measure.Length) NeckOpening {
	c := neck.Start()
	l := length.MM()
	foot := c.Add(geom.Vector{Y: l})
	if style == KeyholeNeckline {
		half := width.MM() / 2
		g := geom.Point{X: half, Y: c.Y + float64(dropWidest*l)}
		up := geom.Vector{Y: float64(dropHandle * l)}
		return NeckOpening{Foot: foot, Line: geom.Path{
			geom.Curve(foot, geom.Point{X: dropFoot * half, Y: foot.Y}, g.Add(geom.Vector{Y: float64(dropFoot * (1 - dropWidest) * l)}), g),
			geom.Curve(g, g.Add(up.Scale(-1)), c.Add(up), c),
		}}
	}
	o := NeckOpening{Foot: foot}
	top := c
	if at := neck.AtOut(slitTop); len(at) > 0 {
		top = at[0]
		o.Meets, _, _ = neck.Nearest(top)
	}
	o.Line = geom.Lines(foot, foot.Add(geom.Vector{X: slitFoot}), top)
	return o
}
