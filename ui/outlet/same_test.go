package outlet

import (
	"crypto/sha256"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
)

// The same session gives the same bytes, twice over and on every machine:
// CHALKFOLD_DIGEST names a file for the digests, which are compared between
// processors that fuse products into sums and those that do not.
func TestSameBytes(t *testing.T) {
	if testing.Short() {
		t.Skip("many drafts")
	}
	cm := measure.Cm
	var digests strings.Builder
	for style := range accept.Styles() {
		for k, scale := range []float64{0.93, 1, 1.08, 1.17} {
			o := Options{Session: measure.In, Whole: k == 1}
			if k == 2 {
				o.Unit = &cm
			}
			if (style+k)%2 == 1 {
				continue // half of them are enough, and a processor that is only played takes long
			}
			first := digestsOf(t, scale, style, o)
			if k == 0 {
				require.Equal(t, first, digestsOf(t, scale, style, o))
			}
			fmt.Fprintf(&digests, "size %g, style %d\n%s", scale, style, first)
		}
	}
	if path := os.Getenv("CHALKFOLD_DIGEST"); path != "" {
		require.NoError(t, os.WriteFile(path, []byte(digests.String()), 0o600))
	}
}

// digestsOf are the digests of all files of a dress, a line each.
func digestsOf(t *testing.T, scale float64, style int, o Options) string {
	t.Helper()
	s := accept.Odd(scale, "Đặng Learner", "", style)
	require.True(t, s.Complete)
	o.Before = accept.Odd(scale, "", "", style)
	r := newRequest(s, "four", o)
	var all []file
	for _, f := range formats {
		all = append(all, f.files(r)...)
	}
	var b strings.Builder
	for i, out := range fillAll(all) {
		f := <-out
		require.Nil(t, f.broken, all[i].name)
		require.NoError(t, f.err, all[i].name)
		fmt.Fprintf(&b, "%x %s\n", sha256.Sum256(f.content), all[i].name)
	}
	return b.String()
}
