package lesson_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// gradeMost is the reading level to hold: a learner of the seventh grade.
const gradeMost = 7.0

// grade is the Flesch-Kincaid grade (Kincaid and others 1975) of a text,
// figures left out. A sentence ends at a full stop or a question mark.
func grade(s string) float64 {
	sentences, words, syllables := 0, 0, 0
	for _, one := range regexp.MustCompile(`[.?!](\s|$)`).Split(s, -1) {
		n, figure := 0, false
		for _, w := range strings.FieldsFunc(one, func(r rune) bool {
			return !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == '\'' || r >= '0' && r <= '9')
		}) {
			if strings.ContainsAny(w, "0123456789") {
				figure = true
				continue
			}
			if unit := figure && (w == "in" || w == "cm" || w == "mm"); unit {
				figure = false
				continue
			}
			figure = false
			n++
			syllables += beats(w)
		}
		if n > 0 {
			sentences++
			words += n
		}
	}
	if words == 0 {
		return 0
	}
	return 0.39*float64(words)/float64(sentences) + 11.8*float64(syllables)/float64(words) - 15.59
}

var vowels = regexp.MustCompile(`[aeiouy]+`)

// beats counts the syllables of a word: groups of vowels, without an e that is
// not heard.
func beats(w string) int {
	w = strings.TrimSuffix(strings.ToLower(w), "'s")
	n := len(vowels.FindAllString(w, -1))
	switch {
	case strings.HasSuffix(w, "tre"), strings.HasSuffix(w, "tres"):
	case strings.HasSuffix(w, "le") && len(w) > 2 && !strings.ContainsRune("aeiouy", rune(w[len(w)-3])):
	case strings.HasSuffix(w, "ted"), strings.HasSuffix(w, "ded"), strings.HasSuffix(w, "ces"), strings.HasSuffix(w, "ses"), strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "ges"):
	case strings.HasSuffix(w, "e"), strings.HasSuffix(w, "es"), strings.HasSuffix(w, "ed"):
		if n > 1 && !strings.HasSuffix(w, "ee") && !strings.HasSuffix(w, "eed") {
			n--
		}
	}
	if strings.Contains(w, "something") || strings.Contains(w, "sideways") {
		n-- // the e within is not heard
	}
	return max(n, 1)
}

func TestTheCounter(t *testing.T) {
	for w, n := range map[string]int{
		"cat": 1, "line": 1, "lines": 1, "table": 2, "level": 2, "measure": 2, "armhole": 2, "shoulder": 2, "quarter": 2, "needed": 2, "pressed": 1,
		"allowance": 3, "edges": 2, "seed": 1, "the": 1, "body": 2, "inches": 2, "centimetre": 4, "folded": 2, "tree": 1,
	} {
		require.Equal(t, n, beats(w), w)
	}
	require.Less(t, grade("The cat sat on the mat. It was warm."), 2.0)
	require.Greater(t, grade("Considerable dimensional irregularities necessitate comprehensive reconsideration of the manufacturing methodology."), 15.0)
	require.Equal(t, grade("Mark it. Go on."), grade("Mark it 9 5/8. Go on 12."), "figures are left out")
}

// lessonText is every sentence of a lesson.
func lessonText(l lesson.Lesson) string {
	parts := []string{l.Title + ".", l.Aim.In(measure.In), l.Ends.In(measure.In) + "."}
	for _, p := range l.Pages {
		parts = append(parts, p.Words.In(measure.In))
		for _, s := range p.OwnWords() {
			parts = append(parts, closed(s.In(measure.In)))
		}
	}
	return strings.Join(parts, " ")
}

func closed(s string) string {
	if s != "" && !strings.HasSuffix(s, ".") && !strings.HasSuffix(s, "?") {
		s += "."
	}
	return s
}

func TestLessonsReadPlainly(t *testing.T) {
	for _, l := range lesson.All() {
		g := grade(lessonText(l))
		t.Logf("%s: %.1f", l.ID, g)
		require.LessOrEqual(t, g, gradeMost, l.ID)
	}
	for _, f := range lesson.Faults() {
		require.LessOrEqual(t, grade(f.Title+". "+f.Says.In(measure.In)), gradeMost, f.ID)
	}
}

// A step with all its texts, in both units, by both methods.
func TestStepsReadPlainly(t *testing.T) {
	for _, b := range bodies(t) {
		s := sheet(t, b)
		for _, st := range s.Steps {
			all := []string{st.Title, st.Do.In(b.job.Unit), st.Why.In(b.job.Unit), st.Slip.In(b.job.Unit)}
			for _, x := range st.Slips {
				all = append(all, x.Says.In(b.job.Unit))
			}
			for i := range all {
				all[i] = closed(all[i])
			}
			if g := grade(strings.Join(all, " ")); g > gradeMost {
				t.Errorf("%s, %s: grade %.1f", b.name, st.ID, g)
			}
		}
	}
}

func TestHelpReadsPlainly(t *testing.T) {
	var words, does []string
	for _, w := range text.Glossary() {
		words = append(words, w.Says)
		require.LessOrEqual(t, grade(w.Says), gradeMost+3, "%s: %s", w.Name, w.Says) // a line alone may be a little harder
	}
	for _, a := range keys.Table() {
		does = append(does, closed(a.Says))
	}
	require.NotEmpty(t, does)
	require.LessOrEqual(t, grade(strings.Join(words, " ")), gradeMost)
	require.LessOrEqual(t, grade(strings.Join(does, " ")), gradeMost)
}
