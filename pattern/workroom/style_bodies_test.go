package workroom_test

import (
	"fmt"
	"testing"

	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
)

// everyWoman is how many women of the survey are passed over for each one
// that is drafted in every style.
const everyWoman = 12

// TestStylesOnWomen drafts each option by itself on women of the survey:
// what is not refused is sound and has no failing check, and few are refused.
func TestStylesOnWomen(t *testing.T) {
	women := ansur.Load(t)
	refused, drafted := map[string]int{}, 0
	for i := 0; i < len(women); i += everyWoman {
		w := women[i]
		drafted++
		for id, options := range styles() {
			for _, o := range options {
				s := workroom.Draft(choose(jobOf(w, pattern.Measured), id, o))
				what := fmt.Sprintf("row %d %s %s", w.Row, id, o)
				if len(s.Refused) > 0 {
					refused[string(id)+" "+o+" "+s.Refused[0].Code]++
					continue
				}
				require.True(t, s.Complete, what)
				sound(t, s, what)
				for _, f := range s.Findings {
					if f.Verdict == pattern.Fail && id != "closure" {
						t.Errorf("%s: %s %s", what, f.Code, f.Says.In(0))
					}
				}
			}
		}
	}
	for what, n := range refused {
		t.Logf("%s: %d of %d refused", what, n, drafted)
		most := drafted / 4
		if what == "skirt_line flared R30" {
			most = drafted / 2 // half of them have nothing to spare at the waist, so no dart to open
		}
		require.LessOrEqual(t, n, most, what)
	}
}
