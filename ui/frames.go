package ui

import "os"

// frames sends every picture as one: the terminal shows it only when it is
// complete (DEC private mode 2026; terminals that do not know it ignore it).
type frames struct{ *os.File }

const (
	frameBegin = "\x1b[?2026h"
	frameEnd   = "\x1b[?2026l"
)

// Write sends one frame.
func (f frames) Write(b []byte) (int, error) {
	if len(b) == 0 {
		return 0, nil
	}
	out := make([]byte, 0, len(b)+len(frameBegin)+len(frameEnd))
	out = append(out, frameBegin...)
	out = append(out, b...)
	out = append(out, frameEnd...)
	n, err := f.File.Write(out)
	return max(0, min(n-len(frameBegin), len(b))), err
}

// WriteString is what io.WriteString would take from the file itself.
func (f frames) WriteString(s string) (int, error) { return f.Write([]byte(s)) }
