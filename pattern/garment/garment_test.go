package garment_test

import (
	"strings"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/garment"

	"github.com/stretchr/testify/require"
)

// Every step of every garment and method says what it is, why, and what goes
// wrong; its needs are measurements, its choices are choices of the garment,
// and the pieces in its name and its marks agree.
func TestStepsAreWhole(t *testing.T) {
	for _, g := range garment.All() {
		choices := map[pattern.ChoiceID]bool{}
		for _, c := range g.Choices() {
			choices[c.ID] = true
		}
		for _, method := range g.Methods() {
			m, ok := g.Method(method)
			require.True(t, ok)
			require.NotEmpty(t, m.Needs, method)
			seen := map[string][]bench.Step{}
			for _, s := range m.Steps {
				name := g.ID + " " + method + " " + s.ID
				require.NotEmpty(t, s.Title, name)
				require.False(t, s.Why.IsEmpty(), name)
				require.False(t, s.Slip.IsEmpty(), name)
				require.False(t, s.Rule.IsEmpty(), name)
				require.True(t, strings.HasPrefix(s.ID, string(s.Piece)+"."), name)
				for _, id := range s.Needs {
					_, ok := measure.Find(id)
					require.True(t, ok, "%s needs %s", name, id)
				}
				for _, id := range s.Choices {
					require.True(t, choices[id], "%s reads the choice %s", name, id)
				}
				for _, u := range s.Uses {
					require.Contains(t, u, ".", name)
				}
				seen[s.ID] = append(seen[s.ID], s)
			}
			// one id twice only where a condition takes one or the other
			for id, twins := range seen {
				if len(twins) > 1 {
					for _, s := range twins {
						require.NotNil(t, s.If, "%s stands twice without a condition", id)
					}
				}
			}
		}
	}
}
