package truing

import (
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/rule"
)

// EaseRow is one level of the dress on her: her own measure, the garment's,
// and the ease between them beside what is wanted there.
type EaseRow struct {
	Level         string // bust, waist ...
	Body, Garment measure.Length
	Low, High     measure.Length // of the ease that is good here
	Depth         measure.Length // of the level below the top line, on the front
}

// Ease is what the garment is wider than she is.
func (r EaseRow) Ease() measure.Length { return r.Garment - r.Body }

// Says is how the ease lies to what is wanted: good, tight or loose.
func (r EaseRow) Says() string {
	switch e := r.Ease(); {
	case e < r.Low-easeSlack:
		return "tight"
	case e > r.High+easeSlack:
		return "loose"
	}
	return "good"
}

// easeSlack: a difference that no tape shows.
const easeSlack = measure.Inch / 32

// The scale of a bar: from tightest to loosest.
const (
	barLow  = -2 * measure.Inch
	barHigh = 10 * measure.Inch
)

// EaseScale is how far a picture of ease reaches: from tightest to loosest.
func EaseScale() (low, high measure.Length) { return barLow, barHigh }

// Bar is the row as a line of cells: a bracketed stretch for the ease that is
// good, a cross where the garment lies, an upright at the body itself. Ease
// beyond the scale lies at its end.
func (r EaseRow) Bar(columns int) string {
	if columns < 2 {
		return ""
	}
	cell := func(l measure.Length) int {
		share := (min(barHigh, max(barLow, l)) - barLow).MM() / (barHigh - barLow).MM()
		return int(share*float64(columns-1) + 0.5)
	}
	bar := []byte(strings.Repeat(".", columns))
	bar[cell(0)] = '|'
	low, high := cell(r.Low), cell(r.High)
	for i := low; i <= high; i++ {
		bar[i] = '='
	}
	bar[low], bar[high] = '[', ']'
	bar[cell(r.Ease())] = 'x'
	return string(bar)
}

// EaseTable is the ease of a net draft level by level, from the shoulders
// down; what was not measured or not drawn is left out.
func EaseTable(s *pattern.Sheet) []EaseRow {
	var out []EaseRow
	add := func(level string, id measure.ID, garment measure.Length, low, high measure.Length, at string) {
		body, ok := bodyOf(s, id)
		if !ok || garment <= 0 {
			return
		}
		r := EaseRow{Level: level, Body: body, Garment: garment, Low: low, High: high}
		if p, ok := s.Point(pattern.Front, at); ok {
			r.Depth = measure.Length(p.Y)
		}
		out = append(out, r)
	}
	round := func(name string) measure.Length { g, _ := s.Girth(name); return g }
	wide := func(id pattern.PieceID, point string) measure.Length {
		p, _ := s.Point(id, point)
		return 2 * measure.Length(p.X)
	}
	sleeve := s.Pick("sleeve") != "" && s.Pick("sleeve") != "none"
	shoulder := [2]measure.Length{-3.5 * inch, -0.5 * inch}
	if sleeve {
		shoulder = [2]measure.Length{-0.5 * inch, 0.75 * inch}
	}
	add("shoulders", measure.AcrossShoulders, wide(pattern.Front, "shoulder_end"), shoulder[0], shoulder[1], "shoulder_end")
	add("across back", measure.AcrossBack, wide(pattern.Back, "armhole_mid"), -inch, inch, "armhole_mid")
	add("across front", measure.AcrossFront, wide(pattern.Front, "armhole_mid"), -inch, inch/4, "armhole_mid")
	armhole(s, sleeve, add)
	for _, l := range []struct {
		name string
		id   measure.ID
		at   rule.Level
		mark string
	}{{"bust", measure.BustGirth, rule.AtBust, "bust_point"}, {"waist", measure.WaistGirth, rule.AtWaist, "waist"}, {"hip", measure.HipGirth, rule.AtHip, "hip"}} {
		low, high := rule.EaseRange(s.Known, l.at)
		if l.name == "waist" && waistDarts(s) == 0 {
			high = max(high, rule.LooseWaist)
		}
		if l.name == "hip" {
			highHipRow(s, low, high, add)
		}
		add(l.name, l.id, round(l.name), low, high, l.mark)
	}
	if w, ok, _ := walkOf(s); ok {
		hem := EaseRow{Level: "hem, a step", Body: w.Need(w.Step), Garment: w.HemGirth, Low: 0, High: 24 * inch}
		if p, ok := s.Point(pattern.Front, "hem_side"); ok {
			hem.Depth = measure.Length(p.Y)
		}
		if !closedHem(s) {
			hem.Low = -w.Need(w.Step) // the opening gives what the hem lacks
		}
		out = append(out, hem)
	}
	return out
}

type easeAdder func(level string, id measure.ID, garment, low, high measure.Length, at string)

// armhole adds the hole against her own, or against her arm, and a sleeve
// against her arm.
func armhole(s *pattern.Sheet, sleeve bool, add easeAdder) {
	round, _ := s.Girth("armhole")
	if sleeve {
		low, high := rule.EaseRange(s.Known, rule.AtArm)
		wide, _ := s.Dimension(pattern.Sleeve, "width")
		add("upper arm", measure.UpperArmGirth, wide.Length, low, high, "armhole_mid")
	}
	if _, ok := s.Measured(measure.ArmscyeGirth); ok {
		low, high := measure.Length(0), armRound
		if sleeve {
			low, high = inch, 2*inch
		}
		add("armhole", measure.ArmscyeGirth, round, low, high, "underarm")
		return
	}
	if _, ok := s.Measured(measure.UpperArmGirth); ok {
		add("armhole on arm", measure.UpperArmGirth, round, armLeast, armMost, "underarm")
	}
}

// highHipRow adds the high hip where she measured it.
func highHipRow(s *pattern.Sheet, low, high measure.Length, add easeAdder) {
	if _, ok := s.Measured(measure.TopHipGirth); !ok {
		return
	}
	var round measure.Length
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		if p, ok := s.Piece(id); ok {
			round += 2 * outAtLevel(p, (at(s, id, "waist").Y+at(s, id, "hip").Y)/2)
		}
	}
	add("high hip", measure.TopHipGirth, round, min(low, highHip), high, "waist")
}
