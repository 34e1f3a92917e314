package stage

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
)

// turnPage is the draft with the lesson of the dart at the page that first
// turns it to a place.
func turnPage(t *testing.T, place string) (*Draft, user) {
	t.Helper()
	l, _ := lesson.Find("dart")
	for i, p := range l.Pages {
		if p.Show != (lesson.Show{What: lesson.OfTurn, ID: place}) {
			continue
		}
		d := bench36(t)
		s := NewDraft(d)
		r := desk.Running{ID: l.ID, Page: i + 1, Method: l.Method}
		d.Study(r)
		s.Study(r)
		return s, user{t, d, s}
	}
	require.FailNow(t, "no page", place)
	return nil, user{}
}

// A page that turns the dart shows it there and in the side, in numbers and on
// the cloth, and Enter keeps it with the seam that it ends in.
func TestADartIsTurnedAndKept(t *testing.T) {
	s, u := turnPage(t, "waist")
	view := ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 80, Rows: 28}), "\n"))
	require.Contains(t, view, "Waist: 1 5/16 in wide, 7 1/2 in from the bust point, 9.9 degrees.")
	require.Contains(t, view, "Side: 1 in wide, 5 13/16 in from the bust point, 9.9 degrees.")
	small := ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 64, Rows: 17}), "\n"))
	require.Contains(t, small, "BUST DART   Waist")
	require.Contains(t, strings.Join(strings.Fields(small), " "), "Waist: 1 5/16 in wide, 7 1/2 in from the bust point, 9.9 degrees.")
	sc := s.scene(desk.Rect{Columns: 80, Rows: 21})
	require.Equal(t, "side", sc.Old.Pick("bust_dart"))
	require.Equal(t, "waist", sc.Sheet.Pick("bust_dart"))
	require.Equal(t, "side", u.d.Sheet().Pick("bust_dart"), "nothing is kept yet")
	ask := u.do(keys.Accept)
	require.Equal(t, "Bust dart: waist.", ask.Says)
	require.True(t, u.d.Sheet().Complete)
	v, _ := u.d.Job().Style.Get("bust_dart")
	require.Equal(t, "waist", v.Pick)
	v, _ = u.d.Job().Style.Get("waist_seam")
	require.True(t, v.On)
}

// While its width is asked for, the dart is not yet drawn where it goes.
func TestATurnedDartHidesItsWidth(t *testing.T) {
	s, u := turnPage(t, "shoulder")
	require.True(t, s.Asking())
	require.Equal(t, "side", s.scene(desk.Rect{Columns: 80, Rows: 21}).Sheet.Pick("bust_dart"))
	require.NotContains(t, ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 80, Rows: 24}), "\n")), "1 5/8")
	u.types("1")
	u.do("answer")
	require.Contains(t, ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 80, Rows: 24}), "\n")), "That is the width in the side.")
	s.AskType(desk.Key{Name: "ctrl+u"})
	u.types("1 5/8")
	u.do("answer")
	require.False(t, s.Asking())
	require.Contains(t, ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 80, Rows: 28}), "\n")), "Shoulder: 1 5/8 in wide")
}

// A dart that cannot lie there says why, and cannot be kept.
func TestATurnedDartThatCannotBe(t *testing.T) {
	s, u := turnPage(t, "neck")
	job := u.d.Job().WithStyle("neck_dart_start", pattern.LengthValue(200))
	u.d.Change(job, "neck dart")
	if s.Asking() {
		u.do("skip")
	}
	view := ansi.Strip(strings.Join(s.View(desk.Rect{Columns: 80, Rows: 28}), "\n"))
	require.Contains(t, view, "lies outside the neck")
	require.Nil(t, u.do(keys.Accept).Job)
}
