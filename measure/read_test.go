package measure_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "chalkfold/measure"
)

func TestReadInches(t *testing.T) {
	for _, text := range []string{
		"36 1/2", "36½", "36 ½", "36.5", "36,5", "36.5in", "36.5 in.", "36-1/2\"", "36 1⁄2″", "36 1 / 2", "36in 1/2", "36\" 1/2",
		"36\u00a01/2", "36\u202f½", "\u200936½ ", "36 1/2 inches", "36 1/2 INCH", "36½''", "in 36 1/2", "36.50", "036.5", "73/2", "036 05/010", "36 2/4", "36-½",
		"36 1∕2”", "36–1/2", "\t36 1/2\n", "927.1 mm", "92.71cm", "0.9271 m", "92,71 centimetres", "927,1mm.",
	} {
		l, err := Read(text, In)
		require.NoError(t, err, text)
		require.Equal(t, Length(927.1), l, text)
	}
}

func TestReadOther(t *testing.T) {
	for _, c := range []struct {
		text   string
		unit   Unit
		want   Length
		read   Unit
		stated bool
		echo   string
	}{
		{"92,5 cm", In, 925, Cm, true, "about 36 7/16 in (92.5 cm)"},
		{"925mm", Cm, 925, Mm, true, "= 92.5 cm (36 7/16 in)"},
		{"0.925 m", Cm, 925, Cm, true, "= 92.5 cm (36 7/16 in)"},
		{"92 1/2", Cm, 925, Cm, false, "= 92.5 cm (36 7/16 in)"},
		{"36½ in", Cm, 927.1, In, true, "about 92.7 cm (36 1/2 in)"},
		{"925", Mm, 925, Mm, false, "= 925 mm (36 7/16 in)"},
		{"½", In, 12.7, In, false, "= 1/2 in (1.3 cm)"},
		{"⅝", In, 15.875, In, false, "= 5/8 in (1.6 cm)"},
		{"11/4", In, 69.85, In, false, "= 2 3/4 in (7 cm)"}, // so that a lost blank is seen
		{".5", In, 12.7, In, false, "= 1/2 in (1.3 cm)"},
		{"5.", In, 127, In, false, "= 5 in (12.7 cm)"},
		{"0", In, 0, In, false, "= 0 in (0 cm)"},
		{"1/3", Cm, Length(10.0 / 3), Cm, false, "about 0.3 cm (1/8 in)"},
	} {
		got, err := ReadAll(c.text, c.unit)
		require.NoError(t, err, c.text)
		require.Equal(t, Reading{c.want, c.read, c.stated, c.echo}, got, c.text)
	}
}

func TestReadRefuses(t *testing.T) {
	for text, wrong := range map[string]string{
		"": "nothing was written", " \t\u00a0": "nothing was written",
		"abc": "no number", "thirty six": "no number", "NaN": "no number", "Infinity": "no number", "-": "less than nothing",
		"in": "no number", ".": "no number", "/2": "no number",
		"36 2": "two numbers", "36 2 in": "two numbers",
		"1/0": "0 below", "36 1/0": "0 below", "1/00": "0 below",
		"-5": "less than nothing", "−5": "less than nothing", "-1/2": "less than nothing", "-36 in": "less than nothing",
		"36.5 1/2": "decimal and a fraction", "36.5½": "decimal and a fraction",
		"36 furlong": "no unit", "36 parsec": "no unit", "36 µm": "no unit", "36 mi": "no unit",
		"5'": "feet", "5 ft": "feet", "5' 6\"": "feet",
		"1.2.3": "more than one decimal point", "36..5": "more than one decimal point", "1,234,5": "more than one decimal point",
		"1/2/3": "too many", "36 1/2/3": "too many", "36-": "hyphen too many",
		"1e3": "plain numbers", "0x24": "plain numbers",
		"36 in 5": "behind the length", "36½ 2": "behind the length", "36½½": "behind the length", "1/2 1/2": "behind the length",
		"36 in cm": "two units", "36 in in": "two units", //nolint:dupword // typed twice
		"36 - 1/2": "take away", "36- 1/2": "take away", "36 -1/2": "take away",
		"36 3/2": "not below one", "36 2/2": "not below one",
		"1/": "not finished", "36 1/": "not finished", "36 1/in": "not finished",
		"1.5/2": "whole numbers", "1/2.5": "whole numbers",
		"+36": "no part", "36%": "no part", "$36": "no part", "36¹⁄₂": "no part", "٣٦": "no part", "\x1b[31m36": "no part", "36\x00": "no part", "36\xff": "no part",
		strings.Repeat("9", 16000): "too long", "36 1/" + strings.Repeat("7", 4000): "too long",
	} {
		_, err := Read(text, In)
		require.Error(t, err, text)
		var r *Refusal
		require.ErrorAs(t, err, &r, text)
		require.Contains(t, r.Wrong, wrong, text)
		require.NotEmpty(t, r.Works, text)
		require.NotEmpty(t, r.Read, text)
		require.Less(t, len(err.Error()), 300, text)
		requirePlain(t, err.Error())
	}
}

// requirePlain holds that a message cannot move the cursor and speaks plainly.
func requirePlain(t require.TestingT, text string) {
	for _, r := range text {
		require.False(t, r < ' ' || r >= 0x7f && r < 0xa0, "%q", text)
	}
	for _, word := range []string{"invalid", "error", "please", "successfully"} {
		require.NotContains(t, strings.ToLower(text), word)
	}
}

// What was typed comes back from the session to the last bit.
func TestTypedIsStored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		typed, u := rapid.SampledFrom([]Unit{In, Cm, Mm}).Draw(t, "typed in"), rapid.SampledFrom([]Unit{In, Cm, Mm}).Draw(t, "session")
		whole, part := rapid.IntRange(0, 120).Draw(t, "whole"), rapid.IntRange(0, 999).Draw(t, "part")
		text := rapid.SampledFrom([]string{
			fmt.Sprintf("%d %d/%d", whole, part%16, 16), fmt.Sprintf("%d %d/%d", whole, part%7, 7), fmt.Sprintf("%d.%d", whole, part), fmt.Sprint(whole),
		}).Draw(t, "text")
		l, err := Read(text+" "+typed.String(), u)
		require.NoError(t, err)
		back, err := Read(u.Exact(l), u)
		require.NoError(t, err)
		require.Equal(t, l, back, u.Exact(l))
	})
}

// What was computed comes back too, unless it is a sixteenth but for rounding.
func TestComputedIsStored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]Unit{In, Cm, Mm}).Draw(t, "unit")
		l := rapid.OneOf(
			rapid.Map(rapid.Float64Range(0.01, 5000), func(x float64) Length { return Length(x) }),
			rapid.Map(rapid.IntRange(0, 4000), func(n int) Length { return Length(n) * Inch / 16 }),
		).Draw(t, "length")
		back, err := Read(u.Exact(l), u)
		require.NoError(t, err)
		require.InDelta(t, l.MM(), back.MM(), 1e-9, u.Exact(l))
		if strings.Contains(u.Exact(l), ".") {
			require.Equal(t, l, back, u.Exact(l))
		}
	})
}

func FuzzRead(f *testing.F) {
	for _, text := range []string{"36 1/2", "36½", "36-1/2\"", "92,5 cm", "0.925 m", "36in 1/2", "-5", "1/0", "36 2", "1e3", "NaN", ".", "5' 6\"", "36 1⁄2″", "", "''", "in 5", "1/08", "09/8", "36 010/020", "0in\"/1"} {
		f.Add(text, int8(0))
		f.Add(text, int8(1))
	}
	f.Fuzz(func(t *testing.T, text string, unit int8) {
		u := Unit(uint8(unit) % 3)
		r, err := ReadAll(text, u)
		if err != nil {
			require.Zero(t, r)
			requirePlain(t, err.Error())
			return
		}
		x := r.Length.MM()
		require.False(t, math.IsNaN(x) || math.IsInf(x, 0) || x < 0, text)
		require.NotEmpty(t, r.Echo)
		if x > 0.001 && x < 1e9 {
			back, err := Read(u.Exact(r.Length), u)
			require.NoError(t, err)
			require.InDelta(t, x, back.MM(), 1e-9)
		}
	})
}

func BenchmarkRead(b *testing.B) {
	for b.Loop() {
		_, _ = Read("36 1/2", In)
	}
}

func BenchmarkReadHostile(b *testing.B) {
	text := strings.Repeat("9", 79)
	for b.Loop() {
		_, _ = Read(text, In)
	}
}

func BenchmarkExact(b *testing.B) {
	for b.Loop() {
		_ = In.Exact(923.3333333333334)
	}
}
