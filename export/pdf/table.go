package pdf

import (
	"slices"

	"chalkfold/pattern/geom"
)

// Table is rows of cells under heads. A row of one cell alone runs across all
// columns.
type Table struct {
	Heads []string
	Rows  [][]string
	Right []bool    // columns whose cells stand at the right
	Least []float64 // least width of a column in parts of the text's size: blanks to fill in
	Most  []float64 // greatest width of a column in parts of the text's size; zero: as wide as it asks
	Tall  float64   // least height of a row in parts of the text's size
	Lines bool      // a frame round every cell
}

const cellAir = 0.5 // beside the words of a cell, in parts of the size

// Table writes a table; its heads stand again where it goes on.
func (d *Document) Table(t Table) {
	widths := d.columnWidths(t)
	if len(widths) == 0 {
		return
	}
	d.need(4 * lead * d.size)
	d.tableHead(t, widths)
	for _, r := range t.Rows {
		lines, high := d.rowLines(t, r, widths)
		page, column := len(d.pages), d.column
		d.need(high)
		if page != len(d.pages) || column != d.column {
			d.tableHead(t, widths)
		}
		d.row(t, lines, widths, high, false)
	}
	d.y += 0.6 * d.size
}

func (d *Document) tableHead(t Table, widths []float64) {
	if len(t.Heads) == 0 {
		return
	}
	lines, high := d.rowLines(Table{}, t.Heads, widths)
	d.row(t, lines, widths, high, true)
}

// rowLines breaks the cells of a row and gives its height.
func (d *Document) rowLines(t Table, cells []string, widths []float64) ([][]string, float64) {
	lines := make([][]string, len(widths))
	most := 1
	if len(cells) == 1 && len(widths) > 1 {
		all := 0.0
		for _, w := range widths {
			all += w
		}
		lines[0] = d.wrap(cells[0], d.size, all-2*cellAir*d.size)
		return lines, (lead*float64(len(lines[0])) + 0.35) * d.size
	}
	for i := range widths {
		if i < len(cells) {
			lines[i] = d.wrap(cells[i], d.size, widths[i]-2*cellAir*d.size)
		}
		most = max(most, len(lines[i]))
	}
	return lines, max(lead*float64(most)+0.35, t.Tall) * d.size
}

func (d *Document) row(t Table, lines [][]string, widths []float64, high float64, bold bool) {
	x, y := d.left(), d.y
	for i, w := range widths {
		for k, l := range lines[i] {
			at := geom.Point{X: x + cellAir*d.size, Y: y + (0.95+0.12+lead*float64(k))*d.size}
			set := words{text: l, size: d.size, bold: bold}
			if i < len(t.Right) && t.Right[i] {
				at.X, set.right = x+w-cellAir*d.size, true
			}
			d.write(at, set)
		}
		x += w
	}
	d.y += high
	d.fresh = false
	d.rowLinesRuled(t, widths, y, bold)
}

func (d *Document) rowLinesRuled(t Table, widths []float64, y float64, head bool) {
	weight := 0.12
	if head {
		weight = 0.35
	}
	x := d.left()
	end := x
	for _, w := range widths {
		end += w
	}
	d.ruled(geom.Point{X: x, Y: d.y}, geom.Point{X: end, Y: d.y}, stroke{weight: weight, gray: 60})
	if !t.Lines {
		return
	}
	if head {
		d.ruled(geom.Point{X: x, Y: y}, geom.Point{X: end, Y: y}, stroke{weight: 0.12, gray: 60})
	}
	d.ruled(geom.Point{X: x, Y: y}, geom.Point{X: x, Y: d.y}, stroke{weight: 0.12, gray: 60})
	for _, w := range widths {
		x += w
		d.ruled(geom.Point{X: x, Y: y}, geom.Point{X: x, Y: d.y}, stroke{weight: 0.12, gray: 60})
	}
}

// columnWidths gives each column what its widest cell asks, and where that is
// too much for all together, shares what there is: narrow columns keep their
// wish, wide ones break their lines.
func (d *Document) columnWidths(t Table) []float64 {
	n := len(t.Heads)
	for _, r := range t.Rows {
		n = max(n, len(r))
	}
	wish := make([]float64, n)
	for _, r := range append([][]string{t.Heads}, t.Rows...) {
		if len(r) == 1 && n > 1 {
			continue
		}
		for i, c := range r {
			wish[i] = max(wish[i], d.pen.width(c, d.size)+(2*cellAir+0.2)*d.size)
		}
	}
	for i, l := range t.Least {
		if i < n {
			wish[i] = max(wish[i], l*d.size)
		}
	}
	for i, m := range t.Most {
		if i < n && m > 0 {
			wish[i] = min(wish[i], m*d.size)
		}
	}
	return share(wish, d.Width())
}

func share(wish []float64, room float64) []float64 {
	sum := 0.0
	for _, w := range wish {
		sum += w
	}
	if sum <= room {
		return wish
	}
	sorted := slices.Clone(wish)
	slices.Sort(sorted)
	// The greatest width such that all columns, cut to it, fit.
	limit, left := 0.0, room
	for i, w := range sorted {
		limit = left / float64(len(sorted)-i)
		if w > limit {
			break
		}
		left -= w
	}
	out := make([]float64, len(wish))
	for i, w := range wish {
		out[i] = min(w, limit)
	}
	return out
}
