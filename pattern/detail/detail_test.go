package detail_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func in(x float64) measure.Length { return measure.Length(x * 25.4) }

// Widening and inset slide along one line, so front and back shoulders are
// equally long whatever the shift.
func TestShoulderKeepsItsLength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, lo, hi float64) measure.Length { return in(rapid.Float64Range(lo, hi).Draw(t, name)) }
		neck, bone, drop := draw("neck", 2, 3.5), draw("bone", 6, 9), draw("drop", 0.5, 2.5)
		inset, widen, shift := draw("inset", 0, 1.5), draw("widen", 0, 2), draw("shift", 0, 0.5)
		f := detail.NewShoulder(neck, bone, drop, shift, inset, widen)
		b := detail.NewShoulder(neck, bone, drop, -shift, inset, widen)
		if math.Abs((f.Left() - b.Left()).MM()) > 1e-9 {
			t.Fatalf("front %v, back %v", f.Left(), b.Left())
		}
		if math.Abs(f.Dir.Dot(f.Down)) > 1e-12 || f.Down.Y <= 0 || f.Down.X >= 0 {
			t.Fatalf("the square to the shoulder leans the wrong way: %v", f.Down)
		}
		if math.Abs(f.End.X-(bone-inset).MM()) > 1e-9 {
			t.Fatalf("end at %v", f.End)
		}
	})
}

// The neck meets the centre level and the shoulder square.
func TestRoundNeckEndsSquare(t *testing.T) {
	s := detail.NewShoulder(in(2.9), in(7.5), in(1.5), in(0.25), in(0.75), in(1))
	for _, back := range []bool{false, true} {
		curve := detail.RoundNeck(s.Neck, s.Down, in(4.5), back)
		require.InDelta(t, 0, curve.StartTangent().Y, 1e-12)
		require.InDelta(t, 0, curve.EndTangent().Dot(s.Dir), 1e-12)
	}
}

// The armhole passes its middle upright and arrives level.
func TestArmholeEnds(t *testing.T) {
	s := detail.NewShoulder(in(2.9), in(7.5), in(1.5), in(0.25), in(0.75), in(1))
	under := geom.Point{X: in(9.625).MM(), Y: in(7.5).MM()}
	mid := detail.ArmholeMid(s.End, in(7.5), in(6.25))
	curve := detail.Armhole(s.End, s.Down, mid, under)
	require.InDelta(t, (s.End.Y+under.Y)/2, mid.Y, 1e-12)
	require.InDelta(t, 0, curve.StartTangent().Dot(s.Dir), 1e-12)
	require.InDelta(t, 0, curve[0].Tangent(1).X, 1e-12)
	require.InDelta(t, 0, curve.EndTangent().Y, 1e-12)
}

// A side dart has legs of one length, and its cap folds onto the seam below.
func TestSideDartCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(0.375, 2.4).Draw(t, "intake")
		back := geom.Point{X: in(8.4).MM(), Y: in(16.75).MM()}
		under := geom.Point{X: in(9.6).MM(), Y: in(7.5).MM()}
		drawn := detail.DartIn{
			Underarm: under, Waist: geom.Point{X: back.X, Y: back.Y + in(d).MM()}, BackSide: under.Dist(back),
			Bust:  geom.Point{X: in(3.6).MM(), Y: in(rapid.Float64Range(9, 11).Draw(t, "bust")).MM()},
			Below: in(rapid.Float64Range(2, 3).Draw(t, "below")), TipBack: in(1), Intake: in(d),
		}
		dart := drawn.Draw()
		if math.Abs(dart.Tip.Dist(dart.Upper)-dart.Tip.Dist(dart.Lower)) > 1e-6 {
			t.Fatal("the legs are not equal")
		}
		if math.Abs(drawn.Difference(dart)) > in(1.0/16).MM()+1e-6 {
			t.Fatalf("the sides differ by %v", drawn.Difference(dart))
		}
		seam := dart.Lower.To(drawn.Waist)
		bite := detail.CapDown(dart.Tip, dart.Upper, dart.Lower, seam)
		folded := geom.MirrorIn(geom.Line{At: dart.Tip, Dir: dart.Tip.To(dart.Lower)}).Apply(bite)
		if off := math.Abs(dart.Lower.To(folded).Unit().Cross(seam.Unit())); off > 1e-9 {
			t.Fatalf("folded, the cap lies off the seam by %v", off)
		}
	})
}

// The hem hangs level: side and centre are equally long from hip to hem.
func TestHemSideHangsLevel(t *testing.T) {
	hip := geom.Point{X: 250, Y: 630}
	for _, peg := range []float64{-38, 0, 19, 38} {
		e := detail.HemSide(hip, 1000, measure.Length(peg))
		require.InDelta(t, 1000-630, hip.Dist(e), 1e-9)
		require.InDelta(t, hip.X-peg, e.X, 1e-9)
	}
}

// Facings never lie double at the shoulder, and stay clear of the dart.
func TestFacingWidths(t *testing.T) {
	for shoulder := 1.5; shoulder < 5; shoulder += 0.11 {
		n := detail.NeckFacingWidth(in(2), in(shoulder))
		a := detail.ArmholeFacingWidth(in(2), in(shoulder), n, in(2))
		require.LessOrEqual(t, (n + a).MM(), in(shoulder).MM()+1e-9)
		require.LessOrEqual(t, a.MM(), in(1.75).MM()+1e-9)
	}
	require.InDelta(t, 1.5, detail.NeckFacingWidth(in(2), in(3.033)).Inches(), 1e-9)
	require.InDelta(t, 1.5, detail.ArmholeFacingWidth(in(2), in(3.033), in(1.5), in(2)).Inches(), 1e-9)
}

// Every choice is whole: a title, a sentence, a default that reads only what
// it says it reads, options where it is a pick, limits the right way round.
func TestChoicesAreWhole(t *testing.T) {
	all := detail.DressChoices()
	seen := map[pattern.ChoiceID]bool{}
	for _, c := range all {
		require.NotEmpty(t, c.Title, c.ID)
		require.NotEmpty(t, c.Says, c.ID)
		require.NotEmpty(t, c.Group, c.ID)
		require.False(t, seen[c.ID], "%s stands twice", c.ID)
		seen[c.ID] = true
		d := c.Default(pattern.Known{Method: pattern.Measured})
		require.Equal(t, c.Kind == pattern.KindPick, len(c.Options) > 0, c.ID)
		if len(d.Waits) == 0 {
			require.Equal(t, c.Kind, d.Value.Kind, c.ID)
		}
		if c.Limits != nil {
			low, high := c.Limits(pattern.Known{})
			require.Less(t, low.MM(), high.MM(), c.ID)
		}
	}
	for _, c := range all {
		for _, id := range c.After {
			require.True(t, seen[id], "%s reads %s, which is no choice", c.ID, id)
		}
	}
}

// What a choice says is shown as it stands: a figure in it has no braces.
func TestChoicesSayNoBraces(t *testing.T) {
	for _, c := range append(detail.DressChoices(), detail.SkirtChoices()...) {
		require.NotContains(t, c.Says, "{", c.ID)
		for _, o := range c.Options {
			require.NotContains(t, o.Says, "{", "%s %s", c.ID, o.Value)
		}
	}
}
