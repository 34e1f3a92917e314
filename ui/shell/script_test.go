package shell

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"chalkfold/ui/session"
)

// The scripts call chalkfold as anybody would: see testdata/script.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"chalkfold": func() { os.Exit(Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr, os.Getenv)) },
	})
}

func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(e *testscript.Env) error {
			e.Setenv("HOME", e.WorkDir)
			e.Setenv("LANG", "C.UTF-8")
			return os.WriteFile(e.WorkDir+"/demo.chalkfold.toml", session.DemoText(), 0o600)
		},
	})
}
