package measure_test

import (
	"math"
	"testing"

	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

var girths = NewBody(map[ID]Length{BustGirth: 36 * Inch, WaistGirth: 28 * Inch, HipGirth: 38 * Inch})

func TestProposeFromGirths(t *testing.T) {
	for id, want := range map[ID]float64{ // inches, figure P36 where it is a rule
		AcrossShoulders: 15, ShoulderDrop: 1.5, AcrossBack: 13.75, AcrossFront: 12.75, BackNeckToWaist: 16,
		SideNeckToBustPoint: 10.25, BustPointDistance: 7.2, SideNeckToWaist: 17.75, WaistToHip: 8, WaistToKnee: 23, HeadGirth: 22,
		SideWaistLength: 8, ShoulderToWaistBack: 15.25, ShoulderToWaistFront: 16.25,
	} {
		p, ok := Propose(girths, id)
		require.True(t, ok, id)
		require.InDelta(t, want, p.Value.Inches(), 1e-9, id)
		require.True(t, p.FromMemory, id)
	}
	p, ok := Propose(girths, NeckBaseGirth)
	require.True(t, ok)
	require.False(t, p.FromMemory)
	require.InDelta(t, 223.32+0.1561*914.4, p.Value.MM(), 1e-9)
}

func TestProposeFromHeight(t *testing.T) {
	b := girths.With(Height, 1626)
	for id, want := range map[ID]float64{
		NeckBaseGirth:   108.34 + 0.0685*1626 + 0.1124*914.4 + 0.0439*965.2,
		BackNeckToWaist: 47.76 + 0.1858*1626 + 0.0339*914.4 - 0.0040*965.2,
		WaistToHip:      1.44 + 0.1167*1626 - 0.0540*914.4 + 0.0508*965.2,
		WaistToKnee:     0.354 * 1626,
		ThighGirth:      -35.77 - 0.0403*1626 - 0.0099*914.4 + 0.7118*965.2,
	} {
		p, ok := Propose(b, id)
		require.True(t, ok, id)
		require.InDelta(t, want, p.Value.MM(), 1e-9, id)
		require.Contains(t, p.Source, "ANSUR II", id)
	}
	p, _ := Propose(Body{}.With(Height, 1626), BackNeckToWaist)
	require.InDelta(t, 60.25+0.1954*1626, p.Value.MM(), 1e-9)
	p, _ = Propose(Body{}.With(Height, 1626), WaistToHip)
	require.InDelta(t, 0.118*1626, p.Value.MM(), 1e-9)
}

// Whatever she has measured is used before anything is guessed.
func TestProposeUsesHerOwn(t *testing.T) {
	b := girths.With(BackNeckToWaist, 17*Inch).With(AcrossBack, 14*Inch)
	p, _ := Propose(b, SideNeckToWaist)
	require.InDelta(t, 18.75, p.Value.Inches(), 1e-9)
	require.Equal(t, "back neck to waist 17 + 3/4 + (bust 36 - 36) / 8 + 1 = 18 3/4", p.Working.Sum(In))
	p, _ = Propose(b, AcrossFront)
	require.InDelta(t, 13, p.Value.Inches(), 1e-9)
	wide, _ := Propose(girths, SideNeckToWaist)
	p, _ = Propose(b, SideNeckToWaist)
	require.Less(t, p.Spread, wide.Spread)
}

// Very small and very large busts get a dart that can be sewn.
func TestProposedFrontCanBeSewn(t *testing.T) {
	for bust, more := range map[float64]float64{24: 0.375, 32: 0.5, 36: 1, 44: 2, 60: 2.5} {
		p, _ := Propose(girths.With(BustGirth, In.Length(bust)), SideNeckToWaist)
		require.InDelta(t, 16.75+more, p.Value.Inches(), 1e-9)
	}
}

func TestNeverProposed(t *testing.T) {
	full := figure36()
	for _, id := range []ID{BustGirth, WaistGirth, HipGirth, Height, StepLength, "tail_girth"} {
		_, ok := Propose(full, id)
		require.False(t, ok, id)
	}
}

// ASTM D5585-11e1, Table 1, inches: bust and neck base, sizes 00 to 20.
func TestNeckBaseAgainstSizeTable(t *testing.T) {
	bust := []float64{31.125, 31.75, 33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125, 44, 46}
	neck := []float64{13.25, 13.5, 13.75, 14, 14.25, 14.625, 14.875, 15.125, 15.5, 15.75, 16, 16.375}
	differ := []float64{1.0, 0.6, 0.5, 0.3, 0.1, -0.4, -0.7, -0.7, -1.1, -1.0, -0.8, -1.0} // cm
	for i := range bust {
		p, ok := Propose(Body{}.With(BustGirth, In.Length(bust[i])), NeckBaseGirth)
		require.True(t, ok)
		require.InDelta(t, differ[i], Cm.Of(p.Value)-neck[i]*2.54, 0.08, "bust %v", bust[i])
		require.Less(t, math.Abs(Cm.Of(p.Value)-neck[i]*2.54), Cm.Of(p.Spread))
	}
}

func TestSizeTableRows(t *testing.T) {
	for _, c := range []struct{ bust, chest, under float64 }{
		{31.125, 31.75, 25.75}, {36.25, 35.875, 30}, {46, 43.875, 39.625}, // rows
		{36.75, 36.3125, 30.5},                // half-way
		{48, 45.5, 41.625}, {30.5, 31.25, 25}, // beyond the ends
	} {
		b := Body{}.With(BustGirth, In.Length(c.bust))
		p, ok := Propose(b, UpperChestGirth)
		require.True(t, ok)
		require.InDelta(t, c.chest, p.Value.Inches(), 1e-9, c.bust)
		p, ok = Propose(b, UnderBustGirth)
		require.True(t, ok)
		require.InDelta(t, c.under, p.Value.Inches(), 1e-9, c.bust)
		require.Contains(t, p.Source, "ASTM D5585-11e1")
	}
}

// Every need of the dress but the three girths can be proposed from them, and
// every proposal says where it comes from.
func TestProposeCoversTheDress(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cm := func(low, high float64, name string) Length {
			return Cm.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		b := NewBody(map[ID]Length{BustGirth: cm(70, 150, "bust"), WaistGirth: cm(50, 150, "waist"), HipGirth: cm(75, 160, "hip")})
		if rapid.Bool().Draw(t, "height known") {
			b = b.With(Height, cm(140, 190, "height"))
		}
		for _, m := range All() {
			p, ok := Propose(b, m.ID)
			if m.ID == BustGirth || m.ID == WaistGirth || m.ID == HipGirth {
				require.False(t, ok, m.ID)
				continue
			}
			if len(m.NeededFor) > 0 {
				require.True(t, ok, m.ID)
			}
			if !ok {
				continue
			}
			require.Equal(t, m.ID, p.ID)
			require.Equal(t, p.Working.Result(), p.Value)
			require.NoError(t, Check(m.ID, p.Value), m.ID)
			require.Greater(t, p.Spread, Length(0), m.ID)
			require.NotEmpty(t, p.Source, m.ID)
			require.NotEmpty(t, p.Working.Sum(In), m.ID)
		}
	})
}

// On the survey's women two of three true values lie within the spread, for
// what the survey took or what can be built from it.
func TestSpreadIsHonest(t *testing.T) {
	women := ansur.Load(t)
	for _, id := range []ID{
		NeckBaseGirth, NeckGirth, ShoulderLength, BackNeckToFloor, BackNeckToWaist, WaistToFloor, WaistToHip, WaistToKnee, BodyRise,
		WristGirth, ArmLength, ThighGirth, HeadGirth, ShoulderDrop, AcrossShoulders, AcrossBack, UpperArmGirth, SideNeckToBustPoint,
	} {
		within := 0
		for _, w := range women {
			own, ok := w.Body.Get(id)
			require.True(t, ok, id)
			p, ok := Propose(w.Body.Without(id), id)
			require.True(t, ok, id)
			if d := p.Value - own; d <= p.Spread && d >= -p.Spread {
				within++
			}
		}
		share := float64(within) / float64(len(women))
		require.InDelta(t, 0.68, share, 0.10, id)
	}
}
