package stage

import (
	"strings"
	"unicode"

	"chalkfold/measure"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// mostTold is how many lines of a paste are told by name.
const mostTold = 3

// Pasted takes a paste while no field has the focus.
func (m *Measure) Pasted(k desk.Key) desk.Ask { return m.Type(k) }

// paste takes a table: a line for each measurement with its id or its name and
// its number after a tab, or numbers alone, which go into the rows from the one
// in hand on. All of it is one change; what could not be taken is said.
func (m *Measure) paste(s string) desk.Ask {
	d, job := m.d, m.d.Job()
	at := m.form.at
	var taken, left []string
	for _, line := range strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\r' }) {
		if strings.TrimSpace(line) == "" {
			continue
		}
		head, value, named := pasted(line)
		id, known := measurementOf(head)
		if !named {
			for at < len(m.form.rows) && !known {
				id = measure.ID(m.form.rows[at].id)
				_, known = measure.Find(id)
				at++
			}
		}
		l, err := m.read(id, value)
		switch {
		case !known:
			left = append(left, d.Words.Say(text.PasteNoName, measure.Quoted(head)))
		case err != nil:
			left = append(left, d.Words.Say(text.PasteNoNumber, strings.ToLower(m.term(id))+" "+measure.Quoted(value)))
		default:
			job = job.WithBody(id, l)
			taken = append(taken, strings.ToLower(m.term(id))+" "+d.Unit().Say(l))
		}
	}
	if len(taken) == 0 {
		return desk.Ask{Say: d.Plain(d.Words.Say(text.PasteUnread) + " " + told(d, text.PasteLeft, left)), Warn: true}
	}
	m.form.accepted()
	says := d.Words.Count(len(taken), text.PastedOne, text.Pasted)
	ask := desk.Ask{Job: &job, Says: says}
	if len(left) > 0 {
		ask.Say, ask.Warn = d.Plain(says+" "+told(d, text.PasteLeft, left)), true
	} else if len(taken) <= mostTold {
		ask.Say = d.Plain(told(d, text.PasteTaken, taken))
	}
	return ask
}

// told names the first few and counts the rest.
func told(d *desk.Desk, id text.ID, all []string) string {
	if len(all) == 0 {
		return ""
	}
	if n := len(all) - mostTold; n > 0 {
		all = append(all[:mostTold:mostTold], d.Words.Say(text.PasteMore, n))
	}
	return d.Words.Say(id, strings.Join(all, ", "))
}

// pasted splits a line into what it names and its number; further columns are
// somebody's notes.
func pasted(line string) (head, value string, named bool) {
	cells := strings.Split(line, "\t")
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	if len(cells) == 1 {
		return untabbed(cells[0])
	}
	return cells[0], cells[1], true
}

// untabbed splits a line without tabs, as mails and lists have them: "Bust: 36
// 1/2", "bust girth = 92,5 cm", "- waist 28". A line that begins with its number
// names nothing.
func untabbed(line string) (head, value string, named bool) {
	line = strings.TrimLeft(line, "-*\u2022 ")
	at := strings.IndexFunc(line, func(r rune) bool { return unicode.IsDigit(r) || strings.ContainsRune("½¼¾⅓⅔⅛⅜⅝⅞", r) })
	if at <= 0 || !strings.ContainsFunc(line[:at], unicode.IsLetter) {
		return "", line, false
	}
	return strings.Trim(line[:at], " :=;,|.\u00a0"), line[at:], true
}

// measurementOf is the measurement of that id or name.
func measurementOf(words string) (measure.ID, bool) {
	key := strings.ToLower(words)
	for _, x := range measure.All() {
		for _, known := range []string{string(x.ID), name(string(x.ID)), x.Term, x.Short} {
			if key != "" && key == strings.ToLower(known) {
				return x.ID, true
			}
		}
	}
	return "", false
}
