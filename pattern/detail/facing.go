package detail

import (
	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// FacingLess is how much less allowance a facing has at the edge it faces:
// that is what 'cut 1/16 smaller' means, so that the seam rolls inwards.
const FacingLess = measure.Inch / 16

// NeckFacingWidth is the width at the shoulder: no more than half of it, so
// that neck and armhole facing do not lie double.
func NeckFacingWidth(chosen, shoulder measure.Length) measure.Length {
	return max(0, min(chosen, (shoulder/2).Down(measure.Inch/8)))
}

// ArmholeFacingWidth is the width all along the armhole: what the neck
// facing leaves of the shoulder, and clear of the dart by 1/4. A zero
// dartBelow means that there is no dart.
func ArmholeFacingWidth(chosen, shoulder, neckWidth, dartBelow measure.Length) measure.Length {
	w := min(chosen, (shoulder - neckWidth).Down(measure.Inch/8))
	if dartBelow > 0 {
		w = min(w, dartBelow-measure.Inch/4)
	}
	return max(0, w)
}

// NeckFacingOuter is the outer edge of a neck facing, from the centre to the
// shoulder: a curve of the same kind as the neck.
func NeckFacingOuter(neck geom.Point, dir, down geom.Vector, width, depth measure.Length, back bool) geom.Path {
	return RoundNeck(neck.Add(dir.Scale(width.MM())), down, depth, back)
}

// Parallel is the line that runs beside an armhole, inside the garment,
// from the shoulder to the side seam, cut off or run on to meet both.
func Parallel(armhole geom.Path, width measure.Length, shoulder geom.Line, side geom.Path) geom.Path {
	p := armhole.Offset(-width.MM(), parallelTolerance)
	if at, ok := geom.Meet(geom.Line{At: p.Start(), Dir: p.StartTangent()}, shoulder); ok && at.Dist(p.Start()) > 1e-6 && at.Dist(p.Start()) < inch {
		p = geom.Lines(at, p.Start()).Then(p)
	}
	return ToPath(p, side)
}

const parallelTolerance = 0.002

// ToPath cuts p where it first crosses q, or runs its end straight on until
// it does.
func ToPath(p, q geom.Path) geom.Path {
	if c := geom.Cross(p, q); len(c) > 0 {
		cut, _ := p.Split(c[0].S)
		return cut
	}
	long := geom.Lines(p.End(), p.End().Add(p.EndTangent().Scale(100*inch)))
	if c := geom.Cross(long, q); len(c) > 0 {
		return p.Then(geom.Lines(p.End(), c[0].At))
	}
	return p
}
