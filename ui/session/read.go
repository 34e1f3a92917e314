package session

import (
	"fmt"
	"maps"
	"slices"
	"sort"
	"strings"
	"time"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// Form is the form of session files that this reads and writes.
const Form = 1

// reader turns the tree of a file into a Job and keeps every fault.
type reader struct {
	source
	doc      map[string]any
	layout   *layout
	faults   []placed
	warnings []string
	job      pattern.Job
	lesson   map[string]int
	stated   map[string]bool // lengths written with a unit of their own, by path
}

// placed is a fault with its offset, to put them in the order of the file.
type placed struct {
	at    int
	fault *measure.Refusal
}

// all reads every table. The order is that of dependence: lengths need the
// unit, choices need the garment.
func (r *reader) all() {
	r.form()
	r.unit()
	r.client()
	r.job.Body = r.body("body")
	r.job.Left = r.body("body_left")
	r.style()
	r.job.Confirmed = r.body("confirmed")
	r.cloths()
	r.lays()
	r.fittings()
	r.earlier()
	r.lessons()
	r.tables()
}

// mostFaults is how many faults of one file are noted; nobody reads more.
const mostFaults = 200

// refuse notes a fault at a path; what was read is the source's own words.
func (r *reader) refuse(path []string, wrong, works string) {
	if len(r.faults) >= mostFaults {
		return
	}
	at := r.layout.place(path)
	read := strings.Join(path, ".")
	if e, ok := r.layout.find(path); ok {
		read += " = " + r.shown(e)
	}
	r.faults = append(r.faults, placed{at, &measure.Refusal{Where: r.at(at), Read: measure.Shown(read), Wrong: wrong, Works: works}})
}

// shown is a value as it stands in the file, its first line.
func (r *reader) shown(e entry) string {
	text := string(r.text[e.value:max(e.value, min(e.end, len(r.text)))])
	line, _, _ := strings.Cut(text, "\n")
	return strings.TrimSpace(line)
}

func (r *reader) form() {
	v, ok := r.doc["form"]
	if !ok {
		for _, name := range append([]string{"unit"}, tableNames...) {
			if _, known := r.doc[name]; known {
				return
			}
		}
		r.faults = append(r.faults, placed{0, &measure.Refusal{
			Where: r.name, Read: "no form and none of its tables",
			Wrong: "this is no session of Chalkfold", Works: "chalkfold new writes one to fill in",
		}})
		return
	}
	n, ok := v.(int64)
	switch {
	case !ok:
		r.refuse([]string{"form"}, "the form is a whole number", "write form = 1")
	case n > Form:
		r.refuse([]string{"form"}, fmt.Sprintf("this file has form %d and this Chalkfold reads form %d", n, Form),
			"use the newer Chalkfold that wrote it")
	case n < 1:
		r.refuse([]string{"form"}, fmt.Sprintf("there is no form %d", n), "write form = 1")
	}
}

func (r *reader) unit() {
	v, ok := r.doc["unit"]
	if !ok {
		return
	}
	text, ok := v.(string)
	if !ok {
		r.refuse([]string{"unit"}, "the unit is a word in quotes", `write unit = "in", "cm" or "mm"`)
		return
	}
	u, err := measure.ParseUnit(text)
	if err != nil {
		r.refuse([]string{"unit"}, "that is no unit of the tape", `write unit = "in", "cm" or "mm"`)
		return
	}
	r.job.Unit = u
}

func (r *reader) client() {
	t, ok := r.table("client")
	if !ok {
		return
	}
	c := &r.job.Client
	c.Name = r.name1(t, "client", "name")
	c.MeasuredBy = r.name1(t, "client", "measured_by")
	c.Shoes = r.name1(t, "client", "shoes")
	c.Notes = r.notes(t, "client", "notes")
	c.Measured = r.date(t, "client", "measured")
	r.near(t, []string{"client"}, []string{"name", "measured", "measured_by", "shoes", "notes"})
}

// body reads a table of measurements.
func (r *reader) body(path ...string) measure.Body {
	var b measure.Body
	t, ok := r.tableAt(path...)
	if !ok {
		return b
	}
	known := make([]string, 0, len(t))
	for _, m := range measure.All() {
		id := string(m.ID)
		known = append(known, id)
		if v, ok := t[id]; ok {
			if l, ok := r.tape(v, append(path, id)...); ok && r.check(m.ID, l, append(path, id)...) {
				b = b.With(m.ID, l)
			}
		}
	}
	r.near(t, path, known)
	return b
}

// check holds a measurement against what a body can have.
func (r *reader) check(id measure.ID, l measure.Length, path ...string) bool {
	var fault *measure.Refusal
	if err := measure.Check(id, l); err == nil {
		return true
	} else if asRefusal(err, &fault) {
		r.refuse(path, fault.Wrong, fault.Works)
	}
	return false
}

// longestLength bounds every length that is not taken on a body.
const longestLength = 100_000 * measure.Millimetre

// length reads a length that is not taken on a body.
func (r *reader) length(v any, path ...string) (measure.Length, bool) {
	l, ok := r.tape(v, path...)
	if ok && l > longestLength {
		r.refuse(path, "that is longer than a bolt of cloth", `write it like "36 1/2" or "92.5 cm"`)
		return 0, false
	}
	return l, ok
}

// tape reads a length that is text or a number.
func (r *reader) tape(v any, path ...string) (measure.Length, bool) {
	text, ok := lengthText(v)
	if !ok {
		r.refuse(path, "a length is text in quotes or a number", `write it like "36 1/2" or "92.5 cm"`)
		return 0, false
	}
	reading, err := measure.ReadAll(text, r.job.Unit)
	if err != nil {
		var fault *measure.Refusal
		if asRefusal(err, &fault) {
			r.refuse(path, fault.Wrong, fault.Works)
		} else {
			r.refuse(path, err.Error(), `write it like "36 1/2" or "92.5 cm"`)
		}
		return 0, false
	}
	r.stated[joined(path)] = reading.Stated
	return reading.Length, true
}

// table is a top table of the file.
func (r *reader) table(name string) (map[string]any, bool) { return r.tableAt(name) }

// tableAt follows a path of tables and lists of tables.
func (r *reader) tableAt(path ...string) (map[string]any, bool) {
	v, ok := lookup(r.doc, path)
	if !ok {
		return nil, false
	}
	t, ok := v.(map[string]any)
	if !ok {
		names := slices.DeleteFunc(slices.Clone(path), func(p string) bool { return p != "" && p[0] >= '0' && p[0] <= '9' })
		head := "[" + strings.Join(names, ".") + "]"
		r.refuse(path, "this is a table", "write "+head+" on a line of its own and its keys below")
	}
	return t, ok
}

// tables warns of top tables that look like ours by a slip of the pen.
func (r *reader) tables() { r.near(r.doc, nil, append([]string{"form", "unit"}, tableNames...)) }

// tableNames are the tables of a session, without what later forms may add.
var tableNames = []string{"client", "body", "body_left", "style", "confirmed", "cloth", "lay", "fitting", "earlier", "lesson"}

// near notes keys that are not known and look like one that is.
func (r *reader) near(t map[string]any, path, known []string) {
	looked := 0
	for _, key := range slices.Sorted(maps.Keys(t)) {
		if slices.Contains(known, key) {
			continue
		}
		if looked++; looked > 200 || len(r.warnings) >= 20 {
			return
		}
		if like := Nearest(key, known); like != "" {
			if _, there := t[like]; there {
				continue
			}
			full := append(slices.Clone(path), key)
			r.warnings = append(r.warnings, fmt.Sprintf("%s: %s is kept but says nothing to Chalkfold; did you mean %s?",
				r.at(r.layout.place(full)), measure.Quoted(strings.Join(full, ".")), like))
		}
	}
}

// errors are the faults in the order of the file.
func (r *reader) refusals() []*measure.Refusal {
	sort.SliceStable(r.faults, func(i, j int) bool { return r.faults[i].at < r.faults[j].at })
	out := make([]*measure.Refusal, len(r.faults))
	for i, f := range r.faults {
		out[i] = f.fault
	}
	return out
}

// date reads a day: a TOML date, or the same in quotes.
func (r *reader) date(t map[string]any, path ...string) pattern.Date {
	v, ok := t[path[len(path)-1]]
	if !ok || v == "" {
		return pattern.Date{}
	}
	day, ok := v.(time.Time)
	if text, isText := v.(string); isText {
		var err error
		day, err = time.Parse(time.DateOnly, text)
		ok = err == nil
	}
	if !ok {
		r.refuse(path, "this is no date", "write a date like 2026-03-04")
		return pattern.Date{}
	}
	return pattern.Date{Year: day.Year(), Month: int(day.Month()), Day: day.Day()}
}
