package measure

import "math"

// Proportions of the trade, from memory. They pass through three figures of
// the measured method, bust 32, 36 and 44 inches, and lie within a few
// millimetres of the means of the ANSUR II survey where that can be compared.

const (
	middleBust = 36 * Inch
	// napeBelowSideNeck: the back neck bone lies this much below the level of
	// the side neck point, 1/2 to 1 in.
	napeBelowSideNeck = 0.75 * Inch
	// frontLeast and frontMost bound how much longer the front is proposed
	// than the back: less is no dart worth sewing, more is a dart too deep.
	frontLeast = 0.375 * Inch
	frontMost  = 2.5 * Inch
)

// memory makes a Proposal of a rule of the trade.
func memory(w Working, spread Length) (Proposal, bool) {
	return Proposal{Working: w, Spread: spread, Source: fromMemory, FromMemory: true}, true
}

// wider is the spread of a rule applied to something itself only proposed.
func wider(a, b Length) Length { return Length(math.Hypot(float64(a), float64(b))) }

// acrossShoulders: 15 at bust 36 (0.42 of it), and 1 in for each 6 of bust,
// since the bones grow less than the bust.
func acrossShoulders(b Body) (Proposal, bool) {
	bust, ok := b.Get(BustGirth)
	if !ok {
		return Proposal{}, false
	}
	return memory(Measured(short(BustGirth), bust).Minus(Fixed(middleBust)).Over(6).Plus(Fixed(15*Inch)), 24)
}

// less is another measurement less a fixed length.
func less(other ID, by, spread Length) way {
	return func(b Body) (Proposal, bool) {
		w, s, ok := known(b, other)
		if !ok {
			return Proposal{}, false
		}
		return memory(w.Minus(Fixed(by)), wider(spread, s))
	}
}

// between is one measurement less another.
func between(one, two ID, spread Length) way {
	return func(b Body) (Proposal, bool) {
		w, s, ok := known(b, one)
		v, t, also := known(b, two)
		if !ok || !also {
			return Proposal{}, false
		}
		return memory(w.Minus(v), wider(spread, wider(s, t)))
	}
}

func fifthOfBust(b Body) (Proposal, bool) {
	bust, ok := b.Get(BustGirth)
	if !ok {
		return Proposal{}, false
	}
	return memory(Measured(short(BustGirth), bust).Over(5), 15)
}

func quarterOfBust(b Body) (Proposal, bool) {
	bust, ok := b.Get(BustGirth)
	if !ok {
		return Proposal{}, false
	}
	return memory(Measured(short(BustGirth), bust).Over(4).Plus(Fixed(1.25*Inch)), 21)
}

// overTheBust: the back's length from the side neck, and what the bust adds:
// 1 in at bust 36, 1/8 in more for each inch of bust.
func overTheBust(b Body) (Proposal, bool) {
	bust, ok := b.Get(BustGirth)
	back, s, also := known(b, BackNeckToWaist)
	if !ok || !also {
		return Proposal{}, false
	}
	more := Measured(short(BustGirth), bust).Minus(Fixed(middleBust)).Over(8).Plus(Fixed(1 * Inch))
	if d := more.Result(); d < frontLeast {
		more = Fixed(frontLeast)
	} else if d > frontMost {
		more = Fixed(frontMost)
	}
	return memory(back.Plus(Fixed(napeBelowSideNeck)).Plus(more), wider(20, s))
}

// halfOfBack: a back of 16 goes with a side of 8.
func halfOfBack(b Body) (Proposal, bool) {
	back, s, ok := known(b, BackNeckToWaist)
	if !ok {
		return Proposal{}, false
	}
	return memory(back.Over(2), wider(15, s/2))
}

// shoulderLine is the straight line that neck, width and drop make.
func shoulderLine(b Body) (Proposal, bool) {
	neck, s, ok := known(b, NeckBaseGirth)
	width, t, also := known(b, AcrossShoulders)
	drop, u, too := known(b, ShoulderDrop)
	if !ok || !also || !too {
		return Proposal{}, false
	}
	out := width.Over(2).Minus(neck.Over(6)).Minus(Fixed(Inch / 2))
	if out.Result() <= 0 {
		return Proposal{}, false
	}
	return memory(Hypot(out, drop), wider(s/6, wider(t/2, u)))
}

func backFromBone(b Body) (Proposal, bool) {
	back, s, ok := known(b, BackNeckToWaist)
	drop, t, also := known(b, ShoulderDrop)
	if !ok || !also {
		return Proposal{}, false
	}
	return memory(back.Plus(Fixed(napeBelowSideNeck)).Minus(drop), wider(15, wider(s, t)))
}

// tableRow is one size of ASTM D5585-11e1, Misses, inches.
type tableRow struct{ neckBase, bust, underBust, upperChest float64 }

var sizeTable = []tableRow{
	{13.25, 31.125, 25.75, 31.75},
	{13.5, 31.75, 26.5, 32.25},
	{13.75, 33, 27.25, 33.25},
	{14, 34.125, 28, 34.125},
	{14.25, 35.25, 29, 35},
	{14.625, 36.25, 30, 35.875},
	{14.875, 37.25, 31, 36.75},
	{15.125, 38.75, 32.5, 38},
	{15.5, 40.375, 34, 39.25},
	{15.75, 42.125, 35.75, 40.625},
	{16, 44, 37.625, 42.25},
	{16.375, 46, 39.625, 43.875},
}

func upperChestRow(r tableRow) float64 { return r.upperChest }
func underBustRow(r tableRow) float64  { return r.underBust }

// fromTable goes straight from size to size; beyond the last one it goes on
// as between the last two.
func fromTable(column func(tableRow) float64, spread Length) way {
	return func(b Body) (Proposal, bool) {
		bust, ok := b.Get(BustGirth)
		if !ok {
			return Proposal{}, false
		}
		at := 0
		for at < len(sizeTable)-2 && sizeTable[at+1].bust <= bust.Inches() {
			at++
		}
		low, high := sizeTable[at], sizeTable[at+1]
		slope := (column(high) - column(low)) / (high.bust - low.bust)
		w := Measured(short(BustGirth), bust).Minus(Fixed(Length(low.bust) * Inch)).Times(slope).Plus(Fixed(Length(column(low)) * Inch))
		return Proposal{Working: w, Spread: spread, Source: sourceTable + ", between two sizes; spread from memory"}, true
	}
}
