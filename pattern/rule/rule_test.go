package rule_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// known is a body of girths and widths with the eases named.
func known(body map[measure.ID]float64, style map[pattern.ChoiceID]float64) pattern.Known {
	var k pattern.Known
	all := map[measure.ID]measure.Length{}
	for _, m := range measure.All() {
		if x, ok := body[m.ID]; ok {
			all[m.ID] = figure.In(x)
			k.Figures = append(k.Figures, pattern.Figure{ID: m.ID, Value: figure.In(x)})
		}
	}
	k.Job.Body = measure.NewBody(all)
	for id, x := range style {
		k.Settings = append(k.Settings, pattern.Setting{ID: id, Value: pattern.LengthValue(figure.In(x)), Chosen: true})
	}
	return k
}

// TestPublishedDrafts holds the rules to worked examples in print.
func TestPublishedDrafts(t *testing.T) {
	// A teaching page's tunic (greendians.com, kurti draft, bust 36):
	// half shoulder 7 1/2, chest line 36/4 + 3/4, hip H/4 + 1 1/4.
	tunic := known(map[measure.ID]float64{measure.BustGirth: 36, measure.AcrossShoulders: 15, measure.HipGirth: 38},
		map[pattern.ChoiceID]float64{"ease_bust": 3, "ease_hip": 5})
	require.InDelta(t, 7.5, rule.BoneOut(tunic).Result().Inches(), 1e-9)
	require.InDelta(t, 9.75, rule.BustWidth(tunic).Result().Inches(), 1e-9)
	require.InDelta(t, 10.75, rule.HipWidth(tunic).Result().Inches(), 1e-9)

	// A teaching page's basic bodice block (fashioniksha.com, 2023): neck
	// half N/6 + 1/2, so 2.917 for a neck of 14 1/2; width 9 3/4.
	block := known(map[measure.ID]float64{measure.BustGirth: 36, measure.NeckBaseGirth: 14.5, measure.AcrossShoulders: 15},
		map[pattern.ChoiceID]float64{"ease_bust": 3})
	require.InDelta(t, 2.917, rule.NeckHalf(block).Result().Inches(), 0.0005)
	require.InDelta(t, 9.75, rule.BustWidth(block).Result().Inches(), 1e-9)

	// A teaching page's dress block (artvani-vani.blogspot.com), worn loose:
	// width B/4 + 1 1/2, hip 38/4 + 1 1/2.
	loose := known(map[measure.ID]float64{measure.BustGirth: 36, measure.HipGirth: 38},
		map[pattern.ChoiceID]float64{"ease_bust": 6, "ease_hip": 6})
	require.InDelta(t, 10.5, rule.BustWidth(loose).Result().Inches(), 1e-9)
	require.InDelta(t, 11, rule.HipWidth(loose).Result().Inches(), 1e-9)
}

// TestDartRotation holds the angle law to a table worked out beside the
// program: the same dart at other distances from its pivot.
func TestDartRotation(t *testing.T) {
	var file struct {
		Rotation []struct {
			Intake float64            `json:"intake"`
			Leg    float64            `json:"leg_from_pivot"`
			Angle  float64            `json:"angle_deg"`
			Chord  map[string]float64 `json:"chord_at"`
		} `json:"dart_rotation"`
		Walking []struct {
			Step     float64 `json:"step"`
			Hem      float64 `json:"hem_height"`
			Leg      float64 `json:"leg"`
			LegGirth float64 `json:"leg_girth"`
			Girth    float64 `json:"girth"`
		} `json:"walking"`
	}
	figure.Read(t, "measured-p36.json", &file)
	require.NotEmpty(t, file.Rotation)
	for _, r := range file.Rotation {
		angle := rule.DartAngle(figure.In(r.Intake), figure.In(r.Leg))
		require.InDelta(t, r.Angle, rule.Degrees(angle), 0.001)
		for at, want := range r.Chord {
			l, err := measure.Read(at, measure.In)
			require.NoError(t, err)
			require.InDelta(t, want, rule.DartWidth(angle, l).Inches(), 0.0006, "%v at %s", r.Intake, at)
		}
	}
	require.NotEmpty(t, file.Walking)
	for _, w := range file.Walking {
		walk := rule.Walk{Hem: figure.In(w.Hem), Leg: figure.In(w.Leg), LegGirth: figure.In(w.LegGirth)}
		require.InDelta(t, w.Girth, walk.Need(figure.In(w.Step)).Inches(), 0.0006)
	}
}

// TestSlitTop holds the lowest slit to a table worked out beside the
// program: hip girth 40 at 31.25 above the floor, leg 34.
func TestSlitTop(t *testing.T) {
	for _, c := range []struct{ hem, step, girth, want float64 }{
		{16, 24, 38, 1.24},
		{16, 24, 37, 1.81},
		{16, 24, 36, 2.34},
		{16, 24, 35, 2.82},
		{16, 26, 40, 1.33},
		{16, 26, 35, 3.78},
		{16, 30, 40, 3.55},
		{16, 30, 37, 4.72},
		{18, 24, 37, 0.05},
		{18, 24, 35, 1.17},
		{18, 26, 37, 1.12},
		{18, 30, 35, 3.61},
	} {
		w := rule.Walk{
			Hem: figure.In(c.hem), Leg: figure.In(34), LegGirth: rule.LegGirth,
			HemGirth: figure.In(c.girth), HipGirth: figure.In(40), HipAbove: figure.In(31.25 - c.hem),
		}
		require.InDelta(t, c.want, w.Least(figure.In(c.step)).Inches(), 0.007, "%+v", c)
	}
}

func TestZipStock(t *testing.T) {
	for opening, want := range map[float64]float64{6.5: 7, 7: 7, 21.75: 22, 23.9: 24, 25.2: 26} {
		require.InDelta(t, want, rule.ZipFor(figure.In(opening)).Inches(), 1e-9)
	}
}

func TestDartIntakeByRule(t *testing.T) {
	for front, want := range map[float64]float64{17.75: 1, 17.125: 0.375, 17: 0.375, 16.5: 0.375, 16.4: 0, 15: 0} {
		k := known(map[measure.ID]float64{measure.BackNeckToWaist: 16, measure.SideNeckToWaist: front}, nil)
		require.InDelta(t, want, rule.DartIntake(k).Result().Inches(), 1e-9, "front %v", front)
	}
}

func TestChainSaysTheOthers(t *testing.T) {
	k := known(map[measure.ID]float64{measure.BackNeckToWaist: 16, measure.WaistToKnee: 23, measure.Height: 66}, nil)
	w, why := rule.Length.Pick(k)
	require.InDelta(t, 40, w.Result().Inches(), 1e-9)
	require.Contains(t, why.In(measure.In), "The knee by height would give 40 3/8")
	k = known(map[measure.ID]float64{measure.BackNeckToWaist: 16, measure.Height: 66}, nil)
	w, _ = rule.Length.Pick(k)
	require.InDelta(t, 40.364, w.Result().Inches(), 1e-9)
	w, _ = rule.Length.Pick(known(nil, nil))
	require.InDelta(t, 40, w.Result().Inches(), 1e-9)
}
