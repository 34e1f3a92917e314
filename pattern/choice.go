package pattern

import "chalkfold/measure"

// Choice is one style choice of a garment: what it is called, what it does,
// its default and its limits as functions of all that is known before it.
// Forms, help, session reading and `choices` walk the same list.
type Choice struct {
	ID      ChoiceID
	Title   string // "Front neck depth"
	Says    string // one line on what it does
	Group   string // Shape, Neck, Shoulder, Ease, Dart, Hem, Opening, Facings, Allowances
	Kind    Kind
	Options []Option   // of a pick
	Methods []string   // the methods that use it; none listed: all
	After   []ChoiceID // choices that its default reads
	Default func(k Known) Default
	Limits  func(k Known) (low, high measure.Length) // advice, never a gate; nil: none
}

// Option is one value of a pick.
type Option struct{ Value, Title, Says string }

// Default is what a Choice takes when she has chosen nothing, and why.
type Default struct {
	Value    Value
	Sum      measure.Working  // zero where a constant
	Because  measure.Sentence // why this default
	Proposed bool             // rests on a proposal, not on her measure
	GaveWay  bool             // another than the usual one, for this body
	Waits    []measure.ID     // what must be known first; then there is no value yet
}

// UsedBy says whether the method uses this choice. The direct block goes on
// as the measured dress does, so it uses all that the measured method uses.
func (c Choice) UsedBy(method string) bool {
	if len(c.Methods) == 0 {
		return true
	}
	if method == Direct {
		method = Measured
	}
	for _, m := range c.Methods {
		if m == method {
			return true
		}
	}
	return false
}

// Setting is a choice resolved for one job.
type Setting struct {
	ID        ChoiceID
	Value     Value
	Chosen    bool
	Used      bool // false: this method has no such choice, it is kept
	Default   Default
	Low, High measure.Length // equal: no limits
}

// Known says whether the setting has a value: hers, or a default whose needs
// are met.
func (s Setting) Known() bool { return s.Chosen || len(s.Default.Waits) == 0 }

// Figure is one measurement as the draft uses it: hers, or a proposal that
// is marked as such and never written into the session.
type Figure struct {
	ID       measure.ID
	Value    measure.Length
	Proposed bool
	Proposal measure.Proposal // where Proposed
}

// Missing is a need that nothing can propose.
type Missing struct {
	ID  measure.ID
	For string // "the bust line"
}

// Known is all that a rule, a default or a step may read: her figures and
// the choices resolved before it. It is filled once by the workroom and then
// only read.
type Known struct {
	Job      Job
	Garment  string
	Method   string
	Figures  []Figure
	Settings []Setting
}

// Figure returns a measurement as the draft uses it.
func (k *Known) Figure(id measure.ID) (Figure, bool) {
	if f := k.figure(id); f != nil {
		return *f, true
	}
	return Figure{}, false
}

// Has says whether all of these measurements are known or proposed.
func (k *Known) Has(ids ...measure.ID) bool {
	for _, id := range ids {
		if k.figure(id) == nil {
			return false
		}
	}
	return true
}

func (k *Known) figure(id measure.ID) *Figure {
	for i := range k.Figures {
		if k.Figures[i].ID == id {
			return &k.Figures[i]
		}
	}
	return nil
}

// Body is the length of a figure that the caller has checked to be known;
// zero otherwise.
func (k *Known) Body(id measure.ID) measure.Length {
	if f := k.figure(id); f != nil {
		return f.Value
	}
	return 0
}

// Measured is her own measurement, never a proposal.
func (k *Known) Measured(id measure.ID) (measure.Length, bool) {
	return k.Job.Body.Get(id)
}

// Setting returns a resolved choice.
func (k *Known) Setting(id ChoiceID) (Setting, bool) {
	if s := k.setting(id); s != nil {
		return *s, true
	}
	return Setting{}, false
}

func (k *Known) setting(id ChoiceID) *Setting {
	for i := range k.Settings {
		if k.Settings[i].ID == id {
			return &k.Settings[i]
		}
	}
	return nil
}

// Length is the length of a resolved choice; zero if there is none.
func (k *Known) Length(id ChoiceID) measure.Length {
	if s := k.setting(id); s != nil {
		return s.Value.Length
	}
	return 0
}

// Pick is the option of a resolved choice.
func (k *Known) Pick(id ChoiceID) string {
	if s := k.setting(id); s != nil {
		return s.Value.Pick
	}
	return ""
}

// On says whether a resolved switch is on.
func (k *Known) On(id ChoiceID) bool {
	s := k.setting(id)
	return s != nil && s.Value.On
}

// Chosen says whether she made that choice herself.
func (k *Known) Chosen(id ChoiceID) bool {
	s := k.setting(id)
	return s != nil && s.Chosen
}
