// Package early answers the terminal's background question before it is
// asked.
//
// The screen framework asks the terminal for its background colour while it
// is being loaded, before main runs. A terminal that does not answer holds
// the program up for five seconds, even for "chalkfold version". Once the
// answer is set nobody asks. Packages that wait for nothing else are
// initialised in the order of their import paths, so this one must sort before
// the framework's ("chalkfold/..." does) and must import nothing that imports
// it: only lipgloss.
//
// Themes of our own never look at this answer. Import it for its effect, in
// the package that starts the program. It is the one place with an init.
package early

import "github.com/charmbracelet/lipgloss"

func init() {
	lipgloss.SetHasDarkBackground(true)
}
