package overlay

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// noon is when the tests take place.
var noon = time.Date(2026, 3, 4, 14, 2, 0, 0, time.Local)

func newDesk(g canvas.Glyphs) *desk.Desk {
	t, _ := theme.For("plain") // a row of the table
	d := desk.New(desk.Settings{Glyphs: g, Theme: t.With(theme.NoCodes), Aspect: 2})
	d.Now = func() time.Time { return noon }
	return d
}

// withSample has the sample client on the desk, in a file.
func withSample(t testing.TB, g canvas.Glyphs) *desk.Desk {
	d := newDesk(g)
	path := filepath.Join(t.TempDir(), "sample.chalkfold.toml")
	s := session.New(path, Sample(d))
	require.NoError(t, s.Save(s.Job))
	d.Take(desk.Opened{Store: s, Path: path, Saved: s.Job})
	return d
}

// at gives the tests a home of their own.
func at(t testing.TB) string {
	home := t.TempDir()
	if x, ok := t.(*testing.T); ok {
		x.Setenv("HOME", home)
		x.Setenv("XDG_STATE_HOME", filepath.Join(home, "state"))
		x.Setenv("XDG_CONFIG_HOME", filepath.Join(home, "config"))
	}
	return home
}

func offers(d *desk.Desk) []desk.Offer {
	var out []desk.Offer
	for _, a := range d.Keys.Live(keys.Draft) {
		o := desk.Offer{ID: a.ID}
		if a.ID == keys.Redo {
			o.WhyNot = "nothing was undone"
		}
		out = append(out, o)
	}
	return out
}

func rescue(d *desk.Desk) session.Rescue {
	return session.Rescue{
		Path: "/home/her/anna.chalkfold.toml", Client: "Rescue Client", Saved: noon, Job: Sample(d),
		Differs: []string{"bust 36 -> 36 1/2 in", "waist 28 in taken out"},
	}
}

func toStep(int) desk.Ask { return desk.Ask{Go: desk.Draft} }

// every is one of each overlay.
func every(d *desk.Desk) map[string]desk.Overlay {
	return map[string]desk.Overlay{
		"start": Start(d), "help": Help(d, offers(d)), "commands": Commands(d, offers(d)), "open": Open(d), "saveas": SaveAs(d),
		"leave": Leave(d), "clients": Clients(d, func(desk.SeatID) (int, int) { return 3, 37 }), "projector": NewProjector(d, 9), "rescue": RescueOffer(d, []session.Rescue{rescue(d), rescue(d)}),
		"message": Message(d, "What happened", "One thing.\nAnother thing, which takes more words to say than fit on a line."),
		"changed": Changed(d), "steps": Steps(d, 3, toStep), "compare": Compare(d), "ease": Ease(d), "settings": Settings(d), "words": Words(d), "readout": Readout(d), "lessons": Lessons(d), "faults": Faults(d, func(string) desk.Ask { return desk.Ask{} }), "class": classRead(d), "unread": Class(d),
	}
}

func press(o desk.Overlay, names ...string) desk.Ask {
	var ask desk.Ask
	for _, n := range names {
		if id, ok := keys.ByKey(keys.Overlay, n); ok && n != "f1" {
			ask = o.Do(id)
		} else {
			ask = o.Type(desk.Key{Name: n})
		}
	}
	return ask
}

func typed(o desk.Overlay, s string) desk.Ask {
	var ask desk.Ask
	for _, r := range s {
		ask = o.Type(desk.Key{Name: string(r), Runes: []rune{r}})
	}
	return ask
}

func shown(o desk.Overlay, cols, rows int) string {
	var b strings.Builder
	for _, l := range o.View(desk.Rect{Columns: cols, Rows: rows}) {
		b.WriteString(strings.TrimRight(ansi.Strip(l), " ") + "\n")
	}
	return b.String()
}

// Every view has exactly its rows, none wider than its columns, whatever was
// pressed before.
func TestViewsFitAnySize(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	th, _ := theme.For("dark")
	d.Settings.Theme = th.With(theme.TrueColour)
	presses := []string{"up", "down", "pgup", "pgdown", "left", "right", "backspace", "tab", "shift+tab", "ctrl+u", "home"}
	letters := []string{"a", "Step", "~/", "/", "ñ", "漢字", " ", ".", "zzz", "\x1b"}
	for name := range every(d) {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(rt *rapid.T) {
				d.Settings.Glyphs = canvas.Glyphs(rapid.IntRange(0, 2).Draw(rt, "glyphs"))
				o := every(d)[name]
				for range rapid.IntRange(0, 4).Draw(rt, "views") {
					if rapid.Bool().Draw(rt, "letters") {
						typed(o, rapid.SampledFrom(letters).Draw(rt, "text"))
					} else {
						press(o, rapid.SampledFrom(presses).Draw(rt, "key"))
					}
					r := desk.Rect{Columns: rapid.IntRange(1, 220).Draw(rt, "columns"), Rows: rapid.IntRange(1, 70).Draw(rt, "rows")}
					lines := o.View(r)
					if len(lines) != r.Rows {
						rt.Fatalf("%d lines for %d rows", len(lines), r.Rows)
					}
					for _, l := range lines {
						if w := ansi.StringWidth(l); w > r.Columns {
							rt.Fatalf("%d wide for %d: %q", w, r.Columns, l)
						}
					}
				}
			})
		})
	}
}

// In the ASCII set nothing of ours is beyond ASCII.
func TestAsciiOnly(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	for name, o := range every(d) {
		for _, r := range shown(o, 80, 24) + shown(o, 60, 16) {
			require.Less(t, r, rune(0x80), "%s: %q", name, r)
		}
	}
}

// The row in hand is marked by a sign, not only by a look.
func TestFocusWithoutColour(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	for name, o := range every(d) {
		if name == "projector" || name == "message" || name == "compare" || name == "ease" || name == "readout" { // nothing to choose there
			continue
		}
		require.Regexp(t, regexp.MustCompile(`(?m)^> +\S`), shown(o, 80, 24), name)
	}
	th, _ := theme.For("mono")
	d.Settings.Theme = th.With(theme.NoColour)
	require.Contains(t, strings.Join(Start(d).View(desk.Rect{Columns: 80, Rows: 20}), "\n"), ";7", "reversed too")
}

func TestVoice(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	for name, o := range every(d) {
		require.NotRegexp(t, `(?i)\b(invalid|error|please|successfully|sorry)\b|!`, shown(o, 120, 60), name)
	}
}

// Nothing on a screen escapes the catalogue.
func TestEverySentenceIsInTheCatalogue(t *testing.T) {
	at(t)
	d := newDesk(canvas.Braille)
	d.Words = text.Pseudo()
	for name, o := range map[string]desk.Overlay{"start": Start(d), "leave": Leave(d), "settings": Settings(d), "words": Words(d), "compare": Compare(d)} {
		leaks := text.Leaks(shown(o, 200, 70), append(theme.Names(), "braille", "no", "client")...)
		require.Empty(t, leaks, name)
	}
}

func TestGoldens(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	for _, name := range []string{"start", "help", "commands", "leave", "rescue", "changed", "steps", "compare", "ease", "settings", "words", "class"} {
		golden.Check(t, name+".txt", shown(every(d)[name], 80, 21))
	}
	golden.Check(t, "help-60.txt", shown(Help(d, offers(d)), 60, 13))
	d.Settings.Glyphs = canvas.ASCII
	golden.Check(t, "settings-ascii.txt", shown(Settings(d), 80, 21))
}

func TestStart(t *testing.T) {
	at(t)
	d := newDesk(canvas.Braille)
	o := Start(d)
	require.False(t, o.Typing())
	require.True(t, typed(o, "q").Leave)
	require.Equal(t, desk.Draft, typed(o, "3").Go)
	esc := press(o, "esc")
	require.False(t, esc.Close, "Esc stays")
	require.Contains(t, esc.Say, "q leaves")

	learn := press(o, "enter")
	require.True(t, learn.Close)
	require.Equal(t, keys.Lessons, learn.Do)
	fresh := press(o, "down", "enter")
	require.Zero(t, fresh.Take.Saved.Body.Len())
	require.NotNil(t, fresh.Take.Store)
	require.NotNil(t, press(o, "down", "enter").Open)
	require.Contains(t, press(o, "down", "enter").Say, "Not now")
	sample := press(o, "down", "enter")
	require.Equal(t, session.InUnit(session.Demo().Job, measure.In), sample.Take.Saved)

	session.Remember(filepath.Join(t.TempDir(), "last"+session.Suffix), Sample(d))
	require.NotNil(t, press(Start(d), "down", "down", "down", "enter").Run)
}

// The sample client can be drafted whole, and nothing in her is doubted.
func TestSampleClient(t *testing.T) {
	d := newDesk(canvas.Braille)
	job := Sample(d)
	for _, m := range []string{pattern.Measured, pattern.Thumb} {
		s := d.SheetOf(job.WithStyle(pattern.Method, pattern.PickValue(m)))
		require.Empty(t, s.Missing, m)
		require.Empty(t, s.Refused, m)
		require.True(t, s.Complete, m)
		require.Zero(t, s.Count(pattern.Fail), m)
	}
	for _, x := range measure.Doubts(job.Body) {
		require.False(t, x.Strong, x.Says.In(measure.In))
	}
}

func TestHelpFindsAndDoes(t *testing.T) {
	d := withSample(t, canvas.Braille)
	o := Help(d, offers(d))
	require.True(t, o.Typing())
	typed(o, "newest")
	require.Contains(t, shown(o, 80, 24), "> Zoom to the newest mark")
	ask := press(o, "enter")
	require.True(t, ask.Close)
	require.Equal(t, keys.ID("zoom-newest"), ask.Do)

	typed(o, "zzz")
	require.Contains(t, shown(o, 80, 24), `Nothing found for "newestzzz"`)
	require.Equal(t, desk.Ask{}, press(o, "enter"))
	press(o, "ctrl+u")
	require.Contains(t, shown(o, 80, 24), "> Next step")
	require.True(t, press(o, "esc").Close)
}

func TestCommandsSayWhyNot(t *testing.T) {
	d := withSample(t, canvas.Braille)
	o := Commands(d, offers(d))
	typed(o, "redo")
	require.Contains(t, shown(o, 80, 24), "Not now: nothing was undone")
	ask := press(o, "enter")
	require.False(t, ask.Close)
	require.True(t, ask.Warn)
	press(o, "ctrl+u")
	typed(o, "quit") // a synonym
	require.Equal(t, keys.Leave, press(o, "enter").Do)
	press(o, "ctrl+u")
	typed(o, "tick")
	require.Contains(t, shown(o, 80, 24), "go to Cut first")
}

// A session that is drafted as a direct block is compared with the measured
// draft of the same body.
func TestCompareBlock(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	d.Change(Sample(d).WithStyle(pattern.Method, pattern.PickValue(pattern.Direct)), "")
	view := shown(Compare(d), 80, 30)
	require.Contains(t, view, "direct")
	require.Contains(t, view, "Armhole depth")
	require.NotContains(t, view, "thumb")
}

func TestCompareWaits(t *testing.T) {
	view := shown(Compare(newDesk(canvas.Braille)), 80, 30)
	require.Contains(t, view, "The drawing waits for bust girth, waist girth, hip girth.")
	require.Contains(t, view, "waits")
}

func TestLeave(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	o := Leave(d)
	require.Contains(t, shown(o, 80, 24), "> Save and leave", "saving is the first answer")
	ask := press(o, "enter")
	require.True(t, ask.Quit)
	require.NotNil(t, ask.Save)
	ask = press(o, "down", "enter")
	require.True(t, ask.Quit)
	require.Nil(t, ask.Save)
	ask = press(o, "down", "enter")
	require.Equal(t, desk.Ask{Close: true}, ask)

	noFile := newDesk(canvas.Braille)
	require.NotNil(t, press(Leave(noFile), "enter").Save, "the root asks for a name first")
}

// Where nothing is typed q leaves and ? helps; the question about leaving has
// its own answers.
func TestLettersWhereNothingIsTyped(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	for name, o := range every(d) {
		if !o.Typing() && name != "projector" { // there letters are keys of the table
			require.Equal(t, name != "leave", typed(o, "q").Leave, name)
			require.Equal(t, keys.Help, typed(o, "?").Do, name)
		}
	}
}

func TestRescueOffer(t *testing.T) {
	at(t)
	d := newDesk(canvas.Braille)
	two := []session.Rescue{rescue(d), rescue(d)}
	two[1].Client = "Other Client"
	view := shown(RescueOffer(d, two), 100, 27)
	require.Contains(t, view, "Take up the unsaved work of Rescue Client, 14:02?")
	require.Contains(t, view, "bust 36 -> 36 1/2 in")
	require.Contains(t, view, "1 more after this one")

	later := press(RescueOffer(d, two), "down", "enter")
	require.Contains(t, shown(later.Open, 100, 27), "Other Client")
	require.True(t, press(RescueOffer(d, two[1:]), "down", "enter").Close)

	left := filepath.Join(t.TempDir(), "copy"+session.Suffix)
	require.NoError(t, os.WriteFile(left, []byte("form = 1\n"), 0o600))
	two[0].File = left
	take := press(RescueOffer(d, two[:1]), "enter")
	o := RescueOffer(d, two[:1])
	ask := o.Hear(take.Run())
	require.True(t, ask.Close)
	require.Equal(t, Sample(d).Body.Len(), ask.Take.Job.Body.Len())
	require.NoFileExists(t, left, "the work is in a new copy")
	copies, err := os.ReadDir(session.RescueDir())
	require.NoError(t, err)
	require.Len(t, copies, 1)
}

func TestSteps(t *testing.T) {
	d := withSample(t, canvas.Braille)
	went := 0
	o := Steps(d, 4, func(n int) desk.Ask { went = n; return desk.Ask{Go: desk.Draft} })
	view := shown(o, 80, 40)
	require.Regexp(t, `(?m)^>  4 .*here$`, view)
	require.Regexp(t, `done`, view)
	require.Regexp(t, `to do`, view)
	ask := press(o, "down", "enter")
	require.True(t, ask.Close)
	require.Equal(t, 5, went)
}

func TestChanged(t *testing.T) {
	at(t)
	d := withSample(t, canvas.Braille)
	beside := press(Changed(d), "enter")
	require.Equal(t, filepath.Join(filepath.Dir(d.Path()), "sample-2.chalkfold.toml"), beside.Save.Path)
	require.True(t, press(Changed(d), "down", "enter").Save.Over)
	o := Changed(d)
	ask := o.Hear(press(o, "down", "down", "enter").Run())
	require.Equal(t, Sample(d).Body, ask.Take.Saved.Body)
}

func TestSettings(t *testing.T) {
	d := withSample(t, canvas.Braille)
	o := Settings(d)
	ask := press(o, "right")
	require.NotNil(t, ask.Set)
	require.NotEqual(t, d.Settings.Theme.Name(), ask.Set.Theme.Name())
	ask = press(o, "down", "left")
	require.Equal(t, canvas.ASCII, ask.Set.Glyphs)
	ask = press(o, "down", "enter")
	require.Equal(t, measure.Cm, ask.Job.Unit)
	require.Equal(t, d.Job().Body, ask.Job.Body, "the body itself stays")
}

// A click takes the row that stands there.
func TestClick(t *testing.T) {
	at(t)
	d := newDesk(canvas.Braille)
	o := Start(d)
	for i, l := range o.View(desk.Rect{Columns: 80, Rows: 20}) {
		if strings.Contains(l, "New client") {
			ask := o.(interface{ Click(x, y int) desk.Ask }).Click(4, i)
			require.Equal(t, desk.Measure, ask.Take.Go)
			return
		}
	}
	require.Fail(t, "no such line")
}

func BenchmarkCommandsView(b *testing.B) {
	d := newDesk(canvas.Braille)
	o := Commands(d, offers(d))
	for b.Loop() {
		o.View(desk.Rect{Columns: 200, Rows: 56})
	}
}

// A comparison says which of its figures are proposals; where all are taken it
// says nothing.
func TestACompareSaysWhatIsProposed(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	require.NotContains(t, shown(Compare(d), 100, 40), "proposals")
	d.Change(d.Job().WithoutBody(measure.NeckBaseGirth).WithoutBody(measure.WaistToHip), "two less")
	require.Contains(t, strings.Join(strings.Fields(shown(Compare(d), 100, 40)), " "), "It rests on proposals, not her tape, for neck base girth, waist to hips.")
}
