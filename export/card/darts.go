package card

import (
	"fmt"
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// darts says how the darts are marked, after everything else.
func (m *marking) darts() []string {
	var out []string
	for k, d := range m.piece.Darts {
		switch {
		case !d.Fisheye:
			out = append(out, m.edgeDart(d)...)
		case k > 0 && m.piece.Darts[k-1].Fisheye && m.piece.Darts[k-1].Foot == d.Tip:
			// the other half of the one before
		default:
			out = append(out, m.fisheye(d)...)
		}
	}
	return out
}

// place is where a point is marked, in words.
func (m *marking) place(p geom.Point) string {
	at := m.grid.spot(p)
	m.rounding = max(m.rounding, at.Dist(p))
	return m.grid.at(placeOf(at))
}

// edgeDart is a dart that begins at an edge.
func (m *marking) edgeDart(d pattern.Dart) []string {
	return []string{
		fmt.Sprintf("%s, last of all. Tip: %s.", upperFirst(dartName(d)), m.place(d.Tip)),
		fmt.Sprintf("Legs: rule from the tip to the stitching places of the dart's two rows, and on to their cutting places. Each is %s long to the stitching line, %s apart there.",
			m.grid.say(d.Leg), m.grid.say(d.Intake)),
		fmt.Sprintf("Fold it %s on its legs and pin it BEFORE the %s is ruled and cut across it: so the cap cuts itself. Unfolded, the cap's stitching point lies %s.",
			pressed(d.Pressed), m.dartEdge(d), m.place(d.Cap)),
	}
}

// fisheye is a dart inside the piece, pointed at both ends.
func (m *marking) fisheye(d pattern.Dart) []string {
	name, _, _ := strings.Cut(dartName(d), ",")
	return []string{
		fmt.Sprintf("%s, inside the piece: nothing is cut there. Points: %s; and %s.", upperFirst(name), m.place(d.Tip), m.place(d.Foot)),
		fmt.Sprintf("Widest: %s; and %s. It takes up %s there.", m.place(d.Legs[0]), m.place(d.Legs[1]), m.grid.say(d.Intake)),
		"Rule from each point to both; sewn, it is folded along its middle, line on line, and pressed " + pressed(d.Pressed) + ".",
	}
}

func dartName(d pattern.Dart) string {
	if d.Name == "" {
		return "dart"
	}
	return d.Name
}

// dartEdge is the edge that a dart interrupts.
func (m *marking) dartEdge(d pattern.Dart) string {
	best, name := 0.0, "side"
	for i, e := range m.piece.Edges {
		if e.Name == "dart" || e.Role == pattern.RoleFold || len(e.Stitch) == 0 {
			continue
		}
		_, _, off := e.Stitch.Nearest(d.Legs[0])
		if i == 0 || off < best {
			best, name = off, e.Name
		}
	}
	return plainName(name)
}

// pressed is the way a dart is pressed, to be said after a verb.
func pressed(way string) string {
	if way == "" {
		return "down"
	}
	return way
}
