package stage

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// terms are the words of the trade, each with the step that is the first to
// use it: there it is underlined, since g explains it.
type terms struct {
	of *pattern.Sheet
	at map[string][]string // by step
}

// first are the words that a step of the sheet uses first.
func (t *terms) first(sheet *pattern.Sheet, step string) []string {
	if t.of != sheet {
		t.of, t.at = sheet, map[string][]string{}
		said := map[string]bool{}
		for i := range sheet.Steps {
			st := &sheet.Steps[i]
			for _, w := range wordsIn(st.Do.In(measure.In) + " " + st.Why.In(measure.In) + " " + st.Slip.In(measure.In)) {
				if !said[w] {
					said[w] = true
					t.at[st.ID] = append(t.at[st.ID], w)
				}
			}
		}
	}
	return t.at[step]
}

// wordsIn are the words of the glossary that a text uses.
func wordsIn(words string) []string {
	low := spacedOut(words)
	var out []string
	for _, w := range text.Glossary() {
		if strings.Contains(low, " "+w.Name+" ") || strings.Contains(low, " "+w.Name+"s ") {
			out = append(out, w.Name)
		}
	}
	return out
}

// spacedOut is a text in small letters with a blank in place of each stop and
// at both ends, so that whole words can be found in it. It stays as long.
func spacedOut(words string) string {
	return " " + strings.Map(func(r rune) rune {
		if strings.ContainsRune(".,;:?()", r) {
			return ' '
		}
		if r >= 'A' && r <= 'Z' {
			return r + 'a' - 'A'
		}
		return r
	}, words) + " "
}

// labelledTerms are lines like those of labelled, with the first of each word
// underlined.
func labelledTerms(d *desk.Desk, label string, width, cols int, body string, role theme.Role, words map[string]bool) []string {
	var out []string
	for i, l := range desk.Wrap(body, cols-width-2) {
		head := ""
		if i == 0 {
			head = label
		}
		out = append(out, " "+d.Paint(theme.Muted, desk.Fit(head, width))+underlined(d, l, role, words))
	}
	return out
}

// underlined paints a line; a word that it underlines is taken out of words.
func underlined(d *desk.Desk, line string, role theme.Role, words map[string]bool) string {
	low := spacedOut(line)
	at, best := len(low), ""
	for w := range words {
		i := strings.Index(low, " "+w+" ")
		if i < 0 {
			i = strings.Index(low, " "+w+"s ")
		}
		if i >= 0 && (i < at || i == at && len(w) > len(best)) {
			at, best = i, w
		}
	}
	if best == "" {
		return d.Paint(role, line)
	}
	delete(words, best)
	to := at + len(best)
	under := d.Settings.Theme.Underlined(role).Render(line[at:to])
	rest := ""
	if to < len(line) {
		rest = underlined(d, line[to:], role, words)
	}
	if at == 0 {
		return under + rest
	}
	return d.Paint(role, line[:at]) + under + rest
}
