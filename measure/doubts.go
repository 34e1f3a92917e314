package measure

// Doubt is advice about a measurement that is unlike what bodies mostly have.
// Real bodies do leave the bands, so nothing is ever stopped by it.
type Doubt struct {
	ID       ID
	Other    ID   // the measurement it was held against, if any
	Strong   bool // ask to measure again; else it is only a note
	Says     Sentence
	InOther  Length // what it would be, had the number been meant in Unit
	Unit     Unit
	HasOther bool // InOther and Unit say something
}

// Doubts holds a body against open data: each measurement by itself, beside
// another one, and beside what height, bust and hip suggest. There is at most
// one Doubt for a measurement, the most serious; they come in table order.
func Doubts(b Body) []Doubt {
	d := doubter{body: b, found: make(map[ID]Doubt)}
	for _, id := range b.IDs() {
		d.alone(id)
	}
	// What is already doubted by itself is no yardstick for others.
	d.wrong = make(map[ID]bool)
	for id, x := range d.found {
		d.wrong[id] = x.Strong
	}
	for _, x := range bands {
		d.beside(x)
	}
	for _, id := range b.IDs() {
		d.suggested(id)
	}
	for _, p := range pairs {
		d.pair(p)
	}
	var all []Doubt
	for _, id := range b.IDs() {
		if x, ok := d.found[id]; ok {
			all = append(all, x)
		}
	}
	return all
}

// doubter gathers doubts about one body.
type doubter struct {
	body  Body
	found map[ID]Doubt
	wrong map[ID]bool
}

// add keeps the first of the most serious doubts about a measurement.
func (d doubter) add(x Doubt) {
	if old, ok := d.found[x.ID]; !ok || x.Strong && !old.Strong {
		d.found[x.ID] = x
	}
}

// alone holds a measurement against the usual values of the table.
func (d doubter) alone(id ID) {
	m, _ := Find(id)
	l, _ := d.body.Get(id)
	if m.High == 0 || l >= m.Low*noteBelow && l <= m.High*noteAbove || m.Drop && l < m.Low {
		return
	}
	x := Doubt{ID: id, Strong: l < m.Low*askBelow || l > m.High*askAbove}
	x.Says = Tell("{} {say} is "+size(l < m.Low)+": mostly it is {about} to {about}.", capital(m.Short), l, m.Low, m.High)
	d.finish(&x, l, func(l Length) bool { return l >= m.Low && l <= m.High })
}

// beside holds a measurement against another one.
func (d doubter) beside(x band) {
	l, ok := d.body.Get(x.id)
	o, also := d.body.Get(x.other)
	if !ok || !also || d.wrong[x.id] || d.wrong[x.other] {
		return
	}
	low, high := o*Length(x.low), o*Length(x.high)
	if l >= low && l <= high {
		return
	}
	y := Doubt{ID: x.id, Other: x.other, Strong: l < o*Length(x.least) || l > o*Length(x.most)}
	y.Says = Tell("{} {say} is "+size(l < low)+" beside {} {say}: mostly it is {about} to {about}.",
		capital(short(x.id)), l, short(x.other), o, low, high)
	d.finish(&y, l, func(l Length) bool { return l >= low && l <= high })
}

// suggested holds a measurement against its regression.
func (d doubter) suggested(id ID) {
	r, w, ok := regress(d.body, id)
	if !ok || d.wrong[id] || d.wrong[Height] || d.wrong[BustGirth] || d.wrong[HipGirth] {
		return
	}
	l, _ := d.body.Get(id)
	z := float64((l - w.Result()) / r.spread)
	if z >= -noteZ && z <= noteZ {
		return
	}
	x := Doubt{ID: id, Strong: z < -askZ || z > askZ}
	x.Says = Tell("{} {say} is "+size(z < 0)+" for her {}: about {say} would be likely.", capital(short(id)), l, r.from(), w.Result())
	d.finish(&x, l, func(l Length) bool {
		z := float64((l - w.Result()) / r.spread)
		return z >= -noteZ && z <= noteZ
	})
}

// finish looks for a plain slip behind the doubt, says what to do, keeps it.
func (d doubter) finish(x *Doubt, l Length, likely func(Length) bool) {
	if x.Strong {
		x.InOther, x.Unit, x.HasOther = otherUnit(l, likely)
		if x.HasOther {
			x.Says = Tell("{} Had it been meant in "+x.Unit.word()+", it would be {say}.", x.Says, x.InOther)
		}
		if halved[x.ID] && likely(2*l) {
			x.Says = Tell("{} Was only half of her entered? The whole would be {say}.", x.Says, 2*l)
		}
	}
	if x.Strong {
		x.Says = Tell("{} "+again(x.Other), x.Says)
	}
	d.add(*x)
}

func again(other ID) string {
	if other != "" {
		return "Measure both again."
	}
	return "Measure it again."
}

// slips are the ways to write a number in the wrong unit: how many times too
// small the length comes out, and the unit that was meant.
var slips = []struct {
	times float64
	meant Unit
}{
	{2.54, In}, {1 / 2.54, Cm}, {10, Cm}, {25.4, In}, {0.1, Mm}, {1 / 25.4, Mm},
}

// otherUnit is the length that the same number gives in another unit, where
// that is a likely one.
func otherUnit(l Length, likely func(Length) bool) (Length, Unit, bool) {
	for _, s := range slips {
		if x := l * Length(s.times); likely(x) {
			return x, s.meant, true
		}
	}
	return 0, In, false
}

// halved are the measurements that some people write down for half the body.
var halved = map[ID]bool{
	BustGirth: true, UpperChestGirth: true, UnderBustGirth: true, WaistGirth: true, TopHipGirth: true, HipGirth: true,
	NeckGirth: true, NeckBaseGirth: true, AcrossShoulders: true, AcrossBack: true, AcrossFront: true, BustPointDistance: true,
}

func size(small bool) string {
	if small {
		return "small"
	}
	return "large"
}

// capital makes a short name begin a sentence. The names are plain letters.
func capital(name string) string {
	if name == "" {
		return name
	}
	return string(name[0]-'a'+'A') + name[1:]
}
