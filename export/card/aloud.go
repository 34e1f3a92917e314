package card

import (
	"fmt"
	"hash/fnv"
	"strings"
)

// Spoken is a piece of the card in the order in which it is read to her who
// kneels on the cloth: its cutting line, its stitching line, then what is said
// of darts, notches and grain. Key names it by what is read, so that ticks made
// on a card that has changed since are not taken for hers.
type Spoken struct {
	Title string
	Key   string
	Items []Said
	Marks int
}

// Said is one thing to be read out: a mark with its place, or a sentence.
type Said struct {
	Mark   *Place
	Sewing bool   // it lies on the stitching line, else on the cutting line
	Name   string // of the point, or of the edge
	Join   Join
	Aside  bool // a corner to know, not a mark of the line
	Notes  []string
	Says   string // of what is no mark
	Number int    // of a mark, from 1
}

// SpokenKey begins the key of a piece that is read out.
const SpokenKey = "card."

// Aloud puts a piece of the card in the order of reading.
func (p Piece) Aloud() Spoken {
	s := Spoken{Title: p.Title}
	say := func(words ...string) {
		for _, w := range words {
			s.Items = append(s.Items, Said{Says: w})
		}
	}
	say(p.Set...)
	for _, sewing := range [...]bool{false, true} {
		for i := range p.Rows {
			row := &p.Rows[i]
			x := Said{Mark: row.Cut, Sewing: sewing, Name: row.Name, Join: row.Join, Aside: row.AsideCut, Notes: row.Notes}
			if sewing {
				x.Mark, x.Aside = row.Stitch, row.AsideStitch
			}
			if x.Mark == nil {
				continue
			}
			if x.Name == "" {
				x.Name = strings.ReplaceAll(row.Edge, "_", " ")
			}
			s.Marks++
			x.Number = s.Marks
			s.Items = append(s.Items, x)
		}
	}
	say(p.Darts...)
	say(p.Notches...)
	if p.Grain != "" {
		say(p.Grain)
	}
	if len(s.Items) == 0 {
		say(p.Cut)
	}
	s.Key = SpokenKey + string(p.ID) + "." + s.fingerprint()
	return s
}

// fingerprint tells two cards of one piece apart.
func (s Spoken) fingerprint() string {
	h := fnv.New32a()
	for _, i := range s.Items {
		switch line := "cutting line"; {
		case i.Mark == nil:
			fmt.Fprintln(h, i.Says)
		default:
			if i.Sewing {
				line = "stitching line"
			}
			fmt.Fprintf(h, "%s %.3f %.3f\n", line, i.Mark.Down.MM(), i.Mark.Out.MM())
		}
	}
	return fmt.Sprintf("%04x", h.Sum32()>>16^h.Sum32()&0xffff)
}
