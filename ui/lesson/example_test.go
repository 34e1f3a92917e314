package lesson_test

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/lesson"
	"chalkfold/ui/text"
)

func Example() {
	sheet := workroom.Draft(pattern.Job{Unit: measure.In, Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.HipGirth: 38 * measure.Inch, measure.WaistGirth: 28 * measure.Inch, measure.BustGirth: 36 * measure.Inch,
		measure.BackNeckToWaist: 16 * measure.Inch, measure.WaistToHip: 8 * measure.Inch, measure.AcrossShoulders: 15 * measure.Inch,
		measure.NeckBaseGirth: 14.5 * measure.Inch, measure.ShoulderDrop: 1.5 * measure.Inch,
	})})
	words := text.English()
	q, _ := lesson.Ask(sheet, "back.hip")
	fmt.Println(q.Prompt(words, measure.In))
	fmt.Println(q.Judge("9 1/2", measure.In).Say(words, measure.In))
	fmt.Println(q.Hint(2, words, measure.In, false))
	fmt.Println(q.Judge("10", measure.In).Say(words, measure.In))
	// Output:
	// On the hip line, 24 3/4 down, measure ? out from the centre line and mark it.
	// The ease is left out: she could not sit.
	// Hint 2 of 3: hip / 4 + ease / 4.
	// Right: 10 in. Room to sit. The hip line lies where she is fullest.
}
