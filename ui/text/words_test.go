package text

import (
	"regexp"
	"sort"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"
)

func TestGlossaryIsInOrderAndWhole(t *testing.T) {
	all := Glossary()
	require.Greater(t, len(all), 60)
	require.True(t, sort.SliceIsSorted(all, func(i, j int) bool { return all[i].Name < all[j].Name }))
	seen := map[string]bool{}
	for _, w := range all {
		require.False(t, seen[w.Name], w.Name)
		seen[w.Name] = true
		require.Equal(t, strings.ToLower(w.Name), w.Name)
		require.Regexp(t, `^[A-Z].*\.$`, w.Says, w.Name)
		require.NotRegexp(t, regexp.MustCompile(`(?i)\b(invalid|error|please|success\w*|simply|just|sorry)\b|!`), w.Says, w.Name)
		require.LessOrEqual(t, len(w.Says), 120, w.Name)
	}
}

// The words that the steps introduce one at a time are all explained.
func TestTaughtWordsAreThere(t *testing.T) {
	for _, name := range []string{"inset", "peg", "intake", "leg", "net", "middle of the armhole", "centre-back line", "dart", "grain line", "facing", "truing", "lay"} {
		_, ok := Explain(name)
		require.True(t, ok, name)
	}
}

func TestExplain(t *testing.T) {
	w, ok := Explain(" Darts ")
	require.True(t, ok)
	require.Equal(t, "dart", w.Name)
	w, ok = Explain("notches")
	require.True(t, ok)
	require.Equal(t, "notch", w.Name)
	_, ok = Explain("carburettor")
	require.False(t, ok)
}

// Taken as a whole the glossary reads at grade 7 or below (Flesch and Kincaid).
func TestGlossaryReadsEasily(t *testing.T) {
	var b strings.Builder
	for _, w := range Glossary() {
		b.WriteString(w.Says + " ")
	}
	require.LessOrEqual(t, grade(b.String()), 7.0)
}

// grade is the Flesch-Kincaid grade: 0.39 words a sentence + 11.8 syllables a
// word - 15.59.
func grade(s string) float64 {
	sentences := strings.Count(s, ".") + strings.Count(s, "?")
	list := strings.FieldsFunc(s, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' })
	syllables := 0
	for _, w := range list {
		syllables += countSyllables(strings.ToLower(w))
	}
	n := float64(len(list))
	return 0.39*n/float64(max(sentences, 1)) + 11.8*float64(syllables)/n - 15.59
}

// countSyllables counts runs of vowels, less a silent e at the end.
func countSyllables(w string) int {
	n, last := 0, false
	for _, r := range w {
		v := strings.ContainsRune("aeiouy", r)
		if v && !last {
			n++
		}
		last = v
	}
	if strings.HasSuffix(w, "e") && !strings.HasSuffix(w, "le") && n > 1 {
		n--
	}
	return max(n, 1)
}
