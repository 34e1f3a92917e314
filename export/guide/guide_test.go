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
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
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

// A seam of a kind that the order of sewing has never heard of is joined all
// the same; so are sleeves, a collar, a skirt below a waist seam.
func TestSeamsNobodyThoughtOf(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	along := func(n string, l float64, to pattern.PieceID, edge string) pattern.Edge {
		return pattern.Edge{Name: n, Stitch: geom.Lines(geom.Point{}, geom.Point{X: l}), Allowance: 15, SewnTo: pattern.EdgeRef{Piece: to, Edge: edge}}
	}
	s.Pieces = append(s.Pieces,
		pattern.Piece{ID: "sleeve", Title: "Sleeve", Cut: pattern.Pair, Count: 2, Edges: []pattern.Edge{
			along("front_cap", 254, pattern.Front, "armhole"), along("back_cap", 254, pattern.Back, "armhole"),
			along("front_seam", 127, "sleeve", "back_seam"), along("back_seam", 130, "sleeve", "front_seam"), along("hem", 300, "", ""),
		}},
		pattern.Piece{ID: "collar", Title: "Collar", Cut: pattern.OnFold, Count: 2, Edges: []pattern.Edge{
			along("stand", 200, pattern.Back, "neck"), along("leaf", 203.2, "under_collar", "leaf"),
		}},
		pattern.Piece{ID: "under_collar", Title: "Under collar", Cut: pattern.Pair, Count: 2, Edges: []pattern.Edge{along("leaf", 200, "collar", "leaf")}},
		pattern.Piece{ID: "pocket", Title: "Pocket", Cut: pattern.Pair, Count: 2, Edges: []pattern.Edge{along("mouth", 152.4, pattern.Front, "hem")}},
	)
	text := markdown(t, s, measure.In)
	for _, want := range []string{
		"**Sleeves, set in.** Sleeve head 20, armhole ",
		"**Sleeve seams.** Sleeve, front seam 5 to sleeve, back seam 5 1/8, allowance 9/16, on both sides. The sleeve, back seam is longer by 1/8: ease it in",
		"**Hem of the sleeve.** Turn up 9/16, 11 13/16 long",
		"**Under collar, made up.** Collar 8 to under collar 7 7/8",
		"**Collar to the neck.** Collar, stand 7 7/8 to back, neck ",
		"**Join the pocket to the front.** Pocket, mouth 6 to front, hem ",
	} {
		require.Contains(t, text, want)
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

// Where her sides differ and are cut apart the seams are still sewn.
func TestTwoSides(t *testing.T) {
	job := accept.Dress(pattern.Measured).Job
	job.Left = measure.NewBody(map[measure.ID]measure.Length{measure.ShoulderDrop: 2.25 * measure.Inch})
	s := workroom.Draft(job)
	require.True(t, s.Complete)
	text := markdown(t, s, measure.In)
	for _, want := range []string{"**Two sides.** Her sides differ", "**Shoulders.**", "**Side seams.**", "**Centre back seam.**", "**Neck facing, sewn on.**", "**Armhole facings, sewn on.**"} {
		require.Contains(t, text, want)
	}
	require.Equal(t, 1, strings.Count(text, "**Side dart.**"))
	require.Regexp(t, `On the left: back shoulder`, text)
}
