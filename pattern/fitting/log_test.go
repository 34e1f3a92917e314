package fitting_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

var march = pattern.Date{Year: 2026, Month: 3, Day: 20}

// keep takes the first way of a sign and writes it down.
func keep(t require.TestingT, job pattern.Job, id string, pinned float64) pattern.Job {
	sign, ok := fitting.Find(id)
	require.True(t, ok, id)
	p := fitting.Propose(workroom.Draft(job), sign, figure.In(pinned))[0]
	require.True(t, p.Possible(), "%s: %s", id, p.WhyNot.In(measure.In))
	return p.Keep(march)
}

func TestKeptAndTakenBack(t *testing.T) {
	start := figure.Body36(t, pattern.Measured)
	job := keep(t, start, "pull_to_armhole", 0.5)
	require.Equal(t, []pattern.Fitting{{
		Date: march, Seen: "Creases pull from the neck slanting down to the front of the armhole: 1/2 in.",
		Why:    "Shoulder end down. Her shoulder slopes more than it was drafted. Half of the fold goes on each piece, and the armhole goes down with it.",
		Change: []pattern.Change{{Input: "shoulder_drop", By: "1 1/2 in -> 1 3/4 in"}},
	}}, job.Fittings)
	require.Equal(t, fitting.Stands, fitting.Log(job)[0].State)
	require.Empty(t, start.Fittings, "the job before is as it was")

	back, err := fitting.Back(job, 1)
	require.NoError(t, err)
	require.Equal(t, start.Body, back.Body)
	require.Equal(t, fitting.TakenBack, fitting.Log(back)[0].State)
	require.False(t, job.Fittings[0].Out, "undo puts the former job back")
	_, err = fitting.Back(back, 1)
	require.ErrorContains(t, err, "taken back already")

	again, err := fitting.Again(back, 1, pattern.Date{Year: 2026, Month: 4, Day: 20})
	require.NoError(t, err)
	require.Equal(t, job.Body, again.Body)
	require.Equal(t, 4, again.Fittings[0].Date.Month)
	_, err = fitting.Again(again, 1, march)
	require.ErrorContains(t, err, "stands already")
	_, err = fitting.Back(again, 2)
	require.ErrorContains(t, err, "take one of 1 to 1")
}

// Of two alterations of one input the first can be taken back, and the second
// still stands.
func TestOneOfTwoTakenBack(t *testing.T) {
	job := keep(t, keep(t, figure.Body36(t, pattern.Measured), "bust_tight", 0.25), "bust_tight", 0.125)
	v, _ := job.Style.Get("ease_bust")
	require.Equal(t, figure.In(3.25), v.Length)
	back, err := fitting.Back(job, 1)
	require.NoError(t, err)
	v, _ = back.Style.Get("ease_bust")
	require.InDelta(t, 2.75, v.Length.Inches(), 1e-9)
	log := fitting.Log(back)
	require.Equal(t, fitting.TakenBack, log[0].State)
	require.Equal(t, fitting.Stands, log[1].State)
	require.Equal(t, "Ease at the bust 2 1/2 -> 2 3/4", log[1].Says(measure.In))
}

// A new set of measurements keeps what still makes sense and asks about the
// rest.
func TestMeasuredAnew(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	job.Client.Measured = pattern.Date{Year: 2025, Month: 11, Day: 2}
	job = keep(t, keep(t, keep(t, job, "pull_to_armhole", 0.5), "gape_armhole", 0.25), "dart_above", 0.5)
	job, err := fitting.NewSet(job, march)
	require.NoError(t, err)
	require.Empty(t, fitting.Asked(job), "nothing was taken anew yet")
	_, err = fitting.NewSet(job, march)
	require.ErrorContains(t, err, "nothing was measured since")

	job = job.WithBody(measure.ShoulderDrop, figure.In(1.625)).WithBody(measure.WaistGirth, figure.In(29))
	log := fitting.Log(job)
	require.Equal(t, []fitting.State{fitting.Overtaken, fitting.Stands, fitting.Stands}, []fitting.State{log[0].State, log[1].State, log[2].State})
	asked := fitting.Asked(job)
	require.Len(t, asked, 1)
	require.Equal(t, "Shoulder drop was altered from 1 1/2 to 1 3/4 and has been measured since: 1 5/8. Does that hold, or is it altered again, to 1 7/8?", asked[0].Asks()[0].In(measure.In))

	settled, err := fitting.Settle(job, 1)
	require.NoError(t, err)
	require.Equal(t, job.Body, settled.Body, "the tape holds")
	require.Empty(t, fitting.Asked(settled))

	again, err := fitting.Again(job, 1, march)
	require.NoError(t, err)
	l, _ := again.Body.Get(measure.ShoulderDrop)
	require.InDelta(t, 1.875, l.Inches(), 1e-9)
	require.Empty(t, fitting.Asked(again))

	names := []string{"2 November 2025"}
	says := map[measure.ID]string{}
	for _, m := range fitting.Then(again) {
		says[m.ID] = m.Says(names).In(measure.In)
	}
	require.Equal(t, "Waist girth 28 -> 29, 1 more since 2 November 2025.", says[measure.WaistGirth])
	require.Equal(t, "Hip girth 38, as since 2 November 2025.", says[measure.HipGirth])
	require.Equal(t, "Shoulder drop 1 3/4 -> 1 7/8, 1/8 more since 2 November 2025; 1/4 of it by alterations.", says[measure.ShoulderDrop])
}

func TestWrittenByHand(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	job.Fittings = []pattern.Fitting{{Seen: "front armhole gapes", Change: []pattern.Change{{Input: "dart_extra", By: "1/4"}}}}
	log := fitting.Log(job)
	require.Equal(t, fitting.Noted, log[0].State)
	require.Equal(t, "Dart extra 1/4", log[0].Says(measure.In))
	_, err := fitting.Back(job, 1)
	require.ErrorContains(t, err, "written by hand")
	_, err = fitting.Again(job, 1, march)
	require.ErrorContains(t, err, "written by hand")
}

// Whatever is altered, taken back and made again in any order: with everything
// taken back her body and her choices are what they were.
func TestTakingAllBackIsTheStart(t *testing.T) {
	start := figure.Body36(t, pattern.Measured)
	ids := []string{"pull_to_armhole", "bust_tight", "bust_loose", "gape_armhole", "waist_loose", "dart_above", "too_long", "hem_dips_back", "armhole_high"}
	rapid.Check(t, func(t *rapid.T) {
		job := start
		for range rapid.IntRange(1, 5).Draw(t, "changes") {
			switch n := len(job.Fittings); rapid.IntRange(0, 3).Draw(t, "what") {
			case 0, 1:
				sign, _ := fitting.Find(rapid.SampledFrom(ids).Draw(t, "sign"))
				if p := fitting.Propose(workroom.Draft(job), sign, figure.In(0.125*float64(rapid.IntRange(1, 4).Draw(t, "eighths"))))[0]; p.Possible() {
					job = p.Keep(march)
				}
			case 2:
				if n > 0 {
					job, _ = fitting.Back(job, rapid.IntRange(1, n).Draw(t, "back"))
				}
			case 3:
				if n > 0 {
					job, _ = fitting.Again(job, rapid.IntRange(1, n).Draw(t, "again"), march)
				}
			}
		}
		for _, e := range fitting.Log(job) {
			require.NotEqual(t, fitting.Overtaken, e.State, "nothing was measured anew: %v", e.Kept)
		}
		for n := len(job.Fittings); n > 0; n-- {
			if !job.Fittings[n-1].Out {
				var err error
				job, err = fitting.Back(job, n)
				require.NoError(t, err)
			}
		}
		require.True(t, start.Style.Equal(job.Style), "%v", job.Style.IDs())
		for _, id := range start.Body.IDs() {
			a, _ := start.Body.Get(id)
			b, _ := job.Body.Get(id)
			require.InDelta(t, a.MM(), b.MM(), 1e-6, string(id))
		}
	})
}
