package stage

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
)

// Copied is what was taken of her, a line each with a tab: a table for a letter
// or a sheet, and one that can be pasted here again. Her name is not in it.
func (m *Measure) Copied() string {
	m.refresh()
	job := m.d.Job()
	var b strings.Builder
	for _, r := range m.form.rows {
		if l, taken := job.Body.Get(measure.ID(r.id)); taken {
			b.WriteString(r.title + "\t" + job.Unit.Exact(l) + " " + job.Unit.String() + "\n")
		}
	}
	return b.String()
}

// Copied is every choice with its value.
func (s *Style) Copied() string {
	s.refresh()
	var b strings.Builder
	for _, r := range s.form.rows {
		if r.text != "" {
			b.WriteString(r.title + "\t" + r.text + "\n")
		}
	}
	return b.String()
}

// copyCells is how wide the words are set that are copied.
const copyCells = 78

// Copied is the step with its sum.
func (s *Draft) Copied() string {
	st, ok := s.current()
	if !ok {
		return ""
	}
	return bare(append(s.title(st, copyCells), s.body(st, copyCells)...))
}

// Copied is every finding, a line each with tabs.
func (s *True) Copied() string {
	s.refresh()
	if s.guessing() {
		return ""
	}
	var out []string
	for _, i := range s.rows {
		f := s.sheet().Findings[i]
		out = append(out, s.d.Tell(verdicts[f.Verdict])+"\t"+s.d.Trade(f.Title)+"\t"+s.d.Trade(f.Says.In(s.d.Unit())))
	}
	return bare(out)
}

// Copied is what the words of the stage say.
func (b *bench) Copied() string { return bare(b.shown) }

// bare are lines without their looks, and without blank ones at either end.
func bare(lines []string) string {
	var b strings.Builder
	for _, l := range lines {
		b.WriteString(strings.TrimRight(ansi.Strip(l), " ") + "\n")
	}
	text := strings.Trim(b.String(), "\n")
	if text == "" {
		return ""
	}
	return text + "\n"
}
