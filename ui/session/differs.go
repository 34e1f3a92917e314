package session

import (
	"reflect"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// Differences tells in a few words each what a job says otherwise than
// another: "bust 36 -> 36 1/2 in".
func Differences(a, b pattern.Job) []string {
	u := b.Unit
	was, now := map[string]leaf{}, leaves(b, nil)
	for _, l := range leaves(a, nil) {
		was[joined(l.path)] = l
	}
	lengths := func(path []string, l leaf, job pattern.Job) string {
		var body measure.Body
		switch path[0] {
		case "body":
			body = job.Body
		case "body_left":
			body = job.Left
		case "confirmed":
			body = job.Confirmed
		case "style":
			if v, ok := job.Style.Get(pattern.ChoiceID(path[1])); ok && v.Kind == pattern.KindLength {
				return u.Say(v.Length)
			}
		}
		if v, ok := body.Get(measure.ID(path[len(path)-1])); ok {
			return u.Say(v)
		}
		return l.literal
	}
	var out []string
	for _, l := range now {
		old, there := was[joined(l.path)]
		delete(was, joined(l.path))
		switch {
		case l.path[0] == "lay":
		case !there && l.path[len(l.path)-1] != "nap":
			out = append(out, title(l.path)+" "+lengths(l.path, l, b))
		case there && old.same != l.same:
			out = append(out, title(l.path)+" "+lengths(l.path, old, a)+" -> "+lengths(l.path, l, b))
		}
	}
	for _, l := range leaves(a, nil) {
		if _, gone := was[joined(l.path)]; gone && l.path[0] != "lay" {
			out = append(out, title(l.path)+" "+lengths(l.path, l, a)+" taken out")
		}
	}
	if n := len(b.Fittings) - len(a.Fittings); n != 0 {
		out = append(out, "other fittings")
	}
	if n := len(b.Earlier) - len(a.Earlier); n != 0 {
		out = append(out, "other earlier measures")
	}
	return append(out, otherLays(a, b)...)
}

// otherLays names the cloths on which the pieces lie otherwise; where each
// lies would be too much to say.
func otherLays(a, b pattern.Job) []string {
	var out []string
	for _, l := range b.Lays {
		if was, _ := a.Lay(l.Cloth); !reflect.DeepEqual(was, l) {
			out = append(out, "another lay on the "+l.Cloth+" cloth")
		}
	}
	for _, l := range a.Lays {
		if _, stays := b.Lay(l.Cloth); !stays {
			out = append(out, "no lay on the "+l.Cloth+" cloth")
		}
	}
	return out
}

// title is what people call a value of a session.
func title(path []string) string {
	last := path[len(path)-1]
	switch path[0] {
	case "body", "body_left", "confirmed":
		if m, ok := measure.Find(measure.ID(last)); ok {
			last = m.Term
		}
		switch path[0] {
		case "body_left":
			last += ", left"
		case "confirmed":
			last += ", confirmed"
		}
	case "style":
		for _, g := range workroom.Garments() {
			if c, ok := workroom.FindChoice(g.ID, pattern.ChoiceID(last)); ok {
				return c.Title
			}
		}
	case "cloth":
		return "cloth " + path[1] + ", " + last
	case "client":
		return "client's " + last
	}
	return last
}
