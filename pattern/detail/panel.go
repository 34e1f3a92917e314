package detail

import (
	"math"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

// Where the seams begin that part front and back into panels.
const (
	NoPanel       = "none"
	ShoulderPanel = "shoulder"
	ArmholePanel  = "armhole"
)

// PanelSeam is where the panel seams begin; by thumb there are none.
func PanelSeam(k pattern.Known) string { return picked(k, "panel_seam", NoPanel) }

// HasPanels says whether front and back are parted into panels.
func HasPanels(k pattern.Known) bool { return PanelSeam(k) != NoPanel }

// Panel is one seam as both panels have it, from the top down to the hip
// line: the edge of the centre panel and that of the side panel.
type Panel struct {
	Centre, Side geom.Path
	Inner, Outer geom.Point // where they cross the waist line
}

// panelEase is how far from the bust point, along a seam, the side panel may
// be eased: between the notches.
const panelEase = 2 * inch

// PanelNotch is that distance.
const PanelNotch = panelEase

// panelHandle is the share of a length that handles take where a seam bends
// gently (ours).
const panelHandle = 0.35

// FrontPanel draws the front's seam through the bust point: t is its dart
// turned to shoulder or armhole, waist and hip are levels, and intake is what
// it takes up at the waist.
func FrontPanel(place string, bust geom.Point, t Turned, angle, waist, hip float64, intake measure.Length) Panel {
	half := intake.MM() / 2
	p := Panel{Inner: geom.Point{X: bust.X - half, Y: waist}, Outer: geom.Point{X: bust.X + half, Y: waist}}
	downC, downS := bust.To(p.Inner).Unit(), bust.To(p.Outer).Unit()
	if place == ShoulderPanel {
		p.Centre, p.Side = overBust(t.Fixed, bust, p.Inner), overBust(t.Moved, bust, p.Outer)
	} else {
		l := t.Fixed.Dist(bust)
		in := t.Before.EndTangent().Right()
		h := panelHandle * l
		mc := downC
		ms := mc.Turn(angle).Plus(downS).Unit()
		p.Centre = geom.Path{geom.Curve(t.Fixed, t.Fixed.Add(in.Scale(h)), bust.Add(mc.Scale(-h)), bust)}.Then(geom.Lines(bust, p.Inner))
		q := bust.Add(downS.Scale(panelEase))
		p.Side = geom.Path{
			geom.Curve(t.Moved, t.Part.Apply(t.Fixed.Add(in.Scale(h))), bust.Add(ms.Scale(-h)), bust),
			geom.Curve(bust, bust.Add(ms.Scale(2*inch/3)), q.Add(downS.Scale(-2*inch/3)), q),
		}.Then(geom.Lines(q, p.Outer))
	}
	foot := geom.Point{X: bust.X, Y: hip}
	p.Centre = p.Centre.Then(overHip(p.Inner, foot, downC))
	p.Side = p.Side.Then(overHip(p.Outer, foot, downS))
	return p
}

// overBust runs straight from a top point to near the bust point, bends
// through it, and runs straight on to the waist.
func overBust(top, bust, waist geom.Point) geom.Path {
	a, c := bust.To(top).Unit(), bust.To(waist).Unit()
	q, q2 := bust.Add(a.Scale(panelEase)), bust.Add(c.Scale(panelEase))
	m := c.Minus(a).Unit()
	reach := 2 * inch / 3
	return geom.Lines(top, q).Then(geom.Path{
		geom.Curve(q, q.Add(a.Scale(-reach)), bust.Add(m.Scale(-reach)), bust),
		geom.Curve(bust, bust.Add(m.Scale(reach)), q2.Add(c.Scale(-reach)), q2),
	}).Then(geom.Lines(q2, waist))
}

// overHip runs from the waist out to the hip line and arrives upright.
func overHip(waist, foot geom.Point, down geom.Vector) geom.Path {
	hd := foot.Y - waist.Y
	m := down.Plus(geom.Vector{Y: 1}).Unit()
	return geom.Path{geom.Curve(waist, waist.Add(m.Scale(panelHandle*hd)), geom.Point{X: foot.X, Y: foot.Y - float64(panelHandle*hd)}, foot)}
}

// BackPanel draws the back's seam: one line down to the level of its dart's
// top, two below it.
func BackPanel(place string, from geom.Point, into geom.Vector, x, top, waist, hip float64, intake measure.Length) Panel {
	at := func(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }
	var upper geom.Segment
	if place == ShoulderPanel {
		join, h := at(x, top), top-from.Y
		upper = geom.Curve(from, from.Add(from.To(join).Unit().Scale(h/3)), at(x, top-float64(panelHandle*h)), join)
	} else {
		top = math.Max(top+inch, from.Y+1.5*inch)
		join := at(x, top)
		h := panelHandle * from.Dist(join)
		upper = geom.Curve(from, from.Add(into.Scale(h)), at(x, top-h), join)
	}
	lower := func(w float64) geom.Path {
		h, hd := waist-top, hip-waist
		return geom.Path{
			upper,
			geom.Curve(upper.D, at(x, top+float64(panelHandle*h)), at(w, waist-float64(panelHandle*h)), at(w, waist)),
			geom.Curve(at(w, waist), at(w, waist+float64(panelHandle*hd)), at(x, hip-float64(panelHandle*hd)), at(x, hip)),
		}
	}
	half := intake.MM() / 2
	return Panel{Centre: lower(x - half), Side: lower(x + half), Inner: at(x-half, waist), Outer: at(x+half, waist)}
}

// BackPanelPlace is where the back's seam lies and the level of its dart's
// top.
func BackPanelPlace(k pattern.Known, underarm, waist geom.Point, intake measure.Length) (x, top float64) {
	x = math.Min(waist.X/2, k.Body(measure.AcrossBack).MM()/4+0.5*inch)
	if intake <= 0 {
		x = waist.X / 2
	}
	return x, underarm.Y + 0.5*inch
}

// MostPanelBack is the most that a seam behind takes up at the waist.
const MostPanelBack = 1.5 * measure.Inch

var panelChoices = []pattern.Choice{{
	ID: "panel_seam", Title: "Panels", Says: "Seams over the bust that take the place of all darts.", Group: "Shape",
	Kind: pattern.KindPick, Methods: onlyMeasured, Default: pick(NoPanel),
	Options: []pattern.Option{
		{Value: NoPanel, Title: "None", Says: "Front and back in one, shaped by darts."},
		{Value: ShoulderPanel, Title: "From the shoulder", Says: "From the middle of the shoulder over the bust to the hem."},
		{Value: ArmholePanel, Title: "From the armhole", Says: "From the armhole over the bust to the hem."},
	},
}, length("panel_flare", "Hem", "Panels flared by", "How much the panels overlap at the hem, at each panel seam: so much it is wider there.", 0, 0, 1.5, pattern.Measured)}

// PanelFlare is how much the two panels of a seam overlap at the hem.
func PanelFlare(k pattern.Known) measure.Length {
	if !HasPanels(k) {
		return 0
	}
	return k.Length("panel_flare")
}

// Flared is a panel seam and the hems beside it where the panels overlap below
// the hip line: both edges of the seam from there down, the centre panel's hem
// from the seam to the centre and the side panel's from the side to the seam.
type Flared struct {
	Centre, Side       geom.Path
	HemCentre, HemSide geom.Path
}

// FlarePanels lets the panels overlap by so much at a hem, which runs from the
// side to the centre and is parted where the seam meets it. Each edge is as
// long as the seam was, so that the hem hangs level, and the hem runs square
// out of it.
func FlarePanels(hip geom.Point, hemSide, hemCentre geom.Path, overlap measure.Length) Flared {
	foot := hemCentre.Start()
	long, half := foot.Y-hip.Y, overlap.MM()/2
	down := math.Sqrt(float64(long*long) - float64(half*half))
	edge := func(x float64) geom.Path {
		end := geom.Point{X: hip.X + x, Y: hip.Y + down}
		way := hip.To(end).Unit()
		return geom.Path{geom.Curve(hip, geom.Point{X: hip.X, Y: hip.Y + float64(panelHandle*long)}, end.Add(way.Scale(-panelHandle*long)), end)}
	}
	f := Flared{Centre: edge(half), Side: edge(-half)}
	f.HemCentre = squareHem(f.Centre, hemCentre, true)
	f.HemSide = squareHem(f.Side, hemSide.Reverse(), false).Reverse()
	return f
}

// squareHem begins a hem at the end of a seam, square to it, and runs into the
// hem as it was, which begins beside it.
func squareHem(seam, hem geom.Path, inwards bool) geom.Path {
	start, out := seam.End(), seam.EndTangent().Left()
	if inwards {
		out = seam.EndTangent().Right()
	}
	_, rest := hem.Split(math.Min(2*inch, hem.Length()/2))
	third := start.Dist(rest.Start()) / 3
	return geom.Path{geom.Curve(start, start.Add(out.Scale(third)), rest.Start().Add(rest.StartTangent().Scale(-third)), rest.Start())}.Then(rest)
}
