package ui

import (
	bitsOn "math/bits"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/canvas"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// dots are the braille dots of a scene, and where words stand in its way.
func dots(s view.Scene, e view.Eye, cols, rows int) [][]rune {
	var p view.Paper
	lines, _ := p.Rows(s, e, cols, rows, canvas.Braille, 2, canvas.Palette{})
	out := make([][]rune, len(lines))
	for i, l := range lines {
		out[i] = []rune(ansi.Strip(l))
	}
	return out
}

// bits are the dots of a cell; false where a letter stands.
func bits(rows [][]rune, y, x int) (rune, bool) {
	if y >= len(rows) || x >= len(rows[y]) || rows[y][x] == ' ' {
		return 0, true
	}
	r := rows[y][x]
	return r - 0x2800, r >= 0x2800 && r < 0x2900
}

// near says that something is drawn or written within a cell of a place: what
// was newest may be dotted afterwards.
func near(rows [][]rune, y, x int) bool {
	for dy := -1; dy <= 1; dy++ {
		for dx := -1; dx <= 1; dx++ {
			if y+dy < 0 || x+dx < 0 {
				continue
			}
			if b, dotted := bits(rows, y+dy, x+dx); b != 0 || !dotted {
				return true
			}
		}
	}
	return false
}

// A step adds to the drawing. What was drawn before stays where it was, unless
// the step itself takes a mark away; a step back shows what was there.
func TestAStepNeverErasesWhatWasDrawn(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb, pattern.Direct} {
		sheet := workroom.Draft(figure().WithStyle("method", pattern.PickValue(method)))
		require.True(t, sheet.Complete)
		compared := 0
		for k := 2; k < len(sheet.Steps); k++ { // the last shows the finished pieces
			piece := sheet.Steps[k-1].Piece
			gone := false
			for _, m := range sheet.Marks {
				gone = gone || m.Gone == k
			}
			if gone || sheet.Steps[k-2].Piece != piece {
				continue
			}
			before := dots(view.Scene{Sheet: sheet, Step: k - 1, Piece: piece}, view.Eye{Plain: true}, 110, 30)
			after := dots(view.Scene{Sheet: sheet, Step: k, Piece: piece}, view.Eye{Plain: true}, 110, 30)
			compared++
			for y := range before {
				for x := range before[y] {
					if was, drawn := bits(before, y, x); drawn && was != 0 {
						require.True(t, near(after, y, x), "%s, step %d takes a line away at %d, %d", method, k, x, y)
					}
				}
			}
		}
		require.Greater(t, compared, 10, method)
	}
}

// The newest is strong and named beside its line, what was there before is
// weaker, what comes later is not there at all.
func TestTheNewestIsStrongTheRestIsThere(t *testing.T) {
	s := at(t, 80, 24, looks("mono", canvas.ASCII))
	s.keys("esc", "3")
	s.m.d.Settings.Theme = s.m.d.Settings.Theme.With(theme.NoColour)
	newest := s.m.d.Settings.Theme.Pens()[canvas.Newest]
	second := s.m.d.Settings.Theme.Pens()[canvas.Second]
	require.NotEqual(t, newest, second)
	sheet := s.m.d.Sheet()
	named := 0
	for k := 2; k <= len(sheet.Steps); k++ {
		s.m.draft.GoTo(k)
		table := strings.Join(s.m.painted()[3:], "\n")
		if strings.Contains(ansi.Strip(table), "> ") {
			named++
			require.Contains(t, table, newest, "step %d", k)
		}
	}
	require.Greater(t, named, len(sheet.Steps)/2)
}

// However near she goes, a line is one dot thick; on the projector it is two.
func TestLinesAreOneDotThickAtEveryZoom(t *testing.T) {
	sheet := workroom.Draft(figure())
	inked := func(bold bool, zoom int) int {
		s := view.Scene{Sheet: sheet, Piece: pattern.Front, Bold: bold}
		e := view.Eye{Plain: true}
		var p view.Paper
		lines, v := p.Rows(s, e, 100, 30, canvas.Braille, 2, canvas.Palette{})
		for range zoom {
			e = e.Closer(v)
			lines, v = p.Rows(s, e, 100, 30, canvas.Braille, 2, canvas.Palette{})
		}
		n := 0
		for _, l := range lines {
			for _, r := range ansi.Strip(l) {
				if r > 0x2800 && r < 0x2900 {
					n += bitsOn.OnesCount(uint(r - 0x2800))
				}
			}
		}
		return n
	}
	for zoom := range 5 {
		thin, bold := inked(false, zoom), inked(true, zoom)
		require.Positive(t, thin)
		ratio := float64(bold) / float64(thin) // inner lines stay thin before a class too
		require.True(t, ratio > 1.3 && ratio < 2.3, "zoom %d: %d and %d dots", zoom, thin, bold)
		require.Less(t, thin, 3*(200+120), "zoom %d: more dots than three lines across the table", zoom)
	}
}

// Every finding says what it found in a sentence; one that is not passed names
// what to do about it, where there is something to do.
func TestEveryFindingSaysWhatAndHowToCure(t *testing.T) {
	jobs := []pattern.Job{figure(), figure().WithStyle("length", pattern.LengthValue(measure.In.Length(57))), figure().WithBody(measure.HipGirth, measure.In.Length(52))}
	bad := 0
	for _, job := range jobs {
		for _, f := range workroom.Draft(job).Findings {
			says := f.Says.In(measure.In)
			require.Regexp(t, `^[A-Z0-9].*\.$`, says, f.Check)
			require.NotEmpty(t, f.Title)
			if f.Verdict == pattern.Advise || f.Verdict == pattern.Fail {
				bad++
				require.NotEmpty(t, f.Cure.In(measure.In), "%s: %s", f.Check, says)
			}
		}
	}
	require.Positive(t, bad)
}
