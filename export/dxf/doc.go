// Package dxf writes a drawing for other pattern software and for cutters.
//
// The dialect is ASTM D6673 (withdrawn 2019 without a successor, still what
// readers take; also known as AAMA 292), on the ASCII form of DXF release 12:
// one BLOCK a piece, one INSERT a block, layers with fixed meanings, closed
// POLYLINEs, text as "Key: value". Lines end in CR LF, numbers have four
// decimals, y points up, letters are ASCII.
//
// Blocks hold the pieces where the drawing placed them, so that a plain
// reader shows them side by side. A piece on the fold stays half, with its
// mirror line. Control squares and page words are left out: a block that is
// not a piece makes readers fail.
package dxf
