package fitting_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"
)

func TestSignsAreWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range fitting.Signs() {
		require.False(t, seen[s.ID], s.ID)
		seen[s.ID] = true
		require.Contains(t, fitting.Places(), s.Place, s.ID)
		require.Positive(t, s.Usual.MM(), s.ID)
		require.NotEmpty(t, s.Ways, s.ID)
		for _, text := range []string{s.Seen, s.Pin} {
			require.True(t, strings.HasSuffix(text, ".") && text == strings.TrimSpace(text), "%s: %q", s.ID, text)
		}
		for _, w := range s.Ways {
			require.NotEmpty(t, w.Title, s.ID)
			require.True(t, strings.HasSuffix(w.Why, "."), "%s: %q", s.ID, w.Why)
			require.NotEmpty(t, w.Moves, s.ID)
			for _, m := range w.Moves {
				_, choice := workroom.FindChoice(pattern.Dress, pattern.ChoiceID(m.Input))
				require.True(t, choice || fitting.IsBody(m.Input), "%s: there is no input %s", s.ID, m.Input)
				require.True(t, m.Times != 0 || m.PerIn != 0 || m.Nought || m.Option != "", "%s: %s does not move", s.ID, m.Input)
			}
		}
	}
	for _, p := range fitting.Places() {
		found := false
		for _, s := range fitting.Signs() {
			found = found || s.Place == p
		}
		require.True(t, found, p)
	}
}

// What each sign changes on figure P36, by what was pinned.
func TestWhatASignChanges(t *testing.T) {
	sheet := workroom.Draft(figure.Body36(t, pattern.Measured))
	for _, c := range []struct {
		sign   string
		pinned float64
		way    int
		says   string
	}{
		{"pull_to_armhole", 0.5, 0, "Shoulder drop 1 1/2 -> 1 3/4"},
		{"strain_at_bone", 0.25, 0, "Shoulder drop 1 1/2 -> 1 3/8"},
		{"fold_under_nape", 0.25, 0, "Back neck depth 1 1/2 -> 1 3/4"},
		{"fold_under_nape", 0.25, 1, "Back neck point to waist 16 -> 15 3/4"},
		{"gape_armhole", 0.25, 0, "Pinch at the armhole 0 -> 1/4"},
		{"crease_armhole", 0.125, 0, "Armhole scooped 0 % -> 8 %"},
		{"dart_above", 0.5, 0, "Side neck to bust point 10 1/4 -> 10 3/4"},
		{"dart_inside", 0.25, 0, "Bust point to bust point 7 1/4 -> 7 3/4"},
		{"bust_drag", 0.5, 0, "Side neck to waist, over the bust 17 3/4 -> 18 1/4"},
		{"bust_tight", 0.25, 0, "Ease at the bust 2 1/2 -> 3"},
		{"waist_loose", 0.25, 0, "Waist loose -> darts"},
		{"waist_loose", 0.25, 2, "Side in at the waist 1 1/4 -> 1 3/8"},
		{"step_short", 2, 1, "Hem narrowed by 3/4 -> 0"},
		{"hem_dips_sides", 0.5, 0, "Hem raised at the sides 0 -> 1/2"},
	} {
		sign, ok := fitting.Find(c.sign)
		require.True(t, ok, c.sign)
		p := fitting.Propose(sheet, sign, figure.In(c.pinned))[c.way]
		require.True(t, p.Possible(), "%s: %s", c.sign, p.WhyNot.In(measure.In))
		require.Len(t, p.Changes, 1, c.sign)
		require.Equal(t, c.says, p.Changes[0].Says().In(measure.In), c.sign)
		require.True(t, p.Sheet.Complete, c.sign)
	}
}

// An input whose default follows another moves with it by itself; only what
// she chose has to be moved as well.
func TestWhatFollowsIsNotWritten(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	sign, _ := fitting.Find("pull_to_armhole")
	was := workroom.Draft(job)
	p := fitting.Propose(was, sign, figure.In(0.5))[0]
	require.Len(t, p.Changes, 1)
	a, _ := was.Point(pattern.Front, "underarm")
	b, _ := p.Sheet.Point(pattern.Front, "underarm")
	require.InDelta(t, 0.25*25.4, b.Y-a.Y, 1e-6, "the armhole goes down with the shoulder")

	chosen := workroom.Draft(job.WithStyle("armhole_depth", pattern.LengthValue(figure.In(7.5))))
	p = fitting.Propose(chosen, sign, figure.In(0.5))[0]
	require.Len(t, p.Changes, 2)
	b, _ = p.Sheet.Point(pattern.Front, "underarm")
	require.InDelta(t, 7.75*25.4, b.Y, 1e-6)
}

func TestWhyAWayIsNotPossible(t *testing.T) {
	job := figure.Body36(t, pattern.Measured)
	for _, c := range []struct {
		job    pattern.Job
		sign   string
		pinned float64
		way    int
		why    string
	}{
		{job, "waist_loose", 0.25, 1, "on this draft it would move nothing"},
		{job, "neck_low", 9, 0, "there is not so much to take off"},
		{job, "bust_drag", 9, 0, "then it could not be drafted"},
		{job.WithStyle("hem_peg", pattern.LengthValue(0)), "step_short", 1, 1, "is 0 already"},
		{figure.Body36(t, pattern.Thumb), "gape_armhole", 0.25, 0, "this method has no choice"},
	} {
		sign, _ := fitting.Find(c.sign)
		p := fitting.Propose(workroom.Draft(c.job), sign, figure.In(c.pinned))[c.way]
		require.False(t, p.Possible(), c.sign)
		require.Contains(t, p.WhyNot.In(measure.In), c.why)
	}
}

// Every way of every sign either moves marks and says which inputs, or says
// why not; what it worsens is said.
func TestEveryWay(t *testing.T) {
	sheet := workroom.Draft(figure.Body36(t, pattern.Measured))
	possible := 0
	for _, sign := range fitting.Signs() {
		for _, p := range fitting.Propose(sheet, sign, sign.Usual) {
			require.NotEmpty(t, p.Seen)
			if !p.Possible() {
				continue
			}
			possible++
			require.NotEmpty(t, p.Changes, sign.ID)
			require.True(t, p.Sheet.Complete, sign.ID)
			require.NotEqual(t, sheet.Marks, p.Sheet.Marks, sign.ID)
		}
	}
	require.Greater(t, possible, len(fitting.Signs()), "few signs have no cure here")
}

func TestOutsideIsWarned(t *testing.T) {
	sign, _ := fitting.Find("neck_low")
	p := fitting.Propose(workroom.Draft(figure.Body36(t, pattern.Measured)), sign, figure.In(2.25))[0]
	require.True(t, p.Possible())
	require.Equal(t, "Front neck depth 2 1/4 lies outside the usual 2 1/2 to 8.", p.Warns[0].In(measure.In))
}

// A sign is read whole in the list at 80 columns, the marker before it.
func TestASignFitsItsRow(t *testing.T) {
	for _, s := range fitting.Signs() {
		require.LessOrEqual(t, len(s.Seen), 78, s.Seen)
	}
}
