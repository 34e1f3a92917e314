package lesson

import (
	"math"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// placed names, for a step by the end of its id, the mark that a question
// about a place asks for.
var placed = map[string]string{
	"neck_base": "neck_base", "bone_end": "bone_end", "shoulder_end": "shoulder_end", "neck_point": "neck_point",
	"neck": "neck_centre", "top": "shoulder_end", "bust_width": "underarm", "armhole_mid": "armhole_mid",
	"bust_point": "bust_point", "waist": "waist", "hip": "hip", "knee": "knee", "hem": "hem_side",
	"dart_start": "dart_upper", "dart_legs": "dart_tip",
}

// napeDrop is how far the nape lies below the top line (common practice, no
// source), as the draft has it.
const napeDrop = 0.75 * measure.Inch

// place fills in where the step's mark lies and where slips would put it.
func (q *Question) place(sheet *pattern.Sheet, st *pattern.Step) {
	_, name, _ := strings.Cut(st.ID, ".")
	mark, ok := placed[name]
	if !ok {
		return
	}
	at, ok := bornPoint(sheet, st, mark)
	if !ok {
		return
	}
	q.Mark, q.X, q.Y = mark, measure.Length(at.X), measure.Length(at.Y)
	for _, s := range st.Slips {
		switch l := s.Sum.Result(); {
		case near(st.Sum.Result(), q.X, 0.01):
			q.spot(l, q.Y, s.Says)
		case near(st.Sum.Result(), q.Y, 0.01):
			q.spot(q.X, l, s.Says)
		}
	}
	q.ownSpots(sheet, st, name)
	q.spot(q.Y, q.X, measure.Tell("Out and down are changed round."))
	if st.Piece == pattern.Back {
		q.spot(q.X, q.Y+napeDrop, measure.Tell("That is counted from the nape. The top line lies {3/4 in} above it."))
	}
}

// ownSpots are the slips that only some steps know.
func (q *Question) ownSpots(sheet *pattern.Sheet, st *pattern.Step, name string) {
	before := func(mark string) (geom.Point, bool) { return standing(sheet, st, mark) }
	switch name {
	case "neck_point":
		if base, ok := before("neck_base"); ok {
			q.spot(measure.Length(base.X+math.Hypot(q.X.MM()-base.X, q.Y.MM()-base.Y)), measure.Length(base.Y),
				measure.Tell("That is level with the neck base. Slide along the shoulder line, or the shoulder lifts."))
		}
	case "shoulder_end":
		if bone, ok := before("bone_end"); ok {
			q.spot(q.X, measure.Length(bone.Y), measure.Tell("That is straight in from the bone. Come in along the shoulder line, or the slope changes."))
		}
	case "neck":
		if n, ok := before("neck_point"); ok {
			q.spot(q.X, q.Y+measure.Length(n.Y), measure.Tell("That is counted from the neck point. The depth is counted from the top line."))
		}
		other, says := pattern.ChoiceID("back_neck_depth"), "That is the back neck. The front is cut deeper."
		if st.Piece == pattern.Back {
			other, says = "front_neck_depth", "That is the front neck. The back is shallower, or the dress slides back."
		}
		q.spot(q.X, sheet.Length(other), measure.Tell(says))
	case "dart_start":
		if u, ok := before("underarm"); ok {
			q.spot(measure.Length(u.X), measure.Length(u.Y), measure.Tell("That is the underarm point. The dart starts below it."))
		}
	case "dart_legs":
		if b, ok := before("bust_point"); ok {
			q.spot(measure.Length(b.X), measure.Length(b.Y), measure.Tell("That is the bust point. The tip stops short of it, or it stands up there."))
		}
		if u, ok := before("dart_upper"); ok {
			q.spot(q.X, measure.Length(u.Y), measure.Tell("That is level with the upper leg. The tip lies between the two legs."))
		}
	}
}

// spot adds a slip of the place, unless it cannot be told from the right one
// or from another.
func (q *Question) spot(x, y measure.Length, says measure.Sentence) {
	if x < 0 || near(x, q.X, apart) && near(y, q.Y, apart) {
		return
	}
	for _, s := range q.Spots {
		if near(x, s.X, apart) && near(y, s.Y, apart) {
			return
		}
	}
	q.Spots = append(q.Spots, Spot{x, y, says})
}

// bornPoint is the point as the step drew it; a later step may have moved it.
func bornPoint(sheet *pattern.Sheet, st *pattern.Step, name string) (geom.Point, bool) {
	for i := range sheet.Marks {
		if m := &sheet.Marks[i]; m.Kind == pattern.MarkPoint && m.Piece == st.Piece && m.Name == name && m.Born == st.Number {
			return m.At, true
		}
	}
	return geom.Point{}, false
}

// standing is a point as it stood when the step was done.
func standing(sheet *pattern.Sheet, st *pattern.Step, name string) (geom.Point, bool) {
	for i := len(sheet.Marks) - 1; i >= 0; i-- {
		if m := &sheet.Marks[i]; m.Kind == pattern.MarkPoint && m.Piece == st.Piece && m.Name == name && m.AliveAt(st.Number) {
			return m.At, true
		}
	}
	return geom.Point{}, false
}
