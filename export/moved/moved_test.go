package moved

import (
	"bytes"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/golden"
)

func written(t *testing.T, before, after *pattern.Sheet, u measure.Unit) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Write(&b, before, after, Options{Unit: u}))
	return b.String()
}

func changed(method string, change func(pattern.Job) pattern.Job) (before, after *pattern.Sheet) {
	before = accept.Dress(method)
	return before, workroom.Draft(change(before.Job))
}

func TestMovedMarks(t *testing.T) {
	before, after := changed(pattern.Measured, func(j pattern.Job) pattern.Job {
		return j.WithBody(measure.WaistGirth, 32*measure.Inch).WithStyle("front_neck_depth", pattern.LengthValue(5*measure.Inch))
	})
	golden.Check(t, "measured-in.md", written(t, before, after, measure.In))
	before, after = changed(pattern.Thumb, func(j pattern.Job) pattern.Job { return j.WithBody(measure.HipGirth, 41*measure.Inch) })
	golden.Check(t, "thumb-cm.md", written(t, before, after, measure.Cm))
}

// What moved moved by what was given: an inch more bust is a quarter inch a
// quarter, and nothing else is listed.
func TestOnlyWhatMoved(t *testing.T) {
	before, after := changed(pattern.Measured, func(j pattern.Job) pattern.Job {
		return j.WithStyle("front_neck_depth", pattern.LengthValue(5*measure.Inch))
	})
	text := written(t, before, after, measure.In)
	require.Contains(t, text, "| neck centre, sew | 4 1/2 | 0 | 5 | 0 |")
	require.Contains(t, text, "Draw anew, with the marks between from the chalk card: neck.")
	require.Contains(t, text, "| Front neck depth | 4 1/2 | 5 |")
	for _, no := range []string{"underarm", "waist", "## Back\n", "| hem"} {
		require.NotContains(t, text, no)
	}
	require.Contains(t, text, "ront neck facing")
}

// A pinch, or a dart turned to another edge, moves the underarm and the middle
// of the armhole: each is one mark that moved, none is new and none falls away.
func TestAPinchMovesTheUnderarm(t *testing.T) {
	before, after := changed(pattern.Measured, func(j pattern.Job) pattern.Job {
		return j.WithStyle("armhole_pinch", pattern.LengthValue(measure.Inch/4))
	})
	text := written(t, before, after, measure.In)
	require.Contains(t, text, "| underarm, cut | 7 1/8 | 10 5/8 | 6 7/8 | 10 1/2 |")
	require.Contains(t, text, "| underarm, sew | 7 1/2 | 9 5/8 | 7 1/4 | 9 1/2 |")
	require.NotContains(t, text, "| - |", "nothing is new, nothing falls away")

	before, after = changed(pattern.Measured, func(j pattern.Job) pattern.Job {
		return j.WithStyle("bust_dart", pattern.PickValue("shoulder"))
	})
	text = written(t, before, after, measure.In)
	for _, mark := range []string{"underarm", "armhole middle", "shoulder end"} {
		require.Regexp(t, `\| `+mark+`, cut \| [0-9].* \| [0-9].* \| [0-9].* \| [0-9].* \|`, text)
	}
	require.NotContains(t, text, "turned")
}

func TestNothingMoved(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	text := written(t, s, accept.Dress(pattern.Measured), measure.In)
	require.Contains(t, text, "No mark moves by a step of the tape")
	require.NotContains(t, text, "What changed")
	require.NotContains(t, text, "## Front")
}

func TestBackwardsIsTheSame(t *testing.T) {
	before, after := changed(pattern.Measured, func(j pattern.Job) pattern.Job { return j.WithBody(measure.HipGirth, 41*measure.Inch) })
	there, back := written(t, before, after, measure.In), written(t, after, before, measure.In)
	require.Equal(t, strings.Count(there, "\n|"), strings.Count(back, "\n|"))
	require.NotEqual(t, there, back)
	require.Equal(t, there, written(t, before, after, measure.In))
}

func TestRefused(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	half := accept.Dress(pattern.Measured)
	half.Complete = false
	require.ErrorContains(t, Write(io.Discard, half, s, Options{}), "a draft that is not complete")
	require.ErrorContains(t, Write(io.Discard, nil, s, Options{}), "a draft that is not complete")
	require.ErrorContains(t, Write(io.Discard, accept.Dress(pattern.Thumb), s, Options{}), "two patterns")
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestAFullDiskIsTold(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	require.ErrorIs(t, Write(full{}, s, s, Options{}), io.ErrShortWrite)
}
