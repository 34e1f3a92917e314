package pdf

import (
	"strings"

	"chalkfold/measure"
)

// Paper is a size of paper that printers take, upright.
type Paper struct {
	ID            string
	Title         string
	Width, Height float64 // millimetres
}

// papers: the first is the usual one. It is as wide as A4 and as high as
// Letter, so that it prints true on both.
var papers = []Paper{
	{"a4-letter", "A4 or Letter", 210, 279.4},
	{"a4", "A4", 210, 297},
	{"letter", "Letter", 215.9, 279.4},
	{"legal", "Legal", 215.9, 355.6},
	{"a3", "A3", 297, 420},
	{"tabloid", "Tabloid", 279.4, 431.8},
}

// Papers lists the papers, the usual one first.
func Papers() []Paper { return append([]Paper(nil), papers...) }

// ParsePaper reads the name of a paper, capitals or not; no name is the usual
// one.
func ParsePaper(name string) (Paper, error) {
	if name == "" {
		return papers[0], nil
	}
	var names []string
	for _, p := range papers {
		if strings.EqualFold(p.ID, name) {
			return p, nil
		}
		names = append(names, p.ID)
	}
	return Paper{}, &measure.Refusal{Where: "--paper", Read: measure.Quoted(name), Wrong: "there is no such paper", Works: "choose from " + strings.Join(names, ", ")}
}

// or is the paper, or the usual one where none was named.
func (p Paper) or() Paper {
	if p.Width <= 0 || p.Height <= 0 {
		return papers[0]
	}
	return p
}

// Leaf is the paper on which documents are printed where tiles go on this
// one: large papers and Legal are for patterns alone.
func (p Paper) Leaf() Paper {
	switch p = p.or(); p.ID {
	case "a3":
		return papers[1]
	case "tabloid", "legal":
		return papers[2]
	}
	return p
}
