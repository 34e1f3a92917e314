package outlet

import (
	"bytes"
	"runtime"
)

// filled is the content of one file, in memory.
type filled struct {
	content []byte
	notes   []string
	err     error
	broken  any // a fault of ours, which is this file's trouble alone
}

// fillAll fills files on all processors. Each comes out of its own channel, so
// that they are put down in their order while later ones are still being
// filled.
func fillAll(list []file) []chan filled {
	out := make([]chan filled, len(list))
	next := make(chan int, len(list))
	for i := range list {
		out[i] = make(chan filled, 1)
		next <- i
	}
	close(next)
	for range min(runtime.GOMAXPROCS(0), len(list)) {
		go func() {
			for i := range next {
				out[i] <- list[i].filled()
			}
		}()
	}
	return out
}

// filled fills a file.
func (f file) filled() (out filled) {
	defer func() {
		if fault := recover(); fault != nil {
			out = filled{broken: fault}
		}
	}()
	var b bytes.Buffer
	out.err = f.fill(&b, func(n string) { out.notes = append(out.notes, n) })
	out.content = b.Bytes()
	return out
}
