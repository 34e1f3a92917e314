package lesson_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
	"chalkfold/ui/session"
)

// body is a job to ask about, with a name for messages.
type body struct {
	name string
	job  pattern.Job
}

// bodies are the demo client and figure P36, by both methods, in inches and
// in centimetres.
func bodies(t testing.TB) []body {
	t.Helper()
	data, err := os.ReadFile("../session/demo.chalkfold.toml")
	require.NoError(t, err)
	demo, err := session.Parse("demo", data)
	require.NoError(t, err)
	var out []body
	for _, b := range []body{{"demo", demo.Job}, {"P36", figure.P36(t, pattern.Measured).Job(pattern.Measured)}} {
		for _, method := range []string{pattern.Measured, pattern.Thumb} {
			for _, u := range []measure.Unit{measure.In, measure.Cm} {
				job := b.job.WithStyle(pattern.Method, pattern.PickValue(method))
				job.Unit = u
				out = append(out, body{b.name + " " + method + " " + u.String(), job})
			}
		}
	}
	return out
}

// sheet drafts a body, whole.
func sheet(t testing.TB, b body) *pattern.Sheet {
	t.Helper()
	s := workroom.Draft(b.job)
	require.True(t, s.Complete, b.name)
	return s
}

// p36 is figure P36 by a method, in inches.
func p36(t testing.TB, method string) *pattern.Sheet {
	t.Helper()
	return sheet(t, body{"P36 " + method, figure.P36(t, method).Job(method)})
}
