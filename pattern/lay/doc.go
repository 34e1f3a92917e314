// Package lay says how much cloth the pieces need, and where each lies.
//
// The hand rule ([Rule]) is the lay done in the head, as it is done at the
// counter of a shop: add the widths of all full-length pieces; if they lie side
// by side in the folded cloth one length does, if not it takes two or three;
// facings need some more unless they fit beside. Shrinkage is bought on top, and
// what is bought is rounded up, never down.
//
// The lay itself begins with a [Problem]: pieces from drafted sheets
// ([FromSheet]) or from a file of outlines ([ReadPieces]) on one [Cloth], flat or
// folded: selvage to selvage, both edges to the middle, off centre with a single
// part beside the double one, or across. [Shelf]
// lays them at once, side by side by their boxes. [Solve] looks for a shorter lay: it
// fixes the length, lets the pieces overlap, parts them by moving one after the
// other, and shortens again, the family of methods that holds the published
// records (guided local search after Umetani and others 2009, Imamichi and
// others 2009, Elkeran 2013, Sato and others 2019, Gardeyn and others 2025).
// What it gives has passed [Verify], which knows the rules of the cloth and
// shares nothing with the search: nap, grain, fold, selvages, gap, repeats,
// flaws, pins, and no overlap by as much as a step of 0.0001 mm. [Say] tells the
// lay by tape, [Buy] what to ask for in the shop.
//
// How the search works, file by file: plan.go and folds.go turn the cloth
// into strips; convex.go, region.go and grid.go table, for every two outlines at every two
// turns, how deep one overlaps the other at any offset; searcher.go moves one
// piece, part.go parts all, search.go shortens, solve.go runs the whole.
//
// The package never draws, and knows no screen and no clock: evaluations of the
// cost are counted instead. The same problem, seed and count give the same lay
// on any machine and any number of processors; stopping early chooses only
// after which race of its searchers it ends.
package lay
