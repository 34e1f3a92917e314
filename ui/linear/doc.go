// Package linear is the plain mode: prompt and answer, in words alone, for
// those who listen to a screen, for terminals that can do nothing, and for
// scripts.
//
// Every stage of the workbench is here in the same order: what to do, the sum,
// why, the slip, and where the new mark lies by tape. The words are few (next,
// back, why, step N ...), the beginning of one is enough, and a number is
// always an answer. The first line says that the mode is on and why.
//
// It stands on the same desk as the workbench, so undo, files and rescue
// copies are the same. After every change the rescue copy is written before
// the next prompt: whatever ends the program, nothing is lost.
//
// The package never writes a control byte but the line break, never draws
// again what was said, and never works out a length.
package linear
