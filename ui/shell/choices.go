package shell

import (
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/ui/session"
)

func choicesCommand(w *world) *cobra.Command {
	garment, method := pattern.Dress, pattern.Measured
	c := &cobra.Command{
		Use: "choices", Short: "every style choice with default and limits", Args: wants(0, 0, "argument"),
		Long: "Lists the style choices of a garment. Defaults and limits are those of a body\nof which nothing is known; with measures in a session they follow the body.",
		RunE: func(*cobra.Command, []string) error {
			if err := knownGarment(garment); err != nil {
				return err
			}
			if options := methodNames(garment); !contains(options, method) {
				return refuse("--method", measure.Quoted(method), "there is no such method", "write "+strings.Join(options, " or "))
			}
			style := pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{pattern.Garment: pattern.PickValue(garment), pattern.Method: pattern.PickValue(method)})
			sheet := workroom.Draft(pattern.Job{Style: style})
			if w.json {
				w.print(choicesDocument(sheet, w.jsonUnit()).text())
			} else {
				w.print(choicesText(sheet, w.inUnit(measure.In)))
			}
			return nil
		},
	}
	c.Flags().StringVar(&garment, "garment", pattern.Dress, "the garment: "+strings.Join(garmentIDs(), ", "))
	c.Flags().StringVar(&method, "method", pattern.Measured, "the method whose defaults are listed")
	w.completes(c, "garment", garmentIDs()...)
	w.completes(c, "method", methodNames(pattern.Dress)...)
	return w.share(c, flagUnit|flagJSON)
}

// knownGarment refuses a garment that there is not.
func knownGarment(id string) error {
	if contains(garmentIDs(), id) {
		return nil
	}
	works := "write " + strings.Join(garmentIDs(), " or ")
	if like := session.Nearest(id, garmentIDs()); like != "" {
		works = "did you mean " + like + "?"
	}
	return refuse("--garment", measure.Quoted(id), "there is no such garment", works)
}

func garmentIDs() []string {
	var out []string
	for _, g := range workroom.Garments() {
		out = append(out, g.ID)
	}
	return out
}

func choicesDocument(sheet *pattern.Sheet, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	doc.add("garment", sheet.Garment)
	doc.add("method", sheet.Method)
	out := list{}
	for _, c := range workroom.Choices(sheet.Garment) {
		set, _ := sheet.Setting(c.ID)
		o := object{{"id", string(c.ID)}, {"title", c.Title}, {"says", c.Says}, {"default", s.usual(set.Default)}}
		if c.Kind == pattern.KindLength && set.Low < set.High {
			o = append(o, field{"low", s.length(set.Low)}, field{"high", s.length(set.High)})
		} else {
			o = append(o, field{"low", nil}, field{"high", nil})
		}
		options := list{}
		for _, x := range c.Options {
			options = append(options, x.Value)
		}
		o = append(o, field{"kind", c.Kind.String()}, field{"options", options}, field{"group", c.Group}, field{"used", c.UsedBy(sheet.Method)}, field{"because", set.Default.Because.In(u)})
		out = append(out, o)
	}
	doc.add("choices", out)
	return doc
}

// usual is a default for programs; null where it follows measures.
func (s scale) usual(d pattern.Default) any {
	if len(d.Waits) > 0 {
		return nil
	}
	return s.value(d.Value)
}

// value is the value of a choice for programs.
func (s scale) value(v pattern.Value) any {
	switch v.Kind {
	case pattern.KindPick:
		return v.Pick
	case pattern.KindSwitch:
		return v.On
	case pattern.KindCount, pattern.KindPercent:
		return number{v.Number, 4}
	}
	return s.length(v.Length)
}

// valueWords is the same for people.
func valueWords(v pattern.Value, u measure.Unit) string {
	switch v.Kind {
	case pattern.KindPick:
		return spaced(v.Pick)
	case pattern.KindSwitch:
		if v.On {
			return "yes"
		}
		return "no"
	case pattern.KindCount:
		return strconv.Itoa(int(v.Number))
	case pattern.KindPercent:
		return number{v.Number, 1}.String() + " %"
	}
	return u.Say(v.Length)
}

func choicesText(sheet *pattern.Sheet, u measure.Unit) string {
	var p page
	p.line(capital(sheet.Garment), ", method ", sheet.Method, ", lengths in ", u.String())
	groups, members := byGroup(workroom.Choices(sheet.Garment), sheet.Method)
	for _, group := range groups {
		p.line()
		p.line(capital(group))
		for _, c := range members[group] {
			p.choice(c, sheet, u)
		}
	}
	return p.String()
}

// byGroup puts the choices that a method uses together, groups in the order
// in which they first appear.
func byGroup(all []pattern.Choice, method string) (groups []string, members map[string][]pattern.Choice) {
	members = map[string][]pattern.Choice{}
	for _, c := range all {
		if !c.UsedBy(method) {
			continue
		}
		if members[c.Group] == nil {
			groups = append(groups, c.Group)
		}
		members[c.Group] = append(members[c.Group], c)
	}
	return groups, members
}

func (p *page) choice(c pattern.Choice, sheet *pattern.Sheet, u measure.Unit) {
	set, _ := sheet.Setting(c.ID)
	usual := valueWords(set.Default.Value, u)
	if c.Kind == pattern.KindLength {
		usual = u.Tape(set.Default.Value.Length)
	}
	if len(set.Default.Waits) > 0 {
		usual = "by her measures"
	}
	if c.Kind == pattern.KindLength && set.Low < set.High {
		usual += "   (" + u.Tape(set.Low) + " to " + u.Tape(set.High) + ")"
	}
	p.line("  ", string(c.ID), strings.Repeat(" ", max(1, 24-len(c.ID))), usual)
	p.para("      ", c.Says)
	var options []string
	for _, o := range c.Options {
		options = append(options, o.Value)
	}
	if len(options) > 1 {
		p.para("      ", "One of: "+strings.Join(options, ", ")+".")
	}
}
