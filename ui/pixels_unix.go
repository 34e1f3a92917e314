//go:build unix

package ui

import (
	"os"

	"golang.org/x/sys/unix"
)

// cellAspect is the height of a cell to its width, from the size of the window
// in pixels, if the terminal's driver knows it. The terminal itself is not
// asked.
func cellAspect(f *os.File) (float64, bool) {
	w, err := unix.IoctlGetWinsize(int(f.Fd()), unix.TIOCGWINSZ)
	if err != nil || w.Xpixel == 0 || w.Ypixel == 0 || w.Col == 0 || w.Row == 0 {
		return 0, false
	}
	return plausible(float64(w.Ypixel) / float64(w.Row) / (float64(w.Xpixel) / float64(w.Col)))
}
