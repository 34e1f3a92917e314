package fitting_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

func TestLevel(t *testing.T) {
	sheet := workroom.Draft(figure.Body36(t, pattern.Measured))
	read := func(front, side, back, wanted float64) fitting.Readings {
		return fitting.Readings{Front: figure.In(front), Side: figure.In(side), Back: figure.In(back), Wanted: figure.In(wanted)}
	}
	for _, c := range []struct {
		r    fitting.Readings
		says []string
	}{
		{read(16, 15.5, 15.75, 0), []string{"Hem raised at the sides 0 -> 1/2", "Hem raised behind 0 -> 1/4"}},
		{read(16, 15.5, 16, 17), []string{"Length 40 -> 39", "Hem raised at the sides 0 -> 1/2"}},
		{read(16, 16, 16, 15), []string{"Length 40 -> 41"}},
		{read(15, 15.5, 15.5, 15), []string{"Length 40 -> 40 1/2", "Hem raised in front 0 -> 1/2"}},
	} {
		p, err := fitting.Level(sheet, c.r)
		require.NoError(t, err)
		require.True(t, p.Possible(), p.WhyNot.In(measure.In))
		var says []string
		for _, x := range p.Changes {
			says = append(says, x.Says().In(measure.In))
		}
		require.Equal(t, c.says, says)
	}
	p, err := fitting.Level(sheet, read(16, 16, 16, 0))
	require.NoError(t, err)
	require.Equal(t, "the hem is level", p.WhyNot.In(measure.In))
	for _, r := range []fitting.Readings{read(16, 10, 16, 0), read(0, 16, 16, 0), read(16, 16, 90, 0)} {
		_, err := fitting.Level(sheet, r)
		require.Error(t, err)
	}
	p, err = fitting.Level(workroom.Draft(figure.Body36(t, pattern.Thumb)), read(16, 15, 16, 0))
	require.NoError(t, err)
	require.False(t, p.Possible())
}

// A skirt on its own, flared or not, and a dress with a waist seam are levelled
// like any other: what all places want alike goes to the skirt's length.
func TestLevelBelowAWaist(t *testing.T) {
	body := figure.Body36(t, pattern.Measured).WithoutStyle("length")
	flared := pattern.PickValue("flared")
	for length, job := range map[pattern.ChoiceID]pattern.Job{
		"skirt_length": body.WithStyle(pattern.Garment, pattern.PickValue(pattern.Skirt)).WithStyle("skirt_line", flared),
		"length":       body.WithStyle("waist_seam", pattern.SwitchValue(true)).WithStyle("waist_shaping", pattern.PickValue("fisheye")).WithStyle("skirt_line", flared),
	} {
		was := workroom.Draft(job)
		require.True(t, was.Complete, length)
		p, err := fitting.Level(was, fitting.Readings{Front: figure.In(16), Side: figure.In(15), Back: figure.In(15.5), Wanted: figure.In(17)})
		require.NoError(t, err)
		require.True(t, p.Possible(), p.WhyNot.In(measure.In))
		require.True(t, p.Sheet.Complete)
		require.InDelta(t, 1, (was.Length(length) - p.Sheet.Length(length)).Inches(), 1e-9, length)
		require.InDelta(t, 1, p.Sheet.Length("hem_level_side").Inches(), 1e-9)
		require.InDelta(t, 0.5, p.Sheet.Length("hem_level_back").Inches(), 1e-9)
		require.Zero(t, p.Sheet.Length("hem_level_front"))
		for _, f := range p.Sheet.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", length, f.Says.In(measure.In))
		}
		again, err := fitting.Level(p.Sheet, fitting.Readings{Front: figure.In(17), Side: figure.In(17), Back: figure.In(17)})
		require.NoError(t, err)
		require.Equal(t, "the hem is level", again.WhyNot.In(measure.In))
	}
}

// However the hem hung, after levelling every place is where it was wanted, and
// nothing is raised that need not be.
func TestLevelledIsLevel(t *testing.T) {
	start := figure.Body36(t, pattern.Measured)
	eighths := func(t *rapid.T, name string) float64 {
		return 16 + float64(rapid.IntRange(-8, 8).Draw(t, name))/8
	}
	rapid.Check(t, func(t *rapid.T) {
		job := start
		for i, id := range []pattern.ChoiceID{"hem_level_front", "hem_level_side", "hem_level_back"} {
			if rapid.Bool().Draw(t, fmt.Sprint("raised before ", i)) {
				job = job.WithStyle(id, pattern.LengthValue(figure.In(0.25)))
			}
		}
		was := workroom.Draft(job)
		r := fitting.Readings{Front: figure.In(eighths(t, "front")), Side: figure.In(eighths(t, "side")), Back: figure.In(eighths(t, "back")), Wanted: figure.In(eighths(t, "wanted"))}
		p, err := fitting.Level(was, r)
		require.NoError(t, err)
		if len(p.Changes) == 0 {
			return
		}
		least := measure.Length(1e9)
		for _, x := range []struct {
			id   pattern.ChoiceID
			read measure.Length
		}{{"hem_level_front", r.Front}, {"hem_level_side", r.Side}, {"hem_level_back", r.Back}} {
			up := p.Sheet.Length(x.id) - was.Length(x.id) - (p.Sheet.Length("length") - was.Length("length"))
			require.InDelta(t, r.Wanted.MM(), (x.read + up).MM(), 1e-6, x.id)
			least = min(least, p.Sheet.Length(x.id))
		}
		require.InDelta(t, 0, least.MM(), 1e-6)
	})
}

func ExampleLevel() {
	job := pattern.Job{}.WithBody(measure.BustGirth, 920).WithBody(measure.WaistGirth, 720).WithBody(measure.HipGirth, 980).WithBody(measure.Height, 1680)
	job.Unit = measure.Cm
	p, _ := fitting.Level(workroom.Draft(job), fitting.Readings{Front: 400, Side: 392, Back: 397})
	for _, c := range p.Changes {
		fmt.Println(c.Says().In(measure.Cm))
	}
	// Output:
	// Hem raised at the sides 0 -> 0.8
	// Hem raised behind 0 -> 0.3
}
