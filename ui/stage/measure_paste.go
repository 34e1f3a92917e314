package stage

import (
	"strings"
	"unicode"
	"unicode/utf8"

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
		head, value, named := pasted(line)
		id, known := measurementOf(head)
		if remark := strings.HasPrefix(line, "#"); remark || value == "" || !known && !strings.ContainsFunc(value, isDigit) {
			continue // a heading, a remark, a line that was not filled in
		}
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

// pasted splits a line into what it names and its number: columns of a table,
// a line of a session file, a line of a letter. Numbers of rows before the name
// and columns after the number are somebody's own.
func pasted(line string) (head, value string, named bool) {
	line = strings.TrimLeft(strings.Trim(line, " "), "-*\u2022 ")
	cells := strings.Split(line, "\t")
	for i := range cells {
		cells[i] = unquoted(strings.TrimSpace(cells[i]))
	}
	if len(cells) == 1 {
		return untabbed(strings.TrimSpace(line))
	}
	if len(cells) > 2 {
		if _, known := measurementOf(cells[1]); known && !strings.ContainsFunc(cells[0], unicode.IsLetter) {
			cells = cells[1:]
		}
	}
	return cells[0], cells[1], true
}

// unquoted is a cell without the quotes round it; a mark behind a number alone
// is of inches.
func unquoted(cell string) string {
	if inner, ok := strings.CutPrefix(cell, `"`); ok {
		return strings.TrimSuffix(inner, `"`)
	}
	return cell
}

// isDigit is a digit, or a fraction in one sign.
func isDigit(r rune) bool {
	return unicode.IsDigit(r) || strings.ContainsRune("½¼¾⅓⅔⅛⅜⅝⅞", r)
}

// untabbed splits a line without tabs, as mails and lists have them: "Bust: 36
// 1/2", "bust girth = 92,5 cm", "- waist 28". A line that begins with its number
// names nothing.
func untabbed(line string) (head, value string, named bool) {
	at := strings.IndexFunc(line, isDigit)
	if at <= 0 || !strings.ContainsFunc(line[:at], unicode.IsLetter) {
		return "", line, false
	}
	head, value = line[:at], line[at:]
	if strings.HasSuffix(head, `"`) { // as a session file or a table with commas has it
		value, _, _ = strings.Cut(value, `"`)
	}
	for i, r := range value { // what follows is somebody's own
		if r == ',' {
			if next, _ := utf8.DecodeRuneInString(value[i+1:]); isDigit(next) {
				continue // of the number
			}
		}
		if r == '#' || r == ';' || r == ',' {
			value = value[:i]
			break
		}
	}
	return strings.Trim(head, "\" :=;,|.\u00a0"), strings.TrimSpace(value), true
}

// measurementOf is the measurement of that id or name.
func measurementOf(words string) (measure.ID, bool) {
	key := letters(words)
	for _, x := range measure.All() {
		for _, known := range []string{string(x.ID), x.Term, x.Short, x.Plain} {
			if key != "" && key == letters(known) {
				return x.ID, true
			}
		}
	}
	return "", false
}

// letters are the words of a name alone, small: marks and case count for
// nothing.
func letters(words string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(words), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }), " ")
}
