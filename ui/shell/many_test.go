package shell

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Parts end in any order; what they say comes in the order of the call, each
// whole, and a fault in one is its own trouble.
func TestSideBySide(t *testing.T) {
	var out, err bytes.Buffer
	w := &world{out: &out, err: &err}
	var all []string
	for i := range 40 {
		all = append(all, fmt.Sprintf("file %d", i))
	}
	var running, most atomic.Int32
	total, failed := 0, 0
	w.sideBySide(all, func(part *world, i int) (int, error) {
		if n := running.Add(1); n > most.Load() {
			most.Store(n)
		}
		defer running.Add(-1)
		time.Sleep(time.Duration((i*7)%5) * time.Millisecond)
		part.print(fmt.Sprintf("%d begins\n", i))
		part.say("%d is told", i)
		part.print(fmt.Sprintf("%d ends\n", i))
		switch i {
		case 3:
			panic("a shelf fell")
		case 5:
			return 0, errors.New("five: nothing; it is odd; take six")
		}
		return 1, nil
	}, func(n int, err error) {
		total += n
		if err != nil {
			failed++
		}
	})
	require.Equal(t, 38, total)
	require.Equal(t, 2, failed)
	var want strings.Builder
	for i := range 40 {
		fmt.Fprintf(&want, "%d begins\n%d ends\n", i, i)
	}
	require.Equal(t, want.String(), out.String())
	require.Contains(t, err.String(), "chalkfold: 3 is told\nchalkfold: file 3: the work on it broke off (a shelf fell);")
	require.Contains(t, err.String(), "chalkfold: five: nothing; it is odd; take six\nchalkfold: 6 is told\n")
	require.Less(t, most.Load(), int32(40), "the pool is bounded")
	require.NotContains(t, err.String(), "\r", "no progress where no terminal is")
}

func TestProgressLine(t *testing.T) {
	var b bytes.Buffer
	p := &progress{to: &b, wide: 20}
	p.show("1 of 2: anna.chalkfold.toml")
	p.show("2 of 2: b")
	p.clear()
	require.Equal(t, "1 of 2: anna.cha...\r"+strings.Repeat(" ", 19)+"\r2 of 2: b\r"+strings.Repeat(" ", 9)+"\r", b.String())
	require.NotContains(t, b.String(), "\x1b")
	p = &progress{}
	p.show("nobody watches")
	p.clear()
}
