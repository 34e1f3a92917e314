package pdf

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/pattern/geom"
)

func written(t *testing.T, d *Document) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, d.Write(&b))
	return saved(t, b.Bytes())
}

func TestTableGoesOnUnderItsHeads(t *testing.T) {
	d := NewDocument(Layout{Title: "Many rows"})
	d.Heading(0, "Many rows")
	var rows [][]string
	for i := range 120 {
		rows = append(rows, []string{fmt.Sprintf("row %d", i), strings.Repeat("long words ", i%9), "7 1/2"})
	}
	rows = append(rows, []string{"one cell across them all"})
	d.Table(Table{Heads: []string{"head one", "head two", "three"}, Rows: rows, Right: []bool{false, false, true}})
	path := written(t, d)
	text := tool(t, "pdftotext", "-layout", path, "-")
	pages := strings.Count(text, "\f")
	require.Greater(t, pages, 2)
	require.Equal(t, pages, strings.Count(text, "head one"))
	for i := range 120 {
		require.Contains(t, text, fmt.Sprintf("row %d", i))
	}
	require.Contains(t, strings.ReplaceAll(text, " ", ""), fmt.Sprintf("%d/%d", pages, pages))
	require.Contains(t, text, "one cell across them all")
}

func TestColumns(t *testing.T) {
	d := NewDocument(Layout{Title: "Two", Columns: 2})
	for i := range 200 {
		d.Text(fmt.Sprintf("line %d", i))
	}
	path := written(t, d)
	require.Len(t, pageSizes(t, path), 3)
	require.Contains(t, tool(t, "pdftotext", path, "-"), "line 199")
}

func TestStripIsAsLongAsItsText(t *testing.T) {
	short, long := NewDocument(Layout{Title: "a", Strip: 80}), NewDocument(Layout{Title: "a", Strip: 80})
	short.Text("one")
	for range 200 {
		long.List([]Item{{Text: "one thing to buy"}}, Tick)
	}
	a, b := pageSizes(t, written(t, short)), pageSizes(t, written(t, long))
	require.Len(t, a, 1)
	require.Len(t, b, 1)
	require.InDelta(t, 80/millimetresAPoint, a[0][0], 0.01)
	require.Less(t, a[0][1], 100.0)
	require.Greater(t, b[0][1], 2000.0)
}

func TestFigureFitsItsRoom(t *testing.T) {
	d := NewDocument(Layout{Title: "Figure"})
	before := d.y
	d.Figure(Figure{Lines: []FigureLine{{Path: geom.Lines(geom.Point{}, geom.Point{X: 3000, Y: 1000})}}, Height: 40, Caption: "A line."})
	require.InDelta(t, 40+(lead+0.35)*d.size, d.y-before, 0.01)
	require.Len(t, d.pages, 1)
	d.Figure(Figure{})
	require.Contains(t, tool(t, "pdftotext", written(t, d), "-"), "A line.")
}

func TestSharedWidthsFit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wish := rapid.SliceOfN(rapid.Float64Range(1, 300), 1, 9).Draw(t, "wish")
		room := rapid.Float64Range(10, 400).Draw(t, "room")
		sum, asked := 0.0, 0.0
		for i, w := range share(wish, room) {
			if w > wish[i] {
				t.Fatalf("column %d has more than it asked", i)
			}
			sum, asked = sum+w, asked+wish[i]
		}
		if sum > room+1e-6 && asked > room {
			t.Fatalf("%v do not fit %v", sum, room)
		}
		if asked <= room && sum != asked {
			t.Fatal("room was left and not given")
		}
	})
}
