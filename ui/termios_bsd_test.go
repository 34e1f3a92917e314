//go:build darwin || freebsd || netbsd || openbsd || dragonfly

package ui

import "golang.org/x/sys/unix"

const termios = unix.TIOCGETA
