package looks_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/looks"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/trial"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
	"chalkfold/testdata/golden"
)

func sheet(t testing.TB, ids ...pattern.ChoiceID) (*pattern.Sheet, []trial.Set) {
	job := figure.Body36(t, pattern.Measured).WithStyle("closure", pattern.PickValue("zip_side"))
	job.Client.Name = "Learner <Four>"
	var sets []trial.Set
	for _, id := range ids {
		c, ok := workroom.FindChoice(pattern.Dress, id)
		require.True(t, ok, id)
		sets = append(sets, trial.Of(job, c))
	}
	return workroom.Draft(job), sets
}

func TestSVG(t *testing.T) {
	s, sets := sheet(t, "skirt_line", "front_neckline", "facing")
	var b, again bytes.Buffer
	require.NoError(t, looks.WriteSVG(&b, s, sets, looks.Options{}))
	require.NoError(t, looks.WriteSVG(&again, s, sets, looks.Options{}))
	require.Equal(t, b.String(), again.String(), "the same session, the same bytes")
	for _, o := range sets[1].Options {
		require.Contains(t, b.String(), ">"+o.Title, "each option has its name")
	}
	require.Contains(t, b.String(), "(not for her)")
	require.Contains(t, b.String(), ": not for her. ")
	require.Contains(t, b.String(), "Learner &lt;Four&gt;")
	require.NotContains(t, b.String(), `<g id="facing">`, "what looks alike is no choice by looking")
	require.NotContains(t, b.String(), "NaN")
	for d := xml.NewDecoder(&again); ; {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			break
		} else {
			require.NoError(t, err)
		}
	}
	var one bytes.Buffer
	s, sets = sheet(t, "skirt_line")
	require.NoError(t, looks.WriteSVG(&one, s, sets, looks.Options{Unit: measure.In}))
	golden.Check(t, "skirt.svg", one.String())
}

func TestPDF(t *testing.T) {
	s, sets := sheet(t, "skirt_line", "front_neckline")
	var b, again bytes.Buffer
	require.NoError(t, looks.WritePDF(&b, s, sets, looks.Options{Paper: pdf.Paper{}}))
	require.NoError(t, looks.WritePDF(&again, s, sets, looks.Options{}))
	require.True(t, bytes.HasPrefix(b.Bytes(), []byte("%PDF")))
	require.Equal(t, b.Bytes(), again.Bytes())
}
