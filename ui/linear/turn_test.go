package linear

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// In words alone a dart goes round too: each place in numbers, a slip heard for
// what it is, and the place kept.
func TestADartGoesRoundInWords(t *testing.T) {
	home(t)
	s := saved(t, sample())
	got, _ := talk(s, "lesson dart", "next", "2", "next", "why", "next", "3/4", "1 3/16", "next", "next", "next", "next", "next", "keep", "save", "quit")
	require.Contains(t, got, "French: 15/16 in wide, 7 5/16 in from the bust point, 7.5 degrees.")
	require.Contains(t, got, "The width is the distance of the edge, times twice the sine of half the angle.")
	require.Contains(t, got, "That is the width in the side.")
	require.Contains(t, got, "Right: 1 3/16 in.")
	require.Contains(t, got, "Bust dart: waist.")
	again, err := s.Reload()
	require.NoError(t, err)
	v, _ := again.Job.Style.Get("bust_dart")
	require.Equal(t, "waist", v.Pick)
	v, _ = again.Job.Style.Get("waist_seam")
	require.True(t, v.On)
}

// All places that may be answered are named.
func TestNoOptionIsLeftOut(t *testing.T) {
	home(t)
	got, _ := talk(saved(t, sample()), "style", "bust dart", "quit")
	require.Contains(t, got, "Side, French, Armhole, Shoulder, Neck, Waist, Side and waist or Centre\nfront")
}
