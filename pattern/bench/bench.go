package bench

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Step is the recipe of one step: one action, one new thing on the drawing.
type Step struct {
	ID      string
	Piece   pattern.PieceID
	Title   string
	Why     measure.Sentence
	Slip    measure.Sentence
	Rule    measure.Sentence             // the rule it goes by, unless Draw says another for this body
	Needs   []measure.ID                 // measurements that it reads
	Choices []pattern.ChoiceID           // choices that it reads
	Uses    []string                     // marks that must stand: "front.underarm"
	Also    func(pattern.Known) []string // further marks that must stand, by what was chosen
	If      func(pattern.Known) bool     // nil: always; else the step is left out
	Draw    func(*Pen)
}

// Result is what came of a recipe.
type Result struct {
	Steps   []pattern.Step
	Marks   []pattern.Mark
	Refused []pattern.Refused
}

// Run performs the steps in order.
func Run(k pattern.Known, steps []Step) Result {
	taken := make([]*Step, 0, len(steps))
	for i := range steps {
		if steps[i].If == nil || steps[i].If(k) {
			taken = append(taken, &steps[i])
		}
	}
	b := &bench{
		known: k,
		steps: make([]pattern.Step, 0, len(taken)),
		marks: make([]pattern.Mark, 0, 4*len(taken)),
	}
	for i, s := range taken {
		b.perform(i+1, s)
	}
	return Result{b.steps, b.marks, b.refused}
}

type bench struct {
	known   pattern.Known
	steps   []pattern.Step
	marks   []pattern.Mark
	refused []pattern.Refused
}

func (b *bench) perform(n int, s *Step) {
	rec := pattern.Step{
		Number: n, ID: s.ID, Piece: s.Piece, Title: s.Title,
		Why: s.Why, Slip: s.Slip, Rule: s.Rule,
	}
	for _, id := range s.Needs {
		rec.From = append(rec.From, string(id))
		if f, ok := b.known.Figure(id); ok && f.Proposed {
			rec.Assumed = append(rec.Assumed, id)
		}
	}
	for _, id := range s.Choices {
		rec.From = append(rec.From, string(id))
	}
	if rec.Waits = b.waits(s); rec.Waits.IsEmpty() {
		p := &Pen{b: b, rec: &rec, K: b.known}
		s.Draw(p)
		if p.stop {
			rec.Marks = nil
			rec.Waits = b.refused[len(b.refused)-1].Says
		} else {
			rec.Drawn = true
			for _, m := range p.marks {
				b.put(m)
			}
		}
	}
	b.steps = append(b.steps, rec)
}

// waits says what a step still waits for, in words; empty if nothing.
func (b *bench) waits(s *Step) measure.Sentence {
	for _, id := range s.Needs {
		if _, ok := b.known.Figure(id); !ok {
			return measure.Tell("waits for the measurement: " + plain(id))
		}
	}
	for _, id := range s.Choices {
		if set, ok := b.known.Setting(id); ok && !set.Known() {
			return measure.Tell("waits for the measurement: " + plain(set.Default.Waits[0]))
		}
	}
	uses := s.Uses
	if s.Also != nil {
		uses = append(uses[:len(uses):len(uses)], s.Also(b.known)...)
	}
	for _, name := range uses {
		if b.find(name) < 0 {
			return measure.Tell("waits for an earlier step: " + strings.ReplaceAll(strings.ReplaceAll(name, ".", ", "), "_", " "))
		}
	}
	return measure.Sentence{}
}

func plain(id measure.ID) string {
	if m, ok := measure.Find(id); ok {
		return m.Term
	}
	return string(id)
}

// put lays a mark on the bench; one of the same name gives way to it.
func (b *bench) put(m pattern.Mark) {
	for i := range b.marks {
		old := &b.marks[i]
		if old.Gone == 0 && old.Piece == m.Piece && old.Name == m.Name && (old.Kind == pattern.MarkPoint) == (m.Kind == pattern.MarkPoint) {
			old.Gone = m.Born
		}
	}
	b.marks = append(b.marks, m)
}

// find returns the index of the standing mark "piece.name", or -1.
func (b *bench) find(full string) int {
	piece, name, _ := strings.Cut(full, ".")
	for i := len(b.marks) - 1; i >= 0; i-- {
		m := &b.marks[i]
		if m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return i
		}
	}
	return -1
}

// Pen is what a step draws with.
type Pen struct {
	K     pattern.Known
	b     *bench
	rec   *pattern.Step
	marks []pattern.Mark
	stop  bool
}

// At returns a standing point "front.underarm". Steps name such points in
// Uses, so it is there.
func (p *Pen) At(full string) geom.Point {
	piece, name, _ := strings.Cut(full, ".")
	for i := len(p.b.marks) - 1; i >= 0; i-- {
		m := &p.b.marks[i]
		if m.Kind == pattern.MarkPoint && m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return m.At
		}
	}
	return geom.Point{}
}

// Line returns a standing line.
func (p *Pen) Line(full string) geom.Path {
	piece, name, _ := strings.Cut(full, ".")
	for i := len(p.b.marks) - 1; i >= 0; i-- {
		m := &p.b.marks[i]
		if m.Kind != pattern.MarkPoint && m.Gone == 0 && m.Name == name && string(m.Piece) == piece {
			return m.Path
		}
	}
	return nil
}

// Piece is the piece that the step draws on.
func (p *Pen) Piece() pattern.PieceID { return p.rec.Piece }

// Here returns the full name of a mark on the step's own piece.
func (p *Pen) Here(name string) string { return string(p.rec.Piece) + "." + name }

// Point makes a named point.
func (p *Pen) Point(name string, at geom.Point) {
	p.add(pattern.Mark{Name: name, Kind: pattern.MarkPoint, At: at})
}

// Draw makes a line that stays.
func (p *Pen) Draw(name string, path geom.Path, role pattern.Role) {
	p.add(pattern.Mark{Name: name, Kind: pattern.MarkLine, Path: path, Role: role})
}

// Guide makes a line that only helps to draw.
func (p *Pen) Guide(name string, points ...geom.Point) {
	p.add(pattern.Mark{Name: name, Kind: pattern.MarkGuide, Path: geom.Lines(points...), Role: pattern.RoleGuide})
}

func (p *Pen) add(m pattern.Mark) {
	m.Piece, m.Born = p.rec.Piece, p.rec.Number
	p.rec.Marks = append(p.rec.Marks, m.Name)
	p.marks = append(p.marks, m)
}

// Do says what to do; lengths in it follow her unit.
func (p *Pen) Do(words string, args ...any) { p.rec.Do = measure.Tell(words, args...) }

// Sum keeps how the number came to be and returns it.
func (p *Pen) Sum(w measure.Working) measure.Length {
	p.rec.Sum = w
	return w.Result()
}

// Reads says that the step used measurements which it does not need.
func (p *Pen) Reads(ids ...measure.ID) {
	for _, id := range ids {
		p.rec.From = append(p.rec.From, string(id))
	}
}

// Rule says which rule was used and why.
func (p *Pen) Rule(words string, args ...any) { p.rec.Rule = measure.Tell(words, args...) }

// Because keeps a rule that is already a sentence.
func (p *Pen) Because(s measure.Sentence) { p.rec.Rule = s }

// Slip adds what people do wrong here, with what they then get.
func (p *Pen) Slip(w measure.Working, says string, args ...any) {
	p.rec.Slips = append(p.rec.Slips, pattern.Slip{Sum: w, Says: measure.Tell(says, args...)})
}

// Refuse stops at this step: nothing of it is drawn, nor what depends on it.
func (p *Pen) Refuse(r pattern.Refused) {
	r.Step = p.rec.ID
	p.b.refused = append(p.b.refused, r)
	p.stop = true
}

// Stopped says whether the step was refused.
func (p *Pen) Stopped() bool { return p.stop }

// Has says whether a mark of that full name stands.
func (p *Pen) Has(full string) bool { return p.b.find(full) >= 0 }
