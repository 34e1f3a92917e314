package ui

import (
	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/desk"
	"chalkfold/ui/files"
	"chalkfold/ui/settings"
	"chalkfold/ui/text"
)

// settingsKept is what became of writing the settings down.
type settingsKept struct{ err error }

// keepSettings writes down what she changed of the looks, so that they are the
// same the next time. On the projector nothing is: that room is another's.
func (m *Model) keepSettings(was, is desk.Settings) tea.Cmd {
	values := changedSettings(was, is)
	folder := is.Config
	if folder == "" || m.d.Projecting || len(values) == 0 {
		return nil
	}
	return m.guard(func() tea.Msg {
		m.files.Lock()
		defer m.files.Unlock()
		return settingsKept{settings.Keep(folder, values...)}
	})
}

// changedSettings are the settings that differ, as they stand in the file.
func changedSettings(was, is desk.Settings) []settings.Value {
	var out []settings.Value
	add := func(changed bool, name, literal string) {
		if changed {
			out = append(out, settings.Value{Name: name, Literal: literal})
		}
	}
	add(was.Theme.Name() != is.Theme.Name(), settings.Theme, settings.Word(is.Theme.Name()))
	add(was.Glyphs != is.Glyphs, settings.Glyphs, settings.Word(is.Glyphs.String()))
	add(was.Unit != is.Unit, settings.Unit, settings.Word(is.Unit.String()))
	add(was.Comma != is.Comma, settings.Comma, settings.Truth(is.Comma))
	add(was.Mouse != is.Mouse, settings.Mouse, settings.Truth(is.Mouse))
	add(was.Motion != is.Motion, settings.Motion, settings.Truth(is.Motion))
	add(was.Aspect != is.Aspect, settings.Aspect, settings.Number(is.Aspect))
	return out
}

// settingsDone says so where they could not be written; the looks are changed
// all the same.
func (m *Model) settingsDone(k settingsKept) {
	if k.err != nil {
		m.d.Message, m.d.Warn = m.d.Tell(text.SettingNotKept, m.d.Plain(files.Shown(k.err.Error()))), true
	}
}

// warn tells what is wrong with the file of settings, in as much as one line
// holds.
func (m *Model) warn(told []string) {
	switch len(told) {
	case 0:
		return
	case 1:
		m.d.Message = m.d.Plain(told[0]) + "."
	default:
		m.d.Message = m.d.Tell(text.SettingsWrong, len(told))
	}
	m.d.Warn = true
}
