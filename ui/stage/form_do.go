package stage

import (
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
	"chalkfold/ui/text"
)

// hands are what a stage does with the row in hand of its form.
type hands struct {
	accept func() desk.Ask    // take what is typed
	nudge  func(int) desk.Ask // a tape step more or less
	turn   func(int) desk.Ask // the next or former option of a pick
}

// do is what the keys of a field do in every form; false where the action is
// none of these.
func (f *form) do(d *desk.Desk, id keys.ID, h hands) (desk.Ask, bool) {
	switch id {
	case "field-down", keys.FieldNext, keys.Accept:
		return f.leave(1, h), true
	case "field-up", keys.FieldBack:
		return f.leave(-1, h), true
	case keys.Undo:
		if f.restore() {
			return desk.Ask{Say: d.Tell(text.FieldPutBack)}, true
		}
	case "clear":
		if r, ok := f.row(); ok && !r.pick {
			f.field.set("")
		}
	case "nudge-up":
		return h.nudge(1), true
	case "nudge-down":
		return h.nudge(-1), true
	case "text-left":
		return f.sideways("left", -1, h), true
	case "text-right":
		return f.sideways("right", 1, h), true
	default:
		return desk.Ask{}, false
	}
	return desk.Ask{}, true
}

// leave accepts the row in hand and goes to another.
func (f *form) leave(by int, h hands) desk.Ask {
	ask := h.accept()
	if n := len(f.rows); n > 0 {
		f.to((f.at + by + n) % n)
	}
	return ask
}

func (f *form) sideways(key string, by int, h hands) desk.Ask {
	if r, ok := f.row(); ok && r.pick {
		return h.turn(by)
	}
	f.field.key(key)
	return desk.Ask{}
}

// out leaves the field: what was typed and can be read is accepted.
func (f *form) out(d *desk.Desk, h hands) desk.Ask {
	ask := h.accept()
	f.typing = false
	if ask.Job == nil && ask.Say == "" {
		ask.Say = d.Tell(text.FieldOpen)
	}
	return ask
}
