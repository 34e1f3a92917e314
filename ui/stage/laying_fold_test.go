package stage

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern/lay"
	"chalkfold/ui/keys"
)

// Every fold is picked in the form, drawn, and told how to fold.
func TestEveryFoldIsPickedInTheForm(t *testing.T) {
	d, s, u := layBench(t, wideCloth(58))
	for _, c := range []struct{ fold, says string }{
		{lay.Flat, "flat"},
		{lay.ToMiddle, "both edges folded to the middle"},
		{lay.OffCentre, "Fold one selvage in"},
		{lay.Across, "Fold the cloth across"},
		{lay.Lengthwise, "folded lengthwise"},
	} {
		u.do("cloth")
		s.form.to(s.form.find("fold"))
		ask := u.do("text-right")
		require.Contains(t, ask.Says, "how it lies")
		u.do(keys.Back)
		on, _ := d.Job().Cloth("main")
		require.Equal(t, c.fold, on.Fold)
		require.Contains(t, u.screen(), c.says)
		verified(t, s)
		drawn := s.draw()
		require.Equal(t, c.fold == lay.Across, drawn.Ends)
		require.Equal(t, c.fold == lay.OffCentre, drawn.Depth > 0)
	}
}
