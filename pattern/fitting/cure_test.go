package fitting_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

// advised says whether a check advises or fails under a code.
func advised(s *pattern.Sheet, code string) bool {
	for _, f := range s.Findings {
		if f.Code == code && (f.Verdict == pattern.Advise || f.Verdict == pattern.Fail) {
			return true
		}
	}
	return false
}

// From the sign over its input to a draft that is content: what the check said
// of the first draft it says of the second no more, and nothing else fails.
func TestASignCuresWhatTheCheckSaw(t *testing.T) {
	p36 := figure.Styled(t, nil)
	sleeved := figure.Styled(t, map[pattern.ChoiceID]string{"sleeve": "short"}, "ease_bust", "shoulder_inset", "armhole_depth")
	for name, c := range map[string]struct {
		job    pattern.Job
		code   string
		sign   string
		pinned float64
		way    int
		says   []string
	}{
		"gaping neck": {
			figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "v"}, "front_neck_depth"), "neck_gape", "gape_front_neck", 0.5, 0,
			[]string{"Pinch at the front neck 0 -> 1/4"},
		},
		"round back": {
			p36.WithBody(measure.ShoulderToWaistBack, figure.In(16.25)), "back_round", "round_back", 0.5, 0,
			[]string{"Back shoulder eased -> dart", "Back shoulder dart 0 -> 1/2"},
		},
		"hollow back": {
			p36.WithBody(measure.WaistToFloor, figure.In(41)).WithBody(measure.WaistToFloorBack, figure.In(40.5)).WithStyle("sway_back", pattern.LengthValue(0)),
			"sway_back", "fold_small_of_back", 0.5, 0,
			[]string{"Fold out of a hollow back 0 -> 1/2"},
		},
		"full arm": {
			sleeved.WithBody(measure.UpperArmGirth, figure.In(13.5)).WithStyle("full_arm", pattern.LengthValue(0)), "cap_low", "sleeve_folds", 0.75, 0,
			[]string{"Let in at the upper arm 0 -> 3/4"},
		},
		"tight sleeve": {
			sleeved.WithBody(measure.UpperArmGirth, figure.In(11)).WithStyle("ease_upper_arm", pattern.LengthValue(figure.In(1))), "sleeve_tight", "sleeve_tight", 0.5, 0,
			[]string{"Ease at the upper arm 1 -> 1 1/2", "Let in at the upper arm 0 -> 1/2"},
		},
		"large cup": {
			p36.WithBody(measure.UpperChestGirth, figure.In(34)).WithBody(measure.UpperArmGirth, figure.In(11)), "", "side_forward", 0.5, 0,
			[]string{"Upper chest girth 34 -> 32"},
		},
	} {
		t.Run(name, func(t *testing.T) {
			was := workroom.Draft(c.job)
			require.True(t, was.Complete)
			if c.code != "" {
				require.True(t, advised(was, c.code), "the check does not see it")
			}
			sign, ok := fitting.Find(c.sign)
			require.True(t, ok)
			p := fitting.Propose(was, sign, figure.In(c.pinned))[c.way]
			require.True(t, p.Possible(), p.WhyNot.In(measure.In))
			var says []string
			for _, ch := range p.Changes {
				says = append(says, ch.Says().In(measure.In))
			}
			require.Equal(t, c.says, says)
			now := workroom.Draft(p.Job)
			require.True(t, now.Complete)
			require.False(t, c.code != "" && advised(now, c.code), "the check sees it still")
			for _, f := range now.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", f.Code, f.Says.In(measure.In))
			}
		})
	}
}

// The seam that was chalked farther back lies there once the front has its
// share.
func TestALargeCupMovesTheSeam(t *testing.T) {
	was := workroom.Draft(figure.Styled(t, nil).WithBody(measure.UpperChestGirth, figure.In(33.5)))
	sign, _ := fitting.Find("side_forward")
	p := fitting.Propose(was, sign, figure.In(0.25))[0]
	require.True(t, p.Possible(), p.WhyNot.In(measure.In))
	a, _ := was.Point(pattern.Front, "underarm")
	b, _ := p.Sheet.Point(pattern.Front, "underarm")
	require.InDelta(t, 0.25, (b.X-a.X)/25.4, 1e-9)
	off := workroom.Draft(was.Job.WithStyle("large_cup", pattern.PickValue("off")))
	require.True(t, fitting.Propose(off, sign, figure.In(0.25))[1].Possible())
	unknown := workroom.Draft(figure.Styled(t, nil))
	require.Contains(t, fitting.Propose(unknown, sign, figure.In(0.25))[0].WhyNot.In(measure.In), "not known yet")
}

// Every sign says in words what is seen and what to pin, and no two of them say
// the same.
func TestSignsInWords(t *testing.T) {
	seen := map[string]string{}
	for _, s := range fitting.Signs() {
		require.Empty(t, seen[s.Seen], "%s says what %s says", s.ID, seen[s.Seen])
		seen[s.Seen] = s.ID
		for _, w := range s.Ways {
			require.NotContains(t, w.Why+w.Title+s.Seen+s.Pin, "{", "%s: a figure in braces is not put into her unit here", s.ID)
		}
	}
}
