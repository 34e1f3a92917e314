package text

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestSay(t *testing.T) {
	en := English()
	require.Equal(t, "Saved learner 14:02", en.Say(Saved, "learner", "14:02"))
	require.Equal(t, "Nothing to undo.", en.Say(NothingToUndo))
	require.Equal(t, "Step 10 of 31", en.Say(DraftStep, 10, 31))
	require.Equal(t, "Step 10 of {2}", en.Say(DraftStep, 10), "a slot left empty is seen")
	require.Equal(t, "Undone: {2} {1}", en.Say(Undone, "{2} {1}", "x"), "what is put in is not read again")
	require.Equal(t, "Nothing to undo.", Catalogue{}.Say(NothingToUndo, "too many"))
	require.Equal(t, "Mark the underarm 9 5/8 out.", en.Pass("Mark the underarm 9 5/8 out."))
}

func TestCount(t *testing.T) {
	require.Equal(t, "1 later step follows.", English().Count(1, OneChange, ManyChanges))
	require.Equal(t, "3 later steps follow.", English().Count(3, OneChange, ManyChanges))
}

func TestPseudo(t *testing.T) {
	p := Pseudo()
	require.Equal(t, "Šáávééď learner 14:02 óóó", p.Say(Saved, "learner", "14:02"))
	for name, s := range sentences(t) {
		got := p.Pass(s)
		require.Empty(t, Leaks(got), name)
		n, m := utf8.RuneCountInString(s), utf8.RuneCountInString(got)
		if strings.ContainsAny(s, "aeiouAEIOU") {
			require.GreaterOrEqual(t, float64(m), 1.4*float64(n), "%s: %q", name, got)
			require.LessOrEqual(t, float64(m), 1.4*float64(n)+5, "%s: %q", name, got)
		}
		for _, slot := range []string{"{1}", "{2}", "{3}", "{4}"} {
			require.Equal(t, strings.Count(s, slot), strings.Count(got, slot), name)
		}
	}
}

// Passing twice is passing once: a sentence may come through two hands.
func TestPassTwice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.String().Draw(t, "s")
		once := Pseudo().Pass(s)
		if twice := Pseudo().Pass(once); twice != once {
			t.Fatalf("%q, then %q", once, twice)
		}
		if English().Pass(s) != s {
			t.Fatal("English changes nothing")
		}
	})
}

func TestLeaks(t *testing.T) {
	screen := Pseudo().Say(NothingToUndo) + "\nEnter " + Pseudo().Pass("Next") + "  never passed 9 in"
	require.Equal(t, []string{"never", "passed", "in"}, Leaks(screen, "Enter or F1"))
}

func TestPlain(t *testing.T) {
	for in, want := range map[string]string{
		"9½ in": "9 1/2 in", "½": "1/2", "bust  ¼": "bust  1/4", "72 → 70": "72 -> 70", "Größe": "Größe", "plain": "plain",
		"a…": "a...", "17°": "17 degrees", "1⁄2": "1/2",
	} {
		require.Equal(t, want, Plain(in))
	}
}
