package shell

import (
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/fitting"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

// fit is a call of the command: what was asked for, and the session it is
// asked of.
type fit struct {
	w                        *world
	signs, spots             bool
	months, newSet           bool
	saw, by, floor, want     string
	pins                     string
	way                      int
	back, again, settle, cmp int
	keep                     bool
	date                     string

	path  string
	s     *session.Session
	sheet *pattern.Sheet
	u     measure.Unit
}

func fitCommand(w *world) *cobra.Command {
	f := &fit{w: w}
	c := &cobra.Command{
		Use: "fit FILE", Short: "after the fitting: what was seen, what to change, how it stands", Args: wants(1, 1, "session file"), ValidArgsFunction: sessions,
		Long: "Alone it lists the alterations of a session and how each stands. --signs lists\n" +
			"what may be seen on the body; --saw names one, with what was pinned, and shows\n" +
			"the inputs to change, old -> new. --pins takes all that was pinned at once and\n" +
			"looks for the least change of inputs that accounts for it. --floor levels a hem\n" +
			"from three readings.\n" +
			"Nothing is written without --keep; then the change goes into the session with\n" +
			"its date, and the former file stays beside it as FILE~.",
		Example: "  chalkfold fit anna.chalkfold.toml --saw gape_armhole --by 1/4\n" +
			"  chalkfold fit anna.chalkfold.toml --saw gape_armhole --by 1/4 --keep\n" +
			"  chalkfold fit anna.chalkfold.toml --pins \"side_waist pinned 1/4; shoulder_end pinned 1/2\"\n" +
			"  chalkfold fit anna.chalkfold.toml --floor \"16, 15 1/2, 15 3/4\" --keep\n" +
			"  chalkfold fit anna.chalkfold.toml --back 2 --keep\n" +
			"  chalkfold fit anna.chalkfold.toml --months",
		RunE: func(_ *cobra.Command, args []string) error { return f.run(args[0]) },
	}
	o := c.Flags()
	o.BoolVar(&f.signs, "signs", false, "what may be seen on the body, place by place")
	o.StringVar(&f.saw, "saw", "", "a sign that was seen")
	o.StringVar(&f.by, "by", "", "what was pinned of it; else a usual amount is shown")
	o.IntVar(&f.way, "way", 0, "which of its cures to keep; else the first that is possible")
	o.BoolVar(&f.spots, "spots", false, "where something may be pinned, place by place")
	o.StringVar(&f.pins, "pins", "", "all that was pinned: place, which way, how much; with semicolons between")
	o.StringVar(&f.floor, "floor", "", "the hem from the floor: front, side, back")
	o.StringVar(&f.want, "wanted", "", "how high the hem should be; else it is levelled at its highest place")
	o.IntVar(&f.cmp, "compare", 0, "what that alteration moves, in numbers")
	o.IntVar(&f.back, "back", 0, "take that alteration back")
	o.IntVar(&f.again, "again", 0, "make that alteration again, on what the inputs are now")
	o.IntVar(&f.settle, "settle", 0, "of an overtaken alteration: what was measured since holds")
	o.BoolVar(&f.newSet, "new-set", false, "put her measurements away with their date and begin a new set")
	o.BoolVar(&f.months, "months", false, "her measurements over the months, and what changed")
	o.StringVar(&f.date, "date", "", "the day of the fitting, like 2026-03-20; else today")
	o.BoolVar(&f.keep, "keep", false, "write it into the session")
	w.completes(c, "saw", signIDs()...)
	return w.share(c, flagUnit|flagJSON|flagForce)
}

func signIDs() []string {
	var out []string
	for _, s := range fitting.Signs() {
		out = append(out, s.ID)
	}
	return out
}

func (f *fit) run(path string) error {
	if err := f.one(); err != nil {
		return err
	}
	var err error
	if f.s, f.sheet, err = f.w.draft(path); err != nil {
		return err
	}
	f.path, f.u = path, f.w.inUnit(f.s.Job.Unit)
	switch {
	case f.signs:
		return f.listSigns()
	case f.spots:
		return f.listSpots()
	case f.pins != "":
		return f.fromPins()
	case f.saw != "":
		return f.sawOne()
	case f.floor != "":
		return f.fromFloor()
	case f.back > 0:
		return f.alter(fitting.Back(f.s.Job, f.back))
	case f.again > 0:
		day, err := f.day()
		if err != nil {
			return err
		}
		return f.alter(fitting.Again(f.s.Job, f.again, day))
	case f.settle > 0:
		return f.alter(fitting.Settle(f.s.Job, f.settle))
	case f.cmp > 0:
		return f.compared()
	case f.newSet:
		return f.begin()
	case f.months:
		return f.overMonths()
	}
	return f.list()
}

// one refuses a call that asks for two things at once.
func (f *fit) one() error {
	var asked []string
	for _, x := range []struct {
		name string
		on   bool
	}{
		{"--signs", f.signs},
		{"--spots", f.spots},
		{"--pins", f.pins != ""},
		{"--saw", f.saw != ""},
		{"--floor", f.floor != ""},
		{"--compare", f.cmp != 0},
		{"--back", f.back != 0},
		{"--again", f.again != 0},
		{"--settle", f.settle != 0},
		{"--new-set", f.newSet},
		{"--months", f.months},
	} {
		if x.on {
			asked = append(asked, x.name)
		}
	}
	switch {
	case len(asked) > 1:
		return refuse("fit", strings.Join(asked, " and "), "they are two things", "ask for one after the other")
	case f.saw == "" && f.way != 0:
		return refuse("--way", strconv.Itoa(f.way), "it chooses among the cures of a sign", "name the sign with --saw")
	case f.floor == "" && f.want != "":
		return refuse("--wanted", measure.Quoted(f.want), "it goes with readings from the floor", "name them with --floor")
	}
	return nil
}

// day is the day of the fitting.
func (f *fit) day() (pattern.Date, error) {
	t := time.Now()
	if f.date != "" {
		var err error
		if t, err = time.Parse(time.DateOnly, f.date); err != nil {
			return pattern.Date{}, refuse("--date", measure.Quoted(f.date), "this is no date", "write a date like 2026-03-20")
		}
	}
	return pattern.Date{Year: t.Year(), Month: int(t.Month()), Day: t.Day()}, nil
}

// length reads one length of an option in the session's unit.
func (f *fit) length(option, text string) (measure.Length, error) {
	l, err := measure.Read(text, f.u)
	if err != nil {
		return 0, notRead(&measure.Refusal{Where: option, Wrong: dot(err.Error())})
	}
	return l, nil
}

func (f *fit) sawOne() error {
	sign, ok := fitting.Find(f.saw)
	if !ok {
		works := "chalkfold fit FILE --signs lists them"
		if like := session.Nearest(f.saw, signIDs()); like != "" {
			works = "did you mean " + like + "?"
		}
		return refuse("--saw", measure.Quoted(f.saw), "there is no such sign", works)
	}
	if err := f.w.whole(f.path, f.sheet); err != nil {
		return err
	}
	pinned := sign.Usual
	if f.by != "" {
		var err error
		if pinned, err = f.length("--by", f.by); err != nil {
			return err
		}
	} else if f.keep {
		return refuse("--keep", "no amount", "what was pinned is not known", "name it with --by")
	}
	ways := fitting.Propose(f.sheet, sign, pinned)
	if f.way < 0 || f.way > len(ways) {
		return refuse("--way", strconv.Itoa(f.way), "there is no such cure", "take one of 1 to "+strconv.Itoa(len(ways)))
	}
	if !f.keep {
		if f.w.json {
			f.w.print(f.waysDocument(ways).text())
		} else {
			f.w.print(f.waysText(sign, ways))
		}
		return nil
	}
	at := max(f.way-1, 0)
	for f.way == 0 && at < len(ways)-1 && !ways[at].Possible() {
		at++
	}
	return f.take(ways[at])
}

func (f *fit) fromFloor() error {
	parts := parted(f.floor)
	if len(parts) != 3 {
		return refuse("--floor", measure.Quoted(f.floor), "it wants three readings with commas: front, side, back", `write it like "16, 15 1/2, 15 3/4"`)
	}
	var r fitting.Readings
	var err error
	for i, into := range []*measure.Length{&r.Front, &r.Side, &r.Back} {
		if *into, err = f.length("--floor", strings.TrimSpace(parts[i])); err != nil {
			return err
		}
	}
	if f.want != "" {
		if r.Wanted, err = f.length("--wanted", f.want); err != nil {
			return err
		}
	}
	if err := f.w.whole(f.path, f.sheet); err != nil {
		return err
	}
	p, err := fitting.Level(f.sheet, r)
	if err != nil {
		return notRead(err)
	}
	if f.keep {
		return f.take(p)
	}
	if f.w.json {
		f.w.print(f.waysDocument([]fitting.Proposal{p}).text())
	} else {
		f.w.print(f.proposalText(p))
	}
	return nil
}

// take writes a proposal into the session.
func (f *fit) take(p fitting.Proposal) error {
	if !p.Possible() {
		return notDone(&measure.Refusal{Where: f.path, Read: p.Title, Wrong: p.WhyNot.In(f.u), Works: "another cure, or another amount"})
	}
	day, err := f.day()
	if err != nil {
		return err
	}
	if err := f.save(p.Keep(day)); err != nil {
		return err
	}
	for _, c := range p.Changes {
		f.w.print(c.Says().In(f.u) + " " + f.u.String() + "\n")
	}
	return f.kept()
}

func (f *fit) kept() error {
	f.w.print(plain(f.path) + ": kept; the former is " + plain(f.path) + "~\n")
	f.w.say("what moved: chalkfold export %s --format moved --before %s~", f.path, f.path)
	return nil
}

// save writes the job into the session's file.
func (f *fit) save(job pattern.Job) error {
	if f.path == "-" {
		return refuse("--keep", "standard input", "it is no file to write to", "name the session's file")
	}
	err := f.s.Save(job)
	if f.w.force {
		err = f.s.SaveOver(job)
	}
	if err != nil {
		return notDone(err)
	}
	return nil
}

// alter shows, or keeps, the log after one of its entries was turned.
func (f *fit) alter(job pattern.Job, err error) error {
	if err != nil {
		return notDone(&measure.Refusal{Where: f.path, Wrong: err.Error()})
	}
	if !f.keep {
		f.w.print(f.logText(job))
		f.w.say("nothing is written yet; --keep writes it")
		return nil
	}
	if err := f.save(job); err != nil {
		return err
	}
	f.w.print(f.logText(job))
	return f.kept()
}

func (f *fit) compared() error {
	job, err := fitting.Before(f.s.Job, f.cmp)
	if err != nil {
		return notDone(&measure.Refusal{Where: f.path, Wrong: err.Error()})
	}
	a := side{"without alteration " + strconv.Itoa(f.cmp), workroom.Draft(job)}
	b := side{f.path, f.sheet}
	if f.w.json {
		f.w.print(compareDocument(a, b, f.w.jsonUnit()).text())
	} else {
		f.w.print(compareText(a, b, f.u))
	}
	return nil
}

func (f *fit) begin() error {
	day, err := f.day()
	if err != nil {
		return err
	}
	job, err := fitting.NewSet(f.s.Job, day)
	if err != nil {
		return notDone(&measure.Refusal{Where: f.path, Wrong: err.Error()})
	}
	if !f.keep {
		f.w.say("%d measurements would be put under [[earlier]]; --keep writes it", job.Body.Len())
		return nil
	}
	if err := f.save(job); err != nil {
		return err
	}
	f.w.print("A new set begins; " + strconv.Itoa(job.Body.Len()) + " measurements are kept under [[earlier]]. Take each anew.\n")
	return f.kept()
}
