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
