package session

import (
	"bytes"
	_ "embed"

	"chalkfold/pattern"
)

//go:embed demo.chalkfold.toml
var demoText []byte

// DemoText is the file of the demonstration: an invented learner of an evening
// class and her work dress.
func DemoText() []byte { return bytes.Clone(demoText) }

// Demo is the session of the demonstration, without a file of its own.
func Demo() *Session {
	s, err := Parse("the demonstration", demoText)
	if err != nil {
		panic("session: the demonstration's own session: " + err.Error())
	}
	return s
}

// IsDemo says that a job is the sample client's, as she stands: she has
// nothing to hide.
func IsDemo(job pattern.Job) bool {
	sample := Demo().Job
	return job.Client.Name == sample.Client.Name && InUnit(job, sample.Unit).Body.Equal(sample.Body)
}
