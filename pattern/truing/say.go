package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func one(f pattern.Finding) []pattern.Finding { return []pattern.Finding{f} }

// skip is a finding that judges nothing and says why.
func skip(code string, why measure.Sentence) pattern.Finding {
	return pattern.Finding{Code: code, Verdict: pattern.Skip, Says: why}
}

// compared is a finding about two lengths: pass within the first limits,
// advise within the second, fail beyond. The code stays off a pass.
type limits struct{ low, high, adviseLow, adviseHigh measure.Length }

func within(d measure.Length) limits { return limits{-d, d, -2 * d, 2 * d} }

func (l limits) verdict(off measure.Length) pattern.Verdict {
	switch {
	case off >= l.low-slack && off <= l.high+slack:
		return pattern.Pass
	case off >= l.adviseLow-slack && off <= l.adviseHigh+slack:
		return pattern.Advise
	}
	return pattern.Fail
}

func (l limits) compare(code string, got, want measure.Length) pattern.Finding {
	f := pattern.Finding{
		Verdict: l.verdict(got - want), Got: got.MM(), Want: want.MM(),
		Low: l.low.MM(), High: l.high.MM(), Limits: true,
	}
	if f.Verdict != pattern.Pass {
		f.Code = code
	}
	return f
}

// angle is a finding about an angle that should be want degrees, or not more
// than pass off it.
func angle(code string, got, want, pass, advise float64) pattern.Finding {
	f := pattern.Finding{
		Verdict: pattern.Fail, In: pattern.InDegrees, Got: got, Want: want,
		Low: -pass, High: pass, Limits: true,
	}
	switch off := math.Abs(got - want); {
	case off <= pass+slack:
		f.Verdict = pattern.Pass
		return f
	case off <= advise+slack:
		f.Verdict = pattern.Advise
	}
	f.Code = code
	return f
}

// advice is a finding of the advise kind about a length and its limit.
func advice(code string, got, want measure.Length) pattern.Finding {
	return pattern.Finding{Code: code, Verdict: pattern.Advise, Got: got.MM(), Want: want.MM()}
}

// steep is advice about an angle and its limit.
func steep(code string, got, most float64) pattern.Finding {
	return pattern.Finding{Code: code, Verdict: pattern.Advise, In: pattern.InDegrees, Got: got, Want: most}
}

func on(id pattern.PieceID, p geom.Point) pattern.Place { return pattern.Place{Piece: id, At: p} }

// uses says whether this method's draft reads the choice.
func uses(k pattern.Known, id pattern.ChoiceID) bool {
	s, ok := k.Setting(id)
	return ok && s.Used
}

// change names a choice with the value that stands and the one to take.
func change(k pattern.Known, id pattern.ChoiceID, to measure.Length) measure.Sentence {
	return measure.Tell(spaced(string(id))+" {} -> {}", k.Length(id), to)
}

// try is the value that a cure would set; nil where this method has no such
// choice or nothing would change.
func try(k pattern.Known, id pattern.ChoiceID, to measure.Length) *pattern.Value {
	if !uses(k, id) || k.Length(id) == to {
		return nil
	}
	v := pattern.LengthValue(to)
	return &v
}

// step is one step of her tape: cures are given in whole ones.
func step(s *pattern.Sheet) measure.Length { return s.Job.Unit.Step() }

// again tells her to take a measurement once more.
func again(id measure.ID) measure.Sentence {
	return measure.Tell("Measure the " + term(id) + " again.")
}
