package lay

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

var instances = []string{"shirts", "trousers", "dagli", "marques"}

// instance reads an open packing instance from the folder that the environment
// names; without it there is nothing to measure.
func instance(tb testing.TB, name string) Problem {
	tb.Helper()
	dir := os.Getenv("CHALKFOLD_DATA")
	if dir == "" {
		tb.Skip("not measured: CHALKFOLD_DATA names no folder with lay/*.json")
	}
	data, err := os.ReadFile(filepath.Join(dir, "lay", name+".json"))
	if err != nil {
		tb.Skip("not measured: " + err.Error())
	}
	p, err := ReadPieces(data)
	require.NoError(tb, err)
	return p
}

// fromEnv reads a number that the environment may set.
func fromEnv(name string, otherwise float64) float64 {
	x := otherwise
	if text := os.Getenv(name); text != "" {
		if _, err := fmt.Sscan(text, &x); err != nil {
			return otherwise
		}
	}
	return x
}

// BenchmarkDensity prints the mean density of the open instances, in per cent,
// over CHALKFOLD_SEEDS seeds at CHALKFOLD_EVALUATIONS million evaluations, or
// at CHALKFOLD_SECONDS seconds. A change of the search is judged by the mean of
// several seeds at equal evaluations.
func BenchmarkDensity(b *testing.B) {
	seeds := int(fromEnv("CHALKFOLD_SEEDS", 1))
	allowed := int64(fromEnv("CHALKFOLD_EVALUATIONS", 1) * 1e6)
	seconds := fromEnv("CHALKFOLD_SECONDS", 0)
	for _, name := range instances {
		b.Run(name, func(b *testing.B) {
			p := instance(b, name)
			for b.Loop() {
				sum, millions := 0.0, 0.0
				var first time.Duration
				for seed := range seeds {
					start := time.Now()
					o := Options{Evaluations: allowed, Seed: uint64(seed) + 1}
					o.Progress = func(l Lay) {
						if l.First {
							first = max(first, time.Since(start))
						}
					}
					if seconds > 0 {
						o.Evaluations = 1 << 40
						o.Stop = func() bool { return time.Since(start).Seconds() > seconds }
					}
					l, err := Solve(p, o)
					require.NoError(b, err)
					require.Empty(b, Verify(p, l))
					sum += l.Density
					millions += float64(l.Evaluations) / 1e6
				}
				b.ReportMetric(sum/float64(seeds), "density")
				b.ReportMetric(millions/float64(seeds), "Mevaluations")
				b.ReportMetric(first.Seconds(), "s-to-first")
			}
		})
	}
}

// BenchmarkFirstLay is the time to the first checked lay.
func BenchmarkFirstLay(b *testing.B) {
	for _, name := range instances {
		b.Run(name, func(b *testing.B) {
			p := instance(b, name)
			for b.Loop() {
				_, err := Solve(p, Options{})
				require.NoError(b, err)
			}
		})
	}
}

// BenchmarkMove is one move of the search; what counts is the time of one
// evaluation.
func BenchmarkMove(b *testing.B) {
	for _, name := range instances {
		b.Run(name, func(b *testing.B) {
			p := instance(b, name)
			r, err := newRun(p, Options{})
			require.NoError(b, err)
			h := r.plans[0].searches[0]
			q := newSearcher(h.s, h.length*0.9, h.places, newRandom(1))
			q.part(1, 5)
			from, i := q.evals, 0
			for b.Loop() {
				q.relocate(i % q.s.moving)
				i++
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(q.evals-from), "ns/evaluation")
		})
	}
}

func BenchmarkVerify(b *testing.B) {
	p := instance(b, "shirts")
	l, err := Solve(p, Options{})
	require.NoError(b, err)
	for b.Loop() {
		if len(Verify(p, l)) > 0 {
			b.Fatal("not verified")
		}
	}
}
