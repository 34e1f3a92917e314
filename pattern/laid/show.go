package laid

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
)

// Shown is a lay that can be shown at once.
type Shown struct {
	Work
	Lay     lay.Lay
	Kept    bool             // hers; else the first lay
	Dropped measure.Sentence // why the one she kept is not shown; empty: none was kept
}

// Show gives the kept lay of a sheet's cloth if it verifies, else the first lay
// round the pins that she kept. It never searches.
func Show(s *pattern.Sheet, cloth string) (Shown, error) {
	w, err := New([]*pattern.Sheet{s}, cloth)
	if err != nil {
		return Shown{Work: w}, err
	}
	return w.Show()
}

// Show is the same for work of one sheet that was taken already.
func (w Work) Show() (Shown, error) {
	k, kept := w.Sheets[0].Job.Lay(w.Cloth.Name)
	if !kept {
		l, err := lay.Shelf(w.Problem)
		return Shown{Work: w, Lay: l}, err
	}
	w = w.Pinned(k)
	if len(k.Placed) == 0 { // pins alone
		l, err := lay.Shelf(w.Problem)
		return Shown{Work: w, Lay: l}, err
	}
	l, dropped := w.Again(k)
	if dropped.IsEmpty() {
		return Shown{Work: w, Lay: l, Kept: true}, nil
	}
	l, err := lay.Shelf(w.Problem)
	return Shown{Work: w, Lay: l, Dropped: dropped}, err
}

// Again lays the pieces as they were kept and verifies them; the sentence says
// why they cannot lie so any more.
func (w Work) Again(k pattern.KeptLay) (lay.Lay, measure.Sentence) {
	if math.Abs(float64(k.Width-w.Cloth.Width)) > 1e-6 || k.Fold != w.Cloth.Fold {
		return lay.Lay{}, measure.Tell("The lay that was kept is for cloth {say} wide, "+folds(k.Fold)+"; this one is {say}, "+folds(w.Cloth.Fold)+".", k.Width, w.Cloth.Width)
	}
	changed := measure.Tell("The pieces or the cloth changed since the lay was kept: it does not hold any more.")
	var placed []lay.Placed
	for _, p := range k.Placed {
		q, err := w.placed(p)
		if err != nil {
			return lay.Lay{}, changed
		}
		placed = append(placed, q)
	}
	if w.Cloth.Fold == lay.OffCentre {
		if w.Problem.Cloth.Depth = steps(k.Depth); w.Problem.Cloth.Depth <= 0 {
			return lay.Lay{}, changed
		}
	}
	l, faults := lay.Kept(w.Problem, placed)
	if len(faults) > 0 {
		return lay.Lay{}, changed
	}
	l.Evaluations, l.First = k.Evaluations, k.Evaluations == 0
	return l, measure.Sentence{}
}

// folds are the ways to fold, in words.
func folds(fold string) string {
	switch fold {
	case lay.Flat:
		return "flat"
	case lay.ToMiddle:
		return "both edges folded to the middle"
	case lay.OffCentre:
		return "folded off centre"
	case lay.Across:
		return "folded across"
	}
	return "folded lengthwise"
}

// Folds is the fold of a cloth in words.
func Folds(c pattern.Cloth) string { return folds(c.Fold) }

// Buy is what to ask for in the shop for a lay.
func (w Work) Buy(l lay.Lay) lay.Purchase { return lay.Buy(l.Length, w.Problem.Cloth) }

// Says is the cloth to buy beside the hand rule: which lay it is, and both
// amounts where they differ.
func (s Shown) Says() measure.Sentence {
	words := "Laid out{}: " + s.Buy(s.Lay).Says
	if !s.Kept {
		words += " by a first lay, side by side; a search may need less"
	}
	if h, ok := s.Hand(s.Cloth.Width); ok {
		words += ". By the hand rule: " + lay.Says(h.Yards, h.Metric)
	}
	return measure.Tell(words+".", s.Folded())
}

// Folded says how the cloth is folded, where that is not selvage to selvage.
func (s Shown) Folded() measure.Sentence {
	switch s.Cloth.Fold {
	case lay.OffCentre:
		return measure.Tell(", one selvage folded in by {say}", length(s.Lay.Depth))
	case lay.Lengthwise:
		return measure.Sentence{}
	}
	return measure.Tell(", " + folds(s.Cloth.Fold))
}

// length and steps carry places between sessions and lays.
func length(steps int64) measure.Length { return measure.Length(float64(steps) / lay.PerMM) }

func steps(l measure.Length) int64 { return int64(math.Floor(float64(l)*lay.PerMM + 0.5)) }
