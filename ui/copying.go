package ui

import (
	"encoding/base64"
	"os"
	"path/filepath"

	tea "github.com/charmbracelet/bubbletea"

	"chalkfold/ui/files"
	"chalkfold/ui/text"
)

// copied is what became of copying.
type copied struct {
	path string
	err  error
}

// copyable is a stage whose words can be taken along.
type copyable interface{ Copied() string }

// copiedFile is where it is written to as well: not every terminal passes the
// clipboard on.
const copiedFile = "copied.txt"

// clipMost is the longest text that is sent to the clipboard; terminals cut or
// drop longer ones.
const clipMost = 48 << 10

// copyOut puts the words of the stage on the clipboard and into a file.
func (m *Model) copyOut() tea.Cmd {
	cmd := m.settle()
	_ = m.stage().View(m.body()) // what is copied is what is shown now
	s, ok := m.stage().(copyable)
	words := ""
	if ok {
		words = s.Copied()
	}
	if words == "" {
		m.d.Message, m.d.Warn = m.d.Tell(text.CopiedNone), true
		return cmd
	}
	m.over = nil
	clip := m.clip
	return tea.Batch(cmd, m.guard(func() tea.Msg {
		if clip != nil && len(words) <= clipMost {
			clip(words)
		}
		m.files.Lock()
		defer m.files.Unlock()
		f, err := files.Paths(os.Getenv)
		if err != nil {
			return copied{err: err}
		}
		path := filepath.Join(f.State, copiedFile)
		if err = files.Folder(f.State); err == nil {
			err = files.Write(path, []byte(words), files.Options{Mode: files.Private})
		}
		return copied{path, err}
	}))
}

func (m *Model) copiedNow(c copied) {
	if c.err != nil {
		m.d.Message, m.d.Warn = m.d.Tell(text.CopiedOnly, m.d.Plain(files.Shown(c.err.Error()))), true
		return
	}
	m.d.Say(text.Copied, files.Shown(c.path))
}

// clipboard is the sequence that hands a text to the terminal's clipboard (OSC
// 52, as xterm has it). Nothing is asked and nothing answers.
func clipboard(words string) string {
	return "\x1b]52;c;" + base64.StdEncoding.EncodeToString([]byte(words)) + "\a"
}
