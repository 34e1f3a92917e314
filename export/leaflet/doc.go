// Package leaflet is a document as blocks: headings, paragraphs, lists,
// tables and small drawings, to be said as Markdown or set on paper from the
// same words. The guide, the handout, the cards and the slip are leaflets.
//
// It also draws what several of them show: the pieces of a sheet, small, and
// a draft at one of its steps.
//
// The package knows no trade but the names of lines, works nothing out, opens
// no file and knows no date but the one it is given.
package leaflet
