package overlay

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// board is what every overlay is made of.
type board struct {
	d     *desk.Desk
	title string
	how   text.ID
	says  []string // sentences above the rows

	field   text.ID // label of the field; empty: there is nothing to type
	typed   string
	entry   bool                     // what is typed is an entry, it finds nothing
	rows    func(typed string) []row // the rows that stand now
	reads   bool                     // nothing to choose: moving scrolls
	tail    func(r desk.Rect) []string
	hear    func(desk.Answer) desk.Ask
	turn    func(at, dir int) desk.Ask // Left and Right on a row
	shut    func(at int) desk.Ask      // Del on a row
	letter  func(id keys.ID) desk.Ask  // keys of a screen, where there is no field
	offers  []desk.Offer               // other keys for the footer than those of a list
	leaving bool                       // it asks about leaving already
	finish  func()                     // Tab in the field
	back    func() desk.Ask            // Esc; nil: close

	at, top int
	fresh   bool // shown is of now
	shown   []row
	page    int   // rows or lines on the last view
	hit     []int // which row stands on which line of the last view
}

// longest is the longest text that a field takes; paths are shorter.
const longest = 500

func (b *board) Title() string { return b.title }
func (b *board) Covers() bool  { return false }
func (b *board) Typing() bool  { return b.field != "" }

// Actions are the keys of a list.
func (b *board) Actions() []desk.Offer {
	if b.offers != nil {
		return b.offers
	}
	if b.reads {
		return []desk.Offer{{ID: "row-down", Title: b.d.Tell(text.ReadOn)}, {ID: "close"}}
	}
	out := []desk.Offer{{ID: "choose"}, {ID: "row-down"}, {ID: "close"}, {ID: "row-up", Quiet: true}, {ID: "page-up", Quiet: true}, {ID: "page-down", Quiet: true}}
	if b.finish != nil {
		out = append(out, desk.Offer{ID: keys.FieldNext, Title: b.d.Tell(text.CompletePath), Quiet: true})
	}
	return out
}

// list are the rows that stand now.
func (b *board) list() []row {
	if !b.fresh {
		b.shown = nil
		if b.rows != nil {
			b.shown = b.rows(b.typed)
		}
		b.fresh = true
	}
	b.at = max(0, min(b.at, len(b.shown)-1))
	return b.shown
}

// renew makes the rows anew, for what they show has changed.
func (b *board) renew() { b.fresh = false }

// Do does an action of the key table.
func (b *board) Do(id keys.ID) desk.Ask {
	switch id {
	case "row-up":
		b.move(-1)
	case "row-down":
		b.move(1)
	case "page-up":
		b.move(-max(1, b.page-1))
	case "page-down":
		b.move(max(1, b.page-1))
	case keys.FieldNext:
		if b.finish != nil {
			b.finish()
		} else {
			b.move(1)
		}
	case keys.FieldBack:
		b.move(-1)
	case "close-seat":
		if b.shut != nil {
			return b.shut(b.at)
		}
	case "choose", keys.Accept:
		return b.choose()
	case "close", keys.Back:
		if b.back != nil {
			return b.back()
		}
		return desk.Ask{Close: true}
	}
	return desk.Ask{}
}

func (b *board) move(n int) {
	if b.reads {
		b.top = max(0, b.top+n)
		return
	}
	b.list()
	b.at += n
	b.list()
}

func (b *board) choose() desk.Ask {
	if rows := b.list(); b.at < len(rows) {
		return rows[b.at].take(b.d)
	}
	if b.reads {
		return desk.Ask{Close: true}
	}
	return desk.Ask{}
}

// named are the keys that reach Type by their names.
var named = map[string]keys.ID{
	"up": "row-up", "down": "row-down", "pgup": "page-up", "pgdown": "page-down",
	"enter": "choose", "esc": "close", "tab": keys.FieldNext, "shift+tab": keys.FieldBack,
}

// Type takes a key that no action of the table took.
func (b *board) Type(k desk.Key) desk.Ask {
	if id, ok := named[k.Name]; ok && !k.Paste {
		return b.Do(id)
	}
	switch k.Name {
	case "backspace":
		if b.field != "" && b.typed != "" {
			_, n := utf8.DecodeLastRuneInString(b.typed)
			b.retype(b.typed[:len(b.typed)-n])
		}
		return desk.Ask{}
	case "ctrl+u":
		if b.field != "" {
			b.retype("")
		}
		return desk.Ask{}
	case "left", "right":
		if b.turn != nil {
			return b.turn(b.at, map[string]int{"left": -1, "right": 1}[k.Name])
		}
		return desk.Ask{}
	}
	if b.field == "" {
		if len(k.Runes) == 1 && !k.Paste {
			return b.untyped(k.Runes[0])
		}
		return desk.Ask{}
	}
	var s strings.Builder
	for _, r := range k.Runes {
		if unicode.IsPrint(r) {
			s.WriteRune(r)
		}
	}
	if s.Len() > 0 && len(b.typed)+s.Len() <= longest {
		b.retype(b.typed + s.String())
	}
	return desk.Ask{}
}

// untyped is a letter where there is no field: help and leaving, as at any
// stage.
func (b *board) untyped(r rune) desk.Ask {
	switch id, _ := b.d.Keys.ByKey(keys.NotTyping, string(r)); {
	case id == keys.Help:
		return desk.Ask{Do: id}
	case id == keys.Leave && !b.leaving:
		return desk.Ask{Leave: true}
	case b.letter != nil:
		return b.letter(id)
	}
	return desk.Ask{}
}

// retype is another text in the field: the first row is in hand again.
func (b *board) retype(s string) {
	b.typed, b.at, b.top = s, 0, 0
	b.renew()
}

// Hear takes the answer to a Run.
func (b *board) Hear(a desk.Answer) desk.Ask {
	if b.hear == nil {
		return desk.Ask{}
	}
	return b.hear(a)
}

// Click takes the row on that line of the last view.
func (b *board) Click(_, line int) desk.Ask {
	if line < 0 || line >= len(b.hit) || b.hit[line] < 0 || b.hit[line] >= len(b.list()) {
		return desk.Ask{}
	}
	b.at = b.hit[line]
	return b.choose()
}

// Wheel moves as the wheel was turned.
func (b *board) Wheel(n int) { b.move(n) }
