package theme_test

import (
	"fmt"

	"chalkfold/ui/theme"
)

func Example() {
	env := func(key string) string { return map[string]string{"TERM": "xterm-256color", "COLORFGBG": "15;0"}[key] }
	t := theme.Auto(env).With(theme.ProfileFrom(env, true, "auto"))
	fmt.Println(t.Name())
	fmt.Printf("%q\n", t.Style(theme.Newest).Render("underarm"))
	// Output:
	// dark
	// "\x1b[0;1;38;5;215;48;5;233munderarm\x1b[0m"
}
