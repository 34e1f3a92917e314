package workroom_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

func TestToile(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		job := figure.Body36(t, method)
		s, dress := workroom.Toile(job), workroom.Draft(job)
		require.True(t, s.Complete)
		require.Len(t, s.Pieces, 2)
		require.Equal(t, dress.Girths, s.Girths, "the same garment")
		require.Contains(t, s.Notes[len(s.Notes)-1].In(measure.In), "A toile, to be fitted: ")
		for i, p := range s.Pieces {
			require.Equal(t, 2, p.Of)
			require.Equal(t, i+1, p.Number)
			require.Equal(t, dress.Pieces[i].Balance, p.Balance)
			for k, d := range p.Darts {
				require.Equal(t, dress.Pieces[i].Darts[k].Tip, d.Tip, "darts lie as they do")
			}
			for _, e := range p.Edges {
				if e.Role == pattern.RoleFold || e.Name == "dart" || method == pattern.Thumb {
					continue
				}
				require.InDelta(t, 25.4, e.Allowance.MM(), 0.01, "%s %s", p.ID, e.Name)
			}
		}
	}
}
