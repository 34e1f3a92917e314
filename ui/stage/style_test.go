package stage

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/keys"
)

func styling(t *testing.T) (user, *Style) {
	d := bench36(t)
	s := NewStyle(d)
	u := user{t, d, s}
	u.screen()
	return u, s
}

// What is usual is shown as the tape shows it; what she typed, as she typed it.
func TestDefaultsAreShownByTheTape(t *testing.T) {
	u, s := styling(t)
	job := u.d.Job()
	job.Unit = measure.Cm
	u.d.Change(job, "cm")
	u.screen()
	for i, r := range s.form.rows {
		if s.choices[i].Kind == pattern.KindLength {
			if _, decimals, ok := strings.Cut(r.text, "."); ok {
				require.Len(t, decimals, 1, "%s %s", r.id, r.text)
			}
		}
	}
	s.form.to(s.form.find("front_neck_depth"))
	before := u.d.Version()
	u.do(keys.Accept)
	require.Equal(t, before, u.d.Version(), "going by changes nothing")
	s.form.to(s.form.find("front_neck_depth"))
	u.do("clear")
	u.types("11.43")
	u.do(keys.Accept)
	s.form.to(s.form.find("front_neck_depth"))
	u.do("clear")
	u.types("11.75")
	u.do(keys.Accept)
	require.Equal(t, "11.75", s.form.rows[s.form.find("front_neck_depth")].text)
}

func TestTheMethodSwitchesTheList(t *testing.T) {
	u, s := styling(t)
	require.GreaterOrEqual(t, s.form.find("ease_waist"), 0)
	s.form.to(s.form.find("ease_waist"))
	u.do("nudge-up")
	s.form.to(s.form.find("method"))
	u.do("text-right")
	require.Equal(t, pattern.Thumb, u.d.Job().Style.Method())
	for i, c := range s.choices {
		set, _ := u.d.Sheet().Setting(c.ID)
		require.True(t, c.UsedBy(pattern.Thumb) || set.Chosen, "%s in row %d", c.ID, i)
	}
	last := s.choices[len(s.choices)-1]
	require.Equal(t, pattern.ChoiceID("ease_waist"), last.ID, "what she chose is kept, below")
	s.form.to(len(s.choices) - 1)
	require.Contains(t, u.screen(), "not used")
}

func TestALooseWaistIsAskedAbout(t *testing.T) {
	u, s := styling(t)
	i := s.form.find(string(waistShaping))
	require.GreaterOrEqual(t, i, 0)
	s.form.to(i)
	require.Regexp(t, `Leave it [0-9 /]+ loose`, strings.Join(strings.Fields(u.screen()), " "))
	u.do("text-right")
	require.NotContains(t, u.screen(), "loose?")
}
