package overlay

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/lesson"
)

// onLesson is the projector with a lesson at a page.
func onLesson(t *testing.T, id string, page int) (*desk.Desk, *Projector) {
	d, p := before(t, canvas.ASCII)
	l, ok := lesson.Find(id)
	require.True(t, ok)
	d.Study(desk.Running{ID: id, Page: page, Method: l.Method})
	return d, p
}

// A lesson before a class: the question, silence, the answer on a key, then the
// next page; the bench and her progress stay where they are.
func TestALessonOnTheProjector(t *testing.T) {
	d, p := onLesson(t, "back", 5)
	golden.Check(t, "projector-lesson-ask.txt", shown(p, 64, 20))
	p.Do("show-next")
	golden.Check(t, "projector-lesson-told.txt", shown(p, 64, 20))
	require.Equal(t, 5, p.Step())
	p.Do("show-next")
	require.Equal(t, 6, p.Step())
	p.Do("show-back")
	require.Contains(t, shown(p, 64, 20), "?", "a question that was answered is asked again")
	typed(p, "12")
	p.Do("show-step")
	require.Equal(t, 12, p.Step())
	typed(p, "99")
	p.Do("show-step")
	require.Contains(t, shown(p, 64, 20), "There is no page 99")
	p.Do("show-last")
	p.Do("show-next")
	require.Contains(t, shown(p, 64, 20), "That was the last page.")
	require.Equal(t, 5, d.Running().Page)
	require.Empty(t, d.Learnt())
	d.Study(desk.Running{})
	require.Contains(t, shown(p, 64, 20), "of 37")
}

// Every page of every lesson is complete at 64x20 and hides her measures: the
// question with all its answers, then what is right, within the screen and with
// some of the cloth above it.
func TestEveryLessonPageIsCompleteOnTheProjector(t *testing.T) {
	for _, l := range lesson.All() {
		d, p := onLesson(t, l.ID, 1)
		bust, _ := d.Job().Body.Get(measure.BustGirth)
		for n := 1; n <= len(l.Pages); n++ {
			p.turn(l, n)
			page := l.Pages[n-1]
			for range 2 {
				view := shown(p, 64, 20)
				lines := strings.Split(strings.TrimSuffix(view, "\n"), "\n")
				require.Len(t, lines, 20)
				said := strings.Join(strings.Fields(view), " ")
				require.NotContains(t, view, "Anna")
				require.NotContains(t, view, "bust "+d.Unit().Tape(bust))
				require.Contains(t, said, page.Words.In(d.Unit()), "%s, page %d", l.ID, n)
				if q, ok := page.Question(d.Sheet()); ok && p.sit.asked {
					for _, o := range q.Pick {
						require.Contains(t, said, o.Says.In(d.Unit()), "%s, page %d", l.ID, n)
					}
				} else if ok {
					require.Contains(t, said, q.Answer(d.Words, d.Unit(), true), "%s, page %d", l.ID, n)
				}
				p.sit.asked = false
			}
		}
	}
}

// What if on the projector begins with the measure that the page is about.
func TestWhatIfOnALessonPage(t *testing.T) {
	_, p := onLesson(t, "longer", 2)
	require.Contains(t, shown(p, 80, 24), "w moves it before the class.")
	p.Do("show-what-if")
	p.Type(desk.Key{Name: "up"})
	require.Contains(t, shown(p, 80, 24), "over the bust +1/4")
	require.Contains(t, shown(p, 80, 24), "dart intake 1/4 wider")
	p.Type(desk.Key{Name: "esc"})
	require.Nil(t, p.what)
}

// The cross-hair reads the tape before the class, and Enter holds it against
// the question that stands.
func TestTheCrossHairOnTheProjector(t *testing.T) {
	d, p := onLesson(t, "longer", 6)
	shown(p, 100, 30)
	p.Do("cross")
	require.True(t, p.Raw())
	view := shown(p, 100, 30)
	require.Regexp(t, ` out, .* down`, view)
	p.Type(desk.Key{Name: "enter"})
	require.Contains(t, shown(p, 100, 30), "look again")
	tip, ok := d.Sheet().Point(pattern.Front, "dart_tip")
	require.True(t, ok)
	for range 400 {
		at, _ := p.seen.Under(p.eye.Hairs)
		across, down := p.seen.Cell()
		switch {
		case at.At.Y < tip.Y-across/2:
			p.Type(desk.Key{Name: "right"})
		case at.At.Y > tip.Y+across/2:
			p.Type(desk.Key{Name: "left"})
		case at.At.X < tip.X-down/2:
			p.Type(desk.Key{Name: "down"})
		case at.At.X > tip.X+down/2:
			p.Type(desk.Key{Name: "up"})
		default:
			p.Type(desk.Key{Name: "enter"})
			require.Contains(t, shown(p, 100, 30), "Right: ")
			require.False(t, p.eye.Hair)
			return
		}
	}
	t.Fatal("the tip was not reached")
}

// The projector turns the dart: the width is not drawn before the answer, then
// it lies over the dart in the side.
func TestADartGoesRoundBeforeTheClass(t *testing.T) {
	_, p := onLesson(t, "dart", 4)
	require.NotContains(t, shown(p, 64, 20), "1 5/8")
	require.Nil(t, p.scene(14).Old)
	p.Do("show-next")
	view := shown(p, 64, 20)
	require.Contains(t, view, "= 1 5/8 in")
	require.Contains(t, view, "9.5 degrees")
	require.Equal(t, "side", p.scene(14).Old.Pick("bust_dart"))
	require.Equal(t, "shoulder", p.scene(14).Sheet.Pick("bust_dart"))
}
