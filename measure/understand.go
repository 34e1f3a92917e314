package measure

import (
	"math/big"
	"strings"
)

// understand makes a phrase of tokens: an optional unit, a whole number, a
// decimal or a fraction, or a whole number with a fraction, and the unit
// after either of them ("36in 1/2").
func understand(tokens []token) (phrase, *Refusal) {
	r := &reader{tokens: tokens}
	r.takeUnit()
	r.takeNumber()
	r.takeUnit()
	if r.value != nil && !r.fraction {
		r.takeFraction()
		r.takeUnit()
	}
	if r.bad == nil {
		r.leftOver()
	}
	if r.bad != nil {
		return phrase{}, r.bad
	}
	return phrase{value: r.value, unit: r.unit}, nil
}

// reader walks the tokens. The first thing wrong ends the walk.
type reader struct {
	tokens   []token
	value    *big.Rat
	decimal  bool // the number had a point
	fraction bool // a fraction was read
	unit     string
	bad      *Refusal
}

func (r *reader) refuse(wrong, works string) {
	if r.bad == nil {
		r.bad = &Refusal{Wrong: wrong, Works: works}
	}
	r.tokens = nil
}

// next is the kind of the token at n, or -1 where there is none.
func (r *reader) next(n int) tokenKind {
	if n < len(r.tokens) {
		return r.tokens[n].kind
	}
	return -1
}

// take goes on by n tokens; after a refusal there are none left.
func (r *reader) take(n int) { r.tokens = r.tokens[min(n, len(r.tokens)):] }

func (r *reader) takeUnit() {
	if r.next(0) != word || r.unit != "" {
		return
	}
	text := r.tokens[0].text
	switch {
	case unitWords[text].den != 0:
		r.unit = text
		r.take(1)
	case r.value == nil:
		r.refuse("there is no number in it", "write it like 36 1/2 or 92.5 cm")
	case text == "e" || text == "x":
		r.refuse("only plain numbers are read", "write all the figures, like 36.5")
	case text == "'" || text == "ft" || text == "foot" || text == "feet":
		r.refuse("feet are not read", "give it in inches, like 66 in")
	default:
		r.refuse(Quoted(text)+" is no unit of the tape", "write in, cm, mm or m, or no unit")
	}
}

// takeNumber reads the first number: "36", "36.5", "1/2" or "½".
func (r *reader) takeNumber() {
	switch r.next(0) {
	case hyphen:
		r.refuse("a length cannot be less than nothing", "write it without the minus")
		return
	case fraction, digits:
	default:
		r.refuse("there is no number in it", "write it like 36 1/2 or 92.5 cm")
		return
	}
	if r.next(0) == fraction || r.next(1) == slash {
		r.value = r.part()
		return
	}
	text := r.tokens[0].text
	r.decimal = strings.Contains(text, ".")
	r.value = r.figure(text)
	r.take(1)
}

// takeFraction reads the fraction behind a whole number: " 1/2", "½" or
// "-1/2". The hyphen must touch both, else it could mean "less".
func (r *reader) takeFraction() {
	if r.next(0) == hyphen {
		if r.next(1) != digits && r.next(1) != fraction {
			return
		}
		if !r.tokens[0].glued || !r.tokens[1].glued {
			r.refuse("a hyphen with blanks could mean to take away", "write 36 1/2 or 36-1/2")
			return
		}
		r.take(1)
	}
	if r.next(0) != fraction && (r.next(0) != digits || r.next(1) != slash) {
		return
	}
	if r.decimal {
		r.refuse("it has a decimal and a fraction", "write 36 1/2 or 36.5")
		return
	}
	part := r.part()
	if part == nil {
		return
	}
	if part.Cmp(big.NewRat(1, 1)) >= 0 {
		r.refuse("the fraction behind the whole number is not below one", "write it like 36 1/2")
		return
	}
	r.value = new(big.Rat).Add(r.value, part)
}

// part reads a fraction by itself.
func (r *reader) part() *big.Rat {
	r.fraction = true
	if r.next(0) == fraction {
		x, _ := new(big.Rat).SetString(r.tokens[0].text)
		r.take(1)
		return x
	}
	if r.next(2) != digits {
		r.refuse("the fraction is not finished", "write it like 1/2")
		return nil
	}
	above, below := r.tokens[0].text, r.tokens[2].text
	if strings.Contains(above+below, ".") {
		r.refuse("a fraction is made of whole numbers", "write it like 1/2")
		return nil
	}
	r.take(3)
	if strings.Trim(below, "0") == "" {
		r.refuse("a fraction cannot have 0 below", "write it like 1/2")
		return nil
	}
	// Read apart in tens: as one fraction, 010 would be read in eights.
	over, _ := new(big.Int).SetString(above, 10)
	under, _ := new(big.Int).SetString(below, 10)
	return new(big.Rat).SetFrac(over, under)
}

// figure reads digits with at most one point among them.
func (r *reader) figure(text string) *big.Rat {
	if strings.Count(text, ".") > 1 {
		r.refuse("it has more than one decimal point", "write it like 36.5")
		return nil
	}
	if text == "." {
		r.refuse("there is no number in it", "write it like 36 1/2 or 92.5 cm")
		return nil
	}
	x, ok := new(big.Rat).SetString("0" + strings.TrimSuffix(text, "."))
	if !ok {
		r.refuse("there is no number in it", "write it like 36 1/2 or 92.5 cm")
		return nil
	}
	return x
}

// leftOver refuses what stands behind a length that was already complete.
func (r *reader) leftOver() {
	switch r.next(0) {
	case -1:
	case slash:
		r.refuse("there is a / too many", "write it like 36 1/2")
	case hyphen:
		r.refuse("there is a hyphen too many", "write it like 36 1/2")
	case word:
		r.takeUnit() // says what is wrong with an unknown one
		r.refuse("it has two units", "write one unit, or none")
	default:
		if r.fraction || r.unit != "" {
			r.refuse("a number stands behind the length", "write one length, like 36 1/2")
			return
		}
		r.refuse("there are two numbers and no fraction", "write 36 1/2 or 36.5")
	}
}
