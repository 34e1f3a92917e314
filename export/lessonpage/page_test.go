package lessonpage

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
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

func written(t testing.TB, s *pattern.Sheet, o Options) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Write(&b, s, o))
	return b.Bytes()
}

func TestNothingPrivateIsOnThePage(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Job.Client = pattern.Client{Name: "Quilla Secret", Measured: pattern.Date{Year: 2026, Month: 3, Day: 4}, MeasuredBy: "Tutor Hidden", Shoes: "heel 3", Notes: "left knee stiff"}
	s.Job.Fittings = []pattern.Fitting{{Seen: "front gapes", Why: "pinched"}}
	page := string(written(t, s, Options{}))
	for _, no := range []string{"Quilla", "Secret", "2026", "Tutor Hidden", "heel 3", "knee stiff", "gapes", "pinched", "bust 36", "waist 28 /"} {
		require.NotContains(t, page, no)
	}
	require.Contains(t, page, sentence("bust / 4 + ease 2 1/2 / 4 = 9 5/8"))
	require.Contains(t, string(written(t, s, Options{Numbers: true})), sentence("bust 36 / 4 + ease 2 1/2 / 4 = 9 5/8"))
}

func TestSameSheetSameBytes(t *testing.T) {
	a, b := written(t, accept.Dress(pattern.Measured), Options{}), written(t, accept.Dress(pattern.Measured), Options{})
	require.Equal(t, a, b)
	require.NotEqual(t, a, written(t, accept.Dress(pattern.Measured), Options{Unit: measure.Cm}))
	require.Less(t, len(a), 150_000, "a phone loads it at once")
}

func TestEveryStepIsSaid(t *testing.T) {
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			s := accept.Dress(method)
			page := string(written(t, s, Options{Unit: u}))
			for _, st := range s.Steps {
				for _, says := range []string{st.Title, st.Do.In(u), st.Sum.Private(u), st.Why.In(u), st.Slip.In(u)} {
					require.Contains(t, page, sentence(says), st.ID)
				}
			}
		}
	}
}

// The page asks for nothing from elsewhere and has nothing that could.
func TestItStandsAlone(t *testing.T) {
	page := string(written(t, accept.Dress(pattern.Measured), Options{}))
	for _, no := range []string{"http://", "https://", "//", "url(", "@import", "src=", "<link", "fetch(", "XMLHttp"} {
		body := strings.NewReplacer(turn, strings.ReplaceAll(turn, "// ", ""), look, look).Replace(page)
		require.NotContains(t, body, no)
	}
	require.Equal(t, len(regexp.MustCompile(`href="#`).FindAllString(page, -1)), strings.Count(page, "href="))
}

func TestHostileWords(t *testing.T) {
	for _, text := range accept.Texts {
		s := accept.Dress(pattern.Measured)
		s.Garment, s.Method = text, text
		s.Steps[0].Title = text
		s.Steps[1].Do = measure.Tell("{}", text)
		s.Marks[0].Name = text
		s.Pieces[0].Title = text
		page := written(t, s, Options{})
		require.NotContains(t, string(page), "<script>&")
		require.NotContains(t, string(page), "\x1b")
		wellFormed(t, page)
	}
}

// wellFormed reads the tags: each is closed where it was opened.
func wellFormed(t *testing.T, page []byte) {
	t.Helper()
	text := strings.Replace(string(page), turn, "", 1)
	text = strings.Replace(text, look, "", 1)
	text = regexp.MustCompile(`<meta [^>]*>`).ReplaceAllString(text, "")
	text = strings.Replace(text, "<nav hidden ", "<nav ", 1)
	text = strings.NewReplacer("&#34;", "", "&#39;", "").Replace(text)
	d := xml.NewDecoder(strings.NewReader(text))
	for {
		_, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		require.NoError(t, err)
	}
}

func TestHalfADraftSaysWhatWaits(t *testing.T) {
	s := accept.Dress(pattern.Measured)
	s.Steps[5].Drawn = false
	s.Steps[5].Waits = measure.Tell("waits for the waist")
	page := string(written(t, s, Options{}))
	require.Contains(t, page, "Waits for the waist")
	wellFormed(t, []byte(page))
	require.ErrorContains(t, Write(io.Discard, &pattern.Sheet{}, Options{}), "a draft without steps")
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestAFullDiskIsTold(t *testing.T) {
	require.ErrorIs(t, Write(full{}, accept.Dress(pattern.Measured), Options{}), io.ErrShortWrite)
}

var variable = regexp.MustCompile(`--([a-z]+): #([0-9a-f]{6})`)

// Words have a contrast of 4.5 and more in every look, lines of 3 and more
// (WCAG 2.2, 1.4.3 and 1.4.11).
func TestContrast(t *testing.T) {
	looks := strings.Split(look, ":root {")
	require.Len(t, looks, 4, "light, dark, print")
	for _, l := range looks[1:] {
		rule, _, _ := strings.Cut(l, "}")
		is := map[string]float64{}
		for _, v := range variable.FindAllStringSubmatch(rule, -1) {
			is[v[1]] = luminance(t, v[2])
		}
		for _, c := range []struct {
			on, of string
			least  float64
		}{
			{"ground", "ink", 7}, {"ground", "soft", 4.5}, {"ground", "new", 4.5}, {"ground", "line", 4.5}, {"bar", "ink", 7},
		} {
			a, b := is[c.on], is[c.of]
			require.Contains(t, is, c.of)
			require.GreaterOrEqual(t, (max(a, b)+0.05)/(min(a, b)+0.05), c.least, "%s on %s in %s", c.of, c.on, rule)
		}
	}
}

// luminance is the relative luminance of WCAG 2.2.
func luminance(t *testing.T, hex string) float64 {
	sum := 0.0
	for i, weight := range [...]float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(hex[2*i:2*i+2], 16, 8)
		require.NoError(t, err)
		c := float64(n) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

// Names keep clear of each other and inside their drawing.
func TestNamesAreClear(t *testing.T) {
	w := wholeWindow(geom.Box{Max: geom.Point{X: 1000, Y: 300}})
	var taken []geom.Box
	for i := range 3 {
		b, _, free := place(geom.Point{X: 10 + float64(i), Y: 10}, 150, w, taken, nil)
		require.True(t, free, "%d", i)
		require.True(t, w.box.Contains(b.Min) && w.box.Contains(b.Max))
		for _, o := range taken {
			require.False(t, b.Overlaps(o))
		}
		taken = append(taken, b)
	}
	for range 60 {
		b, _, free := place(geom.Point{X: 1000, Y: 300}, 900, w, taken, nil)
		if taken = append(taken, b); !free {
			return
		}
	}
	t.Fatal("room for sixty long names in a small drawing")
}

func BenchmarkWrite(b *testing.B) {
	s := accept.Dress(pattern.Measured)
	b.ReportAllocs()
	for b.Loop() {
		if err := Write(io.Discard, s, Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
