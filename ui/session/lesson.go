package session

import (
	"maps"
	"math"
	"strings"
)

// cardKey begins the names under which ticks on a chalk card are kept among
// the lessons.
const cardKey = "card."

// LastLesson is the lesson that was begun last: a new one is written below
// those that are there. Without any it is empty.
func (s *Session) LastLesson() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	last, at := "", -1
	for id, answered := range s.Lesson {
		if answered <= 0 || strings.HasPrefix(id, cardKey) {
			continue // looked into, not begun; or marks ticked off a chalk card
		}
		place := math.MaxInt // begun since the file was read
		if e, ok := s.layout.find([]string{"lesson", id}); ok {
			place = e.value
		}
		if place > at || place == at && id > last {
			last, at = id, place
		}
	}
	return last
}

// Learnt is how far she is in the lessons: by id, the last page that is done.
// What it returns is not written into afterwards.
func (s *Session) Learnt() map[string]int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.Lesson
}

// Learn notes that a page of a lesson is done; going back over earlier ones
// loses nothing. The next save writes it.
func (s *Session) Learn(lesson string, page int) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if lesson == "" || page <= s.Lesson[lesson] {
		return
	}
	next := maps.Clone(s.Lesson)
	if next == nil {
		next = map[string]int{}
	}
	next[lesson] = page
	s.Lesson = next
}
