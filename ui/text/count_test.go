package text

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestCountsStandInThrees(t *testing.T) {
	for n, want := range map[int64]string{0: "0", 7: "7", 999: "999", 1000: "1,000", 20000: "20,000", 1234567: "1,234,567", 100000000: "100,000,000", -1000: "-1,000", math.MinInt64: "-9,223,372,036,854,775,808"} {
		require.Equal(t, want, Count(n))
	}
}
