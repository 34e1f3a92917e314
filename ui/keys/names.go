package keys

import (
	"strings"
	"unicode/utf8"
)

// shown are the names of keys as they stand on keyboards.
var shown = map[string]string{
	" ": "Space", "up": "Up", "down": "Down", "left": "Left", "right": "Right",
	"pgup": "PgUp", "pgdown": "PgDn", "home": "Home", "end": "End", "tab": "Tab",
	"enter": "Enter", "esc": "Esc", "backspace": "Backspace", "delete": "Del", "insert": "Ins",
}

// Show writes keys as people read them: "Space, Right or PgDn".
func Show(keys []string) string {
	var b strings.Builder
	for i, k := range keys {
		switch {
		case i > 0 && i == len(keys)-1:
			b.WriteString(" or ")
		case i > 0:
			b.WriteString(", ")
		}
		b.WriteString(show(k))
	}
	return b.String()
}

func show(key string) string {
	if name, ok := shown[key]; ok {
		return name
	}
	for _, lead := range []string{"ctrl+", "shift+", "alt+"} {
		if rest, ok := strings.CutPrefix(key, lead); ok && rest != "" {
			name := show(rest)
			if utf8.RuneCountInString(rest) == 1 {
				name = strings.ToUpper(rest)
			}
			return strings.ToUpper(lead[:1]) + lead[1:] + name
		}
	}
	if len(key) > 1 && key[0] == 'f' && strings.Trim(key[1:], "0123456789") == "" {
		return "F" + key[1:]
	}
	return key
}

// Untypable says why a key must not be given an action, "" if it may. Some
// characters need a third key on many layouts; some control keys are sent as
// another key; some keys never reach a program.
func Untypable(key string) string {
	switch {
	case key == "":
		return "is no key"
	case utf8.RuneCountInString(key) == 1 && strings.ContainsAny(key, "[]{}\\|@~`^#$"):
		return "cannot be typed alone on some keyboards"
	case strings.HasPrefix(key, "alt+"):
		return "is taken by many terminals"
	case strings.HasPrefix(key, "ctrl+shift+"), key == "ctrl+left", key == "ctrl+right", key == "ctrl+up", key == "ctrl+down":
		return "does not reach a program everywhere"
	case key == "ctrl+i", key == "ctrl+m", key == "ctrl+j", key == "ctrl+h":
		return "is sent as another key"
	case key == "ctrl+a", key == "ctrl+b":
		return "is taken by terminal multiplexers"
	case strings.HasPrefix(key, "f1") && len(key) == 3 && key[2] <= '9', strings.HasPrefix(key, "f2") && len(key) == 3:
		return "is taken by terminals or missing on keyboards"
	case utf8.RuneCountInString(key) == 1 && key[0] >= 0x80:
		return "is missing on many keyboards"
	}
	return ""
}
