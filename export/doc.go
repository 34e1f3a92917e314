// Package export makes a pattern.Sheet ready to leave the house.
//
// [New] turns a sheet into a [Drawing]: every piece placed on one page or
// roll, every line and dot an [Item] with a pattern.Role, every word with a
// place, and round them what a cutter needs to trust the paper: two control
// squares, the method, the allowances, what was proposed and not measured.
// A writer (export/svg, export/dxf ...) is a table from role to its own pen
// or layer, and one walk over the drawing.
//
// A piece keeps the coordinates of its draft, in millimetres, y down, and a
// matrix that places it; curves stay cubics. Lettering is measured by rule of
// thumb, wide enough for any common face, since a writer may have another.
//
// The package drafts nothing, writes no format, opens no file and knows no
// date but the one in the sheet: the same sheet makes the same drawing.
package export
