package ui

import (
	"strings"

	"chalkfold/pattern/laid"
	"chalkfold/ui/text"
)

// sayLayGone says, on opening a session, that a lay that was kept in it does not
// hold any more: the pieces or the cloth have changed since.
func (m *Model) sayLayGone() {
	for _, k := range m.d.Job().Lays {
		sheet := m.d.Sheet()
		if len(k.Placed) == 0 || !sheet.Complete {
			continue
		}
		if s, err := laid.Show(sheet, k.Cloth); err != nil || !s.Dropped.IsEmpty() {
			m.d.Message = strings.TrimSpace(m.d.Message + " " + m.d.Tell(text.OpenedLayGone))
			return
		}
	}
}
