package card

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
)

func textOf(t *testing.T, s *pattern.Sheet, u measure.Unit) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, WriteText(&b, s, Options{Unit: u}))
	return b.String()
}

func markdownOf(t *testing.T, s *pattern.Sheet, u measure.Unit) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, WriteMarkdown(&b, s, Options{Unit: u}))
	return b.String()
}

func figures() map[string]*pattern.Sheet {
	thumb := plainFigure
	thumb.thumb = true
	flat := plainFigure
	flat.dart, flat.straight = 0, true
	return map[string]*pattern.Sheet{"measured": plainFigure.sheet(), "thumb": thumb.sheet(), "no dart": flat.sheet()}
}

func TestNoMinusAndNoLineTooLong(t *testing.T) {
	for name, s := range figures() {
		for _, u := range []measure.Unit{measure.In, measure.Cm, measure.Mm} {
			text := textOf(t, s, u)
			require.NotRegexp(t, regexp.MustCompile(`-\d|−`), text, name)
			for _, l := range strings.Split(text, "\n") {
				require.LessOrEqual(t, utf8.RuneCountInString(l), 80, "%s %s: %s", name, u, l)
			}
			require.Contains(t, text, "beyond the centre ", name)
		}
	}
	require.Contains(t, textOf(t, plainFigure.sheet(), measure.In), "up 1/8")
}

func TestSameDraftSameBytes(t *testing.T) {
	require.Equal(t, textOf(t, plainFigure.sheet(), measure.In), textOf(t, plainFigure.sheet(), measure.In))
	require.Equal(t, markdownOf(t, plainFigure.sheet(), measure.Cm), markdownOf(t, plainFigure.sheet(), measure.Cm))
}

func TestMarkdownHasTheSameRows(t *testing.T) {
	s := plainFigure.sheet()
	g := gridOf(measure.In)
	text, md := textOf(t, s, measure.In), markdownOf(t, s, measure.In)
	for _, p := range Make(s, measure.In).Pieces {
		for _, r := range p.Rows {
			c := cells(r, g)
			require.Contains(t, md, "| "+strings.Join(c[:], " | ")+" |")
			require.Regexp(t, strings.Join([]string{c[2], c[3], `\|`, c[4], c[5]}, ` +`), text)
		}
	}
}

func TestMarkdownNamesAreNotMarkup(t *testing.T) {
	s := plainFigure.sheet()
	s.Job.Client.Name = "A|b *c* <d> [e](f) `g` #h _i_"
	md := markdownOf(t, s, measure.In)
	require.Contains(t, md, `A\|b \*c\* \<d> \[e\](f) \`+"`g\\` \\#h \\_i\\_")
}

func TestUnfinishedDraftIsRefused(t *testing.T) {
	s := plainFigure.sheet()
	s.Complete = false
	s.Missing = []pattern.Missing{{ID: measure.HipGirth, For: "the hip line"}}
	err := WriteText(&bytes.Buffer{}, s, Options{})
	require.ErrorContains(t, err, "measure hip girth")
	require.ErrorContains(t, WriteMarkdown(&bytes.Buffer{}, s, Options{}), "not finished")

	s.Missing = nil
	s.Refused = []pattern.Refused{{Says: measure.Tell("the dart opens by {}", measure.Inch), Cure: measure.Tell("measure the front again")}}
	require.ErrorContains(t, WriteText(&bytes.Buffer{}, s, Options{}), "the dart opens by 1; measure the front again")

	empty := Make(&pattern.Sheet{}, measure.Cm)
	require.Empty(t, empty.Pieces)
	require.Zero(t, empty.Marks)
}

func TestSaidWithTheResult(t *testing.T) {
	s := plainFigure.sheet()
	s.Figures = []pattern.Figure{{ID: measure.AcrossFront, Value: 12.75 * measure.Inch, Proposed: true}}
	text := strings.Join(strings.Fields(textOf(t, s, measure.In)), " ")
	for _, want := range []string{
		"17 3/4 here, 16 3/4 on the back: the dart eats the difference",
		"round the corner by 1/16",
		"Proposed, not measured: across front",
		"Fold it down on its legs and pin it BEFORE the side is ruled",
		"no line strays more than 0.1",
		"[ ] shoulder",
		"side under the dart",
		"Try it in cheap cloth first",
		"cut 1 on the fold",
		"cut a pair, right and left",
	} {
		require.Contains(t, text, want)
	}
	require.NotContains(t, text, "no ease")
	require.NotContains(t, text, "Do not cut")
	s.Findings = []pattern.Finding{{Verdict: pattern.Fail, Title: "Side seams meet", Says: measure.Tell("{} and {}", 32*measure.Inch, 33*measure.Inch)}}
	require.Contains(t, textOf(t, s, measure.In), "Do not cut yet, truing fails: Side seams meet. 32 and 33")
	require.Regexp(t, `Sew the sides with \S+ ?\S*, not .*, or there is no ease`,
		strings.Join(strings.Fields(textOf(t, figures()["thumb"], measure.In)), " "))
}

func TestWrapKeepsMixedNumbers(t *testing.T) {
	for width := 6; width < 40; width++ {
		for _, l := range wrap("one 17 3/4 here, 16 3/4 there and 1/8 more", width) {
			require.NotRegexp(t, `^\d/\d`, strings.TrimPrefix(l, "1/8"))
		}
	}
}

// A shoulder dart parts the shoulder: its proof adds the parts up. A dart
// inside the piece has no edge to be folded at.
func TestDartsOffTheSide(t *testing.T) {
	s := accept.Odd(1, "Learner Four", "", 2)
	text := textOf(t, s, measure.In)
	require.Contains(t, text, "shoulder, its parts together ")
	require.NotContains(t, text, "its dart folded")
	require.Contains(t, text, "BEFORE the shoulder")
	require.NotContains(t, text, "BEFORE the side")
	require.Contains(t, text, "Waist dart, inside the piece: nothing is cut there. Points:")
	require.NotContains(t, text, "above the waist, last of all")
	require.Contains(t, text, "FRONT FACING", "a facing in one is marked, not traced")

	strips := textOf(t, accept.Odd(1, "", "", 3), measure.In)
	require.Contains(t, strips, "Bias: fold a corner")
	require.NotContains(t, strips, "NECK STRIP")
}

// In every style each line that is chalked by the card, read back, stays within
// the bound of the drafted one, and the card says so. What lies between the legs
// of a dart is cut folded and not chalked.
func TestStylesKeepTheBound(t *testing.T) {
	for style := range accept.Styles() {
		for k, u := range []measure.Unit{measure.In, measure.Cm} {
			s, bound := accept.Odd([]float64{1, 1.15}[k], "", "", style), gridOf(u).bound
			require.LessOrEqual(t, Make(s, u).Stray, bound, "style %d", style)
			read, err := readCard(textOf(t, s, u), u.Length(1).MM())
			require.NoError(t, err)
			for _, p := range s.Pieces {
				if isTraced(&p) {
					continue
				}
				require.Equal(t, strings.ToLower(p.Title), read[0].title)
				if p.Along("dart") == 0 {
					require.LessOrEqual(t, apart(read[0].chalk(true), drafted(p, true).Flatten(0.02)), bound.MM(), "style %d, %s", style, p.ID)
					require.LessOrEqual(t, apart(read[0].chalk(false), drafted(p, false).Flatten(0.02)), bound.MM(), "style %d, %s", style, p.ID)
				}
				read = read[1:]
			}
			require.Empty(t, read)
		}
	}
}
