package stage

import (
	"fmt"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

func measuring(t *testing.T) (user, *Measure) {
	d := bench36(t)
	m := NewMeasure(d)
	m.View(desk.Rect{Columns: 80, Rows: 21})
	m.form.to(m.form.find(string(measure.WaistGirth)))
	return user{t, d, m}, m
}

func waist(d *desk.Desk) string {
	l, _ := d.Job().Body.Get(measure.WaistGirth)
	return d.Unit().Tape(l)
}

func TestANumberRowHasTheFocusOnEntry(t *testing.T) {
	d := desk.New(desk.Settings{})
	m := NewMeasure(d)
	m.View(desk.Rect{Columns: 80, Rows: 21})
	require.True(t, m.Typing())
	require.NotEmpty(t, m.id())
	require.Equal(t, "0/14", m.Fact())
}

func TestTypingAndEnterIsOneNamedChange(t *testing.T) {
	u, m := measuring(t)
	u.do("clear")
	u.types("27 1/2")
	require.Contains(t, u.screen(), "= 69.9 cm", "the live echo")
	require.Equal(t, "28", waist(u.d), "nothing is accepted yet")
	require.Equal(t, "Waist girth 28 -> 27 1/2 in", u.do(keys.Accept).Says)
	require.Equal(t, "27 1/2", waist(u.d))
	require.Equal(t, measure.HipGirth, m.id(), "and on to the next row")
}

func TestAnUnreadableEntryStaysWithItsSentence(t *testing.T) {
	u, _ := measuring(t)
	u.do("clear")
	u.types("abc")
	require.NotContains(t, u.screen(), "no number", "nothing is said while she types")
	ask := u.do("field-down")
	require.True(t, ask.Warn)
	require.NotContains(t, strings.Join(NewStyle(u.d).View(desk.Rect{Columns: 80, Rows: 21}), "\n"), "not read", "nor on another screen")
	require.Nil(t, ask.Job)
	require.Equal(t, "28", waist(u.d))
	u.do("field-up")
	require.Contains(t, u.screen(), "abc")
	require.Contains(t, u.screen(), "no number")
	require.NotEmpty(t, u.do(keys.Undo).Say, "the first undo brings the stored value back")
	require.NotContains(t, u.screen(), "abc")
	require.Empty(t, u.do(keys.Undo).Say)
}

func TestTheOtherUnitIsTakenOfWhatIsTypedAndOfADoubt(t *testing.T) {
	u, _ := measuring(t)
	require.NotEmpty(t, u.do(keys.OtherUnit).Say, "28 in is no doubt")
	u.do("clear")
	u.types("70")
	u.do(keys.OtherUnit)
	require.Equal(t, "27 9/16", waist(u.d))
	u.do("clear")
	u.types("72")
	u.do(keys.Accept, "field-up")
	require.Contains(t, u.screen(), "F4 takes it so")
	u.do(keys.OtherUnit)
	require.Equal(t, "28 3/8", waist(u.d))
}

func TestNudgingGoesByTheTape(t *testing.T) {
	u, _ := measuring(t)
	u.do("nudge-up", "nudge-up", "nudge-down")
	require.Equal(t, "28 1/8", waist(u.d))
}

func TestEmptyTakesOutAndAProposalIsTakenByItsKey(t *testing.T) {
	u, m := measuring(t)
	m.form.to(m.form.find(string(measure.AcrossFront)))
	u.do("clear", keys.Accept)
	require.False(t, u.d.Job().Body.Has(measure.AcrossFront))
	require.Contains(t, u.screen(), "proposed")
	u.do("field-up", "field-down")
	require.False(t, u.d.Job().Body.Has(measure.AcrossFront), "going by takes nothing")
	u.do("field-up", keys.Accept)
	require.False(t, u.d.Job().Body.Has(measure.AcrossFront), "Enter leaves it proposed")
	m.form.to(m.form.find(string(measure.AcrossFront)))
	require.Contains(t, u.do(keepID).Says, "taken from the proposal")
	require.True(t, u.d.Job().Body.Has(measure.AcrossFront))
	u.d.Undo()
	require.False(t, u.d.Job().Body.Has(measure.AcrossFront), "one entry")
	require.NotEmpty(t, u.do(againID).Say)
}

func TestADoubtIsSettledByMeasuringAgain(t *testing.T) {
	u, m := measuring(t)
	u.do("clear")
	u.types("72")
	u.do(keys.Accept, "field-up")
	require.Contains(t, u.screen(), "= 182.9 cm")
	require.Contains(t, u.screen(), "Ctrl+R")
	require.Contains(t, u.do(againID).Says, "measured again")
	_, doubted := m.doubts[measure.WaistGirth]
	require.False(t, doubted)
	require.NotContains(t, u.screen(), "Ctrl+R")
	u.d.Undo()
	require.Contains(t, u.screen(), "Ctrl+R", "undone, it is doubted again")
}

func TestTheEchoIsNeverCut(t *testing.T) {
	u, m := measuring(t)
	job := u.d.Job()
	job.Unit = measure.Cm
	for _, id := range u.d.Needs() {
		job = job.WithBody(id, measure.Cm.Length(100.33))
	}
	u.d.Change(job, "cm")
	for i := range m.form.rows {
		m.form.to(i)
		for _, line := range strings.Split(u.screen(), "\n") {
			if _, echo, ok := strings.Cut(ansi.Strip(line), " = "); ok {
				require.Regexp(t, `^39 1/2 in( |!|$)`, echo)
			}
		}
	}
}

func TestTheTapeLiesAlongTheTable(t *testing.T) {
	u, m := measuring(t)
	require.Contains(t, u.screen(), `|27'+'''V28'+`, "the tape")
	u.do("clear")
	u.types("28 1/2")
	require.Contains(t, u.screen(), `|28'V'''|29`, "the tick follows what is typed")
	m.form.to(0)
	require.NotContains(t, u.screen(), `''+''`)
}

func TestTheUnitAndTheNameAreRows(t *testing.T) {
	u, m := measuring(t)
	m.form.to(0)
	u.do("clear")
	u.types("Anna Example")
	u.do("field-down")
	require.Equal(t, "Anna Example", u.d.Job().Client.Name)
	u.do("text-right")
	require.Equal(t, measure.Cm, u.d.Unit())
	m.form.to(m.form.find(string(measure.WaistGirth)))
	require.Contains(t, u.screen(), "71.1")
	before := u.d.Version()
	u.do(keys.Accept)
	require.Equal(t, before, u.d.Version(), "what is only shown rounded is not changed")
}

func TestATableCanBePasted(t *testing.T) {
	u, m := measuring(t)
	m.Type(desk.Key{})
	ask := u.take(m.Type(desk.Key{Paste: true, Runes: []rune("bust_girth\t37\r\nwaist girth\t29\thers\nnonsense\t3\nhip_girth\tx\n")}))
	require.Equal(t, "Pasted: 2 values.", ask.Says)
	require.Contains(t, ask.Say, `Not taken: "nonsense" (no such measurement), hip girth "x" (no number).`)
	u.d.Undo()
	require.Equal(t, "28", waist(u.d), "all of it is one change")
	u.d.Redo()
	require.Equal(t, "29", waist(u.d))
	require.True(t, u.take(m.Type(desk.Key{Paste: true, Runes: []rune("a\nb\n")})).Warn)
}

func TestEscLeavesTheFieldAndTheDigitReturns(t *testing.T) {
	u, m := measuring(t)
	u.do("clear")
	u.types("29")
	u.do(keys.Back)
	require.False(t, m.Typing())
	require.Equal(t, "29", waist(u.d), "what can be read is accepted")
	u.do("measure")
	require.True(t, m.Typing())
}

// No title is cut so that what is left of it is that of another row, and none
// of a measure is cut at all.
func TestTitlesOfRowsAreWhole(t *testing.T) {
	for _, x := range measure.All() {
		name := capital(plainName(x))
		require.Equal(t, name, shortTitle(name, titleCells-1))
	}
	for _, g := range workroom.Garments() {
		seen := map[string]bool{}
		for _, c := range workroom.Choices(g.ID) {
			short := shortTitle(c.Title, choiceCells-1)
			require.False(t, seen[short], c.Title)
			seen[short] = true
		}
	}
}

// A list out of a mail can be pasted too, with bullets, colons, other units and
// lines that are nothing; what cannot be taken is named and nothing is lost.
func TestAListCanBePasted(t *testing.T) {
	for line, want := range map[string][2]string{
		"Bust: 36 1/2":           {"Bust", "36 1/2"},
		"- waist = 92,5 cm":      {"waist", "92,5 cm"},
		"* Hip girth 38½":        {"Hip girth", "38½"},
		"shoulder drop\t1 1/2":   {"shoulder drop", "1 1/2"},
		"\u2022 neck base; ½ in": {"neck base", "½ in"},
		"36":                     {"", "36"},
		"½":                      {"", "½"},
		"nothing at all":         {"", "nothing at all"},
		"\t12":                   {"", "12"},
		"------ 4":               {"", "4"},
	} {
		head, value, named := pasted(line)
		require.Equal(t, want, [2]string{head, value}, line)
		require.Equal(t, head != "" || strings.Contains(line, "\t"), named, line)
	}
}

// A whole table of measures, as a file, a letter or a sheet of columns has it,
// goes in at once and is one change.
func TestAWholeTableCanBePasted(t *testing.T) {
	all := measure.All()
	length := func(i int) measure.Length { return measure.Length(200 + 7*i) }
	value := func(i int) string { return measure.Cm.Exact(length(i)) + " cm" }
	forms := map[string]func(i int, x measure.Measurement) string{
		"columns": func(i int, x measure.Measurement) string { return x.Term + "\t" + value(i) },
		"numbered": func(i int, x measure.Measurement) string {
			return fmt.Sprintf("%d\t%s\t%s\tby tape", i+1, x.Term, value(i))
		},
		"file": func(i int, x measure.Measurement) string {
			return fmt.Sprintf("%s = %q   # %s", x.ID, value(i), x.Plain)
		},
		"letter": func(i int, x measure.Measurement) string {
			return "- " + x.Plain + ": " + strings.Replace(value(i), ".", ",", 1)
		},
		"commas": func(i int, x measure.Measurement) string { return fmt.Sprintf("%q,%q,%q", x.Term, value(i), "hers") },
		"halves": func(i int, x measure.Measurement) string { return capital(x.Term) + ";" + value(i) + ";hers" },
	}
	for form, line := range forms {
		for _, end := range []string{"\n", "\r\n"} {
			u, m := measuring(t)
			before := u.d.Job()
			table := "Measure\tValue" + end + "[body]" + end + "# height = \"\"" + end + "Notes\t" + end
			for i, x := range all {
				table += line(i, x) + end
			}
			ask := u.take(m.Type(desk.Key{Paste: true, Runes: []rune(table)}))
			require.Equal(t, fmt.Sprintf("Pasted: %d values.", len(all)), ask.Says, "%s: %s", form, ask.Say)
			require.False(t, ask.Warn, "%s: %s", form, ask.Say)
			for i, x := range all {
				l, ok := u.d.Job().Body.Get(x.ID)
				require.True(t, ok)
				require.InDelta(t, length(i).MM(), l.MM(), 1e-6, "%s: %s", form, x.ID)
			}
			u.d.Undo()
			require.Equal(t, before, u.d.Job(), "one change")
		}
	}
}

// A long value and what is said of it are two words.
func TestALongValueIsKeptApart(t *testing.T) {
	u, _ := measuring(t)
	u.do("clear")
	u.types("Anna Example")
	u.do("field-down")
	require.Contains(t, u.screen(), "Anna Examp ! not read")
}
