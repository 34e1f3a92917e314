package workroom_test

import (
	"math"
	"reflect"
	"runtime/debug"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// anyJob draws a body about P36, some of it absurd, and some choices.
func anyJob(t *rapid.T) pattern.Job {
	method := rapid.SampledFrom([]string{pattern.Measured, pattern.Thumb}).Draw(t, "method")
	var file figure.Draft
	file.Measures = base
	job := file.Job(method)
	wild := rapid.Bool().Draw(t, "wild")
	for _, id := range workroom.Needs(pattern.Dress, pattern.Measured) {
		usual, ok := job.Body.Get(id)
		if !ok {
			continue
		}
		spread := 0.15
		if wild {
			spread = 0.6
		}
		job = job.WithBody(id, measure.Length(usual.MM()*rapid.Float64Range(1-spread, 1+spread).Draw(t, string(id))))
		if rapid.IntRange(0, 19).Draw(t, "leave out") == 0 {
			job = job.WithoutBody(id)
		}
	}
	for _, c := range workroom.Choices(pattern.Dress) {
		if c.Kind == pattern.KindLength && rapid.IntRange(0, 5).Draw(t, "choose") == 0 {
			job = job.WithStyle(c.ID, pattern.LengthValue(figure.In(rapid.Float64Range(0, 12).Draw(t, string(c.ID)))))
		}
	}
	return job
}

var base = map[string]float64{
	"bust": 36, "waist": 28, "hip": 38, "neck": 14.5, "across_shoulder": 15, "across_front": 12.75, "across_back": 13.75,
	"back_waist": 16, "front_waist": 17.75, "bust_depth": 10.25, "bust_span": 7.25, "hip_depth": 8, "shoulder_drop": 1.5, "waist_to_knee": 23,
}

// TestAnyJob: whatever she typed, the draft ends, is the same twice, holds
// no NaN, and what is drawn whole on ordinary bodies is sound.
func TestAnyJob(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		job := anyJob(t)
		s := workroom.Draft(job)
		if !reflect.DeepEqual(s, workroom.Draft(job)) {
			t.Fatal("two drafts of one job differ")
		}
		for _, m := range s.Marks {
			if m.Kind == pattern.MarkPoint && (math.IsNaN(m.At.X) || math.IsNaN(m.At.Y)) {
				t.Fatalf("%s.%s is not a number", m.Piece, m.Name)
			}
		}
		if !s.Complete && len(s.Missing) == 0 && len(s.Refused) == 0 {
			t.Fatal("not complete, and nothing said why")
		}
	})
}

// TestSoundBodies: bodies within 6 % of P36 in every measurement, defaults
// only; whatever is not refused is simple and meets.
func TestSoundBodies(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		method := rapid.SampledFrom([]string{pattern.Measured, pattern.Thumb}).Draw(t, "method")
		job := figure.Draft{Measures: base}.Job(method)
		for _, id := range job.Body.IDs() {
			usual, _ := job.Body.Get(id)
			job = job.WithBody(id, measure.Length(usual.MM()*rapid.Float64Range(0.94, 1.06).Draw(t, string(id))))
		}
		s := workroom.Draft(job)
		if !s.Complete {
			if len(s.Refused) == 0 {
				t.Fatal("not complete and not refused")
			}
			return
		}
		for _, p := range s.Pieces {
			if !p.Stitch.Outline(0.02).Simple() || !p.CutLine.Outline(0.02).Simple() {
				t.Fatalf("%s crosses itself", p.ID)
			}
		}
		f, _ := s.SewnDimension(pattern.Front, "side")
		b, _ := s.SewnDimension(pattern.Back, "side")
		if math.Abs((f.Length - b.Length).Inches()) > 1.0/16+1e-9 {
			t.Fatalf("sides %v and %v", f.Length, b.Length)
		}
	})
}

// TestPartOfABody: with the bust missing the levels are drawn, the widths
// wait, and only the bust is named.
func TestPartOfABody(t *testing.T) {
	job := figure.Draft{Measures: base}.Job(pattern.Measured).WithoutBody(measure.BustGirth)
	s := workroom.Draft(job)
	require.False(t, s.Complete)
	require.Len(t, s.Missing, 1)
	require.Equal(t, measure.BustGirth, s.Missing[0].ID)
	drawn := map[string]bool{}
	for _, st := range s.Steps {
		drawn[st.ID] = st.Drawn
		if !st.Drawn {
			require.False(t, st.Waits.IsEmpty(), st.ID)
		}
	}
	require.True(t, drawn["back.levels"])
	require.True(t, drawn["back.neck"])
	require.False(t, drawn["back.bust_width"])
	require.False(t, drawn["front.armhole"])
}

// TestProposals: all but the three girths are proposed, marked, and never
// put into the job.
func TestProposals(t *testing.T) {
	in := figure.In
	job := pattern.Job{Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: in(37), measure.WaistGirth: in(29), measure.HipGirth: in(40),
	})}
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		s := workroom.Draft(job.WithStyle(pattern.Method, pattern.PickValue(method)))
		require.True(t, s.Complete, method)
		require.NotEmpty(t, s.Proposed())
		require.Equal(t, 3, s.Job.Body.Len())
		assumed := 0
		for _, st := range s.Steps {
			assumed += len(st.Assumed)
		}
		require.Positive(t, assumed)
	}
}

// TestChosenNeverGivesWay: a default gives way to the body, her own choice
// does not.
func TestChosenNeverGivesWay(t *testing.T) {
	job := figure.Draft{Measures: base}.Job(pattern.Measured)
	short := job.WithBody(measure.AcrossShoulders, figure.In(13.5))
	s := workroom.Draft(short)
	require.Less(t, s.Known.Length("neck_widening").Inches(), 1.0)
	s = workroom.Draft(short.WithStyle("neck_widening", pattern.LengthValue(figure.In(1))))
	require.InDelta(t, 1, s.Known.Length("neck_widening").Inches(), 1e-12)
}

func BenchmarkDraft(b *testing.B) {
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // as the program sets it
	for _, method := range []string{pattern.Measured, pattern.Thumb} {
		b.Run(method, func(b *testing.B) {
			job := figure.Draft{Measures: base}.Job(method)
			b.ReportAllocs()
			for b.Loop() {
				workroom.Draft(job)
			}
		})
	}
}
