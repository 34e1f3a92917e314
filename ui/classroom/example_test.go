package classroom_test

import (
	"fmt"
	"testing/fstest"

	"chalkfold/ui/classroom"
	"chalkfold/ui/session"
)

func Example() {
	dir := fstest.MapFS{
		"maro.chalkfold.toml": {Data: session.DemoText()},
		"torn.chalkfold.toml": {Data: []byte("form = 1\n[body]\nbust_girth = 36 1/2\n")},
		"new.chalkfold.toml":  {Data: []byte("form = 1\n[client]\nname = \"Learner Four\"\n[lesson]\ntape = 2\n")},
	}
	class, _ := classroom.Read(dir)
	for _, r := range class.Rows {
		if r.Trouble != "" {
			fmt.Println(r.Trouble)
			continue
		}
		fmt.Printf("%s: %t, %s, %q\n", r.Client, r.Taken == r.Of, r.Verdict, r.Lesson)
	}
	// Output:
	// Maro Tellin: true, pass, ""
	// Learner Four: false, missing, "tape"
	// torn.chalkfold.toml:3:17: "bust_girth = 36 1/2"; something follows the value; write lengths and words in quotes, like bust_girth = "36 1/2"
}
