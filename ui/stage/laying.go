package stage

import (
	"errors"
	"reflect"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/lay"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/view"
)

// Lay shows a cloth of the session with the pieces on it: the lay that she
// kept, or a first one at once and shorter ones as they are found. She may lay
// pieces herself and pin them; nothing is kept before she says so. Each cloth,
// main, lining, interfacing, has its own pile of work.
type Lay struct {
	bench
	pile            // of the cloth that is shown
	cloth  string   // its name
	names  []string // cloths that pieces are cut from
	others map[string]pile
	effort int64 // evaluations for each answer besides the lay
	entry  layEntry
	field  field
	form   form // of the cloth
}

// origin says where the lay in hand comes from.
type origin int8

const (
	fromShelf origin = iota
	fromSession
	fromSearch
	fromHand
)

// piece names a piece of a lay; copy 0: none.
type piece struct{ item, copy int }

// NewLay is the fifth stage.
func NewLay(d *desk.Desk) *Lay { return &Lay{bench: bench{d: d, table: true}, effort: asideSearch} }

// Title names the stage.
func (s *Lay) Title() string { return s.d.Tell(text.StageLay) }

// Fact: line 1 has none for this stage.
func (s *Lay) Fact() string { return "" }

// Typing: the cross-hair takes letters here, and what is typed of a flaw or a
// remnant.
func (s *Lay) Typing() bool { return s.eye.Hair || s.entry != noLayEntry }

// ready says that there is a lay.
func (s *Lay) ready() bool { return len(s.best.Placed) > 0 }

// index is the piece in hand in the lay, -1 for none.
func (s *Lay) index() int {
	for i, q := range s.best.Placed {
		if s.held == (piece{q.Item, q.Copy}) {
			return i
		}
	}
	return -1
}

func (s *Lay) titleOf(q lay.Placed) string { return s.d.Trade(s.work.Problem.Items[q.Item].Title) }

// take puts another lay on the table.
func (s *Lay) take(l lay.Lay, o origin) { s.best, s.origin, s.drawn = l, o, nil }

// Begin is what she finds on coming here: a first lay, and a search for a
// shorter one unless she kept a lay.
func (s *Lay) Begin() desk.Ask {
	s.renew()
	if !s.ready() || s.stop != nil || s.origin == fromSession || s.origin == fromHand || s.reached >= usualSearch {
		return desk.Ask{}
	}
	return s.lookOn(usualSearch)
}

// Actions are what can be done here.
func (s *Lay) Actions() []desk.Offer {
	s.renew()
	switch {
	case s.eye.Hair:
		return s.hairOffers()
	case s.entry == clothEntry:
		return s.formOffers()
	case s.entry != noLayEntry:
		return []desk.Offer{offer(keys.Accept), offer(keys.Back), quiet("clear"), quiet("text-left"), quiet("text-right")}
	}
	why := ""
	if !s.ready() {
		why = s.whyNot()
	}
	inHand := why
	if inHand == "" && s.index() < 0 {
		inHand = s.d.Tell(text.LayTakeOne)
	}
	var out []desk.Offer
	add := func(id keys.ID, why string, quiet bool) {
		out = append(out, desk.Offer{ID: id, WhyNot: why, Quiet: quiet})
	}
	if s.busy() {
		add("stop-lay", "", false)
	} else {
		add("search-on", s.cannotSearch(why), false)
	}
	add("keep-lay", s.cannotKeep(why), false)
	add("piece-next", why, false)
	for _, id := range []keys.ID{"piece-left", "piece-right", "piece-up", "piece-down"} {
		add(id, inHand, id != "piece-left" || inHand != "")
	}
	add("pin", inHand, inHand != "")
	add("turn-piece", inHand, inHand != "")
	add("widths", why, false)
	add("remnant", why, false)
	add("flaw", why, true)
	add("cloth", s.cannotCloth(), false)
	add("other-cloth", s.cannotOther(), len(s.names) < 2)
	return append(out, s.tableOffers()...)
}

// whyNot says why nothing is laid.
func (s *Lay) whyNot() string {
	if s.trouble != nil {
		return s.d.Plain(s.trouble.Error())
	}
	return s.d.Tell(text.LayEmpty, waits(s.d, s.d.Sheet()))
}

func (s *Lay) cannotSearch(why string) string {
	if why == "" && s.reached >= longSearch {
		return s.d.Tell(text.LayFull)
	}
	return why
}

func (s *Lay) cannotKeep(why string) string {
	if why == "" && s.origin == fromSession {
		return s.d.Tell(text.LayKeptYet)
	}
	return why
}

// Do an action.
func (s *Lay) Do(id keys.ID) desk.Ask {
	s.renew()
	switch {
	case s.eye.Hair:
		ask, _ := s.tableDo(id)
		return ask
	case s.entry != noLayEntry:
		return s.inEntry(id)
	case id == "stop-lay" || id == keys.Back && s.busy():
		return s.stopped()
	case id == "cloth":
		return s.openForm()
	case id == "other-cloth":
		return s.otherCloth(1)
	case id == keys.Room:
		s.swap()
		return desk.Ask{}
	case s.layDoes(id) && !s.ready():
		return desk.Ask{Say: s.whyNot()}
	}
	switch id {
	case "search-on":
		if why := s.cannotSearch(""); why != "" {
			return desk.Ask{Say: why}
		}
		return s.lookOn(max(longSearch, s.reached))
	case "keep-lay":
		return s.keepLay()
	case "piece-next", keys.FieldNext:
		s.nextPiece(1)
	case keys.FieldBack:
		s.nextPiece(-1)
	case "piece-left":
		return s.push(-1, 0)
	case "piece-right":
		return s.push(1, 0)
	case "piece-up":
		return s.push(0, -1)
	case "piece-down":
		return s.push(0, 1)
	case "pin":
		return s.pin()
	case "turn-piece":
		return s.turnPiece()
	case "widths":
		return s.otherWidths()
	case "remnant", "flaw":
		s.edit(id)
	default:
		ask, _ := s.tableDo(id)
		return ask
	}
	return desk.Ask{}
}

// layDoes says that an action is about the lay.
func (s *Lay) layDoes(id keys.ID) bool {
	if id == keys.FieldNext || id == keys.FieldBack {
		return true
	}
	a, ok := s.d.Keys.Find(id)
	return ok && a.Where == keys.Lay
}

// keepLay puts the lay into the session, as one change.
func (s *Lay) keepLay() desk.Ask {
	if why := s.cannotKeep(""); why != "" {
		return desk.Ask{Say: why}
	}
	s.halt()
	job := s.d.Job().WithLay(s.work.Keep(s.best))
	if reflect.DeepEqual(job, s.d.Job()) {
		return desk.Ask{Say: s.d.Tell(text.LayKeptYet)}
	}
	return desk.Ask{Job: &job, Says: s.d.Tell(text.LayKept, s.work.Cloth.Name, s.d.Trade(s.work.Buy(s.best).Says))}
}

// Hear what was found.
func (s *Lay) Hear(a desk.Answer) desk.Ask {
	s.renew()
	if a.Version != s.version {
		return desk.Ask{}
	}
	if a.Err != nil {
		s.stop = nil
		var r *measure.Refusal
		if errors.As(a.Err, &r) {
			return desk.Ask{Say: s.d.Plain(withoutPlace(r).Error()), Warn: true}
		}
		return desk.Ask{Say: s.d.Plain(a.Err.Error()), Warn: true}
	}
	switch v := a.Value.(type) {
	case foundLay:
		return s.found(v)
	case errand:
		return s.answered(v)
	}
	return desk.Ask{}
}

// View is what to buy above the cloth.
func (s *Lay) View(r desk.Rect) []string {
	s.renew()
	sc := view.Scene{Sheet: s.d.Sheet()}
	if s.ready() {
		sc.Cloth = s.onCloth()
	}
	s.reads = s.entry != noLayEntry || s.aside.widths != nil || s.aside.fit != nil
	return s.compose(r, 9, s.words, sc)
}

// onCloth is the lay as the table draws it.
func (s *Lay) onCloth() *view.Cloth {
	c := &s.work.Problem.Cloth
	wide := c.Width
	if !c.Opens(s.best) {
		wide = c.Lying(s.best)
	}
	if s.drawn == nil {
		s.drawn = s.draw()
	}
	return &view.Cloth{Half: stepsLong(wide), Long: stepsLong(c.Lies(s.best)), Laid: s.drawn}
}

// draw is the lay in millimetres.
func (s *Lay) draw() *view.Laid {
	c := &s.work.Problem.Cloth
	out := &view.Laid{Flat: c.Fold == lay.Flat, Middle: c.Fold == lay.ToMiddle, Ends: c.Fold == lay.Across, Hand: s.index()}
	if c.Fold == lay.OffCentre {
		out.Depth = float64(stepsLong(s.best.Depth))
	}
	if c.Opens(s.best) {
		out.Opened = float64(stepsLong(s.best.Folded))
	}
	for _, q := range s.best.Placed {
		p := view.LaidPiece{ID: pattern.PieceID(s.work.Problem.Items[q.Item].ID), Title: s.work.Problem.Items[q.Item].Title, Pinned: s.pinned(q) >= 0}
		for _, o := range q.Outline {
			p.Outline = append(p.Outline, onTable(o))
		}
		out.Pieces = append(out.Pieces, p)
	}
	out.Flaws = s.flaws()
	return out
}
