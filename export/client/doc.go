// Package client writes the client card: who she is, her measurements, what
// was chosen for her, her cloth, and what was seen and changed at fittings.
//
// Private notes stand on it only if they are asked for. The package works
// nothing out and never guesses: what was not measured is not on the card.
package client
