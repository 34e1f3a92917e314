package session

import "math"

// LastLesson is the lesson that was begun last: a new one is written below
// those that are there. Without any it is empty.
func (s *Session) LastLesson() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	last, at := "", -1
	for id := range s.Lesson {
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
