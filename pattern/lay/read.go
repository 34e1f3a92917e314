package lay

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// mostBytes is the size of a file of outlines that is read.
const mostBytes = 32 << 20

// ReadPieces reads a plain file of outlines: one JSON object with name, width,
// unit, along, turn and pieces, as the open packing instances are written.
// Such pieces are never mirrored and their places are not set to the tape.
func ReadPieces(data []byte) (Problem, error) {
	if len(data) > mostBytes {
		return Problem{}, &measure.Refusal{Read: fmt.Sprintf("%d bytes", len(data)), Wrong: "that is too large a file of outlines", Works: "at most 32 MiB"}
	}
	top, err := object("the file", data, "name", "source", "width", "unit", "along", "turn", "pieces")
	if err != nil {
		return Problem{}, err
	}
	r := reader{scale: PerMM}
	p := Problem{Name: r.text("name", top["name"]), Unit: measure.Mm, Cloth: Cloth{Fold: Flat}}
	r.unit(r.text("unit", top["unit"]))
	if along := r.text("along", top["along"]); along != "" && along != "y" {
		r.refuse("along", measure.Quoted(along), "only y can run along the cloth", `"y", or leave the key out`)
	}
	width := r.number("width", top["width"])
	p.Cloth.Width = r.steps("width", width)
	turns := r.turns(top["turn"])
	var pieces []json.RawMessage
	if raw, ok := top["pieces"]; ok {
		r.list("pieces", raw, &pieces)
	}
	if r.err != nil {
		return Problem{}, r.err
	}
	if err := p.Cloth.check(); err != nil {
		return Problem{}, err
	}
	total, corners := 0, 0
	for i, raw := range pieces {
		it := r.piece(i, raw, turns)
		if r.err != nil {
			return Problem{}, r.err
		}
		total += min(it.Count, mostPieces+1)
		corners += len(it.Outline)
		p.Items = append(p.Items, it)
		if total > mostPieces || corners > mostCorners {
			break
		}
	}
	return p, p.Check()
}

// reader keeps the first thing that it could not read.
type reader struct {
	scale float64 // steps in one of the file's unit
	err   error
}

func (r *reader) refuse(where, read, wrong, works string) {
	if r.err == nil {
		r.err = &measure.Refusal{Where: where, Read: read, Wrong: wrong, Works: works}
	}
}

// object reads a JSON object with known keys only.
func object(where string, data []byte, known ...string) (map[string]json.RawMessage, error) {
	var m map[string]json.RawMessage
	if err := json.Unmarshal(data, &m); err != nil || m == nil {
		return nil, &measure.Refusal{Where: where, Read: measure.Quoted(string(data[:min(len(data), 60)])), Wrong: "that is no JSON object", Works: "an object in braces with the keys " + strings.Join(known, ", ")}
	}
	var strange []string
	for k := range m {
		if !slices.Contains(known, k) {
			strange = append(strange, k)
		}
	}
	if len(strange) > 0 {
		sort.Strings(strange)
		return nil, &measure.Refusal{Where: where, Read: "the key " + measure.Quoted(strange[0]), Wrong: "a file of outlines has no such key", Works: "only " + strings.Join(known, ", ")}
	}
	return m, nil
}

func (r *reader) text(where string, raw json.RawMessage) string {
	if raw == nil {
		return ""
	}
	var s string
	if json.Unmarshal(raw, &s) != nil {
		r.refuse(where, measure.Quoted(string(raw)), "that is no text", "a text in quotes")
	}
	return s
}

func (r *reader) number(where string, raw json.RawMessage) float64 {
	var x *float64
	if raw == nil || json.Unmarshal(raw, &x) != nil || x == nil || math.IsNaN(*x) || math.IsInf(*x, 0) {
		read := "nothing"
		if raw != nil {
			read = measure.Quoted(string(raw))
		}
		r.refuse(where, read, "that is no number", "a plain number")
		return 0
	}
	return *x
}

func (r *reader) list(where string, raw json.RawMessage, into any) {
	if json.Unmarshal(raw, into) != nil {
		r.refuse(where, measure.Quoted(string(raw)), "that is no such list", "a list in square brackets")
	}
}

func (r *reader) unit(name string) {
	if name == "" || name == "none" {
		return
	}
	u, err := measure.ParseUnit(name)
	if err != nil {
		r.refuse("unit", measure.Quoted(name), "that is no unit", "none, mm, cm or in")
		return
	}
	r.scale = PerMM * u.Length(1).MM()
}

// steps rounds a number of the file to whole steps.
func (r *reader) steps(where string, x float64) int64 {
	v := math.Floor(x*r.scale + 0.5)
	if math.Abs(v) > 2*mostSteps || math.IsNaN(v) {
		r.refuse(where, fmt.Sprintf("%g", x), "no cloth is so large", "lengths of up to 53 m")
		return 0
	}
	return int64(v)
}

func (r *reader) turns(raw json.RawMessage) []int {
	if raw == nil {
		return []int{0}
	}
	var list []json.RawMessage
	r.list("turn", raw, &list)
	var out []int
	for _, x := range list {
		t := r.number("turn", x)
		if r.err == nil && (t < 0 || t > 270 || math.Mod(t, 90) != 0) {
			r.refuse("turn", measure.Quoted(string(x)), "pieces are not turned so", "0, 90, 180 and 270")
		}
		out = append(out, int(t))
	}
	if r.err == nil && len(out) == 0 {
		r.refuse("turn", "an empty list", "a piece needs a turn to lie at", "[0], or [0, 180]")
	}
	return out
}

func (r *reader) piece(i int, raw json.RawMessage, turns []int) Item {
	where := fmt.Sprintf("piece %d", i+1)
	m, err := object(where, raw, "id", "count", "outline")
	if err != nil {
		r.err = err
		return Item{}
	}
	it := Item{ID: r.text(where+" id", m["id"]), Cut: pattern.Single, Count: 1, Turns: turns}
	if it.ID == "" {
		it.ID = where
	}
	where = it.ID
	if c, ok := m["count"]; ok {
		n := r.number(where+" count", c)
		if r.err == nil && (n < 1 || n != math.Floor(n) || n > mostPieces) {
			r.refuse(where, "count "+string(bytes.TrimSpace(c)), "so many cannot be laid", fmt.Sprintf("a whole number from 1 to %d", mostPieces))
			return it
		}
		it.Count = int(n)
	}
	var corners []json.RawMessage
	if m["outline"] == nil {
		r.refuse(where, "no outline", "a piece has one", "a list of corners [x, y]")
		return it
	}
	r.list(where+" outline", m["outline"], &corners)
	if len(corners) > mostCorners {
		r.refuse(where, fmt.Sprintf("%d corners", len(corners)), "that is more than can be checked", fmt.Sprintf("at most %d", mostCorners))
		return it
	}
	for k, c := range corners {
		it.Outline = append(it.Outline, r.corner(where, k, c))
		if r.err != nil {
			return it
		}
	}
	r.ready(&it)
	return it
}

func (r *reader) corner(where string, k int, raw json.RawMessage) Point {
	var xy []float64
	if json.Unmarshal(raw, &xy) != nil || len(xy) != 2 {
		r.refuse(fmt.Sprintf("%s corner %d", where, k+1), measure.Quoted(string(raw)), "a corner is two numbers, and a piece has one ring without holes", "[x, y]")
		return Point{}
	}
	name := fmt.Sprintf("%s corner %d", where, k+1)
	return Point{r.steps(name, xy[0]), r.steps(name, xy[1])}
}

// ready tidies the outline and puts it to its box corner.
func (r *reader) ready(it *Item) {
	n := len(it.Outline)
	if n > 0 {
		// Before tidying, so that the corner named is the one in the file.
		if i, j, ok := properCrossing(it.Outline); ok {
			r.refuse(it.ID, fmt.Sprintf("edges %d and %d", i+1, j+1), "the outline crosses itself near "+at(it.Outline[j]), "give the corners in order, once round")
			return
		}
	}
	it.Outline = tidy(it.Outline)
	if len(it.Outline) < 3 {
		r.refuse(it.ID, fmt.Sprintf("%d corners", n), "the outline has no area", "at least 3 corners that do not lie on one line")
		return
	}
	lo, _ := bounds(it.Outline)
	it.Outline = moved(it.Outline, Point{-lo.X, -lo.Y})
}
