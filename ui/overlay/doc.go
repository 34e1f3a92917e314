// Package overlay holds what lies over a stage: the first screen, help, the
// command list, opening and saving, and the questions that must be answered.
//
// Each overlay is one file with a constructor that gives a desk.Overlay. All
// are made of one [board]: a title, some sentences, a field to type in where
// typing finds or names something, and rows to choose from. Typing filters at
// once; Up, Down, PgUp and PgDn choose; Enter takes; Esc closes.
//
// An overlay never changes the work and never draws on the cloth: like a stage
// it returns a desk.Ask. It does not know which stage lies below it.
package overlay
