package session

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// How far she is is written with the next save, and going back loses nothing.
func TestLearn(t *testing.T) {
	s := parse(t, "form = 1\n[lesson]\nback = 7\n")
	before := s.Learnt()
	s.Learn("back", 3)
	require.Equal(t, map[string]int{"back": 7}, s.Learnt())
	s.Learn("tape", 2)
	s.Learn("", 9)
	require.Equal(t, map[string]int{"back": 7, "tape": 2}, s.Learnt())
	require.Equal(t, map[string]int{"back": 7}, before, "what was read is not written into")
	text, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, s.Learnt(), parse(t, string(text)).Lesson)
}
