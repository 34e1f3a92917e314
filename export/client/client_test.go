package client

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
)

// full is a client of whom everything is known; invented.
func full() *pattern.Sheet {
	s := accept.Dress(pattern.Measured)
	j := &s.Job
	j.Client = pattern.Client{
		Name: "Learner | Four", Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}, MeasuredBy: "the tutor", Shoes: "heel 1 1/2",
		Notes: "left knee stiff\n\nprefers blue",
	}
	j.Left = measure.NewBody(map[measure.ID]measure.Length{measure.ShoulderDrop: 1.75 * measure.Inch})
	j.Earlier = []pattern.Earlier{{
		Measured: pattern.Date{Year: 2025, Month: 11, Day: 2},
		Body:     measure.NewBody(map[measure.ID]measure.Length{measure.BustGirth: 35.5 * measure.Inch, measure.Height: 66 * measure.Inch}),
	}}
	j.Cloths = []pattern.Cloth{{Name: "main", Width: 58 * measure.Inch, ShrinkAlong: 3, ShrinkAcross: 2.5, Nap: true}, {Name: "lining"}}
	j.Fittings = []pattern.Fitting{{
		Date: pattern.Date{Year: 2026, Month: 3, Day: 20}, Seen: "front armhole gapes", Why: "pinched 1/4 each side",
		Change: []pattern.Change{{Input: "dart_extra", By: "1/4"}},
	}}
	return s
}

func TestMarkdown(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, WriteMarkdown(&b, full(), Options{Unit: measure.In}))
	golden.Check(t, "card-in.md", b.String())
	require.NotContains(t, b.String(), "knee")
	b.Reset()
	require.NoError(t, WriteMarkdown(&b, full(), Options{Unit: measure.In, Notes: true}))
	require.Contains(t, b.String(), "## Notes, private\n\nleft knee stiff\n\nprefers blue\n")
}

func TestNothingKnown(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, WriteMarkdown(&b, &pattern.Sheet{}, Options{Notes: true}))
	require.NotContains(t, b.String(), "Measurements")
	require.NoError(t, WritePDF(&b, &pattern.Sheet{}, Options{}))
}

func TestPrinted(t *testing.T) {
	var a, b bytes.Buffer
	require.NoError(t, WritePDF(&a, full(), Options{Unit: measure.Cm}))
	require.NoError(t, WritePDF(&b, full(), Options{Unit: measure.Cm}))
	require.Equal(t, a.Bytes(), b.Bytes())
}
