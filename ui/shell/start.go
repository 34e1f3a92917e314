package shell

import (
	"os"

	"chalkfold/measure"
	"chalkfold/ui"
	"chalkfold/ui/desk"
	"chalkfold/ui/linear"
	"chalkfold/ui/session"
)

// screen shows the workbench until she leaves; s is nil for the first screen.
func (w *world) screen(s *session.Session) int {
	in, _ := w.in.(*os.File)
	out, _ := w.out.(*os.File)
	return ui.Run(ui.Options{
		Session:  s,
		Unit:     w.inUnit(measure.In),
		Settings: desk.Settings{Glyphs: w.drawnWith(), Theme: w.look(), Motion: true, Config: w.config()},
		In:       in, Out: out, Err: w.err, Env: w.env,
	})
}

// linear talks line by line until she leaves or the input ends.
func (w *world) linear(s *session.Session, why string) int {
	return linear.Run(linear.Options{
		In: w.in, Out: w.out, Session: s, Unit: w.inUnit(measure.In), Why: why, Rescues: session.FindRescues(),
	})
}
