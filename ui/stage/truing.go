package stage

import (
	"strconv"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// True lists the findings of truing: what was found, what was wanted, where,
// and the cure that can be tried.
type True struct {
	bench
	at   int
	of   *pattern.Sheet // whose findings the rows are
	rows []int          // findings in the order shown: what needs her first
	bad  spoilt         // a fault on purpose
}

// NewTrue is the fourth stage.
func NewTrue(d *desk.Desk) *True { return &True{bench: bench{d: d}} }

// Title names the stage.
func (s *True) Title() string { return s.d.Tell(text.StageTrue) }

// Fact is how many findings need her.
func (s *True) Fact() string {
	sheet := s.d.Sheet()
	if n := sheet.Count(pattern.Advise) + sheet.Count(pattern.Fail); n > 0 {
		return strconv.Itoa(n) + "!"
	}
	return ""
}

// Typing: the cross-hair and what if take letters here.
func (s *True) Typing() bool { return s.eye.Hair || s.try.open || s.ask.open }

// refresh orders the findings: failed, advised, passed, skipped.
func (s *True) refresh() {
	now := s.sheet()
	if s.of == now {
		return
	}
	var was string
	if s.of != nil && s.at < len(s.rows) {
		f := s.of.Findings[s.rows[s.at]]
		was = f.Check + f.Code
	}
	s.of = now
	s.rows = s.rows[:0]
	all := s.sheet().Findings
	for _, v := range [...]pattern.Verdict{pattern.Fail, pattern.Advise, pattern.Pass, pattern.Skip} {
		for i := range all {
			if all[i].Verdict == v {
				s.rows = append(s.rows, i)
			}
		}
	}
	for i, r := range s.rows {
		if was != "" && all[r].Check+all[r].Code == was {
			s.at = i
			break
		}
	}
	s.at = max(0, min(s.at, len(s.rows)-1))
}

func (s *True) finding() (pattern.Finding, bool) {
	all := s.sheet().Findings
	if s.at < 0 || s.at >= len(s.rows) || s.rows[s.at] >= len(all) {
		return pattern.Finding{}, false
	}
	return all[s.rows[s.at]], true
}

// Actions are what can be done here.
func (s *True) Actions() []desk.Offer {
	switch {
	case s.ask.open:
		offers, _ := s.Offers()
		return offers
	case s.try.open:
		return s.tryOffers()
	case s.eye.Hair:
		return s.hairOffers()
	}
	s.refresh()
	if s.spoilt() {
		return s.faultOffers()
	}
	f, ok := s.finding()
	there, try := offer("go-there"), offer("try-cure")
	if !ok || f.Where.Piece == "" {
		there.WhyNot = s.d.Tell(text.TrueNothing)
	}
	if !ok || f.Try == nil {
		try.WhyNot = s.d.Tell(text.TrueNoCure)
	}
	out := []desk.Offer{there, try, {ID: "finding-down", Quiet: len(s.rows) == 0}, quiet("finding-up"), s.tryOffer(), s.fitOffer("true-fitting")}
	return append(out, s.tableOffers()...)
}

// Do an action.
func (s *True) Do(id keys.ID) desk.Ask {
	s.refresh()
	switch {
	case s.ask.open:
		return s.AskDo(id)
	case s.try.open:
		ask, _ := s.tryDo(id)
		return ask
	case s.eye.Hair:
		ask, _ := s.tableDo(id)
		return ask
	case s.spoilt():
		if ask, ok := s.faultDo(id); ok {
			return ask
		}
	}
	switch id {
	case "true-fitting":
		return desk.Ask{Do: keys.Fitting}
	case "true-what-if":
		return s.whatIf()
	case "finding-up":
		s.move(-1)
	case "finding-down":
		s.move(1)
	case "go-there":
		return s.goThere()
	case "try-cure":
		return s.cure()
	case "zoom-newest":
		return s.goThere()
	case keys.FieldNext, keys.FieldBack:
		s.swap()
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

func (s *True) move(by int) {
	s.at = max(0, min(s.at+by, len(s.rows)-1))
	s.eye = s.eye.Fit()
}

// goThere zooms to the place of the finding, and back.
func (s *True) goThere() desk.Ask {
	f, ok := s.finding()
	if !ok || f.Where.Piece == "" {
		return desk.Ask{Say: s.d.Tell(text.TrueNothing)}
	}
	s.zoomTo(s.seen.Near(f.Where))
	if s.alone { // the place is on the table, which is out of sight
		s.room = tableOnly
		if s.eye.Fits() {
			s.room = shared
		}
	}
	return desk.Ask{Say: s.where(f)}
}

// where says where by tape.
func (s *True) where(f pattern.Finding) string {
	u := s.d.Unit()
	return s.d.Tell(text.TruePlace, pieceTitle(s.d, f.Where.Piece), s.d.Tell(text.CrossAt, u.Tape(mm(f.Where.At.X)), u.Tape(mm(f.Where.At.Y))))
}

// cure makes the change that the finding proposes: one entry of the history.
func (s *True) cure() desk.Ask {
	f, ok := s.finding()
	if !ok || f.Try == nil {
		return desk.Ask{Say: s.d.Tell(text.TrueNoCure)}
	}
	id := pattern.ChoiceID(f.Input)
	job := s.d.Job().WithStyle(id, *f.Try)
	return desk.Ask{Job: &job, Says: s.d.Words.Say(text.TrueTry, s.inputTitle(f), s.valueNow(id), s.value(*f.Try))}
}

func (s *True) inputTitle(f pattern.Finding) string {
	for _, c := range s.d.Choices() {
		if string(c.ID) == f.Input {
			return s.d.Words.Pass(c.Title)
		}
	}
	return capital(name(f.Input))
}

func (s *True) valueNow(id pattern.ChoiceID) string {
	set, _ := s.sheet().Setting(id)
	return s.value(set.Value)
}

func (s *True) value(v pattern.Value) string {
	switch v.Kind {
	case pattern.KindLength:
		return s.d.Unit().Tape(v.Length)
	case pattern.KindPick:
		return v.Pick
	case pattern.KindSwitch:
		if v.On {
			return s.d.Tell(text.SettingOn)
		}
		return s.d.Tell(text.SettingOff)
	}
	return strconv.FormatFloat(v.Number, 'f', -1, 64)
}

// Type is a letter at a question, at what if or at the cross-hair.
func (s *True) Type(k desk.Key) desk.Ask {
	if s.ask.open {
		return s.AskType(k)
	}
	return s.hairType(k)
}

// Hear nothing: this stage has no errands.
func (s *True) Hear(desk.Answer) desk.Ask { return desk.Ask{} }

// Show goes to the finding nearest to a place, for other screens that point
// here.
func (s *True) Show(p pattern.Place) {
	s.refresh()
	for i, r := range s.rows {
		if s.sheet().Findings[r].Where == p {
			s.at = i
			return
		}
	}
}

// View is the findings above the cloth.
func (s *True) View(r desk.Rect) []string {
	s.refresh()
	if s.try.open {
		return s.compose(r, 11, s.tryWords, s.scene(r))
	}
	return s.compose(r, 11, s.words, s.scene(r))
}

func (s *True) scene(r desk.Rect) view.Scene {
	out := view.Scene{Sheet: s.sheet()}
	f, ok := s.finding()
	if s.try.open {
		out = s.tryScene("")
	}
	if s.guessing() || s.try.open {
		ok = false // the place would give it away, or is another by now
	}
	if ok && f.Where.Piece != "" {
		out.Spot = &f.Where
		out.Says = s.d.Trade(f.Title)
	}
	if r.Rows < bothRows {
		out.Piece = pattern.Front
		if ok && f.Where.Piece != "" {
			out.Piece = f.Where.Piece
		}
		if s.guessing() {
			out.Piece = s.bad.piece
		}
	}
	return out
}

// words are the list, and under it the finding in hand.
func (s *True) words(cols, rows int) ([]string, string) {
	d := s.d
	f, ok := s.finding()
	if !ok {
		line := " " + d.Tell(text.TrueEmpty, waits(d, s.sheet()))
		return []string{"", line}, line
	}
	if s.guessing() {
		return s.guessWords(cols, rows)
	}
	said := s.explain(f, cols-2)
	var out []string
	if s.spoilt() {
		out = s.faultHead(cols)
		said = append(s.faultSays(cols-2), said...)
	}
	lines := rows - len(said) - 1 - len(out)
	if lines < 3 {
		lines = min(3, rows)
		said = said[:max(0, min(len(said), rows-lines-1-len(out)))]
	}
	from, to := window(s.at, len(s.rows), lines)
	for i := from; i < to; i++ {
		out = append(out, desk.Clip(s.line(i, cols), cols))
	}
	out = append(out, " "+d.Paint(theme.Muted, s.tally()))
	for _, l := range said {
		out = append(out, " "+l)
	}
	caption := " " + string(f.Verdict) + "  " + d.Trade(f.Title) + "  " + d.Trade(f.Says.In(d.Unit()))
	return out, caption
}

// tally counts the findings.
func (s *True) tally() string {
	sheet := s.sheet()
	return s.d.Tell(text.TrueTally, sheet.Count(pattern.Pass), sheet.Count(pattern.Advise), sheet.Count(pattern.Fail), sheet.Count(pattern.Skip))
}

var verdicts = map[pattern.Verdict]text.ID{pattern.Pass: text.TruePass, pattern.Advise: text.TrueAdvise, pattern.Fail: text.TrueFail, pattern.Skip: text.TrueSkip}

// line is one finding: verdict, title, what it says.
func (s *True) line(i, cols int) string {
	d := s.d
	f := s.sheet().Findings[s.rows[i]]
	word := desk.Fit(d.Tell(verdicts[f.Verdict]), 7)
	switch f.Verdict {
	case pattern.Fail, pattern.Advise:
		word = d.Paint(theme.Warn, word)
	case pattern.Pass:
		word = d.Paint(theme.Ok, word)
	default:
		word = d.Paint(theme.Muted, word)
	}
	wide := s.titles(cols)
	title := desk.Fit(d.Trade(f.Title), wide)
	if i == s.at {
		title = d.Paint(theme.Selected, title)
	}
	return marker(i == s.at) + " " + word + title + "  " + d.Paint(theme.Muted, desk.Brief(d.Trade(f.Says.In(d.Unit())), cols-2-7-wide-2))
}

// titles is how wide the column of titles is.
func (s *True) titles(cols int) int {
	wide := 0
	for _, r := range s.rows {
		wide = max(wide, ansi.StringWidth(s.d.Trade(s.sheet().Findings[r].Title)))
	}
	return min(wide, max(cols/2, 10))
}

// explain is the finding in hand: what it says, got and want, where, cure.
func (s *True) explain(f pattern.Finding, cols int) []string {
	d, u := s.d, s.d.Unit()
	var out []string
	for _, l := range desk.Wrap(d.Trade(f.Says.In(u)), cols) {
		out = append(out, l)
	}
	if f.Verdict != pattern.Skip && (f.Got != 0 || f.Want != 0) {
		where := ""
		if f.Where.Piece != "" {
			where = pieceTitle(d, f.Where.Piece)
		}
		out = append(out, d.Paint(theme.Title, d.Tell(text.TrueGotWant, s.amount(f, f.Got), s.wanted(f), where)))
	}
	cure := f.Cure.In(u)
	if cure == "" || s.spoilt() {
		return out
	}
	cure = d.Tell(text.TrueCure, d.Trade(cure))
	if f.Try != nil {
		cure += "   (" + d.Tell(text.TrueCureHow) + ")"
	}
	return append(out, desk.Wrap(cure, cols)...)
}

func (s *True) wanted(f pattern.Finding) string {
	if f.Limits && f.Low != f.High {
		return s.amount(f, f.Want+f.Low) + " - " + s.amount(f, f.Want+f.High)
	}
	return s.amount(f, f.Want)
}

func (s *True) amount(f pattern.Finding, x float64) string {
	switch f.In {
	case pattern.InDegrees:
		return s.d.Plain(strconv.FormatFloat(x, 'f', 0, 64) + "°")
	case pattern.InCount:
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	return s.d.Unit().Tape(measure.Length(x))
}
