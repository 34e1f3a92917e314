package card

import (
	"math"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// run is a stretch of the outline with one name, on both lines.
type run struct {
	edge   string
	stitch line
	cut    line
	mouth  bool // between the legs of a dart: cut folded, not marked
	edges  []pattern.Edge
}

// runs divides the ring of the piece by the names of its edges and finds the
// stretch of the cut line that belongs to each.
func runs(p *pattern.Piece) []run {
	var out []run
	for _, e := range p.Edges {
		if n := len(out); n > 0 && out[n-1].edge == e.Name {
			out[n-1].edges = append(out[n-1].edges, e)
			continue
		}
		out = append(out, run{edge: e.Name, mouth: e.Name == "dart", edges: []pattern.Edge{e}})
	}
	for i := range out {
		var path geom.Path
		for _, e := range out[i].edges {
			path = path.Then(e.Stitch)
		}
		out[i].stitch = flatten(path)
	}
	ring := flatten(p.CutLine)
	if len(out) == 0 || ring.empty() {
		return nil
	}
	long := ring.long()
	twice := ring.then(ring)
	ends := make([]float64, len(out))
	for i := range out {
		ends[i] = boundary(p, &out[i], &out[(i+1)%len(out)], twice, long)
	}
	base := ends[len(out)-1]
	from := 0.0
	for i := range out {
		to := around(ends[i]-base, long)
		switch {
		case i == len(out)-1:
			to = long
		case to > long-0.01 && i < len(out)/2:
			to = 0
		}
		to = max(to, from)
		out[i].cut = twice.part(base+from, base+to)
		from = to
	}
	return out
}

func around(s, long float64) float64 {
	s = math.Mod(s, long)
	if s < 0 {
		s += long
	}
	return s
}

// boundary is the length along the cut line at which run a ends and b begins:
// the sharpest corner between the cut edges of both, else the middle.
func boundary(p *pattern.Piece, a, b *run, twice line, long float64) float64 {
	if a.mouth || b.mouth {
		corner := a.stitch.end()
		best, dist := corner, math.Inf(1)
		for _, d := range p.Darts {
			for i, leg := range d.Legs {
				if x := leg.Dist(corner); x < dist {
					best, dist = d.Ends[i], x
				}
			}
		}
		s, _ := twice.nearest(best)
		return around(s, long)
	}
	from, _ := twice.nearest(cutOf(a.edges[len(a.edges)-1]).End())
	to, _ := twice.nearest(cutOf(b.edges[0]).Start())
	from, to = around(from, long), around(to, long)
	gap := around(to-from, long)
	if gap > long/2 { // the cut edges overlap at an inner corner
		from, gap = to, long-gap
	}
	const slack = 0.5   // mm; how far an edge's own cut line may end from its corner
	if from < 2*slack { // look across the seam of the ring
		from += long
	}
	best, sharp := from+gap/2, 0.0
	for i := 1; i < len(twice.pts)-1; i++ {
		s := twice.s[i]
		if s < from-slack || s > from+gap+slack || !twice.corner[i] {
			continue
		}
		if r := radians(twice.pts[i-1].To(twice.pts[i]), twice.pts[i].To(twice.pts[i+1])); r > sharp {
			best, sharp = s, r
		}
	}
	return around(best, long)
}

// cutOf is the cut line of the edge; where nothing is allowed it is the
// stitch line.
func cutOf(e pattern.Edge) geom.Path {
	if len(e.Cut) == 0 {
		return e.Stitch
	}
	return e.Cut
}
