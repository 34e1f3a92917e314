package accept

import (
	"bytes"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Write is a writer with its options filled in.
type Write func(w io.Writer, d export.Drawing) error

// Writer holds a writer to what all writers promise. Absent names the roles
// that the format says in no way, with the reason; a role without a reason
// must leave a trace.
func Writer(t *testing.T, write Write, absent map[pattern.Role]string) {
	t.Run("every role leaves a trace", func(t *testing.T) { everyRole(t, write, absent) })
	t.Run("same drawing, same bytes", func(t *testing.T) {
		a := Bytes(t, write, export.New(Sheet(), export.Options{}))
		b := Bytes(t, write, export.New(Sheet(), export.Options{}))
		require.Equal(t, a, b)
		require.NotEmpty(t, a)
	})
	t.Run("whole pieces", func(t *testing.T) {
		half := Bytes(t, write, export.New(Sheet(), export.Options{}))
		whole := Bytes(t, write, export.New(Sheet(), export.Options{Whole: true}))
		require.NotEqual(t, half, whole)
	})
	t.Run("a full disk is told", func(t *testing.T) {
		require.ErrorIs(t, write(full{}, export.New(Sheet(), export.Options{})), io.ErrShortWrite)
	})
	t.Run("a drawing of nothing", func(t *testing.T) {
		Bytes(t, write, export.Drawing{})
	})
}

// full is a disk without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

// everyRole adds one item of each role to a piece and asks whether the bytes
// change.
func everyRole(t *testing.T, write Write, absent map[pattern.Role]string) {
	plain := export.New(Sheet(), export.Options{})
	before := Bytes(t, write, plain)
	for r := range pattern.Role(pattern.RoleCount) {
		d := export.New(Sheet(), export.Options{})
		p := &d.Pieces[1]
		p.Items = append(p.Items, one(r))
		after := Bytes(t, write, d)
		if why, ok := absent[r]; ok {
			require.NotEmpty(t, why)
			require.Equal(t, before, after, "%s is said to be absent", r)
			continue
		}
		require.NotEqual(t, before, after, "%s leaves no trace", r)
	}
}

// one is an item of that role, of the kind that the role has.
func one(r pattern.Role) export.Item {
	i := export.Item{Role: r, Name: "one more", Path: geom.Lines(at(11, 51), at(23, 57))}
	switch r {
	case pattern.RoleHole:
		i.Kind, i.At = export.Dot, at(22, 54)
	case pattern.RoleText:
		i.Kind, i.At, i.Text, i.Height = export.Words, at(22, 54), "one more", 3
	}
	return i
}

// Bytes is what the writer writes.
func Bytes(t testing.TB, write Write, d export.Drawing) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, write(&b, d))
	return b.Bytes()
}

// Texts are hostile and foreign words that every writer must survive.
var Texts = []string{
	"", "Learner Four", "Zoë Ødegård", "Nguyễn Thị Ánh", "Ελένη", "Настя", "李小龍", "👗 dress",
	"<script>&\"'", "]]>", "a\x00b\x1b[31mc\r\n0\r\nEOF", "\xff\xfe broken", "\u2028\u202e\ufeff\ufffe",
	"%%c %%d ^J \\U+0041 \\P {\\fArial;x}", "a\ud7ffb",
}
