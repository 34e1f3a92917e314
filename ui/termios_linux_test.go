package ui

import "golang.org/x/sys/unix"

const termios = unix.TCGETS
