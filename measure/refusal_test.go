package measure_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	. "chalkfold/measure"
)

func TestRefusal(t *testing.T) {
	r := Refusal{Where: "bust_girth", Read: `"36 2"`, Wrong: "two numbers", Works: "write 36 1/2"}
	require.Equal(t, `bust_girth: "36 2"; two numbers; write 36 1/2`, r.Error())
	require.Equal(t, "a.toml: two numbers", Refusal{Where: "a.toml", Wrong: "two numbers"}.Error())
	require.Equal(t, "two numbers; write one", Refusal{Wrong: "two numbers", Works: "write one"}.Error())

	_, err := Read("36 2", In)
	var at *Refusal
	require.ErrorAs(t, err, &at)
	require.True(t, strings.HasPrefix(at.At("waist_girth").Error(), `waist_girth: "36 2"; `))
	require.Empty(t, at.Where, "At gives a new Refusal")
}

func TestRefusalIsHarmless(t *testing.T) {
	r := Refusal{
		Where: "a\x1b]0;x\x07b\n", Read: "\u009b31m" + strings.Repeat("x", 100000), Wrong: "turned \u202e round\xff", Works: "\x00",
	}
	text := r.Error()
	requirePlain(t, text)
	require.NotContains(t, text, "\u202e")
	require.Contains(t, text, `\u202e`)
	require.Contains(t, text, `\xff`)
	require.Less(t, len(text), 1000)
	require.Equal(t, `"`+strings.Repeat("é", 48)+`..."`, Quoted(strings.Repeat("é", 60)))
}
