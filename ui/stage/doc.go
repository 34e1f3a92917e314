// Package stage is the six stages of the work: Measure, Style, Draft, True,
// Lay and Cut, one file each behind desk.Stage.
//
// Every stage is made of words and the table. The words say what to do; the
// cloth lies on the table below them, always in the same place, so that the
// eye never hunts. How both share the screen stands in bench.go; the two
// stages that are forms share form.go and field.go.
//
// A stage keeps where she looks and what she has typed but not accepted. It
// never keeps the Job and never changes it: it returns a desk.Ask. Stages know
// nothing of each other.
package stage
