package lessonpage

import (
	"encoding/json"
	"fmt"
	"image/color"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

const shown = `document.querySelector('section:not([hidden])').id`

// tooWide and cutOff list what stands out of the screen or out of its own box.
const tooWide = `(() => {
  const w = document.documentElement.clientWidth, out = [];
  for (const e of document.querySelectorAll('body *')) {
    if (e.closest('defs') || e.closest('.heard') || e.closest('.store') || e.closest('svg.drawing') && !e.matches('text')) continue;
    const r = e.getBoundingClientRect();
    if (!r.width) continue;
    let box = {left: 0, right: w};
    if (e.matches('text')) { const d = e.closest('svg').getBoundingClientRect(); box = d; if (r.top < d.top - 1 || r.bottom > d.bottom + 1) out.push(e.textContent + ' is cut above or below'); }
    if (r.left < box.left - 0.5 || r.right > box.right + 0.5) out.push(e.nodeName + ' ' + e.textContent.slice(0, 40) + ' ' + r.left + '..' + r.right);
    if (e.matches('button, p, h1, h2') && e.scrollWidth > e.clientWidth + 1) out.push(e.nodeName + ' ' + e.id + ' is wider than its box');
  }
  if (document.documentElement.scrollWidth > w) out.push('the page is ' + document.documentElement.scrollWidth + ' wide');
  return out;
})()`

// In a real browser, which complains of nothing and asks the network for
// nothing.
func TestInABrowser(t *testing.T) {
	b := startBrowser(t)
	for _, c := range []struct {
		name string
		test func(*testing.T, *browser)
	}{
		{"every step is reached", everyStep},
		{"keys and touches", keysAndTouches},
		{"lines are seen", linesAreSeen},
		{"lines are the draft", linesAreTheDraft},
		{"printed", printed},
	} {
		t.Run(c.name, func(t *testing.T) {
			all := b.t
			b.t = t
			defer func() { b.t = all }()
			b.media("screen", "light")
			c.test(t, b)
			require.Empty(t, b.faults)
		})
	}
}

var screens = [][2]int{{360, 640}, {1280, 720}}

func everyStep(t *testing.T, b *browser) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := accept.Dress(method)
		n := len(s.Steps)
		for _, size := range screens {
			if method == pattern.Thumb && size != screens[0] {
				continue
			}
			b.size(size[0], size[1])
			b.media("screen", map[bool]string{true: "dark", false: "light"}[size[0] == 1280])
			b.open(written(t, s, Options{}))
			for k := 1; k <= n; k++ {
				require.Equal(t, fmt.Sprintf("step-%d", k), b.text(shown), "%v", size)
				var out []string
				b.value(tooWide, &out)
				require.Empty(t, out, "step %d at %v", k, size)
				b.value(seen, &out)
				if s.Steps[k-1].Drawn {
					require.NotEmpty(t, out, "step %d at %v shows no drawing", k, size)
				}
				if method == pattern.Measured && (k == 1 || k == 10 || k == 29 || k == n) {
					b.shot(fmt.Sprintf("%dx%d-%d", size[0], size[1], k))
				}
				b.tap("next")
			}
			require.Equal(t, fmt.Sprintf("step-%d", n), b.text(shown), "the last step stays")
		}
	}
}

// seen are the drawings on the screen.
const seen = `[...document.querySelectorAll('section:not([hidden]) svg.drawing')].filter(e => e.getBoundingClientRect().width > 100).map(e => e.getAttribute('class'))`

func keysAndTouches(t *testing.T, b *browser) {
	s := accept.Dress(pattern.Measured)
	n := len(s.Steps)
	b.size(360, 640)
	b.open(written(t, s, Options{}))
	at := func(k int, does string) {
		t.Helper()
		require.Equal(t, fmt.Sprintf("step-%d", k), b.text(shown), does)
		require.Equal(t, strconv.Itoa(k), b.text("document.getElementById('go').value"))
		require.Equal(t, strconv.FormatBool(k == 1), b.text("document.getElementById('back').getAttribute('aria-disabled')"))
		require.Equal(t, strconv.FormatBool(k == n), b.text("document.getElementById('next').getAttribute('aria-disabled')"))
	}
	at(1, "open")
	require.Empty(t, b.text("document.getElementById('status').textContent"), "nothing is called out before she does anything")
	for _, c := range []struct {
		does func()
		at   int
		name string
	}{
		{func() { b.press("ArrowRight") }, 2, "Right"},
		{func() { b.press(" ") }, 3, "Space"},
		{func() { b.press("ArrowLeft") }, 2, "Left"},
		{func() { b.press("End") }, n, "End"},
		{func() { b.press("ArrowRight") }, n, "Right at the end"},
		{func() { b.press("Home") }, 1, "Home"},
		{func() { b.swipe(300, 300, 60, 310) }, 2, "swipe left"},
		{func() { b.swipe(60, 300, 300, 290) }, 1, "swipe right"},
		{func() { b.swipe(60, 300, 290, 300) }, 1, "swipe right at the start"},
		{func() { b.swipe(200, 400, 190, 200) }, 1, "scroll"},
		{func() { b.tap("next") }, 2, "tap Next"},
		{func() { b.tap("back") }, 1, "tap Back"},
	} {
		c.does()
		at(c.at, c.name)
	}
	// With the button in focus: a press each, and the focus stays.
	b.text("document.getElementById('next').focus()")
	b.press(" ")
	b.press("Enter")
	at(3, "keys on the button")
	require.Equal(t, "next", b.text("document.activeElement.id"))
	heard := b.text("document.getElementById('status').textContent")
	require.Contains(t, heard, fmt.Sprintf("Step 3 of %d. ", n))
	require.Contains(t, strings.ReplaceAll(heard, "\u00a0", " "), s.Steps[2].Do.In(measure.In))
	b.press("End")
	require.Equal(t, "next", b.text("document.activeElement.id"), "a button that can do nothing more keeps the focus")
	b.text("(e => { e.value = '7'; e.dispatchEvent(new Event('change')); })(document.getElementById('go'))")
	at(7, "list")
	var drawings []string
	b.value(seen, &drawings)
	require.Equal(t, []string{"drawing near"}, drawings)
	b.tap("whole")
	b.value(seen, &drawings)
	require.Equal(t, []string{"drawing whole pair"}, drawings)
	b.shot("whole-7")
}

// The ink on the screen is that of lines: thin, the new ones in their own
// colour, and nothing filled.
func linesAreSeen(t *testing.T, b *browser) {
	b.size(360, 640)
	b.media("screen", "light")
	b.open(written(t, accept.Dress(pattern.Measured), Options{}))
	for _, k := range []int{1, 7, 10, 29, 37} {
		b.text(fmt.Sprintf("(e => { e.value = '%d'; e.dispatchEvent(new Event('change')); })(document.getElementById('go'))", k))
		var r [4]float64
		b.value(`(e => { const r = e.getBoundingClientRect(); return [r.x, r.y, r.width, r.height]; })([...document.querySelectorAll('section:not([hidden]) svg.drawing')].find(e => e.getBoundingClientRect().width > 100))`, &r)
		// Without the frame, and without words, which have the same colours.
		b.text("[...document.querySelectorAll('svg text')].forEach(e => e.remove())")
		img := b.picture(r[0]+2, r[1]+2, r[2]-4, r[3]-4)
		count := map[color.RGBA]int{}
		for y := range img.Bounds().Dy() {
			for x := range img.Bounds().Dx() {
				c := color.RGBAModel.Convert(img.At(x, y)).(color.RGBA)
				count[c]++
			}
		}
		fresh, ground := count[color.RGBA{0x0a, 0x3d, 0x8f, 255}], count[color.RGBA{255, 255, 255, 255}]
		all := img.Bounds().Dx() * img.Bounds().Dy()
		require.Greater(t, fresh, 60, "step %d", k)
		require.Greater(t, ground, all*8/10, "step %d: lines do not fill the drawing", k)
		if k > 1 {
			earlier := count[color.RGBA{0x6e, 0x6e, 0x6e, 255}]
			require.Greater(t, earlier, 20, "step %d shows what was there before", k)
		}
	}
}

func printed(t *testing.T, b *browser) {
	s := accept.Dress(pattern.Measured)
	b.size(794, 1123)
	b.open(written(t, s, Options{}))
	b.media("print", "dark")
	var n int
	b.value("[...document.querySelectorAll('section')].filter(e => e.getBoundingClientRect().height > 60).length", &n)
	require.Equal(t, len(s.Steps), n)
	b.value("[...document.querySelectorAll('svg.drawing')].filter(e => e.getBoundingClientRect().width > 60).length", &n)
	require.Equal(t, len(s.Steps), n, "one drawing a step")
	require.Equal(t, "none", b.text("getComputedStyle(document.querySelector('nav')).display"))
	require.Equal(t, "rgb(255, 255, 255)", b.text("getComputedStyle(document.body).backgroundColor"))
	require.Equal(t, "rgb(0, 0, 0)", b.text("getComputedStyle(document.body).color"))
	b.shot("print")
	var pdf struct{ Data string }
	b.result("Page.printToPDF", map[string]any{}, &pdf)
	require.NotEmpty(t, pdf.Data)
}

// The lines that the browser draws are the lines of the draft: what stands at
// step k is read back from the page as the browser holds it.
func linesAreTheDraft(t *testing.T, b *browser) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := accept.Dress(method)
		b.size(360, 640)
		b.open(written(t, s, Options{}))
		var text string
		b.value(`JSON.stringify([...document.querySelectorAll('section')].map(s => [...s.querySelectorAll('svg.whole g[transform] use')].map(u => ({d: document.querySelector(u.getAttribute('href')).getAttribute('d'), fresh: !!u.closest('.new')}))))`, &text)
		var pages [][]struct {
			D     string
			Fresh bool
		}
		require.NoError(t, json.Unmarshal([]byte(text), &pages))
		require.Len(t, pages, len(s.Steps))
		for i, st := range s.Steps {
			var want, wantFresh []pattern.Mark
			for _, m := range s.Marks {
				if m.Piece != st.Piece || !m.AliveAt(st.Number) {
					continue
				}
				if m.Born == st.Number {
					wantFresh = append(wantFresh, m)
				} else {
					want = append(want, m)
				}
			}
			want = append(want, wantFresh...)
			require.Len(t, pages[i], len(want), st.ID)
			for k, m := range want {
				require.Equal(t, m.Born == st.Number, pages[i][k].Fresh)
				same(t, m, pages[i][k].D)
			}
		}
	}
}

var op = regexp.MustCompile(`([MLCh])([-0-9., ]*)`)

// same holds the d of a path to a mark, point by point.
func same(t *testing.T, m pattern.Mark, d string) {
	t.Helper()
	var got, want []geom.Point
	for _, o := range op.FindAllStringSubmatch(d, -1) {
		if o[1] == "h" {
			continue
		}
		for _, p := range strings.Fields(o[2]) {
			x, y, ok := strings.Cut(p, ",")
			require.True(t, ok, d)
			px, err := strconv.ParseFloat(x, 64)
			require.NoError(t, err)
			py, err := strconv.ParseFloat(y, 64)
			require.NoError(t, err)
			got = append(got, geom.Point{X: px, Y: py})
		}
	}
	if m.Kind == pattern.MarkPoint {
		want = append(want, m.At)
	}
	for i, s := range m.Path {
		if i == 0 || !s.A.Near(m.Path[i-1].D, 1e-6) {
			want = append(want, s.A)
		}
		if s.Curved {
			want = append(want, s.B, s.C)
		}
		want = append(want, s.D)
	}
	require.Len(t, got, len(want), "%s: %s", m.Name, d)
	for i := range want {
		require.Less(t, math.Hypot(got[i].X-want[i].X, got[i].Y-want[i].Y), 0.01, m.Name)
	}
}
