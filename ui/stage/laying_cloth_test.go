package stage

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

func TestEachClothHasItsOwnLay(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	require.Equal(t, []string{"main", "interfacing"}, s.names)
	main := s.work.Problem
	u.do("keep-lay")
	require.Contains(t, u.do("other-cloth").Say, "Now on the interfacing cloth")
	require.Contains(t, u.screen(), "Interfacing cloth, 36 in wide")
	verified(t, s)
	require.NotEqual(t, len(main.Items), len(s.work.Problem.Items))
	ask := s.Begin()
	require.Nil(t, ask.Run, "it searches already")
	first := s.best.Length
	s.until = 100_000
	ask = s.slice()
	u.take(s.Hear(ask.Run()))
	require.LessOrEqual(t, s.best.Length, first)
	verified(t, s)
	found := s.best

	u.do("other-cloth")
	require.Equal(t, "main", s.cloth)
	require.Contains(t, u.screen(), "Kept lay: ")
	u.do("other-cloth")
	require.Equal(t, found, s.best, "what was found on the other cloth is there still")

	u.do("keep-lay")
	require.Len(t, d.Job().Lays, 2)
	require.Contains(t, u.screen(), "Kept lay: ")
	d.Undo()
	u.screen()
	require.Len(t, d.Job().Lays, 1)
	require.Equal(t, "interfacing", s.cloth)
	require.NotContains(t, u.screen(), "Kept lay: ")
	d.Undo()
	u.screen()
	require.Empty(t, d.Job().Lays)
	d.Redo()
	u.do("other-cloth")
	require.Contains(t, u.screen(), "Kept lay: ")
}

func TestASearchGoesOnFromTheKeptLay(t *testing.T) {
	_, s, u := layBench(t, wideCloth(45))
	s.until = 300_000
	ask := s.Begin()
	s.until = 300_000
	for ask.Run != nil {
		ask = u.take(s.Hear(ask.Run()))
	}
	require.Equal(t, int64(300_000), s.reached)
	long, search := s.best.Length, s.search
	u.do("keep-lay")
	u.screen()
	require.Same(t, search, s.search, "kept, and gone on with where it was")

	// Another day: only what the session has is known.
	again := NewLay(s.d)
	user{t, s.d, again}.screen()
	require.Equal(t, fromSession, again.origin)
	reached := again.reached
	ask = again.Do("search-on")
	again.until = reached + 100_000
	ask = again.Hear(ask.Run())
	require.Nil(t, ask.Run)
	require.Greater(t, again.reached, reached)
	require.LessOrEqual(t, again.best.Length, long)
	require.Empty(t, lay.Verify(again.work.Problem, again.best))
}

func TestEscStopsWidthsAndRemnantAndKeepsWhatIsFound(t *testing.T) {
	_, s, u := layBench(t, wideCloth(58))
	s.effort = 1 << 40 // it would never end
	ask := u.do("widths")
	answer := make(chan desk.Answer)
	go func() { answer <- ask.Run() }()
	require.Contains(t, u.do(keys.Back).Say, "what is found by now stays")
	require.Contains(t, u.take(s.Hear(<-answer)).Say, "what was found by then")
	require.Len(t, s.aside.widths, 5)
	for _, r := range s.aside.widths {
		require.NoError(t, r.Err)
		require.Positive(t, r.Lay.Length)
	}
	require.False(t, s.busy())
	u.do("remnant")
	u.types("30 x 58")
	ask = u.do(keys.Accept)
	go func() { answer <- ask.Run() }()
	u.do(keys.Back)
	require.Contains(t, s.Hear(<-answer).Say, "It does not fit yet")
	require.NotNil(t, s.aside.fit)
	require.True(t, s.aside.fit.Stopped)
}

func TestTheClothIsChangedInItsForm(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	u.do("cloth")
	require.True(t, s.Typing())
	require.Contains(t, u.screen(), "width, as sold")
	require.Contains(t, u.screen(), "1/2 in, the usual")
	u.do("clear")
	u.types("45")
	require.Contains(t, u.do(keys.Accept).Says, "Main cloth, width, as sold: 45 in")
	c, _ := d.Job().Cloth("main")
	require.InDelta(t, 45, measure.In.Of(c.Width), 1e-9)
	require.InDelta(t, 4, c.ShrinkAlong, 1e-9, "what else is known stays")
	u.do("field-up", "nudge-up") // the next width in shops
	c, _ = d.Job().Cloth("main")
	require.InDelta(t, 54, measure.In.Of(c.Width), 1e-9)
	to := func(id string) { s.form.to(s.form.find(id)) }
	to("fold")
	u.do("text-right")
	to("nap")
	u.do("text-right")
	to("off_grain")
	u.do("text-right", "text-right")
	to("shrink_across")
	u.types("2,5")
	u.do(keys.Accept)
	to("price")
	u.types("much")
	require.True(t, u.do(keys.Accept).Warn)
	c, _ = d.Job().Cloth("main")
	require.Equal(t, lay.Flat, c.Fold)
	require.True(t, c.Nap)
	require.InDelta(t, 2, c.OffGrain, 0)
	require.InDelta(t, 2.5, c.ShrinkAcross, 0)
	require.Zero(t, c.Price)
	to("edges")
	u.types("40")
	require.True(t, u.do(keys.Accept).Warn, "nothing is left between such selvages")
	to("cloth")
	require.Contains(t, u.do("text-right").Say, "Now on the interfacing cloth")
	require.True(t, s.Typing(), "its form is open")
	require.Contains(t, u.screen(), "36 in, the usual")
	u.do(keys.Back)
	require.False(t, s.Typing())
	verified(t, s)
	require.Equal(t, "interfacing", s.cloth)
	u.do("other-cloth")
	require.Contains(t, u.screen(), "Main cloth, 54 in wide, flat, with a nap.")
}
