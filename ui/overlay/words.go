package overlay

import (
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// Words is the glossary: every trade word with one sentence.
func Words(d *desk.Desk) desk.Overlay { return WordsAt(d, "") }

// WordsAt is the glossary with a word typed already.
func WordsAt(d *desk.Desk, word string) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.WordsTitle), how: text.GlossaryHow, field: text.FindLabel, typed: word}
	var rows []row
	for _, w := range text.Glossary() {
		rows = append(rows, row{title: capital(d.Trade(w.Name)), says: d.Trade(w.Says), do: func() desk.Ask { return desk.Ask{Close: true} }})
	}
	b.rows = func(typed string) []row { return found(rows, typed, true) }
	return b
}

// plainID is an id as words: "front_neck_facing" is "Front neck facing".
func plainID(id string) string { return capital(strings.ReplaceAll(id, "_", " ")) }

func capital(s string) string {
	for i, r := range s {
		return strings.ToUpper(string(r)) + s[i+len(string(r)):]
	}
	return s
}

// sentencesOf are the paragraphs of a text.
func sentencesOf(words string) []string { return strings.Split(words, "\n") }
