package overlay

import (
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// fitted is the sample client in inches, after a fitting.
func fitted(t testing.TB) *desk.Desk {
	d := newDesk(canvas.Braille)
	job := session.InUnit(Sample(d), measure.In)
	d.Take(desk.Opened{Store: session.New("", job), Saved: job})
	return d
}

// changes makes the change that was asked for.
func changes(t testing.TB, d *desk.Desk, ask desk.Ask) {
	t.Helper()
	require.NotNil(t, ask.Job, ask.Say)
	require.NotEmpty(t, ask.Says)
	require.True(t, d.Change(*ask.Job, ask.Says))
}

func sign(t testing.TB, d *desk.Desk, id string) desk.Overlay {
	s, ok := fitting.Find(id)
	require.True(t, ok, id)
	return signOverlay(d, s)
}

func TestSignIsKept(t *testing.T) {
	d := fitted(t)
	o := Fitting(d)
	ask := press(o, "enter")
	require.NotNil(t, ask.Open)
	golden.Check(t, "fitting.txt", shown(o, 80, 21))

	o = sign(t, d, "gape_armhole")
	golden.Check(t, "fitting-sign.txt", shown(sign(t, d, "waist_loose"), 80, 21))
	press(o, "ctrl+u")
	require.Contains(t, press(o, "enter").Say, "", "nothing is typed")
	typed(o, "3/8")
	ask = press(o, "enter")
	require.Equal(t, "Pinch at the armhole 0 -> 3/8, after the fitting", ask.Says)
	require.True(t, ask.Close)
	changes(t, d, ask)
	f := d.Job().Fittings
	require.Len(t, f, 1)
	require.Equal(t, pattern.Date{Year: 2026, Month: 3, Day: 4}, f[0].Date)

	// One entry of the history takes the change and its line in the log back.
	_, ok := d.Undo()
	require.True(t, ok)
	require.Empty(t, d.Job().Fittings)
	v, chosen := d.Job().Style.Get("armhole_pinch")
	require.False(t, chosen, "%v", v)
}

func TestWhyACureIsNotPossible(t *testing.T) {
	d := fitted(t)
	o := sign(t, d, "neck_low")
	press(o, "ctrl+u")
	typed(o, "12")
	ask := press(o, "enter")
	require.Nil(t, ask.Job)
	require.Contains(t, ask.Say, "Not now")
	require.Contains(t, shown(o, 80, 21), "there is not so")
}

func TestFloor(t *testing.T) {
	d := fitted(t)
	o := Floor(d)
	require.Contains(t, shown(o, 80, 21), "Three heights, like 16  15 1/2  15 3/4.")
	typed(o, "16 15 1/2 15 3/4")
	require.Contains(t, shown(o, 80, 21), "Hem raised at the sides 0 -> 1/2")
	changes(t, d, press(o, "enter"))
	require.Equal(t, "Hem from the floor: front 16 in, sides 15 1/2 in, back 15 3/4 in.", d.Job().Fittings[0].Seen)

	for typed, want := range map[string]bool{"16 15 15": true, "16, 15 1/2, 15": true, "40.5 39 40 41": true, "16 15": false, "16 15 15 15 15": false, "a b c": false, "": false} {
		_, ok := readings(typed, measure.In)
		require.Equal(t, want, ok, typed)
	}
}

func TestPinsAreExplained(t *testing.T) {
	d := fitted(t)
	o := Pins(d)
	require.Contains(t, press(o, "enter").Say, "enter a pin first")
	pin := func(find, amount string, keys ...string) {
		press(o, "ctrl+u")
		typed(o, find)
		a := press(o, "enter").Open
		require.NotNil(t, a, find)
		typed(a, amount)
		require.True(t, press(a, append(keys, "enter")...).Close)
		press(o, "ctrl+u")
	}
	pin("across back, between", "", "down", "down") // taken out again: nothing
	pin("side seams at the hip", "1/4", "down")
	pin("hem at the sides", "1/2")
	require.Contains(t, shown(o, 80, 40), "let out 1/4")
	ask := press(o, "enter")
	require.NotNil(t, ask.Run)
	result := o.Hear(ask.Run())
	require.NotNil(t, result.Open)
	golden.Check(t, "fitting-pins.txt", shown(result.Open, 80, 21))
	changes(t, d, press(result.Open, "enter"))
	require.Contains(t, d.Job().Fittings[0].Seen, "Pinned: side seams at the hip let out 1/4 in; hem at the sides higher 1/2 in.")
}

func TestAlterations(t *testing.T) {
	d := fitted(t)
	require.Contains(t, shown(Alterations(d), 80, 21), string(text.FitLogEmpty))
	changes(t, d, press(sign(t, d, "pull_to_armhole"), "enter"))
	changes(t, d, press(sign(t, d, "gape_armhole"), "enter"))
	require.Nil(t, newSetRow(d, "").do().Open)
	ask := newSetRow(d, "").do()
	require.Equal(t, desk.Measure, ask.Go)
	changes(t, d, ask)
	require.NotEmpty(t, newSetRow(d, "").whyNot)
	was, _ := d.Job().Body.Get(measure.ShoulderDrop)
	d.Change(d.Job().WithBody(measure.ShoulderDrop, was+measure.Inch/4).WithBody(measure.WaistGirth, 29*measure.Inch), "measured anew")

	o := Alterations(d)
	golden.Check(t, "fitting-log.txt", shown(o, 80, 21))
	golden.Check(t, "fitting-months.txt", shown(Months(d), 80, 30))
	one := press(o, "enter").Open
	require.Contains(t, shown(one, 80, 21), "Leave it as it is")
	changes(t, d, press(one, "enter"))
	require.Contains(t, shown(o, 80, 21), "taken back", "the list under it is of now")

	two := press(o, "down", "enter").Open
	golden.Check(t, "fitting-one.txt", shown(two, 80, 21))
	changes(t, d, press(two, "enter"))
	_, chosen := d.Job().Style.Get("armhole_pinch")
	require.False(t, chosen)
	changes(t, d, press(press(o, "enter").Open, "down", "enter"))
	_, chosen = d.Job().Style.Get("armhole_pinch")
	require.True(t, chosen)
}

func TestMonthsWithoutAny(t *testing.T) {
	require.Contains(t, shown(Months(fitted(t)), 80, 21), "There is one set of measures.")
}

func TestFittingFitsAnySize(t *testing.T) {
	d := fitted(t)
	for name, o := range map[string]desk.Overlay{
		"list": Fitting(d), "sign": sign(t, d, "waist_loose"), "floor": Floor(d), "pins": Pins(d), "log": Alterations(d), "months": Months(d),
	} {
		for _, r := range []desk.Rect{{Columns: 80, Rows: 21}, {Columns: 60, Rows: 13}, {Columns: 160, Rows: 42}, {Columns: 20, Rows: 4}, {Columns: 1, Rows: 1}} {
			lines := o.View(r)
			require.Len(t, lines, r.Rows, "%s %v", name, r)
			for _, l := range lines {
				require.LessOrEqual(t, ansi.StringWidth(l), r.Columns, "%s %v", name, r)
			}
		}
	}
}
