package shell

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"chalkfold/ui/session"
)

// built is a folder for what is built once for all tests of this room. It is
// taken away when they have run.
var built string

// Built is that folder, for the tests outside the room.
func Built() string { return built }

// tidied are the tests, with that folder round them.
type tidied struct{ *testing.M }

// Run runs them.
func (m tidied) Run() int {
	dir, err := os.MkdirTemp("", "chalkfold-built")
	if err != nil {
		panic(err)
	}
	built = dir
	defer os.RemoveAll(dir)
	return m.M.Run()
}

// The scripts call chalkfold as anybody would: see testdata/script.
func TestMain(m *testing.M) {
	testscript.Main(tidied{m}, map[string]func(){
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
