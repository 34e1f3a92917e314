package session

import (
	"encoding/json"
	"maps"
	"path/filepath"
	"slices"

	"chalkfold/ui/files"
)

// placesKept is how many sessions the state folder knows the place in the
// lessons of.
const placesKept = 200

// samplePlace is the name under which the place of the sample client is kept:
// she has no file.
const samplePlace = "sample"

func placesFile() string { return stateFolder("lessons.json") }

// placeName is the name under which the place of a session is kept, empty for
// one without a file that is not the sample client's.
func (s *Session) placeName() string {
	switch {
	case s.Path == "" && IsDemo(s.Job):
		return samplePlace
	case s.Path == "":
		return ""
	}
	if abs, err := filepath.Abs(s.Path); err == nil {
		return abs
	}
	return s.Path
}

func places() map[string]map[string]int {
	path := placesFile()
	if path == "" {
		return nil
	}
	var all map[string]map[string]int
	text, _, err := files.Read(path, SizeLimit)
	if err != nil || json.Unmarshal(text, &all) != nil {
		return nil
	}
	return all
}

// KeepPlace notes in the state folder how far she is in the lessons, so that
// leaving without a save loses nothing of it. That it cannot be written is no
// reason to stop a lesson.
func (s *Session) KeepPlace() {
	file, name, learnt := placesFile(), s.placeName(), s.Learnt()
	if file == "" || name == "" || len(learnt) == 0 {
		return
	}
	all := places()
	if maps.Equal(all[name], learnt) {
		return
	}
	if all == nil {
		all = map[string]map[string]int{}
	}
	all[name] = learnt
	for _, old := range slices.Sorted(maps.Keys(all)) {
		if len(all) <= placesKept {
			break
		}
		if old != name {
			delete(all, old)
		}
	}
	text, err := json.MarshalIndent(all, "", " ")
	if err != nil || files.Folder(filepath.Dir(file)) != nil {
		return
	}
	_ = files.Write(file, append(text, '\n'), files.Options{Mode: files.Private})
}

// ResumePlace takes up the place that was kept; the next save writes it into
// the file.
func (s *Session) ResumePlace() {
	if name := s.placeName(); name != "" {
		for lesson, page := range places()[name] {
			s.Learn(lesson, page)
		}
	}
}
