package fitting

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// State is how an alteration stands.
type State int8

// An alteration stands as long as its inputs still have what it gave them. One
// that was taken back can be made again. One is overtaken where an input was
// measured or chosen anew since. What was written by hand is only shown.
const (
	Stands State = iota
	TakenBack
	Overtaken
	Noted
)

// String is the state in a word or two.
func (s State) String() string {
	return [...]string{"stands", "taken back", "overtaken", "noted"}[s]
}

// Entry is one alteration of the log.
type Entry struct {
	Number  int // from 1, oldest first
	Kept    pattern.Fitting
	Changes []Logged
	State   State
}

// Logged is one change of an entry and what became of it.
type Logged struct {
	Change
	By    string // as it is written
	Now   pattern.Value
	Known bool // Now is known
	State State
}

// Log is how every alteration of a job stands, oldest first.
func Log(job pattern.Job) []Entry {
	if len(job.Fittings) == 0 {
		return nil
	}
	return entries(job, workroom.Draft(job))
}

func entries(job pattern.Job, s *pattern.Sheet) []Entry {
	out := make([]Entry, len(job.Fittings))
	for i, f := range job.Fittings {
		out[i] = Entry{Number: i + 1, Kept: f}
		for _, c := range f.Change {
			l := Logged{By: c.By, State: Noted}
			var ok bool
			if l.Change, ok = read(s.Garment, c, job.Unit); ok {
				l.State = Overtaken
			}
			l.Now, l.Known = present(s, c.Input)
			out[i].Changes = append(out[i].Changes, l)
		}
	}
	for i := range out {
		for k := range out[i].Changes {
			chain(out, i, k)
		}
	}
	for i := range out {
		out[i].State = out[i].state()
	}
	return out
}

// chain follows the changes of one input from entry i on: each begins where the
// one before ended. If the last ends at what the input is now, all of them
// stand.
func chain(all []Entry, i, k int) {
	first := &all[i].Changes[k]
	if all[i].Kept.Out || first.State != Overtaken || !first.Known {
		return
	}
	end, links := first.New, []*Logged{first}
	for j := i + 1; j < len(all); j++ {
		if all[j].Kept.Out {
			continue
		}
		for n := range all[j].Changes {
			if c := &all[j].Changes[n]; c.Input == first.Input && c.State != Noted {
				if !same(c.Old, end) {
					return // changed in between: what came before is overtaken
				}
				end, links = c.New, append(links, c)
			}
		}
	}
	if !same(end, first.Now) {
		return
	}
	for _, l := range links {
		l.State = Stands
	}
}

func (e Entry) state() State {
	if e.Kept.Out {
		return TakenBack
	}
	state := Noted
	for _, c := range e.Changes {
		switch c.State {
		case Overtaken:
			return Overtaken
		case Stands:
			state = Stands
		}
	}
	return state
}

// Says is the changes of an entry in one line.
func (e Entry) Says(u measure.Unit) string {
	var parts []string
	for _, c := range e.Changes {
		if c.State == Noted {
			parts = append(parts, c.Title+" "+c.By)
			continue
		}
		parts = append(parts, c.Change.Says().In(u))
	}
	return strings.Join(parts, ", ")
}

// Asks is what has to be asked of an overtaken entry, empty of others.
func (e Entry) Asks() []measure.Sentence {
	var out []measure.Sentence
	for _, c := range e.Changes {
		if e.State != Overtaken || c.State != Overtaken || !c.Known {
			continue
		}
		again, _ := c.again()
		how := "chosen"
		if IsBody(c.Input) {
			how = "measured"
		}
		out = append(out, measure.Tell(c.Title+" was altered from {} to {} and has been "+how+" since: {}. Does that hold, or is it altered again, to {}?",
			shown(c.Old, c.Input), shown(c.New, c.Input), shown(c.Now, c.Input), shown(again, c.Input)))
	}
	return out
}

// again is what the input would be with the change made once more.
func (c Logged) again() (pattern.Value, bool) {
	if c.State == Noted || !c.Known {
		return c.Now, false
	}
	if c.New.Kind != pattern.KindLength {
		return c.New, !same(c.New, c.Now)
	}
	v := c.Now
	v.Length += c.New.Length - c.Old.Length
	return v, v.Length >= 0
}
