package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// What each neckline wants besides its girth is said where it is amiss, and
// only there.
func TestNecklineAdvice(t *testing.T) {
	in := func(x float64) pattern.Value { return pattern.LengthValue(measure.Length(x) * measure.Inch) }
	pick := pattern.PickValue
	codes := []string{"neck_wide", "neck_slides", "neck_low", "neck_gape", "sweetheart_narrow", "opening_low"}
	for code, style := range map[string]map[pattern.ChoiceID]pattern.Value{
		"":                  {},
		"neck_wide":         {"neck_widening": in(2.5)},
		"neck_slides":       {"neck_widening": in(1.75), "back_neck_depth": in(3.5)},
		"neck_low":          {"front_neckline": pick("v"), "front_neck_depth": in(7.5)},
		"neck_gape":         {"front_neckline": pick("v")},
		"sweetheart_narrow": {"front_neckline": pick("sweetheart"), "neck_widening": in(0.25)},
		"opening_low":       {"front_neckline": pick("slit"), "neck_opening_length": in(6)},
	} {
		job := figure(pattern.Measured)
		for id, v := range style {
			job = job.WithStyle(id, v)
		}
		s := workroom.Draft(job)
		require.True(t, s.Complete, code)
		for _, c := range codes {
			_, found := find(s, c)
			if c == code {
				require.True(t, found, "%s is not said", code)
			} else if code == "" {
				require.False(t, found, "%s is said of a plain neck", c)
			}
		}
		cures(t, job, code)
		thumb := workroom.Draft(job.WithStyle(pattern.Method, pick(pattern.Thumb)))
		_, found := find(thumb, code)
		require.False(t, found && code != "", "%s by thumb", code)
	}
}

// A waist that hangs loose is taken in by the darts that the cure offers.
func TestWaistDartsCure(t *testing.T) {
	job := figure(pattern.Measured).WithBody(measure.WaistGirth, 24*measure.Inch)
	f, found := find(workroom.Draft(job), "waist_spare")
	require.True(t, found)
	require.Equal(t, "waist_shaping", f.Input)
	require.Equal(t, 1, cures(t, job, "waist"))
	// Once it has darts, no darts are offered.
	f, found = find(workroom.Draft(job.WithStyle("waist_shaping", *f.Try)), "waist_spare")
	require.False(t, found, f.Says.In(job.Unit))
}

// By a slit in the neck she gets in where the ring alone would not let her.
func TestSlitLetsHerIn(t *testing.T) {
	job := figure(pattern.Measured).WithStyle("closure", pattern.PickValue("zip_side"))
	f, found := find(workroom.Draft(job), "head_passage")
	require.True(t, found)
	require.Equal(t, "closure", f.Input)
	_, found = find(workroom.Draft(job.WithStyle("front_neckline", pattern.PickValue("slit"))), "head_passage")
	require.False(t, found)
}
