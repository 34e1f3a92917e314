package overlay

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/canvas"
	"chalkfold/ui/lesson"
)

// styles are drafts whose steps say and sum all that there is to say: each
// garment, each method, and the choices that draw something of their own.
func styles() []pattern.Style {
	var out []pattern.Style
	for _, g := range workroom.Garments() {
		s := pattern.Style{}.With("garment", pattern.PickValue(g.ID))
		out = append(out, s)
		for _, c := range workroom.Choices(g.ID) {
			for _, o := range c.Options {
				if c.ID != "garment" {
					out = append(out, s.With(c.ID, pattern.PickValue(o.Value)))
				}
			}
		}
	}
	for _, place := range []string{"waist", "side_and_waist"} {
		out = append(out, pattern.Style{}.With("bust_dart", pattern.PickValue(place)).With("waist_seam", pattern.SwitchValue(true)))
	}
	out = append(out, pattern.Style{}.With("bust_dart", pattern.PickValue("centre_front")).With("front_seam", pattern.SwitchValue(true)))
	return out
}

// footOf is what stands below the table at a size, the number left out, with
// every row held to its width.
func footOf(t *testing.T, p *Projector, cols, rows int, glyphs canvas.Glyphs) string {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(shown(p, cols, rows), "\n"), "\n")
	require.Len(t, lines, rows)
	number := ansi.StringWidth(canvas.Figures(itoa(p.Step()), glyphs)[0]) + 1
	var out []string
	for i, l := range lines {
		require.LessOrEqual(t, ansi.StringWidth(l), cols, l)
		if at := i - (rows - captionRows); at >= 0 {
			if at < numberRows {
				l = ansi.Cut(l, number, cols)
			}
			out = append(out, strings.Fields(l)...)
		}
	}
	return strings.Join(out, " ")
}

// told holds that all words stand in what was shown, in their order.
func told(t *testing.T, shown, words, where string) {
	t.Helper()
	at := 0
	seen := strings.Fields(shown)
	for _, w := range strings.Fields(words) {
		for at < len(seen) && seen[at] != w {
			at++
		}
		require.Less(t, at, len(seen), "%s: %q is lost of %q\nshown: %s", where, w, words, shown)
		at++
	}
}

// Nothing is lost at 64x20: of every step of every garment each word of its
// title, of what to do and of its sum is shown, or comes with Space.
func TestEveryStepIsWholeOnTheProjector(t *testing.T) {
	for _, glyphs := range []canvas.Glyphs{canvas.Braille, canvas.ASCII} {
		d, p := before(t, glyphs)
		base, seen, parted := d.Job(), map[string]bool{}, 0
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			for _, style := range styles() {
				job := base
				job.Style, job.Unit = style, u
				d.Change(job, "style")
				for _, st := range d.Sheet().Steps {
					body, sum := p.body(st), p.sum(st)
					if key := st.Title + body + sum; seen[key] {
						continue
					} else {
						seen[key] = true
					}
					p.goTo(st.Number)
					foot := footOf(t, p, 64, 20, glyphs)
					parts := p.parts
					for range parts - 1 {
						p.Do("show-next")
						require.Equal(t, st.Number, p.Step(), "Space shows the rest first")
						foot += " " + footOf(t, p, 64, 20, glyphs)
					}
					told(t, foot, d.Trade(st.Title), st.ID)
					told(t, foot, body, st.ID)
					told(t, foot, sum, st.ID)
					require.LessOrEqual(t, parts, 3, st.ID)
					if parts > 1 {
						parted++
						p.Do("show-back")
						require.Equal(t, st.Number, p.Step())
					}
				}
			}
		}
		require.Greater(t, len(seen), 300)
		require.Positive(t, parted)
		t.Logf("%d steps, %d of them in parts", len(seen), parted)
	}
}

// The default dress keeps its large number, and a key is seen beside all that
// is said.
func TestKeysAreSeenBesideTheWords(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		d, p := before(t, canvas.Braille)
		d.Change(d.Job().WithStyle("method", pattern.PickValue(method)), "method")
		p.Press("First step")
		for _, st := range d.Sheet().Steps {
			p.goTo(st.Number)
			for _, cols := range []int{64, 80, 120} {
				foot := footOf(t, p, cols, 20, canvas.Braille)
				require.Contains(t, foot, "-> First step", st.ID)
				require.Contains(t, foot, "of ", st.ID)
				if p.parts == 1 {
					told(t, foot, p.body(st), st.ID)
				}
			}
		}
	}
}

// Every page of every lesson, before and after its answer, is whole at 64x20 or
// comes in parts.
func TestEveryPageIsWholeOnTheProjector(t *testing.T) {
	for _, l := range lesson.All() {
		d, p := onLesson(t, l.ID, 1)
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			job := d.Job()
			job.Unit = u
			d.Change(job, "unit")
			for n := range l.Pages {
				p.turn(l, n+1)
				for range 2 {
					view := shown(p, 64, 20)
					for k := 1; k < p.parts; k++ {
						p.Do("show-next")
						require.Equal(t, n+1, p.Step())
						view += shown(p, 64, 20)
					}
					said := strings.Join(plainRows(p.pageBody(l, l.Pages[n], 64)), " ")
					told(t, view, said, l.ID)
					if st, ok := p.current(); ok && l.Pages[n].Show.What == lesson.OfStep && !l.Pages[n].Asks() && !l.Veils(n+1) {
						told(t, view, p.sum(st), l.ID)
					}
					p.sit.asked, p.part = false, 0
				}
			}
		}
	}
}

func plainRows(rows []string) []string {
	out := make([]string, len(rows))
	for i, r := range rows {
		out[i] = ansi.Strip(r)
	}
	return out
}

// Nobody on the table: a sentence, no levels of nobody, and Enter draws the
// sample client.
func TestNobodyOnTheProjector(t *testing.T) {
	at(t)
	d := newDesk(canvas.ASCII)
	d.Projecting, d.Private = true, true
	p := NewProjector(d, 1)
	view := shown(p, 64, 20)
	require.Contains(t, view, "Nobody is on the table yet.")
	require.Len(t, strings.Split(strings.TrimSpace(view), "\n"), 2, view)
	p.Do("show-what-if")
	p.Do("show-next")
	require.Nil(t, p.what)
	ask := p.Do("show-step")
	require.NotNil(t, ask.Take)
	require.NotZero(t, ask.Take.Saved.Body.Len())
}
