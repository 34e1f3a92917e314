package geom_test

import (
	"fmt"

	"chalkfold/pattern/geom"
)

// A line, a curve and their parallel 10 mm to the left, which for someone
// going right is above: y counts down.
func Example() {
	p := geom.Lines(geom.Point{}, geom.Point{X: 60}).Then(geom.Path{geom.Curve(
		geom.Point{X: 60}, geom.Point{X: 90}, geom.Point{X: 120, Y: 30}, geom.Point{X: 120, Y: 60})})
	q := p.Offset(10, 0.002)
	fmt.Printf("length %.2f and %.2f mm\n", p.Length(), q.Length())
	fmt.Printf("starts at %.0f, %.0f\n", q.Start().X, q.Start().Y)
	// Output:
	// length 152.93 and 168.64 mm
	// starts at 0, -10
}
