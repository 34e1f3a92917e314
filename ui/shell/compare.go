package shell

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/lesson"
	"chalkfold/ui/session"
)

func compareCommand(w *world) *cobra.Command {
	var methods string
	c := &cobra.Command{
		Use: "compare FILE [FILE]", Short: "what differs, in numbers: two sessions, or two methods", Args: wants(1, 2, "session file"), ValidArgsFunction: sessions,
		Long:    "Drafts two jobs and lists what differs: measures, choices, and the sewn seams\nand girths that come of them. With one FILE and --method it drafts the same\njob by two methods.",
		Example: "  chalkfold compare before.chalkfold.toml after.chalkfold.toml\n  chalkfold compare four.chalkfold.toml --method thumb,measured",
		RunE: func(_ *cobra.Command, args []string) error {
			a, b, err := w.pair(args, methods)
			if err != nil {
				return err
			}
			u := w.inUnit(a.sheet.Job.Unit)
			if w.json {
				w.print(compareDocument(a, b, w.jsonUnit()).text())
			} else {
				w.print(compareText(a, b, u))
			}
			if err := w.whole(a.name, a.sheet); err != nil {
				return err
			}
			return w.whole(b.name, b.sheet)
		},
	}
	c.Flags().StringVar(&methods, "method", "", "two methods to draft one FILE by: thumb,measured")
	w.endsOn(c, "method", listOf(methodNames(pattern.Dress)...))
	return w.share(c, flagUnit|flagJSON)
}

// side is one of the two that are compared.
type side struct {
	name  string
	sheet *pattern.Sheet
}

func (w *world) pair(args []string, methods string) (a, b side, err error) {
	if methods == "" {
		if len(args) < 2 {
			return a, b, refuse("compare", args[0]+" alone", "it wants two to compare", "name another file, or --method thumb,measured")
		}
		if args[0] == "-" && args[1] == "-" {
			return a, b, refuse("compare", "- and -", "standard input can be read once", "name a file for one of them")
		}
		if _, a.sheet, err = w.draft(args[0]); err != nil {
			return a, b, err
		}
		_, b.sheet, err = w.draft(args[1])
		a.name, b.name = args[0], args[1]
		return a, b, err
	}
	if len(args) > 1 {
		return a, b, refuse("compare", "two files and --method", "one file is drafted by two methods", "leave one of them out")
	}
	s, err := w.open(args[0])
	if err != nil {
		return a, b, err
	}
	names := strings.Split(methods, ",")
	options := methodNames(s.Job.Style.Garment())
	if len(names) != 2 {
		return a, b, refuse("--method", measure.Quoted(methods), "it wants two methods with a comma", "write "+strings.Join(options, ","))
	}
	sides := [2]side{}
	for i, name := range names {
		name = strings.TrimSpace(name)
		if !contains(options, name) {
			works := "write " + strings.Join(options, " or ")
			if like := session.Nearest(name, options); like != "" {
				works = "did you mean " + like + "?"
			}
			return a, b, refuse("--method", measure.Quoted(name), "there is no such method", works)
		}
		sides[i] = side{name, workroom.Draft(s.Job.WithStyle(pattern.Method, pattern.PickValue(name)))}
	}
	return sides[0], sides[1], nil
}

func methodNames(garment string) []string {
	c, ok := workroom.FindChoice(garment, pattern.Method)
	if !ok {
		return []string{pattern.Measured, pattern.Thumb}
	}
	var out []string
	for _, o := range c.Options {
		out = append(out, o.Value)
	}
	return out
}

func contains(all []string, s string) bool {
	for _, a := range all {
		if a == s {
			return true
		}
	}
	return false
}

// difference is one figure of both sides; one may lack it.
type difference struct {
	what       string
	a, b       measure.Length
	inA, inB   bool
	angle      bool
	degA, degB float64
	words      string // of what is no figure
}

// sameLength is the difference below which two drawn lengths count as equal.
const sameLength = 0.05 * measure.Millimetre

// differences lists measures, choices, seams and girths that are not equal.
func differences(a, b *pattern.Sheet) []difference {
	var out []difference
	add := func(what string, la measure.Length, inA bool, lb measure.Length, inB bool) {
		if (inA || inB) && (inA != inB || abs(float64(la-lb)) > float64(sameLength)) {
			out = append(out, difference{what: what, a: la, b: lb, inA: inA, inB: inB})
		}
	}
	for _, m := range measure.All() {
		la, inA := a.Job.Body.Get(m.ID)
		lb, inB := b.Job.Body.Get(m.ID)
		add(m.Term, la, inA, lb, inB)
	}
	for _, c := range workroom.Choices(a.Garment) {
		sa, okA := a.Setting(c.ID)
		sb, okB := b.Setting(c.ID)
		switch okA, okB = okA && sa.Used, okB && sb.Used; {
		case !okA && !okB, a.Method != b.Method && okA != okB:
			// What a method has not is no difference of the dress.
		case c.Kind == pattern.KindLength:
			add(c.Title, sa.Value.Length, okA, sb.Value.Length, okB)
		case okA && okB && sa.Value != sb.Value:
			out = append(out, difference{what: c.Title, words: valueWords(sa.Value, 0) + " and " + valueWords(sb.Value, 0)})
		}
	}
	for _, id := range ownPieces(b) {
		for _, name := range lengthsOf(b, id) {
			da, okA := a.SewnDimension(id, name)
			db, okB := b.SewnDimension(id, name)
			what := spaced(id) + " " + spaced(name)
			if da.Angle || db.Angle {
				if okA && okB && abs(da.Degrees-db.Degrees) > 0.05 {
					out = append(out, difference{what: what, angle: true, degA: da.Degrees, degB: db.Degrees, inA: true, inB: true})
				}
				continue
			}
			add(what, da.Length, okA, db.Length, okB)
		}
	}
	for _, name := range girthNames {
		la, inA := a.Girth(name)
		lb, inB := b.Girth(name)
		add("finished "+name, la, inA, lb, inB)
	}
	return out
}

// says is a difference as a sentence, b against a.
func (d difference) says(u measure.Unit) string {
	switch {
	case d.words != "":
		return d.what + ": " + d.words
	case d.angle:
		return fmt.Sprintf("%s: %s and %s degrees", d.what, number{d.degA, 1}, number{d.degB, 1})
	case !d.inA:
		return fmt.Sprintf("%s: only the second has it, %s", d.what, u.Say(d.b))
	case !d.inB:
		return fmt.Sprintf("%s: only the first has it, %s", d.what, u.Say(d.a))
	}
	way, by := "more", d.b-d.a
	if by < 0 {
		way, by = "less", -by
	}
	if u.Tape(by) == "0" {
		return fmt.Sprintf("%s: %s, a hair %s", d.what, u.Say(d.b), way)
	}
	return fmt.Sprintf("%s: %s and %s, %s %s", d.what, u.Tape(d.a), u.Say(d.b), u.Tape(by), way)
}

func compareDocument(a, b side, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	for _, x := range []struct {
		key string
		side
	}{{"first", a}, {"second", b}} {
		proposed := list{}
		for _, f := range x.sheet.Proposed() {
			proposed = append(proposed, string(f.ID))
		}
		doc.add(x.key, object{{"name", x.name}, {"client", x.sheet.Job.Client.Name}, {"method", x.sheet.Method}, {"complete", x.sheet.Complete}, {"proposed", proposed}})
	}
	all := list{}
	for _, d := range differences(a.sheet, b.sheet) {
		o := object{{"what", d.what}}
		var va, vb, vd any
		switch {
		case d.words != "":
		case d.angle:
			va, vb, vd = degrees(d.degA), degrees(d.degB), degrees(d.degB-d.degA)
		default:
			if d.inA {
				va = s.length(d.a)
			}
			if d.inB {
				vb = s.length(d.b)
			}
			if d.inA && d.inB {
				vd = s.length(d.b - d.a)
			}
		}
		o = append(o, field{"a", va}, field{"b", vb}, field{"difference", vd}, field{"says", d.says(u)})
		all = append(all, o)
	}
	doc.add("differences", all)
	return doc
}

func compareText(a, b side, u measure.Unit) string {
	var p page
	p.line("First:  ", plain(a.name), ", ", heading(a.sheet))
	p.line("Second: ", plain(b.name), ", ", heading(b.sheet))
	for _, x := range []struct {
		which string
		sheet *pattern.Sheet
	}{{"The first", a.sheet}, {"The second", b.sheet}} {
		if names := lesson.Rests(x.sheet); len(names) > 0 {
			p.para("", fmt.Sprintf("%s rests on proposals, not on her tape, for %s.", x.which, strings.Join(names, ", ")))
		}
	}
	p.line()
	all := differences(a.sheet, b.sheet)
	if len(all) == 0 {
		p.line("No difference.")
	}
	for _, d := range all {
		p.line(capital(d.says(u)))
	}
	return p.String()
}
