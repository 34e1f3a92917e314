package linear

import (
	"path/filepath"
	"strings"

	"chalkfold/ui/files"
	"chalkfold/ui/lesson"
	"chalkfold/ui/outlet"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

func (r *room) enterCut() {
	s := r.d.Sheet()
	if !s.Complete {
		r.notWhole(text.CutEmpty)
		return
	}
	r.say(text.HearCuttable)
	if n := s.Count("fail"); n > 0 {
		r.say(text.CutFindings, n)
	}
	for _, f := range outlet.Offered(r.outlets()) {
		r.say(text.HearFormat, f.ID, r.d.Words.Pass(f.Title), r.d.Words.Pass(f.Says))
	}
	if f := r.folder(); f == "." {
		r.say(text.HearIntoHere)
	} else {
		r.say(text.CutFolder, sentence(f))
	}
	r.say(text.HearWriteHow)
	r.say(text.HearReadHow)
}

func (r *room) hintCut() { r.say(text.HearWriteHow) }

// folder is where the session's file is.
func (r *room) folder() string {
	if p := r.d.Path(); p != "" {
		return filepath.Dir(p)
	}
	return "."
}

// outlets are what is known for writing: the draft as she was opened too, if
// it is another by now.
func (r *room) outlets() outlet.Options {
	o := outlet.Options{Session: r.d.Unit(), Numbers: session.IsDemo(r.d.Job())}
	if was := r.d.SheetOf(r.drafted(r.d.Opened())); was.Complete && was != r.d.Sheet() {
		o.Before = was
	}
	return o
}

// writeOut writes formats into a folder: "over svg, card into out".
func (r *room) writeOut(rest string) {
	if !r.d.Sheet().Complete {
		r.notWhole(text.CutEmpty)
		return
	}
	o := r.outlets()
	if rest == "over" || strings.HasPrefix(rest, "over ") {
		o.Force, rest = true, strings.TrimSpace(strings.TrimPrefix(rest, "over"))
	}
	names, folder, ok := strings.Cut(" "+rest, " into ")
	if !ok {
		folder = r.folder()
	}
	if strings.TrimSpace(names) == "" {
		names = outlet.All
		if _, _, p, ok := r.sitting(); ok && p.Show.What == lesson.OfOutput {
			names = p.Show.ID
		}
	}
	formats, err := outlet.Parse(names)
	if err != nil {
		r.warn(withoutPlace(err))
		return
	}
	results, err := outlet.Export(r.d.Sheet(), session.Stem(r.d.Path()), files.Expand(strings.TrimSpace(folder)), formats, o, nil)
	if err != nil {
		r.warn(err)
		return
	}
	for _, x := range results {
		r.tell(sentence(x.Says()))
	}
}
