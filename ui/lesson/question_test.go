package lesson_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// twoUp is the coarser of 1/16 in and 0.2 cm: nearer than that no answer can
// tell two results apart.
const twoUp = 2 * measure.Millimetre

// Every question knows at least two slips, held apart from the right result
// and from each other, on every body that lessons are given with.
func TestSlipsAreHeldApart(t *testing.T) {
	for _, b := range bodies(t) {
		s := sheet(t, b)
		for _, st := range s.Steps {
			q, ok := lesson.Ask(s, st.ID)
			require.True(t, ok, "%s, %s: no question", b.name, st.ID)
			switch q.Kind {
			case lesson.Number:
				require.GreaterOrEqual(t, len(q.Slips), 2, "%s, %s", b.name, st.ID)
				seen := []measure.Length{q.Right.Result()}
				for _, slip := range q.Slips {
					for _, l := range seen {
						require.Greater(t, math.Abs((slip.Sum.Result() - l).MM()), twoUp.MM(), "%s, %s: %s", b.name, st.ID, slip.Says.In(measure.In))
					}
					seen = append(seen, slip.Sum.Result())
				}
			case lesson.Place:
				require.GreaterOrEqual(t, len(q.Spots), 2, "%s, %s", b.name, st.ID)
			case lesson.Sentence:
				require.Len(t, q.Pick, 3, "%s, %s", b.name, st.ID)
				require.NotZero(t, q.RightPick())
			}
		}
	}
}

// On the bodies that lessons are given with no slip of a step is lost by
// lying too near to another.
func TestStepsKeepTheirSlips(t *testing.T) {
	numbers := map[string]int{}
	for _, b := range bodies(t) {
		s := sheet(t, b)
		for _, st := range s.Steps {
			if len(st.Slips) == 0 {
				continue
			}
			q, ok := lesson.AskFor(s, st.ID, lesson.Number)
			require.True(t, ok, "%s, %s: %d slips", b.name, st.ID, len(st.Slips))
			require.Len(t, q.Slips, len(st.Slips), "%s, %s", b.name, st.ID)
			numbers[s.Method]++
		}
	}
	require.Greater(t, numbers[pattern.Measured], 4*19)
	require.Greater(t, numbers[pattern.Thumb], 4*12)
}

// The question hides its answer.
func TestPromptsHideTheAnswer(t *testing.T) {
	words := text.English()
	for _, b := range bodies(t) {
		s, u := sheet(t, b), b.job.Unit
		for _, st := range s.Steps {
			q, ok := lesson.AskFor(s, st.ID, lesson.Number)
			if !ok {
				continue
			}
			asks := q.Prompt(words, u)
			require.Contains(t, asks, "?", st.ID)
			for _, w := range strings.FieldsFunc(asks, func(r rune) bool { return strings.ContainsRune("(),;:", r) }) {
				require.NotEqual(t, u.Tape(q.Right.Result()), strings.TrimSpace(w), "%s: %s", st.ID, asks)
			}
			require.NotContains(t, asks, " "+u.Tape(q.Right.Result())+" out", "%s: %s", st.ID, asks)
		}
	}
}

func TestNoQuestionWithoutAStep(t *testing.T) {
	s := p36(t, pattern.Measured)
	_, ok := lesson.Ask(s, "front.collar")
	require.False(t, ok)
	empty := workroom.Draft(pattern.Job{})
	_, ok = lesson.Ask(empty, "front.bust_width")
	require.False(t, ok, "a step that is not drawn is not asked about")
}

// A body that makes two slips equal still gets a question, of another kind.
func TestEqualSlipsAskOtherwise(t *testing.T) {
	job := p36(t, pattern.Measured).Job.WithStyle("ease_hip", pattern.LengthValue(0))
	s := workroom.Draft(job)
	_, ok := lesson.AskFor(s, "front.hip", lesson.Number)
	require.False(t, ok, "without ease both slips are right")
	for step, kind := range map[string]lesson.Kind{"front.hip": lesson.Sentence, "back.hip": lesson.Place} {
		q, ok := lesson.Ask(s, step)
		require.True(t, ok, step)
		require.Equal(t, kind, q.Kind, step)
	}
}

func TestHints(t *testing.T) {
	words := text.English()
	q, ok := lesson.Ask(p36(t, pattern.Measured), "front.bust_width")
	require.True(t, ok)
	require.Equal(t, "Hint 1 of 3: look at bust girth, shoulder drop, armhole depth, ease at the bust.", q.Hint(1, words, measure.In, false))
	require.Equal(t, "Hint 2 of 3: bust / 4 + ease / 4.", q.Hint(2, words, measure.In, false))
	require.Equal(t, "Hint 3 of 3: bust 36 / 4 + ease 2 1/2 / 4 = 9 5/8 in.", q.Hint(3, words, measure.In, false))
	require.Equal(t, "Hint 3 of 3: bust / 4 + ease 2 1/2 / 4 = 9 5/8 in.", q.Hint(9, words, measure.In, true))

	q, ok = lesson.Ask(p36(t, pattern.Measured), "front.neck_point")
	require.True(t, ok)
	require.Equal(t, lesson.Place, q.Kind)
	require.Equal(t, "Where does this mark lie: neck point?", q.Prompt(words, measure.In))
	require.Contains(t, q.Hint(2, words, measure.In, false), "opened along the shoulder")
	require.Contains(t, q.Hint(3, words, measure.In, false), "3 7/8 out and")

	q, ok = lesson.Ask(p36(t, pattern.Measured), "front.side")
	require.True(t, ok)
	require.Equal(t, lesson.Sentence, q.Kind)
	require.Equal(t, "Hint 1 of 3: think of the front, side seam.", q.Hint(1, words, measure.In, false))
	require.NotContains(t, q.Hint(2, words, measure.In, false), string(rune('0'+q.RightPick()))+".")
	require.Contains(t, q.Hint(3, words, measure.In, false), string(rune('0'+q.RightPick())))
}

func TestPseudoPasses(t *testing.T) {
	words := text.Pseudo()
	s := p36(t, pattern.Measured)
	for _, st := range s.Steps {
		q, _ := lesson.Ask(s, st.ID)
		said := q.Prompt(words, measure.In)
		for n := 1; n <= lesson.Hints; n++ {
			said += "\n" + q.Hint(n, words, measure.In, false)
		}
		require.Empty(t, text.Leaks(said, "in"), st.ID)
	}
}
