package ui

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

func TestALayThatDoesNotHoldAnyMoreIsSaidOnOpening(t *testing.T) {
	job := pattern.Job{Unit: measure.In, Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: measure.In.Length(36), measure.WaistGirth: measure.In.Length(28), measure.HipGirth: measure.In.Length(38), measure.Height: measure.In.Length(65),
	})}
	s, err := laid.Show(workroom.Draft(job), laid.Main)
	require.NoError(t, err)
	job = job.WithLay(s.Keep(s.Lay))
	opened := func(job pattern.Job) string {
		m := NewModel(desk.Settings{})
		m.takeUp(desk.Opened{Saved: job, Says: "Opened."})
		return m.d.Message
	}
	gone := desk.New(desk.Settings{}).Tell(text.OpenedLayGone)
	require.NotContains(t, opened(job), gone)
	require.Equal(t, "Opened. "+gone, opened(job.WithBody(measure.HipGirth, measure.In.Length(46))))
}
