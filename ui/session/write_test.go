package session

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
)

// in is a length as a session gives it.
func in(text string) measure.Length {
	l, err := measure.Read(text, measure.In)
	if err != nil {
		panic(err)
	}
	return l
}

// Each change, and the lines that it changes.
func TestEditsInPlace(t *testing.T) {
	s := parse(t, sample)
	cases := []struct {
		name string
		to   func(pattern.Job) pattern.Job
	}{
		{"a measure", func(j pattern.Job) pattern.Job { return j.WithBody("bust_girth", in("37 1/4")) }},
		{"a new measure", func(j pattern.Job) pattern.Job { return j.WithBody("height", in("66")) }},
		{"a measure taken out, its comment stays", func(j pattern.Job) pattern.Job { return j.WithoutBody("bust_girth") }},
		{"a measure taken out, without comment", func(j pattern.Job) pattern.Job { return j.WithoutBody("waist_girth") }},
		{"a choice", func(j pattern.Job) pattern.Job { return j.WithStyle("front_neck_depth", pattern.LengthValue(in("5"))) }},
		{"the method", func(j pattern.Job) pattern.Job { return j.WithStyle("method", pattern.PickValue("thumb")) }},
		{"the name", func(j pattern.Job) pattern.Job { j.Client.Name = "A \"B\" \\ C"; return j }},
		{"the shoes forgotten", func(j pattern.Job) pattern.Job { j.Client.Shoes = ""; return j }},
		{"the date forgotten", func(j pattern.Job) pattern.Job { j.Client.Measured = pattern.Date{}; return j }},
		{"another unit", func(j pattern.Job) pattern.Job { return InUnit(j, measure.Cm) }},
		{"a new cloth", func(j pattern.Job) pattern.Job {
			j.Cloths = append(append([]pattern.Cloth{}, j.Cloths...), pattern.Cloth{Name: "lining", Width: in("36")})
			return j
		}},
		{"no cloth", func(j pattern.Job) pattern.Job { j.Cloths = nil; return j }},
		{"another fitting", func(j pattern.Job) pattern.Job {
			j.Fittings = append(append([]pattern.Fitting{}, j.Fittings...), pattern.Fitting{Seen: "hem dips", Change: []pattern.Change{{Input: "length", By: "1/2"}}})
			return j
		}},
		{"no fitting", func(j pattern.Job) pattern.Job { j.Fittings = nil; return j }},
		{"a fitting's change", func(j pattern.Job) pattern.Job {
			f := j.Fittings[0]
			f.Change = []pattern.Change{{Input: "dart_extra", By: "3/8"}, {Input: "ease_bust", By: "2.25"}, {Input: "length", By: "1"}}
			j.Fittings = []pattern.Fitting{f}
			return j
		}},
		{"an earlier set before", func(j pattern.Job) pattern.Job {
			j.Earlier = append([]pattern.Earlier{{Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}, Body: j.Body}}, j.Earlier...)
			return j
		}},
		{"an earlier measure", func(j pattern.Job) pattern.Job {
			e := j.Earlier[0]
			e.Body = e.Body.With("waist_girth", in("27"))
			j.Earlier = []pattern.Earlier{e}
			return j
		}},
	}
	var b strings.Builder
	for _, c := range cases {
		want := c.to(s.Job)
		out, err := s.Bytes(want)
		require.NoError(t, err, c.name)
		require.Equal(t, want, parse(t, string(out)).Job, c.name)
		fmt.Fprintf(&b, "%s\n%s\n\n", c.name, golden.Diff(sample, string(out)))
	}
	golden.Check(t, "edits.txt", b.String())
}

func TestNoEditsSameBytes(t *testing.T) {
	s := parse(t, sample)
	out, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, sample, string(out))
	require.False(t, s.Changed(s.Job))
	require.True(t, s.Changed(s.Job.WithBody("height", 1700)))
}

// What is said inline is changed inline.
func TestInlineTables(t *testing.T) {
	s := parse(t, "form = 1\nbody = { bust_girth = 36, waist_girth = 28 }   # both\nfitting = [{ seen = \"a\", x = 1 }, { seen = \"b\" }]\nclient.name = \"Four\"\n")
	job := s.Job.WithoutBody("waist_girth").WithBody("hip_girth", in("38 1/2"))
	job.Fittings = job.Fittings[:1]
	job.Client.Shoes = "flat"
	job.Earlier = []pattern.Earlier{{Body: job.Body}}
	out, err := s.Bytes(job)
	require.NoError(t, err)
	require.Equal(t, "form = 1\nbody = { bust_girth = 36, hip_girth = \"38 1/2\" }   # both\nfitting = [{ seen = \"a\", x = 1 }]\nclient.name = \"Four\"\nclient.shoes = \"flat\"\n"+
		"\n[[earlier]]\nbody = { bust_girth = \"36\", hip_girth = \"38 1/2\" }\n", string(out))
	require.Equal(t, job, parse(t, string(out)).Job)
}

func TestNewFile(t *testing.T) {
	dir := home(t)
	job := parse(t, sample).Job
	path := filepath.Join(dir, "new"+Suffix)
	s := New(path, job)
	require.NoError(t, s.Save(job))
	info, err := os.Stat(path)
	require.NoError(t, err)
	require.EqualValues(t, 0o600, info.Mode().Perm())
	again, err := Open(path)
	require.NoError(t, err)
	require.Equal(t, job, again.Job)
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	golden.Check(t, "new.toml", string(text))
}

func TestTemplate(t *testing.T) {
	for _, method := range []string{"measured", "thumb"} {
		text := string(Template("dress", method, measure.Cm))
		s := parse(t, text)
		require.Equal(t, measure.Cm, s.Job.Unit)
		require.Equal(t, method, s.Job.Style.Method())
		require.Contains(t, text, "\n# bust_girth = \"\" ")
		out, err := s.Bytes(s.Job.WithBody("bust_girth", 900))
		require.NoError(t, err)
		require.Contains(t, string(out), "\nbust_girth = \"90\"\n")
	}
}

func TestSaveKeepsTheFormerAndAsks(t *testing.T) {
	dir := home(t)
	path := filepath.Join(dir, "four"+Suffix)
	write(t, path, sample)
	s, err := Open(path)
	require.NoError(t, err)
	job := s.Job.WithBody("height", in("66"))
	require.NoError(t, s.Save(job))
	require.Equal(t, job, s.Job)
	former, err := os.ReadFile(path + "~")
	require.NoError(t, err)
	require.Equal(t, sample, string(former))

	require.NoError(t, s.Save(job.WithBody("height", in("67"))), "a second save goes by the first")

	now, err := os.ReadFile(path)
	require.NoError(t, err)
	write(t, path, string(now)+"# hers\n")
	require.ErrorIs(t, s.Save(job), ErrChanged)
	reloaded, err := s.Reload()
	require.NoError(t, err)
	require.NoError(t, reloaded.Save(job))
	require.NoError(t, s.SaveOver(job.WithBody("height", in("68"))))

	other := filepath.Join(dir, "other"+Suffix)
	write(t, other, "hers")
	require.ErrorIs(t, s.SaveAs(other, job), ErrExists)
	require.Equal(t, path, s.Path)
	third := filepath.Join(dir, "third"+Suffix)
	require.NoError(t, s.SaveAs(third, job))
	require.Equal(t, third, s.Path)
	text, err := os.ReadFile(third)
	require.NoError(t, err)
	require.Contains(t, string(text), "# over the usual bra")
}

func TestWhatCannotBeReadIsNotWritten(t *testing.T) {
	s := parse(t, sample)
	job := s.Job
	job.Client.Name = "a\x1b[2J"
	_, err := s.Bytes(job)
	require.Error(t, err)
	_, err = s.Bytes(s.Job.WithBody("bust_girth", 1))
	require.Error(t, err)
}

// Whatever is changed, reading gives the job that was meant, and every
// comment and unknown line is still there.
func TestAnyChangeComesBack(t *testing.T) {
	length := rapid.Custom(func(t *rapid.T) measure.Length {
		return in(fmt.Sprintf("%d %d/16", rapid.IntRange(1, 90).Draw(t, "whole"), rapid.IntRange(1, 15).Draw(t, "part")))
	})
	ids := []measure.ID{"height", "bust_girth", "waist_girth", "hip_girth", "neck_base_girth", "shoulder_length"}
	rapid.Check(t, func(t *rapid.T) {
		s, err := Parse("x", []byte(sample))
		require.NoError(t, err)
		for range rapid.IntRange(1, 3).Draw(t, "saves") {
			job := s.Job
			for range rapid.IntRange(1, 6).Draw(t, "changes") {
				id := rapid.SampledFrom(ids).Draw(t, "id")
				switch rapid.IntRange(0, 8).Draw(t, "what") {
				case 0, 1:
					job = job.WithBody(id, length.Draw(t, "length"))
				case 2:
					job = job.WithoutBody(id)
				case 3:
					job = job.WithStyle("front_neck_depth", pattern.LengthValue(length.Draw(t, "length")))
				case 4:
					job = job.WithoutStyle("front_neck_depth")
				case 5:
					job.Left = job.Left.With(id, length.Draw(t, "length"))
				case 6:
					job.Client.Notes = rapid.StringMatching(`[ -~é]{0,20}`).Draw(t, "notes")
				case 7:
					job = job.Confirm(id, length.Draw(t, "length"))
				case 8:
					job.Earlier = append([]pattern.Earlier{{Body: job.Body}}, job.Earlier...)
				}
			}
			out, err := s.Bytes(job)
			require.NoError(t, err)
			for _, line := range []string{
				"# for the spring class", "# as she signs", "# taken twice", "# over the usual bra", "mystery_girth = \"9 3/4\"   # an unknown measurement",
				"colour = \"grey\"", "# the year before", "[studio]            # an unknown table", "boxes = [1, 2, 3]   # and a list", "\"odd key é\" = 2026-01-02", "[[bolt]]",
			} {
				require.Contains(t, string(out), line)
			}
			s, err = Parse("x", out)
			require.NoError(t, err)
			require.Equal(t, job, s.Job)
		}
	})
}

func BenchmarkParse(b *testing.B) {
	for b.Loop() {
		if _, err := Parse("x", []byte(sample)); err != nil {
			b.Fatal(err)
		}
	}
}
