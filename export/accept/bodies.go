package accept

import (
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
)

// dressed is the body of [Dress], larger or smaller in every measure, with a
// name, notes and choices of its own.
func dressed(scale float64, client pattern.Client, choices map[pattern.ChoiceID]pattern.Value) pattern.Job {
	job := Dress(pattern.Measured).Job
	for _, id := range job.Body.IDs() {
		l, _ := job.Body.Get(id)
		job.Body = job.Body.With(id, measure.Length(scale*l.MM()).Near(measure.Millimetre/2))
	}
	job.Client = client
	job.Style = pattern.NewStyle(choices)
	return job
}

// Styles are choices that change what leaves: which pieces there are, darts,
// closures, openings.
func Styles() []map[pattern.ChoiceID]pattern.Value {
	var out []map[pattern.ChoiceID]pattern.Value
	for _, picks := range []map[pattern.ChoiceID]string{
		{},
		{pattern.Method: pattern.Thumb},
		{"bust_dart": "shoulder", "waist_shaping": "fisheye", "facing": "all_in_one", "hem_opening": "vent"},
		{"panel_seam": "shoulder", "closure": "zip_side", "hem_opening": "none", "facing": "bias"},
		{"front_neckline": "keyhole", "closure": "none", "bust_dart": "armhole"},
		{"waist_shaping": "two_back", "bust_dart": "french", "hem_opening": "kick_pleat", "skirt_line": "a_line"},
	} {
		style := map[pattern.ChoiceID]pattern.Value{}
		for id, pick := range picks {
			style[id] = pattern.PickValue(pick)
		}
		out = append(out, style)
	}
	return out
}

// Odd is a dress of an odd client: her size to that of [Dress], what she is
// called and what is noted of her, and the number of one of [Styles].
func Odd(scale float64, name, notes string, style int) *pattern.Sheet {
	styles := Styles()
	client := pattern.Client{Name: name, Notes: notes, Shoes: notes, Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}}
	return workroom.Draft(dressed(scale, client, styles[(style%len(styles)+len(styles))%len(styles)]))
}

// Names are names that writers stumble over: quotes and brackets of every
// format, both directions of writing, letters made of several, none that any
// face has, and far too long ones.
func Names() []string {
	long := make([]rune, 10_000)
	for i := range long {
		long[i] = rune('a' + i%26)
	}
	return []string{
		"", "Learner Four", `"O'Hara" & <b>sons</b>`, "</script><script>alert(1)</script>", "]]><!-- -->", `100 % (net) \par /Title`,
		"Đặng Thị Ngọc Ánh", "Ελένη Παπαδοπούλου", "שרה לוי", "محمد \u202eabc\u202c", "e\u0301\u0323\u0308\u0301\u0301\u0301\u0301", "👗👩🏽‍🦰 Zoë",
		"\xff\xfe broken", "a\nb\tc\r\n# d\n| e |", "\x00\x1b[31mred", "_*`[x](y)|#", string(long), "\u00a0\u2003", "%s%d%!", "{}", "\ufffe\uffff\U0010ffff",
	}
}

// Extremes are the smallest and the largest of these bodies that still draft.
func Extremes(style int) (least, most float64) {
	drafts := func(scale float64) bool {
		s := Odd(scale, "", "", style)
		return s.Complete && len(s.Pieces) > 0
	}
	least, most = 1, 1
	for k := 0.97; k > 0.2 && drafts(k); k -= 0.03 {
		least = k
	}
	for k := 1.05; k < 3 && drafts(k); k += 0.05 {
		most = k
	}
	return least, most
}
