package session

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// A file to fill in says which choices read more of her tape, and has a line
// for each of those measures, once.
func TestATemplateSaysWhatChoicesRead(t *testing.T) {
	text := string(Template(pattern.Dress, pattern.Measured, measure.In))
	require.Contains(t, text, "#   sleeve = \"cap\", \"short\": upper_arm_girth\n")
	require.Contains(t, text, "#   sleeve = \"three_quarter\", \"long\": upper_arm_girth, elbow_girth, hand_girth, arm_length\n")
	for _, g := range workroom.Garments() {
		text := string(Template(g.ID, pattern.Measured, measure.Cm))
		_, err := Parse("new", []byte(text))
		require.NoError(t, err, g.ID)
		for _, m := range measure.All() {
			require.LessOrEqual(t, strings.Count(text, "\n# "+string(m.ID)+` = ""`), 1, "%s: %s", g.ID, m.ID)
		}
		for _, c := range choicesNeed(g.ID, pattern.Measured) {
			for _, id := range c.reads {
				require.Contains(t, text, "\n# "+id+` = ""`, g.ID)
			}
		}
	}
}
