package workroom

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/garment"
	"chalkfold/pattern/truing"
)

// GarmentInfo names a garment that can be drafted.
type GarmentInfo struct{ ID, Title, Says string }

// Garments lists what can be drafted.
func Garments() []GarmentInfo {
	var out []GarmentInfo
	for _, g := range garment.All() {
		out = append(out, GarmentInfo{g.ID, g.Title, g.Says})
	}
	return out
}

// Choices lists the choices of a garment, in the order of forms and help;
// nil for a garment that there is not.
func Choices(id string) []pattern.Choice {
	if g, ok := find(id); ok {
		return g.Choices()
	}
	return nil
}

// FindChoice returns one choice of a garment.
func FindChoice(id string, choice pattern.ChoiceID) (pattern.Choice, bool) {
	for _, c := range Choices(id) {
		if c.ID == choice {
			return c, true
		}
	}
	return pattern.Choice{}, false
}

// Needs lists the measurements that a draft with nothing chosen reads, in
// taking order.
func Needs(id, method string) []measure.ID {
	g, ok := find(id)
	if !ok {
		return nil
	}
	m, _ := g.Method(method)
	return m.Needs
}

// NeedsOf lists the measurements that the draft of a style reads, in taking
// order: some are read only where a style asks for them.
func NeedsOf(s pattern.Style) []measure.ID {
	g, ok := find(s.Garment())
	if !ok {
		return nil
	}
	m, ok := g.Method(s.Method())
	if !ok {
		m, _ = g.Method(pattern.Measured) // as it is drafted
	}
	return m.NeedsOf(s)
}

func find(id string) (garment.Garment, bool) {
	for _, g := range garment.All() {
		if g.ID == id {
			return g, true
		}
	}
	return garment.Garment{}, false
}

// Draft drafts a job and trues it. A job that cannot be drafted whole gives
// a sheet that says what is missing or refused; it never fails otherwise. An
// unknown garment or method, which reading a session refuses, is drafted as
// the usual one.
func Draft(job pattern.Job) *pattern.Sheet {
	g, ok := find(job.Style.Garment())
	if !ok {
		g, _ = find(pattern.Dress)
	}
	name := job.Style.Method()
	m, ok := g.Method(name)
	if !ok {
		name = pattern.Measured
		m, _ = g.Method(name)
	}
	s := drawn(job, g, m, name)
	s.Notes = notes(s)
	s.MeasuredDepth = measuredDepth(s, g)
	s.Findings = truing.Run(s)
	if name != pattern.Thumb && job.Left.Len() > 0 {
		bothSides(s, g, m)
	}
	return s
}

// drawn is the draft of a job before it is trued.
func drawn(job pattern.Job, g garment.Garment, m garment.Method, name string) *pattern.Sheet {
	s := &pattern.Sheet{Known: pattern.Known{Job: job, Garment: g.ID, Method: name}}
	s.Figures, s.Missing = figures(job, m.NeedsOf(job.Style), name)
	s.Settings = settings(s.Known, g.Choices())
	res := bench.Run(s.Known, m.Steps)
	s.Steps, s.Marks, s.Refused = res.Steps, res.Marks, res.Refused
	m.Finish(s)
	return s
}

// settings resolves every choice: hers, or its default, in the order in
// which defaults read each other.
func settings(k pattern.Known, choices []pattern.Choice) []pattern.Setting {
	k.Settings = make([]pattern.Setting, 0, len(choices))
	done := make([]bool, len(choices))
	place := make(map[pattern.ChoiceID]int, len(choices))
	for i, c := range choices {
		place[c.ID] = i
	}
	resolved := make([]pattern.Setting, len(choices))
	var settle func(i int)
	settle = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		for _, id := range choices[i].After {
			settle(place[id])
		}
		resolved[i] = resolve(k, choices[i])
		k.Settings = append(k.Settings, resolved[i])
	}
	for i := range choices {
		settle(i)
	}
	return resolved
}

func resolve(k pattern.Known, c pattern.Choice) pattern.Setting {
	s := pattern.Setting{ID: c.ID, Used: c.UsedBy(k.Method), Default: c.Default(k)}
	s.Value = s.Default.Value
	if v, ok := k.Job.Style.Get(c.ID); ok {
		s.Value, s.Chosen = v, true
	}
	if !s.Chosen && len(s.Default.Waits) > 0 {
		s.Value = pattern.Value{Kind: c.Kind}
	}
	if c.Limits != nil {
		s.Low, s.High = c.Limits(k)
	}
	return s
}

// notes says what was kept but not used.
func notes(s *pattern.Sheet) []measure.Sentence {
	var out []measure.Sentence
	for _, set := range s.Settings {
		if set.Chosen && !set.Used {
			title := string(set.ID)
			if c, ok := FindChoice(s.Garment, set.ID); ok {
				title = c.Title
			}
			out = append(out, measure.Tell("{} is chosen; the method {} does not use it. It is kept.", title, methodName(s.Method)))
		}
	}
	for _, id := range []pattern.ChoiceID{"facing", "waist_facing_width"} {
		if set, ok := s.Setting(id); ok && set.Chosen && set.Used && detail.Lining(s.Known) == detail.FullLining && (id == "facing" || detail.WaistFinish(s.Known) == detail.LinedEdges) {
			out = append(out, measure.Tell("A full lining takes the place of the facings; what is chosen of them is kept."))
		}
	}
	if m := s.Job.Style.Method(); m != s.Method {
		out = append(out, measure.Tell("The method {} is chosen; this garment is drafted by measure. It is kept.", methodName(m)))
	}
	if n := s.Job.Left.Len(); n > 0 && s.Method == pattern.Thumb {
		out = append(out, measure.Tell("Her left side differs in "+counted(n, "measurement")+". By thumb both sides are cut alike; the left is kept."))
	}
	return out
}

func methodName(m string) string {
	switch m {
	case pattern.Thumb:
		return "by thumb"
	case pattern.Direct:
		return "direct block"
	}
	return m
}

func counted(n int, word string) string {
	if n == 1 {
		return "one " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}

// measuredDepth is the armhole depth that the measured method would take.
func measuredDepth(s *pattern.Sheet, g garment.Garment) measure.Length {
	if s.Method != pattern.Thumb {
		return s.Known.Length("armhole_depth")
	}
	k := pattern.Known{Job: s.Job, Garment: s.Garment, Method: pattern.Measured}
	m, _ := g.Method(pattern.Measured)
	k.Figures, _ = figures(s.Job, m.NeedsOf(s.Job.Style), pattern.Measured)
	k.Settings = settings(k, g.Choices())
	if set, ok := k.Setting("armhole_depth"); ok && set.Known() {
		return set.Value.Length
	}
	return 0
}
