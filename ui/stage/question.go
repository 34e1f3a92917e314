package stage

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// asking is a question that stands in place of the words. It stays open while
// she is elsewhere. Nothing here counts what was answered before.
type asking struct {
	open  bool
	q     lesson.Question
	title func(cols int) []string // what stands above it
	field field
	point bool     // the cross-hair answers; false: the field
	still bool     // the cross-hair was not moved since it was judged
	hints int      // how far she has been helped
	said  []string // what came of the last answer
	note  bool     // no question: words of her own, for the notes
	right bool     // it was settled by an answer

	again   func() (lesson.Question, bool) // the same of another draft
	version int                            // of the job that it was made of
}

// put asks a question, if there is one to ask.
func (b *bench) put(again func() (lesson.Question, bool), title func(cols int) []string) bool {
	q, ok := again()
	b.scroll = 0
	b.eye.Hair = false
	if !ok {
		b.ask = asking{}
		return false
	}
	b.ask = asking{open: true, q: q, title: title, point: q.Kind == lesson.Place, still: true, again: again, version: b.d.Version()}
	if b.ask.point {
		b.pointing(true)
	}
	return true
}

// renewAsk makes the question anew where the draft has become another; what
// was typed stays.
func (b *bench) renewAsk() {
	a := &b.ask
	if !a.open || a.again == nil || a.version == b.d.Version() {
		return
	}
	a.version = b.d.Version()
	q, ok := a.again()
	if !ok {
		b.askClose()
		return
	}
	a.q = q
}

// putNote asks for words of her own.
func (b *bench) putNote() { b.ask = asking{open: true, note: true} }

// pointing shows the cross-hair or puts it away.
func (b *bench) pointing(on bool) {
	b.ask.point, b.eye.Hair = on, on
	if on {
		b.eye.Hairs = b.seen.Middle()
	}
}

// Asking says that a question takes the keys.
func (b *bench) Asking() bool { return b.ask.open }

// askClose puts the question away.
func (b *bench) askClose() {
	if b.ask.point {
		b.eye.Hair = false
	}
	b.ask.open = false
	b.scroll = 0
}

// askOffers are the actions at a question.
func (b *bench) askOffers() []desk.Offer { return []desk.Offer{offer("answer"), offer("skip")} }

// askDo does an action at a question. It says whether the question is settled
// now.
func (b *bench) askDo(id keys.ID) (ask desk.Ask, settled bool) {
	switch id {
	case "answer", keys.Accept:
		return b.answer()
	case "skip", keys.Back:
		b.askClose()
		b.ask.right = false
		return desk.Ask{Say: b.d.Tell(text.AskPage)}, true
	case keys.Room:
		b.swap()
	}
	return desk.Ask{}, false
}

// answer judges what is typed or pointed at; nothing typed is the next hint.
func (b *bench) answer() (desk.Ask, bool) {
	a := &b.ask
	typed := strings.TrimSpace(a.field.string())
	switch {
	case a.note:
		return b.writeNote(typed)
	case a.point && a.still, !a.point && typed == "":
		b.hint()
		return desk.Ask{}, false
	}
	var v lesson.Verdict
	u := b.d.Unit()
	if a.point {
		v = b.judgeHair()
		a.still = true
	} else {
		v = a.q.Judge(typed, u)
	}
	a.said = nil
	if says := v.Say(b.d.Words, u); says != "" {
		a.said = []string{b.d.Plain(says)}
	}
	switch {
	case v.Closed():
		b.askClose()
		a.right = true
		return desk.Ask{}, true
	case v.Outcome == lesson.Missed:
		b.hint()
	}
	return desk.Ask{}, false
}

// hint helps one step more. The last gives the answer away.
func (b *bench) hint() {
	a := &b.ask
	a.hints = min(a.hints+1, lesson.Hints)
	a.said = []string{b.d.Plain(a.q.Hint(a.hints, b.d.Words, b.d.Unit(), b.d.Projecting && b.d.Private))}
	b.scroll = farDown
}

// judgeHair judges where the cross-hair stands, as fine as a cell is.
func (b *bench) judgeHair() lesson.Verdict {
	at, _ := b.seen.Under(b.eye.Hairs)
	across, down := b.seen.Cell()
	halfX, halfY := down/2, across/2 // lying: out is down the screen
	if b.now {
		halfX, halfY = halfY, halfX
	}
	return b.ask.q.Within(mm(halfX), mm(halfY)).JudgePlace(mm(at.At.X), mm(at.At.Y))
}

// writeNote puts her words below the notes of the client.
func (b *bench) writeNote(typed string) (desk.Ask, bool) {
	b.askClose()
	if typed == "" {
		return desk.Ask{Say: b.d.Tell(text.AskPage)}, true
	}
	b.ask.right = true
	job := b.d.Job()
	job.Client.Notes = strings.TrimSpace(job.Client.Notes + "\n" + typed)
	return desk.Ask{Job: &job, Says: b.d.Words.Say(text.AskWritten)}, true
}

// askType is a key at a question that no action took: text, the cross-hair, or
// the words to scroll.
func (b *bench) askType(k desk.Key) {
	a := &b.ask
	if a.point {
		b.askPoint(k)
		return
	}
	switch {
	case len(k.Runes) > 0:
		a.field.insert(k.Runes)
	case k.Name == "up":
		b.scroll--
	case k.Name == "down":
		b.scroll++
	default:
		a.field.key(k.Name)
		if k.Name == "ctrl+u" {
			a.field.set("")
		}
		if a.q.Kind == lesson.Place && a.field.string() == "" && k.Name == "backspace" {
			b.pointing(true)
		}
	}
}

// farStep is how many dots the cross-hair goes with Shift.
const farStep = 12

// askPoint moves the cross-hair; a digit begins to type the place.
func (b *bench) askPoint(k desk.Key) {
	const near = 2
	far := strings.HasPrefix(k.Name, "shift+")
	step := float64(near)
	if far {
		step = farStep
	}
	dx, dy := 0.0, 0.0
	switch strings.TrimPrefix(k.Name, "shift+") {
	case "left":
		dx = -step
	case "right":
		dx = step
	case "up":
		dy = -step
	case "down":
		dy = step
	default:
		b.askLetters(k)
		return
	}
	b.eye = b.eye.Stepped(b.seen, dx, dy)
	b.ask.still = false
}

func (b *bench) askLetters(k desk.Key) {
	if len(k.Runes) == 0 {
		return
	}
	if r := k.Runes[0]; k.Paste || r >= '0' && r <= '9' || r == '.' {
		b.pointing(false)
		b.ask.field.insert(k.Runes)
		return
	}
	if k.Name == "c" {
		b.eye.Hairs = b.seen.Middle()
		return
	}
	b.hairType(k)
}

// farDown scrolls to the end.
const farDown = 1 << 20

// askWords are the lines of the question, and it in one line.
func (b *bench) askWords(cols, rows int) ([]string, string) {
	d, a, u := b.d, &b.ask, b.d.Unit()
	const label = 5
	prompt := d.Tell(text.AskNoteTitle)
	if !a.note {
		prompt = d.Plain(a.q.Prompt(d.Words, u))
	}
	body := labelled(d, d.Tell(text.AskLabel), label, cols, prompt, theme.Title)
	for i, o := range a.q.Pick {
		body = append(body, labelled(d, string(rune('1'+i))+".", label, cols, d.Trade(o.Says.In(u)), theme.Text)...)
	}
	switch {
	case a.point:
		body = append(body, labelled(d, "", label, cols, b.hairSays(), theme.Accent)...)
	default:
		body = append(body, " "+strings.Repeat(" ", label)+a.field.view(d, max(min(cols-label-3, b.fieldCells()), 2)))
	}
	for _, s := range a.said {
		body = append(body, labelled(d, "", label, cols, s, theme.Text)...)
	}
	caption := " " + prompt
	if a.point {
		caption = " " + d.Paint(theme.Accent, b.hairSays())
	}
	var head []string
	if a.title != nil {
		head = a.title(cols)
	}
	if rows >= len(body)+len(head)+2 {
		head = append(append([]string{""}, head...), "")
	}
	room := max(rows-len(head), 1)
	b.scroll = max(0, min(b.scroll, len(body)-room))
	out := append(append([]string(nil), head...), body[b.scroll:]...)
	if len(out)+2 <= rows {
		out = append(out, labelled(d, "", label, cols, b.askHow(), theme.Muted)...)
	}
	return out, caption
}

// pointBar is the question above a table that has all the room, where there is
// no room for words beside it.
func (b *bench) pointBar(r desk.Rect) []string {
	a := &b.ask
	if !a.open || !a.point || !b.alone || r.Rows < leastTable || b.room == wordsOnly {
		return nil
	}
	var out []string
	for _, s := range append([]string{b.d.Plain(a.q.Prompt(b.d.Words, b.d.Unit()))}, a.said...) {
		for _, l := range desk.Wrap(s, r.Columns-2) {
			out = append(out, " "+b.d.Paint(theme.Title, l))
		}
	}
	return out[:min(len(out), r.Rows/4)]
}

// askRows is how many rows the question would like to have.
func (b *bench) askRows(cols int) int {
	was := b.scroll
	lines, _ := b.askWords(cols, 1<<10)
	b.scroll = was
	return len(lines)
}

func (b *bench) askHow() string {
	switch {
	case b.ask.note:
		return b.d.Tell(text.AskWriteHow)
	case b.ask.point:
		return b.d.Tell(text.AskHairHow)
	case b.try.open && b.try.fixed:
		return b.d.Tell(text.AskTryHow)
	}
	return b.d.Tell(text.AskFieldHow)
}

func (b *bench) fieldCells() int {
	if b.ask.note {
		return longest
	}
	return 24
}

// nudgeOf is a length of the what-if's step with the sign of a key.
func nudgeOf(u measure.Unit, id keys.ID) (measure.Length, bool) {
	switch id {
	case "field-up":
		return lesson.Nudge(u, false), true
	case "field-down":
		return -lesson.Nudge(u, false), true
	case "nudge-up":
		return lesson.Nudge(u, true), true
	case "nudge-down":
		return -lesson.Nudge(u, true), true
	}
	return 0, false
}
