package slip

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
)

func TestMarkdown(t *testing.T) {
	for _, c := range []struct {
		name string
		unit measure.Unit
		main measure.Length
	}{{"slip-in.md", measure.In, 0}, {"slip-cm.md", measure.Cm, 140 * measure.Centimetre}} {
		s := accept.Dress(pattern.Measured)
		if c.main > 0 {
			s.Job.Cloths = []pattern.Cloth{{Name: "main", Width: c.main, ShrinkAlong: 3}}
		}
		var b bytes.Buffer
		require.NoError(t, WriteMarkdown(&b, s, Options{Unit: c.unit}))
		golden.Check(t, c.name, b.String())
		for _, id := range s.Job.Body.IDs() {
			m, _ := measure.Find(id)
			require.NotContains(t, b.String(), m.Term, "nothing of her body is told in the shop")
		}
	}
}

func TestPrinted(t *testing.T) {
	var a, b bytes.Buffer
	require.NoError(t, WritePDF(&a, accept.Dress(pattern.Measured), Options{}))
	require.NoError(t, WritePDF(&b, accept.Dress(pattern.Measured), Options{}))
	require.Equal(t, a.Bytes(), b.Bytes())
	require.Contains(t, a.String(), "/MediaBox [0 0 226.77 ")
}
