package ui

import (
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

// stroke is how long a part of a new line stands before it grows: the whole
// line takes less than a key that is held repeats.
const stroke = 35 * time.Millisecond

// grown says that the newest line may grow.
type grown struct{ serial int }

// grow begins to draw the newest line of a step that was just shown, where she
// wants motion. It is the only thing that moves by itself: nothing blinks,
// turns or ticks.
func (m *Model) grow(id keys.ID) tea.Cmd {
	if id != "step-next" || m.at != desk.Draft || !m.d.Settings.Motion || m.top() != nil {
		return nil
	}
	m.strokes++
	m.draft.Whole()
	if !m.draft.Grow() {
		return nil
	}
	return m.later(stroke, grown{m.strokes})
}

// growOn draws it farther. A key in between has drawn all of it already.
func (m *Model) growOn(g grown) tea.Cmd {
	if g.serial != m.strokes || !m.draft.Grow() {
		return nil
	}
	return m.later(stroke, g)
}

// still ends the motion: whatever comes next finds the whole line.
func (m *Model) still() {
	m.strokes++
	m.draft.Whole()
}
