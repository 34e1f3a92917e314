package truing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
)

// What the checks say of 993 women of the ANSUR II survey (2012) with all
// defaults. A count within 2 is agreement: some values lie on their limits.
const countsAgree = 2

var measuredCounts = map[string]int{
	"dart_least": 179, "armhole_wide": 70, "front_hollow": 67, "dart_sharp": 47, "side_dives": 29, "waist_spare": 25,
	"dart_none": 17, "dart_droops": 13, "waist_out": 3, "armhole_small": 2, "bust_line_high": 2, "sit_snug": 0,
	"side_seams": 0, "shoulder_left": 0, "dart_big": 0, "high_hip": 0,
}

var thumbCounts = map[string]int{
	"armhole_deep": 876, "armhole_wide": 426, "dart_shorter": 382, "front_too_long": 281, "neck_tight": 199,
	"shoulder_seams": 46, "armhole_small": 11, "armhole_high": 7, "shoulder_left": 5, "waist_out": 5, "front_too_short": 0,
}

func jobOf(w ansur.Woman, method string) pattern.Job {
	job := pattern.Job{Unit: measure.Mm, Body: w.Body}
	return job.WithStyle("length", pattern.LengthValue(w.Length)).WithStyle(pattern.Method, pattern.PickValue(method))
}

type tally struct {
	codes                  map[string]int // women with that code
	clean, advised, failed int
}

func count(women []ansur.Woman, method string, counted map[string]int) tally {
	c := tally{codes: map[string]int{}}
	for _, w := range women {
		s := workroom.Draft(jobOf(w, method))
		seen, advised, failed := map[string]bool{}, false, !s.Complete || len(s.Refused) > 0
		for _, f := range s.Findings {
			failed = failed || f.Verdict == pattern.Fail
			if f.Code != "" && !seen[f.Code] {
				seen[f.Code] = true
				c.codes[f.Code]++
			}
			if _, ok := counted[f.Code]; ok && f.Verdict == pattern.Advise {
				advised = true
			}
		}
		switch {
		case failed:
			c.failed++
		case advised:
			c.advised++
		default:
			c.clean++
		}
	}
	return c
}

func agree(t *testing.T, want, got int, what string) {
	t.Helper()
	require.LessOrEqual(t, int(math.Abs(float64(want-got))), countsAgree, "%s: %d women, want %d", what, got, want)
}

func TestWomenByTheMeasuredMethod(t *testing.T) {
	c := count(ansur.Load(t), pattern.Measured, measuredCounts)
	t.Log(c)
	for code, want := range measuredCounts {
		agree(t, want, c.codes[code], code)
	}
	agree(t, 597, c.clean, "clean")
	agree(t, 396, c.advised, "advised")
	require.Zero(t, c.failed)
	agree(t, 383, c.codes["ask_upper_chest"], "ask_upper_chest")
	agree(t, 12, c.codes["underarm_join"], "underarm_join")
	agree(t, 12, c.codes["shoulder_line"], "shoulder_line")
	agree(t, 83, c.codes["facing_cross"], "facing_cross")
}

func TestWomenByThumb(t *testing.T) {
	women := ansur.Load(t)
	c := count(women, pattern.Thumb, thumbCounts)
	t.Log(c)
	for code, want := range thumbCounts {
		agree(t, want, c.codes[code], code)
	}
	agree(t, 22, c.clean, "clean")
	agree(t, 971, c.advised, "advised")
	require.Zero(t, c.failed)
	require.Equal(t, len(women), c.codes["no_ease"])
}
