package pdf

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
)

func TestWhatIsNoFileIsNotRepacked(t *testing.T) {
	whole := accept.Bytes(t, sheet, export.New(accept.Sheet(), export.Options{}))
	for _, file := range [][]byte{nil, []byte("a"), []byte("a\nstartxref\n9\n"), whole[:len(whole)/2], bytes.ReplaceAll(whole, []byte("/Catalog\n"), []byte("/Catalo \n"))} {
		_, err := repacked(file)
		require.Error(t, err)
	}
}

// Packing what is packed changes nothing but a second request.
func TestRepackingKeepsEveryObject(t *testing.T) {
	whole := accept.Bytes(t, tiles, export.New(accept.Sheet(), export.Options{}))
	again, err := repacked(whole)
	require.NoError(t, err)
	require.Len(t, again, len(whole)+len(unscaled))
	a, _, err := table(whole)
	require.NoError(t, err)
	b, _, err := table(again)
	require.NoError(t, err)
	require.Equal(t, a, b, "the catalogue is the last object")
}

func FuzzRepacked(f *testing.F) {
	f.Add([]byte("1 0 obj\n<<\n/Type /Catalog\n>>\nendobj\nxref\n0 2\n0000000000 65535 f \n0000000000 00000 n \ntrailer\n<<>>\nstartxref\n35\n%%EOF\n"))
	f.Fuzz(func(t *testing.T, file []byte) {
		out, err := repacked(file)
		require.True(t, err != nil || len(out) > 0)
	})
}
