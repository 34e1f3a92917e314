package pattern

import (
	"maps"
	"sort"

	"chalkfold/measure"
)

// ChoiceID names one style choice, as it stands in a session file.
type ChoiceID string

// Kind says what sort of value a choice takes.
type Kind int8

// The kinds of choices.
const (
	KindLength Kind = iota
	KindPick
	KindSwitch
	KindCount
	KindPercent
)

// String names the kind as commands print it.
func (k Kind) String() string {
	return [...]string{"length", "pick", "switch", "count", "percent"}[k]
}

// Value is what was chosen: the field that its Kind names.
type Value struct {
	Kind   Kind
	Length measure.Length
	Pick   string
	Number float64 // count or per cent
	On     bool
}

// LengthValue, PickValue and SwitchValue make values of their kind.
func LengthValue(l measure.Length) Value { return Value{Kind: KindLength, Length: l} }

// PickValue is one of a few named options.
func PickValue(p string) Value { return Value{Kind: KindPick, Pick: p} }

// SwitchValue is on or off.
func SwitchValue(on bool) Value { return Value{Kind: KindSwitch, On: on} }

// NumberValue is a count or a percentage.
func NumberValue(k Kind, n float64) Value { return Value{Kind: k, Number: n} }

// Style holds only what she chose. Defaults are worked out by each Choice,
// so that a better default reaches old sessions. It is immutable.
type Style struct{ chosen map[ChoiceID]Value }

// NewStyle takes a copy of what was chosen.
func NewStyle(chosen map[ChoiceID]Value) Style {
	if len(chosen) == 0 {
		return Style{}
	}
	return Style{maps.Clone(chosen)}
}

// With returns the style with one more choice made.
func (s Style) With(id ChoiceID, v Value) Style {
	m := maps.Clone(s.chosen)
	if m == nil {
		m = map[ChoiceID]Value{}
	}
	m[id] = v
	return Style{m}
}

// Without returns the style with that choice given back to its default.
func (s Style) Without(id ChoiceID) Style {
	if _, ok := s.chosen[id]; !ok {
		return s
	}
	m := maps.Clone(s.chosen)
	delete(m, id)
	if len(m) == 0 {
		return Style{}
	}
	return Style{m}
}

// Get returns what was chosen, if anything was.
func (s Style) Get(id ChoiceID) (Value, bool) {
	v, ok := s.chosen[id]
	return v, ok
}

// IDs lists what was chosen, in the order of the alphabet.
func (s Style) IDs() []ChoiceID {
	ids := make([]ChoiceID, 0, len(s.chosen))
	for id := range s.chosen {
		ids = append(ids, id)
	}
	sort.Slice(ids, func(i, j int) bool { return ids[i] < ids[j] })
	return ids
}

// Equal says that both styles hold the same choices.
func (s Style) Equal(t Style) bool { return maps.Equal(s.chosen, t.chosen) }

// The names of garments and methods known to the vocabulary.
const (
	Garment  ChoiceID = "garment"
	Method   ChoiceID = "method"
	Dress             = "dress"
	Top               = "top"
	Shift             = "shift"
	Tunic             = "tunic"
	Skirt             = "skirt"
	Measured          = "measured"
	Thumb             = "thumb"
	Direct            = "direct"
)

// Garment is the chosen garment, the dress if none was chosen.
func (s Style) Garment() string { return s.pick(Garment, Dress) }

// Method is the chosen drafting method, measured if none was chosen.
func (s Style) Method() string { return s.pick(Method, Measured) }

func (s Style) pick(id ChoiceID, otherwise string) string {
	if v, ok := s.chosen[id]; ok && v.Pick != "" {
		return v.Pick
	}
	return otherwise
}
