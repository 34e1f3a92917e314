package desk

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
)

func client(name string) Opened {
	return Opened{Path: "/x/" + name + ".chalkfold.toml", Saved: pattern.Job{Client: pattern.Client{Name: name}}}
}

func TestEachSeatHasItsOwnHistory(t *testing.T) {
	d := New(Settings{})
	require.True(t, d.Open(client("Anna")))
	require.Len(t, d.Seats(), 1, "the empty desk made room")
	a := d.At()
	d.Change(d.Job().WithBody(measure.BustGirth, 900), "Bust")
	require.True(t, d.Open(client("Bea")))
	b := d.At()
	require.False(t, d.Unsaved())
	require.False(t, d.CanUndo())
	require.Equal(t, "Anna", d.AllUnsaved()[0].Client)
	require.False(t, d.Open(client("Anna")), "it is open already, with its work")
	require.Equal(t, a, d.At())
	require.True(t, d.Unsaved())
	d.SavedIn(a, d.JobOf(a), "")
	require.Empty(t, d.AllUnsaved())
	require.True(t, d.Switch(b))
	require.False(t, d.Switch(99))
	require.Len(t, d.Works(), 2)
}

func TestRescuedWorkTakesThePlaceOfItsFile(t *testing.T) {
	d := New(Settings{})
	d.Open(client("Anna"))
	o := client("Anna")
	work := o.Saved.WithBody(measure.BustGirth, 900)
	o.Job = &work
	require.True(t, d.Open(o))
	require.Len(t, d.Seats(), 1)
	require.True(t, d.Unsaved())
}

func TestBeforeAClassNobodyHasAName(t *testing.T) {
	d := New(Settings{})
	d.Open(client("Anna"))
	d.Projecting, d.Private = true, true
	require.Equal(t, "the client", d.Client())
	require.Equal(t, "the client", d.Seats()[0].Client)
	d.Private = false
	require.Equal(t, "Anna", d.Client())
}

// Whatever is done at one seat, the others stay as they were left.
func TestSeatsDoNotTouchEachOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := New(Settings{})
		want := map[SeatID]pattern.Job{}
		for _, n := range []string{"Anna", "Bea", "Cleo"} {
			d.Open(client(n))
			want[d.At()] = d.Job()
		}
		for range rapid.IntRange(1, 30).Draw(t, "acts") {
			switch rapid.IntRange(0, 3).Draw(t, "act") {
			case 0:
				d.Switch(SeatID(rapid.IntRange(1, 3).Draw(t, "seat")))
			case 1:
				d.Change(d.Job().WithBody(measure.WaistGirth, measure.Length(rapid.IntRange(600, 640).Draw(t, "mm"))), "Waist")
			case 2:
				d.Undo()
			default:
				d.Redo()
			}
			want[d.At()] = d.Job()
			for id, job := range want {
				require.Equal(t, job, d.JobOf(id))
			}
		}
		for _, s := range d.Seats() {
			d.Switch(s.ID)
			for d.CanUndo() {
				d.Undo()
			}
			require.False(t, d.Unsaved())
		}
	})
}
