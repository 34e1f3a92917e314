package overlay

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
)

// before is the projector before a class with the sample client renamed, so
// that she has something to hide.
func before(t *testing.T, g canvas.Glyphs) (*desk.Desk, *Projector) {
	at(t)
	d := withSample(t, g)
	job := d.Job()
	job.Client.Name, job.Client.Notes = "Anna Example", "left hip higher"
	d.Take(desk.Opened{Saved: job})
	d.Projecting, d.Private = true, true
	return d, NewProjector(d, 9)
}

func TestProjectorIsCompleteAtItsSizes(t *testing.T) {
	_, p := before(t, canvas.ASCII)
	p.Do("show-next")
	p.Press("Next")
	golden.Check(t, "projector-64.txt", shown(p, 64, 20))
	golden.Check(t, "projector-80.txt", shown(p, 80, 24))
	p.Release(p.serial - 1)
	require.Contains(t, shown(p, 64, 20), "-> Next", "another key was pressed since")
	p.Release(p.serial)
	require.NotContains(t, shown(p, 64, 20), "->")
}

func TestHerNumbersAreHiddenUntilAsked(t *testing.T) {
	d, p := before(t, canvas.ASCII)
	bust, _ := d.Job().Body.Get(measure.BustGirth)
	for _, st := range d.Sheet().Steps {
		p.goTo(st.Number)
		text := shown(p, 100, 30)
		require.NotContains(t, text, "Anna")
		require.NotContains(t, text, "higher")
		require.NotContains(t, text, "bust "+d.Unit().Tape(bust))
	}
	require.NotContains(t, shown(Leave(d), 80, 24), "Anna")
	p.goTo(step(d, "front.bust_width"))
	require.Contains(t, shown(p, 80, 24), "bust / 4")
	p.Do("private")
	require.Contains(t, shown(p, 80, 24), "Her numbers show")
	p.Do("zoom-in")
	require.Contains(t, shown(p, 100, 24), "bust "+d.Unit().Tape(bust))
	require.True(t, session.IsDemo(Sample(d)))
	require.False(t, session.IsDemo(d.Job()))
}

func step(d *desk.Desk, id string) int {
	for _, st := range d.Sheet().Steps {
		if st.ID == id {
			return st.Number
		}
	}
	return 0
}

func TestProjectorGoesByKeyAndNumber(t *testing.T) {
	d, p := before(t, canvas.ASCII)
	n := len(d.Sheet().Steps)
	p.Do("show-first")
	p.Do("show-back")
	require.Equal(t, 1, p.Step())
	p.Do("show-last")
	p.Do("show-next")
	require.Equal(t, n, p.Step())
	require.Contains(t, shown(p, 64, 20), "All pieces are drawn")
	for _, digit := range "12" {
		p.Type(desk.Key{Name: string(digit), Runes: []rune{digit}})
	}
	require.Contains(t, shown(p, 64, 20), "-> step 12_")
	p.Do("show-step")
	require.Equal(t, 12, p.Step())
	typed(p, "99")
	p.Do("show-step")
	require.Equal(t, 12, p.Step())
	require.Contains(t, shown(p, 64, 20), "There is no step 99")
	p.View(desk.Rect{Columns: 64, Rows: 20})
	p.Do("zoom-in")
	require.False(t, p.eye.Fits())
	typed(p, "0")
	require.True(t, p.eye.Fits(), "0 alone shows all")
	p.Do("blank")
	require.Empty(t, strings.TrimSpace(shown(p, 64, 20)))
	p.Wake()
	require.NotEmpty(t, strings.TrimSpace(shown(p, 64, 20)))
	require.True(t, p.Do("show-end").Close)
	require.NotNil(t, p.Do("show-steps").Open)
}

func TestAQuestionComesFirstAndSpaceReveals(t *testing.T) {
	d, p := before(t, canvas.ASCII)
	p.Do("show-ask")
	to := step(d, "front.bust_width")
	p.goTo(to - 1)
	p.asked = false
	p.Do("show-next")
	require.Equal(t, to, p.Step())
	require.Contains(t, shown(p, 80, 24), "?")
	require.NotContains(t, shown(p, 80, 24), "bust / 4")
	p.Do("show-next")
	require.Equal(t, to, p.Step(), "revealed")
	require.Contains(t, shown(p, 80, 24), "bust / 4")
}

func TestWhatIfBeforeTheClass(t *testing.T) {
	d, p := before(t, canvas.ASCII)
	was := d.Job()
	p.Do("show-what-if")
	require.True(t, p.Raw())
	p.Type(desk.Key{Name: "up"})
	text := shown(p, 80, 24)
	require.Contains(t, text, "+1/4", "her figure stays hidden")
	require.Contains(t, text, "more")
	p.Type(desk.Key{Name: "down"})
	p.Type(desk.Key{Name: "pgup"})
	ask := p.Type(desk.Key{Name: "enter"})
	require.NotNil(t, ask.Job)
	require.Contains(t, ask.Says, "->")
	require.False(t, p.Raw())
	p.Do("show-what-if")
	p.Type(desk.Key{Name: "right"})
	p.Type(desk.Key{Name: "pgdown"})
	require.Nil(t, p.Type(desk.Key{Name: "esc"}).Job)
	require.Equal(t, was, d.Job(), "put back")
}

func TestProjectorLinesAreThick(t *testing.T) {
	_, p := before(t, canvas.Braille)
	count := func() int {
		n := 0
		for _, r := range ansi.Strip(strings.Join(p.table(80, 20), "")) {
			if r >= 0x2800 && r < 0x2900 {
				for b := r - 0x2800; b > 0; b >>= 1 {
					n += int(b & 1)
				}
			}
		}
		return n
	}
	p.Do("show-last")
	require.Greater(t, count(), 700, "outlines are two dots thick")
}
