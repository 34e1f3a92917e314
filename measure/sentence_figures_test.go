package measure

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFiguresInTheWords(t *testing.T) {
	s := Tell("Go {} down, {1 1/2 in} less; mark {1/4 in:} and {say}.", 2*Inch, 3*Inch)
	require.Equal(t, "Go 2 down, 1 1/2 in less; mark 1/4 and 3 in.", s.In(In))
	require.Equal(t, "Go 5.1 down, 3.8 cm less; mark 0.6 and 7.6 cm.", s.In(Cm))
}
