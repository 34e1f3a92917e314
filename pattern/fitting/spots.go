package fitting

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Spot is a place where something is pinned, opened or chalked, and the figure
// of the draft that it stands for.
type Spot struct {
	ID    string
	Place Place
	Title string
	How   string // what to measure
	More  string // what an amount above nought means: "let out"
	Less  string // and one below: "pinned"

	read func(*pattern.Sheet) (float64, bool)
	gain float64 // what the figure changes by an amount of one
}

// Pin is what was pinned at a spot: above nought cloth is put on, below it is
// taken away.
type Pin struct {
	Spot string
	By   measure.Length
}

// Spots lists all spots, place by place.
func Spots() []Spot { return spots }

// FindSpot is a spot by its id.
func FindSpot(id string) (Spot, bool) {
	for _, s := range spots {
		if s.ID == id {
			return s, true
		}
	}
	return Spot{}, false
}

// Says is "let out 1/4".
func (s Spot) Says(by measure.Length) measure.Sentence {
	if by < 0 {
		return measure.Tell(s.Less+" {}", -by)
	}
	return measure.Tell(s.More+" {}", by)
}

const (
	front = pattern.Front
	back  = pattern.Back
)

// point gives one figure of a named point.
func point(piece pattern.PieceID, name string, of func(geom.Point) float64) func(*pattern.Sheet) (float64, bool) {
	return func(s *pattern.Sheet) (float64, bool) {
		at, ok := s.Point(piece, name)
		return of(at), ok
	}
}

func down(p geom.Point) float64 { return p.Y }
func out(p geom.Point) float64  { return p.X }

// between gives the difference of one figure of two points.
func between(piece pattern.PieceID, from, to string, of func(geom.Point) float64) func(*pattern.Sheet) (float64, bool) {
	return func(s *pattern.Sheet) (float64, bool) {
		a, ok := s.Point(piece, from)
		b, also := s.Point(piece, to)
		return of(b) - of(a), ok && also
	}
}

func apart(piece pattern.PieceID, from, to string) func(*pattern.Sheet) (float64, bool) {
	return func(s *pattern.Sheet) (float64, bool) {
		a, ok := s.Point(piece, from)
		b, also := s.Point(piece, to)
		return a.Dist(b), ok && also
	}
}

func girth(name string) func(*pattern.Sheet) (float64, bool) {
	return func(s *pattern.Sheet) (float64, bool) {
		l, ok := s.Girth(name)
		return l.MM(), ok
	}
}

// chosen is a figure that is a choice itself.
func chosen(id pattern.ChoiceID) func(*pattern.Sheet) (float64, bool) {
	return func(s *pattern.Sheet) (float64, bool) {
		v, ok := present(s, string(id))
		return v.Length.MM(), ok
	}
}

// tips are both ends of the shoulder seam together: half of a fold there goes
// on each piece.
func tips(s *pattern.Sheet) (float64, bool) {
	a, ok := s.Point(front, "shoulder_end")
	b, also := s.Point(back, "shoulder_end")
	return a.Y + b.Y, ok && also
}

var spots = []Spot{
	{ID: "shoulder_end", Place: NeckAndShoulder, Title: "Shoulder seam, outer end", How: "the whole fold or gap at the end of the seam", More: "opened", Less: "pinned", read: tips, gain: -1},
	{ID: "shoulder_edge", Place: NeckAndShoulder, Title: "Armhole edge on the shoulder", How: "from the edge to where it should lie", More: "farther out", Less: "farther in", read: point(front, "shoulder_end", out), gain: 1},
	{ID: "neck_edge", Place: NeckAndShoulder, Title: "Neck edge on the shoulder", How: "from the edge to where it should lie", More: "nearer the neck", Less: "farther from the neck", read: apart(front, "neck_base", "neck_point"), gain: -1},
	{ID: "front_neck", Place: NeckAndShoulder, Title: "Front neck at the centre", How: "from the edge to where it should lie", More: "higher", Less: "lower", read: point(front, "neck_centre", down), gain: -1},
	{ID: "back_neck", Place: NeckAndShoulder, Title: "Back neck at the centre", How: "from the edge to where it should lie", More: "higher", Less: "lower", read: point(back, "neck_centre", down), gain: -1},
	{ID: "neck_fold", Place: NeckAndShoulder, Title: "Front neck, fold towards the bust", How: "the whole fold at the edge, on one side", More: "let out", Less: "pinned", read: chosen("neck_pinch"), gain: -1},

	{ID: "bust_height", Place: Bust, Title: "Where the dart points, up or down", How: "from its end to the level of the bust point", More: "lower", Less: "higher", read: point(front, "bust_point", down), gain: 1},
	{ID: "bust_apart", Place: Bust, Title: "Where the dart points, in or out", How: "on one side, from its line to the bust point", More: "farther out", Less: "nearer the middle", read: point(front, "bust_point", out), gain: 1},
	{ID: "dart_end", Place: Bust, Title: "End of the dart", How: "how much is unpicked", More: "shorter", Less: "longer", read: chosen("dart_tip_back"), gain: 1},
	{ID: "front_length", Place: Bust, Title: "Across the front, between bust and waist", How: "the whole fold or gap", More: "let in", Less: "pinned", read: point(front, "waist", down), gain: 1},
	{ID: "side_bust", Place: Bust, Title: "Side seams at the bust", How: "the whole fold or gap of one seam", More: "let out", Less: "pinned", read: girth("bust"), gain: 2},

	{ID: "underarm", Place: Armhole, Title: "Underarm", How: "from the edge to where it should lie", More: "higher", Less: "lower", read: point(front, "underarm", down), gain: -1},
	{ID: "across_front", Place: Armhole, Title: "Middle of the front armhole", How: "on one side, from the edge to where it should lie", More: "farther out", Less: "farther in", read: point(front, "armhole_mid", out), gain: 1},
	{ID: "across_back", Place: Armhole, Title: "Middle of the back armhole", How: "on one side, from the edge to where it should lie", More: "farther out", Less: "farther in", read: point(back, "armhole_mid", out), gain: 1},
	{ID: "armhole_fold", Place: Armhole, Title: "Front armhole, fold towards the bust", How: "the whole fold at the edge, on one side", More: "let out", Less: "pinned", read: chosen("armhole_pinch"), gain: -1},

	{ID: "back_length", Place: WaistAndBack, Title: "Across the back, between nape and waist", How: "the whole fold or gap", More: "let in", Less: "pinned", read: point(back, "waist", down), gain: 1},
	{ID: "back_fold", Place: WaistAndBack, Title: "Small of the back, fold that runs out at the sides", How: "the whole fold at the centre back", More: "let out", Less: "pinned", read: chosen("sway_back"), gain: -1},
	{ID: "side_waist", Place: WaistAndBack, Title: "Side seams at the waist", How: "the whole fold or gap of one seam", More: "let out", Less: "pinned", read: girth("waist"), gain: 2},

	{ID: "hip_length", Place: HipAndSkirt, Title: "All round, between waist and hip", How: "the whole fold or gap", More: "let in", Less: "pinned", read: between(back, "waist", "hip", down), gain: 1},
	{ID: "side_hip", Place: HipAndSkirt, Title: "Side seams at the hip", How: "the whole fold or gap of one seam", More: "let out", Less: "pinned", read: girth("hip"), gain: 2},
	{ID: "side_hem", Place: HipAndSkirt, Title: "Side seams at the hem", How: "the whole fold or gap of one seam", More: "let out", Less: "pinned", read: girth("hem"), gain: 2},
	{ID: "opening", Place: HipAndSkirt, Title: "Opening at the hem", How: "how much farther it was opened", More: "higher", Less: "lower", read: chosen("slit_height"), gain: 1},

	{ID: "hem_front", Place: Hem, Title: "Hem in front", How: "from the hem to where it should hang", More: "lower", Less: "higher", read: between(front, "hip", "hem_centre", down), gain: 1},
	{ID: "hem_side", Place: Hem, Title: "Hem at the sides", How: "from the hem to where it should hang", More: "lower", Less: "higher", read: apart(front, "hip", "hem_side"), gain: 1},
	{ID: "hem_back", Place: Hem, Title: "Hem behind", How: "from the hem to where it should hang", More: "lower", Less: "higher", read: between(back, "hip", "hem_centre", down), gain: 1},
}

// inputs are what a fit may change: each has an effect on the spots that no
// other has.
var inputs = []string{
	"shoulder_drop", "shoulder_inset", "neck_widening", "front_neck_depth", "back_neck_depth",
	"side_neck_to_bust_point", "bust_point_distance", "dart_tip_back", "side_neck_to_waist", "ease_bust",
	"armhole_depth", "across_front", "across_back", "armhole_pinch", "neck_pinch",
	"back_neck_to_waist", "sway_back", "ease_waist", "side_waist_limit",
	"waist_to_hip", "ease_hip", "hem_peg", "hem_flare", "slit_height",
	"length", "hem_level_front", "hem_level_side", "hem_level_back",
}
