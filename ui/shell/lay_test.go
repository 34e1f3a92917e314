package shell

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/session"
)

// call runs one call without a terminal.
func call(t testing.TB, in string, args ...string) (status int, out, err string) {
	t.Helper()
	var o, e bytes.Buffer
	status = Main(args, strings.NewReader(in), &o, &e, func(string) string { return "" })
	return status, o.String(), e.String()
}

// hostile are files of outlines, and what of their refusal must be said.
var hostile = []struct{ text, says string }{
	{``, "no JSON object"},
	{`[]`, "no JSON object"},
	{`null`, "no JSON object"},
	{`{"width": 10}`, "nothing to lay"},
	{`{"width": 10, "pieces": []}`, "nothing to lay"},
	{`{"width": 0, "pieces": [{"id":"a","outline":[[0,0],[1,0],[0,1]]}]}`, "no cloth has that width"},
	{`{"width": -4, "pieces": [{"id":"a","outline":[[0,0],[1,0],[0,1]]}]}`, "no cloth has that width"},
	{`{"width": 1e300, "pieces": [{"id":"a","outline":[[0,0],[1,0],[0,1]]}]}`, "no cloth is so large"},
	{`{"width": 10, "pieces": [{"id":"a","outline":[[0,0],[1,0]]}]}`, "the outline has no area"},
	{`{"width": 10, "pieces": [{"id":"a","outline":[[0,0],[1,0],[2,0]]}]}`, "the outline has no area"},
	{`{"width": 10, "pieces": [{"id":"a","outline":[[0,0],[1,1],[1,0],[0,1]]}]}`, "crosses itself"},
	{`{"width": 10, "pieces": [{"id":"a","outline":[[[0,0],[1,0],[0,1]],[[0,0]]]}]}`, "one ring without holes"},
	{`{"width": 10, "pieces": [{"id":"a","count":1000000000,"outline":[[0,0],[1,0],[0,1]]}]}`, "so many cannot be laid"},
	{`{"width": 10, "pieces": [{"id":"a","count":-1,"outline":[[0,0],[1,0],[0,1]]}]}`, "so many cannot be laid"},
	{`{"width": 10, "pieces": [{"id":"a","holes":[],"outline":[[0,0],[1,0],[0,1]]}]}`, "no such key"},
	{`{"width": 10, "turn": [45], "pieces": [{"id":"a","outline":[[0,0],[1,0],[0,1]]}]}`, "not turned so"},
	{`{"width": 10, "unit": "ell", "pieces": [{"id":"a","outline":[[0,0],[1,0],[0,1]]}]}`, "that is no unit"},
	{`{"width": 10, "colour": 1}`, "no such key"},
	{"{\"width\": \"\x1b[31m\"}", "no JSON object"},
	{`{"width": "wide", "pieces": []}`, "that is no number"},
}

func TestHostileOutlinesGetOneSentence(t *testing.T) {
	for _, h := range hostile {
		status, out, err := call(t, h.text, "lay", "--pieces", "-", "--evaluations", "100")
		require.Equal(t, NotUnderstood, status, h.text)
		require.Empty(t, out, h.text)
		require.Contains(t, err, h.says, h.text)
		require.Equal(t, 1, strings.Count(err, "\n"), h.text)
		require.True(t, strings.HasPrefix(err, "chalkfold: standard input"), err)
		require.NotContains(t, err, "\x1b")
	}
	status, _, err := call(t, `{"width": 10, "pieces": [{"id":"a","outline":[[0,0],[20,0],[20,20],[0,20]]}]}`, "lay", "--pieces", "-")
	require.Equal(t, NotDone, status)
	require.Contains(t, err, "a")
}

// Whatever is read, a lay is a document or a sentence.
func FuzzLayPieces(f *testing.F) {
	for _, h := range hostile {
		f.Add(h.text)
	}
	f.Add(`{"name":"x","width":10,"unit":"cm","turn":[0,180],"pieces":[{"id":"a","count":2,"outline":[[0,0],[5,0],[0,7]]}]}`)
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 4000 {
			return
		}
		status, out, err := call(t, text, "lay", "--pieces", "-", "--evaluations", "200", "--json")
		if status != Done {
			require.True(t, strings.HasPrefix(err, "chalkfold: "), err)
			require.Empty(t, out)
			return
		}
		require.True(t, json.Valid([]byte(out)))
	})
}

// Hostile cloths of a session are refused by their sentence too.
func TestHostileClothsOfASession(t *testing.T) {
	body := "form = 1\nunit = \"in\"\n[body]\nbust_girth = 36\nwaist_girth = 28\nhip_girth = 38\nheight = 65\n"
	for _, c := range []struct {
		cloth, says string
		status      int
	}{
		{"width = 8", "", NotDone},
		{"width = 58\nedges = 29", "nothing is left between them", NotDone},
		{"width = 58\ngap = 1200", "pieces cannot stand so", NotDone},
		{"width = 58\nflaws = [[0, 0, 0, 0]]", "that is no part of the cloth", NotDone},
		{"width = 58\nflaws = [[0, 0, 900, 58]]", "", Done},
		{"width = 58\nshrink_along = 100", "that number is outside", NotUnderstood},
		{"width = 58\nfold = \"cross\"", "none of its options", NotUnderstood},
		{"width = 58\nrepeat_along = 12\nrepeat_across = 3", "", Done},
	} {
		status, out, err := call(t, body+"[cloth.main]\n"+c.cloth+"\n", "lay", "-", "--evaluations", "2000", "--json")
		require.Equal(t, c.status, status, "%s: %s", c.cloth, err)
		require.Contains(t, err, c.says, c.cloth)
		if status == Done {
			require.True(t, json.Valid([]byte(out)))
		} else {
			require.Empty(t, out)
		}
	}
}

// Each piece is there as often as it is cut, inside the cloth, and what is
// bought is no less than what is laid.
func TestTheDocumentOfALay(t *testing.T) {
	file := filepath.Join(t.TempDir(), "demo"+session.Suffix)
	require.NoError(t, os.WriteFile(file, session.DemoText(), 0o600))
	for _, fold := range []string{"lengthwise", "flat", "to_middle"} {
		text := strings.Replace(string(session.DemoText()), "[cloth.main]\n", "[cloth.main]\nfold = \""+fold+"\"\n", 1)
		if strings.Count(text, "fold = ") > 1 {
			text = strings.ReplaceAll(string(session.DemoText()), `fold = "lengthwise"`, `fold = "`+fold+`"`)
		}
		status, out, err := call(t, text, "lay", "-", "--evaluations", "20000", "--json")
		require.Equal(t, Done, status, err)
		var doc struct {
			Width, Length, Buy, Density float64
			Fold                        string
			Placed                      []struct {
				Piece   string
				Layers  int
				OnFold  bool `json:"on_fold"`
				Turn    int
				Outline [][2]float64
			}
		}
		require.NoError(t, json.Unmarshal([]byte(out), &doc))
		require.Equal(t, fold, doc.Fold)
		cut := 0
		for _, p := range doc.Placed {
			layers := p.Layers
			if p.OnFold {
				layers = 1
			}
			cut += layers
			touches := false
			for _, c := range p.Outline {
				require.True(t, c[0] >= 0 && c[0] <= doc.Width && c[1] >= 0 && c[1] <= doc.Length)
				touches = touches || c[0] == 0 || c[0] == doc.Width/2
			}
			require.True(t, !p.OnFold || touches)
		}
		require.Equal(t, 10, cut, fold)
		require.GreaterOrEqual(t, doc.Buy, doc.Length)
		require.Greater(t, doc.Density, 30.0)
	}
}
