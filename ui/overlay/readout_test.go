package overlay

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	chalk "chalkfold/export/card"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/testdata/golden"
	"chalkfold/ui/canvas"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
)

// fulfilled does what the root does with an Ask of the readout.
func fulfilled(d *desk.Desk, a desk.Ask) bool {
	if a.Done != nil {
		d.Learn(*a.Done)
	}
	return a.Close
}

func TestReadoutLooks(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	r := Readout(d).(*readout)
	golden.Check(t, "readout-set.txt", shown(r, 80, 22))
	for r.pieces[r.at].Items[r.item].Mark == nil {
		r.Do("choose")
	}
	r.Do("choose")
	golden.Check(t, "readout-60.txt", shown(r, 60, 14))
	golden.Check(t, "readout-80.txt", shown(r, 80, 22))
}

// Every mark of the card is read out, both methods, in the words of the tape,
// and is whole on the least screen.
func TestEveryMarkIsReadOut(t *testing.T) {
	at(t)
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			d := withSample(t, canvas.Braille)
			job := session.InUnit(d.Job(), u)
			d.Change(job.WithStyle(pattern.Method, pattern.PickValue(method)), "method")
			c := chalk.Make(d.Sheet(), u)
			r := Readout(d).(*readout)
			seen, ended := 0, 0
			for closed := false; !closed; {
				require.Less(t, seen+ended, 1000)
				p := r.pieces[r.at]
				screen := shown(r, 60, 13)
				switch {
				case r.item == len(p.Items):
					ended++
					require.Contains(t, screen, c.Pieces[r.at].Title+" is marked")
				case p.Items[r.item].Mark != nil:
					seen++
					i := p.Items[r.item]
					for _, rows := range [][3]string{large(u.Tape(max(i.Mark.Down, -i.Mark.Down)), canvas.Braille), large(u.Tape(max(i.Mark.Out, -i.Mark.Out)), canvas.Braille)} {
						for _, row := range rows {
							require.Contains(t, screen, strings.TrimRight(row, " "))
						}
					}
					require.Contains(t, screen, map[bool]string{true: " up ", false: " down "}[i.Mark.Down < 0])
					require.Contains(t, screen, map[bool]string{true: " beyond the centre ", false: " out "}[i.Mark.Out < 0])
					for _, n := range i.Notes {
						require.Contains(t, strings.Join(strings.Fields(screen), " "), capital(n)+".", i.Name)
					}
				}
				closed = fulfilled(d, r.Do("choose"))
			}
			require.Equal(t, len(c.Pieces), ended)
			asides := 0
			for _, p := range c.Pieces {
				for _, row := range p.Rows {
					if row.AsideCut {
						asides++
					}
					if row.AsideStitch {
						asides++
					}
				}
			}
			require.Equal(t, c.Marks+asides, seen, "%s %s", method, u)
		}
	}
}

func TestReadoutGoesOnWhereSheStopped(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	r := Readout(d).(*readout)
	for range 5 {
		fulfilled(d, r.Do("choose"))
	}
	r.Type(desk.Key{Name: "left"})
	require.Equal(t, 4, r.item)
	require.Contains(t, shown(r, 80, 22), "[ticked]")
	require.True(t, fulfilled(d, r.Do("close")))

	// Over the file, too.
	require.NoError(t, d.Store().Save(d.Job()))
	s, err := session.Open(d.Path())
	require.NoError(t, err)
	require.Empty(t, s.LastLesson(), "marking is no lesson")
	d.Take(desk.Opened{Store: s, Path: d.Path(), Saved: s.Job})
	r = Readout(d).(*readout)
	require.Equal(t, []int{0, 5}, []int{r.at, r.item})

	// Another card begins anew; the old one is not forgotten.
	job := d.Job()
	d.Change(job.WithStyle("front_neck_depth", pattern.LengthValue(5*measure.Inch)), "deeper")
	require.Equal(t, 0, Readout(d).(*readout).item)
	d.Undo()
	require.Equal(t, 5, Readout(d).(*readout).item)
}

func TestReadoutAnotherTime(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	r := Readout(d).(*readout)
	for !fulfilled(d, r.Do("choose")) {
	}
	r = Readout(d).(*readout)
	require.Equal(t, []int{0, 0}, []int{r.at, r.item}, "all is marked: a second time from the beginning")
	fulfilled(d, r.Do("choose"))
	fulfilled(d, r.Do("choose"))
	require.Equal(t, 2, Readout(d).(*readout).item, "and that is kept as well")
}

func TestReadoutKeys(t *testing.T) {
	at(t)
	d := withSample(t, canvas.ASCII)
	r := Readout(d).(*readout)
	r.Do("row-up")
	require.Equal(t, 0, r.item)
	r.Do("page-down")
	require.Equal(t, 1, r.at)
	r.Do("page-down")
	require.Equal(t, 1, r.at)
	r.Type(desk.Key{Name: "left"})
	require.Equal(t, []int{0, len(r.pieces[0].Items)}, []int{r.at, r.item})
	require.Contains(t, shown(r, 80, 22), "Enter goes on to back.")
	r.Type(desk.Key{Name: "right"})
	require.Equal(t, len(r.pieces[0].Items), r.item)
	require.Nil(t, r.Type(desk.Key{Runes: []rune("x")}).Done)
	r.Do("page-down")
	r.Do("page-up")
	require.Equal(t, []int{0, 0}, []int{r.at, r.item})
	require.NotNil(t, r.Type(desk.Key{Name: " ", Runes: []rune(" ")}).Done)
	for _, o := range r.Actions() {
		_, ok := d.Keys.Find(o.ID)
		require.True(t, ok, o.ID)
	}
}

func TestReadoutWithoutACard(t *testing.T) {
	at(t)
	d := newDesk(canvas.ASCII)
	r := Readout(d)
	require.Contains(t, shown(r, 60, 13), "No card yet")
	require.True(t, r.Do("choose").Close)
	for _, id := range []keys.ID{"row-up", "row-down", "page-up", "page-down", "close"} {
		r.Do(id)
	}
}

func TestLargeNumbers(t *testing.T) {
	require.Equal(t, [3]string{"     _    /  _ ", "  |   |  /  |_|", "  |   | /   |_|"}, large("17/8", canvas.ASCII))
	for _, n := range []string{"16 7/8", "1086", "45.6", "45,6", "0", "1/2"} {
		rows := large(n, canvas.Braille)
		require.NotEmpty(t, strings.TrimSpace(rows[2]))
		require.Equal(t, len([]rune(rows[0])), len([]rune(rows[1])), n)
		require.Equal(t, len([]rune(rows[0])), len([]rune(rows[2])), n)
		require.LessOrEqual(t, len([]rune(rows[0])), 36, "%s fits beside its word on 60 columns", n)
	}
}
