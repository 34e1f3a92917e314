package shop

import (
	"sync"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
)

// Lays are the lays of the cloths of one draft, each worked out when it is
// first asked for and once only: the guide, the slip and the lay itself tell of
// the same one. Several writers may ask at a time.
type Lays struct {
	sheet *pattern.Sheet
	unit  measure.Unit
	mu    sync.Mutex
	once  map[string]func() (laid.Shown, error)
}

// NewLays are the lays of a draft, at the usual width where none is named.
func NewLays(s *pattern.Sheet, u measure.Unit) *Lays {
	return &Lays{sheet: s, unit: u, once: map[string]func() (laid.Shown, error){}}
}

// Or are these lays; where there are none, those of a draft.
func (l *Lays) Or(s *pattern.Sheet, u measure.Unit) *Lays {
	if l != nil {
		return l
	}
	return NewLays(s, u)
}

// Of is the lay of a cloth at the width of [Of]: the one that was kept, or the
// first lay. It never searches.
func (l *Lays) Of(name string) (laid.Shown, error) {
	l.mu.Lock()
	work := l.once[name]
	if work == nil {
		work = sync.OnceValues(func() (laid.Shown, error) { return shown(l.sheet, name, l.unit) })
		l.once[name] = work
	}
	l.mu.Unlock()
	return work()
}

// Says is the cloth to buy by the lay of the cloth, in one sentence that says
// which lay it is; empty where the pieces cannot be laid.
func (l *Lays) Says(name string) string {
	shown, err := l.Of(name)
	if err != nil {
		return ""
	}
	buy := shown.Buy(shown.Lay).Says
	if shown.Kept {
		return "Laid out, as kept: " + buy + shown.Folded().In(l.unit) + "."
	}
	return "By a first lay, side by side: " + buy + shown.Folded().In(l.unit) + "; a search may need less."
}

// shown works the lay of a cloth out.
func shown(s *pattern.Sheet, name string, u measure.Unit) (laid.Shown, error) {
	c, named := laid.ClothOf(s.Job, name)
	if !named {
		i := 0
		if name != Main {
			i = 1
		}
		c.Width = usualWidths[u][i]
	}
	w, err := laid.On([]*pattern.Sheet{s}, c)
	w.Named = named
	if err != nil {
		return laid.Shown{Work: w}, err
	}
	return w.Show()
}
