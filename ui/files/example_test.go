package files_test

import (
	"fmt"
	"os"
	"path/filepath"

	"chalkfold/ui/files"
)

func Example() {
	dir, err := os.MkdirTemp("", "example")
	if err != nil {
		fmt.Println(err)
		return
	}
	defer os.RemoveAll(dir)
	path := filepath.Join(dir, "learner.txt")

	stamp, _ := files.Save(path, []byte("bust 36\n"), files.Stamp{}, files.Options{})
	_ = os.WriteFile(path, []byte("bust 38\n"), 0o600) // somebody else
	_, err = files.Save(path, []byte("bust 37\n"), stamp, files.Options{Previous: true})
	fmt.Println(err.Error()[len(dir)+1:])
	// Output: learner.txt: it was changed elsewhere since it was opened; save under another name, or look at it first
}
