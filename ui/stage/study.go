package stage

import (
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// studying is the page of a lesson that a stage shows: its words stand in a bar
// above, and the stage shows what the page names.
type studying struct {
	at     desk.Running
	course lesson.Lesson
	number int
	page   lesson.Page
	told   []string // what came of its question
}

// PageOf is the page at which a lesson stands.
func PageOf(r desk.Running) (l lesson.Lesson, page lesson.Page, ok bool) {
	l, ok = lesson.Find(r.ID)
	if !ok || r.Page < 1 || r.Page > len(l.Pages) {
		return l, page, false
	}
	return l, l.Pages[r.Page-1], true
}

// StageOf is the stage in which a page is shown.
func StageOf(r desk.Running) desk.StageID {
	_, page, ok := PageOf(r)
	if !ok {
		return desk.NoStage
	}
	switch page.Show.What {
	case lesson.OfMeasurement:
		return desk.Measure
	case lesson.OfChoice:
		return desk.Style
	case lesson.OfCheck, lesson.OfFault:
		return desk.True
	case lesson.OfOutput:
		if page.Show.ID == "lay" {
			return desk.Lay
		}
		return desk.Cut
	}
	return desk.Draft
}

// Study shows the page of a lesson.
func (b *bench) Study(r desk.Running) {
	l, page, ok := PageOf(r)
	if !ok {
		b.Rest()
		return
	}
	b.class = studying{at: r, course: l, page: page}
	for i, x := range lesson.All() {
		if x.ID == l.ID {
			b.class.number = i + 1
		}
	}
	b.scroll, b.try = 0, trying{}
	b.ask = asking{}
	b.eye = b.eye.Fit()
	b.eye.Hair = false
	switch {
	case page.Show.What == lesson.OfNotes:
		b.putNote()
	case page.Asks():
		b.put(func() (lesson.Question, bool) { return page.Question(b.d.Sheet()) }, nil)
	}
}

// Rest shows no page of a lesson any more.
func (b *bench) Rest() {
	if !b.class.at.On() {
		return
	}
	if b.ask.open {
		b.askClose()
	}
	b.ask = asking{}
	b.class = studying{}
	b.try = trying{}
}

// OnPage says that the page at which the lesson stands is shown here.
func (b *bench) OnPage() bool { return b.class.at.On() && b.class.at == b.d.Running() }

// LessonDo does an action of a running lesson.
func (b *bench) LessonDo(id keys.ID) desk.Ask {
	switch id {
	case "page-next":
		return b.nextPage()
	case "page-back":
		return b.backPage()
	case "lesson-end":
		return b.leaveLesson()
	}
	return desk.Ask{}
}

// lessonOffers are the actions of a running lesson.
func (b *bench) lessonOffers() []desk.Offer {
	back := offer("page-back")
	if b.class.at.Page <= 1 {
		back.WhyNot = b.d.Tell(text.LessonFirst)
	}
	return []desk.Offer{offer("page-next"), back, offer("lesson-end")}
}

// nextPage goes on; after the last page the lesson is over.
func (b *bench) nextPage() desk.Ask {
	at := b.class.at
	next := at
	next.Page++
	ask := desk.Ask{Done: &at, Study: &next}
	if at.Page >= len(b.class.course.Pages) {
		ask.Study = &desk.Running{}
		ask.Say = b.d.Tell(text.LessonOver, capital(b.d.Trade(b.class.course.Ends.In(b.d.Unit()))))
	}
	return ask
}

func (b *bench) backPage() desk.Ask {
	at := b.class.at
	if at.Page <= 1 {
		return desk.Ask{Say: b.d.Tell(text.LessonFirst)}
	}
	at.Page--
	return desk.Ask{Study: &at}
}

func (b *bench) leaveLesson() desk.Ask {
	return desk.Ask{Study: &desk.Running{}, Say: b.d.Tell(text.LessonLeft, b.class.at.Page)}
}

// AskDo does an action at a question.
func (b *bench) AskDo(id keys.ID) desk.Ask {
	if id == "question-back" && b.OnPage() {
		return b.backPage()
	}
	ask, settled := b.askDo(id)
	if settled {
		b.told(&ask)
	}
	return ask
}

// told keeps what came of a question, and that its page is done.
func (b *bench) told(ask *desk.Ask) {
	b.class.told = b.ask.said
	if !b.ask.right {
		b.class.told = nil
	}
	if b.OnPage() && b.ask.right {
		at := b.class.at
		ask.Done = &at
	}
}

// AskType is a key at a question that no action took.
func (b *bench) AskType(k desk.Key) desk.Ask {
	b.askType(k)
	return desk.Ask{}
}

// Offers are the actions that come before those of the stage: at a question,
// or of a lesson that is shown here. only says that there are no others.
func (b *bench) Offers() (offers []desk.Offer, only bool) {
	switch {
	case b.ask.open:
		offers = b.askOffers()
		back := quiet("question-back")
		if b.OnPage() && b.class.at.Page <= 1 {
			back.WhyNot = b.d.Tell(text.LessonFirst)
		}
		return append(offers, back), true
	case b.OnPage() && !b.try.open && !b.eye.Hair:
		return b.lessonOffers(), false
	}
	return nil, false
}

// barShare is the most of the rows that the words of a page take.
const barShare = 3

// bar is the page of the lesson: which it is, and its words.
func (b *bench) bar(r desk.Rect) []string {
	if !b.OnPage() || r.Rows < 2 {
		return nil
	}
	d, c := b.d, &b.class
	head := " " + d.Paint(theme.Accent, d.Tell(text.LessonHead, c.number, d.Trade(c.course.Title)))
	page := d.Tell(text.LessonPage, c.at.Page, len(c.course.Pages))
	if c.course.Method != "" {
		page += ", " + methodWords(d, c.course.Method)
	}
	out := []string{desk.Clip(head+"   "+d.Paint(theme.Muted, page), r.Columns)}
	add := func(role theme.Role, words string) {
		for _, l := range desk.Wrap(words, r.Columns-2) {
			out = append(out, " "+d.Paint(role, l))
		}
	}
	add(theme.Title, d.Trade(c.page.Words.In(d.Unit())))
	for _, s := range c.told {
		add(theme.Text, s)
	}
	if c.page.Show.What == lesson.OfMeasurement && !b.ask.open {
		add(theme.Muted, d.Tell(text.LessonMeasure))
	}
	most := max(r.Rows/barShare+1, 2)
	if len(c.told) > 0 {
		most = max(r.Rows*2/3, 2)
	}
	if len(out) > most {
		out = out[:most]
	}
	if r.Rows >= sharedRows {
		out = append(out, "")
	}
	return out
}

// Where are the keys that work while a question is open; else those of the
// stage.
func (b *bench) Where() keys.Where {
	if b.ask.open {
		return keys.Question
	}
	return keys.Everywhere
}

// methodWords is a drafting method as it is said: "by thumb".
func methodWords(d *desk.Desk, method string) string {
	switch method {
	case pattern.Thumb:
		return d.Tell(text.CompareThumb)
	case pattern.Direct:
		return d.Tell(text.CompareDirect)
	}
	return d.Tell(text.CompareMeasured)
}
