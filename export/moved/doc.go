// Package moved writes what lies elsewhere after a change, for a pattern that
// is chalked or cut already: of two drafts of one garment only the marks that
// moved, the old and the new place of each by tape, as on the chalk card.
//
// Places are those of the chalk card, rounded to the same step of the tape, so
// a change that the tape cannot show is no change. Curves are said to be drawn
// anew where they changed. Above the marks stand the inputs that differ.
//
// The package drafts nothing and does not know why something changed.
package moved
