package ui

import (
	"os"
	"sync"
)

// frames sends every picture as one: the terminal shows it only when it is
// complete (DEC private mode 2026; terminals that do not know it ignore it).
type frames struct {
	*os.File
	one *sync.Mutex // nothing comes between the halves of a picture
}

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
	f.one.Lock()
	defer f.one.Unlock()
	n, err := f.File.Write(out)
	return max(0, min(n-len(frameBegin), len(b))), err
}

// clip hands a text to the terminal's clipboard, between two pictures.
func (f frames) clip(words string) {
	f.one.Lock()
	defer f.one.Unlock()
	_, _ = f.File.WriteString(clipboard(words)) // the file has it too
}

// WriteString is what io.WriteString would take from the file itself.
func (f frames) WriteString(s string) (int, error) { return f.Write([]byte(s)) }
