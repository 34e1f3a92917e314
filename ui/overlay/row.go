package overlay

import (
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// row is one line to choose.
type row struct {
	group  string // heading over the rows of one group
	title  string
	says   string      // a sentence about it
	right  string      // in a column behind the title: its key, its value
	whyNot string      // why it cannot be taken now; empty: it can
	finds  string      // further words that find it
	seat   desk.SeatID // the open session that it stands for
	here   bool        // where she is now: said in words too
	do     func() desk.Ask
}

// matches tells whether every word of the filter is found in the row.
func (r row) matches(words []string) bool {
	hay := strings.ToLower(r.title + " " + r.finds + " " + r.says + " " + r.right)
	for _, w := range words {
		if !strings.Contains(hay, w) {
			return false
		}
	}
	return true
}

// rank is how well the filter fits, least first: the beginning of the title,
// of a word of it, of a synonym, anything.
func (r row) rank(filter string) int {
	title := " " + strings.ToLower(r.title)
	switch {
	case strings.HasPrefix(title, " "+filter):
		return 0
	case strings.Contains(title, " "+filter):
		return 1
	case strings.Contains(" "+strings.ToLower(r.finds), " "+filter):
		return 2
	case strings.Contains(title, filter):
		return 3
	}
	return 4
}

// found are the rows that a filter leaves. With ranked the best come first;
// else groups and their order stay.
func found(rows []row, filter string, ranked bool) []row {
	low := strings.ToLower(strings.TrimSpace(filter))
	words := strings.Fields(low)
	if len(words) == 0 {
		return rows
	}
	ranks := 1
	if ranked {
		ranks = 5
	}
	var out []row
	for rank := 0; rank < ranks; rank++ {
		for _, r := range rows {
			if r.matches(words) && (!ranked || r.rank(low) == rank) {
				out = append(out, r)
			}
		}
	}
	return out
}

// take does what the row is for, or says why it cannot be done.
func (r row) take(d *desk.Desk) desk.Ask {
	switch {
	case r.whyNot != "":
		return desk.Ask{Say: notNow(d, r.whyNot), Warn: true}
	case r.do == nil:
		return desk.Ask{}
	}
	return r.do()
}

// notNow says why a row cannot be taken; the reason may be a sentence.
func notNow(d *desk.Desk, why string) string {
	return d.Tell(text.NotNow, inside(strings.TrimSuffix(d.Plain(why), ".")))
}

// inside is a sentence as it goes on behind a colon.
func inside(s string) string {
	if len(s) > 1 && s[0] >= 'A' && s[0] <= 'Z' && s[1] >= 'a' && s[1] <= 'z' {
		return strings.ToLower(s[:1]) + s[1:]
	}
	return s
}
