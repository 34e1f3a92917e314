package session

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// style reads the choices that were made, each against its row in the list of
// its garment. A choice of another method is read all the same: it is kept.
func (r *reader) style() {
	t, ok := r.table("style")
	if !ok {
		return
	}
	garment := r.garment(t)
	known := []string{string(pattern.Garment)}
	for _, c := range workroom.Choices(garment) {
		id := string(c.ID)
		if c.ID == pattern.Garment {
			continue
		}
		known = append(known, id)
		v, ok := t[id]
		if !ok {
			continue
		}
		if value, ok := r.choice(c, v, "style", id); ok {
			r.job = r.job.WithStyle(c.ID, value)
		}
	}
	r.near(t, []string{"style"}, known)
}

// garment is the garment of the style, the dress where none is named or the
// name is none of ours.
func (r *reader) garment(t map[string]any) string {
	v, ok := t[string(pattern.Garment)]
	if !ok {
		return pattern.Dress
	}
	path := []string{"style", string(pattern.Garment)}
	var ids []string
	for _, g := range workroom.Garments() {
		ids = append(ids, g.ID)
	}
	name, isText := v.(string)
	if !isText || !slices.Contains(ids, name) {
		r.refuse(path, "there is no such garment", "write "+quotedList(ids))
		return pattern.Dress
	}
	r.job = r.job.WithStyle(pattern.Garment, pattern.PickValue(name))
	return name
}

// choice reads the value of one choice by its kind.
func (r *reader) choice(c pattern.Choice, v any, path ...string) (pattern.Value, bool) {
	switch c.Kind {
	case pattern.KindPick:
		var options []string
		for _, o := range c.Options {
			options = append(options, o.Value)
		}
		name, ok := v.(string)
		if !ok || !slices.Contains(options, name) {
			r.refuse(path, "that is none of its options", "write "+quotedList(options))
			return pattern.Value{}, false
		}
		return pattern.PickValue(name), true
	case pattern.KindSwitch:
		on, ok := r.bool(v, path...)
		return pattern.SwitchValue(on), ok
	case pattern.KindCount:
		n, ok := r.number(v, 0, 1000, path...)
		if ok && n != math.Trunc(n) {
			r.refuse(path, "this is a whole number", "write it like 3")
			return pattern.Value{}, false
		}
		return pattern.NumberValue(c.Kind, n), ok
	case pattern.KindPercent:
		n, ok := r.number(v, 0, 100, path...)
		return pattern.NumberValue(c.Kind, n), ok
	}
	l, ok := r.length(v, path...)
	if ok && l > longestChoice {
		r.refuse(path, "no garment is that long", `write it like "4 1/2" or "11.5 cm"`)
		return pattern.Value{}, false
	}
	return pattern.LengthValue(l), ok
}

// longestChoice bounds the lengths of a style.
const longestChoice = 4000 * measure.Millimetre

// quotedList is words as one writes them in the file: "a", "b" or "c".
func quotedList(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = strconv.Quote(w)
	}
	if len(quoted) < 2 {
		return strings.Join(quoted, "")
	}
	last := len(quoted) - 1
	return strings.Join(quoted[:last], ", ") + " or " + quoted[last]
}

// clothNames are the cloths of a garment; a session may name others.
var clothNames = []string{"main", "lining", "interfacing"}

// cloths reads [cloth.NAME], those we know first, others by their names.
func (r *reader) cloths() {
	t, ok := r.table("cloth")
	if !ok {
		return
	}
	r.near(t, []string{"cloth"}, clothNames)
	names := slices.Clone(clothNames)
	for _, name := range r.inOrder("cloth", t) {
		if !slices.Contains(names, name) && oneLine(name) == "" && name != "" {
			names = append(names, name)
		}
	}
	for _, name := range names {
		if _, ok := t[name]; !ok {
			continue
		}
		if c, ok := r.tableAt("cloth", name); ok {
			r.job.Cloths = append(r.job.Cloths, r.cloth(name, c))
		}
	}
}

func (r *reader) cloth(name string, t map[string]any) pattern.Cloth {
	c := pattern.Cloth{Name: name}
	path := func(key string) []string { return []string{"cloth", name, key} }
	var known []string
	for _, f := range clothFields {
		known = append(known, f.key)
		v, ok := t[f.key]
		if !ok {
			continue
		}
		p := path(f.key)
		switch {
		case f.length != nil:
			*f.length(&c), _ = r.length(v, p...)
		case f.number != nil:
			*f.number(&c), _ = r.number(v, 0, f.most, p...)
		case f.word != nil:
			if w, ok := v.(string); ok && slices.Contains(f.words, w) {
				*f.word(&c) = w
			} else {
				r.refuse(p, "that is none of its options", "write "+quotedList(f.words))
			}
		}
	}
	if v, ok := t["nap"]; ok {
		c.Nap, _ = r.bool(v, path("nap")...)
	}
	if v, ok := t["flaws"]; ok {
		c.Flaws = r.flaws(v, path("flaws"))
	}
	r.near(t, []string{"cloth", name}, append(known, "nap", "flaws"))
	return c
}

// clothField is one key of a cloth and where it is kept.
type clothField struct {
	key    string
	length func(*pattern.Cloth) *measure.Length
	number func(*pattern.Cloth) *float64
	most   float64
	word   func(*pattern.Cloth) *string
	words  []string
}

// clothFields are the keys in the order of writing; nap and flaws apart.
var clothFields = []clothField{
	{key: "width", length: func(c *pattern.Cloth) *measure.Length { return &c.Width }},
	{key: "edges", length: func(c *pattern.Cloth) *measure.Length { return &c.Edges }},
	{key: "fold", word: func(c *pattern.Cloth) *string { return &c.Fold }, words: clothFolds},
	{key: "shrink_along", number: func(c *pattern.Cloth) *float64 { return &c.ShrinkAlong }, most: 50},
	{key: "shrink_across", number: func(c *pattern.Cloth) *float64 { return &c.ShrinkAcross }, most: 50},
	{key: "repeat_along", length: func(c *pattern.Cloth) *measure.Length { return &c.RepeatAlong }},
	{key: "repeat_across", length: func(c *pattern.Cloth) *measure.Length { return &c.RepeatAcross }},
	{key: "price", number: func(c *pattern.Cloth) *float64 { return &c.Price }, most: 1e9},
	{key: "gap", length: func(c *pattern.Cloth) *measure.Length { return &c.Gap }},
	{key: "step", length: func(c *pattern.Cloth) *measure.Length { return &c.Step }},
	{key: "stripe", word: func(c *pattern.Cloth) *string { return &c.Stripe }, words: []string{"centre", "midway"}},
	{key: "off_grain", number: func(c *pattern.Cloth) *float64 { return &c.OffGrain }, most: 3},
}

// flaws reads lists of four lengths: along, across, length, width.
func (r *reader) flaws(v any, path []string) [][4]measure.Length {
	list, ok := v.([]any)
	if !ok {
		r.refuse(path, "flaws are lists of four lengths", `write flaws = [["10", "4", "1", "1"]]: along, across, length, width`)
		return nil
	}
	var out [][4]measure.Length
	for _, one := range list {
		four, ok := one.([]any)
		if !ok || len(four) != 4 {
			r.refuse(path, "a flaw has four lengths", `write flaws = [["10", "4", "1", "1"]]: along, across, length, width`)
			return nil
		}
		var flaw [4]measure.Length
		for i, l := range four {
			if flaw[i], ok = r.length(l, path...); !ok {
				return nil
			}
		}
		out = append(out, flaw)
	}
	return out
}

// fittings reads [[fitting]].
func (r *reader) fittings() {
	for i := range r.list("fitting") {
		at := []string{"fitting", strconv.Itoa(i)}
		t, ok := r.tableAt(at...)
		if !ok {
			continue
		}
		f := pattern.Fitting{
			Date: r.date(t, at[0], at[1], "date"),
			Seen: r.notes(t, at[0], at[1], "seen"),
			Why:  r.notes(t, at[0], at[1], "why"),
		}
		if _, ok := t["change"]; ok {
			path := append(slices.Clone(at), "change")
			change, _ := r.tableAt(path...)
			for _, key := range r.inOrder(joined(path), change) {
				by, ok := lengthText(change[key])
				if on, isBool := change[key].(bool); isBool {
					by, ok = strconv.FormatBool(on), true
				}
				if !ok || oneLine(by) != "" {
					r.refuse(append(path, key), "a change is text in quotes or a number", `write it like dart_extra = "1/4"`)
					continue
				}
				f.Change = append(f.Change, pattern.Change{Input: key, By: by})
			}
		}
		if v, ok := t["out"]; ok {
			f.Out, _ = r.bool(v, at[0], at[1], "out")
		}
		r.job.Fittings = append(r.job.Fittings, f)
	}
}

// earlier reads [[earlier]].
func (r *reader) earlier() {
	for i := range r.list("earlier") {
		n := strconv.Itoa(i)
		t, ok := r.tableAt("earlier", n)
		if !ok {
			continue
		}
		r.job.Earlier = append(r.job.Earlier, pattern.Earlier{
			Measured: r.date(t, "earlier", n, "measured"),
			Body:     r.body("earlier", n, "body"),
		})
	}
}

// list is the number of elements of a list of tables.
func (r *reader) list(name string) int {
	v, ok := r.doc[name]
	if !ok {
		return 0
	}
	n, isList := listLength(v)
	if !isList {
		r.refuse([]string{name}, "this is a list of tables", "write [["+name+"]] on a line of its own and its keys below")
	}
	return n
}

// lessons reads how far a learner has come.
func (r *reader) lessons() {
	t, ok := r.table("lesson")
	if !ok {
		return
	}
	r.lesson = map[string]int{}
	for id, v := range t {
		n, ok := v.(int64)
		if !ok || n < 0 || n > 1_000_000 {
			r.refuse([]string{"lesson", id}, "this is the number of a question", fmt.Sprintf("write it like %s = 7", plainKey(id)))
			continue
		}
		r.lesson[id] = int(n)
	}
}

// inOrder are the keys of the table at a path in the order of the file.
func (r *reader) inOrder(path string, t map[string]any) []string {
	keys := make([]string, 0, len(t))
	for k := range t {
		keys = append(keys, k)
	}
	place := func(k string) int { return r.layout.place(append(strings.Split(path, "\x00"), k)) }
	slices.SortFunc(keys, func(a, b string) int {
		if d := place(a) - place(b); d != 0 {
			return d
		}
		return strings.Compare(a, b)
	})
	return keys
}
