package measure_test

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

var (
	bust  = Measured("bust", 36*Inch)
	ease  = Of("ease", 2.5*Inch)
	front = Measured("across front", 12.75*Inch)
	tip   = Of("shoulder end", 6.75*Inch)
)

func TestSum(t *testing.T) {
	less := Of("d", -0.25*Inch)
	for _, c := range []struct {
		w            Working
		sum, private string
		result       Length
	}{
		{Working{}, "", "", 0},
		{bust, "bust 36", "bust", 36 * Inch},
		{ease, "ease 2 1/2", "ease 2 1/2", 2.5 * Inch},
		{Fixed(0.75 * Inch), "3/4", "3/4", 0.75 * Inch},
		{Drawn("front armhole", 8.0625*Inch), "front armhole 8 1/16", "front armhole 8 1/16", 8.0625 * Inch},
		{bust.Over(4).Plus(ease.Over(4)), "bust 36 / 4 + ease 2 1/2 / 4 = 9 5/8", "bust / 4 + ease 2 1/2 / 4 = 9 5/8", 9.625 * Inch},
		{bust.Plus(ease).Over(4), "(bust 36 + ease 2 1/2) / 4 = 9 5/8", "(bust + ease 2 1/2) / 4 = 9 5/8", 9.625 * Inch},
		{bust.Minus(ease.Plus(Fixed(Inch))), "bust 36 - (ease 2 1/2 + 1) = 32 1/2", "bust - (ease 2 1/2 + 1) = 32 1/2", 32.5 * Inch},
		{bust.Plus(ease.Minus(Fixed(Inch))), "bust 36 + ease 2 1/2 - 1 = 37 1/2", "bust + ease 2 1/2 - 1 = 37 1/2", 37.5 * Inch},
		{bust.Minus(ease).Minus(Fixed(Inch)), "bust 36 - ease 2 1/2 - 1 = 32 1/2", "bust - ease 2 1/2 - 1 = 32 1/2", 32.5 * Inch},
		{bust.Plus(Fixed(-0.25 * Inch)), "bust 36 - 1/4 = 35 3/4", "bust - 1/4 = 35 3/4", 35.75 * Inch},
		{bust.Plus(less), "bust 36 + (d -1/4) = 35 3/4", "bust + (d -1/4) = 35 3/4", 35.75 * Inch},
		{bust.Times(0.42), "bust 36 x 0.42 = 15 1/8", "bust x 0.42 = 15 1/8", 15.12 * Inch},
		{bust.Over(4).Times(2), "bust 36 / 4 x 2 = 18", "bust / 4 x 2 = 18", 18 * Inch},
		{
			Least(tip.Minus(Fixed(Inch/2)), front.Over(2)),
			"the lesser of (shoulder end 6 3/4 - 1/2) and (across front 12 3/4 / 2) = 6 1/4",
			"the lesser of (shoulder end 6 3/4 - 1/2) and (across front / 2) = 6 1/4", 6.25 * Inch,
		},
		{Most(tip, ease, Fixed(Inch)), "the greatest of shoulder end 6 3/4, ease 2 1/2 and 1 = 6 3/4", "the greatest of shoulder end 6 3/4, ease 2 1/2 and 1 = 6 3/4", 6.75 * Inch},
		{Most(tip, ease).Plus(Fixed(Inch)), "(the greater of shoulder end 6 3/4 and ease 2 1/2) + 1 = 7 3/4", "(the greater of shoulder end 6 3/4 and ease 2 1/2) + 1 = 7 3/4", 7.75 * Inch},
		{Least(bust), "bust 36", "bust", 36 * Inch},
		{bust.Over(7).Down(Inch / 8), "bust 36 / 7, down to a whole 1/8 = 5 1/8", "bust / 7, down to a whole 1/8 = 5 1/8", 5.125 * Inch},
		{bust.Over(7).Near(Inch / 8).Plus(ease), "(bust 36 / 7, to the nearest 1/8) + ease 2 1/2 = 7 5/8", "(bust / 7, to the nearest 1/8) + ease 2 1/2 = 7 5/8", 7.625 * Inch},
		{Hypot(Of("a", 3*Inch), Of("b", 4*Inch)), "the root of (a 3 squared + b 4 squared) = 5", "the root of (a 3 squared + b 4 squared) = 5", 5 * Inch},
		{Of("c", 5*Inch).Squared().Minus(Of("a", 3*Inch).Squared()).Root(), "the root of (c 5 squared - a 3 squared) = 4", "the root of (c 5 squared - a 3 squared) = 4", 4 * Inch},
		{bust.Over(4).Named("quarter"), "bust 36 / 4 = 9", "bust / 4 = 9", 9 * Inch},
		{bust.Over(4).Named("quarter").Plus(ease), "quarter 9 + ease 2 1/2 = 11 1/2", "quarter + ease 2 1/2 = 11 1/2", 11.5 * Inch},
		{Number(3).Times(2), "3 x 2 = 6", "3 x 2 = 6", 6},
	} {
		require.Equal(t, c.sum, c.w.Sum(In))
		require.Equal(t, c.private, c.w.Private(In))
		require.InDelta(t, c.result.MM(), c.w.Result().MM(), 1e-9, c.sum)
	}
	require.Equal(t, "bust 91.4 / 7, to the nearest 0.32 = 13", bust.Over(7).Near(Inch/8).Sum(Cm))
	require.True(t, Working{}.IsZero())
	require.True(t, Least().IsZero())
	require.False(t, bust.IsZero())
}

// tree is a Working with what it should come to, computed beside it.
type tree struct {
	w Working
	x float64
}

func trees() *rapid.Generator[tree] {
	leaf := rapid.Map(rapid.Float64Range(1, 2000), func(x float64) tree { return tree{Of("a", Length(x)), x} })
	return rapid.Custom(func(t *rapid.T) tree {
		at := leaf.Draw(t, "first")
		for range rapid.IntRange(0, 6).Draw(t, "length") {
			b := leaf.Draw(t, "term")
			n := rapid.Float64Range(1, 9).Draw(t, "n")
			switch rapid.IntRange(0, 6).Draw(t, "op") {
			case 0:
				at = tree{at.w.Plus(b.w), at.x + b.x}
			case 1:
				at = tree{at.w.Minus(b.w), at.x - b.x}
			case 2:
				at = tree{at.w.Over(n), at.x / n}
			case 3:
				at = tree{at.w.Times(n), at.x * n}
			case 4:
				at = tree{Least(at.w, b.w), math.Min(at.x, b.x)}
			case 5:
				at = tree{Most(b.w, at.w), math.Max(at.x, b.x)}
			default:
				at = tree{Hypot(at.w, b.w), math.Hypot(at.x, b.x)}
			}
		}
		return at
	})
}

func TestResultIsTheSum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := trees().Draw(t, "working")
		require.InEpsilon(t, at.x+1e6, at.w.Result().MM()+1e6, 1e-9)
		require.Contains(t, at.w.Plus(Fixed(1)).Sum(In), "= "+In.Tape(at.w.Result()+1))
		require.Equal(t, at.w.Sum(Cm), at.w.Private(Cm)) // nothing of hers in it
	})
}

func TestWorkingIsPlainData(t *testing.T) {
	made := func() Working { return Least(bust.Over(4).Plus(ease), front).Near(Inch / 8).Named("x") }
	require.True(t, reflect.DeepEqual(made(), made()))
	require.Equal(t, fmt.Sprintf("%+v", made()), fmt.Sprintf("%+v", made()))
	require.NotContains(t, fmt.Sprintf("%+v", made()), "0x") // no addresses

	parts := []Working{bust, front}
	w := Least(parts...)
	parts[0] = ease
	require.Equal(t, front.Result(), w.Result(), "a Working must not change with its caller's slice")
}

func TestSentence(t *testing.T) {
	inner := Tell("drop {say}", 1.5*Inch)
	s := Tell("{} x {}: {} is {} by {} ({about}), {}", 3, 9.26, bust.Over(4), "more", Length(12.7), 40.6*Inch, inner)
	require.Equal(t, "3 x 9.3: 9 is more by 1/2 (40 1/2 in), drop 1 1/2 in", s.In(In))
	require.Equal(t, "3 x 9.3: 22.9 is more by 1.3 (103 cm), drop 3.8 cm", s.In(Cm))
	require.Equal(t, "5 left", Tell("{} left", Number(5)).In(Cm))
	require.Equal(t, "a {} stays", Tell("a {} stays").In(In))
	require.Equal(t, "{} in words is no gap", Tell("{} in words is no gap", "{}").In(In))
	require.True(t, Sentence{}.IsEmpty())
	require.False(t, s.IsEmpty())
	require.Equal(t, Tell("{}", bust), Tell("{}", bust))
}

func TestNamesAlone(t *testing.T) {
	bust, ease := Measured("bust", 36*Inch), Of("ease", 2.5*Inch)
	require.Equal(t, "bust / 4 + ease / 4", bust.Over(4).Plus(ease.Over(4)).Names(In))
	require.Equal(t, "neck base / 6 + 1/2", Measured("neck base", 14.5*Inch).Over(6).Plus(Fixed(Inch/2)).Names(In))
	require.Equal(t, "the lesser of (across front / 2) and (shoulder end - 1/2)",
		Least(Measured("across front", 12*Inch).Over(2), Drawn("shoulder end", 7*Inch).Minus(Fixed(Inch/2))).Names(In))
	require.Empty(t, Working{}.Names(In))
}

func TestSentenceWithout(t *testing.T) {
	s := Tell("{} down, measure {} out.{}", 8*Inch, 10*Inch, Tell(" Then {}.", 10*Inch))
	got, ok := s.Without(10*Inch, "?")
	require.True(t, ok)
	require.Equal(t, "8 down, measure ? out. Then ?.", got.In(In))
	require.Equal(t, "8 down, measure 10 out. Then 10.", s.In(In), "the sentence itself stays")
	_, ok = s.Without(9*Inch, "?")
	require.False(t, ok)
}
