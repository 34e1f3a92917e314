package handout

import (
	"fmt"
	"io"
	"strings"

	"chalkfold/export/leaflet"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Options of a handout.
type Options struct {
	Unit  measure.Unit
	Paper pdf.Paper
	Warn  func(string)
}

// WritePDF writes the handout for printing.
func WritePDF(w io.Writer, s *pattern.Sheet, o Options) error {
	return build(s, o.Unit).WritePDF(w, leaflet.Options{Paper: o.Paper, Warn: o.Warn})
}

const blank = "______"

// drawnHigh is how high the drawing of a step is at most, and stepHigh the
// room that is kept for a step.
const (
	drawnHigh = 46.0
	stepHigh  = 78.0
)

func build(s *pattern.Sheet, u measure.Unit) *leaflet.Leaflet {
	title := leaflet.Title(s.Garment) + ", " + method(s.Method)
	l := &leaflet.Leaflet{Title: title + ": step by step", Foot: "Handout: " + title}
	l.Texts(
		"Work with a tape, a ruler and chalk, on paper or on cloth. Do one step, look at its drawing, go on. What a step makes is heavy and named; the piece lies on the table as it will on cloth, the neck at the left, the fold or the centre at the upper edge.",
		"Lengths are in "+leaflet.UnitWords(u)+". Work out each sum with the measures of the one you draft for, write the result in the blank, then mark it.",
	)
	l.Heading(1, "Measures")
	measures(l, s)
	piece := pattern.PieceID("")
	begun := map[pattern.PieceID]bool{}
	for _, st := range s.Steps {
		if st.Piece != piece {
			if piece = st.Piece; !begun[piece] {
				l.Page()
			}
			begun[piece] = true
			l.Keep(stepHigh)
			l.Heading(1, leaflet.Title(string(piece)))
		}
		step(l, s, st, u)
	}
	l.Page()
	key(l, s, u)
	return l
}

func method(m string) string {
	switch m {
	case pattern.Measured:
		return "from measurements"
	case pattern.Direct:
		return "as a block by direct measure"
	case pattern.Thumb:
		return "by the rule of thumb"
	}
	return leaflet.Words(m)
}

// measures is a table to fill in with the learner's own figures.
func measures(l *leaflet.Leaflet, s *pattern.Sheet) {
	var rows [][]string
	for _, f := range s.Figures {
		m, _ := measure.Find(f.ID)
		rows = append(rows, []string{leaflet.Term(f.ID), m.Landmarks, ""})
	}
	l.Table(pdf.Table{Heads: []string{"Measure", "From where to where", "hers"}, Rows: rows, Least: []float64{0, 0, 8}, Tall: 2, Lines: true})
}

func step(l *leaflet.Leaflet, s *pattern.Sheet, st pattern.Step, u measure.Unit) {
	l.Keep(stepHigh)
	l.Heading(2, fmt.Sprintf("%d. %s", st.Number, st.Title))
	if !st.Drawn {
		l.Text(st.Waits.In(u))
		return
	}
	do := st.Do.In(u)
	if !st.Sum.IsZero() {
		do = without(do, u.Tape(st.Sum.Result()))
	}
	l.Text(do)
	if sum := blankSum(st, u); sum != "" {
		l.Text("Sum: " + sum)
	}
	if why := st.Why.In(u); why != "" {
		l.Text("Why: " + why)
	}
	f := leaflet.Step(s, st, drawnHigh)
	if len(f.Lines) > 0 {
		l.Figure(f)
	}
}

// blankSum is the sum with the measures by name and the result left out.
func blankSum(st pattern.Step, u measure.Unit) string {
	sum := st.Sum.Private(u)
	if before, _, ok := cutLast(sum, " = "); ok {
		return before + " = " + blank
	}
	return ""
}

func cutLast(s, sep string) (before, after string, ok bool) {
	i := strings.LastIndex(s, sep)
	if i < 0 {
		return s, "", false
	}
	return s[:i], s[i+len(sep):], true
}

// without puts a blank in the place of a number where it stands alone: not
// the 2 of "2 1/2", nor its half.
func without(text, number string) string {
	if number == "" || number == "0" {
		return text
	}
	var b strings.Builder
	for {
		i := strings.Index(text, number)
		if i < 0 {
			return b.String() + text
		}
		before, after := b.String()+text[:i], text[i+len(number):]
		b.WriteString(text[:i])
		if alone(before, after) {
			b.WriteString(blank)
		} else {
			b.WriteString(number)
		}
		text = after
	}
}

func alone(before, after string) bool {
	digit := func(c byte) bool { return c >= '0' && c <= '9' }
	if n := len(before); n > 0 {
		c := before[n-1]
		if digit(c) || c == '/' || c == '.' || c == ' ' && n > 1 && digit(before[n-2]) {
			return false
		}
	}
	if len(after) == 0 {
		return true
	}
	if c := after[0]; digit(c) || c == '/' || c == '.' && len(after) > 1 && digit(after[1]) {
		return false
	}
	// A whole number with a fraction behind it is not this number.
	word, _, _ := strings.Cut(strings.TrimPrefix(after, " "), " ")
	return !(after[0] == ' ' && len(word) > 0 && digit(word[0]) && strings.Contains(word, "/"))
}

// key has the sums with their numbers.
func key(l *leaflet.Leaflet, s *pattern.Sheet, u measure.Unit) {
	l.Heading(1, "Key, for the tutor")
	l.Text("The sums of this draft, with the measures that it was made from.")
	var rows [][]string
	for _, st := range s.Steps {
		if st.Drawn && !st.Sum.IsZero() {
			rows = append(rows, []string{fmt.Sprint(st.Number), st.Title, st.Sum.Sum(u)})
		}
	}
	l.Table(pdf.Table{Heads: []string{"Step", "", "Sum"}, Rows: rows, Right: []bool{true}})
	var slips []pdf.Item
	for _, st := range s.Steps {
		if slip := st.Slip.In(u); st.Drawn && slip != "" {
			slips = append(slips, pdf.Item{Text: fmt.Sprintf("%d. %s", st.Number, slip)})
		}
	}
	if len(slips) > 0 {
		l.Heading(2, "Slips to look for")
		l.Items(pdf.Bullet, slips)
	}
}
