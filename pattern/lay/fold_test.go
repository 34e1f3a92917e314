package lay

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is cut out at the fold, as a keyhole is, does not make a second fold.
func TestOneFold(t *testing.T) {
	plain := ringOf(0, 0, 50, 0, 50, 90, 0, 90)
	require.Equal(t, plain, oneFold(plain))
	require.Equal(t, ringOf(0, 0, 50, 0, 50, 90, 0, 90), oneFold(ringOf(0, 0, 50, 0, 50, 90, 0, 90, 0, 60, 20, 50, 0, 40)))
	require.Equal(t, ringOf(0, 0, 50, 0, 50, 90, 0, 90), oneFold(ringOf(0, 60, 20, 50, 0, 40, 0, 0, 50, 0, 50, 90, 0, 90)))
}
