package lesson_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

func TestTheCourse(t *testing.T) {
	var ids []string
	for _, l := range lesson.All() {
		ids = append(ids, l.ID)
		found, ok := lesson.Find(l.ID)
		require.True(t, ok)
		require.Equal(t, l.Title, found.Title)
		require.False(t, l.Aim.IsEmpty())
		require.False(t, l.Ends.IsEmpty())
		require.GreaterOrEqual(t, l.Minutes, 10, l.ID)
		require.LessOrEqual(t, l.Minutes, 20, l.ID)
		require.GreaterOrEqual(t, len(l.Pages), 8, l.ID)
		require.LessOrEqual(t, len(l.Pages), 14, "%s: one sitting", l.ID)
	}
	require.Equal(t, []string{"tape", "back", "front", "longer", "methods", "facings", "truing", "hem", "cloth", "fitting", "dart"}, ids)
	_, ok := lesson.Find("sleeve")
	require.False(t, ok)
}

// What a page shows is there, and its question knows two ways to be wrong, on
// every body that lessons are given with.
func TestPagesShowWhatIsThere(t *testing.T) {
	for _, b := range bodies(t) {
		for _, l := range lesson.All() {
			s := workroom.Draft(l.Job(b.job))
			require.True(t, l.Waits(s).IsEmpty(), "%s, %s: %s", b.name, l.ID, l.Waits(s).In(measure.In))
			asked := 0
			for i, p := range l.Pages {
				require.True(t, p.Show.There(s), "%s, page %d: %v", l.ID, i+1, p.Show)
				q, ok := p.Question(s)
				require.Equal(t, p.Asks(), ok, "%s, %s, page %d", b.name, l.ID, i+1)
				if !ok {
					continue
				}
				asked++
				require.NotEmpty(t, q.Prompt(text.English(), measure.In))
				require.GreaterOrEqual(t, max(len(q.Slips), len(q.Spots), len(q.Pick)-1), 2, "%s, page %d", l.ID, i+1)
				if q.Kind == lesson.Sentence {
					one(t, q)
				}
			}
			require.GreaterOrEqual(t, asked, 2, l.ID)
		}
	}
}

// one: exactly one sentence is right, no two are alike, and each has an answer.
func one(t *testing.T, q lesson.Question) {
	t.Helper()
	right, seen := 0, map[string]bool{}
	for i, o := range q.Pick {
		says := o.Says.In(measure.In)
		require.False(t, seen[says], says)
		seen[says] = true
		v := q.Judge(string(rune('1'+i)), measure.In)
		require.NotEmpty(t, v.Say(text.English(), measure.In), says)
		if o.Right {
			right++
			require.Equal(t, lesson.Right, v.Outcome)
		} else {
			require.Equal(t, lesson.Slipped, v.Outcome)
		}
	}
	require.Equal(t, 1, right)
}

// Right answers do not all stand at the same place.
func TestRightSentencesMove(t *testing.T) {
	at := map[int]int{}
	for _, l := range lesson.All() {
		s := workroom.Draft(l.Job(p36(t, pattern.Measured).Job))
		for _, p := range l.Pages {
			if q, ok := p.Question(s); ok && q.Kind == lesson.Sentence {
				at[q.RightPick()]++
			}
		}
	}
	total := at[1] + at[2] + at[3]
	for n := 1; n <= 3; n++ {
		require.Greater(t, at[n]*6, total, "right at %d: %v", n, at)
	}
}

var unsaid = regexp.MustCompile(`(?i)\b(invalid|errors?|please|success\w*|sorry|oops|illegal|wrong|failed|failure|abort|users?|very|simply|easily|just)\b`)

func TestLessonVoice(t *testing.T) {
	check := func(where string, s measure.Sentence, most int) {
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			words := s.In(u)
			require.NotEmpty(t, words, where)
			require.NotContains(t, words, "{", "%s: a gap is open", where)
			require.Empty(t, unsaid.FindString(words), "%s: %q", where, words)
			require.NotContains(t, words, "!", where)
			for _, r := range words {
				require.True(t, r >= ' ' && r <= '~', "%s: %q", where, words)
			}
			require.LessOrEqual(t, len(regexp.MustCompile(`[.?](\s|$)`).FindAllString(words, -1)), most, "%s: %q", where, words)
			for _, sentence := range regexp.MustCompile(`[.?;:]\s`).Split(words, -1) {
				require.LessOrEqual(t, len(strings.Fields(sentence)), 20, "%s: %q", where, sentence)
			}
		}
	}
	for _, l := range lesson.All() {
		check(l.ID, l.Aim, 1)
		check(l.ID, l.Ends, 0)
		for _, p := range l.Pages {
			check(l.ID, p.Words, 2)
			for _, s := range p.OwnWords() {
				check(l.ID, s, 2)
			}
		}
	}
	for _, f := range lesson.Faults() {
		check(f.ID, f.Says, 2)
	}
}

// Every new word stands in the glossary and is new once.
func TestWordsAreNewOnce(t *testing.T) {
	seen := map[string]string{}
	for _, l := range lesson.All() {
		for _, p := range l.Pages {
			if p.Word == "" {
				continue
			}
			_, ok := text.Explain(p.Word)
			require.True(t, ok, "%s: %q is not explained", l.ID, p.Word)
			require.Empty(t, seen[p.Word], "%q is new in %s too", p.Word, l.ID)
			seen[p.Word] = l.ID
		}
	}
	for _, w := range []string{"inset", "peg", "intake", "leg", "net", "middle of the armhole", "centre-back line"} {
		require.NotEmpty(t, seen[w], w)
	}
}

// A lesson waits where a step that it shows is not drawn, and says for what.
func TestLessonsWait(t *testing.T) {
	l, _ := lesson.Find("front")
	empty := workroom.Draft(l.Job(pattern.Job{}))
	require.Contains(t, l.Waits(empty).In(measure.In), "waits for the measurement")
	c, _ := lesson.Find("cloth")
	require.Empty(t, c.Waits(p36(t, pattern.Measured)).In(measure.In))
	require.Equal(t, pattern.Thumb, l.Job(pattern.Job{}).Style.Method())
}

func TestProgress(t *testing.T) {
	tape, _ := lesson.Find("tape")
	var p lesson.Progress
	require.Equal(t, lesson.New, p.State(tape))
	require.Equal(t, 1, p.Resume(tape))
	first, ok := p.Next()
	require.True(t, ok)
	require.Equal(t, "tape", first.ID)

	q := p.Answered("tape", 4)
	require.Nil(t, p, "progress is not changed in place")
	require.Equal(t, 5, q.Resume(tape))
	require.Equal(t, lesson.Begun, q.State(tape))
	require.Equal(t, q, q.Answered("tape", 2), "going back loses nothing")

	q = q.Answered("tape", len(tape.Pages))
	require.Equal(t, lesson.Done, q.State(tape))
	require.Equal(t, 1, q.Resume(tape))
	next, _ := q.Next()
	require.Equal(t, "back", next.ID)
	for _, l := range lesson.All() {
		q = q.Answered(l.ID, 99)
	}
	_, ok = q.Next()
	require.False(t, ok)
}

func TestWhatIf(t *testing.T) {
	job := p36(t, pattern.Measured).Job
	more, says := lesson.WhatIf(job, "bust_girth", lesson.Nudge(measure.In, true))
	require.Equal(t, "bust girth 36 -> 37 in", says.In(measure.In))
	l, _ := more.Body.Get(measure.BustGirth)
	require.Equal(t, 37*measure.Inch, l)
	back, _ := lesson.WhatIf(more, "bust_girth", -measure.Inch)
	require.True(t, back.Body.Equal(job.Body))

	deeper, says := lesson.WhatIf(job, "front_neck_depth", lesson.Nudge(measure.In, false))
	require.Equal(t, "Front neck depth 4 1/2 -> 4 3/4 in", says.In(measure.In))
	v, _ := deeper.Style.Get("front_neck_depth")
	require.InDelta(t, 4.75, v.Length.Inches(), 1e-9)

	same, says := lesson.WhatIf(job, "bust_girth", -36*measure.Inch)
	require.Equal(t, job, same)
	require.Equal(t, "bust girth stays 36 in.", says.In(measure.In))
	same, says = lesson.WhatIf(job, "hem_peg", -measure.Inch)
	require.Equal(t, job, same)
	require.Contains(t, says.In(measure.In), "stays 3/4 in.")
	same, _ = lesson.WhatIf(job, "sleeve", measure.Inch)
	require.Equal(t, job, same)
	_, says = lesson.WhatIf(pattern.Job{}, "bust_girth", measure.Inch)
	require.Equal(t, "bust girth is not known yet.", says.In(measure.In))

	require.Equal(t, 5*measure.Millimetre, lesson.Nudge(measure.Cm, false))
	require.Equal(t, 2*measure.Centimetre, lesson.Nudge(measure.Cm, true))
	ids := lesson.WhatIfs(workroom.Draft(job))
	require.Contains(t, ids, "side_neck_to_waist")
	require.Contains(t, ids, "hem_peg")
	for _, id := range ids {
		moved, _ := lesson.WhatIf(job, id, measure.Inch/4)
		require.NotEqual(t, job, moved, id)
	}
}

// A dart turns to every place that the choice has: the angle stays, the width
// goes with the distance, and the lesson shows each place.
func TestTheDartGoesRound(t *testing.T) {
	l, ok := lesson.Find("dart")
	require.True(t, ok)
	shown := map[string]bool{}
	for _, p := range l.Pages {
		if p.Show.What == lesson.OfTurn {
			shown[p.Show.ID] = true
		}
	}
	choice, ok := workroom.FindChoice(pattern.Dress, "bust_dart")
	require.True(t, ok)
	for _, b := range bodies(t) {
		job := l.Job(b.job)
		side := lesson.TurnOf(job, "side", workroom.Draft)
		require.True(t, side.Drawn, b.name)
		for _, o := range choice.Options {
			require.True(t, shown[o.Value], "no page turns the dart to %s", o.Value)
			turn := lesson.TurnOf(job, o.Value, workroom.Draft)
			require.True(t, turn.Drawn && turn.Sheet.Complete, "%s, %s", b.name, o.Value)
			require.Equal(t, o.Title, turn.Title)
			want := side.Degrees
			if o.Value == "side_and_waist" {
				want /= 2
			}
			require.InDelta(t, want, turn.Degrees, 0.1, "%s, %s", b.name, o.Value)
			require.InDelta(t, 2*turn.Far.MM()*math.Sin(turn.Degrees*math.Pi/360), turn.Wide.MM(), 0.05, "%s, %s", b.name, o.Value)
			d, _ := turn.Sheet.Piece(pattern.Front)
			require.NotEmpty(t, d.Darts)
		}
	}
}

// Without a dart there is none to turn, and a skirt has none.
func TestTheDartWaits(t *testing.T) {
	l, _ := lesson.Find("dart")
	flat := p36(t, pattern.Measured).Job.WithBody(measure.SideNeckToWaist, 16*measure.Inch)
	require.Contains(t, l.Waits(workroom.Draft(flat)).In(measure.In), "dart")
	skirt := p36(t, pattern.Measured).Job.WithStyle("garment", pattern.PickValue("skirt"))
	require.Equal(t, "it has no bust dart", l.Waits(workroom.Draft(skirt)).In(measure.In))
	require.Contains(t, l.Waits(workroom.Draft(pattern.Job{})).In(measure.In), "waits for")
	princess := p36(t, pattern.Measured).Job.WithStyle("panel_seam", pattern.PickValue("shoulder"))
	require.True(t, lesson.TurnOf(princess, "neck", workroom.Draft).Drawn, "a seam that takes the dart is left out")
}

// The sample client has all that the lessons read: no page about a check is
// about one that was skipped.
func TestTheSampleClientIsWhole(t *testing.T) {
	for _, b := range bodies(t)[:4] {
		for _, l := range lesson.All() {
			s := workroom.Draft(l.Job(b.job))
			for i, p := range l.Pages {
				if p.Show.What != lesson.OfCheck {
					continue
				}
				for _, f := range s.Findings {
					if f.Check == p.Show.ID {
						require.NotEqual(t, pattern.Skip, f.Verdict, "%s, page %d: %s", l.ID, i+1, f.Says.In(b.job.Unit))
					}
				}
			}
		}
	}
}
