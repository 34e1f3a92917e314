// Package stage is the six stages of the work: Measure, Style, Draft, True,
// Lay and Cut, one file each behind desk.Stage.
//
// Every stage is made of words and the table. The words say what to do; the
// cloth lies on the table below them, always in the same place, so that the
// eye never hunts. How both share the screen stands in bench.go; the two
// stages that are forms share form.go and field.go.
//
// Learning comes on top of them: a question takes the place of the words
// (question.go), what if draws the old under the new (whatif.go), and a lesson
// stands as a bar above the stage that shows its page (study.go). All three are
// the bench's, so that they are the same in each stage.
//
// A stage keeps where she looks and what she has typed but not accepted. It
// never keeps the Job and never changes it: it returns a desk.Ask. Stages know
// nothing of each other.
package stage
