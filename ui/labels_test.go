package ui

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/canvas"
	"chalkfold/ui/view"
)

// Guides and ticks give way: every step that makes a mark says which, in every
// size and set of glyphs.
func TestTheNewestMarkCarriesItsLabel(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := workroom.Draft(figure().WithStyle("method", pattern.PickValue(method)))
		for _, st := range s.Steps[:len(s.Steps)-1] {
			if !drawsOn(s, st) {
				continue
			}
			for _, size := range [][2]int{{80, 9}, {64, 14}, {60, 12}, {120, 40}} {
				for _, g := range []canvas.Glyphs{canvas.Braille, canvas.Blocks, canvas.ASCII} {
					c := canvas.New(size[0], size[1], g)
					view.Look(view.Scene{Sheet: s, Step: st.Number, Piece: st.Piece, Unit: measure.In}, view.Eye{}, size[0], size[1], g, 2).Draw(c)
					require.Contains(t, c.String(canvas.Palette{}), "> ", "%s step %d %s, %dx%d %v", method, st.Number, st.ID, size[0], size[1], g)
				}
			}
		}
	}
}

func drawsOn(s *pattern.Sheet, st pattern.Step) bool {
	for _, m := range s.Marks {
		if m.Born == st.Number && m.AliveAt(st.Number) && m.Piece == st.Piece {
			return true
		}
	}
	return false
}

// The figures along the fold: each level once the draft has it, in every height
// of the table and by both units.
func TestLevelsStandAlongTheFold(t *testing.T) {
	for _, u := range []measure.Unit{measure.In, measure.Cm} {
		s := workroom.Draft(figure())
		for rows := 9; rows < 30; rows++ {
			c := canvas.New(80, rows, canvas.Braille)
			view.Look(view.Scene{Sheet: s, Piece: pattern.Front, Unit: u}, view.Eye{}, 80, rows, canvas.Braille, 2).Draw(c)
			text := c.String(canvas.Palette{})
			for _, name := range []string{"waist", "hip"} {
				at, ok := s.Point(pattern.Front, name)
				require.True(t, ok, name)
				require.Contains(t, text, u.Tape(measure.Length(at.Y)), "%s in %d rows", name, rows)
			}
		}
	}
}
