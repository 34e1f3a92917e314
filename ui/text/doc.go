// Package text is every sentence of the screen, in one place.
//
// A sentence is a constant of type ID, and the constant is the sentence
// itself, with {1}, {2} for what is put in. To add one, add one constant to
// the file of its screen; the tests read them all and hold them to the house's
// voice: short, imperative, one thought a line, no blame.
//
// The trade's own sentences stand in their rows (measurements, choices,
// steps, findings) and go through Pass. Both ways lead through a Catalogue, so
// that Pseudo, longer by two fifths and accented, shows every sentence that
// does not fit or does not pass.
//
// The package never knows where a sentence is shown.
package text
