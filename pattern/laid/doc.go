// Package laid joins a drafted sheet, the cloths of its session and pattern/lay:
// which cloths are wanted, what each is taken to be where the session says
// nothing, the lay that she kept put together and verified again, and the lay
// found written down so that a session can keep it.
//
// [Work.Show] never searches: it gives the kept lay if that still holds, else
// the first lay, side by side in rows, and says why. What is asked of a lay
// besides is here too, each by searches of a given count: what other widths
// would take ([Work.Widths]), what nap costs ([Work.NapCost]), whether a remnant
// is enough and what would make it so ([Work.Remnant]).
//
// The package knows no screen, no file and no clock.
package laid
