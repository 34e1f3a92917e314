package outlet

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"chalkfold/export/accept"
	"chalkfold/measure"
)

// The writers by family: odd clients and bodies of any size in any style never
// stop one of them, and what they write can be read.

func FuzzPictures(f *testing.F)  { fuzzFormats(f, "svg,dxf", 1) }
func FuzzLays(f *testing.F)      { fuzzFormats(f, "lay", 4) }
func FuzzSheets(f *testing.F)    { fuzzFormats(f, "pdf,tiles", 4) }
func FuzzCards(f *testing.F)     { fuzzFormats(f, "card,moved", 3) }
func FuzzDocuments(f *testing.F) { fuzzFormats(f, "guide,handout", 5) }
func FuzzSlips(f *testing.F)     { fuzzFormats(f, "measuring,client,slip", 3) }
func FuzzLessons(f *testing.F)   { fuzzFormats(f, "lesson", 2) }

// fuzzFormats tries formats on odd clients; of the names known to be odd one
// in so many, which the families share out among them.
func fuzzFormats(f *testing.F, list string, every int) {
	asked, err := Parse(list)
	require.NoError(f, err)
	for i, name := range accept.Names() {
		if i%every == 0 {
			f.Add(1.0, name, strings.Repeat(name, 2), i/every)
		}
	}
	f.Fuzz(func(t *testing.T, scale float64, name, notes string, style int) {
		if !(scale > 0.3 && scale < 3) || len(name) > 20_000 || len(notes) > 40_000 {
			t.Skip("a body out of all scale, or a text that no session holds")
		}
		s := accept.Odd(scale, name, notes, style)
		if !s.Complete || len(s.Pieces) == 0 {
			t.Skip("no whole draft comes of it: nothing to write")
		}
		before := accept.Odd(scale, "", "", style)
		requireReadable(t, newRequest(s, "odd", Options{Before: before, Notes: true}), asked)
	})
}

func requireReadable(t *testing.T, r request, list []Format) {
	t.Helper()
	for _, f := range list {
		for _, file := range f.files(r) {
			out := file.filled()
			require.Nil(t, out.broken, file.name)
			var refused *measure.Refusal
			if errors.As(out.err, &refused) {
				continue // a sentence, and no file
			}
			require.NoError(t, out.err, file.name)
			readable[filepath.Ext(file.name)](t, file.name, out.content)
		}
	}
}

// readable is what a reader of a kind of file asks of it.
var readable = map[string]func(t *testing.T, name string, content []byte){
	".svg": func(t *testing.T, name string, content []byte) {
		d := xml.NewDecoder(bytes.NewReader(content))
		for {
			if _, err := d.Token(); errors.Is(err, io.EOF) {
				return
			} else {
				require.NoError(t, err, name)
			}
		}
	},
	".dxf": func(t *testing.T, name string, content []byte) {
		lines := strings.Split(strings.TrimSuffix(string(content), "\r\n"), "\r\n")
		require.Zero(t, len(lines)%2, name)
		require.Equal(t, "EOF", lines[len(lines)-1], name)
		for i, l := range lines {
			if len(l) > 2049 || strings.IndexFunc(l, func(r rune) bool { return r < ' ' || r > '~' }) >= 0 {
				require.Fail(t, "no line of a DXF file", "%s: line %d: %q", name, i+1, l)
			}
			if i%2 == 0 {
				_, err := strconv.Atoi(strings.TrimLeft(l, " "))
				require.NoError(t, err, "%s: line %d", name, i+1)
			}
		}
	},
	".pdf": func(t *testing.T, name string, content []byte) {
		require.True(t, bytes.HasPrefix(content, []byte("%PDF-1.")), name)
		require.True(t, bytes.HasSuffix(content, []byte("%%EOF\n")), name)
		require.Contains(t, string(content), "/Type /Page\n", name)
	},
	".md":  plainText,
	".txt": plainText,
	".html": func(t *testing.T, name string, content []byte) {
		plainText(t, name, content)
		require.Equal(t, 1, bytes.Count(bytes.ToLower(content), []byte("<script")), name)
		require.Equal(t, 1, bytes.Count(bytes.ToLower(content), []byte("</script")), name)
	},
}

var control = regexp.MustCompile(`[\x00-\x08\x0b-\x1f\x7f]`)

func plainText(t *testing.T, name string, content []byte) {
	require.True(t, utf8.Valid(content), name)
	require.NotRegexp(t, control, string(content), name)
}

// The smallest and the largest body that still draft leave in every format.
func TestExtremeBodies(t *testing.T) {
	if testing.Short() {
		t.Skip("many drafts")
	}
	for style := range accept.Styles() {
		least, most := accept.Extremes(style)
		require.Less(t, least, 0.95)
		require.Greater(t, most, 1.2)
		for _, scale := range []float64{least, most} {
			s := accept.Odd(scale, "Learner Four", "", style)
			requireReadable(t, newRequest(s, "odd", Options{Before: s}), formats)
		}
	}
}
