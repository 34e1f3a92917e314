package fitting

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Readings are the heights of a hem above the floor, in the shoes she will
// wear, and the height that is wanted; without it the hem is levelled at its
// highest place, since cloth can be taken up but not put on.
type Readings struct {
	Front, Side, Back measure.Length
	Wanted            measure.Length
}

// Level levels a hem by what was read from the floor. What all three places
// want alike changes the length; what is left is taken up at each.
func Level(s *pattern.Sheet, r Readings) (Proposal, error) {
	for _, x := range []struct {
		where string
		l     measure.Length
	}{{"front", r.Front}, {"side", r.Side}, {"back", r.Back}} {
		if x.l <= 0 || x.l > 1500*measure.Millimetre {
			return Proposal{}, &measure.Refusal{
				Read: "hem " + s.Job.Unit.Say(x.l) + " from the floor at the " + x.where, Wrong: "that is no height of a hem",
				Works: "stand the rule on the floor and read the folded edge",
			}
		}
	}
	const most = 4 * measure.Inch
	high, low := max(r.Front, r.Side, r.Back), min(r.Front, r.Side, r.Back)
	if high-low > most {
		return Proposal{}, &measure.Refusal{
			Read:  s.Job.Unit.Say(low) + " and " + s.Job.Unit.Say(high) + " from the floor",
			Wrong: "a hem does not hang " + s.Job.Unit.Say(high-low) + " off level; it is caught somewhere", Works: "let it hang free and read again",
		}
	}
	u := s.Job.Unit
	p := Proposal{
		Seen:  "Hem from the floor: front " + u.Say(r.Front) + ", sides " + u.Say(r.Side) + ", back " + u.Say(r.Back) + ".",
		Title: "Hem levelled", Why: "It is taken up where it hangs low and runs out smoothly between the three places.",
	}
	want := high
	if r.Wanted > 0 {
		want = r.Wanted
		p.Seen += " Wanted " + u.Say(r.Wanted) + "."
	}
	up := [3]measure.Length{want - r.Front, want - r.Side, want - r.Back}
	ids := [3]string{"hem_level_front", "hem_level_side", "hem_level_back"}
	var level [3]measure.Length
	for i, id := range ids {
		v, ok := present(s, id)
		if !ok {
			p.WhyNot = measure.Tell("this draft has no hem that can be levelled at three places")
			return p, nil
		}
		level[i] = v.Length + up[i]
	}
	all := min(level[0], level[1], level[2]) // shared by all three: that is the length
	length := "length"
	if s.Garment == pattern.Skirt {
		length = "skirt_length"
	}
	if old, ok := present(s, length); ok && !near(all, 0) {
		p.Changes = append(p.Changes, changed(s, length, old, pattern.LengthValue(old.Length-all)))
	}
	for i, id := range ids {
		old, _ := present(s, id)
		now := level[i] - all
		if near(now, 0) {
			now = 0
		}
		if !near(now, old.Length) {
			p.Changes = append(p.Changes, changed(s, id, old, pattern.LengthValue(now)))
		}
	}
	if len(p.Changes) == 0 {
		p.WhyNot = measure.Tell("the hem is level")
		return p, nil
	}
	p.work(s)
	return p, nil
}

// changed is a change of an input of a draft.
func changed(s *pattern.Sheet, input string, old, now pattern.Value) Change {
	return Change{input, Title(s.Garment, input), old, now, !own(s.Job, input)}
}
