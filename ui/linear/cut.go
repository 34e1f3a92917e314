package linear

import (
	"path/filepath"
	"strings"

	"chalkfold/ui/files"
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
	for _, f := range outlet.Formats() {
		r.say(text.HearFormat, f.ID, r.d.Words.Pass(f.Title), r.d.Words.Pass(f.Says))
	}
	r.say(text.CutFolder, sentence(r.folder()))
	r.say(text.HearWriteHow)
}

func (r *room) hintCut() { r.say(text.HearWriteHow) }

// folder is where the session's file is.
func (r *room) folder() string {
	if p := r.d.Path(); p != "" {
		return filepath.Dir(p)
	}
	return "."
}

// writeOut writes formats into a folder: "over svg, card into out".
func (r *room) writeOut(rest string) {
	if !r.d.Sheet().Complete {
		r.notWhole(text.CutEmpty)
		return
	}
	o := outlet.Options{Session: r.d.Unit(), Numbers: session.IsDemo(r.d.Job())}
	if rest == "over" || strings.HasPrefix(rest, "over ") {
		o.Force, rest = true, strings.TrimSpace(strings.TrimPrefix(rest, "over"))
	}
	names, folder, ok := strings.Cut(" "+rest, " into ")
	if !ok {
		folder = r.folder()
	}
	if strings.TrimSpace(names) == "" {
		names = outlet.All
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
