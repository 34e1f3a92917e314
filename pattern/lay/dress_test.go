package lay_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

func inches(x float64) measure.Length { return measure.In.Length(x) }

// dress is the drafted dress of an invented client.
func dress(method string) *pattern.Sheet {
	body := measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: inches(36.5), measure.WaistGirth: inches(28), measure.HipGirth: inches(38.5),
		measure.NeckBaseGirth: inches(14.5), measure.AcrossShoulders: inches(15), measure.BackNeckToWaist: inches(15.75),
		measure.SideNeckToBustPoint: inches(10.5), measure.SideNeckToWaist: inches(17), measure.BustPointDistance: inches(7.25),
		measure.WaistToHip: inches(7.5), measure.WaistToKnee: inches(23), measure.AcrossBack: inches(13.75),
		measure.AcrossFront: inches(12.75), measure.ShoulderDrop: inches(1.5), measure.UpperArmGirth: inches(11), measure.Height: inches(65),
	})
	return workroom.Draft(pattern.Job{Unit: measure.In, Body: body}.WithStyle(pattern.Method, pattern.PickValue(method)))
}

func TestADressIsLaidOnEveryUsualCloth(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := dress(method)
		need, ok := lay.NeedOf(s)
		require.True(t, ok)
		widths := []float64{44, 58}
		if os.Getenv("CHALKFOLD_LONG") != "" {
			widths = []float64{36, 44, 54, 58}
		}
		for _, width := range widths {
			for _, fold := range []string{lay.Lengthwise, lay.Flat} {
				c := lay.DefaultCloth("main", measure.In)
				c.Width, c.Fold, c.ShrinkAlong = inches(width), fold, 4
				p, err := lay.FromSheet([]*pattern.Sheet{s}, c)
				require.NoError(t, err)
				require.Equal(t, 10, p.Pieces())
				l, err := lay.Solve(p, lay.Options{Evaluations: 60000})
				require.NoError(t, err)
				require.Empty(t, lay.Verify(p, l))
				shelf, err := lay.Shelf(p)
				require.NoError(t, err)
				require.LessOrEqual(t, l.Length, shelf.Length)
				require.NotZero(t, l.Tape)
				// The lay asks for no more than the rule of the counter.
				bought := lay.Buy(l.Length, p.Cloth)
				if hand := lay.Rule(need, c); hand.Lengths > 0 {
					require.LessOrEqual(t, bought.Yards, hand.Yards, "%s %g %s", method, width, fold)
				}
				// Turned pieces save cloth: with nap no less is needed.
				p.Cloth.Nap = true
				nap, err := lay.Solve(p, lay.Options{Evaluations: 60000})
				require.NoError(t, err)
				for _, q := range nap.Placed {
					require.Zero(t, q.Turn)
				}
			}
		}
	}
}

func TestOtherClothsTakeTheirPiecesNet(t *testing.T) {
	s := dress(pattern.Measured)
	p, err := lay.FromSheet([]*pattern.Sheet{s}, lay.DefaultCloth("interfacing", measure.Cm))
	require.NoError(t, err)
	require.Len(t, p.Items, 4)
	for _, it := range p.Items {
		for i := range s.Pieces {
			q := &s.Pieces[i]
			if string(q.ID) != it.ID {
				continue
			}
			want := q.Stitch.Area() * lay.PerMM * lay.PerMM
			require.InEpsilon(t, want, area(it.Outline), 1e-3)
			require.Less(t, area(it.Outline), q.CutLine.Area()*lay.PerMM*lay.PerMM)
		}
	}
	l, err := lay.Solve(p, lay.Options{Evaluations: 50000})
	require.NoError(t, err)
	require.Empty(t, lay.Verify(p, l))
	_, err = lay.FromSheet([]*pattern.Sheet{s}, lay.DefaultCloth("lining", measure.Cm))
	require.ErrorContains(t, err, "nothing to lay")
}

func area(o []lay.Point) float64 {
	sum := 0.0
	for i, p := range o {
		q := o[(i+1)%len(o)]
		sum += float64(p.X)*float64(q.Y) - float64(p.Y)*float64(q.X)
	}
	return sum / 2
}

func TestTwoClientsShareACloth(t *testing.T) {
	s := dress(pattern.Measured)
	c := lay.DefaultCloth("main", measure.In)
	one, err := lay.FromSheet([]*pattern.Sheet{s}, c)
	require.NoError(t, err)
	both, err := lay.FromSheet([]*pattern.Sheet{s, s}, c)
	require.NoError(t, err)
	require.Equal(t, 2*one.Pieces(), both.Pieces())
	require.Equal(t, 1, both.Items[len(both.Items)-1].Sheet)
	a, err := lay.Solve(one, lay.Options{Evaluations: 100000})
	require.NoError(t, err)
	b, err := lay.Solve(both, lay.Options{Evaluations: 300000})
	require.NoError(t, err)
	require.Less(t, b.Length, 2*a.Length+2*both.Cloth.Tape)
}

func TestMatchedSideSeamsOnAStripe(t *testing.T) {
	c := lay.DefaultCloth("main", measure.In)
	c.RepeatAlong, c.RepeatAcross = inches(3), inches(1.5)
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		p, err := lay.FromSheet([]*pattern.Sheet{dress(method)}, c)
		require.NoError(t, err)
		matched := 0
		for _, it := range p.Items {
			if it.Match.Along {
				matched++
			}
		}
		require.Equal(t, 2, matched)
		l, err := lay.Solve(p, lay.Options{Evaluations: 100000})
		require.NoError(t, err)
		require.Empty(t, lay.Verify(p, l))
		require.Greater(t, lay.Buy(l.Length, p.Cloth).Needed, measure.Length(float64(l.Length)/lay.PerMM))
	}
}
