package trial_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/trial"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

func of(t testing.TB, job pattern.Job, id pattern.ChoiceID) trial.Set {
	c, ok := workroom.FindChoice(pattern.Dress, id)
	require.True(t, ok, id)
	return trial.Of(job, c)
}

// Each pick is shown on the side and in the part where its options differ.
func TestWhereOptionsDiffer(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	for _, c := range []struct {
		id        pattern.ChoiceID
		behind    bool
		top, foot float64 // what must lie in the part, inches down
		whole     bool
	}{
		{"front_neckline", false, 1, 5, false},
		{"back_neckline", true, 1.5, 2, false},
		{"bust_dart", false, 3, 14, false},
		{"skirt_line", false, 30, 40, false},
		{"waist_shaping", true, 14, 20, false},
		{"hem_opening", true, 33, 39, false},
	} {
		set := of(t, job, c.id)
		require.False(t, set.Alike, c.id)
		require.Equal(t, c.behind, set.Behind, c.id)
		require.LessOrEqual(t, set.Box.Min.Y, figure.In(c.top).MM(), c.id)
		require.GreaterOrEqual(t, set.Box.Max.Y, figure.In(c.foot).MM(), c.id)
		require.InDelta(t, -set.Box.Min.X, set.Box.Max.X, 1e-6, "both halves")
		now := 0
		for _, o := range set.Options {
			if o.Now {
				now++
			}
			require.True(t, len(set.Shown(o)) > 0 || !o.WhyNot.IsEmpty(), "%s %s", c.id, o.Value)
			for _, l := range set.Shown(o) {
				for _, p := range l.Points {
					require.True(t, p.Y >= set.Box.Min.Y-1e-9 && p.Y <= set.Box.Max.Y+1e-9, "%s %s: %v", c.id, o.Value, p)
				}
			}
		}
		require.Equal(t, 1, now, c.id)
	}
	require.Less(t, of(t, job, "front_neckline").Box.Height(), figure.In(14).MM(), "a neck is shown close")
}

func TestAlike(t *testing.T) {
	require.True(t, of(t, figure.Body36(t, pattern.Measured), "facing").Alike)
}

// An option that cannot be drafted for her says why, and what would work.
func TestRefusedOptions(t *testing.T) {
	job := figure.Body36(t, pattern.Measured).WithStyle("closure", pattern.PickValue("zip_side"))
	refused := 0
	for _, o := range of(t, job, "front_neckline").Options {
		if !o.WhyNot.IsEmpty() {
			refused++
			require.NotEmpty(t, o.Cure.In(measure.In), o.Value)
		}
	}
	require.Positive(t, refused)
}

func TestPicks(t *testing.T) {
	for _, c := range trial.Picks(figure.Body36(t, pattern.Thumb)) {
		require.True(t, c.UsedBy(pattern.Thumb) && c.Kind == pattern.KindPick && len(c.Options) > 1)
	}
	require.Greater(t, len(trial.Picks(figure.Body36(t, pattern.Measured))), 8)
}

func BenchmarkNecklines(b *testing.B) {
	job := figure.Body36(b, pattern.Measured)
	for b.Loop() {
		of(b, job, "front_neckline")
	}
}

func ExampleOf() {
	job := pattern.Job{}.WithBody(measure.BustGirth, 920).WithBody(measure.WaistGirth, 720).WithBody(measure.HipGirth, 980).WithBody(measure.Height, 1680)
	c, _ := workroom.FindChoice(pattern.Dress, "skirt_line")
	set := trial.Of(job, c)
	for _, o := range set.Options[:2] {
		fmt.Println(o.Title, o.Now)
	}
	// Output:
	// Pegged true
	// Straight false
}
