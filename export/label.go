package export

import (
	"fmt"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// labelWords are the lines of a piece's label block, the piece itself first.
func labelWords(p pattern.Piece, sheet *pattern.Sheet, u measure.Unit) []string {
	lines := []string{
		fmt.Sprintf("%s, %d%sof%s%d", p.Title, p.Number, together, together, p.Of),
		heading(Facts{Client: sheet.Job.Client.Name, Garment: plainTitle(sheet.Garment)}),
		cutWords(p),
		clothWords(p),
	}
	if w := allowanceWords(p, u); w != "" {
		lines = append(lines, w)
	}
	lines = append(lines, "Grain: along the long arrow")
	if d := sheet.Job.Client.Measured; !d.IsZero() {
		lines = append(lines, "Measured "+day(d))
	}
	return lines
}

// heading is what is made and for whom.
func heading(f Facts) string {
	if f.Client == "" {
		return f.Garment
	}
	return f.Garment + " for " + f.Client
}

// plainTitle is an id as words.
func plainTitle(id string) string {
	words := strings.ReplaceAll(id, "_", " ")
	if words == "" {
		return "Garment"
	}
	return strings.ToUpper(words[:1]) + words[1:]
}

func day(d pattern.Date) string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

// cutWords is the cut count as a cutter says it.
func cutWords(p pattern.Piece) string {
	n := strconv.Itoa(max(p.Count, 1))
	switch p.Cut {
	case pattern.OnFold:
		return "Cut " + n + " on fold"
	case pattern.Pair:
		if p.Count <= 2 {
			return "Cut 2 (one pair)"
		}
		return "Cut " + n + " (pairs)"
	}
	return "Cut " + n
}

func clothWords(p pattern.Piece) string {
	cloth := p.Cloth
	if cloth == "" {
		cloth = "main"
	}
	if len(p.Also) == 0 {
		return "Cloth: " + cloth
	}
	return "Cloth: " + cloth + "; the same of " + strings.Join(p.Also, " and ") + ", cut net by the stitch line"
}

// allowanceWords say which allowances are in the cut line, edge by edge.
func allowanceWords(p pattern.Piece, u measure.Unit) string {
	drawn := allowances(p)
	if len(drawn) == 0 {
		return "No allowance: cut on the line"
	}
	var names []string
	widths := map[string][]string{}
	for _, a := range drawn {
		name := plainEdge(a.edge)
		if _, known := widths[name]; !known {
			names = append(names, name)
		}
		if w := u.Tape(a.width); !contains(widths[name], w) {
			widths[name] = append(widths[name], w)
		}
	}
	for _, e := range p.Edges {
		name := plainEdge(e.Name)
		if _, known := widths[name]; !known && e.Role != pattern.RoleFold && e.Allowance <= 0 {
			names = append(names, name)
			widths[name] = []string{"none"}
		}
	}
	parts := make([]string, len(names))
	for i, n := range names {
		parts[i] = strings.ReplaceAll(n+" "+strings.Join(widths[n], " and "), " ", together)
	}
	return "Allowances included, in " + unitWords[u] + ": " + strings.Join(parts, ", ")
}

// unitWords are the units written out.
var unitWords = map[measure.Unit]string{measure.In: "inches", measure.Cm: "centimetres", measure.Mm: "millimetres"}

func plainEdge(name string) string { return strings.ReplaceAll(name, "_", " ") }

func contains(list []string, s string) bool {
	for _, t := range list {
		if t == s {
			return true
		}
	}
	return false
}

// The sizes of label lettering that are tried, and the widths to which its
// lines are broken, in parts of the size. Below leastLabel the whole block is
// too small to read at the table.
var (
	labelSizes  = []float64{8, 7, 6, 5, 4.5, 4, leastLabel, 3, leastSize}
	labelWidths = []float64{34, 24, 17, 13}
)

const leastLabel = 3.5

// label places the block in the piece, as large as it fits, level if it can
// be. A piece too small for all of it has its name and cut count inside, where
// the shears leave it, and the block below the cut line.
func label(words []string, p pattern.Piece, r *room) []Item {
	if inside, ok := fitted(words, p, r, leastLabel); ok {
		return inside
	}
	inside, _ := fitted([]string{words[0], words[2]}, p, r, leastSize)
	box := p.CutLine.Bounds()
	b := newBlock(words, 4, max(box.Width(), 60))
	return append(inside, b.level(geom.Point{X: box.Min.X, Y: box.Max.Y + 5})...)
}

// fitted is the block inside the piece, its lettering no smaller than least.
func fitted(words []string, p pattern.Piece, r *room, least float64) ([]Item, bool) {
	wish := p.Label
	if wish == (geom.Point{}) {
		wish = p.CutLine.Bounds().Centre()
	}
	// Where lines break depends on the width in parts of the size alone.
	blocks := make([]block, len(labelWidths))
	for i, parts := range labelWidths {
		blocks[i] = newBlock(words, 1, parts)
	}
	for _, size := range labelSizes {
		if size < least {
			break
		}
		for _, upright := range [2]bool{false, true} {
			for _, b := range blocks {
				if items, ok := b.scaled(size).find(r, wish, air, upright); ok {
					return items, true
				}
			}
		}
	}
	return nil, false
}

// within is the block in a room, level if it can be, as near to a wish as it
// can stand with so much air round it.
func (b block) within(r *room, wish geom.Point, air float64) ([]Item, bool) {
	if items, ok := b.find(r, wish, air, false); ok {
		return items, true
	}
	return b.find(r, wish, air, true)
}

func (b block) find(r *room, wish geom.Point, air float64, upright bool) ([]Item, bool) {
	wide, high := b.width+2*air, b.height+2*air
	if upright {
		wide, high = high, wide
	}
	at, ok := r.find(wide, high, wish)
	switch at = at.Add(geom.Vector{X: air, Y: air}); {
	case !ok:
		return nil, false
	case upright:
		return b.upright(at), true
	}
	return b.level(at), true
}

// air is what stays free round the block.
const air = 1.5

// block is words broken into lines, the first somewhat larger.
type block struct {
	lines         []string
	size          []float64
	width, height float64
}

const firstLarger = 1.25

func newBlock(words []string, size, width float64) block {
	var b block
	for i, w := range words {
		s := size
		if i == 0 {
			s = firstLarger * size
		}
		for _, l := range wrap(w, s, width) {
			b.lines = append(b.lines, l)
			b.size = append(b.size, s)
			b.width = max(b.width, TextWidth(l, s))
			b.height += leading * s
		}
	}
	return b
}

// evenBlock is lines as they stand, all of one size.
func evenBlock(lines []string, size float64) block {
	b := block{lines: lines, height: float64(len(lines)) * leading * size}
	for _, l := range lines {
		b.size = append(b.size, size)
		b.width = max(b.width, TextWidth(l, size))
	}
	return b
}

// scaled is the block k times as large.
func (b block) scaled(k float64) block {
	size := make([]float64, len(b.size))
	for i, s := range b.size {
		size[i] = k * s
	}
	b.size, b.width, b.height = size, k*b.width, k*b.height
	return b
}

func (b block) level(at geom.Point) []Item {
	return b.items(func(down float64) geom.Point { return geom.Point{X: at.X, Y: at.Y + down} }, 0)
}

// upright reads upwards; its first line is at the left.
func (b block) upright(at geom.Point) []Item {
	return b.items(func(down float64) geom.Point { return geom.Point{X: at.X + down, Y: at.Y + b.width} }, -90)
}

func (b block) items(place func(down float64) geom.Point, turn float64) []Item {
	var out []Item
	down := 0.0
	for i, l := range b.lines {
		s := b.size[i]
		out = append(out, Item{
			Role: pattern.RoleText, Kind: Words, Name: "label", Text: l,
			At: place(down + (leading+ascent-descent)/2*s), Height: s, Turn: turn,
		})
		down += leading * s
	}
	return out
}
