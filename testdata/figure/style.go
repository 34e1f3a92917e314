package figure

import (
	"encoding/json"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Curve is a worked-out line: parts of 2 points are straight, of 4 cubic.
type Curve [][][2]float64

// Path is the line in millimetres.
func (c Curve) Path() geom.Path {
	var out geom.Path
	for _, part := range c {
		p := make([]geom.Point, len(part))
		for i, q := range part {
			p[i] = Point(q)
		}
		if len(p) == 2 {
			out = append(out, geom.Straight(p[0], p[1]))
		} else {
			out = append(out, geom.Curve(p[0], p[1], p[2], p[3]))
		}
	}
	return out
}

// Point is a point of the reference in millimetres.
func Point(inches [2]float64) geom.Point {
	return geom.Point{X: inches[0] * 25.4, Y: inches[1] * 25.4}
}

// Styles is the worked-out style options of figure P36: groups of options,
// each an object of its own. Group reads one of them.
type Styles map[string]json.RawMessage

// StylesP36 reads the style options worked out for P36.
func StylesP36(t testing.TB) Styles {
	t.Helper()
	var s Styles
	Read(t, "style-p36.json", &s)
	return s
}

// SkirtsP36 reads the waist seam and the skirts worked out for P36.
func SkirtsP36(t testing.TB) Styles {
	t.Helper()
	var s Styles
	Read(t, "skirt-p36.json", &s)
	return s
}

// Group reads a group into v.
func (s Styles) Group(t testing.TB, name string, v any) {
	t.Helper()
	if err := json.Unmarshal(s[name], v); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
}

// Styled is figure P36 with its stated options, but for those left out, with
// its head girth, and with choices of pick kind made.
func Styled(t testing.TB, picks map[pattern.ChoiceID]string, leaveOut ...pattern.ChoiceID) pattern.Job {
	t.Helper()
	job := P36(t, pattern.Measured).Job(pattern.Measured).WithBody(measure.HeadGirth, In(22))
	for _, id := range leaveOut {
		job = job.WithoutStyle(id)
	}
	for id, p := range picks {
		job = job.WithStyle(id, pattern.PickValue(p))
	}
	return job
}
