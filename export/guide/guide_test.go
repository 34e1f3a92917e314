package guide

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
)

func markdown(t *testing.T, s *pattern.Sheet, u measure.Unit) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, WriteMarkdown(&b, s, Options{Unit: u}))
	return b.String()
}

func TestMarkdown(t *testing.T) {
	golden.Check(t, "measured-in.md", markdown(t, accept.Dress(pattern.Measured), measure.In))
	golden.Check(t, "thumb-cm.md", markdown(t, accept.Dress(pattern.Thumb), measure.Cm))
}

// Every seam that the pieces have is sewn, with its length.
func TestEverySewnEdgeIsInTheOrder(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := accept.Dress(method)
		g := guide{sheet: s, unit: measure.In}
		text := ""
		for _, i := range g.sewing() {
			text += i.Lead + " " + i.Text + "\n"
		}
		require.NotContains(t, text, "%!")
		for _, p := range s.Pieces {
			for _, name := range []string{"shoulder", "side"} {
				if l := p.Along(name); l > 0 && !strings.Contains(string(p.ID), "back_") {
					require.Contains(t, text, measure.In.Tape(l), "%s %s", p.ID, name)
				}
			}
			for _, d := range p.Darts {
				require.Contains(t, text, "Press it "+d.Pressed)
			}
		}
	}
}

func TestASheetWithoutSomeThingsHasNoStepsForThem(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	var kept []pattern.Piece
	for _, p := range s.Pieces {
		if !strings.Contains(string(p.ID), "armhole") {
			p.Darts = nil
			kept = append(kept, p)
		}
	}
	s.Pieces = kept
	text := markdown(t, s, measure.In)
	require.NotContains(t, text, "Armhole facings")
	require.NotContains(t, text, "**Side dart")
	require.NotContains(t, text, "darts sewn")
	require.Contains(t, text, "**Neck facing, sewn on.**")
}

func TestFaultsStandFirst(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Findings[0].Verdict = pattern.Fail
	text := markdown(t, s, measure.In)
	require.Contains(t, text, "Do not cut yet, truing fails: "+s.Findings[0].Title)
	require.Less(t, strings.Index(text, "Do not cut yet"), strings.Index(text, "## Measurements"))
}

func TestHerClothIsUsed(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Job.Cloths = []pattern.Cloth{{Name: "main", Width: 44 * measure.Inch, ShrinkAlong: 4, Nap: true, Price: 10}}
	text := markdown(t, s, measure.In)
	require.Contains(t, text, "Main, 44 in wide: ")
	require.Contains(t, text, "it shrinks 4 % along")
	require.Contains(t, text, "It has a nap")
	require.Regexp(t, `At 10.00 a metre: \d+\.\d\d\.`, text)
	s.Job.Cloths[0].Width = 15 * measure.Inch
	require.Contains(t, markdown(t, s, measure.In), "too narrow")
}

func TestNotesNeverStandInIt(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Job.Client.Notes = "left knee stiff"
	require.NotContains(t, markdown(t, s, measure.In), "knee stiff")
}

func TestPrinted(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	var a, b bytes.Buffer
	require.NoError(t, WritePDF(&a, s, Options{Unit: measure.In}))
	require.NoError(t, WritePDF(&b, accept.Dress(pattern.Measured), Options{Unit: measure.In}))
	require.Equal(t, a.Bytes(), b.Bytes())
	path := filepath.Join(t.TempDir(), "a.pdf")
	require.NoError(t, os.WriteFile(path, a.Bytes(), 0o600))
	out, err := exec.Command(accept.Tool(t, "qpdf"), "--check", path).CombinedOutput()
	require.NoError(t, err, "%s", out)
	out, err = exec.Command(accept.Tool(t, "pdftotext"), path, "-").Output()
	require.NoError(t, err)
	for _, want := range []string{"Pieces and cutting list", "Side seams.", "Truing", "care label"} {
		require.Contains(t, string(out), want)
	}
}

func BenchmarkPDF(b *testing.B) {
	s := accept.Dress(pattern.Measured)
	for b.Loop() {
		if err := WritePDF(io.Discard, s, Options{Unit: measure.In, Paper: pdf.Paper{}}); err != nil {
			b.Fatal(err)
		}
	}
}
