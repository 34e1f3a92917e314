package lesson_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/lesson"
)

// TestTruingFindsEveryFault: the sound sheet passes the check, the faulty one
// does not, and the finding speaks of the fault's own check.
func TestTruingFindsEveryFault(t *testing.T) {
	require.Len(t, lesson.Faults(), 8)
	for _, b := range bodies(t) {
		if b.job.Style.Method() != pattern.Measured {
			continue
		}
		sound := sheet(t, b)
		for _, f := range lesson.Faults() {
			was, ok := f.Finding(sound)
			require.True(t, ok, f.ID)
			require.Equal(t, pattern.Pass, was.Verdict, "%s, %s: %s", b.name, f.ID, was.Says.In(measure.In))
			bad, ok := f.Of(sound)
			require.True(t, ok, "%s, %s", b.name, f.ID)
			got, ok := f.Finding(bad)
			require.True(t, ok, f.ID)
			require.Contains(t, []pattern.Verdict{pattern.Advise, pattern.Fail}, got.Verdict, "%s, %s: %s", b.name, f.ID, got.Says.In(measure.In))
			t.Logf("%s, %s: %s %s", b.name, f.ID, got.Verdict, got.Says.In(b.job.Unit))
		}
	}
}

func TestAFaultLeavesTheSheetAlone(t *testing.T) {
	sound := p36(t, pattern.Measured)
	for _, f := range lesson.Faults() {
		_, ok := f.Of(sound)
		require.True(t, ok, f.ID)
		require.True(t, reflect.DeepEqual(sound, workroom.Draft(sound.Job)), f.ID)
	}
}

// A faulty piece still has one closed line: only the fault is to be found.
func TestFaultyPiecesStayWhole(t *testing.T) {
	for _, f := range lesson.Faults() {
		bad, ok := f.Of(p36(t, pattern.Measured))
		require.True(t, ok)
		for _, p := range bad.Pieces {
			require.True(t, p.Stitch.Closed(), "%s, %s", f.ID, p.ID)
			require.True(t, p.CutLine.Closed(), "%s, %s", f.ID, p.ID)
		}
		for _, x := range bad.Findings {
			if x.Check == "outline_simple" {
				require.Equal(t, pattern.Pass, x.Verdict, "%s: %s", f.ID, x.Says.In(measure.In))
			}
		}
	}
}

func TestFaultsNeedTheirPart(t *testing.T) {
	legs, ok := lesson.FindFault("dart_legs")
	require.True(t, ok)
	_, ok = legs.Of(p36(t, pattern.Thumb))
	require.False(t, ok, "the faults are those of a measured draft")
	_, ok = legs.Of(workroom.Draft(pattern.Job{}))
	require.False(t, ok)
	straight := p36(t, pattern.Measured).Job.WithStyle("hem_peg", pattern.LengthValue(0))
	hem, _ := lesson.FindFault("hem_plain")
	_, ok = hem.Of(workroom.Draft(straight))
	require.False(t, ok, "a straight hem is its own mirror")
	_, ok = lesson.FindFault("none")
	require.False(t, ok)
}

// The class guesses: no title may give the check away.
func TestFaultsAreNotGivenAway(t *testing.T) {
	for _, f := range lesson.Faults() {
		require.NotEmpty(t, f.Title)
		require.False(t, f.Says.IsEmpty())
		require.NotContains(t, strings.ToLower(f.Says.In(measure.In)), "truing", f.ID)
	}
}
