package lesson_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
)

// A step is one action: what to do in at most two sentences, why in one, the
// sum with her own numbers where a number is worked out, and something new on
// the drawing, which the step made and none before it.
func TestAStepIsOneActionWithItsReasonAndSum(t *testing.T) {
	end := regexp.MustCompile(`[.:?](?: |$)`)
	for _, b := range bodies(t) {
		s := sheet(t, b)
		born := map[int]int{}
		for _, m := range s.Marks {
			born[m.Born]++
		}
		for i, st := range s.Steps {
			at := b.name + ", " + st.ID
			require.Equal(t, i+1, st.Number, at)
			do, why := st.Do.In(b.job.Unit), st.Why.In(b.job.Unit)
			if n := len(end.FindAllString(do, -1)); n < 1 || n > 2 {
				t.Errorf("%s: %d sentences to do: %s", at, n, do)
			}
			if n := len(end.FindAllString(why, -1)); n != 1 {
				t.Errorf("%s: %d sentences why: %s", at, n, why)
			}
			if st.Drawn && born[st.Number] == 0 && len(st.Marks) > 0 {
				t.Errorf("%s draws nothing new", at)
			}
			if sum := st.Sum.Sum(b.job.Unit); sum != "" && st.Drawn {
				require.Regexp(t, `\d`, sum, at)
			}
		}
	}
	_ = pattern.Front
}
