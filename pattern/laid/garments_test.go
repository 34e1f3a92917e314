package laid_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
)

// styled are jobs of a garment: as it is by default, and for each choice that
// changes how much cloth it takes the option that takes most.
func styled(garment string) map[string]pattern.Job {
	base := job().WithStyle(pattern.Garment, pattern.PickValue(garment))
	out := map[string]pattern.Job{"": base}
	for _, c := range workroom.Choices(garment) {
		id := string(c.ID)
		if !strings.Contains(id, "sleeve") && !strings.Contains(id, "lining") && !strings.Contains(id, "flare") && !strings.Contains(id, "collar") {
			continue
		}
		if c.Kind == pattern.KindPick && len(c.Options) > 1 {
			for _, o := range []int{len(c.Options) / 2, len(c.Options) - 1} {
				out[id+" "+c.Options[o].Value] = base.WithStyle(c.ID, pattern.PickValue(c.Options[o].Value))
			}
		}
		if c.Kind == pattern.KindSwitch {
			out[id] = base.WithStyle(c.ID, pattern.SwitchValue(true))
		}
	}
	return out
}

// Every garment on every usual width is laid, with no more cloth than the hand
// rule asks for the dress and than the shelf lay takes of others; or one
// sentence says which width would do.
func TestEveryGarmentIsLaidOnEveryUsualWidth(t *testing.T) {
	for _, g := range workroom.Garments() {
		for style, j := range styled(g.ID) {
			widths := []float64{36, 44, 54, 58}
			if style != "" {
				widths = []float64{36, 54}
			}
			sheet := workroom.Draft(j)
			if !sheet.Complete {
				require.NotEqual(t, "", style, g.ID)
				continue // such a style does not go with the others
			}
			for _, name := range laid.Names(sheet) {
				for _, wide := range widths {
					c := lay.DefaultCloth(name, measure.In)
					c.Width = measure.In.Length(wide)
					laidOn(t, g.ID, style, sheet, c)
				}
			}
		}
	}
}

// The first lay of the dress, which exports show, asks for no more than the hand
// rule, at every width in inches; nor does that of any garment at the usual ones
// by more than a quarter of a yard.
func TestTheFirstLayTakesNoMoreThanTheHandRule(t *testing.T) {
	for _, g := range workroom.Garments() {
		sheet := workroom.Draft(job().WithStyle(pattern.Garment, pattern.PickValue(g.ID)))
		for wide := 36.0; wide <= 62; wide++ {
			usual := wide == 36 || wide == 44 || wide == 54 || wide == 58
			if g.ID != "dress" && !usual {
				continue
			}
			c := lay.DefaultCloth(laid.Main, measure.In)
			c.Width = measure.In.Length(wide)
			w, err := laid.On(sheets(sheet), c)
			require.NoError(t, err)
			h, ok := w.Hand(c.Width)
			if !ok {
				continue // too narrow, folded
			}
			l, err := lay.Shelf(w.Problem)
			require.NoError(t, err)
			most := h.Yards
			if g.ID != "dress" {
				most += 2 * lay.YardStep
			}
			require.LessOrEqual(t, w.Buy(l).Yards, most+0.1, "%s, %g in", g.ID, wide)
		}
	}
}

// laidOn lays a sheet on a cloth, and flat where a piece is too wide for the
// folded one.
func laidOn(t *testing.T, garment, style string, sheet *pattern.Sheet, c pattern.Cloth) {
	t.Helper()
	what := garment + " " + style + ", " + c.Name + " " + measure.In.Say(c.Width) + " " + c.Fold
	w, err := laid.On(sheets(sheet), c)
	require.NoError(t, err, what)
	l, err := lay.Solve(w.Problem, lay.Options{Evaluations: 10_000})
	if err != nil {
		var r *measure.Refusal
		require.ErrorAs(t, err, &r, what)
		require.Contains(t, r.Works, "buy cloth of", what)
		if c.Fold != lay.Flat {
			require.Contains(t, r.Works, "lay it flat", what)
			c.Fold = lay.Flat
			laidOn(t, garment, style, sheet, c)
		}
		return
	}
	require.Empty(t, lay.Verify(w.Problem, l), what)
	shelf, err := lay.Shelf(w.Problem)
	require.NoError(t, err, what)
	require.LessOrEqual(t, l.Length, shelf.Length, what)
	if h, ok := w.Hand(c.Width); ok && garment == "dress" && style == "" && c.Name == laid.Main {
		require.LessOrEqual(t, w.Buy(l).Yards, h.Yards, what)
	}
}
