package card

import (
	"bytes"
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// A reader of the text card that shares nothing with the writer: it knows the
// paper alone, as the cutter does.

type readRow struct {
	join, name  string
	cut, stitch *geom.Point // millimetres
	aside       bool        // the stitching place, or the cutting one, is in brackets
}

type readPiece struct {
	title string
	rows  []readRow
}

var (
	rowLine  = regexp.MustCompile(`^  (start|ruled|curve|dart) +`)
	gapsIn   = regexp.MustCompile(` {2,}|\|`)
	titledAs = regexp.MustCompile(`^\d+ of \d+ (.+):`)
)

func readCard(text string, unit float64) ([]readPiece, error) {
	var out []readPiece
	for n, l := range strings.Split(text, "\n") {
		if m := titledAs.FindStringSubmatch(l); m != nil {
			out = append(out, readPiece{title: strings.ToLower(m[1])})
			continue
		}
		if !rowLine.MatchString(l) {
			continue
		}
		var f []string
		for _, c := range gapsIn.Split(strings.TrimSpace(l), -1) {
			if c = strings.TrimSpace(c); c != "" {
				f = append(f, c)
			}
		}
		if len(f) != 6 || len(out) == 0 {
			return nil, fmt.Errorf("line %d has %d columns: %q", n+1, len(f), l)
		}
		r := readRow{join: f[0], name: f[1]}
		var err error
		if r.cut, err = readPlace(f[2], f[3], unit, &r.aside); err != nil {
			return nil, err
		}
		if r.stitch, err = readPlace(f[4], f[5], unit, &r.aside); err != nil {
			return nil, err
		}
		p := &out[len(out)-1]
		p.rows = append(p.rows, r)
	}
	return out, nil
}

func readPlace(down, out string, unit float64, aside *bool) (*geom.Point, error) {
	if down == "-" {
		return nil, nil
	}
	if strings.HasPrefix(down, "(") {
		*aside = true
		return nil, nil
	}
	y, err := readLength(strings.TrimPrefix(down, "up "))
	if err != nil {
		return nil, err
	}
	x, err := readLength(strings.TrimPrefix(out, "beyond the centre "))
	if err != nil {
		return nil, err
	}
	if strings.HasPrefix(down, "up ") {
		y = -y
	}
	if strings.HasPrefix(out, "beyond") {
		x = -x
	}
	return &geom.Point{X: x * unit, Y: y * unit}, nil
}

func readLength(s string) (float64, error) {
	sum := 0.0
	for _, part := range strings.Fields(s) {
		num, den, broken := strings.Cut(part, "/")
		a, err := strconv.ParseFloat(num, 64)
		if err != nil {
			return 0, err
		}
		if broken {
			b, err := strconv.ParseFloat(den, 64)
			if err != nil {
				return 0, err
			}
			a /= b
		}
		sum += a
	}
	return sum, nil
}

// chalk is the line that the cutter draws: all marks in order, closed along
// the fold or centre line; with a dart it begins at the lower leg and ends at
// the upper one, for what lies between is cut folded.
func (p readPiece) chalk(cut bool) []geom.Point {
	var before, after []geom.Point
	darted := false
	for _, r := range p.rows {
		at := r.stitch
		if cut {
			at = r.cut
		}
		if r.join == "dart" {
			darted, before, after = true, after, nil
		}
		if at != nil {
			after = append(after, *at)
		}
	}
	if darted {
		return append(after, before...)
	}
	return append(after, after[0])
}

// drafted is the line as drafted, from where the chalk line begins to where it
// ends.
func drafted(p pattern.Piece, cut bool) geom.Path {
	ring := p.Stitch
	if cut {
		ring = p.CutLine
	}
	if len(p.Darts) == 0 {
		return ring
	}
	d := p.Darts[0]
	ends := d.Legs
	if cut {
		ends = d.Ends
	}
	upper, _, _ := ring.Nearest(ends[0])
	lower, _, _ := ring.Nearest(ends[1])
	return ring.Part(lower, ring.Length()).Then(ring.Part(0, upper))
}

// inOrder says that the marks follow the line, so that no chord is near it by
// chance only.
func inOrder(chalk, line []geom.Point) bool {
	const slack = 5 // mm; two roundings
	closed := line[0].Near(line[len(line)-1], 0.01)
	last := 0.0
	for i, p := range chalk {
		if closed && (i == 0 || i == len(chalk)-1) {
			continue // start and end are one place
		}
		along, at, least := 0.0, 0.0, 1e9
		for j := 1; j < len(line); j++ {
			q, r := line[j-1], line[j]
			if d := toLine(p, line[j-1:j+1]); d < least {
				least, at = d, along+min(max(q.To(p).Dot(q.To(r).Unit()), 0), q.Dist(r))
			}
			along += q.Dist(r)
		}
		if at < last-slack {
			return false
		}
		last = at
	}
	return true
}

// apart is the largest distance between two lines, both ways.
func apart(a, b []geom.Point) float64 {
	return max(oneWay(a, b), oneWay(b, a))
}

func oneWay(a, b []geom.Point) float64 {
	const every = 5.0 // mm; between two of these a chord gains nothing to speak of
	most := 0.0
	for i := 1; i < len(a); i++ {
		n := int(a[i-1].Dist(a[i])/every) + 1
		for k := 0; k <= n; k++ {
			p := a[i-1].Lerp(a[i], float64(k)/float64(n))
			most = max(most, toLine(p, b))
		}
	}
	return most
}

func toLine(p geom.Point, b []geom.Point) float64 {
	least := 1e9
	for j := 1; j < len(b); j++ {
		q, r := b[j-1], b[j]
		if min(q.X, r.X)-p.X > least || p.X-max(q.X, r.X) > least || min(q.Y, r.Y)-p.Y > least || p.Y-max(q.Y, r.Y) > least {
			continue
		}
		v, w, t := q.To(r), q.To(p), 0.0
		if l := v.Dot(v); l > 0 {
			t = min(max(w.Dot(v)/l, 0), 1)
		}
		least = min(least, p.Dist(q.Lerp(r, t)))
	}
	return least
}

// readBack writes the card of a sheet, reads it, and says how far the chalked
// lines are from the drafted ones and what is wrong otherwise.
func readBack(s *pattern.Sheet, u measure.Unit) (float64, error) {
	var b bytes.Buffer
	if err := WriteText(&b, s, Options{Unit: u}); err != nil {
		return 0, err
	}
	read, err := readCard(b.String(), u.Length(1).MM())
	if err != nil {
		return 0, err
	}
	most, n := 0.0, 0
	for _, p := range s.Pieces {
		if isTraced(&p) {
			continue
		}
		if n >= len(read) || read[n].title != strings.ToLower(p.Title) {
			return 0, fmt.Errorf("%s is not on the card", p.Title)
		}
		for _, cut := range []bool{true, false} {
			chalk, line := read[n].chalk(cut), drafted(p, cut).Flatten(0.02)
			most = max(most, apart(chalk, line))
			if !inOrder(chalk, line) {
				return most, fmt.Errorf("%s: the marks go to and fro", p.ID)
			}
		}
		if err := named(s, p, b.String(), u); err != nil {
			return most, err
		}
		n++
	}
	if n != len(read) {
		return most, fmt.Errorf("%d pieces, %d on the card", n, len(read))
	}
	return most, nil
}

// named looks for both numbers of every named point in one line of the card.
func named(s *pattern.Sheet, p pattern.Piece, text string, u measure.Unit) error {
	g := gridOf(u)
	for _, name := range []string{"neck_point", "shoulder_end", "neck_centre", "underarm", "waist", "hip", "knee", "hem_side"} {
		at, ok := s.Point(p.ID, name)
		if !ok {
			continue
		}
		down, out := measure.Length(at.Y).Near(g.step), measure.Length(at.X).Near(g.step)
		say := u.Tape(down)
		if down < 0 {
			say = "up " + u.Tape(-down)
		}
		row := regexp.MustCompile(`(?m)^  \w+ .*[ (]` + regexp.QuoteMeta(say) + `\)? +\(?` + regexp.QuoteMeta(u.Tape(out)) + `\)?( |$)`)
		if !row.MatchString(text) {
			return fmt.Errorf("%s %s: no row holds down %s, out %s", p.ID, name, say, u.Tape(out))
		}
	}
	return nil
}
