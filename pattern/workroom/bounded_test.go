package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// A cure offers no range whose least is more than its most: where a body leaves
// nothing between, it says what to measure again.
func TestNoCureOffersAnEmptyRange(t *testing.T) {
	job := figure.Draft{Measures: base}.Job(pattern.Measured)
	for _, c := range []struct {
		name, code, cure string
		job              pattern.Job
	}{
		{"a bust point too high", "R7", "what can be drawn lies between", job.WithBody(measure.SideNeckToBustPoint, 5*measure.Inch)},
		{"an underarm below the waist", "R7", "measure the shoulder drop", job.WithBody(measure.ShoulderDrop, 37.5*measure.Inch).WithBody(measure.BustGirth, 83*measure.Inch)},
		{"a neck too deep", "R12", "a depth between", job.WithStyle("front_neck_depth", pattern.LengthValue(14*measure.Inch))},
		{"a neck with no room", "R12", "leave no room for a neck", job.WithBody(measure.SideNeckToBustPoint, 2*measure.Inch)},
	} {
		s := workroom.Draft(c.job)
		require.NotNil(t, s.Refused, c.name)
		found := false
		for _, r := range s.Refused {
			found = found || r.Code == c.code
			if r.Code == c.code {
				require.Contains(t, r.Cure.In(measure.In), c.cure, c.name)
			}
		}
		require.True(t, found, "%s: %v", c.name, s.Refused)
	}
}
