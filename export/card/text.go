package card

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"chalkfold/export"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Options are what may differ between two cards of one draft.
type Options struct {
	Unit measure.Unit
	Card *Card // what Make gave for the draft and the unit; nil: it is worked out here
}

// card is the card to write.
func (o Options) card(s *pattern.Sheet) Card {
	if o.Card != nil {
		return *o.Card
	}
	return Make(s, o.Unit)
}

// wide is the width of the text card: a terminal of 80 columns, or paper.
const wide = 78

// WriteText writes the card as plain text.
func WriteText(w io.Writer, s *pattern.Sheet, o Options) error {
	if err := ready(s, o.Unit); err != nil {
		return err
	}
	c := o.card(s)
	t := textCard{grid: gridOf(o.Unit)}
	t.head(c)
	for _, p := range c.Pieces {
		t.piece(p)
	}
	t.tracedPieces(c.Traced)
	t.par("", c.Caution)
	_, err := io.WriteString(w, t.b.String())
	return err
}

// ready refuses a draft that is not finished: half a card is cloth spoiled.
func ready(s *pattern.Sheet, u measure.Unit) error {
	marked := 0
	for _, p := range s.Pieces {
		if len(p.CutLine) > 0 {
			marked++
		}
	}
	if s.Complete && marked > 0 {
		return nil
	}
	r := &measure.Refusal{Where: "card", Wrong: "the draft is not finished, so there is nothing to mark yet", Works: "finish the draft first"}
	if len(s.Missing) > 0 {
		names := make([]string, len(s.Missing))
		for i, m := range s.Missing {
			names[i] = term(m.ID)
		}
		r.Works = "measure " + strings.Join(names, ", ")
	} else if len(s.Refused) > 0 {
		r.Wrong, r.Works = s.Refused[0].Says.In(u), s.Refused[0].Cure.In(u)
	}
	return r
}

type textCard struct {
	b    strings.Builder
	grid grid
}

func (t *textCard) line(s string) {
	t.b.WriteString(strings.TrimRight(s, " "))
	t.b.WriteByte('\n')
}

// par writes a paragraph, its first line after the lead, the others under it.
func (t *textCard) par(lead, text string) {
	under := strings.Repeat(" ", utf8.RuneCountInString(lead))
	for i, l := range wrap(text, wide-len(under)) {
		if i > 0 {
			lead = under
		}
		t.line(lead + l)
	}
}

// wrap breaks text at spaces, but not inside a mixed number such as "1 1/2".
func wrap(text string, width int) []string {
	var out []string
	line := ""
	for _, word := range export.Unbroken(text) {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > width {
			out = append(out, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	return append(out, line)
}

func (t *textCard) head(c Card) {
	t.line("CHALK CARD")
	t.line(title(c))
	t.line("")
	for _, s := range c.Says {
		t.par("- ", s)
	}
	t.line("")
}

// title says whose card it is.
func title(c Card) string {
	parts := []string{c.Garment}
	if c.Client != "" {
		parts = []string{c.Client, c.Garment}
	}
	switch c.Method {
	case pattern.Thumb:
		parts = append(parts, "drafted by rule of thumb")
	case pattern.Measured:
		parts = append(parts, "drafted by measure")
	case pattern.Direct:
		parts = append(parts, "drafted as a direct block")
	default:
		parts = append(parts, c.Method)
	}
	unit := map[measure.Unit]string{measure.In: "inches", measure.Cm: "centimetres", measure.Mm: "millimetres"}[c.Unit]
	return strings.Join(append(parts, "all lengths in "+unit), ", ")
}

func pieceTitle(number, of int, title, cut string) string {
	if of > 0 {
		return fmt.Sprintf("%d of %d %s: %s", number, of, title, cut)
	}
	return title + ": " + cut
}

func (t *textCard) piece(p Piece) {
	t.line(strings.Repeat("=", wide))
	t.par("", pieceTitle(p.Number, p.Of, strings.ToUpper(p.Title), p.Cut))
	t.line("")
	for _, s := range p.Set {
		t.par("  ", s)
	}
	t.par("  Levels: ", levelList(p.Levels, t.grid))
	t.line("")
	t.table(p.Rows)
	t.list("Dart", p.Darts)
	t.list("Clips into the edge (cutting line)", p.Notches)
	t.par("  ", p.Grain)
	t.proofs(p.Proofs)
	t.line("")
}

func levelList(levels []measure.Length, g grid) string {
	names := make([]string, len(levels))
	for i, l := range levels {
		names[i] = g.down(l)
	}
	return strings.Join(names, ", ")
}

// cells are a row as words: join, name, cut down, cut out, stitch down,
// stitch out.
func cells(r Row, g grid) [6]string {
	out := [6]string{string(r.Join), r.Name}
	if r.Name == "" {
		out[1] = ". " + plainName(r.Edge)
	}
	put := func(p *Place, aside bool, i int) {
		switch {
		case p == nil:
			out[i], out[i+1] = "-", "-"
		case aside:
			out[i], out[i+1] = "("+g.down(p.Down)+")", "("+g.out(p.Out)+")"
		default:
			out[i], out[i+1] = g.down(p.Down), g.out(p.Out)
		}
	}
	put(r.Cut, r.AsideCut, 2)
	put(r.Stitch, r.AsideStitch, 4)
	return out
}

func (t *textCard) table(rows []Row) {
	heads := [6]string{"joined", "mark", "down", "out", "down", "out"}
	lines := [][6]string{heads}
	for _, r := range rows {
		lines = append(lines, cells(r, t.grid))
	}
	var size [6]int
	for _, l := range lines {
		for i, c := range l {
			size[i] = max(size[i], utf8.RuneCountInString(c))
		}
	}
	write := func(l [6]string) {
		var b strings.Builder
		b.WriteString("  ")
		for i, c := range l {
			b.WriteString(c)
			b.WriteString(strings.Repeat(" ", size[i]-utf8.RuneCountInString(c)))
			switch i {
			case 3:
				b.WriteString(" | ")
			default:
				b.WriteString("  ")
			}
		}
		t.line(b.String())
	}
	gap := strings.Repeat(" ", 2+size[0]+2+size[1]+2)
	cut := size[2] + 2 + size[3]
	t.line(gap + "CUTTING" + strings.Repeat(" ", max(cut-len("CUTTING"), 0)) + " | STITCHING")
	for i, l := range lines {
		write(l)
		if i > 0 && len(rows[i-1].Notes) > 0 {
			t.par(strings.Repeat(" ", 2+size[0]+2)+"  ^ ", strings.Join(rows[i-1].Notes, "; "))
		}
	}
	t.line("")
}

func (t *textCard) list(head string, items []string) {
	if len(items) == 0 {
		return
	}
	t.line("  " + head)
	for _, s := range items {
		t.par("    ", s)
	}
	t.line("")
}

func (t *textCard) proofs(list []Proof) {
	if len(list) == 0 {
		return
	}
	t.line("")
	t.line("  Proof, by tape along the stitching line, before the shears")
	for _, p := range list {
		t.par("    [ ] ", proof(p, t.grid))
	}
}

func proof(p Proof, g grid) string {
	say := fmt.Sprintf("%s %s, give or take %s", p.What, g.tape(p.Length), g.tape(p.Within))
	if p.Other != "" {
		say += "; " + p.Other
	}
	return say
}

func (t *textCard) tracedPieces(list []Traced) {
	if len(list) == 0 {
		return
	}
	t.line(strings.Repeat("=", wide))
	t.line("FACINGS, traced by width")
	t.line("")
	for _, f := range list {
		t.par("  ", pieceTitle(f.Number, f.Of, f.Title, f.Cut)+".")
		for _, s := range f.Says {
			t.par("    ", s)
		}
	}
	t.line("")
}
