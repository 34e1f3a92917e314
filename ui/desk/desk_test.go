package desk

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
	"chalkfold/ui/text"
)

func TestUndoNamesWhatItTookBack(t *testing.T) {
	d := New(Settings{})
	require.False(t, d.Unsaved())
	require.True(t, d.Change(d.Job().WithBody(measure.WaistGirth, 700), "Waist 70 cm"))
	require.True(t, d.Change(d.Job().WithBody(measure.WaistGirth, 720), "Waist 70 -> 72 cm"))
	require.False(t, d.Change(d.Job(), "nothing"), "what changes nothing is no entry")
	require.True(t, d.Unsaved())
	says, ok := d.Undo()
	require.True(t, ok)
	require.Equal(t, "Waist 70 -> 72 cm", says)
	says, _ = d.Undo()
	require.Equal(t, "Waist 70 cm", says)
	require.False(t, d.Unsaved())
	_, ok = d.Undo()
	require.False(t, ok)
	says, _ = d.Redo()
	require.Equal(t, "Waist 70 cm", says)
}

func TestUndoAllIsTheStartAndRedoAllTheEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := New(Settings{})
		start, ids := d.Job(), []measure.ID{measure.BustGirth, measure.WaistGirth, measure.HipGirth}
		for range rapid.IntRange(0, 20).Draw(t, "edits") {
			switch rapid.IntRange(0, 3).Draw(t, "what") {
			case 0:
				d.Change(d.Job().WithBody(rapid.SampledFrom(ids).Draw(t, "id"), measure.Length(rapid.IntRange(600, 603).Draw(t, "mm"))), "set")
			case 1:
				d.Change(d.Job().WithoutBody(rapid.SampledFrom(ids).Draw(t, "id")), "out")
			case 2:
				d.Undo()
			case 3:
				d.Redo()
			}
		}
		for d.CanRedo() {
			d.Redo()
		}
		end := d.Job()
		for d.CanUndo() {
			d.Undo()
		}
		require.Equal(t, start, d.Job())
		require.False(t, d.Unsaved())
		for d.CanRedo() {
			d.Redo()
		}
		require.Equal(t, end, d.Job())
	})
}

func TestSavingAnOlderJobLeavesTheStar(t *testing.T) {
	d := New(Settings{})
	d.Change(d.Job().WithBody(measure.BustGirth, 900), "a")
	then := d.Job()
	d.Change(d.Job().WithBody(measure.BustGirth, 910), "b")
	d.MarkSaved(then, "/x/anna.chalkfold.toml")
	require.True(t, d.Unsaved())
	require.Equal(t, "anna", d.Stem())
	d.Undo()
	require.False(t, d.Unsaved())
}

func TestTheSheetFollowsTheJob(t *testing.T) {
	d := New(Settings{})
	a := d.Sheet()
	require.Same(t, a, d.Sheet())
	d.Change(d.Job().WithBody(measure.BustGirth, 900), "a")
	require.NotSame(t, a, d.Sheet())
	d.Undo()
	require.Equal(t, a, d.Sheet())
}

func TestTakingAnotherSessionForgetsTheHistory(t *testing.T) {
	d := New(Settings{})
	d.Change(d.Job().WithBody(measure.BustGirth, 900), "a")
	other := pattern.Job{Client: pattern.Client{Name: "Anna\x1b[31m Example"}}
	work := other.WithBody(measure.BustGirth, 950)
	d.Take(Opened{Saved: other, Job: &work})
	require.False(t, d.CanUndo())
	require.True(t, d.Unsaved(), "rescued work is not saved")
	require.Equal(t, "Anna [31m Example", d.Plain(d.Client()))
}

func TestPlainFollowsTheGlyphs(t *testing.T) {
	d := New(Settings{Glyphs: canvas.ASCII})
	require.Equal(t, "9 1/2", d.Plain("9½"))
	require.Equal(t, "9½", New(Settings{}).Plain("9½"))
	require.Equal(t, "Nothing to undo.", d.Tell(text.NothingToUndo))
}

func TestBlockIsExactlyItsSize(t *testing.T) {
	require.Equal(t, []string{"abc", "", ""}, Block([]string{"abcdef"}, Rect{3, 3}))
	require.Equal(t, "ab   ", Fit("ab", 5))
	require.Equal(t, "ab", Fit("abc", 2))
	require.Empty(t, Block(nil, Rect{3, -1}))
}

func Example() {
	d := New(Settings{})
	d.Change(d.Job().WithBody(measure.WaistGirth, measure.In.Length(28)), "Waist 28 in")
	says, _ := d.Undo()
	fmt.Println("Undone:", says)
	fmt.Println(d.Unsaved())
	// Output:
	// Undone: Waist 28 in
	// false
}
