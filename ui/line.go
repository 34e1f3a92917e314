package ui

import (
	"strings"

	"github.com/charmbracelet/x/ansi"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
	"chalkfold/ui/theme"
)

// span is a part of a line that can be clicked.
type span struct {
	row, from, to int
	id            keys.ID
}

// visitor is a stage whose fact is another once she has been there.
type visitor interface{ Visit() }

// rightCells is what line 1 keeps for the client, the star and the unit, and
// the client's cells where it is narrow.
const (
	rightCells  = 20
	shortClient = 8
	fullFrom    = 80
)

// first is line 1: the way through the work at the left, whose it is at the
// right.
func (m *Model) first() string {
	left, width := m.way(m.cols >= fullFrom)
	right := m.whose(max(m.cols-width-1, 0))
	if m.cols >= fullFrom && width > m.cols-rightCells {
		if short, w := m.way(false); w < width {
			left, width = short, w
			right = m.whose(m.cols - width - 1)
		}
	}
	room := m.cols - width - ansi.StringWidth(right)
	if room < 0 {
		return desk.Clip(left, m.cols)
	}
	return left + strings.Repeat(" ", room) + right
}

// way is the six stages with their facts, the present one in brackets.
func (m *Model) way(facts bool) (line string, width int) {
	m.spans = m.spans[:0]
	var b strings.Builder
	for i, s := range m.stages {
		word := string(rune('1'+i)) + " " + s.Title()
		fact := s.Fact()
		if v, ok := s.(visitor); ok && desk.StageID(i+1) == m.at {
			v.Visit()
			fact = s.Fact()
		}
		switch {
		case facts && strings.HasSuffix(fact, "!") || facts && fact != "":
			word += " " + fact
		case strings.HasSuffix(fact, "!"):
			word += "!"
		}
		here := desk.StageID(i+1) == m.at
		if here {
			word = "[" + word + "]"
		}
		if i > 0 {
			b.WriteByte(' ')
			width++
		}
		n := ansi.StringWidth(word)
		m.spans = append(m.spans, span{0, width, width + n, ids[i]})
		width += n
		if here {
			word = m.d.Paint(theme.Accent, word)
		}
		b.WriteString(word)
	}
	return b.String(), width
}

var ids = [6]keys.ID{"measure", "style", "draft", "true", "lay", "cut"}

// whose is the client, a star if the work is not saved, and the unit.
func (m *Model) whose(room int) string {
	star := " "
	if m.d.Unsaved() {
		star = "*"
	}
	tail := " " + star + " " + m.d.Unit().String()
	client := m.d.Plain(m.d.Client())
	most := room - len(tail)
	if m.cols < fullFrom {
		most = min(most, shortClient)
	}
	if most < 1 {
		return strings.TrimSpace(tail)
	}
	if m.cols < fullFrom {
		switch at := strings.LastIndexByte(desk.Clip(client, most+1), ' '); {
		case ansi.StringWidth(client) <= most:
		case m.d.Empty():
			client = m.d.Tell(text.Nobody)
		case at > 0:
			client = client[:at] // a whole first name says more than a torn one
		}
	}
	return desk.Clip(client, most) + tail
}

// last is the footer: the keys that work now, ending in help.
func (m *Model) last() string {
	offers := m.footer()
	help := offers[len(offers)-1]
	rest := offers[:len(offers)-1]
	for len(rest) > 0 && m.footWidth(rest, help) > m.cols {
		rest = rest[:len(rest)-1]
	}
	var b strings.Builder
	at := 1
	b.WriteByte(' ')
	for i, o := range append(append([]desk.Offer(nil), rest...), help) {
		key, words := m.foot(o)
		if i > 0 {
			b.WriteString("  ")
			at += 2
		}
		n := ansi.StringWidth(key) + 1 + ansi.StringWidth(words)
		m.spans = append(m.spans, span{m.rows - 1, at, at + n, o.ID})
		at += n
		b.WriteString(m.d.Paint(theme.Key, key) + " " + m.d.Paint(theme.Muted, words))
	}
	return desk.Clip(b.String(), m.cols)
}

func (m *Model) footWidth(rest []desk.Offer, help desk.Offer) int {
	n := 1
	for _, o := range append(append([]desk.Offer(nil), rest...), help) {
		key, words := m.foot(o)
		n += ansi.StringWidth(key) + 1 + ansi.StringWidth(words) + 2
	}
	return n - 2
}

// foot is a key and its words for the footer.
func (m *Model) foot(o desk.Offer) (key, words string) {
	a, ok := m.d.Keys.Find(o.ID)
	if !ok {
		return "", ""
	}
	words = a.Foot
	if o.Title != "" {
		words = o.Title
	}
	if words == "" {
		words = a.Title
	}
	return a.Short(), m.d.Trade(words)
}
