package shell

import (
	"strings"

	"github.com/spf13/cobra"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

func measurementsCommand(w *world) *cobra.Command {
	c := &cobra.Command{
		Use: "measurements [ID]", Short: "what each is, and how to take it", Args: wants(0, 1, "measurement"),
		ValidArgsFunction: func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
			return measurementIDs(), cobra.ShellCompDirectiveNoFileComp
		},
		Long: "Lists the measurements in the order of taking, or tells all about one.",
		RunE: func(_ *cobra.Command, args []string) error {
			all := measure.All()
			if len(args) == 1 {
				m, ok := measure.Find(measure.ID(args[0]))
				if !ok {
					works := "chalkfold measurements lists them"
					if like := session.Nearest(args[0], measurementIDs()); like != "" {
						works = "did you mean " + like + "?"
					}
					return refuse("measurements", measure.Quoted(args[0]), "there is no measurement of that name", works)
				}
				all = []measure.Measurement{m}
			}
			switch {
			case w.json:
				w.print(measurementsDocument(all, w.jsonUnit()).text())
			case len(args) == 1:
				w.print(measurementText(all[0], w.inUnit(measure.In)))
			default:
				w.print(measurementsText(all))
			}
			return nil
		},
	}
	return w.share(c, flagUnit|flagJSON)
}

func measurementIDs() []string {
	var out []string
	for _, m := range measure.All() {
		out = append(out, string(m.ID))
	}
	return out
}

func measurementsDocument(all []measure.Measurement, u measure.Unit) object {
	s := scale{u}
	doc := s.document()
	out := list{}
	for _, m := range all {
		out = append(out, object{
			{"id", string(m.ID)},
			{"term", m.Term},
			{"standard", m.Standard},
			{"plain", m.Plain},
			{"how", m.How},
			{"slip", m.Slip},
			{"low", s.length(m.Low)},
			{"high", s.length(m.High)},
			{"range_source", m.RangeSource},
			{"needed_for", words(m.NeededFor)},
			{"useful_for", words(m.UsefulFor)},
			{"landmarks", m.Landmarks},
			{"group", m.Group},
		})
	}
	doc.add("measurements", out)
	return doc
}

// measurementsText is a line for each, by groups.
func measurementsText(all []measure.Measurement) string {
	var p page
	var rows [][]string
	group := ""
	flush := func() {
		if len(rows) > 0 {
			p.line(capital(group))
			p.table(rows)
			rows = nil
		}
	}
	for _, m := range all {
		if m.Group != group {
			flush()
			if group != "" {
				p.line()
			}
			group = m.Group
		}
		rows = append(rows, []string{"  " + string(m.ID), m.Plain})
	}
	flush()
	return p.String()
}

// measurementText is all about one.
func measurementText(m measure.Measurement, u measure.Unit) string {
	var p page
	p.line(string(m.ID))
	p.para("  term      ", m.Term)
	p.para("  standard  ", m.Standard)
	p.para("  is        ", m.Plain)
	p.para("  from, to  ", m.Landmarks)
	p.para("  how       ", m.How)
	p.para("  slip      ", m.Slip)
	if m.High > 0 {
		p.para("  usual     ", u.Tape(m.Low)+" to "+u.Say(m.High)+" ("+m.RangeSource+")")
	}
	p.para("  needed    ", strings.Join(m.NeededFor, ", "))
	p.para("  useful    ", strings.Join(m.UsefulFor, ", "))
	return p.String()
}
