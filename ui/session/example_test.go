package session_test

import (
	"fmt"

	"chalkfold/measure"
	"chalkfold/ui/session"
)

// A value is changed in place; the comment stays.
func Example() {
	s, err := session.Parse("four.chalkfold.toml", []byte("form = 1\n[body]\nbust_girth = 36  # over the usual bra\n"))
	if err != nil {
		fmt.Println(err)
		return
	}
	text, _ := s.Bytes(s.Job.WithBody(measure.BustGirth, 37.5*measure.Inch))
	fmt.Print(string(text))

	_, err = session.Parse("four.chalkfold.toml", []byte("form = 1\n[body]\nbust_girth = \"abc\"\nwaist_girth = -3\n"))
	fmt.Println(err)
	// Output:
	// form = 1
	// [body]
	// bust_girth = "37 1/2"  # over the usual bra
	// four.chalkfold.toml:3:14: body.bust_girth = "abc"; there is no number in it; write it like 36 1/2 or 92.5 cm
	// four.chalkfold.toml:4:15: "body.waist_girth = -3"; a length cannot be less than nothing; write it without the minus
}
