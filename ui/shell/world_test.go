package shell

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/ui/canvas"
)

func envOf(pairs ...string) Env {
	m := map[string]string{}
	for i := 0; i+1 < len(pairs); i += 2 {
		m[pairs[i]] = pairs[i+1]
	}
	return func(k string) string { return m[k] }
}

// What drawings are made of goes by what the terminal can be trusted with.
func TestGlyphsByTheTerminal(t *testing.T) {
	for _, tc := range []struct {
		system string
		env    Env
		plain  bool
		want   canvas.Glyphs
	}{
		{"linux", envOf("TERM", "xterm-256color", "LANG", "en_GB.UTF-8"), false, canvas.Braille},
		{"linux", envOf("TERM", "xterm-256color", "LANG", "de_DE.utf8"), false, canvas.Braille},
		{"linux", envOf("TERM", "xterm-256color"), false, canvas.Braille},
		{"linux", envOf("TERM", "xterm-256color", "LANG", "C"), false, canvas.ASCII},
		{"linux", envOf("TERM", "xterm-256color", "LANG", "en_GB.UTF-8", "LC_ALL", "de_DE.ISO-8859-1"), false, canvas.ASCII},
		{"linux", envOf("TERM", "xterm-256color", "LC_ALL", "", "LC_CTYPE", "C.UTF-8", "LANG", "C"), false, canvas.Braille},
		{"linux", envOf("TERM", "linux", "LANG", "en_GB.UTF-8"), false, canvas.ASCII},
		{"linux", envOf("TERM", "dumb", "LANG", "en_GB.UTF-8"), false, canvas.ASCII},
		{"linux", envOf("TERM", "xterm", "LANG", "en_GB.UTF-8"), true, canvas.ASCII},
		{"windows", envOf("WT_SESSION", "1"), false, canvas.Braille},
		{"windows", envOf(), false, canvas.Blocks},
	} {
		require.Equal(t, tc.want, glyphsOn(tc.system, tc.env, tc.plain), "%+v", tc)
	}
	for _, tc := range []struct {
		env  Env
		want bool
	}{
		{envOf("LANG", "en_GB.UTF-8"), false},
		{envOf("LANG", "ja_JP.UTF-8"), true},
		{envOf("LC_ALL", "zh_CN.UTF-8"), true},
		{envOf("LC_CTYPE", "ko_KR.UTF-8"), true},
		{envOf("LANG", "ja_JP.UTF-8", "RUNEWIDTH_EASTASIAN", "0"), false},
		{envOf("RUNEWIDTH_EASTASIAN", "1"), true},
	} {
		require.Equal(t, tc.want, strict(tc.env))
	}
}
