package stage

// grows is by how much the newest line grows at a time.
const grows = 0.25

// Grow draws the newest line a part farther, as a hand would; false: it is
// whole.
func (s *Draft) Grow() bool {
	if s.part += grows; s.part >= 1 {
		s.part = 0
		return false
	}
	return true
}

// Whole draws all of the newest line at once: nobody waits for it.
func (s *Draft) Whole() { s.part = 0 }
