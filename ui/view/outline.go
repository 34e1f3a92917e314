package view

import (
	"chalkfold/pattern"
	"chalkfold/ui/canvas"
)

// Outline is a piece, or with an empty id all of them, as lines of text: at
// most so many columns and rows, each line ended, nothing but the glyphs.
func Outline(sheet *pattern.Sheet, piece pattern.PieceID, cols, rows int, g canvas.Glyphs) string {
	s := Scene{Sheet: sheet, Piece: piece}
	c := canvas.New(cols, rows, g)
	cols, rows = c.Size()
	if p, ok := sheet.Piece(piece); ok && !s.drawn(piece) {
		// A facing by itself, not on the piece it is traced from.
		only := *sheet
		only.Pieces = []pattern.Piece{*p}
		only.Marks = nil
		s = Scene{Sheet: &only}
	}
	v := Look(s, Eye{Plain: true}, cols, rows, g, 2)
	v.Draw(c)
	return c.String(canvas.Palette{}) + "\n"
}
