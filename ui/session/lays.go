package session

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"chalkfold/pattern"
)

// mostLaid is how many pieces a kept lay has at most.
const mostLaid = 5000

// layRow is how a piece of a lay is written.
const layRow = `write rows like ["front", 1, "0", "1 1/2", 0, false]: piece, copy, across, along, turn, mirror`

// clothFolds are the ways to fold, of a cloth and of a lay on it.
var clothFolds = []string{"lengthwise", "flat", "to_middle", "off_centre", "across"}

// lays reads [lay.NAME], those of the cloths that we know first. Whether the
// pieces may lie so is not judged here: the draft decides it.
func (r *reader) lays() {
	t, ok := r.table("lay")
	if !ok {
		return
	}
	r.near(t, []string{"lay"}, clothNames)
	names := slices.Clone(clothNames)
	for _, name := range r.inOrder("lay", t) {
		if !slices.Contains(names, name) && oneLine(name) == "" && name != "" {
			names = append(names, name)
		}
	}
	for _, name := range names {
		if _, ok := t[name]; !ok {
			continue
		}
		if l, ok := r.tableAt("lay", name); ok {
			r.job.Lays = append(r.job.Lays, r.lay(name, l))
		}
	}
}

func (r *reader) lay(name string, t map[string]any) pattern.KeptLay {
	l := pattern.KeptLay{Cloth: name}
	path := func(key string) []string { return []string{"lay", name, key} }
	if v, ok := t["width"]; ok {
		l.Width, _ = r.length(v, path("width")...)
	}
	if v, ok := t["fold"]; ok {
		if w, ok := v.(string); ok && slices.Contains(clothFolds, w) {
			l.Fold = w
		} else {
			r.refuse(path("fold"), "that is none of its options", "write "+quotedList(clothFolds))
		}
	}
	if v, ok := t["depth"]; ok {
		l.Depth, _ = r.length(v, path("depth")...)
	}
	if v, ok := t["evaluations"]; ok {
		n, whole := v.(int64)
		if !whole || n < 0 {
			r.refuse(path("evaluations"), "this is a whole number", "write it like 3000000")
		}
		l.Evaluations = max(n, 0)
	}
	if v, ok := t["pins"]; ok {
		l.Pins = r.laid(v, path("pins"))
	}
	if v, ok := t["placed"]; ok {
		l.Placed = r.laid(v, path("placed"))
	}
	r.near(t, []string{"lay", name}, []string{"width", "fold", "depth", "evaluations", "pins", "placed"})
	return l
}

// laid reads the rows of a lay.
func (r *reader) laid(v any, path []string) []pattern.LaidPiece {
	list, ok := v.([]any)
	if !ok {
		r.refuse(path, "a lay is a list of rows", layRow)
		return nil
	}
	if len(list) > mostLaid {
		r.refuse(path, fmt.Sprintf("that is more than %d pieces", mostLaid), "lay fewer at a time")
		return nil
	}
	var out []pattern.LaidPiece
	for _, one := range list {
		p, ok := r.laidPiece(one, path)
		if !ok {
			return nil
		}
		out = append(out, p)
	}
	return out
}

func (r *reader) laidPiece(v any, path []string) (pattern.LaidPiece, bool) {
	bad := func(wrong string) (pattern.LaidPiece, bool) {
		r.refuse(path, wrong, layRow)
		return pattern.LaidPiece{}, false
	}
	row, ok := v.([]any)
	if !ok || len(row) < 6 || len(row) > 7 {
		return bad("a row of a lay has six parts")
	}
	var p pattern.LaidPiece
	id, isText := row[0].(string)
	if !isText || id == "" || oneLine(id) != "" || len(id) > longestName {
		return bad("a row begins with the name of a piece")
	}
	p.Piece = pattern.PieceID(id)
	n, isCount := row[1].(int64)
	if !isCount || n < 1 || n > mostLaid {
		return bad("copies are counted from 1")
	}
	p.Copy = int(n)
	if p.Across, ok = r.length(row[2], path...); !ok {
		return p, false
	}
	if p.Along, ok = r.length(row[3], path...); !ok {
		return p, false
	}
	turn, isTurn := row[4].(int64)
	if !isTurn || turn < 0 || turn >= 360 {
		return bad("a turn is a whole number of degrees from 0 to 359")
	}
	p.Turn = int(turn)
	if p.Mirror, ok = row[5].(bool); !ok {
		return bad("mirror is true or false")
	}
	if len(row) == 7 {
		how, isWord := row[6].(string)
		p.How = pattern.LaidHow(how)
		if !isWord || !slices.Contains([]pattern.LaidHow{pattern.LaidOpened, pattern.LaidWasted, pattern.LaidHalf, pattern.LaidBeside}, p.How) {
			return bad("the seventh part of a row is opened, wasted, half or single")
		}
	}
	return p, true
}

// lay lists what a kept lay says.
func (w *lister) lay(l pattern.KeptLay) {
	path := func(key string) []string { return []string{"lay", l.Cloth, key} }
	if l.Width != 0 {
		w.length(l.Width, path("width")...)
	}
	if l.Fold != "" {
		w.add(quoted(l.Fold), path("fold")...)
	}
	if l.Depth != 0 {
		w.length(l.Depth, path("depth")...)
	}
	if l.Evaluations != 0 {
		w.add(strconv.FormatInt(l.Evaluations, 10), path("evaluations")...)
	}
	w.laid(l.Pins, path("pins"))
	w.laid(l.Placed, path("placed"))
}

func (w *lister) laid(all []pattern.LaidPiece, path []string) {
	rows := make([]string, len(all))
	for i, p := range all {
		row := []string{
			quoted(string(p.Piece)), strconv.Itoa(p.Copy), lengthLiteral(p.Across, w.unit), lengthLiteral(p.Along, w.unit),
			strconv.Itoa(p.Turn), strconv.FormatBool(p.Mirror),
		}
		if p.How != "" {
			row = append(row, quoted(string(p.How)))
		}
		rows[i] = "[" + strings.Join(row, ", ") + "]"
	}
	text := "[" + strings.Join(rows, ", ") + "]"
	if len(rows) > 1 { // a line for each piece: she reads it there
		text = "[\n  " + strings.Join(rows, ",\n  ") + ",\n]"
	}
	w.all = append(w.all, leaf{path: path, literal: text, same: text, length: len(all) > 0})
}
