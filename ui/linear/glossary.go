package linear

import (
	"strings"

	"chalkfold/ui/text"
)

// explain says what a word of the trade means; alone it lists the words.
func (r *room) explain(rest string) {
	if rest == "" {
		var names []string
		for _, w := range text.Glossary() {
			names = append(names, w.Name)
		}
		r.tell(sentence(strings.Join(names, ", ")))
		r.say(text.LinearWordHow)
		return
	}
	w, ok := text.Explain(rest)
	if !ok {
		r.say(text.LinearWordNot, short(rest))
		return
	}
	r.say(text.LinearHelpRow, capital(w.Name), r.d.Words.Pass(w.Says))
}
