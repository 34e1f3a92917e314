package text

import (
	"fmt"
	"strconv"
	"strings"
)

// ID is a sentence of the screen, as it stands in English, with {1}, {2} ...
// for what is put in.
type ID string

// Catalogue says sentences in one language. The zero Catalogue is English.
type Catalogue struct{ pseudo bool }

// English says them as they stand.
func English() Catalogue { return Catalogue{} }

// Pseudo says them about 40 % longer and accented, to see which do not fit and
// which do not go through a catalogue.
func Pseudo() Catalogue { return Catalogue{pseudo: true} }

// Say is a sentence with its slots filled. What is put in is not changed: a
// sentence put into another has gone through the catalogue itself.
func (c Catalogue) Say(id ID, args ...any) string {
	s := c.Pass(string(id))
	if len(args) == 0 || !strings.Contains(s, "{") {
		return s
	}
	pairs := make([]string, 0, 2*len(args))
	for i, a := range args {
		pairs = append(pairs, "{"+strconv.Itoa(i+1)+"}", fmt.Sprint(a))
	}
	return strings.NewReplacer(pairs...).Replace(s)
}

// Count says one sentence for one thing and another for several, with the
// number as the first slot.
func (c Catalogue) Count(n int, one, several ID, args ...any) string {
	id := several
	if n == 1 {
		id = one
	}
	return c.Say(id, append([]any{n}, args...)...)
}

// Pass is for sentences that come from the rooms of the trade.
func (c Catalogue) Pass(s string) string {
	if !c.pseudo {
		return s
	}
	return stretched(s)
}
