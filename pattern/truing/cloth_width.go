package truing

import (
	"chalkfold/measure"
	"chalkfold/pattern"
)

// clothWidth: the widest piece, opened where it lies on the fold, must fit
// between the selvages once the cloth has shrunk.
var clothWidth = Check{
	ID: "cloth_width", Title: "Cloth width",
	Applies: all(hasPieces, func(s *pattern.Sheet) (bool, measure.Sentence) {
		if c, ok := s.Job.Cloth("main"); !ok || c.Width <= 0 {
			return false, measure.Tell("The width of the cloth is not known.")
		}
		return true, measure.Sentence{}
	}),
	Run: func(s *pattern.Sheet) []pattern.Finding {
		c, _ := s.Job.Cloth("main")
		usable := measure.Length((c.Width - 2*c.Edges).MM() * (1 - c.ShrinkAcross/100))
		var widest *pattern.Piece
		var width measure.Length
		for i := range s.Pieces {
			if p := &s.Pieces[i]; widest == nil || openWidth(p) > width {
				widest, width = p, openWidth(p)
			}
		}
		f := pattern.Finding{Verdict: pattern.Pass, Got: width.MM(), Want: usable.MM(), Where: on(widest.ID, widest.Label)}
		f.Says = measure.Tell("{} and {}: "+widest.Title+" fits across the cloth.", width, usable)
		if width > usable+slack {
			f.Code, f.Verdict, f.Input = "cloth_width", pattern.Fail, "cloth.main.width"
			need := measure.Length(width.MM()/(1-c.ShrinkAcross/100)) + 2*c.Edges
			f.Says = measure.Tell("{} and {}: "+widest.Title+" is {} wider than the cloth.", width, usable, width-usable)
			f.Cure = measure.Tell("Take wider cloth: width {} -> {}; or cut the piece with a seam.", c.Width, need.Up(inch))
		}
		return one(f)
	},
}

// openWidth is how wide the cut piece is on the cloth, unfolded. Pieces lie
// with their grain along the cloth.
func openWidth(p *pattern.Piece) measure.Length {
	b := p.CutLine.Bounds()
	if p.Cut == pattern.OnFold {
		return measure.Length(2 * b.Max.X)
	}
	return measure.Length(b.Width())
}
