package lay

import "sync"

// together runs work(0) to work(n-1) side by side and waits for all. A panic in
// one of them comes up again in the caller, who may know how to end in order.
func together(n int, work func(k int)) {
	var wait sync.WaitGroup
	fell := make([]any, n)
	for k := range n {
		wait.Go(func() {
			defer func() { fell[k] = recover() }()
			work(k)
		})
	}
	wait.Wait()
	for _, f := range fell {
		if f != nil {
			panic(f)
		}
	}
}
