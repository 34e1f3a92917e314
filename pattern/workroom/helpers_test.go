package workroom_test

import "chalkfold/pattern/geom"

func point(inches [2]float64) geom.Point {
	return geom.Point{X: inches[0] * 25.4, Y: inches[1] * 25.4}
}
