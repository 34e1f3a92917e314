package lessonpage

import (
	"crypto/sha256"
	_ "embed" // the look and the script are files of their own
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"regexp"
	"strings"
	"sync"
	"unicode"

	"chalkfold/export/leaflet"
	"chalkfold/measure"
	"chalkfold/pattern"
)

// Options of a page.
type Options struct {
	Unit measure.Unit
	// Numbers gives her measures in the sums instead of naming them: for the
	// built-in sample, who has nothing to hide.
	Numbers bool
}

//go:embed look.css
var look string

//go:embed turn.js
var turn string

// Write writes the page of a draft. Steps that wait are said to wait.
func Write(w io.Writer, s *pattern.Sheet, o Options) error {
	if len(s.Steps) == 0 {
		return &measure.Refusal{Where: "lesson page", Read: "a draft without steps", Wrong: "there is nothing to show", Works: "choose a garment first"}
	}
	p := &page{sheet: s, options: o}
	p.head()
	p.marks()
	for _, st := range s.Steps {
		p.step(st)
	}
	p.foot()
	_, err := io.WriteString(w, p.b.String())
	return err
}

// page is the text as it grows.
type page struct {
	b       strings.Builder
	sheet   *pattern.Sheet
	options Options
}

func (p *page) add(format string, args ...any) {
	fmt.Fprintf(&p.b, format, args...)
	p.b.WriteByte('\n')
}

// words makes a text harmless: what a page must not hold is dropped, what a
// page reads as its own is spelt.
func words(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r), r == '\ufeff', r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069, r&0xfffe == 0xfffe, r >= 0xfdd0 && r <= 0xfdef:
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, "\ufffd"))
	return html.EscapeString(s)
}

// mixed is a whole number with a fraction; the two stay on one line.
var mixed = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`(\d) (\d+/\d)`) })

// sentence is a text whose numbers do not break.
func sentence(s string) string { return mixed().ReplaceAllString(words(s), "$1\u00a0$2") }

var methodWords = map[string]string{pattern.Measured: "from measurements", pattern.Direct: "by direct measure", pattern.Thumb: "by the rule of thumb"}

func (p *page) title() string {
	how, ok := methodWords[p.sheet.Method]
	if !ok {
		how = leaflet.Words(p.sheet.Method)
	}
	return leaflet.Title(p.sheet.Garment) + ", " + how
}

// head ends inside <main>. The policy lets this script and this look run and
// nothing else, so that not even a slip of ours could reach out.
func (p *page) head() {
	hash := func(s string) string {
		sum := sha256.Sum256([]byte(s))
		return base64.StdEncoding.EncodeToString(sum[:])
	}
	title := words(p.title())
	p.add(`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-%s'; script-src 'sha256-%s'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>%s: step by step</title>
<style>%s</style>
</head>
<body>`, hash(look), hash(turn), title, look)
	p.add(`<header><h1>%s</h1>
<p class="how">Lengths in %s. The piece lies on the table: neck at the left, fold or centre line at the top. What a step makes is heavy and named.</p></header>
<main>`, title, leaflet.UnitWords(p.options.Unit))
}

// step is one step: heading, what to do, the drawings, the sum, why, the slip.
func (p *page) step(st pattern.Step) {
	u := p.options.Unit
	p.add(`<section id="step-%d" aria-labelledby="head-%d">`, st.Number, st.Number)
	p.add(`<h2 id="head-%d"><span class="piece">%s</span> <span class="number">%d.</span> %s</h2>`,
		st.Number, words(p.pieceTitle(st.Piece)), st.Number, words(st.Title))
	if !st.Drawn {
		p.add(`<p class="do">%s</p>`, sentence(capital(st.Waits.In(u))))
		p.add(`</section>`)
		return
	}
	p.add(`<p class="do">%s</p>`, sentence(st.Do.In(u)))
	p.drawings(st)
	sum := st.Sum.Private(u)
	if p.options.Numbers {
		sum = st.Sum.Sum(u)
	}
	p.said("sum", "Sum", sum)
	p.said("why", "Why", st.Why.In(u))
	p.said("slip", "A slip", st.Slip.In(u))
	p.add(`</section>`)
}

func (p *page) said(class, lead, text string) {
	if text != "" {
		p.add(`<p class="%s"><strong>%s</strong> %s</p>`, class, lead, sentence(text))
	}
}

func (p *page) pieceTitle(id pattern.PieceID) string {
	if piece, ok := p.sheet.Piece(id); ok {
		return piece.Title
	}
	return leaflet.Title(string(id))
}

func capital(s string) string {
	r := []rune(s)
	if len(r) > 0 {
		r[0] = unicode.ToUpper(r[0])
	}
	return string(r)
}

// foot has the buttons. The script shows them; without it all steps are there
// to be scrolled.
func (p *page) foot() {
	p.add(`</main>
<p id="status" class="heard" role="status" aria-live="polite"></p>
<nav hidden aria-label="Steps">
<button type="button" id="back">Back</button>
<label class="heard" for="go">Go to step</label>
<select id="go">`)
	for _, st := range p.sheet.Steps {
		p.add(`<option value="%d">%d of %d: %s, %s</option>`, st.Number, st.Number, len(p.sheet.Steps), words(p.pieceTitle(st.Piece)), words(st.Title))
	}
	p.add(`</select>
<button type="button" id="whole" aria-pressed="false">Whole</button>
<button type="button" id="next">Next</button>
</nav>
<script>%s</script>
</body>
</html>`, turn)
}
