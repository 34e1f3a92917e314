package shell

import (
	"errors"
	"fmt"
	"io"
	"math"
	"time"

	"chalkfold/measure"
	"chalkfold/pattern/lay"
	"chalkfold/ui/files"
	"chalkfold/ui/text"
)

// outlinesLimit is the size of a file of outlines that is read.
const outlinesLimit = 32 << 20

// layPieces lays a file of outlines.
func (w *world) layPieces(o layCall) error {
	p, err := w.readPieces(o)
	if err != nil {
		return err
	}
	options := lay.Options{Evaluations: o.evaluations.or(usualEvaluations)}
	if o.seconds > 0 {
		end := time.Now().Add(time.Duration(float64(o.seconds) * float64(time.Second)))
		options.Evaluations = mostEvaluations
		options.Stop = func() bool { return time.Now().After(end) }
	}
	if n := p.Pieces(); n > mostLaidOut {
		w.say("%s: %d pieces; above %d the first lay is all", o.pieces, n, mostLaidOut)
	}
	found, err := lay.Solve(p, options)
	if err != nil {
		return notDone(inFile(o.pieces, err))
	}
	if w.json {
		name := p.Name
		if name == "" {
			name = "outlines"
		}
		w.print(scale{w.jsonUnit()}.layDocument(name, p, found, func(lay.Item) string { return o.pieces }).text())
		return nil
	}
	w.print(piecesLaid(p, found, o.pieces, w.inUnit(measure.Mm)))
	return nil
}

// mostLaidOut is how many pieces are searched for.
const mostLaidOut = 500

func (w *world) readPieces(o layCall) (lay.Problem, error) {
	var data []byte
	var err error
	name := o.pieces
	if name == "-" {
		name = "standard input"
		data, err = io.ReadAll(io.LimitReader(w.in, outlinesLimit+1))
	} else {
		data, _, err = files.Read(name, outlinesLimit)
	}
	if err != nil {
		return lay.Problem{}, notRead(err)
	}
	p, err := lay.ReadPieces(data)
	if err != nil {
		return p, notRead(inFile(name, err))
	}
	if o.width.text != "" {
		width := o.width.length(w.jsonUnit())
		p.Cloth.Width = int64(math.Floor(width.MM()*lay.PerMM + 0.5))
		if err := p.Check(); err != nil {
			return p, notRead(inFile(name, err))
		}
	}
	return p, nil
}

// inFile puts the file before the place of a refusal.
func inFile(name string, err error) error {
	var r *measure.Refusal
	if !errors.As(err, &r) {
		return fmt.Errorf("%s: %w", name, err)
	}
	in := *r
	if in.Where = name; r.Where != "" {
		in.Where += ": " + r.Where
	}
	return &in
}

// piecesLaid is the lay of a file of outlines for people.
func piecesLaid(p lay.Problem, l lay.Lay, file string, u measure.Unit) string {
	var out page
	title := p.Name
	if title == "" {
		title = file
	}
	out.line(plain(title), ": ", fmt.Sprint(p.Pieces()), " pieces on cloth ", u.Say(mmOf(p.Cloth.Width)), " wide")
	out.line("Length ", u.Say(mmOf(l.Length)), ", ", number{l.Density, 2}.String(), " per cent used, ", text.Count(l.Evaluations), " evaluations")
	if l.First {
		out.line("This is a first lay.")
	}
	out.line()
	for _, s := range lay.Say(p, l) {
		out.para("", plain(s.In(u)))
	}
	return out.String()
}
