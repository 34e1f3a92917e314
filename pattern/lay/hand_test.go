package lay

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func inches(x float64) measure.Length { return measure.In.Length(x) }

// figure36 is the check figure: hip 38, ease 2, piece length 44.1.
var figure36 = Need{Halves: []measure.Length{inches(11.1), inches(12)}, Longest: inches(44.1), Facing: inches(7)}

func TestShrinkageIsDividedByWhatStays(t *testing.T) {
	// A published pair: 3 yd at 5 % and 4 yd at 10 %.
	require.InDelta(t, 3.16, float64(Bought(measure.Fixed(3*Yard), 5).Result()/Yard), 0.005)
	require.InDelta(t, 4.44, float64(Bought(measure.Fixed(4*Yard), 10).Result()/Yard), 0.005)
}

func TestTheCheckFigureOnTwoWidths(t *testing.T) {
	for _, c := range []struct {
		width   float64
		lengths int
		says    string
	}{{58, 1, "1 5/8 yd (1.5 m)"}, {54, 1, "1 5/8 yd (1.5 m)"}, {44, 2, "2 5/8 yd (2.4 m)"}, {20, 0, "0 yd (0.0 m)"}} {
		h := Rule(figure36, pattern.Cloth{Width: inches(c.width), ShrinkAlong: 4})
		require.Equal(t, c.lengths, h.Lengths, c.width)
		require.Equal(t, c.says, Says(h.Yards, h.Metric), c.width)
	}
}

func TestASheetIsRead(t *testing.T) {
	box := func(id pattern.PieceID, w, l float64) pattern.Piece {
		a, b, c, d := geom.Point{}, geom.Point{X: w}, geom.Point{X: w, Y: l}, geom.Point{Y: l}
		return pattern.Piece{ID: id, CutLine: geom.Lines(a, b, c, d, a)}
	}
	s := &pattern.Sheet{Complete: true, Pieces: []pattern.Piece{box("front", 280, 1100), box("back", 300, 1090), box("front_neck_facing", 150, 90)}}
	n, ok := NeedOf(s)
	require.True(t, ok)
	require.Equal(t, Need{Halves: []measure.Length{280, 300}, Longest: 1100, Facing: 150, Small: 90, Smalls: 150}, n)
	s.Complete = false
	_, ok = NeedOf(s)
	require.False(t, ok)
}

// Two pieces on the fold do not lie side by side, however wide the cloth.
func TestPiecesOnTheFoldHaveALengthEach(t *testing.T) {
	n := Need{Halves: []measure.Length{280, 300}, OnFold: []measure.Length{280}, Longest: 1100, Facing: 150, Small: 90, SmallFold: 170}
	c := pattern.Cloth{Width: 1500}
	require.Equal(t, 1, Rule(n, c).Lengths)
	require.InDelta(t, 1100+254, Rule(n, c).Lay.Result().MM(), 0.1)
	n.OnFold = n.Halves
	require.Equal(t, 2, Rule(n, c).Lengths)
	require.InDelta(t, 2200+254, Rule(n, c).Lay.Result().MM(), 0.1, "the facings on the fold lie beyond")
	n.Small = 560 // a sleeve
	require.InDelta(t, 2200+560, Rule(n, c).Lay.Result().MM(), 0.1)
	n.Smalls = 3 * 1400 // of which three rows are made
	require.InDelta(t, 2200+6*254, Rule(n, c).Lay.Result().MM(), 0.1)
	n.Small, n.SmallFold = 90, 0
	require.InDelta(t, 2200, Rule(n, c).Lay.Result().MM(), 0.1)
}

func TestNarrowerOrShrinkingClothNeverTakesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := Need{Longest: inches(rapid.Float64Range(10, 60).Draw(t, "long")), Facing: inches(rapid.Float64Range(0, 9).Draw(t, "facing"))}
		for i := rapid.IntRange(1, 4).Draw(t, "pieces"); i > 0; i-- {
			n.Halves = append(n.Halves, inches(rapid.Float64Range(5, 16).Draw(t, "half")))
		}
		c := pattern.Cloth{Width: inches(rapid.Float64Range(36, 70).Draw(t, "width")), ShrinkAlong: rapid.Float64Range(0, 20).Draw(t, "along")}
		h := Rule(n, c)
		if h.Lengths == 0 {
			return
		}
		require.GreaterOrEqual(t, h.Yards, h.Buy.Result()-1e-6)
		require.GreaterOrEqual(t, h.Metric, h.Buy.Result()-1e-6)
		require.GreaterOrEqual(t, h.Buy.Result(), h.Lay.Result())
		more := c
		more.ShrinkAlong++
		require.GreaterOrEqual(t, Rule(n, more).Yards, h.Yards)
	})
}

func Example() {
	need := Need{Halves: []measure.Length{280, 305}, Longest: 1120, Facing: 170}
	h := Rule(need, pattern.Cloth{Width: 58 * measure.Inch, ShrinkAlong: 4})
	fmt.Println(Says(h.Yards, h.Metric))
	fmt.Println(h.Buy.Sum(measure.In))
	// Output:
	// 1 5/8 yd (1.5 m)
	// (longest piece 44 1/8 + facings 10) / 0.96 = 56 3/8
}
