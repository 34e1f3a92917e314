package leaflet

import (
	"bytes"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func TestMarkdown(t *testing.T) {
	l := &Leaflet{Title: "A *title*"}
	l.Heading(1, "Part")
	l.Text("One | two\nthree\x1b")
	l.Items(pdf.Number, []pdf.Item{{Lead: "First.", Text: "Do it."}, {Text: "then"}})
	l.List(pdf.Tick, "buy")
	l.Table(pdf.Table{Heads: []string{"a", "b"}, Rows: [][]string{{"x"}, {"1|2", "3"}}, Right: []bool{false, true}})
	l.Table(pdf.Table{Heads: []string{"no rows"}})
	l.Page()
	l.Figure(pdf.Figure{Caption: "A drawing."})
	var b bytes.Buffer
	require.NoError(t, l.WriteMarkdown(&b))
	require.Equal(t, `# A \*title\*

## Part

One \| two three

1. **First.** Do it.
2. then

- [ ] buy

| a | b |
|---|---:|
| x |  |
| 1\|2 | 3 |

A drawing.
`, b.String())
	require.NoError(t, l.WritePDF(io.Discard, Options{}))
}

func TestFullDiskIsTold(t *testing.T) {
	l := &Leaflet{Title: "a"}
	require.ErrorIs(t, l.WriteMarkdown(full{}), io.ErrShortWrite)
	require.ErrorIs(t, l.WritePDF(full{}, Options{}), io.ErrShortWrite)
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestHostileTexts(t *testing.T) {
	for _, text := range accept.Texts {
		l := &Leaflet{Title: text, Foot: text}
		l.Heading(1, text)
		l.Text(text)
		l.List(pdf.Bullet, text)
		l.Table(pdf.Table{Heads: []string{text}, Rows: [][]string{{text, text}}})
		var b bytes.Buffer
		require.NoError(t, l.WriteMarkdown(&b))
		for _, c := range b.Bytes() {
			require.True(t, c >= 0x20 || c == '\n', "%q", text)
		}
		require.NoError(t, l.WritePDF(io.Discard, Options{}))
	}
}

func TestValues(t *testing.T) {
	c := pattern.Choice{Options: []pattern.Option{{Value: "v", Title: "V-neck"}}}
	require.Equal(t, "V-neck", Value(c, pattern.PickValue("v"), measure.In))
	require.Equal(t, "some thing", Value(c, pattern.PickValue("some_thing"), measure.In))
	require.Equal(t, "2 1/2", Value(c, pattern.LengthValue(2.5*measure.Inch), measure.In))
	require.Equal(t, "yes", Value(c, pattern.SwitchValue(true), measure.In))
	require.Equal(t, "12.5 %", Value(c, pattern.NumberValue(pattern.KindPercent, 12.5), measure.In))
}

// The last step of each large piece draws all its lines, the new ones heavy.
func TestStepDrawsWhatStands(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	lines := map[pattern.PieceID]int{}
	for _, st := range s.Steps {
		f := Step(s, st, 40)
		require.False(t, f.Bounds().Empty(), st.ID)
		fresh := 0
		for _, l := range f.Lines {
			if l.Ink == pdf.InkHeavy {
				fresh++
			}
		}
		for _, d := range f.Dots {
			if d.Heavy {
				fresh++
				require.NotEmpty(t, d.Label)
			}
		}
		require.True(t, fresh > 0 || len(st.Marks) == 0, st.ID)
		lines[st.Piece] = len(f.Lines)
	}
	require.Greater(t, lines[pattern.Front], 8)
}

func TestPiecesAreSideBySide(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	f := Pieces(s, 90)
	require.Len(t, f.Words, len(s.Pieces))
	for i, w := range f.Words {
		for _, o := range f.Words[i+1:] {
			require.Greater(t, w.At.Dist(o.At), pieceGap)
		}
	}
}
