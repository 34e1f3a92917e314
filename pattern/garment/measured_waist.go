package garment

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/bench"
	"chalkfold/pattern/detail"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/rule"
)

func waistShaped(k pattern.Known) bool { return detail.WaistShaping(k) != detail.NoWaistShaping }

func backShaped(k pattern.Known) bool { return detail.WaistShaping(k) == detail.ShapedBack }

// backDarts is the number of waist darts that a half may have.
const backDarts = 2

// waistDartName is the name of a waist dart's marks: "waist_dart",
// "waist_dart_2".
func waistDartName(i int) string {
	if i == 0 {
		return "waist_dart"
	}
	return "waist_dart_2"
}

// frontWaistDart draws the dart below the bust point.
func frontWaistDart() bench.Step {
	return bench.Step{
		ID: "front.waist_dart", Piece: pattern.Front, Title: "Waist dart", If: waistShaped,
		Why:     measure.Tell("The side seam alone may take in only so much. The dart lies below the bust point, so that it shapes the bust as well."),
		Slip:    measure.Tell("Beginning it at the bust point: it stands up there. It begins an inch below."),
		Needs:   []measure.ID{measure.SideNeckToBustPoint, measure.BustPointDistance},
		Choices: []pattern.ChoiceID{"waist_shaping", "front_waist_dart"},
		Uses:    theFront.uses("bust_point", "waist"),
		Draw: func(p *bench.Pen) {
			set, _ := p.K.Setting("front_waist_dart")
			p.Because(set.Default.Because)
			intake := p.Sum(measure.Of("intake", set.Value.Length))
			if intake <= 0 {
				p.Do("There is too little to spare for a dart in front; it stays as ease.")
				return
			}
			w := p.At("front.waist")
			f := detail.FrontFisheye(p.At("front.bust_point"), w.Y, intake)
			if waistDartImpossible(p, "front_waist_dart", w, f) {
				return
			}
			p.Do("Straight below the bust point mark {} down, an inch below it; on the waist line {} to either side; and the foot {} below the waist. Join them.",
				measure.Length(f.Top.Y), intake/2, f.Lower())
			drawFisheye(p, waistDartName(0), f)
		},
	}
}

func drawFisheye(p *bench.Pen, name string, f detail.Fisheye) {
	p.Point(name+"_top", f.Top)
	p.Point(name+"_inner", f.Left)
	p.Point(name+"_outer", f.Right)
	p.Point(name+"_foot", f.Foot)
	p.Draw(name, f.Path(), pattern.RoleDart)
}

// waistDartImpossible refuses a dart that would point or lie too near to the
// side.
func waistDartImpossible(p *bench.Pen, id pattern.ChoiceID, waist geom.Point, f detail.Fisheye) bool {
	half := min(f.Upper(), f.Lower())
	r := pattern.Refused{Code: "R18", Input: string(id)}
	switch {
	case half <= 0 || f.Intake() > half/5+0.01:
		r.Says = measure.Tell("a waist dart {} wide narrows to nothing over {}; more than a fifth of that points", f.Intake(), max(0, half))
		r.Cure = measure.Tell("{} or less", rule.MostWaistDart(half))
	case waist.X-f.Right.X < rule.In(1.5).MM()-0.01 || f.Left.X < rule.In(0.5).MM():
		r.Says = measure.Tell("a waist dart {} wide, {} out, lies too near to the side at {}", f.Intake(), measure.Length(f.Top.X), measure.Length(waist.X))
		r.Cure = measure.Tell("a smaller dart, or none")
	default:
		return false
	}
	p.Refuse(r)
	return true
}

// backWaist draws the darts of the back and a shaped centre seam.
func backWaist() []bench.Step {
	darts := bench.Step{
		ID: "back.waist_darts", Piece: pattern.Back, Title: "Waist darts", If: waistShaped,
		Why:     measure.Tell("The back is hollow above the waist, so it takes up more than the front. The darts end above the fullest part of the hip."),
		Slip:    measure.Tell("Running them down to the hip line: they stand off there."),
		Needs:   []measure.ID{measure.WaistToHip, measure.AcrossBack},
		Choices: []pattern.ChoiceID{"waist_shaping", "back_waist_dart", "centre_back_in", "armhole_depth"},
		Uses:    theBack.uses("underarm", "waist"),
		Draw:    drawBackDarts,
	}
	centre := bench.Step{
		ID: "back.centre_shape", Piece: pattern.Back, Title: "Centre back, shaped", If: backShaped,
		Why:     measure.Tell("A seam down the hollow of the back may follow it. Above the shoulder blades and below the hip it stays straight."),
		Slip:    measure.Tell("Slanting it from the neck: the neck then stands off."),
		Needs:   []measure.ID{measure.WaistToHip},
		Choices: []pattern.ChoiceID{"waist_shaping", "centre_back_in", "back_waist_dart"},
		Uses:    theBack.uses("armhole_mid", "waist", "hip", "neck_centre", "hem_centre"),
		Draw: func(p *bench.Pen) {
			in, _ := detail.BackIn(p.K.Length("centre_back_in"), p.K.Length("back_waist_dart"))
			p.Sum(measure.Of("in at the waist", in))
			if in > rule.In(0.75) {
				p.Refuse(pattern.Refused{
					Code: "R18", Input: "centre_back_in",
					Says: measure.Tell("a centre back that comes in {} at the waist pulls off the grain", in),
					Cure: measure.Tell("{5/8 in} or less"),
				})
				return
			}
			mid, w, hip := p.At("back.armhole_mid"), p.At("back.waist"), p.At("back.hip")
			p.Do("From the level of the middle of the armhole draw the centre back in to {} at the waist, and out again to the hip line.", in)
			p.Draw("centre_back", detail.CentreBack(p.At("back.neck_centre"), p.At("back.hem_centre"), mid.Y, w.Y, hip.Y, in), pattern.RoleStitch)
		},
	}
	return []bench.Step{darts, centre}
}

// backDartIntake is what is left for darts behind.
func backDartIntake(k pattern.Known) measure.Length {
	intake := k.Length("back_waist_dart")
	if backShaped(k) {
		_, intake = detail.BackIn(k.Length("centre_back_in"), intake)
	}
	return intake
}

// waistDartWanted says whether a half is to have a waist dart.
func waistDartWanted(k pattern.Known, h half) bool {
	switch {
	case !waistShaped(k):
		return false
	case h.back:
		return backDartIntake(k) > 0
	}
	return k.Length("front_waist_dart") > 0
}

func drawBackDarts(p *bench.Pen) {
	k := p.K
	set, _ := k.Setting("back_waist_dart")
	p.Because(set.Default.Because)
	p.Sum(measure.Of("intake", set.Value.Length))
	intake := backDartIntake(k)
	w := p.At("back.waist")
	darts := detail.BackDarts(k, p.At("back.underarm"), w, intake, detail.WaistShaping(k) == detail.TwoBackWaist)
	for _, d := range darts {
		if waistDartImpossible(p, "back_waist_dart", w, d) {
			return
		}
	}
	switch len(darts) {
	case 0:
		p.Do("There is too little to spare for a dart behind; it stays as ease.")
	case 1:
		p.Do("Mark the dart's middle {} out, its top {} down, {} to either side on the waist line, and its foot {} below the waist. Join them.",
			measure.Length(darts[0].Top.X), measure.Length(darts[0].Top.Y), darts[0].Intake()/2, darts[0].Lower())
	default:
		p.Do("Mark two darts, their middles {} and {} out, {} wide each at the waist. The inner one runs from {} down to {} below the waist; the outer one is an inch shorter at both ends.",
			measure.Length(darts[0].Top.X), measure.Length(darts[1].Top.X), darts[0].Intake(), measure.Length(darts[0].Top.Y), darts[0].Lower())
	}
	taken := measure.Length(0)
	for _, d := range darts {
		taken += d.Intake()
	}
	if left := intake - taken; left > 0.01 {
		p.Rule("Wider they would point: {} are taken, {} more stays as ease.", taken, left)
	}
	for i, d := range darts {
		drawFisheye(p, waistDartName(i), d)
	}
}

// fisheyes are the waist darts of a half, as its marks have them.
func (c cutter) fisheyes(h half) []detail.Fisheye { return fisheyesOf(h, c.has, c.at) }

func fisheyesOf(h half, has func(string) bool, at func(string) geom.Point) []detail.Fisheye {
	var out []detail.Fisheye
	for i := range backDarts {
		name := h.id(waistDartName(i))
		if !has(name + "_top") {
			break
		}
		out = append(out, detail.Fisheye{Top: at(name + "_top"), Left: at(name + "_inner"), Right: at(name + "_outer"), Foot: at(name + "_foot")})
	}
	return out
}

// waistDarts puts the waist darts into a piece. Each is two darts that share
// their legs at the waist, so that whoever draws darts draws it whole.
func (c cutter) waistDarts(p *pattern.Piece, h half) {
	for i, f := range c.fisheyes(h) {
		mid := f.Left.Lerp(f.Right, 0.5)
		name := "waist dart"
		if i > 0 {
			name = "second waist dart"
		}
		for _, part := range []struct {
			says      string
			tip, foot geom.Point
		}{{", above the waist", f.Top, f.Foot}, {", below the waist", f.Foot, f.Top}} {
			d := pattern.Dart{
				Name: name + part.says, Fisheye: true, Tip: part.tip, Foot: part.foot, Legs: [2]geom.Point{f.Left, f.Right}, Cap: mid,
				Intake: f.Intake(), Leg: measure.Length(part.tip.Dist(f.Left)), Pressed: "to the centre",
			}
			d.Degrees = rule.Degrees(rule.DartAngle(d.Intake, d.Leg))
			p.Darts = append(p.Darts, d)
			p.Holes = append(p.Holes, part.tip.Add(part.tip.To(mid).Unit().Scale(rule.In(0.5).MM())))
		}
		// Pricked inside the legs at the waist, so that the seam covers it.
		in := geom.Vector{X: rule.In(0.125).MM()}
		p.Holes = append(p.Holes, f.Left.Add(in), f.Right.Add(in.Scale(-1)))
	}
}

// waistTaken is what a half takes up at the waist besides the side: darts,
// and behind the centre seam.
func (c cutter) waistTaken(h half) float64 {
	sum := 0.0
	for _, f := range c.fisheyes(h) {
		sum += f.Intake().MM()
	}
	if name := h.id("panel_outer"); c.has(name) {
		sum += c.at(name).X - c.at(h.id("panel_inner")).X
	}
	if line := c.line("back.centre_back"); h.back && len(line) > 0 && backShaped(c.s.Known) {
		if at := line.AtLevel(c.at("back.waist").Y); len(at) > 0 {
			sum += at[0].X
		}
	}
	return sum
}

// centreUp is the centre back from the hem up to the neck.
func (c cutter) centreUp(hem geom.Path) geom.Path {
	if line := c.line("back.centre_back"); len(line) > 0 {
		return line.Reverse()
	}
	return geom.Lines(hem.End(), c.at("back.neck_centre"))
}
