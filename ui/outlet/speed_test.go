package outlet

import (
	"bytes"
	"testing"

	"chalkfold/export/accept"
	"chalkfold/pattern"
)

// BenchmarkSVGDXFCard fills the files of a dress in memory: at most 30 ms on
// two slow cores.
func BenchmarkSVGDXFCard(b *testing.B) {
	s := accept.Dress(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		r := newRequest(s, "four", Options{})
		for _, f := range formats {
			for _, out := range f.files(r) {
				var buf bytes.Buffer
				if err := out.fill(&buf); err != nil {
					b.Fatal(err)
				}
			}
		}
	}
}
