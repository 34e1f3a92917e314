package lay_test

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern/lay"
)

func ExampleSolve() {
	p, err := lay.ReadPieces([]byte(`{
		"width": 60, "unit": "cm", "turn": [0, 180],
		"pieces": [
			{"id": "gore", "count": 4, "outline": [[0, 0], [30, 0], [22, 50], [8, 50]]},
			{"id": "band", "outline": [[0, 0], [60, 0], [60, 8], [0, 8]]}
		]}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := lay.Solve(p, lay.Options{Evaluations: 200000, Seed: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("pieces:", len(l.Placed), "faults:", len(lay.Verify(p, l)))
	fmt.Println("no longer than side by side:", l.Length <= 2*50*10*lay.PerMM+8*10*lay.PerMM)
	fmt.Println("to buy:", lay.Buy(l.Length, lay.Cloth{ShrinkAlong: 5}).Needed > measure.Length(l.Length/lay.PerMM))
	// Output:
	// pieces: 5 faults: 0
	// no longer than side by side: true
	// to buy: true
}
