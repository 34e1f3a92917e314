package shell

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
)

// completed are the words that a shell is offered.
func completed(t *testing.T, args ...string) string {
	t.Helper()
	var out bytes.Buffer
	Main(append([]string{"__complete"}, args...), strings.NewReader(""), &out, io.Discard, envOf())
	return out.String()
}

// A shell is offered every id, garment, choice, format and paper, and files
// where a file is wanted; of a list the next value.
func TestTheShellIsOfferedEveryWord(t *testing.T) {
	path := filepath.Join(t.TempDir(), "demo"+session.Suffix)
	require.NoError(t, os.WriteFile(path, session.DemoText(), 0o600))
	ids := completed(t, "measurements", "")
	for _, m := range measure.All() {
		require.Contains(t, ids, string(m.ID)+"\n")
	}
	garments := completed(t, "new", "x", "--garment", "")
	for _, g := range workroom.Garments() {
		require.Contains(t, garments, g.ID+"\n")
	}
	for _, tc := range []struct {
		args []string
		want string
	}{
		{[]string{"choices", "--method", ""}, "measured\nthumb\ndirect\n"},
		{[]string{"compare", path, "--method", "thumb,"}, "thumb,measured\nthumb,direct\n"},
		{[]string{"draft", path, "--piece", ""}, "back\nfront\n"},
		{[]string{"outline", path, "--piece", ""}, "back_neck_facing\n"},
		{[]string{"looks", path, "--pick", ""}, "front_neckline\n"},
		{[]string{"export", path, "--format", "svg,"}, "svg,dxf\nsvg,pdf\n"},
		{[]string{"export", path, "--paper", ""}, "a4-letter\na4\n"},
		{[]string{"lay", path, "--cloth", ""}, "main\nlining\ninterfacing\n"},
		{[]string{"fit", path, "--saw", ""}, "gape_armhole\n"},
		{[]string{"completion", ""}, "bash\nzsh\nfish\npowershell\n"},
		{[]string{"--theme", ""}, "auto\nplain\nlight\ndark\n"},
		{[]string{"export", path, "--format", "card,", "--out", ""}, ":16\n"}, // folders
		{[]string{"class", ""}, ":16\n"},
		{[]string{"check", ""}, "toml\n:8\n"}, // files of that ending
		{[]string{""}, "toml\n"},
	} {
		require.Contains(t, completed(t, tc.args...), tc.want, "%v", tc.args)
	}
	require.NotContains(t, completed(t, "export", path, "--format", "svg,"), "svg,svg")
	commands := completed(t, "")
	for _, c := range tree(&world{env: envOf()}).Commands() {
		if c.IsAvailableCommand() {
			require.Contains(t, commands, c.Name()+"\t")
		}
	}
	for _, shell := range []string{"bash", "zsh", "fish"} {
		if _, err := exec.LookPath(shell); err != nil {
			continue
		}
		script := filepath.Join(t.TempDir(), "c."+shell)
		var out bytes.Buffer
		require.Equal(t, Done, Main([]string{"completion", shell}, strings.NewReader(""), &out, io.Discard, envOf()))
		require.NoError(t, os.WriteFile(script, out.Bytes(), 0o600))
		said, err := exec.Command(shell, "-n", script).CombinedOutput()
		require.NoError(t, err, "%s: %s", shell, said)
	}
}

// The manual names every command, every option and every key, and no checker
// of manuals finds anything in it but that it has no date.
func TestTheManualIsWhole(t *testing.T) {
	w := &world{env: envOf()}
	root := tree(w)
	page := strings.NewReplacer(`\-`, "-", `\e`, `\`, `\&`, "").Replace(w.manual())
	for _, c := range append([]*cobra.Command{root}, w.commands...) {
		require.True(t, c == root || strings.Contains(page, ".SS "+c.UseLine()+"\n"), c.Name())
		c.LocalFlags().VisitAll(func(f *pflag.Flag) {
			if !f.Hidden && f.Name != "help" {
				require.Contains(t, page, "--"+f.Name, c.Name())
			}
		})
	}
	flat := strings.Join(strings.Fields(page), " ")
	for _, a := range desk.Keys() {
		require.Contains(t, flat, strings.Join(strings.Fields(a.Title+": "+a.Says), " "), a.ID)
		if a.Shown != "" {
			require.Contains(t, flat, ".B "+a.Shown+" ", a.ID)
		}
	}
	if _, err := exec.LookPath("mandoc"); err != nil {
		t.Skip("mandoc is not here: the page is not checked by another program")
	}
	lint := exec.Command("mandoc", "-Tlint", "-Wwarning")
	lint.Stdin = strings.NewReader(w.manual())
	out, _ := lint.CombinedOutput()
	for line := range strings.SplitSeq(strings.TrimSpace(string(out)), "\n") {
		require.True(t, line == "" || strings.Contains(line, "missing date"), line)
	}
}
