package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/testdata/golden"
)

func write(w io.Writer, d export.Drawing) error { return Write(w, d, Options{}) }

func TestWriter(t *testing.T) { accept.Writer(t, write, nil) }

func TestGolden(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{Only: pattern.Front})
	golden.Check(t, "front.svg", string(accept.Bytes(t, write, d)))
}

func TestPensDifferWithoutColour(t *testing.T) {
	seen := map[pen]pattern.Role{}
	roles := map[pattern.Role]bool{}
	for _, p := range pens {
		key := pen{weight: p.weight, dash: p.dash}
		other, twice := seen[key]
		require.False(t, twice, "%s and %s look alike", p.role, other)
		seen[key] = p.role
		roles[p.role] = true
	}
	require.Len(t, roles, pattern.RoleCount)
}

// element is what the tests look at.
type element struct {
	Name     string
	Attrs    map[string]string
	Text     string
	Ancestor []string // class or id of the groups round it
}

func parse(t testing.TB, data []byte) []element {
	t.Helper()
	dec := xml.NewDecoder(bytes.NewReader(data))
	dec.Strict = true
	var out []element
	var stack []string
	var open []int
	for {
		tok, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		require.NoError(t, err)
		switch tok := tok.(type) {
		case xml.StartElement:
			e := element{Name: tok.Name.Local, Attrs: map[string]string{}, Ancestor: append([]string(nil), stack...)}
			for _, a := range tok.Attr {
				e.Attrs[a.Name.Local] = a.Value
			}
			stack = append(stack, e.Attrs["class"]+e.Attrs["id"])
			open = append(open, len(out))
			out = append(out, e)
		case xml.EndElement:
			stack, open = stack[:len(stack)-1], open[:len(open)-1]
		case xml.CharData:
			if n := len(open); n > 0 {
				out[open[n-1]].Text += string(tok)
			}
		}
	}
}

func TestTrueSize(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	root := parse(t, accept.Bytes(t, write, d))[0]
	require.Equal(t, "0 0 "+strings.TrimSuffix(root.Attrs["width"], "mm")+" "+strings.TrimSuffix(root.Attrs["height"], "mm"), root.Attrs["viewBox"])

	var b bytes.Buffer
	require.NoError(t, Write(&b, d, Options{Web: true}))
	web := parse(t, b.Bytes())[0]
	require.NotContains(t, web.Attrs, "width")
	require.NotContains(t, web.Attrs, "height")
	require.Equal(t, root.Attrs["viewBox"], web.Attrs["viewBox"])
}

func TestGroupsAreByPieceAndRole(t *testing.T) {
	all := parse(t, accept.Bytes(t, write, export.New(accept.Sheet(), export.Options{})))
	inside := map[string]bool{}
	for _, e := range all {
		if e.Attrs["class"] != "" && len(e.Ancestor) == 2 {
			inside[e.Ancestor[1]+"/"+e.Attrs["class"]] = true
		}
	}
	for _, want := range []string{
		"front/cut", "front/stitch", "front/fold", "front/grain", "front/dart", "front/notch", "front/balance", "front/hole",
		"front/text", "back_neck_facing/cut", "back_neck_facing/stitch", "back_neck_facing/notch", "pagepage/guide", "pagepage/text",
	} {
		require.True(t, inside[want], want)
	}
	require.False(t, inside["back_neck_facing/fold"])
}

func TestCurvesStayCurves(t *testing.T) {
	p := geom.Path{geom.Curve(geom.Point{}, geom.Point{X: 1}, geom.Point{X: 2, Y: 1}, geom.Point{X: 2, Y: 2}), geom.Straight(geom.Point{X: 2, Y: 2}, geom.Point{})}
	require.Equal(t, "M0.000 0.000C1.000 0.000 2.000 1.000 2.000 2.000Z", data(p))
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		x    float64
		want string
	}{
		{0, "0.000"},
		{math.Copysign(0, -1), "0.000"},
		{-0.0004, "0.000"},
		{0.0005, "0.001"},
		{-1.25, "-1.250"},
		{1e6, "1000000.000"},
		{math.NaN(), "0.000"},
		{math.Inf(1), "0.000"},
	} {
		require.Equal(t, c.want, number(c.x))
	}
}

func TestEscape(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{`<b>&"'`, "&lt;b&gt;&amp;&quot;&#39;"},
		{"a\x00b\x1b[0mc\x7f\u0085", "ab[0mc"},
		{"line\nnext\tto", "line next to"},
		{"\xff", "\ufffd"},
		{"\ufffe\uffff\U0001fffe", ""},
		{"Zoë 李 👗", "Zoë 李 👗"},
	} {
		require.Equal(t, c.want, escape(c.text))
	}
}

func FuzzText(f *testing.F) {
	for _, s := range accept.Texts {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s := accept.Sheet()
		s.Job.Client.Name, s.Pieces[0].Title = text, text
		s.Pieces[0].ID = pattern.PieceID(text)
		all := parse(t, accept.Bytes(t, write, export.New(s, export.Options{})))
		// The reader gives the same words back, but for what was dropped.
		want := "Dress"
		if text != "" {
			want += " for " + text
		}
		clean := func(s string) string { return strings.Join(strings.Fields(unescaped(escape(s))), " ") }
		require.Equal(t, clean(want), clean(all[1].Text))
	})
}

func unescaped(s string) string {
	return strings.NewReplacer("&lt;", "<", "&gt;", ">", "&quot;", `"`, "&#39;", "'", "&amp;", "&").Replace(s)
}
