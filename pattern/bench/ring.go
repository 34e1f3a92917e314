package bench

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Side is one edge as a garment hands it to Ring: its stitching line in the
// direction of the ring, and how the cutting line lies beside it. Where the
// allowance is part of the figure, Cut is given and Stitch lies inside it.
type Side struct {
	Name      string
	Stitch    geom.Path
	Cut       geom.Path      // nil: Stitch moved out by Allowance
	Allowance measure.Length // square to the stitch line
	Corner    pattern.Corner // at its end
	SewnTo    pattern.EdgeRef
	Role      pattern.Role
}

const (
	// OffsetTolerance: two flattenings at 0.02 mm and this stay within the
	// 0.05 mm that readers of the files are promised.
	OffsetTolerance = 0.002
	// mitreLimit: a corner of cut edges that runs out farther than this from
	// its stitch corner is cut blunt (common practice, no source).
	mitreLimit = 3 * 25.4
)

// Ring closes the sides into the edges of a piece. The stitching lines must
// follow each other end to start; the cutting lines are joined by the
// corner's own treatment.
func Ring(sides []Side) (edges []pattern.Edge, stitch, cut geom.Path) {
	cuts := make([]geom.Path, len(sides))
	for i, s := range sides {
		cuts[i] = s.Cut
		if cuts[i] == nil {
			cuts[i] = s.Stitch
			if s.Allowance != 0 {
				cuts[i] = s.Stitch.Offset(s.Allowance.MM(), OffsetTolerance)
			}
		}
	}
	bridges := make([]geom.Path, len(sides))
	for i := range sides {
		j := (i + 1) % len(sides)
		switch sides[i].Corner {
		case pattern.Square:
			bridges[i] = geom.Lines(cuts[i].End(), cuts[j].Start())
		case pattern.Mirrored:
			cuts[i], bridges[i], cuts[j] = mirrored(cuts[i], cuts[j], sides[i], sides[j])
		case pattern.None:
		default:
			cuts[i], cuts[j] = geom.Join(cuts[i], cuts[j], mitreLimit)
		}
	}
	stitches, around := make([]geom.Path, 0, len(sides)), make([]geom.Path, 0, 2*len(sides))
	edges = make([]pattern.Edge, 0, len(sides))
	for i, s := range sides {
		stitches = append(stitches, s.Stitch)
		around = append(around, cuts[i], bridges[i])
		edges = append(edges, pattern.Edge{
			Name: s.Name, Stitch: s.Stitch, Cut: cuts[i], Allowance: s.Allowance,
			Corner: s.Corner, SewnTo: s.SewnTo, Role: s.Role,
		})
	}
	return edges, geom.Chain(stitches...), geom.Chain(around...)
}

// mirrored makes the corner of a turned hem. Below the hem line the cut edge
// of a seam is the mirror image of the edge above it, so that the turned hem
// lies flat on the inside. One of a and b belongs to the hem.
func mirrored(a, b geom.Path, sa, sb Side) (geom.Path, geom.Path, geom.Path) {
	if sa.Name == "hem" {
		// hem first, then a centre edge: the same with the direction turned
		rb, bridge, ra := mirrored(b.Reverse(), a.Reverse(), flip(sb), flip(sa))
		return ra.Reverse(), bridge.Reverse(), rb.Reverse()
	}
	fold := sb.Stitch // the hem line
	line := geom.Line{At: fold.Start(), Dir: fold.Start().To(fold.End())}
	if len(fold) > 1 || len(fold) == 1 && fold[0].Curved {
		return turnedUnder(a, b, geom.Line{At: fold.Start(), Dir: fold.StartTangent()})
	}
	// run the seam's cut edge to the hem line
	seam := ToLine(a, line)
	image := seam.Reverse().Transform(geom.MirrorIn(line))
	// and its image to the raw edge of the hem
	raw := b
	low := geom.Line{At: raw.Start(), Dir: raw.StartTangent()}
	down := ToLine(image, low)
	end := down.End()
	rest := raw
	if len(rest) > 0 {
		rest = geom.Lines(end, raw.End())
		if len(raw) > 1 {
			rest = geom.Lines(end, raw[0].D).Then(raw[1:])
		}
	}
	return seam, down, rest
}

// turnedUnder is the same where the hem is no single straight line: the fold
// follows its direction at the seam, and the image ends where it meets the raw
// edge.
func turnedUnder(a, raw geom.Path, line geom.Line) (seam, down, rest geom.Path) {
	seam = ToLine(a, line)
	image := seam.Reverse().Transform(geom.MirrorIn(line))
	if c := geom.Cross(image, raw); len(c) > 0 {
		down, _ = image.Split(c[0].S)
		_, rest = raw.Split(c[0].T)
		return seam, down, rest
	}
	down = ToLine(image, geom.Line{At: raw.Start(), Dir: raw.StartTangent()})
	return seam, down, geom.Lines(down.End(), raw.Start()).Then(raw)
}

func flip(s Side) Side {
	s.Stitch = s.Stitch.Reverse()
	return s
}

// ToLine cuts the path off where it first meets the line, or runs its last
// straight on until it does.
func ToLine(p geom.Path, l geom.Line) geom.Path {
	far := 1e5
	d := l.Dir.Unit()
	long := geom.Lines(l.At.Add(d.Scale(-far)), l.At.Add(d.Scale(far)))
	if c := geom.Cross(p, long); len(c) > 0 {
		cut, _ := p.Split(c[0].S)
		return cut
	}
	at, ok := geom.Meet(geom.Line{At: p.End(), Dir: p.EndTangent()}, l)
	if !ok {
		return p
	}
	return p.Then(geom.Lines(p.End(), at))
}
