package truing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// What a hem must open to, leg 34 in and 14 1/2 round: plain geometry worked
// out beforehand, inches. Rows are steps, columns hems at 16, 18, 20, 22
// above the floor.
var sweep = map[float64][4]float64{
	18: {33.559, 31.441, 29.324, 27.206},
	20: {35.676, 33.324, 30.971, 28.618},
	22: {37.794, 35.206, 32.618, 30.029},
	24: {39.912, 37.088, 34.265, 31.441},
	26: {42.029, 38.971, 35.912, 32.853},
	28: {44.147, 40.853, 37.559, 34.265},
}

// The table is read off whole sheets, so it also holds how the check finds
// floor, hem and leg.
func TestWalkingSweep(t *testing.T) {
	for stepLength, row := range sweep {
		for i, want := range row {
			hem := 16 + 2*float64(i)
			tr := newTrial()
			tr.body[measure.Height] = 34 / 0.515
			tr.body[measure.WaistToFloor] = 40 - 16.75 + hem // hem 40 and waist 16 3/4 down the back
			tr.body[measure.StepLength] = stepLength
			f := findings(t, tr.sheet(), "walking")[0]
			require.InDelta(t, want, f.Want/25.4, 0.001, "step %v, hem %v", stepLength, hem)
			require.InDelta(t, 37, f.Got/25.4, 0.001)
		}
	}
}

func TestWalkingTakesTheFloorFromEitherLength(t *testing.T) {
	tr := newTrial()
	delete(tr.body, measure.WaistToFloor)
	tr.body[measure.BackNeckToFloor] = 57.25
	byNape := findings(t, tr.sheet(), "walking")[0]
	byWaist := findings(t, newTrial().sheet(), "walking")[0]
	require.InDelta(t, byWaist.Want, byNape.Want, 1e-6)

	delete(tr.body, measure.BackNeckToFloor)
	require.Equal(t, pattern.Skip, findings(t, tr.sheet(), "walking")[0].Verdict)
	delete(tr.body, measure.Height)
	f := findings(t, tr.sheet(), "walking")[0]
	require.Equal(t, "Her height is not measured.", f.Says.In(measure.In))
	require.Equal(t, pattern.Pass, findings(t, tr.sheet(), "slit_height")[0].Verdict)
}

// Published exam item: head 22 and neck 20 ask for an opening of 1; cloth
// wants an inch more (common practice).
func TestPlacketOfHeadAndNeck(t *testing.T) {
	require.InDelta(t, 1, placket(22*inch, 20*inch).Inches(), 1e-9)
	require.Zero(t, placket(20*inch, 22*inch))

	tr := newTrial()
	tr.style["zip_length"] = 1.3
	require.Equal(t, pattern.Pass, findings(t, tr.sheet(), "head_passage")[0].Verdict, "ring 20 1/2 and twice 1.3 reach 22 and 1")
	tr.body[measure.HeadGirth] = 19.4
	tr.style["zip_length"] = 0
	require.Equal(t, pattern.Pass, findings(t, tr.sheet(), "head_passage")[0].Verdict)
}
