package ansur_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/testdata/ansur"
)

var checked = []measure.ID{
	measure.WaistGirth, measure.AcrossShoulders, measure.ShoulderDrop, measure.AcrossBack, measure.AcrossFront,
	measure.BackNeckToWaist, measure.SideNeckToBustPoint, measure.SideNeckToWaist, measure.WaistToHip,
	measure.WaistToKnee, measure.UpperArmGirth,
}

func TestFirstRows(t *testing.T) {
	women := ansur.Load(t)
	require.Len(t, women, 993)
	for n, want := range [][]measure.Length{
		{658.4, 391.5, 38.1, 335.3, 309.9, 376.5, 247.5, 404.0, 177.5, 594.5, 252.0, 996.4},
		{1081.6, 396.0, 36.9, 388.9, 363.5, 366.0, 305.6, 420.6, 186.0, 557.0, 300.0, 948.4},
	} {
		require.Equal(t, n+1, women[n].Row)
		for i, id := range checked {
			got, ok := women[n].Body.Get(id)
			require.True(t, ok, id)
			require.InDelta(t, want[i].MM(), got.MM(), 1e-9, "row %d, %s", n+1, id)
		}
		require.InDelta(t, want[len(checked)].MM(), women[n].Length.MM(), 1e-9)
	}
}

func TestMeans(t *testing.T) {
	women := ansur.Load(t)
	length := 0.0
	sums := make(map[measure.ID]float64)
	for _, w := range women {
		for _, id := range w.Body.IDs() {
			l, _ := w.Body.Get(id)
			sums[id] += l.MM()
		}
		length += w.Length.MM()
	}
	for id, want := range map[measure.ID]float64{
		measure.Height: 1626.73, measure.BustGirth: 945.62, measure.WaistGirth: 801.10, measure.HipGirth: 1020.40,
		measure.NeckBaseGirth: 370.93, measure.AcrossShoulders: 385.60, measure.ShoulderDrop: 37.92,
		measure.AcrossBack: 353.49, measure.AcrossFront: 328.09, measure.BackNeckToWaist: 379.67,
		measure.SideNeckToBustPoint: 273.51, measure.SideNeckToWaist: 418.49, measure.BustPointDistance: 189.12,
		measure.WaistToHip: 192.34, measure.WaistToKnee: 576.26, measure.UpperArmGirth: 284.85,
	} {
		require.InDelta(t, want, sums[id]/float64(len(women)), 0.0051, id)
	}
	require.InDelta(t, 981.34, length/float64(len(women)), 0.0051)
}
