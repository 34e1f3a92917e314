package measure_test

import (
	"testing"

	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

// figure36 is the reference figure of the measured method, bust 36 in.
func figure36() Body {
	in := map[ID]float64{
		BustGirth: 36, WaistGirth: 28, HipGirth: 38, NeckBaseGirth: 14.5, AcrossShoulders: 15, AcrossFront: 12.75, AcrossBack: 13.75,
		BackNeckToWaist: 16, SideNeckToWaist: 17.75, SideNeckToBustPoint: 10.25, BustPointDistance: 7.25, WaistToHip: 8,
		ShoulderDrop: 1.5, WaistToKnee: 23, ShoulderLength: 4.75, UpperArmGirth: 11, HeadGirth: 22, Height: 65, ArmscyeGirth: 15.75,
		UpperChestGirth: 34, UnderBustGirth: 31,
	}
	lengths := make(map[ID]Length)
	for id, x := range in {
		lengths[id] = In.Length(x)
	}
	return NewBody(lengths)
}

func TestFigureIsNotDoubted(t *testing.T) {
	require.Empty(t, Doubts(Body{}))
	require.Empty(t, Doubts(figure36()))
	require.Empty(t, Impossible(figure36()))
	require.Empty(t, Impossible(Body{}))
}

func TestSizeTablesAreNotDoubted(t *testing.T) {
	// EN 13402-3:2004, women, interval centres in cm.
	bust := []float64{76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128}
	waist := []float64{60, 64, 68, 72, 76, 80, 84, 88, 94, 100, 106, 112}
	hip := []float64{84, 88, 92, 96, 100, 104, 108, 112, 117, 122, 127, 132}
	for i := range bust {
		for _, height := range []float64{160, 168, 176} {
			b := NewBody(map[ID]Length{BustGirth: Cm.Length(bust[i]), WaistGirth: Cm.Length(waist[i]), HipGirth: Cm.Length(hip[i]), Height: Cm.Length(height)})
			for _, d := range Doubts(b) {
				require.False(t, d.Strong, "%v: %s", bust[i], d.Says.In(Cm))
			}
		}
	}
}

func TestSlips(t *testing.T) {
	base := figure36()
	for _, c := range []struct {
		name  string
		body  Body
		id    ID
		other Length // 0: none
		unit  Unit
		says  string
	}{
		{"inches as cm, alone", Body{}.With(WaistGirth, 270), WaistGirth, 685.8, In, "Had it been meant in inches"},
		{"inches as cm", base.With(BustGirth, 360), BustGirth, 36 * Inch, In, "Had it been meant in inches"},
		{"cm as inches", base.With(BustGirth, 92*Inch), BustGirth, 920, Cm, "Had it been meant in centimetres"},
		{"cm as mm", base.With(HipGirth, 96.5), HipGirth, 965, Cm, "Had it been meant in centimetres"},
		{"mm as cm", base.With(BackNeckToWaist, 2990), BackNeckToWaist, 0, In, "Measure it again"},
		{"no usual value", base.With(AcrossBack, 137.5), AcrossBack, 13.75 * Inch, In, "Measure both again"},
		{"half of her", base.With(BustGirth, 17.5*Inch), BustGirth, 1129, In, "Was only half of her entered?"},
		{"half a width", base.With(AcrossFront, 6.375*Inch), AcrossFront, 0, In, "Was only half of her entered?"},
		{"far out", base.With(NeckBaseGirth, 30*Inch), NeckBaseGirth, 0, In, "Measure it again"},
	} {
		doubts := Doubts(c.body)
		require.NotEmpty(t, doubts, c.name)
		var found *Doubt
		for i, d := range doubts {
			if d.ID == c.id {
				found = &doubts[i]
			}
		}
		require.NotNil(t, found, c.name)
		require.True(t, found.Strong, c.name)
		require.Contains(t, found.Says.In(In), c.says, c.name)
		if c.other == 0 {
			require.False(t, found.HasOther, "%s: %v", c.name, found.InOther)
			continue
		}
		require.True(t, found.HasOther, c.name)
		require.Equal(t, c.unit, found.Unit, c.name)
		require.InDelta(t, c.other.MM(), found.InOther.MM(), 0.5, c.name)
	}
}

// A wrong bust must not make hip, waist and neck look wrong.
func TestOneSlipIsOneDoubt(t *testing.T) {
	for _, l := range []Length{360, 92 * Inch} {
		for _, d := range Doubts(figure36().With(BustGirth, l)) {
			require.Equal(t, BustGirth, d.ID, d.Says.In(In))
		}
	}
}

func TestNotes(t *testing.T) {
	base := figure36()
	for _, c := range []struct {
		name string
		body Body
		id   ID
		says string
	}{
		{"front much longer", base.With(SideNeckToWaist, 20.25*Inch), SideNeckToWaist, "3/4 in to 3 3/4 in"},
		{"front shorter", base.With(SideNeckToWaist, 16*Inch), SideNeckToWaist, "do not go together"},
		{"front wider", base.With(AcrossFront, 14*Inch), AcrossFront, "narrower"},
		{"chest larger", base.With(UpperChestGirth, 38*Inch), UpperChestGirth, "changed round"},
		{"ribs larger", base.With(UnderBustGirth, 37*Inch), UnderBustGirth, "changed round"},
		{"shoulder too long", base.With(ShoulderLength, 6.25*Inch), ShoulderLength, "shoulder"},
		{"small armscye", base.With(ArmscyeGirth, 14*Inch).With(UpperArmGirth, 14.5*Inch), ArmscyeGirth, "whole shoulder"},
		{"large waist", base.With(WaistGirth, 38.5*Inch), WaistGirth, "large"},
	} {
		var ids []ID
		for _, d := range Doubts(c.body) {
			ids = append(ids, d.ID)
			if d.ID == c.id {
				require.Contains(t, d.Says.In(In), c.says, c.name)
			}
		}
		require.Contains(t, ids, c.id, c.name)
	}
}

func TestImpossible(t *testing.T) {
	base := figure36().With(WaistToFloor, 41*Inch).With(BackNeckToFloor, 56*Inch)
	require.Empty(t, Impossible(base))
	for _, c := range []struct {
		id ID
		l  Length
		at ID
	}{
		{WaistToHip, 24 * Inch, WaistToHip},
		{WaistToKnee, 42 * Inch, WaistToKnee},
		{WaistToFloor, 66 * Inch, WaistToFloor},
		{BackNeckToFloor, 70 * Inch, BackNeckToFloor},
		{BackNeckToFloor, 48 * Inch, BackNeckToFloor},
		{NeckBaseGirth, 60 * Inch, NeckBaseGirth},
		{NeckGirth, 15.5 * Inch, NeckGirth},
		{ThighGirth, 40 * Inch, ThighGirth},
		{SideNeckToBustPoint, 19 * Inch, SideNeckToBustPoint},
		{BackNeckToWaist, 34 * Inch, BackNeckToWaist},
	} {
		found := Impossible(base.With(c.id, c.l))
		require.NotEmpty(t, found, c.id)
		text := ""
		for _, err := range found {
			text += err.Error() + "\n"
			requirePlain(t, err.Error())
		}
		require.Contains(t, text, string(c.at)+": ")
	}
	// What a soft tape can do is no contradiction.
	require.Empty(t, Impossible(base.With(NeckGirth, 14.75*Inch)))
}

func TestDoubtsOfRealWomen(t *testing.T) {
	women := ansur.Load(t)
	asked, noted := 0, 0
	for _, w := range women {
		require.Empty(t, Impossible(w.Body), "row %d", w.Row)
		strong, note := false, false
		for _, d := range Doubts(w.Body) {
			strong, note = strong || d.Strong, note || !d.Strong
		}
		if strong {
			asked++
		}
		if note {
			noted++
		}
	}
	t.Logf("of %d women %d are asked to measure again, %d get a note", len(women), asked, noted)
	require.LessOrEqual(t, asked*100, 5*len(women), "asked to measure again")
	require.GreaterOrEqual(t, asked, 10, "a band that nobody leaves catches no slip")
	require.LessOrEqual(t, noted*100, 35*len(women), "notes")
}

func TestDoubtsOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lengths := rapid.MapOf(rapid.SampledFrom(ids()), rapid.Map(rapid.Float64Range(5, 3000), func(x float64) Length { return Length(x) })).Draw(t, "lengths")
		b := NewBody(lengths)
		place := -1
		for _, d := range Doubts(b) {
			at := 0
			for i, id := range b.IDs() {
				if id == d.ID {
					at = i
				}
			}
			require.Greater(t, at, place, "table order, one for each")
			place = at
			require.True(t, b.Has(d.ID) && (d.Other == "" || b.Has(d.Other)))
			for _, u := range []Unit{In, Cm, Mm} {
				requirePlain(t, d.Says.In(u))
				require.NotContains(t, d.Says.In(u), "{")
			}
		}
		require.Equal(t, Doubts(b), Doubts(b))
		require.Equal(t, Impossible(b), Impossible(b))
	})
}

func BenchmarkDoubts(b *testing.B) {
	body := figure36()
	for b.Loop() {
		_ = Doubts(body)
	}
}
