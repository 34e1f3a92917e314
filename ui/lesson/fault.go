package lesson

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/truing"
)

// Fault is a way to make a sound draft faulty on purpose, so that a class can
// guess what truing will find.
type Fault struct {
	ID    string
	Title string
	Says  measure.Sentence // what was done, for the reveal
	Check string           // id of the check that finds it
	make  func(*table) bool
}

// Faults are all of them, the plainest first. Each changes a measured draft;
// each is found by the check that it names.
func Faults() []Fault {
	return []Fault{
		{
			ID: "dart_legs", Title: "Dart legs of two lengths", Check: "dart_legs", make: unequalLegs,
			Says: measure.Tell("The lower leg ends {1/4 in} short. Sewn on each other, the legs leave a step in the seam."),
		},
		{
			ID: "front_short", Title: "A front without its extra length", Check: "side_seams", make: shortFront,
			Says: measure.Tell("The front has the levels of the back, and the dart is sewn all the same. Its side comes out short by the dart."),
		},
		{
			ID: "neck_wide", Title: "A neck cut too wide", Check: "shoulder_left", make: wideNeck,
			Says: measure.Tell("The neck was opened over half the shoulder. What is left does not cover a strap."),
		},
		{
			ID: "inset_level", Title: "A shoulder drawn in off its line", Check: "shoulder_seams", make: levelInset,
			Says: measure.Tell("The front was drawn in level from the bone, not along the shoulder line. So it is longer than the back."),
		},
		{
			ID: "facing_early", Title: "A facing traced too early", Check: "facing_fit", make: earlyFacing,
			Says: measure.Tell("The facing was traced before the neck was cut {1 in} deeper. It no longer fits."),
		},
		{
			ID: "hem_plain", Title: "A hem that is not mirrored", Check: "hem_join", make: plainHem,
			Says: measure.Tell("Below the hem line the side ran on as it was. Turned up, the hem is tighter than the skirt."),
		},
		{
			ID: "top_mark", Title: "A mark above the top line forgotten", Check: "allowance_fits", make: forgottenTop,
			Says: measure.Tell("The shoulder's allowance begins above the top line. The cut was begun at the line, so it lacks cloth there."),
		},
		{
			ID: "allowance_twice", Title: "An allowance given twice", Check: "allowance_fits", make: twiceAllowed,
			Says: measure.Tell("The side of the back has its allowance two times. Sewn at the mark, the dress is too wide."),
		},
	}
}

// FindFault returns a fault by its id.
func FindFault(id string) (Fault, bool) {
	for _, f := range Faults() {
		if f.ID == id {
			return f, true
		}
	}
	return Fault{}, false
}

// Of is an altered copy of a sound sheet, trued again; the sheet itself stays
// as it is. False where this draft has not the part that the fault is about.
func (f Fault) Of(sheet *pattern.Sheet) (*pattern.Sheet, bool) {
	if !sheet.Complete || sheet.Method != pattern.Measured {
		return nil, false
	}
	t := spread(sheet)
	before := t.lengths()
	if !f.make(t) {
		return nil, false
	}
	t.remeasure(before)
	t.s.Findings = truing.Run(t.s)
	return t.s, true
}

// Finding is what the fault's check says of a sheet: its worst finding.
func (f Fault) Finding(sheet *pattern.Sheet) (pattern.Finding, bool) {
	rank := map[pattern.Verdict]int{pattern.Pass: 1, pattern.Advise: 2, pattern.Fail: 3}
	var worst pattern.Finding
	for _, x := range sheet.Findings {
		if x.Check == f.Check && rank[x.Verdict] > rank[worst.Verdict] {
			worst = x
		}
	}
	return worst, worst.Check != ""
}
