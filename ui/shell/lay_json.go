package shell

import (
	"chalkfold/measure"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
)

// steps is a place on the cloth.
func (s scale) steps(n int64) number { return s.length(mmOf(n)) }

func (s scale) corners(o []lay.Point) line {
	out := make(line, len(o))
	for i, p := range o {
		out[i] = line{s.steps(p.X), s.steps(p.Y)}
	}
	return out
}

// layDocument is what every lay says, of sessions and of outlines alike.
func (s scale) layDocument(cloth string, p lay.Problem, l lay.Lay, file func(lay.Item) string) object {
	doc := s.document()
	buy := lay.Buy(l.Length, p.Cloth)
	doc.add("cloth", cloth)
	doc.add("fold", p.Cloth.Fold)
	doc.add("width", s.steps(p.Cloth.Width))
	doc.add("length", s.steps(l.Length))
	if p.Cloth.Fold == lay.OffCentre {
		doc.add("depth", s.steps(l.Depth))
	}
	if p.Cloth.Fold == lay.Across {
		doc.add("folded", s.steps(l.Folded))
	}
	doc.add("buy", s.length(buy.Needed))
	doc.add("buy_says", buy.Says)
	doc.add("buy_yards", s.length(buy.Yards))
	doc.add("buy_metric", s.length(buy.Metric))
	doc.add("density", number{l.Density, 4})
	doc.add("evaluations", int(l.Evaluations))
	doc.add("first", l.First)
	placed := list{}
	for _, q := range l.Placed {
		it := p.Items[q.Item]
		o := object{{"file", file(it)}, {"piece", it.ID}, {"copy", q.Copy}, {"layers", q.Layers}, {"on_fold", q.OnFold}, {"turn", q.Turn}, {"mirror", q.Mirror}}
		if q.Opened {
			o.add("opened", true)
		}
		if q.Wasted {
			o.add("wasted", true)
		}
		if q.Beside {
			o.add("single", true)
		}
		o.add("outline", s.corners(q.Outline))
		placed = append(placed, o)
	}
	doc.add("placed", placed)
	return doc
}

// file names the session of an item.
func (l *laying) file(it lay.Item) string { return l.files[it.Sheet] }

func (l *laying) document(found lay.Lay, widths []laid.Width) object {
	s := scale{l.jsonUnit()}
	doc := s.layDocument(l.Cloth.Name, l.Problem, found, l.file)
	l.aside(&doc, s, found)
	if len(widths) > 0 {
		rows := list{}
		for _, r := range widths {
			rows = append(rows, s.width(r))
		}
		doc.add("widths", rows)
	}
	return doc
}

// aside adds what the lay says besides.
func (l *laying) aside(doc *object, s scale, found lay.Lay) {
	doc.add("cloth_width", s.length(l.Cloth.Width))
	doc.add("cloth_named", l.Named)
	if h, ok := l.Hand(l.Cloth.Width); ok {
		doc.add("hand", s.length(h.Buy.Result()))
		doc.add("hand_says", lay.Says(h.Yards, h.Metric))
	}
	doc.add("says", sentences(lay.Say(l.Problem, found), s.unit))
}

func sentences(all []measure.Sentence, u measure.Unit) list {
	out := list{}
	for _, t := range all {
		out = append(out, t.In(u))
	}
	return out
}

func (s scale) width(r laid.Width) object {
	o := object{{"width", s.length(r.Width)}, {"own", r.Own}}
	if r.Hand.Lengths > 0 {
		o = append(o, field{"hand", s.length(r.Hand.Buy.Result())}, field{"hand_says", lay.Says(r.Hand.Yards, r.Hand.Metric)})
	}
	if r.Err != nil {
		o.add("error", r.Err.Error())
		return o
	}
	o = append(o, field{"length", s.steps(r.Lay.Length)}, field{"buy", s.length(r.Buy.Needed)}, field{"buy_says", r.Buy.Says}, field{"density", number{r.Lay.Density, 4}})
	if r.Cost > 0 {
		o.add("cost", number{r.Cost, 2})
	}
	return o
}

// remnantDocument is the lay on the remnant, whether it is enough, and what
// would make it so.
func (l *laying) remnantDocument(f laid.Fit) object {
	s := scale{l.jsonUnit()}
	l.Work = f.Work
	doc := s.layDocument(l.Cloth.Name, f.Work.Problem, f.Lay, l.file)
	l.aside(&doc, s, f.Lay)
	doc.add("remnant", line{s.length(f.Along), s.length(f.Across)})
	doc.add("fits", f.Fits)
	if f.Narrow != nil {
		doc.add("short_by", nil)
		doc.add("narrow", f.Narrow.Error())
	} else {
		doc.add("short_by", s.length(f.ShortBy))
	}
	doc.add("fit_says", f.Says().In(s.unit))
	cures := list{}
	for _, c := range f.Cures {
		cures = append(cures, object{{"input", c.Input}, {"says", c.Says.In(s.unit)}, {"length", s.steps(c.Lay.Length)}})
	}
	doc.add("cures", cures)
	return doc
}
