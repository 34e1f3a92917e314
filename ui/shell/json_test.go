package shell

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		value  float64
		places int
		want   string
	}{
		{0, 4, "0"},
		{math.Copysign(0, -1), 4, "0"},
		{-0.00001, 4, "0"},
		{1.0 / 3, 5, "0.33333"},
		{370.1, 4, "370.1"},
		{-12.5, 4, "-12.5"},
		{0.1 + 0.2, 5, "0.3"},
		{1e9, 4, "1000000000"},
		{math.NaN(), 4, "null"},
		{math.Inf(1), 4, "null"},
	} {
		require.Equal(t, c.want, number{c.value, c.places}.String())
	}
}

func TestStrings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.String().Draw(t, "s")
		var back string
		require.NoError(t, json.Unmarshal([]byte(quote(s)), &back))
		require.Equal(t, s, back)
	})
	require.Equal(t, `"\u007f\u009b<b>"`, quote("\u007f\u009b<b>"))
}

// Every document is JSON, begins with form and unit, and has the same bytes
// each time.
func TestDocuments(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		job := session.Demo().Job.WithStyle(pattern.Method, pattern.PickValue(method))
		for _, u := range []measure.Unit{measure.Mm, measure.Cm, measure.In} {
			made := func() []string {
				sheet := workroom.Draft(job)
				return []string{
					piecesDocument(sheet, u).text(), draftDocument(sheet.Steps, u).text(), checkDocument(sheet, u).text(),
					choicesDocument(sheet, u).text(), measurementsDocument(measure.All(), u).text(),
					compareDocument(side{"a", sheet}, side{"b", workroom.Draft(session.Demo().Job)}, u).text(),
				}
			}
			first := made()
			require.Equal(t, first, made())
			for _, text := range first {
				var doc map[string]any
				require.NoError(t, json.Unmarshal([]byte(text), &doc), text)
				require.EqualValues(t, 1, doc["form"])
				require.Equal(t, u.String(), doc["unit"])
				require.Regexp(t, `^\{\n"form": 1,\n"unit": `, text)
			}
		}
	}
}

func TestDemoIsClean(t *testing.T) {
	s := session.Demo()
	require.Empty(t, s.Warnings)
	require.Empty(t, measure.Doubts(s.Job.Body))
	require.Empty(t, measure.Impossible(s.Job.Body))
	sheet := workroom.Draft(s.Job)
	require.True(t, sheet.Complete)
	require.Empty(t, sheet.Proposed())
	require.Zero(t, sheet.Count(pattern.Fail)+sheet.Count(pattern.Advise))
	require.Len(t, sheet.Pieces, 6)
}
