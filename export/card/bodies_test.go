package card_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/card"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/golden"
)

// Real bodies, drafted by the workroom itself: see testdata/ansur.

func TestRealBodies(t *testing.T) {
	const every = 4 // each woman in one of the four ways
	skipped := 0
	for i, w := range ansur.Load(t) {
		for k, method := range []string{pattern.Measured, pattern.Thumb} {
			for n, u := range []measure.Unit{measure.In, measure.Cm} {
				if (i+2*k+n)%every != 0 {
					continue
				}
				style := pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{
					pattern.Method: pattern.PickValue(method), "length": pattern.LengthValue(w.Length),
				})
				s := workroom.Draft(pattern.Job{Unit: u, Body: w.Body, Style: style})
				if !s.Complete || s.Count(pattern.Fail) > 0 {
					skipped++ // nothing to cut
					continue
				}
				off, err := card.ReadBack(s, u)
				require.NoError(t, err, "row %d, %s, %s", w.Row, method, u)
				require.LessOrEqual(t, off, card.Bound(u), "row %d, %s, %s", w.Row, method, u)
			}
		}
	}
	require.Zero(t, skipped)
}

// learner is an invented client.
func learner(method string) *pattern.Sheet {
	body := map[measure.ID]float64{
		measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5,
		measure.AcrossShoulders: 15, measure.AcrossBack: 13.75, measure.BackNeckToWaist: 16,
		measure.SideNeckToWaist: 17.75, measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25,
		measure.WaistToHip: 8, measure.ShoulderDrop: 1.5, measure.WaistToKnee: 23,
	}
	lengths := map[measure.ID]measure.Length{}
	for id, in := range body {
		lengths[id] = measure.In.Length(in)
	}
	return workroom.Draft(pattern.Job{
		Client: pattern.Client{Name: "Learner Four"},
		Body:   measure.NewBody(lengths),
		Style:  pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{pattern.Method: pattern.PickValue(method)}),
	})
}

func TestGoldens(t *testing.T) {
	golden.Check(t, "measured-in.txt", card.Text(t, learner(pattern.Measured), measure.In))
	golden.Check(t, "measured-cm.md", card.Markdown(t, learner(pattern.Measured), measure.Cm))
	golden.Check(t, "thumb-in.txt", card.Text(t, learner(pattern.Thumb), measure.In))
}

func ExampleMake() {
	c := card.Make(learner(pattern.Measured), measure.In)
	front := c.Pieces[0]
	fmt.Println(front.Title+":", front.Cut)
	for _, r := range front.Rows[:4] {
		fmt.Printf("%-5s %-11s cut down %s, stitch down %s, out %s\n", r.Join, r.Name,
			c.Unit.Tape(r.Cut.Down), c.Unit.Tape(r.Stitch.Down), c.Unit.Tape(r.Stitch.Out))
	}
	// Output:
	// Front: cut 1 on the fold
	// start neck centre cut down 4 1/8, stitch down 4 1/2, out 0
	// curve             cut down 3 3/4, stitch down 4 1/4, out 1 3/8
	// curve             cut down 2 7/8, stitch down 2 7/8, out 2 3/4
	// curve neck point  cut down -1/8, stitch down 1/2, out 3 7/8
}

func BenchmarkCard(b *testing.B) {
	s := learner(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		card.Make(s, measure.In)
	}
}
