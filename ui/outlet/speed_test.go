package outlet

import (
	"testing"

	"chalkfold/export/accept"
	"chalkfold/pattern"
)

// BenchmarkAll fills all files of a dress in memory: at most 100 ms on two
// slow cores.
func BenchmarkAll(b *testing.B) { benchmarkFormats(b, formats) }

// BenchmarkTiles is the same of the tiles alone: at most 60 ms.
func BenchmarkTiles(b *testing.B) {
	tiles, err := Parse("tiles")
	if err != nil {
		b.Fatal(err)
	}
	benchmarkFormats(b, tiles)
}

func benchmarkFormats(b *testing.B, list []Format) {
	s := accept.Dress(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		r := newRequest(s, "four", Options{Before: s})
		var all []file
		for _, f := range list {
			all = append(all, f.files(r)...)
		}
		for _, out := range fillAll(all) {
			if f := <-out; f.err != nil || f.broken != nil {
				b.Fatal(f.err, f.broken)
			}
		}
	}
}
