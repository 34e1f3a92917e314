package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// A lesson by another method drafts so while it runs; the job stays as it is.
func TestALessonDraftsByItsMethod(t *testing.T) {
	d := New(Settings{})
	d.Change(d.Job().WithBody(measure.BustGirth, 900), "bust")
	job := d.Job()
	d.Study(Running{ID: "back", Page: 1, Method: pattern.Thumb})
	require.True(t, d.Running().On())
	require.Equal(t, pattern.Thumb, d.Sheet().Method)
	require.Equal(t, job, d.Job())
	version := d.Version()
	d.Study(Running{ID: "back", Page: 2, Method: pattern.Thumb})
	require.Equal(t, version, d.Version(), "a page is no change")
	d.Learn(Running{ID: "back", Page: 2})
	require.Equal(t, map[string]int{"back": 2}, d.Learnt())
	d.Study(Running{})
	require.Equal(t, pattern.Measured, d.Sheet().Method)
	d.Study(Running{ID: "back", Page: 1})
	d.Take(Opened{})
	require.False(t, d.Running().On(), "another session has another place")
	require.Empty(t, d.Learnt())
}
