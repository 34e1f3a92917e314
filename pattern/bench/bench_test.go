package bench_test

import (
	"fmt"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/geom"

	"github.com/stretchr/testify/require"
)

func known(bust measure.Length) pattern.Known {
	k := pattern.Known{}
	if bust > 0 {
		k.Figures = []pattern.Figure{{ID: measure.BustGirth, Value: bust}}
	}
	return k
}

// A recipe of three steps: the second needs the bust, the third only uses
// what the first has drawn, and moves it.
func recipe() []bench.Step {
	return []bench.Step{
		{ID: "front.fold", Piece: pattern.Front, Draw: func(p *bench.Pen) {
			p.Do("Rule the fold.")
			p.Guide("fold", geom.Point{}, geom.Point{Y: 400})
			p.Point("top", geom.Point{})
		}},
		{ID: "front.width", Piece: pattern.Front, Needs: []measure.ID{measure.BustGirth}, Uses: []string{"front.top"}, Draw: func(p *bench.Pen) {
			w := p.Sum(measure.Measured("bust", p.K.Body(measure.BustGirth)).Over(4))
			p.Point("side", geom.Point{X: w.MM()})
		}},
		{ID: "front.move", Piece: pattern.Front, Uses: []string{"front.top"}, Draw: func(p *bench.Pen) {
			p.Point("top", p.At("front.top").Add(geom.Vector{Y: 10}))
		}},
		{ID: "front.last", Piece: pattern.Front, Uses: []string{"front.side"}, Draw: func(p *bench.Pen) { p.Point("end", p.At("front.side")) }},
	}
}

func TestRunDrawsInOrder(t *testing.T) {
	r := bench.Run(known(920), recipe())
	for i, s := range r.Steps {
		require.Equal(t, i+1, s.Number)
		require.True(t, s.Drawn, s.ID)
	}
	var tops []pattern.Mark
	for _, m := range r.Marks {
		if m.Name == "top" {
			tops = append(tops, m)
		}
	}
	require.Len(t, tops, 2)
	require.Equal(t, 3, tops[0].Gone, "the first top gave way at step 3")
	require.True(t, tops[0].AliveAt(2))
	require.False(t, tops[0].AliveAt(3))
	require.True(t, tops[1].AliveAt(4))
}

// A missing measurement lists its step and what depends on it undrawn; the
// others go on.
func TestRunWithoutTheBust(t *testing.T) {
	r := bench.Run(known(0), recipe())
	drawn := map[string]bool{}
	for _, s := range r.Steps {
		drawn[s.ID] = s.Drawn
	}
	require.Equal(t, map[string]bool{"front.fold": true, "front.width": false, "front.move": true, "front.last": false}, drawn)
	require.Contains(t, r.Steps[1].Waits.In(measure.In), "bust girth")
	require.Contains(t, r.Steps[3].Waits.In(measure.In), "earlier step")
}

func TestRefusedStepLeavesNothing(t *testing.T) {
	steps := []bench.Step{
		{ID: "front.a", Piece: pattern.Front, Draw: func(p *bench.Pen) {
			p.Point("half", geom.Point{X: 1})
			p.Refuse(pattern.Refused{Code: "R0", Says: measure.Tell("too short")})
		}},
		{ID: "front.b", Piece: pattern.Front, Uses: []string{"front.half"}, Draw: func(p *bench.Pen) { p.Point("more", geom.Point{}) }},
	}
	r := bench.Run(known(920), steps)
	require.Empty(t, r.Marks)
	require.Len(t, r.Refused, 1)
	require.Equal(t, "front.a", r.Refused[0].Step)
	require.False(t, r.Steps[0].Drawn)
	require.False(t, r.Steps[1].Drawn)
}

// square is a ring of 100 by 200 with a fold at x = 0.
func square(hem measure.Length, slant float64) []bench.Side {
	pt := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	return []bench.Side{
		{Name: "top", Stitch: geom.Lines(pt(0, 0), pt(100, 0)), Allowance: 10, Role: pattern.RoleStitch},
		{Name: "side", Stitch: geom.Lines(pt(100, 0), pt(100-slant, 200)), Allowance: 20, Corner: pattern.Mirrored, Role: pattern.RoleStitch},
		{Name: "hem", Stitch: geom.Lines(pt(100-slant, 200), pt(0, 200)), Allowance: hem, Role: pattern.RoleStitch},
		{Name: "fold", Stitch: geom.Lines(pt(0, 200), pt(0, 0)), Role: pattern.RoleFold},
	}
}

func TestRingAddsEachEdgesOwnAllowance(t *testing.T) {
	edges, stitch, cut := bench.Ring(square(30, 0))
	require.Len(t, edges, 4)
	require.True(t, stitch.Closed())
	require.True(t, cut.Closed())
	require.InDelta(t, 100*200, stitch.Outline(0.01).Area(), 1e-6)
	require.InDelta(t, 120*240, cut.Outline(0.01).Area(), 1e-6, "10 above, 20 at the side, 30 below, none at the fold")
}

// Below the hem line the cut side mirrors the side above it: on a side that
// comes in going down, the turned-up part goes out again.
func TestMirroredHem(t *testing.T) {
	_, _, cut := bench.Ring(square(30, 40))
	at := func(y float64) float64 {
		x := 0.0
		for _, p := range cut.AtLevel(y) {
			x = max(x, p.X)
		}
		return x
	}
	line := at(200)
	for _, d := range []float64{5, 15, 25} {
		require.InDelta(t, at(200-d), at(200+d), 0.05, "%v above and below the hem line", d)
		require.Greater(t, at(200+d), line)
	}
}

func ExampleRun() {
	steps := []bench.Step{{
		ID: "front.bust_width", Piece: pattern.Front, Title: "Bust width", Needs: []measure.ID{measure.BustGirth},
		Draw: func(p *bench.Pen) {
			x := p.Sum(measure.Measured("bust", p.K.Body(measure.BustGirth)).Over(4))
			p.Do("Measure {} out from the fold.", x)
			p.Point("underarm", geom.Point{X: x.MM(), Y: 190})
		},
	}}
	r := bench.Run(pattern.Known{Figures: []pattern.Figure{{ID: measure.BustGirth, Value: 36 * measure.Inch}}}, steps)
	fmt.Println(r.Steps[0].Do.In(measure.In), r.Steps[0].Sum.Sum(measure.In))
	// Output: Measure 9 out from the fold. bust 36 / 4 = 9
}
