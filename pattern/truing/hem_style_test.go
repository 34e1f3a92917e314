package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// A closed hem that holds her is opened by the cure; an opening that laps and
// has no room is closed by it.
func TestHemOpeningCures(t *testing.T) {
	closed := figure(pattern.Measured).WithStyle("hem_opening", pattern.PickValue("none")).
		WithBody(measure.StepLength, 28*measure.Inch)
	f, found := find(workroom.Draft(closed), "walking")
	require.True(t, found)
	require.Equal(t, "hem_opening", f.Input)
	require.Positive(t, cures(t, closed, "closed"))
	_, found = find(workroom.Draft(closed), "slit_low")
	require.False(t, found, "a hem that is closed has no slit")
}

// A dart that hangs down to its tip is turned by the cure.
func TestFrenchDartCures(t *testing.T) {
	low := figure(pattern.Measured).WithBody(measure.SideNeckToBustPoint, 12.5*measure.Inch).
		WithStyle("side_dart_below", pattern.LengthValue(1.5*measure.Inch))
	f, found := find(workroom.Draft(low), "dart_droops")
	require.True(t, found)
	require.NotNil(t, f.Try)
	require.Positive(t, cures(t, low, "low bust"))
}

// A hem that flares lies flat turned up a little; turned up far it is too
// full, and the cures put that right.
func TestFullHem(t *testing.T) {
	flared := figure(pattern.Measured).WithStyle("skirt_line", pattern.PickValue("a_line")).
		WithStyle("hem_flare", pattern.LengthValue(2.75*measure.Inch))
	for _, c := range []struct {
		deep  measure.Length
		found bool
		input string
	}{{measure.Inch, false, ""}, {2 * measure.Inch, true, "hem_allowance"}, {4 * measure.Inch, true, "hem_finish"}} {
		job := flared.WithStyle("hem_allowance", pattern.LengthValue(c.deep))
		f, found := find(workroom.Draft(job), "hem_full")
		require.Equal(t, c.found, found, "turned up by %v", c.deep)
		if !found {
			continue
		}
		require.Equal(t, c.input, f.Input)
		require.NotNil(t, f.Try)
		_, still := find(workroom.Draft(job.WithStyle(pattern.ChoiceID(f.Input), *f.Try)), "hem_full")
		require.False(t, still, "the cure of %v", c.deep)
	}
}
