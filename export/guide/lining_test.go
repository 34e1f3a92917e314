package guide

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

// A lining is made up, joined to its edge and hemmed, each in its place; the
// rows of the garment do not count its pieces.
func TestLinings(t *testing.T) {
	for _, c := range []struct {
		picks map[pattern.ChoiceID]string
		order []string // leads, one after the other
		says  []string
		never string
	}{
		{
			map[pattern.ChoiceID]string{"lining": "full"},
			[]string{"**Shoulders.**", "**Lining, sewn on.**", "**Side seams.**", "**Lining.**", "**Hem.**"},
			[]string{"press them the other way", "inside the lining", "| Front, lining | - | 1 on the fold |", "**Side dart.** Front"},
			"Facing",
		},
		{
			map[pattern.ChoiceID]string{"lining": "to_facing"},
			[]string{"**Lining to the facing.**", "**Facing, sewn on.**", "**Side seams.**", "**Lining.**", "**Hem.**"},
			[]string{"Sew the lining to its lower edge"},
			"Finish the lower edge",
		},
		{
			map[pattern.ChoiceID]string{"lining": "full", "sleeve": "long"},
			[]string{"**Side seams.**", "**Sleeves, set in.**", "**Lining.**", "**Hem of the sleeve.**", "**Hem.**"},
			[]string{"the sleeves set in", "Fell the sleeve's lining"},
			"Hem of the sleeve (lining)",
		},
		{
			map[pattern.ChoiceID]string{"lining": "full", "garment": "skirt", "waist_finish": "band"},
			[]string{"**Side seams.**", "**Lining.**", "**Hem.**"},
			[]string{"baste it to the waist before the band"},
			"neck",
		},
	} {
		text := markdown(t, workroom.Draft(figure.Styled(t, c.picks)), measure.In)
		rest := text
		for _, lead := range c.order {
			_, after, ok := strings.Cut(rest, lead)
			require.True(t, ok, "%v: %s", c.picks, lead)
			rest = after
		}
		for _, s := range c.says {
			require.Contains(t, text, s, c.picks)
		}
		_, sewing, _ := strings.Cut(text, "Sewing order")
		sewing, _, _ = strings.Cut(sewing, "Truing")
		require.NotContains(t, sewing, c.never, c.picks)
		require.NotContains(t, text, "%!")
	}
}
