package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
)

// inEveryStyle drafts women of the survey, by measure and from the block, with
// a choice made for each (n counts them) and one option of every pick beside
// it, but those left out: each draft is sound, or refused with a reason and a
// cure, and no check of a sound one fails.
func inEveryStyle(t *testing.T, with func(job pattern.Job, n int) pattern.Job, leave func(id pattern.ChoiceID, option string) bool) {
	t.Helper()
	women := ansur.Load(t)
	drafted, refused := 0, map[string]int{}
	for i := 0; i < len(women); i += 2 * everyWoman {
		n := i / everyWoman / 2
		job := with(jobOf(women[i], []string{pattern.Measured, pattern.Direct}[n%2]), n)
		for id, options := range styles() {
			o := options[(n/2)%len(options)]
			if leave(id, o) {
				continue
			}
			s := workroom.Draft(choose(job, id, o))
			drafted++
			if len(s.Refused) > 0 {
				refused[s.Refused[0].Code+" "+s.Refused[0].Input]++
				reasoned(t, s)
				continue
			}
			sound(t, s, string(id)+" "+o)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d %s %s: %s %s", women[i].Row, id, o, f.Code, f.Says.In(measure.In))
			}
		}
	}
	t.Logf("%d drafted, refused %v", drafted, refused)
	require.Greater(t, drafted, 400)
}
