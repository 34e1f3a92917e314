package measure_test

import (
	"fmt"

	"chalkfold/measure"
)

func Example() {
	bust, _ := measure.Read("36", measure.In)
	ease, _ := measure.Read("2½", measure.In)
	quarter := measure.Measured("bust", bust).Over(4).Plus(measure.Of("ease", ease).Over(4))
	fmt.Println(quarter.Sum(measure.In))
	fmt.Println(quarter.Private(measure.In))
	fmt.Println(measure.Cm.Say(quarter.Result()))

	_, err := measure.Read("36 2", measure.In)
	fmt.Println(err)
	// Output:
	// bust 36 / 4 + ease 2 1/2 / 4 = 9 5/8
	// bust / 4 + ease 2 1/2 / 4 = 9 5/8
	// 24.4 cm
	// "36 2"; there are two numbers and no fraction; write 36 1/2 or 36.5
}

func ExamplePropose() {
	body := measure.NewBody(map[measure.ID]measure.Length{measure.BustGirth: 36 * measure.Inch})
	p, _ := measure.Propose(body, measure.SideNeckToBustPoint)
	fmt.Println(p.Working.Sum(measure.In), "-", p.Source)
	// Output:
	// bust 36 / 4 + 1 1/4 = 10 1/4 - from memory
}

func ExampleDoubts() {
	body := measure.NewBody(map[measure.ID]measure.Length{measure.WaistGirth: 27 * measure.Centimetre})
	for _, d := range measure.Doubts(body) {
		fmt.Println(d.Says.In(measure.Cm))
	}
	// Output:
	// Waist 27 cm is small: mostly it is 55 cm to 140 cm. Had it been meant in inches, it would be 68.6 cm. Measure it again.
}
