package export

import (
	"strings"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const nameSize = 5.0 // lettering beside lines

// lineNames are the words beside lines: grain, balance lines, darts. Each
// looks for room along its line and is left out where there is none.
func lineNames(p pattern.Piece, r *room) []Item {
	var out []Item
	put := func(i Item, ok bool) {
		if ok {
			r.take(i.Bounds())
			out = append(out, i)
		}
	}
	if !p.Grain.A.Near(p.Grain.D, onLine) {
		put(along("grain", "grain", geom.Path{p.Grain}, r))
	}
	for _, b := range p.Balance {
		text := strings.ReplaceAll(b.Name, "_", " ")
		if !strings.HasSuffix(text, "line") {
			text += " line"
		}
		put(along(b.Name, text, geom.Path{b.Line}, r))
	}
	for _, d := range p.Darts {
		put(dartName(d, r))
	}
	return out
}

// along places words beside a line, above a level one: in the middle if that
// is free, else as near to it as they fit.
func along(name, text string, line geom.Path, r *room) (Item, bool) {
	long := line.Length()
	way := line.StartTangent()
	turn := upright(way)
	wide := TextWidth(text, nameSize)
	above := pieceCell + descent*nameSize
	for _, side := range [2]float64{1, -1} {
		for k := 0.0; k < 0.9; k += 0.04 {
			for _, part := range [2]float64{0.5 + k/2, 0.5 - k/2} {
				s := long * part
				if s < wide/2 || s > long-wide/2 {
					continue
				}
				at, _ := line.At(s)
				up := geom.Vector{Y: -1}.Turn(turn * degree)
				off := above
				if side < 0 {
					off = -(pieceCell + ascent*nameSize)
				}
				i := Item{
					Role: pattern.RoleText, Kind: Words, Name: name, Text: text,
					At: at.Add(up.Scale(off)), Height: nameSize, Turn: turn, Middle: true,
				}
				if r.free(i.Bounds()) {
					return i, true
				}
			}
		}
	}
	return Item{}, false
}

// dartName says how the dart is pressed, near it.
func dartName(d pattern.Dart, r *room) (Item, bool) {
	text := d.Name
	if text == "" {
		text = "dart"
	}
	if d.Pressed != "" {
		text += ", press " + d.Pressed
	}
	wide, high := TextWidth(text, nameSize), leading*nameSize
	middle := d.Legs[0].Lerp(d.Legs[1], 0.5).Lerp(d.Tip, 0.4)
	at, ok := r.find(wide, high, middle)
	i := Item{
		Role: pattern.RoleText, Kind: Words, Name: d.Name, Text: text,
		At: geom.Point{X: at.X, Y: at.Y + (leading+ascent-descent)/2*nameSize}, Height: nameSize,
	}
	return i, ok
}
