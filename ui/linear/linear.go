package linear

import (
	"bufio"
	"errors"
	"io"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"time"
	"unicode"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/session"
	"chalkfold/ui/text"
)

// Options of the mode.
type Options struct {
	In      io.Reader
	Out     io.Writer
	Session *session.Session // nil: a new one
	Unit    measure.Unit     // of a new one
	Why     string           // why the mode is on: "--plain", "TERM=dumb"
	Words   text.Catalogue
	Comma   bool             // decimals are written with one
	Now     func() time.Time // nil: time.Now
	Rescues []session.Rescue // unsaved work to offer at the start
}

// Exit statuses of Run.
const (
	Done     = 0
	NotSaved = 1 // the input ended, or she left twice, with unsaved work: it is rescued
)

// room is one run of the mode.
type room struct {
	d       *desk.Desk
	in      *bufio.Reader
	out     *bufio.Writer
	comma   bool // decimals are written with one
	broken  bool // nobody hears any more
	said    []string
	kept    []string  // what was said to the last line
	open    *question // what is asked beside the stage's own
	over    bool
	status  int
	rescues []session.Rescue

	place  // where she stands with the client on the desk
	places map[desk.SeatID]place
	asking bool // Draft: a question before each step
	asked  int  // the step that is asked about; 0: none
	hints  int
	cloth  table // the lay in hand
	page   page  // of the lesson that runs
}

// question takes the next line before anything else. It gives false for a line
// that it leaves to the stage.
type question struct {
	prompt string
	empty  bool // an empty line is an answer too
	hear   func(line string) bool
}

func newRoom(o Options) *room {
	r := &room{in: bufio.NewReaderSize(o.In, lineLimit), out: bufio.NewWriter(o.Out), comma: o.Comma, rescues: own(o.Rescues, o.Session), places: map[desk.SeatID]place{}}
	r.stage = desk.Measure
	r.d = desk.New(desk.Settings{})
	r.d.Words = o.Words
	if o.Now != nil {
		r.d.Now = o.Now
	}
	return r
}

// Run talks until she leaves or the input ends, and gives the exit status.
func Run(o Options) int {
	r := newRoom(o)
	r.take(o.Session, o.Unit)
	r.say(text.LinearMode, o.Why)
	r.whose()
	r.offerRescue()
	if r.open == nil {
		r.enter()
	}
	for !r.over {
		r.flush()
		line, err := r.read()
		switch {
		case err == nil:
			r.hear(line)
		case errors.Is(err, errLong):
			r.say(text.LinearTooLong)
		default:
			r.ended()
		}
		if r.broken {
			r.ended()
		}
	}
	r.flush()
	return r.status
}

// own are the rescue copies to offer: with a file only those of it.
func own(all []session.Rescue, s *session.Session) []session.Rescue {
	if s == nil || s.Path == "" {
		return all
	}
	var out []session.Rescue
	for _, c := range all {
		a, err := filepath.Abs(c.Path)
		b, also := filepath.Abs(s.Path)
		if c.Path != "" && err == nil && also == nil && a == b {
			out = append(out, c)
		}
	}
	return out
}

// take puts a session on the desk; nil is a new one.
func (r *room) take(s *session.Session, u measure.Unit) {
	if s == nil {
		s = session.New("", pattern.Job{Unit: u})
	}
	r.put(desk.Opened{Store: s, Path: s.Path, Saved: s.Job})
}

// whose says who is on the desk.
func (r *room) whose() {
	u := r.unitName(r.d.Unit())
	r.say(text.LinearClient, r.d.Client(), u)
	if p := r.d.Path(); p != "" {
		r.say(text.LinearFile, p)
	} else {
		r.say(text.LinearNoFile)
	}
}

// ended is the end of the input: unsaved work is rescued.
func (r *room) ended() {
	r.over = true
	r.keepAll()
	if len(r.d.AllUnsaved()) == 0 {
		return
	}
	r.status = NotSaved
	r.say(text.LinearEnd, session.RescueDir())
}

// lineLimit is the longest line that is heard.
const lineLimit = 4096

var errLong = errors.New("the line is too long")

// read is the next line without what no keyboard types on purpose. A last line
// without an end counts.
func (r *room) read() (string, error) {
	line, err := r.in.ReadSlice('\n')
	if errors.Is(err, bufio.ErrBufferFull) {
		for errors.Is(err, bufio.ErrBufferFull) {
			_, err = r.in.ReadSlice('\n')
		}
		return "", errLong
	}
	if err != nil && len(line) == 0 {
		return "", err
	}
	clean := strings.Map(func(c rune) rune {
		if c == '\t' {
			return ' '
		}
		if unicode.IsControl(c) || c == unicode.ReplacementChar {
			return -1
		}
		return c
	}, string(line))
	return strings.TrimSpace(clean), nil
}

// speak says what there is to say now, before work that takes a while.
func (r *room) speak() {
	if len(r.said) > 0 {
		r.kept = r.said
	}
	for _, l := range r.said {
		r.write(l + "\n")
	}
	r.said = nil
	if r.out.Flush() != nil {
		r.broken = true
	}
}

// flush says what there is to say and prompts.
func (r *room) flush() {
	r.speak()
	if !r.over {
		prompt := strings.ToLower(r.d.Words.Pass(r.here().name))
		if r.open != nil {
			prompt = r.open.prompt
		}
		r.write(r.d.Tell(text.LinearPrompt, prompt))
	}
	if r.out.Flush() != nil {
		r.broken = true
	}
}

// write lets nothing through that a terminal would obey.
func (r *room) write(s string) {
	if r.comma {
		s = text.Comma(s)
	}
	for _, c := range s {
		if c == '\n' || !unicode.IsControl(c) {
			_, _ = r.out.WriteRune(c) // flush tells
		}
	}
}

// say adds a sentence of the catalogue.
func (r *room) say(id text.ID, args ...any) { r.tell(r.d.Words.Say(id, args...)) }

// width of the lines; longer ones are broken between words.
const width = 78

// tell adds words that have been through the catalogue, each sentence on a line
// of its own.
func (r *room) tell(words string) {
	for _, part := range strings.Split(words, "\n") {
		for _, one := range sentences(text.Plain(r.d.Plain(part))) {
			r.said = append(r.said, wrapped(one)...)
		}
	}
}

// inLength is a blank that stands in a length: "6 5/8 in" is not parted.
var inLength = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`(\d) (\d+/\d+|x \d+|in\b|cm\b|mm\b|yd\b)`) })

// wrapped breaks a sentence between words, never in a length.
func wrapped(one string) []string {
	const held = "\u00a0"
	for range 2 { // a number with a fraction and a unit has two blanks
		one = inLength().ReplaceAllString(one, "$1"+held+"$2")
	}
	lines := desk.Wrap(one, width)
	for i, l := range lines {
		lines[i] = strings.ReplaceAll(l, held, " ")
	}
	return lines
}

// sentences parts words after a full stop or a question mark that a capital
// follows; the number of a line in a list stays with it.
func sentences(words string) []string {
	var out []string
	rs, from := []rune(words), 0
	for i := 1; i+2 < len(rs); i++ {
		after := unicode.IsUpper(rs[i+2]) || unicode.IsDigit(rs[i+2]) && unicode.IsLetter(rs[i-1])
		if rs[i] != '.' && rs[i] != '?' || rs[i+1] != ' ' || !after || strings.Trim(string(rs[from:i]), "0123456789 ") == "" {
			continue
		}
		out = append(out, string(rs[from:i+1]))
		from = i + 2
	}
	out = append(out, string(rs[from:]))
	kept := out[:0]
	for _, s := range out {
		if s = strings.TrimSpace(s); s != "" {
			kept = append(kept, s)
		}
	}
	return kept
}

// warn tells what went wrong, one sentence each.
func (r *room) warn(err error) {
	for _, l := range strings.Split(err.Error(), "\n") {
		r.tell(l)
	}
}

// withoutPlace leaves out where something was read: it was typed just now.
func withoutPlace(err error) error {
	var f *measure.Refusal
	if errors.As(err, &f) {
		return &measure.Refusal{Read: f.Read, Wrong: f.Wrong, Works: f.Works}
	}
	return err
}

// keep writes the rescue copy, or takes it away where all is saved.
func (r *room) keep() {
	if !r.d.Unsaved() {
		r.d.Store().DropRescue()
		return
	}
	if err := r.d.Store().WriteRescue(r.d.Job()); err != nil {
		r.say(text.RescueNoWrite, err)
	}
}

// change puts a new job in place and says what it did.
func (r *room) change(job pattern.Job, says string) bool {
	if !r.d.Change(job, says) {
		r.say(text.HearSame)
		return false
	}
	r.tell(sentence(says))
	r.keep()
	return true
}

func (r *room) unitName(u measure.Unit) string {
	return r.d.Words.Say(map[measure.Unit]text.ID{measure.In: text.UnitIn, measure.Cm: text.UnitCm, measure.Mm: text.UnitMm}[u])
}

// sentence ends words with a full stop.
func sentence(s string) string {
	s = strings.TrimSpace(s)
	if s == "" || strings.HasSuffix(s, ".") || strings.HasSuffix(s, "?") {
		return s
	}
	return s + "."
}

// capital begins words with a capital.
func capital(s string) string {
	for i, c := range s {
		return strings.ToUpper(string(c)) + s[i+len(string(c)):]
	}
	return s
}

// spaced is an id as words.
func spaced(id string) string { return strings.ReplaceAll(id, "_", " ") }
