package stage

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

func mm(x float64) measure.Length { return measure.Length(x) }

func name(id string) string { return strings.ReplaceAll(id, "_", " ") }

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// other is the unit that a number may have been meant in.
func other(u measure.Unit) measure.Unit {
	if u == measure.In {
		return measure.Cm
	}
	return measure.In
}

// waits names the first measurement that the draft cannot do without.
func waits(d *desk.Desk, s *pattern.Sheet) string {
	if len(s.Missing) == 0 {
		return ""
	}
	if m, ok := measure.Find(s.Missing[0].ID); ok {
		return d.Trade(m.Term)
	}
	return name(string(s.Missing[0].ID))
}

// same says that two values are the same for all that a tape can tell: they
// may have been read in different ways.
func same(a, b pattern.Value) bool {
	d := float64(a.Length - b.Length)
	a.Length, b.Length = 0, 0
	return a == b && d < 1e-6 && d > -1e-6
}

// refused says why a draft was stopped, and what would work.
func refused(d *desk.Desk, s *pattern.Sheet) string {
	if len(s.Refused) == 0 {
		return ""
	}
	r, u := s.Refused[0], d.Unit()
	words := capital(strings.TrimSuffix(d.Trade(r.Says.In(u)), ".")) + "."
	if cure := r.Cure.In(u); cure != "" {
		words += " " + d.Tell(text.WouldWork, strings.TrimSuffix(d.Trade(cure), "."))
	}
	return words
}

// marker is the sign before the row in hand.
func marker(on bool) string {
	if on {
		return ">"
	}
	return " "
}

// labelled are lines of a text with a word in a column before it: "DO   On the
// underarm line ...".
func labelled(d *desk.Desk, label string, width, cols int, body string, role theme.Role) []string {
	var out []string
	for i, l := range desk.Wrap(body, cols-width-2) {
		head := ""
		if i == 0 {
			head = label
		}
		out = append(out, " "+d.Paint(theme.Muted, desk.Fit(head, width))+d.Paint(role, l))
	}
	return out
}

// columns puts a list and what is said of its row in hand beside each other,
// below an empty line; what is said takes that line too where it needs it.
func (b *bench) columns(list []string, wide int, said []string, cols, rows int) []string {
	list = append([]string{""}, list...)
	if len(said) < rows {
		said = append([]string{""}, said...)
	}
	said = b.cropped(said, "", cols, rows)
	for i := range list {
		if i < len(said) && said[i] != "" {
			list[i] = desk.Fit(list[i], wide) + said[i]
		}
	}
	return list
}

// cropped is as many of the lines as there is room for; where some are left
// out, the last says how many, and which key gives them room.
func (b *bench) cropped(lines []string, indent string, cols, rows int) []string {
	if len(lines) <= rows || rows < 2 {
		return lines
	}
	d, left := b.d, len(lines)-rows+1
	says := d.Tell(text.MoreWordsAlone, left)
	if !b.alone && b.room != wordsOnly {
		a, _ := d.Keys.Find(keys.Room)
		says = d.Tell(text.MoreWords, left, a.Short())
	}
	return append(lines[:rows-1:rows-1], desk.Clip(indent+d.Paint(theme.Muted, says), cols))
}

// offer is an action that is possible now.
func offer(id keys.ID) desk.Offer { return desk.Offer{ID: id} }

// quiet is one that the footer leaves out.
func quiet(id keys.ID) desk.Offer { return desk.Offer{ID: id, Quiet: true} }

// fitOffer is what comes after the fitting, once there is a dress to fit.
func (b *bench) fitOffer(id keys.ID) desk.Offer {
	o := quiet(id)
	if !b.d.SheetOf(b.d.Job()).Complete {
		o.WhyNot = b.d.Tell(text.FitNotYet)
	}
	return o
}
