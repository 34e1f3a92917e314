package lesson_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

// Bust 36, ease 2 1/2: the right answer is 9 5/8; slips are 11 1/2, 9, 18 5/8.
func TestJudgeInInches(t *testing.T) {
	q, ok := lesson.Ask(p36(t, pattern.Measured), "front.bust_width")
	require.True(t, ok)
	for _, c := range []struct {
		answer string
		want   lesson.Outcome
		says   string
	}{
		{"9 5/8", lesson.Right, "Right: 9 5/8 in. A quarter of the girth goes on each quarter of the dress."},
		{"9 11/16", lesson.Right, "Right: 9 5/8 in."},
		{"9 9/16", lesson.Right, "Right: 9 5/8 in."},
		{"24.4 cm", lesson.Right, "Right: 9 5/8 in."},
		{"11 1/2", lesson.Slipped, "The whole ease was added to one quarter: it is shared by four quarters too."},
		{"9", lesson.Slipped, "The ease is left out: a dress as tight as the tape."},
		{"18 5/8", lesson.Slipped, "That is half of her; front and back lie double, so a quarter is used."},
		{"24.4", lesson.OtherUnit, "That is centimetres."},
		{"244.5", lesson.OtherUnit, "That is millimetres."},
		{"4 13/16", lesson.Half, "That is half of it."},
		{"38 1/2", lesson.AllRound, "That is all round; here lies a quarter of her."},
		{"9 1/2", lesson.Nearly, "Nearly: 9 1/2 in, and it is 9 5/8 in. It was brought to a whole 1/4 in too early."},
		{"9 13/16", lesson.Nearly, "Nearly: 9 13/16 in, and it is 9 5/8 in. Keep the fractions to the end of the sum."},
		{"9 7/8", lesson.Nearly, "Nearly: 9 7/8 in, and it is 9 5/8 in."},
		{"7", lesson.Missed, ""},
		{"24.4 in", lesson.Missed, ""},
		{"9 5/", lesson.Unread, "9 5/"},
		{"", lesson.Unread, ""},
		{"-9", lesson.Unread, ""},
	} {
		v := q.Judge(c.answer, measure.In)
		require.Equal(t, c.want, v.Outcome, c.answer)
		require.Contains(t, v.Say(text.English(), measure.In), c.says, c.answer)
		require.Equal(t, c.want == lesson.Right || c.want == lesson.Nearly, v.Closed(), c.answer)
	}
}

func TestJudgeInCentimetres(t *testing.T) {
	s := p36(t, pattern.Measured)
	s.Job.Unit = measure.Cm
	q, ok := lesson.Ask(s, "front.bust_width") // 24.4475
	require.True(t, ok)
	for answer, want := range map[string]lesson.Outcome{
		"24.4": lesson.Right, "24.6": lesson.Right, "24,3": lesson.Right, "24.7": lesson.Nearly, "25": lesson.Nearly, "25.1": lesson.Missed,
		"9 5/8": lesson.OtherUnit, "245": lesson.OtherUnit, "22.9": lesson.Slipped, "97.8": lesson.AllRound, "12.2": lesson.Half,
	} {
		require.Equal(t, want, q.Judge(answer, measure.Cm).Outcome, answer)
	}
	require.Equal(t, "That is inches.", q.Judge("9 5/8", measure.Cm).Say(text.English(), measure.Cm))
	require.Contains(t, q.Judge("25", measure.Cm).Say(text.English(), measure.Cm), "a whole 1 cm too early")
}

// The right answer, read off the tape, is right in every unit; so is every
// slip that slip.
func TestTheTapeIsRight(t *testing.T) {
	for _, b := range bodies(t) {
		s, u := sheet(t, b), b.job.Unit
		for _, st := range s.Steps {
			q, ok := lesson.AskFor(s, st.ID, lesson.Number)
			if !ok {
				continue
			}
			require.Equal(t, lesson.Right, q.Judge(u.Tape(q.Right.Result()), u).Outcome, "%s, %s", b.name, st.ID)
			for _, slip := range q.Slips {
				v := q.Judge(u.Say(slip.Sum.Result()), u)
				require.Equal(t, lesson.Slipped, v.Outcome, "%s, %s: %s", b.name, st.ID, u.Say(slip.Sum.Result()))
				require.Equal(t, slip.Says.In(u), v.Slip.In(u), "%s, %s", b.name, st.ID)
			}
		}
	}
}

func TestJudgePlace(t *testing.T) {
	q, ok := lesson.Ask(p36(t, pattern.Measured), "front.neck_point")
	require.True(t, ok)
	require.Equal(t, "neck_point", q.Mark)
	in := measure.Inch
	for _, c := range []struct {
		dx, dy, half measure.Length
		want         lesson.Outcome
	}{
		{0, 0, 0, lesson.Right},
		{in / 16, -in / 16, 0, lesson.Right},
		{in / 8, 0, 0, lesson.Nearly},
		{in / 8, 0, in / 8, lesson.Right},
		{in/8 + 0.1, 0, in / 8, lesson.Nearly},
		{in / 4, in / 4, 0, lesson.Nearly},
		{0, 2 * in, in / 8, lesson.Missed},
	} {
		v := q.Within(c.half, c.half).JudgePlace(q.X+c.dx, q.Y+c.dy)
		require.Equal(t, c.want, v.Outcome, "%+v", c)
	}
	for _, spot := range q.Spots {
		v := q.JudgePlace(spot.X, spot.Y)
		require.Equal(t, lesson.Slipped, v.Outcome)
		require.Equal(t, spot.Says.In(measure.In), v.Say(text.English(), measure.In))
	}
	require.Contains(t, q.Spots[0].Says.In(measure.In), "Slide along the shoulder line")
}

func TestATypedPlace(t *testing.T) {
	q, ok := lesson.AskFor(p36(t, pattern.Measured), "front.hip", lesson.Place) // 10 out, 25 3/4 down
	require.True(t, ok)
	for answer, want := range map[string]lesson.Outcome{
		"10 out, 25 3/4 down": lesson.Right, "10; 25 3/4": lesson.Right, "25.4 cm out 65.4 cm down": lesson.Right, "10, 25.75": lesson.Right,
		"25 3/4 out, 10 down": lesson.Slipped, "9 1/2 out, 25 3/4 down": lesson.Slipped, "10 1/4 out, 25 3/4 down": lesson.Nearly,
		"3 out, 3 down": lesson.Missed, "ten": lesson.Unread, "10 out, x down": lesson.Unread,
	} {
		require.Equal(t, want, q.Judge(answer, measure.In).Outcome, answer)
	}
	require.Equal(t, "Type it like 9 out, 7 down.", q.Judge("ten", measure.In).Say(text.English(), measure.In))
	require.Contains(t, q.Judge("10 out, 25 3/4 down", measure.In).Say(text.English(), measure.In), "Right: 10 out, 25 3/4 down.")
	require.Contains(t, q.Judge("10 1/4 out, 25 3/4 down", measure.In).Say(text.English(), measure.In), "Nearly: 10 1/4 out and 25 3/4 down; it is 10 out")
}

func TestJudgeASentence(t *testing.T) {
	s := p36(t, pattern.Measured)
	q, ok := lesson.Ask(s, "front.side")
	require.True(t, ok)
	for i, o := range q.Pick {
		v := q.Judge(string(rune('1'+i))+".", measure.In)
		if o.Right {
			require.Equal(t, lesson.Right, v.Outcome)
			require.Contains(t, v.Say(text.English(), measure.In), q.Why.In(measure.In))
			continue
		}
		require.Equal(t, lesson.Slipped, v.Outcome)
		require.Contains(t, v.Say(text.English(), measure.In), "That belongs elsewhere: "+o.Other)
	}
	for _, answer := range []string{"", "0", "4", "side"} {
		require.Equal(t, lesson.Unread, q.Judge(answer, measure.In).Outcome, answer)
	}
	require.Equal(t, "Type the number of a sentence, 1 to 3.", q.Judge("x", measure.In).Say(text.English(), measure.In))
}

// Whatever is typed, there is one outcome, and it has words unless a hint
// follows.
func TestAnyAnswer(t *testing.T) {
	s := p36(t, pattern.Measured)
	rapid.Check(t, func(t *rapid.T) {
		st := s.Steps[rapid.IntRange(0, len(s.Steps)-1).Draw(t, "step")]
		q, ok := lesson.Ask(s, st.ID)
		if !ok {
			t.Fatal("no question")
		}
		answer := rapid.OneOf(rapid.String(), rapid.StringMatching(`[0-9]{1,3}( [0-9]/[0-9]{1,2})?( out, [0-9]{1,2} down)?`)).Draw(t, "answer")
		v := q.Judge(answer, measure.In)
		if said := v.Say(text.English(), measure.In); (said == "") != (v.Outcome == lesson.Missed) {
			t.Fatalf("%q: %d says %q", answer, v.Outcome, said)
		}
	})
}

func FuzzJudge(f *testing.F) {
	s := p36(f, pattern.Measured)
	for _, seed := range []string{"9 5/8", "10 out, 3 down", "2", "", "9½", "1/0", "1/08", "out", ", "} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, answer string) {
		for _, kind := range []lesson.Kind{lesson.Number, lesson.Place, lesson.Sentence} {
			q, ok := lesson.AskFor(s, "front.hip", kind)
			if !ok {
				t.Fatal("no question")
			}
			said := q.Judge(answer, measure.In).Say(text.English(), measure.In)
			if strings.ContainsAny(said, "\x00\x1b") {
				t.Fatalf("%q is said as %q", answer, said)
			}
		}
	})
}
