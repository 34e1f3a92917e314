package lesson_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"
)

// sentence is the end of one: a stop before a blank and a capital, or at the
// end.
var sentence = regexp.MustCompile(`[.?](?: [A-Z0-9]|$)`)

// A step is one action: what to do in at most two sentences, why in as many at
// most, the sum with her own numbers where one is worked out, and something new
// on the drawing that no step before it made.
func TestAStepIsOneActionWithItsReasonAndSum(t *testing.T) {
	for _, b := range bodies(t) {
		s := sheet(t, b)
		born := map[int]int{}
		for _, m := range s.Marks {
			born[m.Born]++
		}
		for i, st := range s.Steps {
			at := b.name + ", " + st.ID
			require.Equal(t, i+1, st.Number, at)
			if !st.Drawn {
				continue
			}
			for _, words := range []string{st.Do.In(b.job.Unit), st.Why.In(b.job.Unit)} {
				n := len(sentence.FindAllString(words, -1))
				if n < 1 || n > 2 {
					t.Errorf("%s: %d sentences: %s", at, n, words)
				}
			}
			if len(st.Marks) > 0 && born[st.Number] == 0 {
				t.Errorf("%s draws nothing new", at)
			}
			if sum := st.Sum.Sum(b.job.Unit); sum != "" {
				require.Regexp(t, `\d`, sum, at)
			}
		}
	}
}
