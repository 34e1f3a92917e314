package canvas_test

import (
	"fmt"

	"chalkfold/ui/canvas"
)

func Example() {
	c := canvas.New(24, 4, canvas.ASCII)
	c.Polyline([]canvas.Dot{{X: 1, Y: 1}, {X: 16, Y: 1}, {X: 16, Y: 13}, {X: 1, Y: 13}}, true, canvas.Line, canvas.Solid, 1)
	c.Label(16, 5, "a corner", canvas.Words)
	fmt.Println(c.String(canvas.Palette{}))
	// Output:
	// +-------+
	// |       | a corner
	// |       |
	// +-------+
}
