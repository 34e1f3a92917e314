package lesson

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
)

// Lesson is one sitting of the course. It is data: what it shows is named by
// id.
type Lesson struct {
	ID      string // tape
	Title   string
	Aim     measure.Sentence
	Ends    measure.Sentence // what is in hand at the end
	Minutes int
	Method  string // the drafting method that it needs; empty: hers
	Pages   []Page
}

// Page is one thing said and one thing done.
type Page struct {
	Words measure.Sentence // two sentences at most
	Show  Show
	Word  string // the word that is new here, as the glossary has it

	asks bool
	kind Kind             // of a question about a step
	own  measure.Sentence // a question of the page's own
	pick []Option
}

// What says what lies on the table beside the words.
type What int8

// A step of the draft; a measurement with how it is taken; a choice; a check
// with its finding; a value to move; the two methods side by side; a fault on
// purpose; something to write or print; words of her own; the bust dart turned
// to a place.
const (
	OfStep What = iota
	OfMeasurement
	OfChoice
	OfCheck
	OfWhatIf
	OfCompare
	OfFault
	OfOutput
	OfNotes
	OfTurn
)

// Show names what a page shows: the id of a step, a measurement, a choice, a
// check, a fault, a format; the other method of a comparison; the place of a
// dart.
type Show struct {
	What What
	ID   string
}

// All is the course, in its order.
func All() []Lesson {
	return []Lesson{tape(), back(), front(), longer(), methods(), facings(), trueing(), hem(), cloth(), fitting(), dart()}
}

// Find returns a lesson by its id.
func Find(id string) (Lesson, bool) {
	for _, l := range All() {
		if l.ID == id {
			return l, true
		}
	}
	return Lesson{}, false
}

// Job is the job as the lesson needs it: hers, drafted by the lesson's method.
func (l Lesson) Job(job pattern.Job) pattern.Job {
	if l.Method == "" || job.Style.Method() == l.Method {
		return job
	}
	return job.WithStyle(pattern.Method, pattern.PickValue(l.Method))
}

// Waits says what a lesson waits for on this sheet; empty where it can begin.
func (l Lesson) Waits(sheet *pattern.Sheet) measure.Sentence {
	turns := false
	for _, p := range l.Pages {
		turns = turns || p.Show.What == OfTurn
		if p.Show.What != OfStep {
			continue
		}
		for i := range sheet.Steps {
			if st := &sheet.Steps[i]; st.ID == p.Show.ID && !st.Drawn {
				return measure.Tell("{}: {}", st.Title, st.Waits)
			}
		}
	}
	if turns {
		return turnWaits(sheet)
	}
	return measure.Sentence{}
}

// Asks says that the page has a question.
func (p Page) Asks() bool { return p.asks }

// Veils says that a page shows a step which a later page asks about: it is
// named there, and what it does is not told before the question.
func (l Lesson) Veils(page int) bool {
	if page < 1 || page > len(l.Pages) || l.Pages[page-1].asks || l.Pages[page-1].Show.What != OfStep {
		return false
	}
	for _, p := range l.Pages[page:] {
		if p.asks && p.Show == l.Pages[page-1].Show {
			return true
		}
	}
	return false
}

// OwnWords are the sentences of a question of the page's own: what it asks,
// its options and what is said to each.
func (p Page) OwnWords() []measure.Sentence {
	if len(p.pick) == 0 {
		return nil
	}
	out := []measure.Sentence{p.own}
	for _, o := range p.pick {
		out = append(out, o.Says, o.Because)
	}
	return out
}

// Question is the page's question on this sheet; false where the page has none
// or the sheet has not what it asks about.
func (p Page) Question(sheet *pattern.Sheet) (Question, bool) {
	switch {
	case !p.asks:
		return Question{}, false
	case len(p.pick) > 0:
		return Question{Kind: Sentence, Asks: p.own, Pick: p.pick, Title: "the words above"}, true
	case p.Show.What == OfStep:
		return AskFor(sheet, p.Show.ID, p.kind)
	case p.Show.What == OfTurn:
		return AskFor(workroom.Draft(Turned(sheet.Job, p.Show.ID)), TurnStep, p.kind)
	case p.Show.What == OfMeasurement:
		return askSlip(measure.ID(p.Show.ID))
	case p.Show.What == OfFault:
		return askFault(p.Show.ID)
	}
	return Question{}, false
}

// askSlip asks what goes wrong most with a measurement; the other sentences
// belong to its neighbours in the table.
func askSlip(id measure.ID) (Question, bool) {
	all := measure.All()
	for i, m := range all {
		if m.ID != id || m.Slip == "" {
			continue
		}
		q := Question{Kind: Sentence, Title: "the " + m.Term, Asks: measure.Tell("Which slip belongs to the " + m.Term + "?"), Why: measure.Tell(m.How)}
		right := Option{Says: measure.Tell(m.Slip), Right: true}
		for j := range all {
			other := all[(i+1+j)%len(all)]
			if len(q.Pick) == i%3 {
				q.Pick = append(q.Pick, right)
			}
			if len(q.Pick) >= 3 {
				break
			}
			if other.Slip != "" && other.Slip != m.Slip {
				q.Pick = append(q.Pick, Option{Says: measure.Tell(other.Slip), Other: other.Term})
			}
		}
		return q, q.RightPick() > 0
	}
	return Question{}, false
}

// Question asks which check will find the fault.
func (f Fault) Question() (Question, bool) { return askFault(f.ID) }

// askFault asks which check will find a fault.
func askFault(id string) (Question, bool) {
	f, ok := FindFault(id)
	if !ok {
		return Question{}, false
	}
	var checks []truing.Check
	for _, c := range truing.Checks() {
		if c.Wanted == nil { // one of a style alone would be no riddle
			checks = append(checks, c)
		}
	}
	q := Question{Kind: Sentence, Check: f.Check, Title: strings.ToLower(f.Title), Asks: measure.Tell("Which check will find it?"), Why: f.Says}
	for i, c := range checks {
		if c.ID != f.Check {
			continue
		}
		at := []int{i, (i + 3) % len(checks), (i + 7) % len(checks)}
		turn := i % len(at)
		for k := range at {
			n := at[(k+turn)%len(at)]
			o := Option{Says: measure.Tell(checks[n].Title), Right: n == i, Because: f.Says}
			if !o.Right {
				o.Because = measure.Tell("It may look so. Run the checks and see what else they say.")
			}
			q.Pick = append(q.Pick, o)
		}
	}
	return q, len(q.Pick) == 3
}

// There says whether what a page shows exists: a measurement, a choice, a
// check, a fault by the tables, a step on this sheet.
func (s Show) There(sheet *pattern.Sheet) bool {
	switch s.What {
	case OfStep:
		for i := range sheet.Steps {
			if sheet.Steps[i].ID == s.ID {
				return true
			}
		}
		return false
	case OfMeasurement:
		_, ok := measure.Find(measure.ID(s.ID))
		return ok
	case OfChoice:
		_, ok := workroom.FindChoice(sheet.Garment, pattern.ChoiceID(s.ID))
		return ok
	case OfWhatIf:
		return Show{OfMeasurement, s.ID}.There(sheet) || Show{OfChoice, s.ID}.There(sheet)
	case OfCheck:
		for _, c := range truing.Checks() {
			if c.ID == s.ID {
				return true
			}
		}
		return false
	case OfCompare:
		return s.ID == pattern.Measured || s.ID == pattern.Thumb || s.ID == pattern.Direct
	case OfFault:
		_, ok := FindFault(s.ID)
		return ok
	case OfTurn:
		return TurnOf(sheet.Job, s.ID, workroom.Draft).Drawn
	}
	return s.ID != ""
}

// say makes a page that shows something; ask one with the question of what it
// shows; pickOne one with a question of its own.
func say(show Show, words string, args ...any) Page {
	return Page{Show: show, Words: measure.Tell(words, args...)}
}

func ask(show Show, words string) Page {
	p := say(show, words)
	p.asks = true
	return p
}

func pickOne(show Show, words, question string, options ...Option) Page {
	p := ask(show, words)
	p.own, p.pick = measure.Tell(question), options
	return p
}

// as asks a step's question by a kind of its own.
func (p Page) as(k Kind) Page {
	p.kind = k
	return p
}

// word notes the new word of a page.
func (p Page) word(w string) Page {
	p.Word = w
	return p
}

func yes(says, because string) Option {
	return Option{Says: measure.Tell(says), Right: true, Because: measure.Tell(because)}
}

func no(says, because string) Option {
	return Option{Says: measure.Tell(says), Because: measure.Tell(because)}
}

func step(id string) Show    { return Show{OfStep, id} }
func taken(id string) Show   { return Show{OfMeasurement, id} }
func check(id string) Show   { return Show{OfCheck, id} }
func moved(id string) Show   { return Show{OfWhatIf, id} }
func fault(id string) Show   { return Show{OfFault, id} }
func output(id string) Show  { return Show{OfOutput, id} }
func compare(id string) Show { return Show{OfCompare, id} }
func choice(id string) Show  { return Show{OfChoice, id} }
func turn(place string) Show { return Show{OfTurn, place} }
func notes(id string) Show   { return Show{OfNotes, id} }
