package fitting_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

// shift changes an input of a job by so many eighths.
func shift(job pattern.Job, input string, eighths int) pattern.Job {
	s := workroom.Draft(job)
	by := figure.In(float64(eighths) / 8)
	if fitting.IsBody(input) {
		f, _ := s.Figure(measure.ID(input))
		return job.WithBody(measure.ID(input), f.Value+by)
	}
	set, _ := s.Setting(pattern.ChoiceID(input))
	return job.WithStyle(pattern.ChoiceID(input), pattern.LengthValue(set.Value.Length+by))
}

// pinsOf is what a dress drafted as was would be pinned by on a body that wants
// it as now.
func pinsOf(t require.TestingT, was, now pattern.Job) []fitting.Pin {
	told, err := fitting.Compare(workroom.Draft(was), workroom.Draft(now))
	require.NoError(t, err)
	var pins []fitting.Pin
	for _, x := range told {
		if math.Abs(x.Gives.MM()) > 0.1 {
			pins = append(pins, fitting.Pin{Spot: x.Spot.ID, By: x.Gives})
		}
	}
	return pins
}

func changesOf(e fitting.Explanation) map[string]int {
	out := map[string]int{}
	for _, c := range e.Changes {
		out[c.Input] = int(math.Round((c.New.Length - c.Old.Length).Inches() * 8))
	}
	return out
}

// Inputs changed by known amounts are found again from the pins alone.
func TestPinsGiveTheInputsBack(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	for _, c := range []map[string]int{
		{"shoulder_drop": 2},
		{"ease_hip": 4},
		{"back_neck_to_waist": -4},
		{"side_neck_to_waist": 3, "bust_point_distance": 2},
		{"side_waist_limit": 1, "ease_hip": -2},
		{"armhole_depth": -2, "armhole_pinch": 2},
		{"front_neck_depth": -4, "neck_widening": -1},
		{"side_neck_to_bust_point": 3, "shoulder_inset": 2, "length": -8},
		{"hem_level_side": 4, "hem_level_back": 2, "across_front": -6},
		{"back_neck_depth": 2, "waist_to_hip": -4, "hem_peg": -2, "ease_bust": 4},
	} {
		now := job
		for _, id := range []string{"shoulder_drop", "ease_hip", "back_neck_to_waist", "side_neck_to_waist", "bust_point_distance", "side_waist_limit", "armhole_depth", "armhole_pinch", "front_neck_depth", "neck_widening", "side_neck_to_bust_point", "shoulder_inset", "length", "hem_level_side", "hem_level_back", "across_front", "back_neck_depth", "waist_to_hip", "hem_peg", "ease_bust"} {
			if n, ok := c[id]; ok {
				now = shift(now, id, n)
			}
		}
		e, err := fitting.Explain(workroom.Draft(job), pinsOf(t, job, now))
		require.NoError(t, err)
		require.Equal(t, c, changesOf(e))
		require.Greater(t, e.Share, 0.999, "%v", c)
		require.Equal(t, "It accounts for all that was pinned.", e.How.In(measure.In))
		require.Empty(t, e.Also)
	}
}

// The same for any few inputs: what is found draws the dress that was wanted.
func TestAnyPinsAreExplained(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	inputs := []string{"shoulder_drop", "neck_widening", "front_neck_depth", "side_neck_to_bust_point", "side_neck_to_waist", "ease_bust", "armhole_depth", "back_neck_to_waist", "side_waist_limit", "waist_to_hip", "ease_hip", "hem_peg"}
	was := workroom.Draft(job)
	rounds := 0
	rapid.Check(t, func(t *rapid.T) {
		if rounds++; rounds > 6 {
			return // each is many drafts
		}
		now, want := job, map[string]int{}
		for _, id := range rapid.SliceOfNDistinct(rapid.SampledFrom(inputs), 1, 3, rapid.ID).Draw(t, "inputs") {
			n := rapid.SampledFrom([]int{-3, -2, 2, 3, 4}).Draw(t, id)
			want[id], now = n, shift(now, id, n)
		}
		if !workroom.Draft(now).Complete {
			return
		}
		pins := pinsOf(t, job, now)
		e, err := fitting.Explain(was, pins)
		require.NoError(t, err)
		require.LessOrEqual(t, len(e.Changes), len(want)+1, "few inputs: %v for %v", changesOf(e), want)
		for _, x := range e.Told {
			require.InDelta(t, 0, x.Left().Inches(), 1.0/16+1e-6, "%s: %v for %v", x.Spot.ID, changesOf(e), want)
		}
	})
}

// One pin alone goes to the input that does just that, and what follows of
// itself is not held against it.
func TestOnePin(t *testing.T) {
	sheet := workroom.Draft(figure.Body36(t, pattern.Measured))
	for _, c := range []struct {
		spot string
		by   float64
		want map[string]int
	}{
		{"shoulder_end", -0.5, map[string]int{"shoulder_drop": 2}},
		{"side_hip", 0.25, map[string]int{"ease_hip": 4, "hem_peg": 1}},
		{"hem_side", -0.5, map[string]int{"hem_level_side": 4}},
		{"armhole_fold", -0.25, map[string]int{"armhole_pinch": 2}},
		{"back_length", -0.5, map[string]int{"back_neck_to_waist": -4, "length": -4}}, // the skirt keeps its length
		{"front_neck", 0.5, map[string]int{"front_neck_depth": -4}},
	} {
		e, err := fitting.Explain(sheet, []fitting.Pin{{Spot: c.spot, By: figure.In(c.by)}})
		require.NoError(t, err)
		require.Equal(t, c.want, changesOf(e), c.spot)
	}
}

func TestPinsThatNothingExplains(t *testing.T) {
	sheet := workroom.Draft(figure.Body36(t, pattern.Measured))
	for _, pins := range [][]fitting.Pin{
		nil, {{Spot: "elbow", By: 5}}, {{Spot: "underarm", By: 5}, {Spot: "underarm", By: 5}}, {{Spot: "underarm", By: 500}}, {{Spot: "underarm", By: 0}},
	} {
		_, err := fitting.Explain(sheet, pins)
		require.Error(t, err)
	}
	_, err := fitting.Explain(workroom.Draft(pattern.Job{}), []fitting.Pin{{Spot: "underarm", By: 5}})
	require.ErrorContains(t, err, "there is nothing to fit yet")
	// The hem cannot be raised less than not at all, and the length has it.
	e, err := fitting.Explain(sheet, []fitting.Pin{{Spot: "hem_side", By: figure.In(0.5)}})
	require.NoError(t, err)
	require.True(t, e.Possible())
}

func TestSpotsAreWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range fitting.Spots() {
		require.False(t, seen[s.ID], s.ID)
		seen[s.ID] = true
		require.Contains(t, fitting.Places(), s.Place)
		for _, words := range []string{s.Title, s.How, s.More, s.Less} {
			require.NotEmpty(t, words, s.ID)
		}
	}
	s, _ := fitting.FindSpot("side_waist")
	require.Equal(t, "pinned 1/4", s.Says(-figure.In(0.25)).In(measure.In))
}

func BenchmarkExplain(b *testing.B) {
	sheet := workroom.Draft(figure.Body36(b, pattern.Measured))
	pins := []fitting.Pin{{Spot: "shoulder_end", By: figure.In(-0.5)}, {Spot: "side_waist", By: figure.In(-0.25)}, {Spot: "hem_side", By: figure.In(-0.5)}}
	for b.Loop() {
		if _, err := fitting.Explain(sheet, pins); err != nil {
			b.Fatal(err)
		}
	}
}

func ExampleExplain() {
	job := pattern.Job{}.WithBody(measure.BustGirth, 36*measure.Inch).WithBody(measure.WaistGirth, 28*measure.Inch).WithBody(measure.HipGirth, 38*measure.Inch)
	job = job.WithBody(measure.Height, 66*measure.Inch)
	e, _ := fitting.Explain(workroom.Draft(job), []fitting.Pin{{Spot: "shoulder_end", By: -measure.Inch / 2}})
	fmt.Println(e.Seen)
	for _, c := range e.Changes {
		fmt.Println(c.Title, "by", measure.In.Tape(c.New.Length-c.Old.Length))
	}
	fmt.Println(e.How.In(measure.In))
	// Output:
	// Pinned: shoulder seam, outer end pinned 1/2 in.
	// Shoulder drop by 1/4
	// It accounts for nearly all; 1/16 is left at "Shoulder seam, outer end".
}
