package stage

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/text"
)

// wordOf is the first word of the glossary in some texts, the longest that
// begins there; empty if there is none.
func wordOf(texts ...string) string {
	for _, t := range texts {
		if w := firstWord(t); w != "" {
			return w
		}
	}
	return ""
}

func firstWord(words string) string {
	low := spacedOut(words)
	best, at := "", len(low)
	for _, w := range text.Glossary() {
		for _, form := range [...]string{w.Name, w.Name + "s"} {
			i := strings.Index(low, " "+form+" ")
			if i >= 0 && (i < at || i == at && len(w.Name) > len(best)) {
				best, at = w.Name, i
			}
		}
	}
	return best
}

// Word is the trade word nearest to where she looks.
func (b *bench) Word() string {
	if b.OnPage() && b.class.page.Word != "" {
		return b.class.page.Word
	}
	if b.OnPage() {
		if w := firstWord(b.class.page.Words.In(measure.In)); w != "" {
			return w
		}
	}
	if w := b.wordUnder(); w != "" {
		return w
	}
	return firstWord(ansi.Strip(strings.Join(b.shown, " ")))
}

// wordUnder is the word of the mark nearest to the cross-hair.
func (b *bench) wordUnder() string {
	if !b.eye.Hair {
		return ""
	}
	at, ok := b.seen.Under(b.eye.Hairs)
	if !ok {
		return ""
	}
	best, far := "", -1.0
	marks := b.d.Sheet().Marks
	for i := range marks {
		m := &marks[i]
		if m.Piece != at.Piece || m.Gone != 0 {
			continue
		}
		w := firstWord(name(m.Name))
		if w == "" {
			continue
		}
		p := m.At
		if m.Kind != pattern.MarkPoint {
			_, p, _ = m.Path.Nearest(at.At)
		}
		if d := p.Dist(at.At); far < 0 || d < far {
			best, far = w, d
		}
	}
	return best
}
