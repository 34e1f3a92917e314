package linear

import (
	"io"
	"strings"
	"testing"

	"chalkfold/ui/desk"

	"github.com/charmbracelet/x/ansi"
)

// Whatever one line holds, every stage answers it without a panic, in lines
// that are not too wide.
func FuzzHear(f *testing.F) {
	for _, s := range []string{"36 1/2", "front neck depth 5", "where underarm", "step 3", "\x1b[A", "method thumb", "write", "usual", "½", "-", "client \u202eX"} {
		f.Add(s, 1)
	}
	f.Fuzz(func(t *testing.T, line string, at int) {
		for _, w := range []string{"write", "wr", "save", "sa", "open", "op", "o"} { // no files here
			if strings.HasPrefix(strings.ToLower(line), w) {
				return
			}
		}
		r := newRoom(Options{In: strings.NewReader(""), Out: io.Discard})
		r.take(nil, 0)
		r.d.Take(desk.Opened{Store: r.d.Store(), Saved: sample()})
		r.stage = desk.StageID(uint(at)%6 + 1)
		r.enter()
		r.hear(line)
		for _, l := range r.said {
			if ansi.StringWidth(l) > width {
				t.Fatalf("too wide: %q", l)
			}
		}
	})
}
