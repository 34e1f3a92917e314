package truing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Where two panels meet the hem runs straight on, or one of them was cut with a
// corner of its own.
func TestPanelHem(t *testing.T) {
	panels := func(bend float64) (centre, side *pattern.Piece) {
		seam, far := at2(4, 40), at2(4, 20)
		c := closedRing(pattern.Front, edge("hem", geom.Lines(seam, at2(0, 40)), 1), edge("fold", geom.Lines(at2(0, 40), at2(0, 20)), 0),
			edge("waist", geom.Lines(at2(0, 20), far), 0), edge("panel", geom.Lines(far, seam), 0))
		s := closedRing(pattern.FrontSide, edge("side", geom.Lines(at2(9, 20), at2(9, 40)), 1), edge("hem", geom.Lines(at2(9, 40), at2(4, 40+bend)), 1),
			edge("panel", geom.Lines(at2(4, 40+bend), far), 0), edge("waist", geom.Lines(far, at2(9, 20)), 0))
		return &c, &s
	}
	for bend, want := range map[float64]pattern.Verdict{0: pattern.Pass, 0.2: pattern.Pass, 0.4: pattern.Advise, 1: pattern.Fail} {
		f, off := panelHem(panels(bend))
		require.Equal(t, want, f.Verdict, "%v: %v", bend, f.Got)
		require.Equal(t, want != pattern.Pass, off)
		if off {
			require.Equal(t, "panel_hem", f.Code)
			require.Equal(t, "panel_flare", f.Input)
		}
	}
}
