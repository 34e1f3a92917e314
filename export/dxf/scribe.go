package dxf

import (
	"math"
	"strconv"

	"chalkfold/export"
	"chalkfold/pattern/geom"
)

// scribe writes pairs of group code and value.
type scribe struct {
	out           []byte
	scale         float64 // file units in a millimetre
	high          float64 // of the page: y turns round in it
	place         geom.Matrix
	turns, curves points // vertices of the piece so far
}

func (s *scribe) pair(code int, value string) {
	if code < 100 {
		s.out = append(s.out, ' ')
	}
	if code < 10 {
		s.out = append(s.out, ' ')
	}
	s.out = strconv.AppendInt(s.out, int64(code), 10)
	s.out = append(s.out, "\r\n"...)
	s.out = append(s.out, value...)
	s.out = append(s.out, "\r\n"...)
}

// corner is a point as it is written. Points are compared as text, so what is
// on a vertex in the file is exactly on it.
type corner struct{ x, y string }

func (s *scribe) corner(p geom.Point) corner {
	q := s.place.Apply(p)
	return corner{s.number(q.X), s.number(s.high - q.Y)}
}

// number is a length in file units.
func (s *scribe) number(mm float64) string { return fixed(float64(mm * s.scale)) }

// fixed is a number with four decimals, rounded before it is written, and a
// zero without a sign.
func fixed(x float64) string {
	return strconv.FormatFloat(export.Round(x, 1e4), 'f', 4, 64)
}

func (s *scribe) vertex(c corner) {
	s.pair(10, c.x)
	s.pair(20, c.y)
	s.pair(30, "0.0000")
}

// vertex is a corner of a polyline: a turn, or a point on a curve.
type vertex struct {
	corner
	turn bool
}

// smooth is the largest bend, in radians, at which two curves still run on as
// one: half a degree, below what a hand can cut.
const smooth = 0.5 * math.Pi / 180

// vertices flatten a path. A joint is a turn unless two curves meet there
// smoothly: a straight run must stay straight in readers that draw a smooth
// line through curve points.
func (s *scribe) vertices(p geom.Path, closed bool) []vertex {
	var out []vertex
	add := func(q geom.Point, turn bool) {
		v := vertex{s.corner(q), turn}
		if n := len(out); n > 0 && out[n-1].corner == v.corner {
			out[n-1].turn = out[n-1].turn || turn
			return
		}
		out = append(out, v)
	}
	for i, seg := range p {
		if i == 0 {
			add(seg.A, !closed || !p.Closed() || bends(p[len(p)-1], seg))
		}
		if seg.Curved {
			points := geom.Path{seg}.Flatten(flatness)
			for _, q := range points[1 : len(points)-1] {
				add(q, false)
			}
		}
		add(seg.D, i == len(p)-1 || bends(seg, p[i+1]))
	}
	if n := len(out); closed && n > 1 && out[0].corner == out[n-1].corner {
		out = out[:n-1]
	}
	return out
}

func bends(a, b geom.Segment) bool {
	if !a.Curved || !b.Curved {
		return true
	}
	u, v := a.Tangent(1), b.Tangent(0)
	return math.Abs(math.Atan2(u.Cross(v), u.Dot(v))) > smooth
}

func (s *scribe) polyline(layer string, v []vertex, closed bool) {
	if len(v) < 2 {
		return
	}
	flag := "0"
	if closed {
		flag = "1"
	}
	s.pair(0, "POLYLINE")
	s.pair(8, layer)
	s.pair(66, "1")
	s.pair(70, flag)
	s.vertex(corner{"0.0000", "0.0000"})
	for _, q := range v {
		s.pair(0, "VERTEX")
		s.pair(8, layer)
		s.vertex(q.corner)
	}
	s.pair(0, "SEQEND")
	s.pair(8, layer)
}

func (s *scribe) line(layer string, a, b corner) {
	s.pair(0, "LINE")
	s.pair(8, layer)
	s.vertex(a)
	s.pair(11, b.x)
	s.pair(21, b.y)
	s.pair(31, "0.0000")
}

// text writes words that are ASCII already; up is their height in mm.
func (s *scribe) text(layer string, at corner, up, turn float64, words string) {
	s.pair(0, "TEXT")
	s.pair(8, layer)
	s.vertex(at)
	s.pair(40, s.number(up))
	s.pair(1, words)
	if turn != 0 {
		s.pair(50, fixed(math.Mod(turn+360, 360)))
	}
	s.pair(7, "STANDARD")
}

// points are places in the order in which they came, each once.
type points struct {
	list []corner
	seen map[corner]bool
}

func (p *points) add(c corner) {
	if p.seen == nil {
		p.seen = map[corner]bool{}
	}
	if !p.seen[c] {
		p.seen[c] = true
		p.list = append(p.list, c)
	}
}

// note keeps the vertices of a line for the layers of turns and curves.
func (s *scribe) note(v []vertex) {
	for _, q := range v {
		if q.turn {
			s.turns.add(q.corner)
		} else {
			s.curves.add(q.corner)
		}
	}
}

func (s *scribe) dots(layer string, p *points) {
	for _, c := range p.list {
		s.pair(0, "POINT")
		s.pair(8, layer)
		s.vertex(c)
	}
}
