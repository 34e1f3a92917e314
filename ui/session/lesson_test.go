package session

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestLastLesson(t *testing.T) {
	require.Empty(t, parse(t, "form = 1\n").LastLesson())
	require.Empty(t, parse(t, "[lesson]\n").LastLesson())
	for text, want := range map[string]string{
		"[lesson]\nback = 7\n":                               "back",
		"[lesson]\ntruing = 2\ntape = 9 # first\nback = 7\n": "back",
		"[lesson]\nback = 7\ntruing = 2\n":                   "truing",
		"[lesson]\nback = 7\ntruing = 0\n":                   "back",
		"lesson = {front = 1, back = 7}\n":                   "back",
	} {
		for range 20 { // whatever the order of the map
			require.Equal(t, want, parse(t, text).LastLesson(), text)
		}
	}
	s := parse(t, "[lesson]\ntruing = 2\n")
	s.Lesson["back"] = 1
	require.Equal(t, "back", s.LastLesson(), "begun since the file was read")

	text, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, "back", parse(t, string(text)).LastLesson(), "and so it is written")
}

func TestDemo(t *testing.T) {
	s := Demo()
	require.Empty(t, s.Path)
	require.Empty(t, s.Warnings)
	text, err := s.Bytes(s.Job)
	require.NoError(t, err)
	require.Equal(t, string(DemoText()), string(text))
	DemoText()[0] = 'x'
	require.Equal(t, s.Job, Demo().Job, "nobody can write into it")
}
