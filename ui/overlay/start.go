package overlay

import (
	"time"

	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Start is the first screen: five ways to begin. Digits go to the stages, q
// leaves, Esc only says so.
func Start(d *desk.Desk) desk.Overlay {
	b := &board{d: d, title: d.Tell(text.StartTitle), how: text.StartHow, says: []string{d.Tell(text.StartSays)}}
	last := row{title: d.Tell(text.StartTakeUp), whyNot: d.Tell(text.NothingYet)}
	if recent := session.Recent(); len(recent) > 0 {
		c := recent[0]
		last.whyNot, last.says = "", d.Tell(text.StartTakeUpSays, clientName(d, c.Name), ago(d, c.Seen))
		last.do = func() desk.Ask { return open(d, c.Path) }
	}
	rows := []row{
		{title: d.Tell(text.StartLearn), says: d.Tell(text.StartLearnSays), do: func() desk.Ask {
			return desk.Ask{Close: true, Do: keys.Lessons}
		}},
		{title: d.Tell(text.StartNew), says: d.Tell(text.StartNewSays), do: func() desk.Ask {
			return begin(pattern.Job{Unit: d.Unit()}, d.Tell(text.StartBegun), desk.Measure)
		}},
		{title: d.Tell(text.StartOpen), says: d.Tell(text.StartOpenSays), do: func() desk.Ask { return desk.Ask{Open: Open(d)} }},
		last,
		{title: d.Tell(text.StartSample), says: d.Tell(text.StartSampleSays), do: func() desk.Ask {
			return begin(Sample(d), d.Tell(text.StartSampled), desk.Measure)
		}},
	}
	b.rows = func(string) []row { return rows }
	b.offers = []desk.Offer{{ID: "choose"}, {ID: "row-down"}, {ID: keys.Leave}, {ID: keys.Mouse}, {ID: "row-up", Quiet: true}}
	b.hear = func(a desk.Answer) desk.Ask { return b.opened(a) }
	b.back = func() desk.Ask { return desk.Ask{Say: d.Tell(text.EscGround)} }
	b.letter = func(id keys.ID) desk.Ask { return desk.Ask{Close: stages[id] != desk.NoStage, Go: stages[id]} }
	return b
}

// stages are those that the digits lead to.
var stages = map[keys.ID]desk.StageID{
	"measure": desk.Measure, "style": desk.Style, "draft": desk.Draft, "true": desk.True, "lay": desk.Lay, "cut": desk.Cut,
}

// begin is a session that has no file yet.
func begin(job pattern.Job, says string, at desk.StageID) desk.Ask {
	return desk.Ask{Close: true, Take: &desk.Opened{Store: session.New("", job), Saved: job, Says: says, Go: at}}
}

func clientName(d *desk.Desk, name string) string {
	if name == "" {
		return d.Tell(text.NoName)
	}
	return d.Plain(name)
}

// ago is when something was: the hour of today, else the day.
func ago(d *desk.Desk, t time.Time) string {
	if t.IsZero() {
		return ""
	}
	t, now := t.Local(), d.Now().Local()
	if t.Year() == now.Year() && t.YearDay() == now.YearDay() {
		return t.Format("15:04")
	}
	return t.Format("2006-01-02")
}
