// Package rule is the arithmetic of the trade: one function a rule, each
// with its source and the sum in words. A [Chain] lists the ways to get one
// quantity, best first; the first whose needs were measured is used, and the
// step says which, why, and what the others would have given.
//
// Where no source is named, a rule is common practice, no source. Published
// rules that the package was checked against stand beside their tests.
//
// The package draws nothing.
package rule
