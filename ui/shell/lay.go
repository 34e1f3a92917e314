package shell

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/laid"
	"chalkfold/pattern/lay"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

// layCall are the options of lay.
type layCall struct {
	cloth       string
	fold        string
	evaluations countValue
	seconds     secondsValue
	remnant     string
	widths      bool
	pieces      string
	width       lengthValue
}

// usualEvaluations is how long a lay is searched for where nothing is said.
const usualEvaluations = 3_000_000

func layCommand(w *world) *cobra.Command {
	var o layCall
	c := &cobra.Command{
		Use: "lay FILE...", Short: "how much cloth to buy, and where each piece lies", ValidArgsFunction: sessions,
		Long: "Lays the pieces of one or more sessions on a cloth and says how much to buy,\nwhere each piece lies by tape, what decides the length and what is left over.\nSeveral sessions share the cloth of the first. The same call gives the same lay:\nevaluations are counted, not seconds.\n\n" +
			"With --pieces it lays a plain JSON file of outlines: name, width, unit, turn and\npieces, each with id, count and outline.",
		Example: "  chalkfold lay four.chalkfold.toml\n  chalkfold lay four.chalkfold.toml --remnant \"60 x 45\"\n  chalkfold lay four.chalkfold.toml five.chalkfold.toml --widths\n  chalkfold lay --pieces shirts.json --seconds 10 --json",
		RunE: func(c *cobra.Command, args []string) error {
			if err := o.check(c, args); err != nil {
				return err
			}
			if o.pieces != "" {
				return w.layPieces(o)
			}
			return w.layFiles(args, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.cloth, "cloth", laid.Main, "the cloth to lay: main, lining, interfacing")
	f.StringVar(&o.fold, "fold", "", "fold it otherwise than the session says: lengthwise, flat,\nto_middle, off_centre, across")
	f.Var(&o.evaluations, "evaluations", "how long to search; the usual is 3000000")
	f.StringVar(&o.remnant, "remnant", "", "is this piece enough? length along the grain x width: \"60 x 45\"")
	f.BoolVar(&o.widths, "widths", false, "what other widths of cloth would take")
	f.StringVar(&o.pieces, "pieces", "", "a JSON file of outlines instead of sessions")
	f.Var(&o.width, "width", "with --pieces: the width of the cloth")
	f.Var(&o.seconds, "seconds", "with --pieces: search for so long instead of a count")
	w.completes(c, "cloth", "main", "lining", "interfacing")
	w.completes(c, "fold", lay.Folds...)
	return w.share(c, flagUnit|flagJSON)
}

// check refuses calls that ask for two things at once.
func (o layCall) check(c *cobra.Command, args []string) error {
	with := func(name string) bool { return c.Flags().Changed(name) }
	if o.pieces == "" {
		for _, name := range []string{"width", "seconds", "pieces"} {
			if with(name) {
				return refuse("lay", "--"+name, "that goes with a file of outlines", "name one with --pieces")
			}
		}
		if with("fold") && !slices.Contains(lay.Folds, o.fold) {
			return refuse("lay", "--fold "+measure.Quoted(o.fold), "no cloth is folded so", "lengthwise, flat, to_middle, off_centre or across")
		}
		if with("remnant") && o.widths {
			return refuse("lay", "--remnant and --widths", "a remnant has one width", "leave one of them out")
		}
		return wants(1, 1000, "session file")(c, args)
	}
	for _, name := range []string{"cloth", "fold", "remnant", "widths"} {
		if with(name) {
			return refuse("lay", "--"+name+" and --pieces", "that goes with sessions", "leave one of them out")
		}
	}
	switch {
	case len(args) > 0:
		return refuse("lay", args[0]+" and --pieces", "outlines and sessions are not laid together", "leave one of them out")
	case with("evaluations") && with("seconds"):
		return refuse("lay", "--evaluations and --seconds", "the search ends by one of them", "leave one of them out")
	}
	return nil
}

// laying is one call of lay on sessions.
type laying struct {
	*world
	laid.Work
	call   layCall
	search laid.Search
	files  []string // of the sheets
	unit   measure.Unit
}

func (w *world) layFiles(args []string, o layCall) error {
	var sheets []*pattern.Sheet
	var files []string
	dashes, failed := 0, 0
	for _, a := range args {
		if a == "-" {
			if dashes++; dashes > 1 {
				return refuse("lay", "- and -", "standard input can be read once", "name a file for one of them")
			}
		}
		_, sheet, err := w.draft(a)
		if err == nil {
			w.notes(sheet)
			err = w.whole(a, sheet)
		}
		if err != nil {
			if len(args) == 1 {
				return err
			}
			w.tell(err)
			failed++
			continue
		}
		sheets, files = append(sheets, sheet), append(files, a)
	}
	if failed > 0 {
		w.status = NotDone
	}
	if len(sheets) == 0 {
		return notDone(errors.New("none of the sessions can be laid"))
	}
	l := &laying{world: w, call: o, files: files, unit: w.inUnit(sheets[0].Job.Unit), search: laid.Search{Evaluations: o.evaluations.or(usualEvaluations)}}
	var err error
	if l.Work, err = laid.New(sheets, o.cloth); err == nil && o.fold != "" {
		l.Work, err = l.Folded(o.fold)
	}
	if err != nil {
		return notDone(err)
	}
	if len(sheets) > 1 {
		l.Work = l.Whose(owners(sheets, files))
	}
	l.sayCloth()
	if len(args) > 1 {
		w.say("%d of %d sessions are laid on one cloth", len(sheets), len(args))
	}
	if o.remnant != "" {
		return l.onRemnant()
	}
	return l.run()
}

// owners are the names of the clients; of their files, where names are lacking
// or the same.
func owners(sheets []*pattern.Sheet, files []string) []string {
	seen := map[string]bool{}
	var names []string
	for _, s := range sheets {
		n := strings.TrimSpace(plain(s.Job.Client.Name))
		if n == "" || seen[n] {
			names = nil
			break
		}
		seen[n] = true
		names = append(names, n)
	}
	if names != nil {
		return names
	}
	for _, f := range files {
		names = append(names, plain(session.Stem(f)))
	}
	return names
}

// sayCloth says what was taken where the session says nothing, and where the
// other sessions have another cloth.
func (l *laying) sayCloth() {
	c, u := l.Cloth, l.unit
	if !l.Named {
		l.say("%s: no width of the %s cloth; taken as %s wide, each selvage %s, %s", l.files[0], c.Name, u.Say(c.Width), u.Say(c.Edges), laid.Folds(c))
	}
	for i, s := range l.Sheets[1:] {
		if other, named := laid.ClothOf(s.Job, c.Name); named && !sameCloth(other, c) {
			l.say("%s: its %s cloth is another, %s wide, %s; laid on that of %s", l.files[i+1], c.Name, u.Say(other.Width), laid.Folds(other), l.files[0])
		}
	}
}

// sameCloth says whether two cloths are the same to lay on.
func sameCloth(a, b pattern.Cloth) bool {
	a.Price, b.Price = 0, 0
	return fmt.Sprint(a) == fmt.Sprint(b)
}

// run lays the pieces and says all about it.
func (l *laying) run() error {
	var from []lay.Placed // the lay that she kept, to go on from
	if len(l.Sheets) == 1 {
		if k, kept := l.Sheets[0].Job.Lay(l.Cloth.Name); kept {
			l.Work = l.Pinned(k)
			if own, dropped := l.Again(k); len(k.Placed) > 0 && dropped.IsEmpty() {
				from = own.Placed
			}
		}
	}
	found, err := lay.Solve(l.Problem, lay.Options{Evaluations: l.search.Evaluations, From: from})
	if err != nil {
		return notDone(err)
	}
	l.sayKept(found)
	var widths []laid.Width
	if l.call.widths {
		widths = l.Widths(laid.ShopWidths(l.unit, l.Cloth.Width), l.search)
	}
	if l.json {
		l.print(l.document(found, widths).text())
		return nil
	}
	l.print(l.text(found, widths))
	return nil
}

// sayKept compares with the lay that she kept.
func (l *laying) sayKept(found lay.Lay) {
	if len(l.Sheets) > 1 {
		return
	}
	k, kept := l.Sheets[0].Job.Lay(l.Cloth.Name)
	if !kept || len(k.Placed) == 0 {
		return
	}
	own, dropped := l.Again(k)
	switch {
	case !dropped.IsEmpty():
		l.say("%s: %s", l.files[0], dropped.In(l.unit))
	case own.Length <= found.Length:
		l.say("%s: no lay shorter than the one that was kept, %s, was found", l.files[0], l.unit.Say(mmOf(own.Length)))
	}
}

// onRemnant answers whether a remnant is enough.
func (l *laying) onRemnant() error {
	along, across, err := readRemnant(l.call.remnant, l.unit)
	if err != nil {
		return notRead(err)
	}
	fit := l.Remnant(along, across, l.search, workroom.Draft)
	if l.json {
		l.print(l.remnantDocument(fit).text())
	} else {
		l.print(l.remnantText(fit))
	}
	return nil
}

// readRemnant reads "60 x 45": along the grain, then across.
func readRemnant(text string, u measure.Unit) (along, across measure.Length, err error) {
	parts := strings.FieldsFunc(text, func(r rune) bool { return r == 'x' || r == 'X' || r == '×' })
	bad := &measure.Refusal{Where: "--remnant", Read: measure.Quoted(text), Wrong: "a remnant has a length and a width", Works: `write it like "60 x 45": along the grain x across`}
	if len(parts) != 2 {
		return 0, 0, bad
	}
	for i, into := range []*measure.Length{&along, &across} {
		l, err := measure.Read(strings.TrimSpace(parts[i]), u)
		if err != nil || l <= 0 || l > 50_000 {
			return 0, 0, bad
		}
		*into = l
	}
	return along, across, nil
}

// countValue is a count on the command line.
type countValue struct {
	n     int64
	given bool
}

// mostEvaluations is days of searching.
const mostEvaluations = 1_000_000_000_000

func (v *countValue) String() string {
	if !v.given {
		return ""
	}
	return strconv.FormatInt(v.n, 10)
}
func (v *countValue) Type() string { return "n" }
func (v *countValue) Set(text string) error {
	n, err := strconv.ParseInt(strings.ReplaceAll(text, ",", ""), 10, 64)
	if err != nil || n < 0 || n > mostEvaluations {
		return &measure.Refusal{Read: measure.Quoted(text), Wrong: "that is no count of evaluations", Works: "write a whole number from 0, like 3000000"}
	}
	v.n, v.given = n, true
	return nil
}

func (v *countValue) or(usual int64) int64 {
	if v.given {
		return v.n
	}
	return usual
}

// secondsValue is a time on the command line.
type secondsValue float64

func (v *secondsValue) String() string {
	if *v == 0 {
		return ""
	}
	return strconv.FormatFloat(float64(*v), 'g', -1, 64)
}
func (v *secondsValue) Type() string { return "s" }
func (v *secondsValue) Set(text string) error {
	s, err := strconv.ParseFloat(text, 64)
	if err != nil || !(s > 0 && s <= 86_400) {
		return &measure.Refusal{Read: measure.Quoted(text), Wrong: "that is no time to search", Works: "write seconds, more than 0 and at most 86400"}
	}
	*v = secondsValue(s)
	return nil
}
