// Package pdf puts a drawing on paper, and lends its pen to the documents.
//
// [WriteSheet] draws an [export.Drawing] at true size for a plotter or a copy
// shop. [WriteTiles] draws it on the paper of a home printer: a cover with
// control squares and control lines, then tiles that are joined line on line.
// [Document] is flowing text with tables and small drawings for the guides
// and cards that other packages write.
//
// Nothing outside sees the library that makes the file. Everything that is
// known to upset it is kept out in one place: all text passes [Clean]; every
// page has one box; dates are the session's or a fixed one; layers and fonts
// come in a fixed order; the face is cut down to the letters used before the
// library reads it. The request not to scale on printing is put in afterwards
// (repack.go). Letters are set one beside the other: scripts that join their
// letters come out unjoined.
//
// The package drafts nothing, opens no file, and knows no date but the one it
// is given: the same drawing makes the same bytes.
package pdf
