package pattern

import (
	"slices"

	"chalkfold/measure"
)

// KeptLay is the last lay of a cloth that she kept. It is plain data and may
// be out of date: whoever uses it lays the pieces so and verifies them again.
type KeptLay struct {
	Cloth       string         // main, lining, interfacing
	Width       measure.Length // of the cloth that it was laid on, as bought
	Fold        string         // lengthwise, flat, to_middle, off_centre, across
	Depth       measure.Length // of a fold off centre: how far in it is folded
	Evaluations int64          // how long it was searched for
	Pins        []LaidPiece    // that she laid herself: they stay when the rest is laid anew
	Placed      []LaidPiece    // all pieces, from the cut end on
}

// LaidPiece is where a piece lies on its cloth. Across and Along are the least
// distances of its outline from the fold (of flat or opened cloth from the left
// selvage) and from the cut end, so they are never negative.
type LaidPiece struct {
	Piece  PieceID
	Copy   int // from 1
	Across measure.Length
	Along  measure.Length
	Turn   int // degrees; 180: its top away from the cut end
	Mirror bool
	How    LaidHow
}

// LaidHow says how a piece that is cut once lies on folded cloth; of most
// others it is empty.
type LaidHow string

// In the part that is opened flat, with the second layer wasted, as half on
// the fold, or in the single part of cloth folded off centre; a piece of a pair
// may lie there too.
const (
	LaidOpened LaidHow = "opened"
	LaidWasted LaidHow = "wasted"
	LaidHalf   LaidHow = "half"
	LaidBeside LaidHow = "single"
)

// Lay returns the lay that was kept of a cloth, if there is one.
func (j Job) Lay(cloth string) (KeptLay, bool) {
	for _, l := range j.Lays {
		if l.Cloth == cloth {
			return l, true
		}
	}
	return KeptLay{}, false
}

// WithLay returns the job with this lay kept in place of the one of its cloth.
func (j Job) WithLay(l KeptLay) Job {
	out := slices.Clone(j.Lays)
	for i := range out {
		if out[i].Cloth == l.Cloth {
			out[i] = l
			j.Lays = out
			return j
		}
	}
	j.Lays = append(out, l)
	return j
}

// WithCloth returns the job with this cloth in place of the one of its name.
func (j Job) WithCloth(c Cloth) Job {
	out := slices.Clone(j.Cloths)
	for i := range out {
		if out[i].Name == c.Name {
			out[i] = c
			j.Cloths = out
			return j
		}
	}
	j.Cloths = append(out, c)
	return j
}
