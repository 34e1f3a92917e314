package text

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sentences reads every constant of type ID from the source, so that none
// can be forgotten in a list.
func sentences(t *testing.T) map[string]string {
	t.Helper()
	list, err := os.ReadDir(".")
	require.NoError(t, err)
	all := map[string]string{}
	for _, e := range list {
		if !strings.HasSuffix(e.Name(), ".go") || strings.HasSuffix(e.Name(), "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), e.Name(), nil, 0)
		require.NoError(t, err)
		for _, d := range file.Decls {
			g, ok := d.(*ast.GenDecl)
			if !ok || g.Tok != token.CONST {
				continue
			}
			for _, s := range g.Specs {
				v := s.(*ast.ValueSpec)
				if id, ok := v.Type.(*ast.Ident); !ok || id.Name != "ID" {
					continue
				}
				lit, ok := v.Values[0].(*ast.BasicLit)
				require.True(t, ok, "%s is not written out", v.Names[0].Name)
				text, err := strconv.Unquote(lit.Value)
				require.NoError(t, err)
				all[v.Names[0].Name] = text
			}
		}
	}
	require.Greater(t, len(all), 200, "the sentences were not found")
	require.Equal(t, string(StartLearn), all["StartLearn"])
	return all
}

// faults are the breaches of the house's voice in one sentence.
func faults(s string) []string {
	var found []string
	for _, w := range []string{
		"invalid", "error", "errors", "please", "successfully", "success", "sorry", "oops", "illegal", "wrong", "bad",
		"failed", "failure", "abort", "user", "very", "simply", "easy", "easily", "just", "cannot be null",
	} {
		if regexp.MustCompile(`(?i)\b` + w + `\b`).MatchString(s) {
			found = append(found, "says "+w)
		}
	}
	for _, r := range s {
		if r < ' ' || r > '~' {
			found = append(found, "has more than ASCII")
			break
		}
	}
	if strings.Contains(s, "!") {
		found = append(found, "shouts")
	}
	if s == "" || strings.TrimSpace(s) != s && !strings.HasSuffix(s, "> ") {
		found = append(found, "begins or ends with a blank, or is empty")
	}
	if n := len(regexp.MustCompile(`[.?](\s|$)`).FindAllString(s, -1)); n > 2 {
		found = append(found, "has more than two sentences")
	}
	for _, one := range regexp.MustCompile(`[.?;:]\s`).Split(s, -1) {
		if len(strings.Fields(one)) > 16 && !strings.Contains(s, ", step N, ") {
			found = append(found, "has a sentence of more than 16 words")
		}
	}
	return found
}

func TestVoice(t *testing.T) {
	for name, s := range sentences(t) {
		require.Empty(t, faults(s), "%s: %q", name, s)
	}
}

func TestVoiceFindsFaults(t *testing.T) {
	for _, s := range []string{
		"Invalid value.", "Please save.", "An error came.", "Saved successfully.", "Saved!", " x", "", "½ in", "One. Two. Three.",
		"This is a sentence that goes on and on until nobody knows any more how it began",
	} {
		require.NotEmpty(t, faults(s), s)
	}
}

// Slots are numbered from 1 without gaps.
func TestSlots(t *testing.T) {
	slot := regexp.MustCompile(`\{[^}]*\}`)
	for name, s := range sentences(t) {
		used := map[string]bool{}
		for _, m := range slot.FindAllString(s, -1) {
			used[m] = true
		}
		for i := range len(used) {
			require.True(t, used["{"+strconv.Itoa(i+1)+"}"], "%s: %q", name, s)
		}
	}
}

// A line fits a screen of 80 columns; what explains (Says, How) may be wrapped
// onto a second one.
func TestLength(t *testing.T) {
	for name, s := range sentences(t) {
		limit := 76
		if strings.HasSuffix(name, "Says") || strings.HasSuffix(name, "How") || name == "LinearWords" {
			limit = 2 * 76
		}
		require.LessOrEqual(t, len(s), limit, "%s: %q", name, s)
	}
}
