package overlay

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
)

// The list says how each lesson stands, and why one waits.
func TestLessonsList(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	golden.Check(t, "lessons.txt", shown(Lessons(d), 80, 21))
	require.Contains(t, shown(Lessons(d), 120, 60), "new")
	d.Learn(desk.Running{ID: "tape", Page: 14})
	d.Learn(desk.Running{ID: "back", Page: 7})
	require.False(t, d.Unsaved(), "how far she is makes no star")
	view := shown(Lessons(d), 120, 60)
	require.Regexp(t, `(?m)1 The tape +done`, view)
	require.Regexp(t, `(?m)^> +2 The back by chalk +at 8 of 13`, view, "the next one is in hand")
	require.Regexp(t, `(?m)9 Onto the cloth +new`, view)
	ask := press(Lessons(d), "enter")
	require.True(t, ask.Close)
	require.Equal(t, desk.Running{ID: "back", Page: 8, Method: pattern.Thumb}, *ask.Study)
	require.Nil(t, ask.Take)
}

// Without a client the sample client sits; with one she may.
func TestLessonsWithTheSampleClient(t *testing.T) {
	at(t)
	d := newDesk(canvas.ASCII)
	ask := press(Lessons(d), "enter")
	require.NotNil(t, ask.Take)
	require.Equal(t, "tape", ask.Study.ID)

	d.Take(desk.Opened{Saved: pattern.Job{Client: pattern.Client{Name: "New Client"}}})
	o := Lessons(d)
	require.Regexp(t, `(?m)2 The back by chalk .*Not now`, shown(o, 160, 60))
	require.NotRegexp(t, `(?m)1 The tape .*Not now`, shown(o, 160, 60), "it takes what the others wait for")
	typed(o, "sample client")
	press(o, "enter", "ctrl+u")
	require.NotRegexp(t, `(?m)2 The back by chalk .*Not now`, shown(o, 160, 60))
	require.Contains(t, shown(o, 160, 60), "New Client, as open now")
	typed(o, "back by chalk")
	ask = press(o, "enter")
	require.NotNil(t, ask.Take)
	require.Equal(t, "back", ask.Study.ID)
	require.Equal(t, Sample(d).Body, ask.Take.Saved.Body)
}

func TestFaultsList(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	took := ""
	to := func(id string) desk.Ask { took = id; return desk.Ask{Close: true} }
	o := Faults(d, to)
	golden.Check(t, "faults.txt", shown(o, 80, 21))
	require.True(t, press(o, "down", "enter").Close)
	require.Equal(t, lesson.Faults()[1].ID, took)
	d.Change(d.Job().WithoutBody(measure.BustGirth), "bust out")
	require.Contains(t, press(Faults(d, to), "enter").Say, "Not now")
}

// A step that the last change made another is marked so.
func TestStepsSayWhatChanged(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	require.NotContains(t, shown(Steps(d, 3, toStep), 80, 60), "changed")
	d.Change(d.Job().WithBody(measure.HipGirth, measure.In.Length(42)), "hip")
	view := shown(Steps(d, 3, toStep), 80, 60)
	require.Regexp(t, `Hip at the side +to do, changed`, view)
	require.NotRegexp(t, `Neck base point +done, changed`, view)
}
