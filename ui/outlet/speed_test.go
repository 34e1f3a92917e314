package outlet

import (
	"bytes"
	"testing"

	"chalkfold/export/accept"
	"chalkfold/pattern"
)

// BenchmarkAll fills all files of a dress in memory: at most 100 ms on two
// slow cores.
func BenchmarkAll(b *testing.B) {
	s := accept.Dress(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		r := newRequest(s, "four", Options{Before: s})
		for _, f := range formats {
			for _, out := range f.files(r) {
				var buf bytes.Buffer
				if err := out.fill(&buf, func(string) {}); err != nil {
					b.Fatal(err)
				}
			}
		}
	}
}
