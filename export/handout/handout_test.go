package handout

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func TestWithout(t *testing.T) {
	for _, c := range []struct{ text, number, want string }{
		{"measure 9 5/8 out", "9 5/8", "measure ______ out"},
		{"2 down and 2 1/2 out", "2", "______ down and 2 1/2 out"},
		{"2 1/2 out", "1/2", "2 1/2 out"},
		{"1/2 in, 11/2", "1/2", "______ in, 11/2"},
		{"12 and 2.", "2", "12 and ______."},
		{"2.5 and 2", "2", "2.5 and ______"},
		{"0 out", "0", "0 out"},
		{"none", "", "none"},
		{"at 16 3/4, the hip at 24 3/4", "16 3/4", "at ______, the hip at 24 3/4"},
	} {
		require.Equal(t, c.want, without(c.text, c.number), "%q without %q", c.text, c.number)
	}
}

// The learner's sums tell neither her measures nor the result.
func TestSumsAreBlank(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	blanks := 0
	for _, st := range s.Steps {
		sum := blankSum(st, measure.In)
		if sum == "" {
			continue
		}
		blanks++
		require.True(t, strings.HasSuffix(sum, " = "+blank), sum)
		require.NotContains(t, sum, "36", st.ID)
	}
	require.Greater(t, blanks, 10)
}

func TestPrinted(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := accept.Dress(method)
		s.Job.Client.Notes = "left knee stiff"
		var a, b bytes.Buffer
		require.NoError(t, WritePDF(&a, s, Options{Unit: measure.In}))
		require.NoError(t, WritePDF(&b, s, Options{Unit: measure.In}))
		require.Equal(t, a.Bytes(), b.Bytes())
		path := filepath.Join(t.TempDir(), "a.pdf")
		require.NoError(t, os.WriteFile(path, a.Bytes(), 0o600))
		out, err := exec.Command(accept.Tool(t, "pdftotext"), path, "-").Output()
		require.NoError(t, err)
		text := string(out)
		require.NotContains(t, text, "Learner Four", "no name stands in it")
		require.NotContains(t, text, "knee stiff")
		require.NotContains(t, a.String(), "D:20260304", "nor a date")
		for _, st := range s.Steps {
			require.Contains(t, text, st.Title)
		}
		steps, _, ok := strings.Cut(text, "Key, for the tutor")
		require.True(t, ok)
		require.NotContains(t, steps, "bust 36")
	}
}
