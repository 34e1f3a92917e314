package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"pgregory.net/rapid"
)

// anyNear is a body near P36 with fixed choices, by one of the net methods.
func anyNear(t *rapid.T) pattern.Job {
	job := figure.Draft{Measures: base}.Job(rapid.SampledFrom([]string{pattern.Measured, pattern.Direct}).Draw(t, "method"))
	for _, id := range job.Body.IDs() {
		usual, _ := job.Body.Get(id)
		job = job.WithBody(id, measure.Length(usual.MM()*rapid.Float64Range(0.96, 1.04).Draw(t, string(id))))
	}
	bust, _ := job.Body.Get(measure.BustGirth)
	return job.WithBody(measure.UpperChestGirth, bust-figure.In(rapid.Float64Range(0, 3.5).Draw(t, "cup")))
}

// TestLargerGirth: a larger girth never gives a narrower dress at its level,
// nor a narrower front or back there.
func TestLargerGirth(t *testing.T) {
	points := map[measure.ID]string{measure.BustGirth: "underarm", measure.WaistGirth: "waist", measure.HipGirth: "hip"}
	rapid.Check(t, func(t *rapid.T) {
		job := anyNear(t)
		id := rapid.SampledFrom([]measure.ID{measure.BustGirth, measure.WaistGirth, measure.HipGirth}).Draw(t, "girth")
		l, _ := job.Body.Get(id)
		a := workroom.Draft(job)
		b := workroom.Draft(job.WithBody(id, l+figure.In(rapid.Float64Range(0.01, 1.5).Draw(t, "more"))))
		if len(a.Refused)+len(b.Refused) > 0 {
			return
		}
		sum := 0.0
		for _, piece := range []pattern.PieceID{pattern.Front, pattern.Back} {
			p, okA := a.Point(piece, points[id])
			q, okB := b.Point(piece, points[id])
			if !okA || !okB {
				t.Fatal("not drawn")
			}
			sum += q.X - p.X
			// A larger bust on the same chest goes to the front: the back keeps
			// its width, or from the large cup on gives what the front takes.
			if id != measure.BustGirth && q.X < p.X-1e-6 {
				t.Fatalf("%s: the %s narrows by %v", id, piece, p.X-q.X)
			}
		}
		if sum < -1e-6 {
			t.Fatalf("%s: the dress narrows by %v", id, -sum)
		}
	})
}

// mostMoved is how many millimetres a mark moves at most for one of a
// measurement, with every choice held and no rule changing over. Found on this
// test's bodies: 1.0, of a dart's lower leg by the front length; three times
// that is allowed.
const mostMoved = 3.0

// TestOneMillimetre changes one measurement by a millimetre, with every
// choice held: no point moves farther than the factor.
func TestOneMillimetre(t *testing.T) {
	worst, what := 0.0, ""
	rapid.Check(t, func(t *rapid.T) {
		job := anyNear(t)
		a := workroom.Draft(job)
		if len(a.Refused) > 0 {
			return
		}
		for _, set := range a.Settings {
			if set.Used && !set.Chosen && set.Known() && set.Value.Kind == pattern.KindLength {
				job = job.WithStyle(set.ID, set.Value)
			}
		}
		a = workroom.Draft(job)
		id := rapid.SampledFrom(job.Body.IDs()).Draw(t, "measurement")
		l, _ := job.Body.Get(id)
		b := workroom.Draft(job.WithBody(id, l+measure.Millimetre))
		if len(b.Refused) > 0 || len(a.Steps) != len(b.Steps) || len(a.Marks) != len(b.Marks) || trued(a) != trued(b) || stepped(a) != stepped(b) {
			return // another rule took over, or a dart more
		}
		for _, m := range a.Marks {
			if m.Kind != pattern.MarkPoint || m.Gone != 0 {
				continue
			}
			if q, ok := b.Point(m.Piece, m.Name); ok {
				if d := m.At.Dist(q); d > worst {
					worst, what = d, string(id)+" "+string(m.Piece)+"."+m.Name
				}
				if d := m.At.Dist(q); d > mostMoved {
					t.Fatalf("%s + 1 mm moves %s.%s by %.2f mm", id, m.Piece, m.Name, d)
				}
			}
		}
	})
	t.Logf("worst %.2f mm: %s", worst, what)
}

// trued says whether the dart's lower leg was moved to meet the back.
func trued(s *pattern.Sheet) bool {
	for _, st := range s.Steps {
		if st.ID == "front.dart_legs" {
			return len(st.Rule.In(measure.Mm)) > 0 && st.Rule.In(measure.Mm)[:13] == "The lower leg"
		}
	}
	return false
}

// stepped says which rules of a jump apply: a cup that counts as large, a
// dart that is drawn.
func stepped(s *pattern.Sheet) [2]bool {
	bust, chest := s.Known.Body(measure.BustGirth), measure.Length(0)
	if l, ok := s.Measured(measure.UpperChestGirth); ok {
		chest = l
	}
	d, dart := s.Dimension(pattern.Front, "dart_intake")
	return [2]bool{s.Method == pattern.Measured && bust-chest >= figure.In(2.5)-1e-6, dart && d.Length > 0}
}
