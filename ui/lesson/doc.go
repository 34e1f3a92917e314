// Package lesson holds the course: lessons as data over the steps that a draft
// really has, and questions that know what people really do wrong.
//
// A lesson adds three things to a draft: an order with an aim, a question
// before the reveal, and something in hand at the end. It never draws and
// never works a length out; what it shows is a step, a measurement, a check or
// a comparison, by id, so it cannot go stale.
//
// How a stage uses it:
//
//   - List [All] with the aim, what each ends with, and [Progress.State]. Where
//     [Lesson.Waits] says something, the lesson cannot begin yet.
//   - Open one: draft [Lesson.Job] of her job (or of the sample client's), and
//     show the page that [Progress.Resume] names. [Page.Show] says what lies on
//     the table beside the words.
//   - Ask: [Page.Question] gives the page's question, [Ask] that of any step of
//     the Draft stage. Show [Question.Prompt], then take what she types to
//     [Question.Judge], or the cross-hair to [Question.JudgePlace] of
//     [Question.Within] half a cell. Say [Verdict.Say]. On [Missed], and on an
//     empty answer, say [Question.Hint] one level higher; the third gives the
//     answer away. [Verdict.Closed] says when the step may be shown.
//   - After the answer, the key for why shows [Question.Why] and
//     [Question.Rule]. [Progress.Answered] keeps the place; nothing counts
//     wrong answers.
//   - What if: [WhatIfs] lists what can be moved, [WhatIf] gives the job with it
//     moved and the sentence; draw the old sheet dotted under the new one and
//     say view.Differences of the two.
//   - Faults on purpose: [Faults] makes a sound sheet faulty. The class guesses;
//     then the sheet's own findings are shown, and [Fault.Finding] is the one to
//     look for.
//
// Words go through the Catalogue that is handed in. Nothing here knows cells,
// keys, files or the clock.
package lesson
