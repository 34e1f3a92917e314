package outlet

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

func TestFormatsAreDifferent(t *testing.T) {
	ids, names := map[string]bool{}, map[string]bool{}
	r := newRequest(accept.Sheet(), "a", Options{})
	for _, f := range Formats() {
		require.False(t, ids[f.ID] || f.ID == All, f.ID)
		ids[f.ID] = true
		require.NotEmpty(t, f.Title)
		require.NotEmpty(t, f.Says)
		out := f.files(r)
		require.NotEmpty(t, out)
		for _, file := range out {
			require.False(t, names[file.name], file.name)
			names[file.name] = true
		}
	}
	want := map[string]bool{}
	for _, n := range []string{
		"a.svg", "a.dxf", "a.pdf", "a-tiles-a4-letter.pdf", "a-card.md", "a-card.txt", "a-card.pdf", "a-guide.md", "a-guide.pdf",
		"a-lay.svg", "a-lay.pdf", "a-lay.dxf", "a-lay-interfacing.svg", "a-lay-interfacing.pdf", "a-lay-interfacing.dxf", "a-handout.pdf", "a-measuring.pdf", "a-client.md", "a-client.pdf", "a-slip.md", "a-slip.pdf",
		"a-lesson.html",
	} {
		want[n] = true
	}
	require.Equal(t, want, names)
}

const every = "svg dxf pdf tiles card guide lay handout measuring client slip lesson moved"

func TestParse(t *testing.T) {
	choose := "choose from " + strings.ReplaceAll(every, " ", ", ") + ", or all"
	for _, c := range []struct{ list, want string }{
		{"svg", "svg"}, {"card,svg", "svg card"}, {"SVG, dxf", "svg dxf"}, {"svg,svg", "svg"}, {"all", every}, {"all,svg", every},
	} {
		got, err := Parse(c.list)
		require.NoError(t, err, c.list)
		var ids []string
		for _, f := range got {
			ids = append(ids, f.ID)
		}
		require.Equal(t, c.want, strings.Join(ids, " "), c.list)
	}
	for _, c := range []struct{ list, want string }{
		{"svg,fax", `--format: "fax"; there is no such format; ` + choose},
		{"", "--format: nothing; no format was named; " + choose},
		{" , ", "--format: nothing; no format was named; " + choose},
	} {
		_, err := Parse(c.list)
		require.EqualError(t, err, c.want)
	}
}

// pictures are the formats that the hand-built sheet is enough for.
func pictures(t *testing.T) []Format {
	f, err := Parse("svg,dxf")
	require.NoError(t, err)
	return f
}

func outcomes(results []Result) (out []files.Outcome) {
	for _, r := range results {
		out = append(out, r.Outcome)
	}
	return out
}

func TestOverwriteRule(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "new", "folder")
	export := func(o Options) []Result {
		r, err := Export(accept.Sheet(), "four", dir, pictures(t), o, nil)
		require.NoError(t, err)
		return r
	}
	first := export(Options{})
	require.Equal(t, []files.Outcome{files.Written, files.Written}, outcomes(first))
	require.Equal(t, filepath.Join(dir, "four.svg"), first[0].Path)
	require.Contains(t, first[0].Says(), "four.svg: written, ")

	require.Equal(t, []files.Outcome{files.Equal, files.Equal}, outcomes(export(Options{})))

	old, err := os.ReadFile(first[0].Path)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(first[0].Path, []byte("hers"), 0o600))
	refused := export(Options{})
	require.Equal(t, []files.Outcome{files.Nothing, files.Equal}, outcomes(refused), "the other file is done")
	require.ErrorIs(t, refused[0].Err, files.ErrExists)
	require.Contains(t, refused[0].Says(), "--force")
	kept, err := os.ReadFile(first[0].Path)
	require.NoError(t, err)
	require.Equal(t, "hers", string(kept))

	require.Equal(t, []files.Outcome{files.Replaced, files.Equal}, outcomes(export(Options{Force: true})))
	again, err := os.ReadFile(first[0].Path)
	require.NoError(t, err)
	require.Equal(t, old, again)
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 2, "nothing is left beside")
}

func TestNames(t *testing.T) {
	svg, err := Parse("svg")
	require.NoError(t, err)
	for _, c := range []struct {
		o    Options
		want []string
	}{
		{Options{}, []string{"a.svg"}},
		{Options{Web: true}, []string{"a-web.svg"}},
		{Options{Each: true}, []string{"a-front.svg", "a-back_neck_facing.svg"}},
		{Options{Each: true, Web: true}, []string{"a-front-web.svg", "a-back_neck_facing-web.svg"}},
	} {
		dir := t.TempDir()
		results, err := Export(accept.Sheet(), "a", dir, svg, c.o, nil)
		require.NoError(t, err)
		var got []string
		for _, r := range results {
			require.NoError(t, r.Err)
			require.Equal(t, "svg", r.Format)
			got = append(got, filepath.Base(r.Path))
		}
		require.Equal(t, c.want, got)
	}
}

func TestUnitAsked(t *testing.T) {
	in, cm := measure.In, measure.Cm
	dxf, err := Parse("dxf")
	require.NoError(t, err)
	for _, c := range []struct {
		o    Options
		want []string
	}{
		{Options{Session: in}, []string{"Units: METRIC", "in inches: neck 3/8"}},
		{Options{Session: cm, Unit: &in}, []string{"Units: ENGLISH", "in inches: neck 3/8"}},
		{Options{Session: in, Unit: &cm}, []string{"Units: METRIC", "in centimetres: neck 1"}},
	} {
		dir := t.TempDir()
		_, err := Export(accept.Sheet(), "a", dir, dxf, c.o, nil)
		require.NoError(t, err)
		data, err := os.ReadFile(filepath.Join(dir, "a.dxf"))
		require.NoError(t, err)
		text := strings.ReplaceAll(string(data), "\r\n", "\n")
		require.Contains(t, text, c.want[0])
		require.Contains(t, strings.Join(annotations(text), " "), c.want[1])
	}
}

func annotations(dxf string) []string {
	var out []string
	for _, block := range strings.Split(dxf, "\n  0\nTEXT\n") {
		if _, after, ok := strings.Cut(block, "\n  1\n"); ok {
			line, _, _ := strings.Cut(after, "\n")
			out = append(out, line)
		}
	}
	return out
}

func TestProgressIsTold(t *testing.T) {
	var told []string
	_, err := Export(accept.Sheet(), "a", t.TempDir(), pictures(t), Options{}, func(done, total int, path string) {
		require.Equal(t, 2, total)
		require.Equal(t, len(told), done)
		told = append(told, filepath.Base(path))
	})
	require.NoError(t, err)
	require.Equal(t, []string{"a.svg", "a.dxf", "."}, told)
}

func TestHalfADraftStaysHere(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "out")
	s := accept.Sheet()
	s.Complete = false
	s.Missing = []pattern.Missing{{ID: measure.WaistGirth, For: "the waist line"}}
	_, err := Export(s, "four", dir, pictures(t), Options{}, nil)
	require.EqualError(t, err, "four: a draft that is not complete; it still needs waist_girth for the waist line; measure and enter these")
	require.NoDirExists(t, dir)

	s.Missing = nil
	s.Refused = []pattern.Refused{{Says: measure.Tell("the neck is wider than the shoulders."), Cure: measure.Tell("measure the neck again")}}
	_, err = Export(s, "four", dir, pictures(t), Options{}, nil)
	require.EqualError(t, err, "four: a draft that is not complete; the neck is wider than the shoulders; measure the neck again")
}

func TestMeasuringSheetLeavesBeforeTheDraft(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Complete = false
	early, err := Parse("measuring,client")
	require.NoError(t, err)
	results, err := Export(s, "four", t.TempDir(), early, Options{}, nil)
	require.NoError(t, err)
	require.Len(t, results, 3)
	for _, r := range results {
		require.NoError(t, r.Err)
	}
}

func TestPaperOptions(t *testing.T) {
	tiles, err := Parse("tiles")
	require.NoError(t, err)
	export := func(o Options) ([]Result, error) { return Export(accept.Sheet(), "a", t.TempDir(), tiles, o, nil) }
	results, err := export(Options{Paper: "A3"})
	require.NoError(t, err)
	require.Equal(t, "a-tiles-a3.pdf", filepath.Base(results[0].Path))
	require.NoError(t, results[0].Err)
	_, err = export(Options{Paper: "b5"})
	require.EqualError(t, err, `--paper: "b5"; there is no such paper; choose from a4-letter, a4, letter, legal, a3, tabloid`)
	_, err = export(Options{PrintedAlong: 9 * measure.Inch})
	require.ErrorContains(t, err, "--printed-along: 9 in (229 mm)")
	_, err = export(Options{PrintedAcross: 7.02 * measure.Inch, PrintedAlong: 9.98 * measure.Inch})
	require.NoError(t, err)
}

func TestBoxesInANameAreTold(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Job.Client.Name = "Zo\u00eb \U0001F457"
	slip, err := Parse("slip")
	require.NoError(t, err)
	results, err := Export(s, "a", t.TempDir(), slip, Options{}, nil)
	require.NoError(t, err)
	require.Empty(t, results[0].Notes)
	require.Len(t, results[1].Notes, 1)
	require.Contains(t, results[1].Says(), "U+1F457")
}

func TestNotesAreOnTheCardWhenAskedFor(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Job.Client.Notes = "left knee stiff"
	card, err := Parse("client")
	require.NoError(t, err)
	for _, notes := range []bool{false, true} {
		results, err := Export(s, "a", t.TempDir(), card, Options{Notes: notes}, nil)
		require.NoError(t, err)
		data, err := os.ReadFile(results[0].Path)
		require.NoError(t, err)
		require.Equal(t, notes, strings.Contains(string(data), "left knee stiff"))
	}
}

func TestClash(t *testing.T) {
	require.NoError(t, Clash([]Input{{"x/a.chalkfold.toml", "a"}, {"x/b.chalkfold.toml", "b"}}))
	err := Clash([]Input{{"x/ana.chalkfold.toml", "ana"}, {"b.chalkfold.toml", "b"}, {"y/Ana.chalkfold.toml", "Ana"}})
	require.ErrorContains(t, err, "x/ana.chalkfold.toml and y/Ana.chalkfold.toml")
}

func TestFolderThatCannotBe(t *testing.T) {
	dir := t.TempDir()
	taken := filepath.Join(dir, "taken")
	require.NoError(t, os.WriteFile(taken, nil, 0o600))
	_, err := Export(accept.Sheet(), "a", filepath.Join(taken, "in"), pictures(t), Options{}, nil)
	require.ErrorContains(t, err, "a part of the path is a file")
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"svg", "all", "svg,dxf", ", ,", "\x00", "SVG;dxf"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, list string) {
		got, err := Parse(list)
		require.Equal(t, err == nil, len(got) > 0)
	})
}
