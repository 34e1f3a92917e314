package lesson

import (
	"math"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/ui/text"
)

// Outcome is what an answer is.
type Outcome int8

// In the order in which they are looked for; the first that fits is told.
const (
	Unread    Outcome = iota // nothing could be read; Wrong says why
	Right                    // within 1/16 in (0.2 cm), or half a cell
	Slipped                  // what a slip gives
	OtherUnit                // the right number, in another unit
	Half                     // half of it
	AllRound                 // the whole for a quarter
	Nearly                   // within 1/4 in (0.6 cm)
	Missed                   // none of these: a hint is due
)

// Verdict is what comes of an answer.
type Verdict struct {
	Outcome    Outcome
	Got, Want  measure.Length // out, of a place
	GotY       measure.Length // down
	WantY      measure.Length
	Unit       measure.Unit     // of OtherUnit: which
	Slip       measure.Sentence // of Slipped
	Other      string           // of a sentence that belongs to another step
	Rounded    measure.Length   // of Nearly: the step to which it was brought
	Why        measure.Sentence // of Right
	Wrong      error            // of Unread
	kind       Kind
	picks      int // how many sentences there are
	pick, best int // of a sentence, from 1
}

// Closed says that the answer settles the question: the step may be shown.
func (v Verdict) Closed() bool { return v.Outcome == Right || v.Outcome == Nearly }

// tolerance is how near an answer must be to be right, and to be nearly
// right. In centimetres the tape is finer.
func tolerance(u measure.Unit) (right, nearly measure.Length) {
	if u == measure.In {
		return measure.Inch / 16, measure.Inch / 4
	}
	return 2 * measure.Millimetre, 6 * measure.Millimetre
}

// onLimit keeps an answer that lies on a limit on its side.
const onLimit = 1e-6 * measure.Millimetre

// Judge holds what she typed against the right answer and the slips: a length,
// "9 5/8 out, 7 1/2 down" for a place, the number of a sentence.
func (q Question) Judge(answer string, unit measure.Unit) Verdict {
	switch q.Kind {
	case Sentence:
		return q.judgePick(answer)
	case Place:
		x, y, ok := split(answer)
		if !ok {
			return Verdict{Outcome: Unread, kind: Place}
		}
		out, err := measure.Read(x, unit)
		if err != nil {
			return Verdict{Outcome: Unread, Wrong: err, kind: Place}
		}
		down, err := measure.Read(y, unit)
		if err != nil {
			return Verdict{Outcome: Unread, Wrong: err, kind: Place}
		}
		return q.judgePlace(out, down, unit)
	}
	r, err := measure.ReadAll(answer, unit)
	if err != nil {
		return Verdict{Outcome: Unread, Wrong: err, kind: Number}
	}
	return q.judgeNumber(r, unit)
}

func (q Question) judgeNumber(r measure.Reading, u measure.Unit) Verdict {
	l, want := r.Length, q.Right.Result()
	v := Verdict{Got: l, Want: want, kind: Number}
	right, nearly := tolerance(u)
	right, nearly = right+onLimit, nearly+onLimit
	if near(l, want, right) {
		v.Outcome, v.Why = Right, q.Why
		return v
	}
	for _, s := range q.Slips {
		if near(l, s.Sum.Result(), right) {
			v.Outcome, v.Slip = Slipped, s.Says
			return v
		}
	}
	if !r.Stated {
		for _, other := range []measure.Unit{measure.In, measure.Cm, measure.Mm} {
			fine, _ := tolerance(other)
			if other != u && near(other.Length(u.Of(l)), want, fine+onLimit) {
				v.Outcome, v.Unit = OtherUnit, other
				return v
			}
		}
	}
	switch {
	case near(l, want/2, right):
		v.Outcome = Half
	case near(l, 4*want, right):
		v.Outcome = AllRound
	case near(l, want, nearly):
		v.Outcome, v.Rounded = Nearly, rounded(l, want, u)
	default:
		v.Outcome = Missed
	}
	return v
}

// rounded is the tape step to which the right result was brought too early;
// zero where the answer came about in another way.
func rounded(got, want measure.Length, u measure.Unit) measure.Length {
	steps := []measure.Length{measure.Inch / 8, measure.Inch / 4, measure.Inch / 2, measure.Inch}
	if u != measure.In {
		steps = []measure.Length{0.5 * measure.Centimetre, measure.Centimetre}
	}
	for _, s := range steps {
		for _, r := range []measure.Length{want.Near(s), want.Down(s), want.Up(s)} {
			if near(got, r, onLimit) {
				return s
			}
		}
	}
	return 0
}

func (q Question) judgePick(answer string) Verdict {
	v := Verdict{Outcome: Unread, kind: Sentence, picks: len(q.Pick), best: q.RightPick()}
	n, err := strconv.Atoi(strings.TrimSuffix(strings.TrimSpace(answer), "."))
	if err != nil || n < 1 || n > len(q.Pick) {
		return v
	}
	o := q.Pick[n-1]
	v.pick = n
	if o.Right {
		v.Outcome, v.Why = Right, q.Why
		if !o.Because.IsEmpty() {
			v.Why = o.Because
		}
		return v
	}
	v.Outcome, v.Slip, v.Other = Slipped, o.Because, o.Other
	return v
}

// Within tells how coarse the cross-hair is: half a cell across and half a
// cell along.
func (q Question) Within(halfX, halfY measure.Length) Question {
	q.halfX, q.halfY = max(0, halfX), max(0, halfY)
	return q
}

// JudgePlace holds a place on the cloth, out from the fold and down from the
// top line, against the right one. It serves every question whose step has a
// mark to place.
func (q Question) JudgePlace(x, y measure.Length) Verdict { return q.judgePlace(x, y, measure.In) }

func (q Question) judgePlace(x, y measure.Length, u measure.Unit) Verdict {
	v := Verdict{Outcome: Missed, Got: x, GotY: y, Want: q.X, WantY: q.Y, kind: Place}
	if q.Mark == "" || math.IsNaN(x.MM()) || math.IsNaN(y.MM()) {
		v.Outcome = Unread
		return v
	}
	right, nearly := tolerance(u)
	tx, ty := max(right, q.halfX)+onLimit, max(right, q.halfY)+onLimit
	if near(x, q.X, tx) && near(y, q.Y, ty) {
		v.Outcome, v.Why = Right, q.Why
		return v
	}
	for _, s := range q.Spots {
		if near(x, s.X, tx) && near(y, s.Y, ty) {
			v.Outcome, v.Slip = Slipped, s.Says
			return v
		}
	}
	if near(x, q.X, nearly+q.halfX+onLimit) && near(y, q.Y, nearly+q.halfY+onLimit) {
		v.Outcome = Nearly
	}
	return v
}

// split parts "9 5/8 out, 7 1/2 down" into its two lengths.
func split(answer string) (x, y string, ok bool) {
	low := strings.ToLower(answer)
	for _, sep := range []string{"out,", "out", ";", ", "} {
		if x, y, ok = strings.Cut(low, sep); ok {
			y = strings.TrimSuffix(strings.TrimSpace(y), "down")
			return strings.TrimSpace(x), strings.TrimSpace(y), true
		}
	}
	return "", "", false
}

// Say is the verdict in words. A miss says nothing by itself: a hint follows.
func (v Verdict) Say(words text.Catalogue, u measure.Unit) string {
	pass := func(s measure.Sentence) string { return words.Pass(s.In(u)) }
	switch v.Outcome {
	case Right:
		what := words.Say(text.AskRight, u.Say(v.Want)+".")
		switch v.kind {
		case Place:
			what = words.Say(text.AskRight, words.Say(text.CrossAt, u.Tape(v.Want), u.Tape(v.WantY))+".")
		case Sentence:
			what = words.Say(text.AskRight, strconv.Itoa(v.best)+".")
		}
		return strings.TrimSpace(what + " " + pass(v.Why))
	case Slipped:
		if v.Slip.IsEmpty() {
			return words.Say(text.AskBelongs, words.Pass(v.Other))
		}
		return pass(v.Slip)
	case OtherUnit:
		return words.Say(map[measure.Unit]text.ID{measure.In: text.HearInches, measure.Cm: text.AskMetric, measure.Mm: text.AskMillimetres}[v.Unit])
	case Half:
		return words.Say(text.AskHalf)
	case AllRound:
		return words.Say(text.AskAround)
	case Nearly:
		return v.nearly(words, u)
	case Unread:
		return v.unread(words, u)
	}
	return ""
}

func (v Verdict) nearly(words text.Catalogue, u measure.Unit) string {
	if v.kind == Place {
		return words.Say(text.AskNearPlace, u.Tape(v.Got), u.Tape(v.GotY), u.Tape(v.Want), u.Tape(v.WantY))
	}
	both := words.Say(text.AskNearly, u.Say(v.Got), u.Say(v.Want))
	if v.Rounded > 0 {
		return both + " " + words.Say(text.AskRounded, u.Say(v.Rounded))
	}
	return both + " " + words.Say(text.AskFractions)
}

func (v Verdict) unread(words text.Catalogue, u measure.Unit) string {
	switch {
	case v.Wrong != nil:
		return words.Pass(v.Wrong.Error())
	case v.kind == Sentence:
		return words.Say(text.AskTypePick, v.picks)
	}
	return words.Say(text.AskTypePlace, u.Tape(9*measure.Inch), u.Tape(7*measure.Inch))
}
