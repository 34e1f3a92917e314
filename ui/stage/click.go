package stage

import (
	"strconv"
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/outlet"
)

// Click takes the row that stands on a line of the screen; ok is false where
// none does. The line is as it is seen, without its looks.
func (m *Measure) Click(line string) (ask desk.Ask, ok bool) {
	m.refresh()
	if m.eye.Hair {
		return desk.Ask{}, false
	}
	return m.form.click(line, titleCells, m.hands())
}

// Click takes the choice on a line.
func (s *Style) Click(line string) (ask desk.Ask, ok bool) {
	s.refresh()
	if s.eye.Hair {
		return desk.Ask{}, false
	}
	ask, ok = s.form.click(line, choiceCells, s.hands())
	return s.followed(ask), ok
}

// click goes to the row whose title stands at the beginning of a line, with
// what was typed accepted. On the row in hand a pick goes on to its next option.
func (f *form) click(line string, cells int, h hands) (desk.Ask, bool) {
	for i, r := range f.rows {
		if !begins(line, desk.Fit(shortTitle(r.title, cells-1), cells-1)+" ") {
			continue
		}
		if i == f.at && f.typing && r.pick {
			return h.turn(1), true
		}
		var ask desk.Ask
		if f.typing {
			ask = h.accept()
		}
		f.to(i)
		f.typing = true
		return ask, true
	}
	return desk.Ask{}, false
}

// begins says that a line is the row of those words, in hand or not.
func begins(line, words string) bool {
	for _, m := range [...]string{marker(false), marker(true)} {
		if strings.HasPrefix(line, m+words) || strings.TrimRight(line, " ") == strings.TrimRight(m+words, " ") {
			return true
		}
	}
	return false
}

// Click goes to the step on a line of the list of steps.
func (s *Draft) Click(line string) (desk.Ask, bool) {
	steps := s.d.Sheet().Steps
	for i := range steps {
		if !s.Typing() && begins(line, s.listed(i)) {
			s.GoTo(i + 1)
			return desk.Ask{}, true
		}
	}
	return desk.Ask{}, false
}

// Click takes the finding on a line in hand; the one in hand shows its place.
func (s *True) Click(line string) (desk.Ask, bool) {
	s.refresh()
	if s.Typing() || s.guessing() {
		return desk.Ask{}, false
	}
	for i, r := range s.rows {
		f := s.sheet().Findings[r]
		word := desk.Fit(s.d.Tell(verdicts[f.Verdict]), 7)
		if !begins(line, " "+word+s.d.Trade(f.Title)) {
			continue
		}
		if i == s.at {
			return s.goThere(), true
		}
		s.move(i - s.at)
		return desk.Ask{}, true
	}
	return desk.Ask{}, false
}

// Click ticks the format on a line.
func (s *Cut) Click(line string) (desk.Ask, bool) {
	if s.Typing() {
		return desk.Ask{}, false
	}
	for i, f := range outlet.Formats() {
		for _, box := range [...]string{"[ ] ", "[x] "} {
			if begins(line, box+desk.Fit(s.d.Trade(f.Title), 16)) {
				s.move(i - s.at)
				return s.Do("tick"), true
			}
		}
	}
	return desk.Ask{}, false
}

// listed is how a step begins in the list of steps.
func (s *Draft) listed(i int) string {
	return desk.Fit(strconv.Itoa(i+1), 4) + desk.Fit(pieceTitle(s.d, s.d.Sheet().Steps[i].Piece), 16)
}
