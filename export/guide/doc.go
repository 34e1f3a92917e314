// Package guide writes the cutting guide and sewing order of a draft: whom it
// is for, the measurements and choices it rests on, what is cut from which
// cloth and how much to buy, the marks, the seams in the order of sewing with
// their lengths and allowances, and what truing found.
//
// The seams are read off the edges of the pieces, so the order has what the
// draft has and nothing else. The package drafts nothing and reckons no
// length of its own but by adding those of the sheet; private notes never
// stand in it.
package guide
