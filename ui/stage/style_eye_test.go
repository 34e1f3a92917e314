package stage

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

// atPick is the stage at a pick, its options drafted.
func atPick(t testing.TB, d *desk.Desk, id string) *Style {
	s := NewStyle(d)
	s.refresh()
	at := s.form.find(id)
	require.GreaterOrEqual(t, at, 0, id)
	s.form.to(at)
	s.form.typing = true
	looked(t, s, s.Follow())
	return s
}

// looked does the errand that was asked for.
func looked(t testing.TB, s *Style, ask desk.Ask) {
	t.Helper()
	require.NotNil(t, ask.Run)
	s.Hear(ask.Run())
}

func eyeDesk(g canvas.Glyphs) *desk.Desk {
	d := desk.New(desk.Settings{Glyphs: g, Aspect: 2})
	body := map[measure.ID]measure.Length{}
	for id, inches := range map[measure.ID]float64{
		measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5, measure.AcrossShoulders: 15,
		measure.ShoulderDrop: 1.5, measure.AcrossBack: 13.75, measure.AcrossFront: 12.75, measure.BackNeckToWaist: 16, measure.SideNeckToWaist: 17.75,
		measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25, measure.WaistToHip: 8, measure.WaistToKnee: 23,
	} {
		body[id] = measure.In.Length(inches)
	}
	job := pattern.Job{Unit: measure.In, Body: measure.NewBody(body)}
	d.Take(desk.Opened{Saved: job})
	return d
}

func plainView(s *Style, r desk.Rect) string {
	var b strings.Builder
	for _, l := range s.View(r) {
		b.WriteString(strings.TrimRight(ansi.Strip(l), " ") + "\n")
	}
	return b.String()
}

func TestChoosingByEye(t *testing.T) {
	for _, c := range []struct {
		name, pick string
		g          canvas.Glyphs
		r          desk.Rect
	}{
		{"eye-80", "front_neckline", canvas.Braille, desk.Rect{Columns: 80, Rows: 21}},
		{"eye-120", "bust_dart", canvas.Braille, desk.Rect{Columns: 120, Rows: 37}},
		{"eye-160", "front_neckline", canvas.Braille, desk.Rect{Columns: 160, Rows: 42}},
		{"eye-ascii", "waist_shaping", canvas.ASCII, desk.Rect{Columns: 80, Rows: 21}},
	} {
		s := atPick(t, eyeDesk(c.g), c.pick)
		got := plainView(s, c.r)
		ch, _, _ := s.choice()
		for _, o := range ch.Options {
			require.Contains(t, got, strings.Fields(o.Title)[0], "%s: each option has its name", c.name)
		}
		golden.Check(t, c.name+".txt", ansi.Strip(strings.Join(s.small(s.look.shows.cols, s.look.shows.rows), "\n"))+"\n")
		for _, l := range s.View(c.r) {
			require.LessOrEqual(t, ansi.StringWidth(l), c.r.Columns, c.name)
		}
	}
}

// What was drafted for another job is never shown for this one.
func TestTheEyeFollowsTheJob(t *testing.T) {
	d := eyeDesk(canvas.Braille)
	s := atPick(t, d, "skirt_line")
	r := desk.Rect{Columns: 80, Rows: 21}
	require.Contains(t, plainView(s, r), ">Pegged")
	require.Nil(t, s.Follow().Run, "it is known")
	ask := s.Do("text-right")
	require.NotNil(t, ask.Job)
	require.Nil(t, ask.Run, "the root comes back after the change")
	d.Change(*ask.Job, ask.Says)
	require.NotContains(t, plainView(s, r), ">Straight ", "not yet drafted: the cloth")
	looked(t, s, s.Follow())
	require.Contains(t, plainView(s, r), ">Straight")
	d.Undo()
	require.Nil(t, s.Follow().Run, "it is still known")
	require.Contains(t, plainView(s, r), ">Pegged")

	// Moving on to a number brings the cloth back; to a pick, its outlines.
	ask = s.Do("field-down")
	for range 40 {
		if _, pick := s.pick(); pick {
			break
		}
		require.Nil(t, ask.Run)
		require.NotContains(t, plainView(s, r), ">Pegged ")
		ask = s.Do("field-down")
	}
	require.NotNil(t, ask.Run)
	s.Do(keys.Back)
	require.False(t, s.form.typing)
}

func TestTheEyeSaysWhyNot(t *testing.T) {
	d := eyeDesk(canvas.Braille)
	d.Change(d.Job().WithStyle("closure", pattern.PickValue("zip_side")), "zip at the side")
	s := atPick(t, d, "front_neckline")
	require.NotEmpty(t, s.refusals())
	require.Contains(t, plainView(s, desk.Rect{Columns: 160, Rows: 42}), "! ")
}

func TestTheEyeInLittleRoom(t *testing.T) {
	s := atPick(t, eyeDesk(canvas.Braille), "front_neckline")
	for _, r := range []desk.Rect{{Columns: 60, Rows: 13}, {Columns: 80, Rows: 17}, {Columns: 30, Rows: 6}, {Columns: 5, Rows: 2}} {
		require.Len(t, s.View(r), r.Rows)
	}
}

func BenchmarkEyeKey(b *testing.B) {
	s := atPick(b, eyeDesk(canvas.Braille), "front_neckline")
	r := desk.Rect{Columns: 160, Rows: 42}
	for b.Loop() {
		s.look.lines = nil // another size, another theme
		s.View(r)
	}
}
