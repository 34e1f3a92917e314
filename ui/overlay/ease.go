package overlay

import (
	"chalkfold/pattern/truing"
	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// easeCells is how wide the picture of a level is.
const easeCells = 25

// Ease shows body, garment and ease level by level, from the shoulders to the
// hem, against what is good there.
func Ease(d *desk.Desk) desk.Overlay {
	u := d.Unit()
	b := &board{d: d, title: d.Tell(text.EaseTitle), how: text.ReadHow, says: []string{d.Tell(text.EaseSays)}, reads: true}
	table := truing.EaseTable(d.Sheet())
	if len(table) == 0 {
		b.says = append(b.says, d.Tell(text.EaseNone))
	}
	c := comparison{d: d}
	heads := d.Tell(text.EaseLevels)
	rows := []row{{group: heads, right: c.cells(d.Tell(text.EaseBody), d.Tell(text.EaseGarment), d.Tell(text.EaseEase)) + "  " + d.Tell(text.EaseBar)}}
	for _, r := range table {
		rows = append(rows, row{
			group: heads, title: d.Trade(r.Level),
			right: c.cells(u.Tape(r.Body), u.Tape(r.Garment), u.Tape(r.Ease())) + "  " + r.Bar(easeCells) + " " + d.Trade(r.Says()),
		})
	}
	b.rows = func(string) []row { return rows }
	return b
}
