package card

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	styles "chalkfold/testdata/figure"
)

// A lining is chalked from its piece: it adds no marks to the card, and says
// what differs.
func TestLiningIsTraced(t *testing.T) {
	plain := Make(workroom.Draft(styles.Styled(t, map[pattern.ChoiceID]string{"hem_opening": "vent"})), measure.In)
	s := workroom.Draft(styles.Styled(t, map[pattern.ChoiceID]string{"lining": "full", "hem_opening": "vent"}))
	c := Make(s, measure.In)
	require.Len(t, c.Pieces, 2)
	require.Equal(t, plain.Marks, c.Marks)
	require.Len(t, c.Traced, 2)
	require.Equal(t, "cut 1 on the fold, from the lining cloth", c.Traced[0].Cut)
	front, back := strings.Join(c.Traced[0].Says, "\n"), strings.Join(c.Traced[1].Says, "\n")
	for _, says := range []string{"stitching line of the front", "Hem: 1 above", "pressed up", "neck 5/16"} {
		require.Contains(t, front, says)
	}
	require.Contains(t, back, "straight on to the hem")
	require.Contains(t, back, "it stays open below")
	to := Make(workroom.Draft(styles.Styled(t, map[pattern.ChoiceID]string{"lining": "to_facing"})), measure.In)
	require.Contains(t, strings.Join(to.Traced[0].Says, "\n"), "inner edge of the facing")
}
