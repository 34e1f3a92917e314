package keys

import "strings"

// Markdown is the table for the README.
func Markdown() string { return Table().Markdown() }

// Roff is the table for the man page.
func Roff() string { return Table().Roff() }

// Plain is the table as lines of text.
func Plain() string { return Table().Plain() }

// Markdown is one table for each place.
func (s Set) Markdown() string {
	var b strings.Builder
	s.each(func(w Where, rows []Action) {
		b.WriteString("### " + w.Title() + "\n\n| Key | Action | What it does |\n| --- | --- | --- |\n")
		for _, a := range rows {
			b.WriteString("| " + cell(a.keyName()) + " | " + cell(a.Title) + " | " + cell(a.Says) + " |\n")
		}
		b.WriteString("\n")
	})
	return strings.TrimSuffix(b.String(), "\n")
}

// Roff is one sub-section for each place, one paragraph for each action.
func (s Set) Roff() string {
	var b strings.Builder
	s.each(func(w Where, rows []Action) {
		b.WriteString(".SS " + roff(w.Title()) + "\n")
		for _, a := range rows {
			b.WriteString(".TP\n.B " + roff(a.keyName()) + "\n" + roff(a.Title+": "+a.Says) + "\n")
		}
	})
	return b.String()
}

// Plain is the same in plain lines.
func (s Set) Plain() string {
	var b strings.Builder
	s.each(func(w Where, rows []Action) {
		b.WriteString(w.Title() + "\n")
		for _, a := range rows {
			name := a.keyName()
			b.WriteString("  " + name + strings.Repeat(" ", max(1, 24-len(name))) + a.Title + ": " + a.Says + "\n")
		}
	})
	return b.String()
}

// each goes through the places that have rows.
func (s Set) each(do func(Where, []Action)) {
	for _, w := range Wheres() {
		if rows := s.In(w); len(rows) > 0 {
			do(w, rows)
		}
	}
}

// keyName is the shown keys, or how to reach an action that has none.
func (a Action) keyName() string {
	if a.Shown == "" {
		return "F2, by name"
	}
	return a.Shown
}

func cell(s string) string { return strings.ReplaceAll(s, "|", `\|`) }

// roff guards what the man page's language would read as its own: hyphens,
// backslashes, and a dot or quote that begins a line.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(s)
	if strings.HasPrefix(s, ".") || strings.HasPrefix(s, "'") {
		s = `\&` + s
	}
	return s
}
