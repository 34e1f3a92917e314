package ui

import "chalkfold/ui/desk"

// traps are where a fault of our own may happen.
var traps = []string{"update", "command", "goroutine", "view"}

// trap is a stage with a fault in it, set off by an exclamation mark.
type trap struct {
	desk.Stage
	m    *Model
	kind string
	set  bool
}

// setTrap puts one in the place of the first stage.
func setTrap(kind string) func(*Model) {
	return func(m *Model) {
		if kind != "" {
			m.stages[0] = &trap{Stage: m.stages[0], m: m, kind: kind}
		}
	}
}

func (t *trap) fault() { panic("a trap in " + t.kind) }

// Type falls into the trap.
func (t *trap) Type(k desk.Key) desk.Ask {
	if string(k.Runes) != "!" {
		return t.Stage.Type(k)
	}
	switch t.kind {
	case "command":
		return desk.Ask{Run: func() desk.Answer { t.fault(); return desk.Answer{} }}
	case "goroutine":
		start(t.fault, func(f fault) { t.m.send(f) })
	case "view":
		t.set = true
	default:
		t.fault()
	}
	return desk.Ask{}
}

// View falls into one that was set.
func (t *trap) View(r desk.Rect) []string {
	if t.set {
		t.fault()
	}
	return t.Stage.View(r)
}
