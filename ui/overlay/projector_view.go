package overlay

import (
	"strings"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/view"
)

// bothPieces are the rows of the table from which front and back are shown
// together.
const bothPieces = 26

// View is the table and the caption, or nothing while the screen is blanked.
func (p *Projector) View(r desk.Rect) []string {
	if p.blank || r.Rows <= 0 || r.Columns <= 0 {
		return desk.Block(nil, r)
	}
	if l, page, ok := p.sits(); ok {
		foot := p.pageCaption(l, page, r)
		return desk.Block(append(p.table(r.Columns, r.Rows-len(foot)), foot...), r)
	}
	out := p.table(r.Columns, r.Rows-captionRows)
	return desk.Block(append(out, p.caption(r.Columns)...), r)
}

func (p *Projector) table(cols, rows int) []string {
	if rows < 1 || cols < 1 {
		return nil
	}
	if p.nobodyThere() {
		p.seen = view.View{}
		return make([]string, rows)
	}
	set, s := p.d.Settings, p.scene(rows)
	if !p.turns {
		up := s
		up.Stand = true
		p.stand = view.Look(up, view.Eye{}, cols, rows, set.Glyphs, set.Aspect).DotsPerInch() > 1.15*view.Look(s, view.Eye{}, cols, rows, set.Glyphs, set.Aspect).DotsPerInch()
	}
	s.Stand = p.stand
	lines, seen := p.paper.Rows(s, p.eye, cols, rows, set.Glyphs, set.Aspect, set.Theme.Pens())
	p.seen = seen
	return lines
}

// scene is the draft after the step shown, the step before it while a question
// stands, or both outlines of "what if".
func (p *Projector) scene(rows int) view.Scene {
	sheet := p.d.Sheet()
	s := view.Scene{Sheet: sheet, Step: p.at(), Unit: p.d.Unit(), Bold: true}
	st, ok := p.current()
	if !ok {
		return s
	}
	if p.what != nil {
		s.Old, s.Sheet, s.Step = sheet, p.d.SheetOf(p.what.job), 0
		if rows < bothPieces {
			s.Piece = side(st.Piece)
		}
		return s
	}
	if l, page, ok := p.sits(); ok {
		return p.pageScene(l, page, rows)
	}
	if p.at() < len(sheet.Steps) && (rows < bothPieces || !view.Started(sheet, p.at())) {
		s.Piece = st.Piece
	}
	if p.asked {
		s.Step = max(p.at()-1, 1)
	}
	return s
}

// side is the large piece that a piece belongs to.
func side(id pattern.PieceID) pattern.PieceID {
	if strings.HasPrefix(string(id), string(pattern.Back)) {
		return pattern.Back
	}
	return pattern.Front
}
