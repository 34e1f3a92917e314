package pdf

import (
	"fmt"

	"chalkfold/measure"
)

// A printer may stretch a sheet by so much in one direction; more is a print
// that was scaled.
const (
	leastFactor = 0.97
	mostFactor  = 1.03
)

// Control is a control line of the cover.
type Control struct {
	Name   string // across, along
	Length measure.Length
}

// Controls are the two control lines that a paper has room for: 10 in, or
// across narrow paper 7.
func Controls(paper Paper) (across, along Control) {
	across = Control{"across", 10 * measure.Inch}
	if paper = paper.or(); paper.Width-2*tileMargin < float64(across.Length) {
		across.Length = 7 * measure.Inch
	}
	return across, Control{"along", 10 * measure.Inch}
}

// factors are how much to stretch a print so that it comes out true.
func (o Options) factors() (across, along float64, err error) {
	a, b := Controls(o.Paper)
	if across, err = a.factor(o.PrintedAcross); err != nil {
		return 1, 1, err
	}
	along, err = b.factor(o.PrintedAlong)
	return across, along, err
}

// Check refuses lengths of control lines that no printer makes.
func (o Options) Check() error {
	_, _, err := o.factors()
	return err
}

func (c Control) factor(printed measure.Length) (float64, error) {
	if printed == 0 {
		return 1, nil
	}
	low, high := c.Length/mostFactor, c.Length/leastFactor
	if f := float64(c.Length / printed); printed > 0 && f >= leastFactor && f <= mostFactor {
		return f, nil
	}
	return 1, &measure.Refusal{
		Where: "--printed-" + c.Name, Read: measure.In.Say(printed) + " (" + measure.Mm.Say(printed) + ")",
		Wrong: fmt.Sprintf("the line of %s is off by more than a printer is: it was printed scaled, or another line was measured", measure.In.Say(c.Length)),
		Works: fmt.Sprintf("print again at 100 %%; %.1f to %.1f mm can be made up", low.MM(), high.MM()),
	}
}

// factorSays is what stands on every sheet that is stretched; empty: none is.
func factorSays(across, along float64) string {
	if across == 1 && along == 1 {
		return ""
	}
	return fmt.Sprintf("stretched for this printer: across x %.4f, along x %.4f (limits %.2f to %.2f)", across, along, leastFactor, mostFactor)
}
