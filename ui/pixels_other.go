//go:build !unix

package ui

import "os"

// cellAspect is not known here; the setting stands.
func cellAspect(*os.File) (float64, bool) { return 0, false }
