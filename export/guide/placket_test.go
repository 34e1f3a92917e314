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

// A placket is made while the front lies flat; one that runs through the waist
// seam comes after that seam, and one to the hem has nothing to slash.
func TestPlackets(t *testing.T) {
	picks := func(to string) pattern.Job {
		return figure.Styled(t, map[pattern.ChoiceID]string{"closure": "placket", "front_neckline": "jewel", "placket_to": to})
	}
	for _, c := range []struct {
		job   pattern.Job
		order []string
		says  string
		never string
	}{
		{picks("hip"), []string{"**Placket.**", "**Shoulders.**"}, "Slash the front down the fold", "over the waist seam"},
		{picks("hip").WithStyle("waist_seam", pattern.SwitchValue(true)), []string{"**Waist seam.**", "**Placket.**"}, "Slash the skirt", "Slash the front"},
		{picks("hem"), []string{"**Shoulders.**", "**Placket.**", "**Hem.**"}, "a band to each front edge", "Slash"},
	} {
		text := markdown(t, workroom.Draft(c.job), measure.In)
		rest := text
		for _, lead := range c.order {
			_, after, ok := strings.Cut(rest, lead)
			require.True(t, ok, lead)
			rest = after
		}
		require.Contains(t, text, c.says)
		require.NotContains(t, text, c.never)
	}
}
