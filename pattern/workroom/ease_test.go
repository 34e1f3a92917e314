package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestEaseClasses: a class sets what was not chosen, and what was chosen
// stays; the table of ease is content with what the class sets.
func TestEaseClasses(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	for class, want := range map[string][3]float64{"close": {1.75, 1.25, 2}, "fitted": {2.5, 2, 2}, "easy": {4, 5, 4}, "roomy": {6, 8, 6}} {
		s := workroom.Draft(job.WithStyle("ease_class", pattern.PickValue(class)))
		require.True(t, s.Complete, class)
		sound(t, s, class)
		for i, id := range []pattern.ChoiceID{"ease_bust", "ease_waist", "ease_hip"} {
			require.InDelta(t, want[i], s.Known.Length(id).Inches(), 1e-9, "%s %s", class, id)
		}
		for _, r := range truing.EaseTable(s) {
			if r.Level == "bust" || r.Level == "hip" {
				require.Equal(t, "good", r.Says(), "%s %s", class, r.Level)
			}
		}
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", class, f.Says.In(measure.In))
		}
	}
	chosen := workroom.Draft(job.WithStyle("ease_class", pattern.PickValue("roomy")).WithStyle("ease_bust", pattern.LengthValue(figure.In(3))))
	require.InDelta(t, 3, chosen.Known.Length("ease_bust").Inches(), 1e-9)
	require.Equal(t, workroom.Draft(job).Pieces, workroom.Draft(job.WithStyle("ease_class", pattern.PickValue("fitted"))).Pieces)
}

// TestKnits need less, and what would fail in a woven is right in a knit.
func TestKnits(t *testing.T) {
	job := figure.Body36(t, pattern.Measured).WithStyle("cloth_kind", pattern.PickValue("knit"))
	s := workroom.Draft(job)
	require.InDelta(t, 0.5, s.Known.Length("ease_bust").Inches(), 1e-9)
	require.NotContains(t, codes(s), "sit_tight")
	woven := workroom.Draft(figure.Body36(t, pattern.Measured).WithStyle("ease_hip", pattern.LengthValue(0)))
	require.Contains(t, codes(woven), "sit_tight")
}

// TestEaseOnGarments: a garment's own ease stands until a class is chosen.
func TestEaseOnGarments(t *testing.T) {
	job := figure.Body36(t, pattern.Measured).WithStyle(pattern.Garment, pattern.PickValue(pattern.Shift))
	require.InDelta(t, 6, workroom.Draft(job).Known.Length("ease_bust").Inches(), 1e-9)
	require.InDelta(t, 4, workroom.Draft(job.WithStyle("ease_class", pattern.PickValue("easy"))).Known.Length("ease_bust").Inches(), 1e-9)
}

// TestEaseOnWomen drafts every class and cloth on women of the survey.
func TestEaseOnWomen(t *testing.T) {
	women := ansur.Load(t)
	for i := 0; i < len(women); i += everyWoman {
		class := []string{"close", "easy", "roomy"}[i/everyWoman%3]
		kind := []string{"woven", "stretch", "knit"}[i/everyWoman/3%3]
		job := jobOf(women[i], []string{pattern.Measured, pattern.Direct}[i/everyWoman%2]).
			WithStyle("ease_class", pattern.PickValue(class)).WithStyle("cloth_kind", pattern.PickValue(kind))
		s := workroom.Draft(job)
		if len(s.Refused) > 0 {
			t.Logf("row %d %s %s: %s", women[i].Row, class, kind, s.Refused[0].Says.In(measure.In))
			continue
		}
		sound(t, s, class+" "+kind)
		require.GreaterOrEqual(t, len(truing.EaseTable(s)), 6)
		for _, f := range s.Findings {
			if f.Verdict == pattern.Fail && f.Code != "armhole_small" {
				t.Errorf("row %d %s %s: %s %s", women[i].Row, class, kind, f.Code, f.Says.In(measure.In))
			}
		}
	}
}

func BenchmarkEaseTable(b *testing.B) {
	s := workroom.Draft(figure.Body36(b, pattern.Measured))
	b.ReportAllocs()
	for b.Loop() {
		truing.EaseTable(s)
	}
}
