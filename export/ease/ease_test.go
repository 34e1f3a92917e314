package ease

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

// The picture is the table of the checks: a row for each level with its ease,
// and a cross where the garment lies on the scale.
func TestThePictureIsTheTable(t *testing.T) {
	s := workroom.Draft(figure.P36(t, pattern.Measured).Job(pattern.Measured))
	rows := truing.EaseTable(s)
	require.NotEmpty(t, rows)
	for _, u := range []measure.Unit{measure.In, measure.Cm} {
		f, ok := Picture(s, u)
		require.True(t, ok)
		said := map[string]bool{}
		for _, w := range f.Words {
			said[w.Text] = true
		}
		for _, r := range rows {
			require.True(t, said[r.Level] && said[u.Tape(r.Ease())] && said[r.Says()], r.Level)
		}
		var b bytes.Buffer
		ok, err := WriteSVG(&b, s, u)
		require.NoError(t, err)
		require.True(t, ok)
		for _, r := range rows {
			require.Contains(t, b.String(), ">"+r.Level+"<")
		}
		x := xml.NewDecoder(&b)
		for {
			if _, err := x.Token(); errors.Is(err, io.EOF) {
				break
			} else {
				require.NoError(t, err)
			}
		}
	}
}

// What lies beyond the scale lies at its end, and what is tight is said in
// bold.
func TestThePictureStaysOnItsScale(t *testing.T) {
	job := figure.P36(t, pattern.Measured).Job(pattern.Measured).
		WithStyle("ease_bust", pattern.LengthValue(20*measure.Inch)).WithStyle("ease_hip", pattern.LengthValue(-1*measure.Inch))
	f, ok := Picture(workroom.Draft(job), measure.In)
	require.True(t, ok)
	box := f.Bounds()
	require.GreaterOrEqual(t, box.Min.X, leftEnd)
	require.LessOrEqual(t, box.Max.X, rightEnd)
	var bold []string
	for _, w := range f.Words {
		if w.Bold {
			bold = append(bold, w.Text)
		}
	}
	require.Contains(t, strings.Join(bold, " "), "loose")
}

func TestNothingDrawnIsNoPicture(t *testing.T) {
	s := workroom.Draft(pattern.Job{})
	ok, err := WriteSVG(io.Discard, s, measure.In)
	require.NoError(t, err)
	require.False(t, ok)
}
