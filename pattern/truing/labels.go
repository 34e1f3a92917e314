package truing

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// labels: a piece that lies alone on the table must say what it is, how
// often it is cut, where its grain runs and whether it lies on the fold.
var labels = Check{
	ID: "labels", Title: "Pieces labelled",
	Applies: hasPieces,
	Run: func(s *pattern.Sheet) []pattern.Finding {
		var out []pattern.Finding
		for i := range s.Pieces {
			p := &s.Pieces[i]
			wrong, cure := unlabelled(p, i+1, len(s.Pieces))
			if wrong.IsEmpty() {
				continue
			}
			out = append(out, pattern.Finding{
				Code: "labels", Verdict: pattern.Fail, In: pattern.InCount,
				Got: float64(p.Number), Want: float64(i + 1), Where: on(p.ID, p.Label), Says: wrong, Cure: cure,
			})
		}
		if len(out) > 0 {
			return out
		}
		n := float64(len(s.Pieces))
		return one(pattern.Finding{
			Verdict: pattern.Pass, In: pattern.InCount, Got: n, Want: n, Where: on(s.Pieces[0].ID, s.Pieces[0].Label),
			Says: measure.Tell("{} of {} pieces have number, name, count and grain.", len(s.Pieces), len(s.Pieces)),
		})
	},
}

// unlabelled says what a piece lacks; an empty sentence if nothing.
func unlabelled(p *pattern.Piece, number, of int) (wrong, cure measure.Sentence) {
	name := p.Title
	if name == "" {
		name = spaced(string(p.ID))
	}
	grain := p.Grain.A.To(p.Grain.D)
	switch {
	case p.Number != number || p.Of != of:
		return measure.Tell("{} of {} and {} of {}: "+name+" is numbered wrong.", p.Number, p.Of, number, of),
			measure.Tell("Number it {} of {}.", number, of)
	case p.Title == "":
		return measure.Tell("{} of {}: "+name+" has no words on it.", number, of),
			measure.Tell("Write its name, number, count and date on it.")
	case p.Count < 1:
		return measure.Tell("{} of {}: "+name+" does not say how often it is cut.", number, of),
			measure.Tell("Write its count on it.")
	case math.Abs(grain.X) > grainOff.MM():
		return measure.Tell("{} and 0: the grain of "+name+" runs off the centre.", measure.Length(math.Abs(grain.X))),
			measure.Tell("Draw the grain beside the centre, both ends at one distance.")
	case grain.Len() < slack:
		return measure.Tell("{} of {}: "+name+" has no grain line to lay it by.", number, of),
			measure.Tell("Draw the grain along two thirds of the piece.")
	case (p.Cut == pattern.OnFold) != (p.Fold != nil):
		return measure.Tell("{} of {}: "+name+" and its fold do not agree.", number, of),
			measure.Tell("Mark the fold on a piece that is cut on the fold, and on no other.")
	case p.Fold != nil && (p.Fold.Curved || math.Abs(p.Fold.A.X-p.Fold.D.X) > slack):
		return measure.Tell("{} and {}: the fold of "+name+" is not straight.", measure.Length(p.Fold.A.X), measure.Length(p.Fold.D.X)),
			measure.Tell("Rule the fold straight down the centre.")
	}
	return measure.Sentence{}, measure.Sentence{}
}
