package cardpdf

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/export/card"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func TestPrinted(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := accept.Dress(method)
		var a, b bytes.Buffer
		require.NoError(t, Write(&a, s, Options{Unit: measure.In}))
		require.NoError(t, Write(&b, s, Options{Unit: measure.In}))
		require.Equal(t, a.Bytes(), b.Bytes())
		path := filepath.Join(t.TempDir(), "a.pdf")
		require.NoError(t, os.WriteFile(path, a.Bytes(), 0o600))
		out, err := exec.Command(accept.Tool(t, "pdftotext"), path, "-").Output()
		require.NoError(t, err)
		words := strings.Join(strings.Fields(string(out)), " ")
		c := card.Make(s, measure.In)
		for _, p := range c.Pieces {
			require.Contains(t, words, p.Title)
			for _, r := range p.Rows {
				if r.Name != "" {
					require.Contains(t, words, strings.Fields(r.Name)[0])
				}
			}
			for _, f := range p.Proofs {
				require.Contains(t, words, measure.In.Tape(f.Length))
			}
		}
		require.Contains(t, words, "Facings, traced by width")
	}
}

func TestLargeEnoughForTheFloor(t *testing.T) { require.GreaterOrEqual(t, size, 14) }

func TestNoMinusSigns(t *testing.T) {
	require.Equal(t, "up 1/2", down(-measure.Inch/2, measure.In))
	require.Equal(t, "beyond 3/4", across(-measure.Inch*3/4, measure.In))
	require.Equal(t, "7 1/4", across(7.25*measure.Inch, measure.In))
}

func TestHalfADraftIsRefused(t *testing.T) {
	require.ErrorContains(t, Write(&bytes.Buffer{}, &pattern.Sheet{}, Options{}), "finish the draft first")
}
