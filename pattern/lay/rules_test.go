package lay

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
)

func circle(part float64) (c, s float64) {
	s, c = math.Sincos(2 * math.Pi * part)
	return c, s
}

func says(errs []error) string {
	text := ""
	for _, e := range errs {
		text += e.Error() + "\n"
	}
	return text
}

// spoilt breaks one rule after the other in a good lay.
var spoilt = []struct {
	name, fold string
	cloth      func(*Cloth)
	spoil      func(t *testing.T, p *Problem, l *Lay)
	want       string
}{
	{"an on-fold half is turned off the fold", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "front"), 180, false, mm(0, 900))
	}, "turned off the fold"},
	{"an on-fold half is mirrored but not turned", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		q.Mirror = !q.Mirror
	}, "turned off the fold"},
	{"an on-fold piece stands a step off the fold", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		put(*p, q, q.Turn, q.Mirror, q.At.plus(Point{1, 0}))
	}, "fold edge does not lie on the fold"},
	{"an on-fold piece is taken for a whole one", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		q.OnFold = false
	}, "lies off it"},
	{"a fold on flat cloth", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		q.OnFold = true
	}, "cloth has none"},
	{"an opened half is laid as a half", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		put(*p, q, 0, false, q.At)
	}, "not twice its half"},
	{"a single is mirrored", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "pocket")
		put(*p, q, 0, true, mm(500, 800))
	}, "wrong one of the two mirror images"},
	{"both of a pair alike on flat cloth", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		for i := range l.Placed {
			if q := &l.Placed[i]; p.Items[q.Item].ID == "back" && q.Copy == 2 {
				put(*p, q, 0, false, mm(100, 900))
			}
		}
	}, "wrong one of the two mirror images"},
	{"off the grain by two degrees", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 2, false, mm(100, 900))
	}, "off the grain"},
	{"a quarter turn", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 90, false, mm(200, 900))
	}, "off the grain"},
	{"a turned piece on nap", Lengthwise, func(c *Cloth) { c.Nap = true }, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 180, false, mm(200, 900))
	}, "nap"},
	{"over the selvage", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(260, 900).plus(Point{1, 0}))
	}, "over the far border"},
	{"over the fold", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(0, 900).plus(Point{-1, 0}))
	}, "over the near border"},
	{"over the left selvage of flat cloth", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(9.9, 900))
	}, "over the near border"},
	{"before the cut end", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(100, 0).plus(Point{0, -1}))
	}, "before the cut end"},
	{"beyond the end", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(200, 900))
		l.Length = 930 * PerMM
	}, "beyond the end"},
	{"over the edges that meet in the middle", ToMiddle, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(140, 900))
	}, "meet in the middle"},
	{"one piece over another", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "back")
		f := find(t, *p, *l, "facing")
		lo, _ := bounds(q.Outline)
		put(*p, f, 0, false, lo.plus(mm(10, 150)))
	}, "overlap or stand too close"},
	{"a corner that was never drafted", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		find(t, *p, *l, "back").Outline[2].X--
	}, "not the drafted one"},
	{"a piece is missing", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		l.Placed = l.Placed[1:]
	}, "are laid and"},
	{"a piece is laid twice", Flat, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := *find(t, *p, *l, "pocket")
		put(*p, &q, 0, false, mm(100, 2000))
		l.Placed, l.Length = append(l.Placed, q), 3000*PerMM
	}, "laid twice"},
	{"two layers where one is wanted", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "back")
		q.Layers = 1
	}, "in 1 layers"},
	{"a flaw under a piece", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "back")
		lo, _ := bounds(q.Outline)
		// In the other layer: left of the middle of the flat cloth.
		p.Cloth.Flaws = []Flaw{{lo.Y + 150*PerMM, p.Cloth.Width/2 - lo.X - 60*PerMM, 10 * PerMM, 30 * PerMM}}
	}, "over flaw 1"},
	{"a pinned piece has moved by a step", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		pin := *find(t, *p, *l, "back")
		pin.At.Y++
		p.Pins = []Placed{pin}
	}, "was pinned and has moved"},
	{"on a fold that runs across the grain", Across, nil, func(t *testing.T, p *Problem, l *Lay) {
		find(t, *p, *l, "front").OnFold = true
	}, "none along the grain"},
	{"one layer on cloth folded across", Across, nil, func(t *testing.T, p *Problem, l *Lay) {
		find(t, *p, *l, "back").Layers = 1
	}, "in 1 layers"},
	{"over the selvage of cloth folded across", Across, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(10, 900).plus(Point{-1, 0}))
	}, "over the near border"},
	{"beyond the end of the other layer", Across, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 0, false, mm(200, 900))
		l.Folded, l.Length = 800*PerMM, 1600*PerMM
	}, "beyond the end"},
	{"a turned piece on nap, folded across", Across, func(c *Cloth) { c.Nap = true }, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "facing"), 180, false, mm(200, 900))
	}, "nap"},
	{"an opened half of which half is missing", Across, nil, func(t *testing.T, p *Problem, l *Lay) {
		put(*p, find(t, *p, *l, "front"), 0, false, mm(200, 900))
	}, "not twice its half"},
	{"the repeat in the other layer elsewhere", Across, func(c *Cloth) { c.RepeatAlong = 64 * PerMM }, func(t *testing.T, p *Problem, l *Lay) {
		for i := range l.Placed {
			q := &l.Placed[i]
			q.At.Y += 8 * PerMM
			q.Outline = moved(q.Outline, Point{0, 8 * PerMM})
		}
	}, "another phase in the other layer"},
	{"double where the cloth is single", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := beside(t, p, l, 1)
		q.Layers, q.Beside = 2, false
		l.Placed = l.Placed[:len(l.Placed)-1]
	}, "over the far border"},
	{"single where the cloth is double", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "pocket")
		put(*p, q, 0, false, Point{l.Depth - 1, 900 * PerMM})
	}, "over the near border"},
	{"over the selvage of the single part", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "pocket")
		put(*p, q, 0, false, Point{p.Cloth.Width - l.Depth - p.Cloth.Edge - 60*PerMM + 1, 900 * PerMM})
	}, "over the far border"},
	{"two layers in the single part", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		find(t, *p, *l, "pocket").Layers = 2
	}, "in 2 layers"},
	{"both of a pair alike in the single part", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := beside(t, p, l, 2)
		put(*p, q, 0, false, Point{l.Depth, 900 * PerMM})
	}, "wrong one of the two mirror images"},
	{"one of a pair in the single part alone", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		beside(t, p, l, 2)
		l.Placed = l.Placed[:len(l.Placed)-1]
	}, "1 are laid and 2 are wanted"},
	{"on the fold and in the single part", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		find(t, *p, *l, "front").Beside = true
	}, "beside the double part where it does not belong"},
	{"folded in beyond the middle", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		l.Depth = p.Cloth.Width/2 + 1
	}, "folded in by"},
	{"folded in otherwise than was settled", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		p.Cloth.Depth = l.Depth + 1
	}, "and not by"},
	{"a flaw in what is folded over", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "front")
		lo, _ := bounds(q.Outline)
		p.Cloth.Flaws = []Flaw{{lo.Y + 150*PerMM, l.Depth - 60*PerMM, 10 * PerMM, 20 * PerMM}}
	}, "over flaw 1"},
	{"a flaw in the single part", OffCentre, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "pocket")
		lo, _ := bounds(q.Outline)
		p.Cloth.Flaws = []Flaw{{lo.Y + 20*PerMM, lo.X + l.Depth + 20*PerMM, 10 * PerMM, 10 * PerMM}}
	}, "over flaw 1"},
	{"beside where nothing is folded off centre", Lengthwise, nil, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "facing")
		q.Beside, q.Layers = true, 1
	}, "there is no such part"},
	{"match points out of phase", Lengthwise, func(c *Cloth) { c.RepeatAlong = 64 * PerMM }, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "back")
		put(*p, q, q.Turn, q.Mirror, q.At.plus(Point{0, 1}))
		l.Length, l.Folded = l.Length+1, l.Folded+1
	}, "off the repeat along"},
	{"off the stripe", Flat, func(c *Cloth) { c.RepeatAcross = 40 * PerMM }, func(t *testing.T, p *Problem, l *Lay) {
		q := find(t, *p, *l, "back")
		put(*p, q, q.Turn, q.Mirror, q.At.plus(Point{1, 0}))
	}, "off the stripe"},
}

// beside lays the facings single, one of them the mirror image, at the far end
// of the single part, and returns one of them.
func beside(t *testing.T, p *Problem, l *Lay, copy int) *Placed {
	q := *find(t, *p, *l, "facing")
	l.Placed = slices.DeleteFunc(l.Placed, func(o Placed) bool { return o.Item == q.Item })
	q.Layers, q.Beside = 1, true
	other := q
	q.Copy, other.Copy = 1, 2
	put(*p, &q, 0, false, Point{l.Depth, 1000 * PerMM})
	put(*p, &other, 0, true, Point{l.Depth + 200*PerMM, 1000 * PerMM})
	l.Placed = append(l.Placed, q, other)
	require.Empty(t, Verify(*p, *l))
	return &l.Placed[len(l.Placed)-2+copy-1]
}

func TestEachRuleIsChecked(t *testing.T) {
	for _, c := range spoilt {
		t.Run(c.name, func(t *testing.T) {
			p := toy(c.fold)
			if c.cloth != nil {
				c.cloth(&p.Cloth)
			}
			l := solved(t, p)
			far := l
			if far.Length < 1500*PerMM && !p.Cloth.Opens(l) {
				far.Length, far.Folded = 1500*PerMM, 1500*PerMM
				if c.fold == Across {
					far.Length = 3000 * PerMM
				}
			}
			far.Placed = append([]Placed(nil), l.Placed...)
			for i := range far.Placed {
				far.Placed[i].Outline = append([]Point(nil), far.Placed[i].Outline...)
			}
			require.Empty(t, Verify(p, far))
			c.spoil(t, &p, &far)
			require.Contains(t, says(Verify(p, far)), c.want)
		})
	}
}

func TestGapIsKept(t *testing.T) {
	p := toy(Flat)
	p.Cloth.Gap = 5 * PerMM
	l := solved(t, p)
	wider := p
	wider.Cloth.Gap = 200 * PerMM
	require.Contains(t, says(Verify(wider, l)), "stand too close")
}

func TestTheGapIsRoundAtCorners(t *testing.T) {
	a, b := ringOf(0, 0, 10, 0, 10, 10, 0, 10), ringOf(13, 14, 20, 14, 20, 20)
	require.True(t, apart(a, b, 5*PerMM)) // 3 across, 4 along
	require.False(t, apart(a, b, 5*PerMM+1))
}

func TestTouchingIsAllowedAndOverlapByAStepIsNot(t *testing.T) {
	square := ringOf(0, 0, 10, 0, 10, 10, 0, 10)
	hollow := ringOf(0, 0, 30, 0, 30, 30, 20, 30, 20, 10, 10, 10, 10, 30, 0, 30) // a slot of 10
	slanted := ringOf(0, 0, 10, 5, 0, 10)
	for _, c := range []struct {
		name string
		a, b []Point
		at   Point
		want bool
	}{
		{"side by side", square, square, mm(10, 0), true},
		{"one step in", square, square, mm(10, 0).plus(Point{-1, 0}), false},
		{"corner to corner", square, square, mm(10, 10), true},
		{"the same place", square, square, Point{}, false},
		{"in the slot, without play", hollow, square, mm(10, 12), true},
		{"a step beside the slot", hollow, square, mm(10, 12).plus(Point{1, 0}), false},
		{"on the floor of the slot", hollow, square, mm(10, 10), true},
		{"a step through the floor", hollow, square, mm(10, 10).plus(Point{0, -1}), false},
		{"point on a side", slanted, square, mm(10, 0), true},
		{"point a step in", slanted, square, mm(10, 0).plus(Point{-1, 0}), false},
		{"wholly inside", ringOf(0, 0, 50, 0, 50, 50, 0, 50), square, mm(20, 20), false},
		{"inside, touching", ringOf(0, 0, 50, 0, 50, 50, 0, 50), square, mm(0, 20), false},
		{"edges along each other, both within", square, ringOf(0, 0, 10, 0, 5, 5), Point{}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			require.Equal(t, c.want, apart(c.a, moved(c.b, c.at), 0))
			require.Equal(t, c.want, apart(moved(c.b, c.at), c.a, 0))
		})
	}
}

func TestOnFlatClothTheHalfIsOpened(t *testing.T) {
	p := toy(Flat)
	l := solved(t, p)
	q := find(t, p, l, "front")
	require.False(t, q.OnFold)
	require.Equal(t, 1, q.Layers)
	require.Equal(t, 2*twiceArea(p.Items[0].Outline), twiceArea(q.Outline))
}

func TestAHalfTurnOnTheFoldTurnsTheOpenedPiece(t *testing.T) {
	p := Problem{Cloth: toyCloth(Lengthwise), Items: toyItems()[:1]}
	b := newBuilder(&p)
	got := b.stances(zone{0, p.Cloth.Width / 2}, &p.Items[0], p.Items[0].Outline, p.Items[0].Outline, onTheFold)
	require.Len(t, got, 2)
	require.True(t, got[1].mirror)
	require.Equal(t, 180, got[1].turn)
	whole := turned(opened(p.Items[0].Outline), 180)
	lo, _ := bounds(whole)
	halfLo, _ := bounds(got[1].outline)
	// The turned whole lies about the fold as its reflected half does.
	require.True(t, sameOutline(opened(got[1].outline), moved(whole, Point{0, halfLo.Y - lo.Y})))
}

func TestTheOpenedPartIsOneWayToCutASingle(t *testing.T) {
	p := toy(Lengthwise)
	p.Cloth.Width = 340 * PerMM
	p.Items[3].Outline = ringOf(0, 0, 250, 0, 260, 40, 0, 45) // wider than the folded cloth
	l := solved(t, p)
	q := find(t, p, l, "pocket")
	require.True(t, q.Opened)
	require.Equal(t, 1, q.Layers)
	require.Less(t, l.Folded, l.Length)
	q.Opened = false
	require.NotEmpty(t, Verify(p, l))
}

func TestTwoAlikeComeFromTwoLayersOnlyIfTheyMirrorThemselves(t *testing.T) {
	p := Problem{Cloth: toyCloth(Lengthwise), Items: []Item{{ID: "tie", Cut: pattern.Single, Count: 2, Turns: []int{0}, Outline: ringOf(0, 0, 50, 0, 50, 80, 0, 80)}}}
	l := solved(t, p)
	require.Len(t, l.Placed, 1)
	require.Equal(t, 2, l.Placed[0].Layers)
	p.Items[0].Outline = ringOf(0, 0, 50, 0, 60, 80, 0, 80)
	l = solved(t, p)
	require.Len(t, l.Placed, 2)
	l.Placed = l.Placed[:1]
	l.Placed[0].Wasted, l.Placed[0].Opened, l.Placed[0].Layers = false, false, 2
	require.Contains(t, says(Verify(p, l)), "two alike cannot come from two layers")
}

func TestASingleThatMirrorsItselfMayLieOnTheFold(t *testing.T) {
	p := Problem{Cloth: toyCloth(Lengthwise), Items: []Item{
		{ID: "yoke", Cut: pattern.Single, Count: 1, Turns: []int{0}, Outline: ringOf(0, 0, 100, 0, 120, 50, 50, 70, -20, 50)},
		{ID: "back", Cut: pattern.Pair, Count: 2, Turns: []int{0}, Outline: ringOf(0, 0, 200, 0, 200, 400, 0, 400)},
	}}
	l := solved(t, p)
	q := find(t, p, l, "yoke")
	require.True(t, q.OnFold)
	require.Equal(t, int64(400*PerMM), l.Length)
}

func TestWithNapTheLayIsNoShorterAndNothingIsTurned(t *testing.T) {
	for _, fold := range Folds {
		p := toy(fold)
		free := solved(t, p)
		p.Cloth.Nap = true
		nap := solved(t, p)
		for _, q := range nap.Placed {
			require.Zero(t, q.Turn)
		}
		require.GreaterOrEqual(t, nap.Length, free.Length, fold)
	}
}

func TestOffTheGrainOnlyAsFarAsAllowed(t *testing.T) {
	p := toy(Flat)
	p.Cloth.OffGrain = 2
	l := solved(t, p)
	for _, q := range l.Placed {
		require.Contains(t, []int{0, 2, 358, 180, 182, 178}, q.Turn)
	}
	q := find(t, p, l, "facing")
	put(p, q, 3, q.Mirror, q.At)
	require.Contains(t, says(Verify(p, l)), "off the grain")
}

func TestShrinkageIsDividedOut(t *testing.T) {
	// Published pairs: 3 yd at 5 % need 3.16 yd, 4 yd at 10 % need 4.44 yd.
	for _, c := range []struct{ yards, percent, want float64 }{{3, 5, 3.16}, {4, 10, 4.44}} {
		b := Buy(atTape(36*c.yards), Cloth{ShrinkAlong: c.percent})
		require.InDelta(t, c.want, b.Needed.Inches()/36, 0.005)
	}
	require.InDelta(t, 1052.6, Buy(1000*PerMM, Cloth{ShrinkAlong: 5}).Needed.MM(), 0.05)
	require.Equal(t, "1 5/8 yd (1.5 m)", Buy(atTape(54.1), Cloth{ShrinkAlong: 4}).Says)
	// One repeat more, because the shop cuts anywhere.
	require.InDelta(t, 1100/0.95, Buy(1000*PerMM, Cloth{ShrinkAlong: 5, RepeatAlong: 100 * PerMM}).Needed.MM(), 1e-6)
	require.Equal(t, int64(math.Floor(1500*0.97*PerMM)), FromCloth(pattern.Cloth{Width: 1500, ShrinkAcross: 3}).Width)
}

func TestPinsStayAndFlawsStayFree(t *testing.T) {
	pinned := 0
	defer func() { require.Positive(t, pinned) }()
	for _, fold := range Folds {
		p := toy(fold)
		p.Cloth.Flaws = []Flaw{{50 * PerMM, 100 * PerMM, 40 * PerMM, 30 * PerMM}}
		if fold == Across {
			p.Cloth.Flaws = nil
		}
		first := solved(t, p)
		p.Cloth.Depth = first.Depth
		pin := *find(t, p, first, "back")
		put(p, &pin, pin.Turn, pin.Mirror, pin.At.plus(mm(0, 333)))
		p.Pins = []Placed{pin}
		if p.checkPins() != nil {
			continue
		}
		l := solved(t, p)
		kept := false
		for _, q := range l.Placed {
			kept = kept || q.Item == pin.Item && q.Copy == pin.Copy && q.At == pin.At
		}
		require.True(t, kept, fold)
		pinned++
	}
}

func TestRepeatsAreMatched(t *testing.T) {
	for _, fold := range []string{Lengthwise, Flat} {
		p := toy(fold)
		p.Cloth.RepeatAlong, p.Cloth.RepeatAcross = 53*PerMM, 31*PerMM
		for _, stripe := range []string{"centre", "midway"} {
			p.Cloth.Stripe = stripe
			solved(t, p)
		}
	}
}

func TestPlacesLieOnTheTape(t *testing.T) {
	p := toy(Lengthwise)
	p.Cloth.Tape = steps(measure.Inch / 8)
	l := solved(t, p)
	require.Contains(t, []int64{p.Cloth.Tape, p.Cloth.Tape / 2}, l.Tape)
	for i := range l.Placed {
		q := &l.Placed[i]
		lo, _ := bounds(q.Outline)
		require.Zero(t, lo.Y%l.Tape)
		if !q.OnFold {
			require.Zero(t, q.grain(&p.Items[q.Item])%l.Tape)
		}
	}
	free := p
	free.Cloth.Tape = 0
	require.LessOrEqual(t, solved(t, free).Length, l.Length)
}

// What the tape takes is a few steps a piece, whatever is laid on whatever
// cloth; where the cloth is so full that no piece can go aside, it takes none. A
// fold off centre lies on the tape itself: there a step may be another way to
// divide the pieces, and no bound holds.
func TestTheTapeTakesAFewStepsAPiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := someProblem(t)
		if p.Cloth.Fold == OffCentre {
			p.Cloth.Fold = Lengthwise
		}
		p.Cloth.Tape = rapid.SampledFrom([]int64{50000, 31750}).Draw(t, "step")
		o := Options{Evaluations: 4000, Seed: rapid.Uint64().Draw(t, "seed")}
		l, err := Solve(p, o)
		require.NoError(t, err)
		require.Empty(t, Verify(p, l))
		free := p
		free.Cloth.Tape = 0
		tight, err := Solve(free, o)
		require.NoError(t, err)
		require.LessOrEqual(t, l.Length, tight.Length+(4+2*int64(p.Pieces()))*p.Cloth.Tape)
		for i := range l.Placed {
			require.True(t, l.Tape == 0 || p.onTape(&l.Placed[i], l.Tape))
		}
	})
}

// Two pieces fill the cloth to the step: none can go aside to the tape, and
// both stay beside each other.
func TestPiecesThatFillTheClothStaySideBySide(t *testing.T) {
	width := float64(200) + 0.0371
	p := Problem{Cloth: Cloth{Width: mm(width, 0).X, Fold: Flat, Tape: 50000}, Items: []Item{
		{ID: "a", Cut: pattern.Single, Count: 1, Turns: []int{0}, Outline: ringOf(0, 0, 101.0371, 0, 101.0371, 300, 0, 300)},
		{ID: "b", Cut: pattern.Single, Count: 1, Turns: []int{0}, Outline: ringOf(0, 0, 99, 0, 99, 303, 0, 303)},
	}}
	l := solved(t, p)
	require.Equal(t, int64(303*PerMM), l.Length)
	require.Zero(t, l.Tape)
	for _, q := range l.Placed {
		lo, _ := bounds(q.Outline)
		require.Zero(t, lo.Y%p.Cloth.Tape, "along, all lie on the tape")
	}
}

func TestEveryLayKeepsEveryRule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := someProblem(t)
		shelf, err := Shelf(p)
		require.NoError(t, err)
		require.Empty(t, Verify(p, shelf))
		l, err := Solve(p, Options{Evaluations: 5000, Seed: rapid.Uint64().Draw(t, "seed")})
		require.NoError(t, err)
		require.Empty(t, Verify(p, l))
		require.LessOrEqual(t, l.Length, shelf.Length)
		require.LessOrEqual(t, l.Density, 100.0)
	})
}
