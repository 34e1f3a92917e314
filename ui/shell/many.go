package shell

import (
	"fmt"
	"io"
	"runtime"
	"strings"

	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/term"

	"chalkfold/measure"
)

// sideBySide does a work for each file on all processors. What a part prints
// and tells is kept and given out in the order of the files, each whole; then
// told hears its result. A fault of ours in one part is told as its trouble.
func (w *world) sideBySide(names []string, work func(part *world, i int) (int, error), told func(n int, err error)) {
	type result struct {
		part *spool
		n    int
		err  error
	}
	next := make(chan int)
	results := make([]chan result, len(names))
	for i := range results {
		results[i] = make(chan result, 1)
	}
	for range min(runtime.GOMAXPROCS(0), len(names)) {
		go func() {
			for i := range next {
				part, kept := w.apart()
				n, err := recovered(names[i], func() (int, error) { return work(part, i) })
				if err != nil {
					part.tell(err)
				}
				results[i] <- result{kept, n, err}
			}
		}()
	}
	go func() {
		for i := range names {
			next <- i
		}
		close(next)
	}()
	line := newProgress(w)
	for i := range names {
		line.show(fmt.Sprintf("%d of %d: %s", i+1, len(names), plain(names[i])))
		r := <-results[i]
		line.clear()
		r.part.giveOut(w)
		told(r.n, r.err)
	}
}

// recovered runs a work; a fault in it comes back as an error.
func recovered(name string, work func() (int, error)) (n int, err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = notDone(&measure.Refusal{Where: name, Wrong: fmt.Sprintf("the work on it broke off (%v)", fault), Works: "the other files are done; look at this one with chalkfold check"})
		}
	}()
	return work()
}

// apart is a world of the same options that keeps what it prints.
func (w *world) apart() (*world, *spool) {
	kept, part := &spool{}, *w
	part.out, part.err, part.status = spoolTo{kept, false}, spoolTo{kept, true}, Done
	return &part, kept
}

// spool keeps what was written to two streams, in order.
type spool struct{ runs []run }

type run struct {
	err  bool
	text strings.Builder
}

type spoolTo struct {
	spool *spool
	err   bool
}

func (s spoolTo) Write(p []byte) (int, error) {
	runs := &s.spool.runs
	if n := len(*runs); n == 0 || (*runs)[n-1].err != s.err {
		*runs = append(*runs, run{err: s.err})
	}
	return (*runs)[len(*runs)-1].text.Write(p)
}

func (s *spool) giveOut(w *world) {
	for i := range s.runs {
		if r := &s.runs[i]; r.err {
			_, _ = io.WriteString(w.err, r.text.String()) // nobody is left to be told
		} else {
			w.print(r.text.String())
		}
	}
}

// progress is one line on a terminal that says how far a long work is. It uses
// no codes: it is written over with spaces.
type progress struct {
	to   io.Writer // nil: nobody watches
	wide int
	now  int // columns that are written
}

func newProgress(w *world) *progress {
	p := &progress{}
	f, ok := w.err.(interface{ Fd() uintptr })
	if !ok || w.plain || !term.IsTerminal(f.Fd()) {
		return p
	}
	p.to, p.wide = w.err, 80
	if c, _, err := term.GetSize(f.Fd()); err == nil && c > 0 {
		p.wide = c
	}
	return p
}

func (p *progress) show(words string) {
	if p.to == nil {
		return
	}
	p.clear()
	words = ansi.Truncate(words, p.wide-1, "...")
	p.now = ansi.StringWidth(words)
	fmt.Fprint(p.to, words)
}

func (p *progress) clear() {
	if p.to == nil || p.now == 0 {
		return
	}
	fmt.Fprint(p.to, "\r"+strings.Repeat(" ", p.now)+"\r")
	p.now = 0
}
