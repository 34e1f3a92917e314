package truing_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
)

func ExampleRun() {
	sheet := workroom.Draft(figure(pattern.Measured))
	for _, f := range truing.Run(sheet) {
		switch f.Check {
		case "side_seams", "bust_girth", "balance":
			fmt.Printf("%s  %s: %s\n", f.Verdict, f.Title, f.Says.In(measure.In))
		}
	}
	// Output:
	// pass  Side seams meet: 32 3/4 and 32 3/4, front and back.
	// pass  Bust girth: 38 1/2 and 38 1/2: body 36, ease 2 1/2.
	// pass  Balance: 17 3/4 and 16 3/4, front and back waist: the dart takes up 1.
}

// The figure of bust 36 with all defaults has nothing to be told.
func TestFigureIsClean(t *testing.T) {
	for _, f := range workroom.Draft(figure(pattern.Measured)).Findings {
		require.NotEqual(t, pattern.Fail, f.Verdict, f.Says.In(measure.In))
		require.NotEqual(t, pattern.Advise, f.Verdict, f.Says.In(measure.In))
	}
	thumb := workroom.Draft(figure(pattern.Thumb))
	require.Zero(t, thumb.Count(pattern.Fail))
	_, found := find(thumb, "no_ease")
	require.True(t, found)
}

// Whatever is chosen, every check gives a finding that can be shown, and the
// same sheet gives the same findings.
func TestAnyDraftIsJudged(t *testing.T) {
	choices := workroom.Choices(pattern.Dress)
	rapid.Check(t, func(t *rapid.T) {
		job := figure(rapid.SampledFrom([]string{pattern.Measured, pattern.Thumb}).Draw(t, "method"))
		for _, id := range job.Body.IDs() {
			l, _ := job.Body.Get(id)
			job = job.WithBody(id, measure.Length(l.MM()*rapid.Float64Range(0.8, 1.25).Draw(t, string(id))))
		}
		for range rapid.IntRange(0, 3).Draw(t, "choices") {
			c := rapid.SampledFrom(choices).Draw(t, "choice")
			if c.Kind == pattern.KindLength {
				job = job.WithStyle(c.ID, pattern.LengthValue(measure.Length(rapid.Float64Range(0, 300).Draw(t, "length"))))
			}
		}
		s := workroom.Draft(job)
		checked := map[string]bool{}
		for _, f := range s.Findings {
			checked[f.Check] = true
			for _, x := range []float64{f.Got, f.Want, f.Low, f.High, f.Where.At.X, f.Where.At.Y} {
				require.False(t, math.IsNaN(x) || math.IsInf(x, 0), "%s: %v", f.Check, f)
			}
			require.False(t, f.Says.IsEmpty(), f.Check)
			if f.Verdict == pattern.Advise || f.Verdict == pattern.Fail {
				require.NotEmpty(t, f.Code, f.Check)
				require.False(t, f.Cure.IsEmpty(), f.Code)
			}
		}
		require.Len(t, checked, 28)
		require.Equal(t, s.Findings, truing.Run(s))
	})
}

func BenchmarkRunOnADraft(b *testing.B) {
	s := workroom.Draft(figure(pattern.Measured))
	for b.Loop() {
		truing.Run(s)
	}
}
