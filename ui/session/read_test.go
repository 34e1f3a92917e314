package session

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
)

func TestReadsEverything(t *testing.T) {
	s := parse(t, sample)
	j := s.Job
	require.Empty(t, s.Warnings)
	require.Equal(t, measure.In, j.Unit)
	require.Equal(t, pattern.Client{Name: "Learner Four", Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}, Shoes: "flat", Notes: "asks for pockets"}, j.Client)
	for id, want := range map[measure.ID]measure.Length{"bust_girth": 927.1, "waist_girth": 711.2, "hip_girth": 965} {
		got, ok := j.Body.Get(id)
		require.True(t, ok)
		require.InDelta(t, float64(want), float64(got), 1e-9, id)
	}
	require.Equal(t, 3, j.Body.Len())
	require.Equal(t, 1, j.Left.Len())
	require.Equal(t, 1, j.Confirmed.Len())
	require.Equal(t, "dress", j.Style.Garment())
	v, ok := j.Style.Get("front_neck_depth")
	require.True(t, ok)
	require.InDelta(t, 114.3, float64(v.Length), 1e-9)
	require.Equal(t, []pattern.Cloth{{
		Name: "main", Width: 1473.2, Edges: 12.7, Fold: "lengthwise", ShrinkAlong: 3,
		Price: 12.5, Flaws: [][4]measure.Length{{254, 101.6, 25.4, 25.4}}, Step: measure.Inch / 8, Stripe: "centre",
	}}, j.Cloths)
	require.Equal(t, []pattern.Fitting{{
		Date: pattern.Date{Year: 2026, Month: 3, Day: 20}, Seen: "front armhole gapes", Why: "pinched 1/4 each side",
		Change: []pattern.Change{{Input: "dart_extra", By: "1/4"}, {Input: "ease_bust", By: "2.25"}},
	}}, j.Fittings)
	require.Len(t, j.Earlier, 1)
	require.Equal(t, map[string]int{"back": 7}, s.Lesson)
}

func TestEmptyPlacesGiveDefaults(t *testing.T) {
	s := parse(t, "form = 1\n")
	require.Equal(t, pattern.Job{}, s.Job)
	s = parse(t, "[body]\nbust_girth = 36\n")
	require.Equal(t, 1, s.Job.Body.Len(), "a missing form is ours")
}

// wrongs are texts that are refused, each with what would work.
var wrongs = []struct{ name, text string }{
	{"empty", ""},
	{"only a comment", "# nothing here\n"},
	{"a shopping list", "this is a shopping list\n- chalk\n"},
	{"another TOML file", "[tool]\nname = \"x\"\n"},
	{"too large", "form = 1\n#" + strings.Repeat("x", SizeLimit)},
	{"not UTF-8", "form = 1\n[client]\nname = \"Zo\xeb\"\n"},
	{"NUL", "form = 1\n\x00"},
	{"escape code", "form = 1\n[client]\nname = \"a\x1b[31m\"\n"},
	{"a carriage return alone", "form = 1\runit = \"in\"\r"},
	{"deep lists", "form = 1\ndeep = " + strings.Repeat("[", 100_000)},
	{"deep keys", "form = 1\n[" + strings.Repeat("a.", 2000) + "a]\nb = 1\n"},
	{"twice the same", "form = 1\n[body]\nbust_girth = 36\nbust_girth = 36\n"},
	{"twice the table", "form = 1\n[body]\nbust_girth = 36\n[body]\n"},
	{"no value", "form = 1\n[body]\nbust_girth =\n"},
	{"no quotes", "form = 1\n[body]\nbust_girth = 36 1/2\n"},
	{"open quotes", "form = 1\n[body]\nbust_girth = \"36\n"},
	{"open table", "form = 1\n[body\nbust_girth = 36\n"},
	{"open list", "form = 1\nx = [1, 2\n"},
	{"open inline table", "form = 1\nx = { a = 1\n"},
	{"too large a number", "form = 1\n[body]\nbust_girth = 1e400\nwaist_girth = \"abc\"\n"},
	{"no such day", "form = 1\n[client]\nmeasured = 2026-13-45\n"},
	{"leading zero", "form = 1\n[body]\nbust_girth = 036\n"},
	{"backslash", "form = 1\n[client]\nname = \"a\\q\"\n"},
	{"newer form", "form = 99\n"},
	{"older form", "form = 0\n"},
	{"form in words", "form = \"one\"\n"},
	{"unit", "form = 1\nunit = \"furlong\"\n"},
	{"unit as a number", "form = 1\nunit = 3\n"},
	{"body is text", "form = 1\nbody = \"36\"\n"},
	{"body is a list", "form = 1\n[[body]]\n"},
	{"client is a number", "form = 1\nclient = 7\n"},
	{"name is a list", "form = 1\n[client]\nname = [\"a\"]\n"},
	{"name with a code", "form = 1\n[client]\nname = \"a\\u001b[2J\"\n"},
	{"name turned round", "form = 1\n[client]\nname = \"a\u202eb\"\n"},
	{"name too long", "form = 1\n[client]\nname = \"" + strings.Repeat("x", 201) + "\"\n"},
	{"notes with a code", "form = 1\n[client]\nnotes = \"a\\u0007\"\n"},
	{"notes too long", "form = 1\n[client]\nnotes = \"" + strings.Repeat("x", longestNotes+1) + "\"\n"},
	{"date in words", "form = 1\n[client]\nmeasured = \"last spring\"\n"},
	{"three at once", "form = 1\n[body]\nbust_girth = \"abc\"\nwaist_girth = -3\nhip_girth = \"5 furlong\"\n"},
	{"zero", "form = 1\n[body]\nbust_girth = 0\n"},
	{"too long for a body", "form = 1\n[body]\nbust_girth = \"1000000 mm\"\n"},
	{"longer than cloth", "form = 1\n[cloth.main]\nwidth = \"99999999\"\n"},
	{"a list for a length", "form = 1\n[body]\nbust_girth = [36]\n"},
	{"not a number", "form = 1\n[body]\nbust_girth = nan\n"},
	{"two numbers", "form = 1\n[body]\nbust_girth = \"36 2\"\n"},
	{"garment", "form = 1\n[style]\ngarment = \"umbrella\"\n"},
	{"method", "form = 1\n[style]\nmethod = \"thum\"\n"},
	{"choice too long", "form = 1\n[style]\nlength = \"900\"\n"},
	{"fold", "form = 1\n[cloth.main]\nfold = \"twice\"\n"},
	{"nap", "form = 1\n[cloth.main]\nnap = \"no\"\n"},
	{"shrinking", "form = 1\n[cloth.main]\nshrink_along = 120\n"},
	{"shrinking in words", "form = 1\n[cloth.main]\nshrink_along = \"3\"\n"},
	{"flaws", "form = 1\n[cloth.main]\nflaws = 3\n"},
	{"a flaw of three", "form = 1\n[cloth.main]\nflaws = [[1, 2, 3]]\n"},
	{"fitting is text", "form = 1\nfitting = \"x\"\n"},
	{"change is a list", "form = 1\n[[fitting]]\nchange = { a = [1] }\n"},
	{"earlier with a bad body", "form = 1\n[[earlier]]\nbody = 3\n"},
	{"lesson in words", "form = 1\n[lesson]\nback = \"seven\"\n"},
}

func TestRefusals(t *testing.T) {
	var b strings.Builder
	for _, w := range wrongs {
		got := refusals(t, w.text)
		require.NotEmpty(t, got, w.name)
		for _, line := range got {
			require.Contains(t, line, "four.chalkfold.toml", w.name)
			for _, word := range []string{"invalid", "error", "please", "success"} {
				require.NotContains(t, strings.ToLower(line), word, w.name)
			}
		}
		fmt.Fprintf(&b, "%s\n    %s\n", w.name, strings.Join(got, "\n    "))
	}
	golden.Check(t, "refusals.txt", b.String())
}

// Every "what would work" that gives an example is tried.
func TestWhatWouldWorkWorks(t *testing.T) {
	for _, text := range []string{
		"form = 1", "unit = \"in\"", "unit = \"cm\"", "unit = \"mm\"", "[body]\nbust_girth = \"36 1/2\"\n# note", "[body]\nbust_girth = \"92.5 cm\"",
		"[body]\nbust_girth = 36.5", "[client]\nname = \"Learner Four\"", "[client]\nmeasured = 2026-03-04", "[client]\nname = \"a\\\\b\"",
		"[[fitting]]\nchange = { dart_extra = \"1/4\" }", "[cloth.main]\nflaws = [[\"10\", \"4\", \"1\", \"1\"]]", "[cloth.main]\nnap = true",
		"[cloth.main]\nfold = \"to_middle\"", "[cloth.main]\nshrink_along = 2.5", "[cloth.main]\nshrink_along = 50", "[lesson]\nback = 7", "[style]\ngarment = \"dress\"",
		"[style]\nmethod = \"thumb\"", "[style]\nfront_neck_depth = \"11.5 cm\"", "form = 1\nx = [1, 2, 3]",
	} {
		if !strings.HasPrefix(text, "form") {
			text = "form = 1\n" + text
		}
		require.Empty(t, refusals(t, text+"\n"), text)
	}
}

func TestPlacesAreCountedInCharacters(t *testing.T) {
	require.Equal(t, []string{`four.chalkfold.toml:3:17: client.name = ["é"]; this is text in quotes; write it like "Learner Four"`},
		refusals(t, "form = 1\n[client]\n  'name'    =   [\"é\"]\n"))
	require.Contains(t, refusals(t, "\xef\xbb\xbfunit = 3\n")[0], ":1:8:")
	require.Contains(t, refusals(t, "form = 1\r\nbody.bust_girth = 'x'\r\n")[0], ":2:19:")
	require.Contains(t, refusals(t, "form = 1\nbody = { waist_girth = 28, bust_girth = 'x' }\n")[0], ":2:41:")
}

func TestNearMisses(t *testing.T) {
	s := parse(t, "form = 1\n[body]\nbust_grith = 36\nwaist_girth = 28\nwaist_girht = 1\nfine = 1\n[stile]\n[style]\nfront_nek_depth = 4\n")
	require.Equal(t, []string{
		`four.chalkfold.toml:3:14: "body.bust_grith" is kept but says nothing to Chalkfold; did you mean bust_girth?`,
		`four.chalkfold.toml:9:19: "style.front_nek_depth" is kept but says nothing to Chalkfold; did you mean front_neck_depth?`,
	}, s.Warnings)
}

// Samples in the spirit of the official test suite: odd, and right.
func TestOddButRight(t *testing.T) {
	for name, text := range map[string]string{
		"dotted":         "form = 1\nbody.bust_girth = 36\nbody . waist_girth = 28\n",
		"inline":         "form = 1\nbody = { bust_girth = 36, waist_girth = '28' }\n",
		"quoted table":   "form = 1\n[\"body\"]\n'bust_girth' = 36\n\"waist_girth\" = 28\n",
		"multi-line":     "form = 1\n[body]\nbust_girth = \"\"\"\n36\"\"\"\nwaist_girth = '''28'''\n",
		"escapes":        "form = 1\n[body]\nbust_girth = \"3\\u0036\"\nwaist_girth = 28.0\n",
		"hexadecimal":    "form = 1\n[body]\nbust_girth = 0x24\nwaist_girth = 2_8\n",
		"blanks":         "\n\n  form=1\n\t[ body ]\t# x\n\tbust_girth\t=\t36\n  waist_girth = 28",
		"brackets":       "form = 1\nx = [ '[', \"]\", # ]\n [1, {a = 1, 'b.c' = [2]}],\n]\n[body]\nbust_girth = 36\nwaist_girth = 28\n",
		"windows":        "form = 1\r\n[body]\r\nbust_girth = 36\r\nwaist_girth = 28\r\n",
		"byte order":     "\xef\xbb\xbfform = 1\n[body]\nbust_girth = 36\nwaist_girth = 28\n",
		"sub-table last": "form = 1\n[body.more]\na = 1\n[body]\nbust_girth = 36\nwaist_girth = 28\n",
	} {
		s := parse(t, text)
		bust, _ := s.Job.Body.Get(measure.BustGirth)
		require.InDelta(t, 914.4, float64(bust), 1e-9, name)
		// Changed and read again, and nothing else touched.
		out, err := s.Bytes(s.Job.WithBody(measure.WaistGirth, 700*measure.Millimetre).WithBody(measure.HipGirth, 900*measure.Millimetre))
		require.NoError(t, err, name)
		again := parse(t, string(out))
		waist, _ := again.Job.Body.Get(measure.WaistGirth)
		require.InDelta(t, 700, float64(waist), 1e-9, name)
		require.Equal(t, bytes.Count([]byte(text), []byte("\r")) > 0, bytes.Contains(out, []byte("\r")), name)
	}
}

func FuzzParse(f *testing.F) {
	f.Add([]byte(sample))
	f.Add([]byte(laid))
	for _, w := range wrongs {
		if len(w.text) < 5000 {
			f.Add([]byte(w.text))
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		s, err := Parse("x", text)
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		same, err := s.Bytes(s.Job)
		require.NoError(t, err)
		require.Equal(t, string(text), string(same))
		out, err := s.Bytes(s.Job.WithBody(measure.WaistGirth, 711.2))
		require.NoError(t, err)
		again, err := Parse("x", out)
		require.NoError(t, err)
		require.True(t, again.Job.Body.Has(measure.WaistGirth))
	})
}
