package laid_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

func work(t *testing.T, j pattern.Job) laid.Work {
	t.Helper()
	w, err := laid.New(sheets(workroom.Draft(j)), laid.Main)
	require.NoError(t, err)
	return w
}

func TestARemnantIsEnoughOrNot(t *testing.T) {
	in := measure.In.Length
	w := work(t, job())
	s := laid.Search{Evaluations: 60_000}
	f := w.Remnant(in(80), in(58), s, workroom.Draft)
	require.True(t, f.Fits)
	require.Empty(t, f.Cures)
	require.LessOrEqual(t, f.Needed, in(80))
	require.Empty(t, lay.Verify(f.Work.Problem, f.Lay))

	l, err := lay.Solve(w.Problem, lay.Options{Evaluations: 200_000})
	require.NoError(t, err)
	f = w.Remnant(w.Buy(l).Needed-in(3), in(58), s, workroom.Draft)
	require.False(t, f.Fits)
	require.Greater(t, f.ShortBy, measure.Length(0))
	require.NotEmpty(t, f.Cures, "three inches are in the hem or the length")
	for _, c := range f.Cures {
		require.NotEmpty(t, c.Lay.Placed)
		require.LessOrEqual(t, lay.Buy(c.Lay.Length, f.Work.Problem.Cloth).Needed, f.Along+1e-6, c.Input)
	}

	f = w.Remnant(in(80), in(10), s, workroom.Draft)
	require.False(t, f.Fits)
	require.Error(t, f.Narrow)
	require.Zero(t, f.ShortBy)
}

func TestANappedRemnantMayFitBothWays(t *testing.T) {
	j := job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(44), Nap: true})
	w := work(t, j)
	s := laid.Search{Evaluations: 60_000}
	f := w.Remnant(measure.In.Length(20), measure.In.Length(44), s, nil)
	require.False(t, f.Fits)
	require.Empty(t, f.Cures, "nothing makes a dress of twenty inches")
}

func TestEachWidthIsLaid(t *testing.T) {
	w := work(t, job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(50), Price: 10}))
	all := laid.ShopWidths(measure.In, w.Cloth.Width)
	require.Len(t, all, 6)
	rows := w.Widths(append([]measure.Length{100}, all...), laid.Search{Evaluations: 20_000})
	require.Error(t, rows[0].Err)
	own := 0
	for _, r := range rows[1:] {
		require.NoError(t, r.Err)
		require.InDelta(t, float64(r.Buy.Metric)/100, r.Cost, 1e-9)
		if r.Own {
			own++
		}
	}
	require.Equal(t, 1, own)
	require.Len(t, laid.ShopWidths(measure.Mm, 1500), 5)
}

func TestNapIsNeverSaidToSave(t *testing.T) {
	for _, nap := range []bool{false, true} {
		w := work(t, job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(44), Nap: nap}))
		s := laid.Search{Evaluations: 30_000}
		l, err := lay.Solve(w.Problem, lay.Options{Evaluations: s.Evaluations})
		require.NoError(t, err)
		require.Regexp(t, "nap", w.NapCost(l, s).In(measure.In))
	}
}

// What the tape takes of a lay is some steps, never what a search has found: at
// none of the widths between 42 and 50 in, where fronts and backs just fit side
// by side or just do not.
func TestASearchIsNeverLostToTheTape(t *testing.T) {
	s := workroom.Draft(job())
	for _, u := range []measure.Unit{measure.In, measure.Cm} {
		for _, wide := range []float64{42, 115 / 2.54, 48} {
			c := lay.DefaultCloth("main", u)
			c.Width = measure.In.Length(wide)
			w, err := laid.On(sheets(s), c)
			require.NoError(t, err)
			l, err := lay.Solve(w.Problem, lay.Options{Evaluations: 50_000})
			require.NoError(t, err)
			require.Empty(t, lay.Verify(w.Problem, l))
			free := w.Problem
			free.Cloth.Tape = 0
			tight, err := lay.Solve(free, lay.Options{Evaluations: 50_000})
			require.NoError(t, err)
			require.LessOrEqual(t, l.Length, tight.Length+5*w.Problem.Cloth.Tape, "%g in", wide)
			require.NotZero(t, l.Tape)
		}
	}
}
