package measuring

import (
	"strconv"

	"chalkfold/export/pdf"
	"chalkfold/pattern/geom"
)

// landmarks are named in the order of their numbers on the figure.
var landmarks = []string{
	"Back neck bone: the bone that stands out when she bends her head.",
	"Side neck point: where a string round the base of the neck crosses the top of the shoulder.",
	"Shoulder bone: the end of the shoulder, found when she lifts her arm.",
	"Armpit crease: where the arm meets the body, in front and behind.",
	"Bust point.",
	"Waist string: where she bends to the side.",
	"Hip level: where the seat stands out most, seen from the side.",
	"Knee.",
	"Floor.",
}

func at(x, y float64) geom.Point { return geom.Point{X: x, Y: y} }

// half is the outline of one half of a standing figure, 1,700 high, from the
// neck round the arm and the leg to the middle; drawn by eye.
var half = geom.Path{
	geom.Curve(at(50, 200), at(50, 240), at(55, 255), at(75, 265)),
	geom.Curve(at(75, 265), at(110, 280), at(165, 285), at(190, 305)),
	geom.Curve(at(190, 305), at(225, 335), at(222, 420), at(232, 520)),
	geom.Curve(at(232, 520), at(242, 620), at(262, 740), at(272, 850)),
	geom.Curve(at(272, 850), at(274, 875), at(240, 880), at(238, 855)),
	geom.Curve(at(238, 855), at(228, 740), at(205, 650), at(196, 560)),
	geom.Curve(at(196, 560), at(188, 490), at(180, 440), at(165, 410)),
	geom.Curve(at(165, 410), at(175, 470), at(150, 500), at(138, 560)),
	geom.Curve(at(138, 560), at(125, 620), at(122, 640), at(130, 670)),
	geom.Curve(at(130, 670), at(150, 740), at(188, 780), at(186, 860)),
	geom.Curve(at(186, 860), at(184, 980), at(140, 1100), at(120, 1220)),
	geom.Curve(at(120, 1220), at(122, 1330), at(100, 1450), at(74, 1610)),
	geom.Curve(at(74, 1610), at(78, 1650), at(98, 1670), at(92, 1690)),
	geom.Straight(at(92, 1690), at(26, 1690)),
	geom.Curve(at(26, 1690), at(30, 1600), at(20, 1400), at(32, 1240)),
	geom.Curve(at(32, 1240), at(26, 1100), at(12, 1000), at(0, 890)),
}

var head = geom.Path{
	geom.Curve(at(0, 0), at(60, 0), at(85, 50), at(80, 110)),
	geom.Curve(at(80, 110), at(75, 170), at(40, 225), at(0, 225)),
}

const apart = 900.0 // between the middles of the two figures

// body is the figure from the front and from the back, landmarks numbered.
func body() pdf.Figure {
	f := pdf.Figure{Height: 105}
	for i, name := range []string{"front", "back"} {
		move := geom.Move(geom.Vector{X: apart * float64(i)})
		mirror := geom.MirrorIn(geom.Line{Dir: geom.Vector{Y: 1}}).Then(move)
		for _, p := range []geom.Path{half, head} {
			f.Lines = append(f.Lines, pdf.FigureLine{Path: p.Transform(move)}, pdf.FigureLine{Path: p.Transform(mirror)})
		}
		for _, l := range []struct{ y, x float64 }{{640, 127}, {860, 186}} {
			f.Lines = append(f.Lines, pdf.FigureLine{Path: geom.Lines(at(-l.x, l.y), at(l.x, l.y)).Transform(move), Ink: pdf.InkDashed})
		}
		f.Words = append(f.Words, pdf.FigureWords{At: move.Apply(at(0, 1790)), Text: name})
		for _, d := range []struct {
			n int
			p geom.Point
		}{{2, at(75, 265)}, {3, at(190, 305)}, {4, at(165, 410)}, {6, at(-127, 640)}, {7, at(-186, 860)}, {8, at(120, 1225)}, {9, at(92, 1690)}} {
			f.Dots = append(f.Dots, pdf.FigureDot{At: move.Apply(d.p), Label: strconv.Itoa(d.n)})
		}
	}
	f.Lines = append(f.Lines, pdf.FigureLine{Path: geom.Lines(at(-150, 480), at(150, 480)), Ink: pdf.InkDashed})
	f.Dots = append(f.Dots, pdf.FigureDot{At: at(80, 480), Label: "5"}, pdf.FigureDot{At: at(-80, 480)}, pdf.FigureDot{At: at(apart, 240), Label: "1"})
	return f
}
