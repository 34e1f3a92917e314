package stage

import (
	"reflect"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
	"chalkfold/ui/view"
)

// trying is what if: one measure is moved and all that rests on it is drawn
// anew over the old. The job itself stays as it is until she keeps it.
type trying struct {
	open  bool
	ids   []string
	at    int
	by    measure.Length
	job   pattern.Job // with it moved
	says  measure.Sentence
	fixed bool // a lesson chose what is moved

	version int // of the job that it was moved from
}

// tryOpen begins what if at a measure, or at the first that fits.
func (b *bench) tryOpen(first ...string) desk.Ask {
	ids := lesson.WhatIfs(b.d.Sheet())
	if len(ids) == 0 {
		return desk.Ask{Say: b.d.Tell(text.WhatIfNothing, waits(b.d, b.d.Sheet()))}
	}
	b.try = trying{open: true, ids: ids, version: b.d.Version()}
	for _, f := range first {
		if i := index(ids, f); i >= 0 {
			b.try.at = i
			break
		}
	}
	b.eye = b.eye.Fit()
	b.eye.Hair = false
	b.tryMove(0)
	return desk.Ask{Say: b.d.Tell(text.WhatIfHint)}
}

func index(all []string, id string) int {
	for i, x := range all {
		if x == id {
			return i
		}
	}
	return -1
}

// tryMove moves the measure. Where it cannot go, it stays and says so.
func (b *bench) tryMove(by measure.Length) {
	t := &b.try
	base := b.d.Job()
	job, says := lesson.WhatIf(base, t.ids[t.at], t.by+by)
	if t.by+by != 0 && reflect.DeepEqual(job, base) {
		t.says = says
		return
	}
	t.by += by
	t.job, t.says = job, says
}

// tryDo does an action of what if; false: it is none.
func (b *bench) tryDo(id keys.ID) (desk.Ask, bool) {
	t := &b.try
	if t.fixed {
		switch id { // the lesson chose the measure: these turn its pages
		case "text-right":
			return b.nextPage(), true
		case "text-left":
			return b.backPage(), true
		}
	}
	if by, ok := nudgeOf(b.d.Unit(), id); ok {
		b.tryMove(by)
		return desk.Ask{}, true
	}
	switch id {
	case "text-left", "text-right", keys.FieldNext, keys.FieldBack:
		n := 1
		if id == "text-left" || id == keys.FieldBack {
			n = -1
		}
		t.at = (t.at + n + len(t.ids)) % len(t.ids)
		t.by = 0
		b.tryMove(0)
	case keys.Accept:
		return b.tryKeep(), true
	case keys.Back:
		if t.fixed && t.by == 0 {
			return b.leaveLesson(), true
		}
		t.open, t.by = t.fixed, 0
		b.tryMove(0)
		return desk.Ask{Say: b.d.Tell(text.WhatIfPutBack)}, true
	default:
		return b.tableDo(id)
	}
	return desk.Ask{}, true
}

// tryKeep makes the change: one entry of the history.
func (b *bench) tryKeep() desk.Ask {
	t := &b.try
	job, says := t.job, capital(b.d.Words.Pass(t.says.In(b.d.Unit())))
	t.open = t.fixed
	if t.by == 0 {
		return desk.Ask{Say: b.d.Tell(text.WhatIfPutBack)}
	}
	t.by = 0
	return desk.Ask{Job: &job, Says: says}
}

// tryOffers are the actions of what if.
func (b *bench) tryOffers() []desk.Offer {
	d := b.d
	pick, move := d.Tell(text.WhatIfPick), d.Tell(text.WhatIfMove)
	if b.try.fixed {
		pick = d.Tell(text.WhatIfPage)
	}
	return []desk.Offer{
		{ID: "field-up", Title: move},
		{ID: "text-right", Title: pick},
		{ID: keys.Accept, Title: d.Tell(text.WhatIfKeep)},
		{ID: keys.Back, Title: d.Tell(text.WhatIfBack)},
		{ID: "field-down", Title: move, Quiet: true},
		{ID: "text-left", Title: pick, Quiet: true},
		{ID: "nudge-up", Title: move, Quiet: true},
		{ID: "nudge-down", Title: move, Quiet: true},
	}
}

// trySync keeps what is tried true where the work has changed meanwhile.
func (b *bench) trySync() {
	if v := b.d.Version(); b.try.open && b.try.version != v {
		b.try.version = v
		b.tryMove(0)
	}
}

// tryScene draws the old dotted under the new.
func (b *bench) tryScene(piece pattern.PieceID) view.Scene {
	b.trySync()
	out := view.Scene{Sheet: b.d.SheetOf(b.drafted(b.try.job)), Old: b.d.Sheet(), Piece: piece}
	if b.try.by == 0 {
		out.Old = nil
	}
	return out
}

// drafted is a job as the desk would draft it: by the method of a lesson.
func (b *bench) drafted(job pattern.Job) pattern.Job {
	m := b.d.Running().Method
	if m == "" || job.Style.Method() == m {
		return job
	}
	return job.WithStyle(pattern.Method, pattern.PickValue(m))
}

// tryWords say what is moved and what moves with it.
func (b *bench) tryWords(cols, rows int) ([]string, string) {
	d, u := b.d, b.d.Unit()
	b.trySync()
	head := capital(d.Trade(b.try.says.In(u)))
	if b.try.by == 0 && !strings.Contains(head, "stays") {
		head = b.tryNow()
	}
	out := []string{"", " " + d.Paint(theme.Accent, d.Tell(text.WhatIfTitle)) + "   " + d.Paint(theme.Title, head), ""}
	if rows < 8 {
		out = out[1:2]
	}
	now := d.SheetOf(b.drafted(b.try.job))
	diff := view.Differences(d.Sheet(), now, u, 6)
	for _, l := range diff {
		out = append(out, " "+d.Trade(capital(l))+".")
	}
	for _, l := range b.tryFindings(d.Sheet(), now) {
		out = append(out, " "+d.Paint(theme.Warn, l))
	}
	if why := refused(d, now); why != "" {
		for _, l := range desk.Wrap("! "+why, cols-2) {
			out = append(out, " "+d.Paint(theme.Warn, l))
		}
	}
	if len(out) < 4 && len(diff) == 0 {
		out = append(out, " "+d.Paint(theme.Muted, d.Tell(text.WhatIfStill)))
	}
	if len(out)+2 <= rows {
		out = append(out, "")
		how := d.Tell(text.WhatIfHow)
		if b.try.fixed {
			how = d.Tell(text.WhatIfHint)
		}
		for _, l := range desk.Wrap(how, cols-2) {
			out = append(out, " "+d.Paint(theme.Muted, l))
		}
	}
	caption := " " + head
	if len(diff) > 0 {
		caption += "   " + d.Trade(strings.Join(diff, ", "))
	}
	return out, caption
}

// trySays is what moves by what is tried, in one line.
func (b *bench) trySays() string {
	d, u := b.d, b.d.Unit()
	if b.try.by == 0 {
		return b.tryNow()
	}
	if diff := view.Differences(d.Sheet(), d.SheetOf(b.drafted(b.try.job)), u, 2); len(diff) > 0 {
		return capital(d.Trade(strings.Join(diff, ", "))) + "."
	}
	return capital(d.Trade(b.try.says.In(u)))
}

// tryNow is the measure as it is, before it is moved.
func (b *bench) tryNow() string {
	d, id := b.d, b.try.ids[b.try.at]
	if f, ok := d.Sheet().Figure(measure.ID(id)); ok {
		if m, known := measure.Find(f.ID); known {
			return d.Tell(text.WhatIfIs, capital(d.Trade(m.Term)), d.Unit().Say(f.Value))
		}
	}
	set, _ := d.Sheet().Setting(pattern.ChoiceID(id))
	title := capital(name(id))
	for _, c := range d.Choices() {
		if string(c.ID) == id {
			title = d.Trade(c.Title)
		}
	}
	return d.Tell(text.WhatIfIs, title, d.Unit().Say(set.Value.Length))
}

// tryFindings are the checks whose verdict becomes another, at most three.
func (b *bench) tryFindings(old, now *pattern.Sheet) []string {
	worst := func(s *pattern.Sheet) map[string]pattern.Verdict {
		rank := map[pattern.Verdict]int{pattern.Pass: 1, pattern.Advise: 2, pattern.Fail: 3}
		out := map[string]pattern.Verdict{}
		for _, f := range s.Findings {
			if rank[f.Verdict] > rank[out[f.Check]] {
				out[f.Check] = f.Verdict
			}
		}
		return out
	}
	was, is := worst(old), worst(now)
	var out []string
	said := map[string]bool{}
	for _, f := range now.Findings {
		a, c := was[f.Check], is[f.Check]
		if a == c || a == "" || c == "" || said[f.Check] || len(out) == 3 {
			continue
		}
		said[f.Check] = true
		out = append(out, b.d.Tell(text.WhatIfFinding, b.d.Trade(f.Title), b.d.Tell(verdicts[a]), b.d.Tell(verdicts[c])))
	}
	return out
}
