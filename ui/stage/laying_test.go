package stage

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

// layBench is the stage with her cloth of 60 in.
func layBench(t *testing.T, c pattern.Cloth) (*desk.Desk, *Lay, user) {
	d := bench36(t)
	c.Name = "main"
	job := d.Job().WithCloth(c)
	d.Change(job, "cloth")
	s := NewLay(d)
	s.effort = 20_000
	u := user{t, d, s}
	u.screen()
	return d, s, u
}

func wideCloth(in float64) pattern.Cloth {
	return pattern.Cloth{Width: measure.In.Length(in), ShrinkAlong: 4}
}

// verified says that the lay on the table keeps all the rules.
func verified(t require.TestingT, s *Lay) {
	require.Empty(t, lay.Verify(s.work.Problem, s.best))
}

func TestAFirstLayIsThereAtOnce(t *testing.T) {
	_, s, u := layBench(t, wideCloth(60))
	text := u.screen()
	require.Regexp(t, `Buy 1 [0-9/]+ yd \(1\.[0-9] m\)`, text)
	require.Contains(t, text, "First lay, side by side: ")
	require.Contains(t, text, "By the hand rule")
	require.Contains(t, text, "shrinks 4 %")
	require.Contains(t, text, "Main cloth, 60 in wide, folded lengthwise.")
	require.Contains(t, text, "decides the length")
	require.Contains(t, text, "Front", "the pieces have their names")
	verified(t, s)
}

// A search shows more and more, and ends: nothing runs by itself afterwards.
func TestTheSearchGoesOnInSlicesAndEnds(t *testing.T) {
	_, s, u := layBench(t, wideCloth(58))
	first := s.best.Length
	ask := s.Begin()
	require.NotNil(t, ask.Run)
	s.until = 300_000 // enough for a test
	require.Contains(t, u.screen(), "Searching; Esc stops it.")
	require.Nil(t, s.Begin().Run, "it does not begin twice")
	rounds := 0
	for ask.Run != nil {
		rounds++
		ask = u.take(s.Hear(ask.Run()))
		verified(t, s)
	}
	require.Equal(t, 2, rounds)
	require.Contains(t, ask.Say, "after 300,000 evaluations")
	require.Less(t, s.best.Length, first)
	require.Contains(t, u.screen(), "Best of ")
	require.NotContains(t, u.screen(), "Searching")
	require.Nil(t, s.stop)

	again := s.Begin()
	require.NotNil(t, again.Run, "coming back it goes on")
	s.Settle()
	require.Nil(t, s.stop, "another screen stops it")
	require.Nil(t, s.Hear(desk.Answer{Version: s.version, Value: foundLay{count: 1}}).Run)
	more := u.do("search-on")
	require.NotNil(t, more.Run, "n goes on")
	u.do("stop-lay")
	require.Nil(t, s.Hear(more.Run()).Run, "what was stopped does not go on")
	s.reached = longSearch
	require.Contains(t, u.do("search-on").Say, "long enough")
}

func TestStopEndsARunningSearchAtOnce(t *testing.T) {
	_, s, u := layBench(t, wideCloth(58))
	s.reached = usualSearch // the next slice is long
	ask := u.do("search-on")
	require.NotNil(t, ask.Run)
	done := make(chan desk.Answer)
	go func() { done <- ask.Run() }()
	require.Contains(t, u.do(keys.Back).Say, "Stopped at ")
	require.Nil(t, s.Hear(<-done).Run)
	verified(t, s)
}

func TestAnAnswerForAnotherJobIsDropped(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	s.reached = 0
	ask := s.Begin()
	d.Change(d.Job().WithBody(measure.HipGirth, measure.In.Length(44)), "hip")
	u.screen()
	require.Nil(t, s.stop, "its search was stopped")
	before := s.best
	require.Equal(t, desk.Ask{}, s.Hear(ask.Run()))
	require.Equal(t, before, s.best)
}

func TestEnterKeepsTheLayAsOneChange(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	before := d.Job()
	require.Empty(t, before.Lays)
	ask := u.do("keep-lay")
	require.Contains(t, ask.Says, "Lay on the main cloth kept: ")
	require.Len(t, d.Job().Lays, 1)
	require.Contains(t, u.screen(), "Kept lay: ")
	require.Contains(t, u.do("keep-lay").Say, "kept already")
	require.Nil(t, s.Begin().Run, "a kept lay is not searched over")
	_, ok := d.Undo()
	require.True(t, ok)
	require.Equal(t, before, d.Job())
	require.Contains(t, u.screen(), "First lay")

	d.Redo()
	d.Change(d.Job().WithBody(measure.HipGirth, measure.In.Length(46)), "hip")
	require.Contains(t, u.screen(), "it does not hold any")
}

func TestPiecesAreMovedPinnedAndTurned(t *testing.T) {
	_, s, u := layBench(t, wideCloth(60))
	require.Contains(t, u.do("piece-right").Say, "Tab takes a piece")
	require.Contains(t, u.do("pin").Say, "Tab takes a piece")
	u.do("piece-next")
	require.Equal(t, 0, s.index())
	require.Contains(t, u.screen(), "1. Front, one, on the fold")
	require.Contains(t, u.do("piece-down").Say, "lies on the fold", "the cloth lies: down is across")
	long := s.best.Length
	require.Contains(t, u.do("piece-right").Say, "Front moved and pinned")
	require.Len(t, s.work.Problem.Pins, 1)
	require.GreaterOrEqual(t, s.best.Length, long)
	verified(t, s)
	require.Contains(t, u.screen(), "Laid by you: ")
	require.Contains(t, u.do("piece-left").Say, "moved", "back to the cut end")
	require.Contains(t, u.do("piece-left").Say, "no free place")
	require.Contains(t, u.do("pin").Say, "is loose")
	require.Empty(t, s.work.Problem.Pins)
	require.Contains(t, u.do("pin").Say, "is pinned")
	turned := u.do("turn-piece")
	require.Contains(t, turned.Say, "moved and pinned")
	require.Equal(t, 180, s.best.Placed[s.index()].Turn)
	verified(t, s)
	pinned := s.work.Problem.Pins[0]
	ask := u.do("search-on")
	s.until = 100_000
	s.Hear(ask.Run())
	verified(t, s)
	require.Equal(t, pinned.At, s.work.Problem.Pins[0].At)
	u.do(keys.FieldBack)
	require.NotEqual(t, -1, s.index())
}

func TestNapForbidsTurning(t *testing.T) {
	c := wideCloth(60)
	c.Nap = true
	_, _, u := layBench(t, c)
	require.Contains(t, u.do("piece-next", "turn-piece").Say, "the nap runs one way")
	require.Contains(t, u.screen(), "with a nap")
}

// Whatever is done by hand, what lies on the table keeps all the rules.
func TestWhateverIsDoneTheLayHolds(t *testing.T) {
	for _, fold := range []string{lay.Lengthwise, lay.Flat, lay.OffCentre, lay.Across} {
		c := wideCloth(50)
		c.Fold = fold
		_, s, u := layBench(t, c)
		rapid.Check(t, func(t *rapid.T) {
			for range 3 {
				u.s.Do(rapid.SampledFrom([]keys.ID{"piece-next", "piece-left", "piece-right", "piece-up", "piece-down", "pin", "turn-piece", "stand"}).Draw(t, "action"))
				s.View(desk.Rect{Columns: 100, Rows: 30})
				verified(t, s)
			}
		})
	}
}

func TestAFlawIsTypedAndMarked(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	u.do("flaw")
	require.True(t, s.Typing())
	require.Contains(t, u.screen(), "A flaw, along, across, length, width, like 20, 4, 1, 1")
	u.types("20, 4, 1")
	require.True(t, u.do(keys.Accept).Warn)
	require.True(t, s.Typing(), "she can put it right")
	u.types(", 1 1/2")
	require.Contains(t, u.do(keys.Accept).Says, "Flaw at 20 in along, 4 in across")
	require.False(t, s.Typing())
	c, _ := d.Job().Cloth("main")
	require.Len(t, c.Flaws, 1)
	for i, want := range []float64{20, 4, 1, 1.5} {
		require.InDelta(t, want, measure.In.Of(c.Flaws[0][i]), 1e-9)
	}
	require.NotEmpty(t, s.flaws())
	verified(t, s)
	u.do("flaw", keys.Back)
	require.False(t, s.Typing())
}

func TestARemnantIsAskedFor(t *testing.T) {
	_, s, u := layBench(t, wideCloth(58))
	u.do("remnant")
	u.types("nonsense")
	require.True(t, u.do(keys.Accept).Warn)
	u.do("clear")
	u.types("90 x 58")
	ask := u.do(keys.Accept)
	require.NotNil(t, ask.Run)
	require.Contains(t, u.take(s.Hear(ask.Run())).Say, "It fits: ")
	require.Contains(t, u.screen(), "Remnant 90 by 58 in: It fits")
	u.do("remnant")
	u.types("30 X 58")
	ask = u.do(keys.Accept)
	require.Contains(t, s.Hear(ask.Run()).Say, "It does not fit: ")
}

func TestOtherWidthsAreLaid(t *testing.T) {
	c := wideCloth(50)
	c.Price = 12
	_, s, u := layBench(t, c)
	ask := u.do("widths")
	require.NotNil(t, ask.Run)
	u.take(s.Hear(ask.Run()))
	text := strings.Join(s.View(desk.Rect{Columns: 100, Rows: 40}), "\n")
	for _, w := range laid.ShopWidths(measure.In, measure.In.Length(50)) {
		require.Contains(t, text, measure.In.Say(w))
	}
	require.Contains(t, text, ">50 in")
	require.Contains(t, text, "price ")
	u.do("widths")
	require.NotContains(t, u.screen(), "price ")
}

func TestClothTooNarrowSaysSo(t *testing.T) {
	_, s, u := layBench(t, wideCloth(12))
	require.False(t, s.ready())
	require.Contains(t, u.screen(), "folded cloth")
	for _, o := range s.Actions() {
		s.Do(o.ID)
	}
	require.Nil(t, s.Begin().Run)
}

func BenchmarkComingToTheLay(b *testing.B) {
	d := desk.New(desk.Settings{})
	job := pattern.Job{Unit: measure.In, Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: measure.In.Length(36), measure.WaistGirth: measure.In.Length(28), measure.HipGirth: measure.In.Length(38), measure.Height: measure.In.Length(65),
	})}
	d.Take(desk.Opened{Saved: job})
	d.Sheet()
	for b.Loop() {
		s := NewLay(d)
		s.View(desk.Rect{Columns: 80, Rows: 21})
	}
}
