// Package measure knows lengths and bodies: reading and writing a length as
// people write it on paper, the sum behind a number (Working), the table of
// measurements and how each is taken, one person's set of them (Body), doubts
// about a set, and likely values for what was not taken.
//
// Inside, every length is millimetres. Reading is exact up to the one place
// where a number becomes millimetres, so 36½ in is 927.1 mm and nothing else,
// and Exact gives back what was typed.
//
// It never reads a file, the clock or the screen, never draws, and never
// stops anyone because of proportions: Doubts are advice. Only Check (no tape
// gives that) and Impossible (no body can have both) refuse. What input did
// wrong is always a Refusal: where, what was read, what is wrong, what works.
package measure
