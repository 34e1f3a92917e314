package pdf

import (
	"bytes"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"

	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func TestClean(t *testing.T) {
	for _, c := range []struct {
		in, want string
		lacking  int
	}{
		{"Learner Four", "Learner Four", 0},
		{"Zoe\u0308", "Zo\u00eb", 0},
		{"Nguyễn Thị Ánh", "Nguyễn Thị Ánh", 0},
		{"Ελένη Настя ½ →", "Ελένη Настя ½ →", 0},
		{"a\x00b\x1b[31mc\r\nd", "ab[31mc  d", 0},
		{"\xff", "\ufffd", 0},
		{"\u202eright\u200d\ufeff", "right", 0},
		{"👗 dress", "□ dress", 1},
		{"李小李", "□□□", 2},
		{"❤\ufe0f", "❤", 0},
	} {
		got, lacking := Clean(c.in)
		require.Equal(t, c.want, got, "%q", c.in)
		require.Len(t, lacking, c.lacking, "%q", c.in)
	}
}

func TestOneWarning(t *testing.T) {
	p := newPen("👗👗", pattern.Date{})
	p.clean("李 👗")
	require.Equal(t, "a box stands in print for letters that the typeface lacks: U+674E, U+1F457", p.warning())
	require.Empty(t, newPen("plain", pattern.Date{}).warning())
	many := newPen("李小龍一二三四", pattern.Date{})
	require.Contains(t, many.warning(), "and 2 more")
}

// Whatever the text, what is set is valid, composed, plain and in the face,
// and the library takes it.
func FuzzClean(f *testing.F) {
	for _, s := range append(accept.Texts, "e\u0301\u0327", "\U0010ffff", "\xed\xa0\x80", "(\\)", "\u0600 سلام") {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, lacking := Clean(text)
		require.True(t, utf8.ValidString(got))
		require.True(t, norm.NFC.IsNormalString(got) || len(lacking) > 0, "%q", got)
		for _, r := range got {
			require.False(t, unicode.IsControl(r))
			require.True(t, theFace().has(r), "%U", r)
		}
		p := newPen(text, pattern.Date{})
		p.page(100, 100)
		p.bookmark(text, 0, 0)
		p.write(geom.Point{X: 50, Y: 50}, words{text: text, size: 5, middle: true, bold: true, turn: 90})
		var b bytes.Buffer
		require.NoError(t, p.finish(&b))
	})
}

// Every letter there is, alone and after another, comes out as something that
// the face has; all of the face's letters together can be written.
func TestEveryLetter(t *testing.T) {
	p := newPen("all", pattern.Date{})
	p.page(100, 100)
	for r := rune(0); r <= unicode.MaxRune; r++ {
		got, _ := Clean(string(r))
		for _, g := range got {
			if !p.face.has(g) {
				t.Fatalf("%U became %U, which is not in the face", r, g)
			}
		}
		if r < 0x10000 {
			p.write(geom.Point{X: 10, Y: 10}, words{text: "a" + string(r), size: 3})
		}
	}
	require.Greater(t, len(p.letters), 5000)
	var b bytes.Buffer
	require.NoError(t, p.finish(&b))
}

func TestWrapLosesNothingAndFits(t *testing.T) {
	p := newPen("", pattern.Date{})
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`([a-zA-Zéß]{1,30}|[0-9]{1,2} [0-9]/[0-9]| ){0,20}`).Draw(t, "text")
		width := rapid.Float64Range(8, 80).Draw(t, "width")
		lines := p.wrap(text, 3, width)
		for _, l := range lines {
			if p.face.width(l, 3) > width+1e-9 && utf8.RuneCountInString(l) > 7 {
				t.Fatalf("%q is %.1f wide, room %.1f", l, p.face.width(l, 3), width)
			}
		}
		if got, want := strings.ReplaceAll(strings.Join(lines, ""), " ", ""), strings.ReplaceAll(text, " ", ""); got != want {
			t.Fatalf("%q, want %q", got, want)
		}
	})
}

func TestMixedNumbersStayTogether(t *testing.T) {
	p := newPen("", pattern.Date{})
	for _, l := range p.wrap("measure 12 1/2 out and 3 3/4 down, 7 of 8", 3, 20) {
		require.NotRegexp(t, `^\d/\d|(^| )12$|(^| )3$`, l)
	}
}
