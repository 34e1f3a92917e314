package laid_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

// job is an invented client's.
func job() pattern.Job {
	in := measure.In.Length
	return pattern.Job{Unit: measure.In, Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: in(36.5), measure.WaistGirth: in(28), measure.HipGirth: in(38.5), measure.NeckBaseGirth: in(14.5),
		measure.AcrossShoulders: in(15), measure.BackNeckToWaist: in(15.75), measure.SideNeckToBustPoint: in(10.5),
		measure.SideNeckToWaist: in(17), measure.BustPointDistance: in(7.25), measure.WaistToHip: in(7.5), measure.WaistToKnee: in(23),
		measure.AcrossBack: in(13.75), measure.AcrossFront: in(12.75), measure.ShoulderDrop: in(1.5), measure.UpperArmGirth: in(11), measure.Height: in(65),
	})}
}

func sheets(s *pattern.Sheet) []*pattern.Sheet { return []*pattern.Sheet{s} }

// kept is a job with a lay found in a short search.
func kept(t *testing.T, j pattern.Job, cloth string) (pattern.Job, lay.Lay) {
	t.Helper()
	w, err := laid.New(sheets(workroom.Draft(j)), cloth)
	require.NoError(t, err)
	l, err := lay.Solve(w.Problem, lay.Options{Evaluations: 30000})
	require.NoError(t, err)
	return j.WithLay(w.Keep(l)), l
}

func TestAKeptLayIsShownAgain(t *testing.T) {
	for _, cloth := range []string{"main", "interfacing"} {
		for _, fold := range []string{lay.Lengthwise, lay.Flat, lay.OffCentre, lay.Across} {
			if fold == lay.Across && cloth != "main" {
				continue // of facings on the fold there is nothing to fold it for
			}
			j := job().WithCloth(pattern.Cloth{Name: cloth, Width: measure.In.Length(45), Fold: fold, ShrinkAlong: 4})
			j, l := kept(t, j, cloth)
			s, err := laid.Show(workroom.Draft(j), cloth)
			require.NoError(t, err)
			require.True(t, s.Kept)
			require.True(t, s.Named)
			require.True(t, s.Dropped.IsEmpty())
			require.Equal(t, l.Placed, s.Lay.Placed)
			require.Equal(t, l.Evaluations, s.Lay.Evaluations)
			require.LessOrEqual(t, s.Lay.Length, l.Length)
		}
	}
}

// A fold off centre stays as deep as it was kept, also round pins alone.
func TestTheDepthOfAFoldIsKept(t *testing.T) {
	j := job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(45), Fold: lay.OffCentre})
	j, l := kept(t, j, "main")
	k := j.Lays[0]
	require.Positive(t, k.Depth)
	k.Pins, k.Placed = k.Placed[:1], nil
	s, err := laid.Show(workroom.Draft(j.WithLay(k)), "main")
	require.NoError(t, err)
	require.Equal(t, l.Depth, s.Lay.Depth)
	require.Len(t, s.Problem.Pins, 1)
	require.Contains(t, s.Says().In(measure.In), "one selvage folded in by")
	j.Lays[0].Depth = 0 // of which nothing is known
	s, err = laid.Show(workroom.Draft(j), "main")
	require.NoError(t, err)
	require.False(t, s.Kept)
	require.False(t, s.Dropped.IsEmpty())
}

func TestWithoutAKeptLayTheFirstIsShown(t *testing.T) {
	s, err := laid.Show(workroom.Draft(job()), "main")
	require.NoError(t, err)
	require.False(t, s.Kept || s.Named)
	require.True(t, s.Lay.First)
	require.Empty(t, lay.Verify(s.Problem, s.Lay))
	require.Contains(t, s.Says().In(measure.In), "by a first lay, side by side")
}

func TestALayIsDroppedWithASentenceAndItsPinsStay(t *testing.T) {
	j := job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(58)})
	j, _ = kept(t, j, "main")
	k := j.Lays[0]
	for _, p := range k.Placed {
		if p.Piece == "front" {
			k.Pins = append(k.Pins, p)
		}
	}
	j = j.WithLay(k)
	changed := j.WithBody(measure.HipGirth, measure.In.Length(46))
	s, err := laid.Show(workroom.Draft(changed), "main")
	require.NoError(t, err)
	require.False(t, s.Kept)
	require.Equal(t, "The pieces or the cloth changed since the lay was kept: it does not hold any more.", s.Dropped.In(measure.In))
	require.Len(t, s.Problem.Pins, 1)
	require.Empty(t, lay.Verify(s.Problem, s.Lay), "laid anew round the pin")

	wider := j.WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(60)})
	s, err = laid.Show(workroom.Draft(wider), "main")
	require.NoError(t, err)
	require.False(t, s.Kept)
	require.Equal(t, "The lay that was kept is for cloth 58 in wide, folded lengthwise; this one is 60 in, folded lengthwise.", s.Dropped.In(measure.In))

	napped := j.WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(58), Nap: true})
	s, err = laid.Show(workroom.Draft(napped), "main")
	require.NoError(t, err)
	for _, q := range s.Lay.Placed {
		require.Zero(t, q.Turn)
	}

	k.Placed = k.Placed[1:]
	s, err = laid.Show(workroom.Draft(j.WithLay(k)), "main")
	require.NoError(t, err)
	require.False(t, s.Kept, "a piece is lacking")
	k.Placed[0].Piece = "sleeve"
	s, err = laid.Show(workroom.Draft(j.WithLay(k)), "main")
	require.NoError(t, err)
	require.False(t, s.Kept, "there is no such piece")
}

func TestAClothOfWhichNothingIsCut(t *testing.T) {
	_, err := laid.Show(workroom.Draft(job()), "lining")
	require.EqualError(t, err, "cloth lining: no piece; nothing is cut from this cloth; name one of interfacing, main")
}

func TestSeveralOnOneCloth(t *testing.T) {
	s := workroom.Draft(job())
	w, err := laid.New([]*pattern.Sheet{s, s}, "main")
	require.NoError(t, err)
	w = w.Whose([]string{"A", "B"})
	require.Equal(t, "Front of A", w.Problem.Items[0].Title)
	require.Equal(t, 20, w.Problem.Pieces())
	h, ok := w.Hand(w.Cloth.Width)
	require.True(t, ok)
	require.GreaterOrEqual(t, h.Lengths, 2)
}

func Example() {
	j := job().WithCloth(pattern.Cloth{Name: "main", Width: measure.In.Length(58), ShrinkAlong: 4})
	s, err := laid.Show(workroom.Draft(j), laid.Main)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Says().In(measure.In))
	// Output:
	// Laid out: 1 1/2 yd (1.4 m) by a first lay, side by side; a search may need less. By the hand rule: 1 5/8 yd (1.4 m).
}
