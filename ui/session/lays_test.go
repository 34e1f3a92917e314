package session

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// laid is a session with a lay in it.
const laid = `form = 1
unit = "in"

[lay.main] # on the grey wool
width = "58 in"
fold = "lengthwise"
evaluations = 3000000
pins = [["front", 1, "0", "1 1/2", 0, false]]
placed = [["front", 1, "0", "1 1/2", 0, false],
  ["back", 1, "12 1/8", 3, 180, true], # turned
  ["pocket", 2, "10 cm", "50", 0, false, "opened"]]
wish = "cut it on Monday"
`

func TestReadsAKeptLay(t *testing.T) {
	s := parse(t, laid)
	require.Empty(t, s.Warnings)
	front := pattern.LaidPiece{Piece: "front", Copy: 1, Along: in("1 1/2")}
	require.Equal(t, []pattern.KeptLay{{
		Cloth: "main", Width: in("58"), Fold: "lengthwise", Evaluations: 3000000,
		Pins: []pattern.LaidPiece{front},
		Placed: []pattern.LaidPiece{
			front,
			{Piece: "back", Copy: 1, Across: in("12 1/8"), Along: in("3"), Turn: 180, Mirror: true},
			{Piece: "pocket", Copy: 2, Across: 100, Along: in("50"), How: pattern.LaidOpened},
		},
	}}, s.Job.Lays)
	out, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, laid, string(out))
}

func TestAKeptLayIsWrittenInPlace(t *testing.T) {
	s := parse(t, laid)
	l := s.Job.Lays[0]
	l.Evaluations = 500
	out, err := s.Bytes(s.Job.WithLay(l))
	require.NoError(t, err)
	require.Equal(t, strings.Replace(laid, "3000000", "500", 1), string(out))

	l.Placed = l.Placed[:1]
	out, err = s.Bytes(s.Job.WithLay(l))
	require.NoError(t, err)
	require.Contains(t, string(out), "placed = [[\"front\", 1, \"0\", \"1 1/2\", 0, false]]\nwish")
	require.Contains(t, string(out), "# on the grey wool")

	l.Cloth = "lining"
	out, err = s.Bytes(s.Job.WithLay(l))
	require.NoError(t, err)
	require.True(t, strings.HasPrefix(string(out), laid), "another cloth touches nothing")
	require.Contains(t, string(out), "\n[lay.lining]\nwidth = \"58\"\nfold = \"lengthwise\"\nevaluations = 500\n")

	job := s.Job
	job.Lays = nil
	out, err = s.Bytes(job)
	require.NoError(t, err)
	require.NotContains(t, string(out), "lay")

	job = InUnit(s.Job, measure.Cm)
	out, err = s.Bytes(job)
	require.NoError(t, err)
	require.Equal(t, job, parse(t, string(out)).Job)
	require.Contains(t, string(out), "  [\"back\", 1, \"30.7975\", \"7.62\", 180, true],\n")
}

// What is kept comes back to the last step of 0.0001 mm, in every unit.
func TestAnyLayComesBack(t *testing.T) {
	place := func(t *rapid.T) measure.Length {
		return measure.Length(float64(rapid.Int64Range(0, 500_000_000).Draw(t, "steps")) / 10000)
	}
	rows := func(t *rapid.T) []pattern.LaidPiece {
		var out []pattern.LaidPiece
		for range rapid.IntRange(0, 4).Draw(t, "rows") {
			out = append(out, pattern.LaidPiece{
				Piece: pattern.PieceID(rapid.StringMatching(`[a-z_"\\]{1,8}`).Draw(t, "piece")),
				Copy:  rapid.IntRange(1, 40).Draw(t, "copy"), Across: place(t), Along: place(t), Turn: rapid.IntRange(0, 359).Draw(t, "turn"),
				Mirror: rapid.Bool().Draw(t, "mirror"), How: rapid.SampledFrom([]pattern.LaidHow{"", "", pattern.LaidOpened, pattern.LaidWasted, pattern.LaidHalf, pattern.LaidBeside}).Draw(t, "how"),
			})
		}
		return out
	}
	rapid.Check(t, func(t *rapid.T) {
		s, err := Parse("x", []byte(sample))
		require.NoError(t, err)
		for range 2 {
			job := InUnit(s.Job, rapid.SampledFrom([]measure.Unit{measure.In, measure.Cm, measure.Mm}).Draw(t, "unit"))
			job = job.WithLay(pattern.KeptLay{
				Cloth: rapid.SampledFrom([]string{"main", "lining"}).Draw(t, "cloth"), Width: place(t),
				Fold: rapid.SampledFrom(clothFolds).Draw(t, "fold"), Depth: place(t), Evaluations: rapid.Int64Range(0, 1e8).Draw(t, "evaluations"), Pins: rows(t), Placed: rows(t),
			})
			out, err := s.Bytes(job)
			require.NoError(t, err)
			s, err = Parse("x", out)
			require.NoError(t, err)
			require.Equal(t, job.Lays, s.Job.Lays)
			require.Contains(t, string(out), "# the year before")
		}
	})
}

func TestALayThatCannotBeReadIsRefused(t *testing.T) {
	for _, c := range []struct{ line, wrong string }{
		{`fold = "cross"`, "that is none of its options"},
		{`evaluations = 1.5`, "this is a whole number"},
		{`evaluations = -1`, "this is a whole number"},
		{`placed = 3`, "a lay is a list of rows"},
		{`placed = [3]`, "a row of a lay has six parts"},
		{`placed = [["front", 1, "0"]]`, "a row of a lay has six parts"},
		{`placed = [[1, 1, "0", "0", 0, false]]`, "a row begins with the name of a piece"},
		{`placed = [["", 1, "0", "0", 0, false]]`, "a row begins with the name of a piece"},
		{`placed = [["front", 0, "0", "0", 0, false]]`, "copies are counted from 1"},
		{`placed = [["front", 999999999, "0", "0", 0, false]]`, "copies are counted from 1"},
		{`placed = [["front", 1, "-2", "0", 0, false]]`, "a length cannot be less than nothing"},
		{`placed = [["front", 1, "0", "400 m", 0, false]]`, "that is longer than a bolt of cloth"},
		{`placed = [["front", 1, "0", "0", 360, false]]`, "a turn is a whole number"},
		{`placed = [["front", 1, "0", "0", 0, "no"]]`, "mirror is true or false"},
		{`placed = [["front", 1, "0", "0", 0, false, "askew"]]`, "the seventh part of a row"},
		{`pins = [` + strings.Repeat(`["f", 1, 0, 0, 0, true],`, mostLaid+1) + `]`, fmt.Sprintf("more than %d pieces", mostLaid)},
	} {
		got := refusals(t, "form = 1\n[lay.main]\n"+c.line+"\n")
		require.Len(t, got, 1, c.line)
		require.Contains(t, got[0], "four.chalkfold.toml:3:")
		require.Contains(t, got[0], c.wrong)
		require.Less(t, len(got[0]), 400)
	}
}

func TestDifferencesSayThatTheLayIsAnother(t *testing.T) {
	a := parse(t, laid).Job
	l := a.Lays[0]
	l.Evaluations++
	require.Equal(t, []string{"another lay on the main cloth"}, Differences(a, a.WithLay(l)))
	b := a
	b.Lays = nil
	require.Equal(t, []string{"no lay on the main cloth"}, Differences(a, b))
	require.Empty(t, Differences(a, a))
}
