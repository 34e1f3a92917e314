package outlet

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/files"
)

// Result is what became of one file.
type Result struct {
	Path    string
	Format  string // its id
	Outcome files.Outcome
	Bytes   int
	Notes   []string // what the reader should know about the file
	Err     error    // why it was not written
}

// Says is the result in words: "front.svg: written, 12 kB".
func (r Result) Says() string {
	if r.Err != nil {
		return r.Err.Error()
	}
	says := fmt.Sprintf("%s: %s, %s", r.Path, r.Outcome, kilobytes(r.Bytes))
	for _, n := range r.Notes {
		says += "; " + n
	}
	return says
}

func kilobytes(n int) string {
	if n < 1000 {
		return fmt.Sprintf("%d bytes", n)
	}
	return fmt.Sprintf("%d kB", (n+500)/1000)
}

// Progress is told before each file and once more when all are done.
type Progress func(done, total int, path string)

// Export writes the sheet in these formats into a folder, which is made if it
// is not there. Every file has its result, in the order of the formats; an
// error comes alone, before anything is written.
func Export(sheet *pattern.Sheet, stem, folder string, formats []Format, o Options, tell Progress) ([]Result, error) {
	if tell == nil {
		tell = func(int, int, string) {}
	}
	for _, f := range formats {
		if f.early {
			continue
		}
		if err := ready(sheet, stem); err != nil {
			return nil, err
		}
	}
	if err := o.check(); err != nil {
		return nil, err
	}
	formats, err := o.possible(formats)
	if err != nil {
		return nil, err
	}
	if err := files.Folder(folder); err != nil {
		return nil, err
	}
	files.Sweep(folder)
	type job struct {
		format string
		file
	}
	asked := newRequest(sheet, stem, o)
	var jobs []job
	for _, f := range formats {
		for _, out := range f.files(asked) {
			jobs = append(jobs, job{f.ID, out})
		}
	}
	fills := make([]file, len(jobs))
	for i, j := range jobs {
		fills[i] = j.file
	}
	results := make([]Result, len(jobs))
	filled := fillAll(fills)
	for i, j := range jobs {
		path := filepath.Join(folder, j.name)
		tell(i, len(jobs), path)
		results[i] = o.write(path, <-filled[i])
		results[i].Format = j.format
	}
	tell(len(jobs), len(jobs), "")
	return results, nil
}

// possible leaves out what needs a draft before where there is none, and
// refuses it where it was asked for by name.
func (o Options) possible(asked []Format) ([]Format, error) {
	var out []Format
	for _, f := range asked {
		switch {
		case !f.before || o.Before != nil:
			out = append(out, f)
		case !f.inAll:
			return nil, &measure.Refusal{
				Where: "--format", Read: f.ID, Wrong: "no draft before this one is known, so nothing can have moved",
				Works: "name the session before it with --before, or keep her older measures under [[earlier]]",
			}
		}
	}
	return out, nil
}

// write puts a filled file into its folder.
func (o Options) write(path string, f filled) Result {
	r := Result{Path: path, Notes: f.notes, Bytes: len(f.content)}
	if f.broken != nil {
		f.err = &files.Trouble{Path: path, Wrong: fmt.Sprintf("filling it broke off (%v)", f.broken), Works: "nothing was written; the other files are not touched", Err: errBroken}
	}
	if f.err != nil {
		return Result{Path: path, Err: f.err}
	}
	put := o.put
	if put == nil {
		put = files.Put
	}
	r.Outcome, r.Err = put(path, f.content, o.Force)
	return r
}

// errBroken is a fault of ours.
var errBroken = errors.New("broke off")

// ready says why a sheet cannot leave yet: cloth must not be cut from half a
// draft.
func ready(sheet *pattern.Sheet, stem string) error {
	if sheet.Complete && len(sheet.Pieces) > 0 {
		return nil
	}
	r := &measure.Refusal{Where: stem, Read: "a draft that is not complete", Wrong: "there is nothing whole to cut from yet", Works: "run chalkfold draft on it to see what each step waits for"}
	var missing []string
	for _, m := range sheet.Missing {
		missing = append(missing, string(m.ID)+" for "+m.For)
	}
	switch {
	case len(missing) > 0:
		r.Wrong = "it still needs " + strings.Join(missing, ", ")
		r.Works = "measure and enter these"
	case len(sheet.Refused) > 0:
		u := sheet.Job.Unit
		r.Wrong = strings.TrimSuffix(sheet.Refused[0].Says.In(u), ".")
		r.Works = sheet.Refused[0].Cure.In(u)
	}
	return r
}

// Input is one session of a call: its file as it was named, and the stem of
// its outputs.
type Input struct{ File, Stem string }

// Clash refuses inputs whose outputs would have the same names, also where a
// disk that does not tell capitals from small letters would mix them up.
func Clash(inputs []Input) error {
	seen := map[string]string{}
	for _, in := range inputs {
		key := strings.ToLower(strings.ToUpper(in.Stem)) // final sigma and its like too
		if first, twice := seen[key]; twice {
			return &measure.Refusal{
				Where: first + " and " + in.File, Read: "the outputs of both would be called " + in.Stem,
				Wrong: "one would replace the other", Works: "export them one at a time into folders of their own",
			}
		}
		seen[key] = in.File
	}
	return nil
}
