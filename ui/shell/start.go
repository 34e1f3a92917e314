package shell

import (
	"os"

	"chalkfold/ui"
	"chalkfold/ui/desk"
	"chalkfold/ui/linear"
	"chalkfold/ui/session"
)

// screen shows the workbench until she leaves; s is nil for the first screen.
func (w *world) screen(s *session.Session) int {
	in, _ := w.in.(*os.File)
	out, _ := w.out.(*os.File)
	own := w.settings()
	set, wrong := own.On(desk.Keys())
	told := append(w.told, wrong...)
	w.warn(told)
	return ui.Run(ui.Options{
		Session: s,
		Unit:    w.newUnit(),
		Settings: desk.Settings{
			Glyphs: w.drawnWith(), Theme: w.look(), Mouse: own.Mouse, Motion: !own.Still && !w.still,
			Comma: own.Comma, Strict: strict(w.env), Unit: w.newUnit(), Aspect: own.Aspect, Config: w.config(),
		},
		Keys: set, Told: told,
		In: in, Out: out, Err: w.err, Env: w.env,
	})
}

// linear talks line by line until she leaves or the input ends.
func (w *world) linear(s *session.Session, why string) int {
	own := w.settings()
	w.warn(w.told)
	return linear.Run(linear.Options{
		In: w.in, Out: w.out, Session: s, Unit: w.newUnit(), Why: why, Comma: own.Comma, Rescues: session.FindRescues(),
	})
}

// warn says on standard error what is wrong with the settings; on the screen
// it is said again.
func (w *world) warn(told []string) {
	for _, t := range told {
		w.say("%s", t)
	}
}
