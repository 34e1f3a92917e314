package export_test

import (
	"bytes"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/export/dxf"
	"chalkfold/export/pdf"
	"chalkfold/export/svg"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
)

// shown is the lay of the dress on a cloth.
func shown(t *testing.T, c pattern.Cloth) laid.Shown {
	t.Helper()
	s := accept.Dress(pattern.Measured)
	s.Job.Cloths = []pattern.Cloth{c}
	l, err := laid.Show(s, c.Name)
	require.NoError(t, err)
	return l
}

func cloths() []pattern.Cloth {
	in := measure.In.Length
	return []pattern.Cloth{
		{Name: "main"},
		{Name: "main", Width: in(44), Fold: lay.Flat, Flaws: [][4]measure.Length{{in(20), in(40), in(3), in(3)}}},
		{Name: "main", Width: in(60), Fold: lay.ToMiddle, Nap: true},
		{Name: "interfacing"},
	}
}

func TestALayStandsOnItsPage(t *testing.T) {
	for _, c := range cloths() {
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			s := shown(t, c)
			d := export.NewLay(s, export.LayOptions{Unit: u})
			require.Len(t, d.Pieces, len(s.Lay.Placed))
			page := geom.Box{Max: geom.Point{X: d.Width, Y: d.Height}}.Grow(1e-6)
			check := func(i export.Item) {
				b := i.Bounds()
				require.True(t, page.Contains(b.Min) && page.Contains(b.Max), "%s %q %v", i.Name, i.Text, b)
			}
			for _, i := range d.Page {
				check(i)
			}
			words := ""
			for _, p := range d.Pieces {
				for _, i := range p.Items {
					check(i)
					words += i.Text + "\n"
				}
			}
			for _, i := range d.Page {
				words += i.Text + " "
			}
			require.Contains(t, words, "First lay on the "+c.Name+" cloth")
			require.Contains(t, words, "1. ")
			require.Contains(t, words, "decides the length")
			require.Contains(t, words, "Drawn at 1 : ")
			require.Contains(t, words, u.Tape(measure.Length(float64(s.Lay.Length)/lay.PerMM)), "the length stands at the ruler")
		}
	}
}

// No word in a lay is crossed by a line, of its own piece or of another.
func TestNamesInALayCoverNoLine(t *testing.T) {
	for _, c := range cloths() {
		d := export.NewLay(shown(t, c), export.LayOptions{Unit: measure.In})
		var lines []geom.Point
		for _, p := range d.Pieces {
			for _, i := range p.Items {
				for _, s := range i.Strokes() {
					for k, n := 0.0, s.Length(); k < n; k += 0.2 {
						at, _ := s.At(k)
						lines = append(lines, at)
					}
				}
			}
		}
		for k, p := range d.Pieces {
			require.Equal(t, strconv.Itoa(k+1), strings.SplitN(firstWords(p.Items), ".", 2)[0], "%s: %s has its number", c.Name, p.Piece.Title)
			for _, i := range p.Items {
				if i.Kind != export.Words {
					continue
				}
				for _, at := range lines {
					require.False(t, i.Bounds().Contains(at), "%s: a line runs through %q at %v", c.Name, i.Text, at)
				}
			}
		}
	}
}

func firstWords(items []export.Item) string {
	for _, i := range items {
		if i.Kind == export.Words && i.Text != "" {
			return i.Text
		}
	}
	return ""
}

// The pieces keep their size and their places, whatever the scale.
func TestALayIsDrawnToScale(t *testing.T) {
	for _, full := range []bool{false, true} {
		s := shown(t, cloths()[0])
		d := export.NewLay(s, export.LayOptions{Unit: measure.In, Full: full})
		k := 0.0
		for i, q := range s.Lay.Placed {
			drawn := d.Pieces[i].Piece.CutLine.Bounds()
			var real geom.Box
			for _, c := range q.Outline {
				real = real.Add(geom.Point{X: float64(c.X) / lay.PerMM, Y: float64(c.Y) / lay.PerMM})
			}
			if k == 0 {
				k = drawn.Height() / real.Height()
			}
			require.InDelta(t, k*real.Width(), drawn.Width(), 0.01)
			require.InDelta(t, k*real.Height(), drawn.Height(), 0.01)
		}
		if full {
			require.InDelta(t, 1, k, 1e-3)
			require.InDelta(t, float64(s.Lay.Length)/lay.PerMM, d.Height, 1)
		} else {
			require.Less(t, k, 0.3)
		}
	}
}

func TestAKeptLayIsNoFirstLay(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	w, err := laid.New([]*pattern.Sheet{s}, "main")
	require.NoError(t, err)
	l, err := lay.Solve(w.Problem, lay.Options{Evaluations: 20000})
	require.NoError(t, err)
	s.Job = s.Job.WithLay(w.Keep(l))
	show, err := laid.Show(s, "main")
	require.NoError(t, err)
	d := export.NewLay(show, export.LayOptions{Unit: measure.In})
	require.True(t, strings.HasPrefix(d.Title, "Lay on the main cloth: Dress"))

	k := s.Job.Lays[0]
	k.Width -= 10
	s.Job = s.Job.WithLay(k)
	show, err = laid.Show(s, "main")
	require.NoError(t, err)
	d = export.NewLay(show, export.LayOptions{Unit: measure.In})
	require.True(t, strings.HasPrefix(d.Title, "First lay"))
	words := ""
	for _, i := range d.Page {
		words += i.Text + " "
	}
	require.Contains(t, words, "The lay that was kept is for cloth")
}

func TestALayLeavesInEveryFormat(t *testing.T) {
	s := shown(t, cloths()[0])
	page := export.NewLay(s, export.LayOptions{Unit: measure.In})
	full := export.NewLay(s, export.LayOptions{Unit: measure.In, Full: true})
	for _, write := range []func(*bytes.Buffer) error{
		func(b *bytes.Buffer) error { return svg.Write(b, page, svg.Options{}) },
		func(b *bytes.Buffer) error { return pdf.WriteSheet(b, page, pdf.Options{}) },
		func(b *bytes.Buffer) error { return dxf.Write(b, full, dxf.Options{}) },
	} {
		var a, b bytes.Buffer
		require.NoError(t, write(&a))
		require.NoError(t, write(&b))
		require.Equal(t, a.Bytes(), b.Bytes())
		require.Greater(t, a.Len(), 3000)
	}
	var b bytes.Buffer
	require.NoError(t, dxf.Write(&b, full, dxf.Options{}))
	for _, q := range s.Lay.Placed {
		require.Contains(t, b.String(), strings.ToUpper(s.Problem.Items[q.Item].ID))
	}
}
