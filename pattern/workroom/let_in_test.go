package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestFullUpperArm: what is let in at the upper arm widens nothing but the
// underarm line; the cap is as high as on the sleeve without it, and longer.
func TestFullUpperArm(t *testing.T) {
	for _, kind := range []string{"cap", "short", "three_quarter", "long"} {
		job := sleevedJob(t, kind)
		was := workroom.Draft(job)
		require.Zero(t, was.Known.Length("full_arm"), "her arm is not full")
		s := workroom.Draft(job.WithStyle("ease_upper_arm", pattern.LengthValue(figure.In(2.5))).WithStyle("full_arm", pattern.LengthValue(figure.In(0.5))))
		require.Empty(t, s.Refused, kind)
		sound(t, s, kind)
		require.InDelta(t, lengthOf(t, was, pattern.Sleeve, "cap_height"), lengthOf(t, s, pattern.Sleeve, "cap_height"), 1e-6, kind)
		a, _ := was.Point(pattern.Sleeve, "front_underarm")
		b, _ := s.Point(pattern.Sleeve, "front_underarm")
		require.InDelta(t, 0.25, (b.X-a.X)/25.4, 1e-9, kind)
		ease := lengthOf(t, s, pattern.Sleeve, "cap_ease")
		require.Greater(t, ease, 1.1, kind)
		require.Less(t, ease, 1.75, kind)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", kind, f.Says.In(measure.In))
			require.NotEqual(t, "cap_notch", f.Code)
		}
	}
}

// TestFullArmByItself: where her arm alone would press the cap too low it is
// let in, no more than cloth eases in; what does not go in stays told.
func TestFullArmByItself(t *testing.T) {
	let, told := 0, 0
	for arm := 11.0; arm <= 16; arm += 0.25 {
		s := workroom.Draft(sleevedJob(t, "short").WithBody(measure.UpperArmGirth, figure.In(arm)))
		if len(s.Refused) > 0 {
			reasoned(t, s)
			continue
		}
		sound(t, s, "full arm")
		ease := lengthOf(t, s, pattern.Sleeve, "cap_ease")
		require.LessOrEqual(t, ease, 1.75, "%v", arm)
		if s.Known.Length("full_arm") > 0 {
			let++
			set, _ := s.Known.Setting("full_arm")
			require.True(t, set.Default.GaveWay)
			if _, low := codes(s)["cap_low"]; low {
				told++
			}
			_, full := codes(s)["arm_full"]
			require.Equal(t, ease > 1.25, full, "%v", arm)
			plain := workroom.Draft(sleevedJob(t, "short").WithBody(measure.UpperArmGirth, figure.In(arm)).WithStyle("full_arm", pattern.LengthValue(0)))
			f, low := codes(plain)["cap_low"]
			require.True(t, low, "%v", arm)
			require.Equal(t, "full_arm", f.Input)
		}
	}
	require.Positive(t, let)
	require.Less(t, told, let, "some are cured")
}

// TestFullArmOnWomen lets sleeves in on women of the survey, by both methods.
func TestFullArmOnWomen(t *testing.T) {
	women := ansur.Load(t)
	drafted := 0
	for i := 0; i < len(women); i += everyWoman {
		n := i / everyWoman
		job := jobOf(women[i], []string{pattern.Measured, pattern.Direct}[n%2]).
			WithStyle("sleeve", pattern.PickValue([]string{"short", "long", "cap", "three_quarter"}[n/2%4])).
			WithStyle("full_arm", pattern.LengthValue(figure.In(float64(n%9)/4)))
		s := workroom.Draft(job)
		if len(s.Refused) > 0 {
			reasoned(t, s)
			continue
		}
		drafted++
		outlinesSound(t, s, "full arm")
		for _, f := range s.Findings {
			if f.Code != "cap_ease" { // so much let in is too much to ease
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d: %s %s", women[i].Row, f.Code, f.Says.In(measure.In))
			}
		}
	}
	require.Greater(t, drafted, 50)
}
