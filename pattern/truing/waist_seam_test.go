package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
	reference "chalkfold/testdata/figure"
)

// TestWaistSeamFaults: bodice and skirt that meet pass; what a careless hand
// does to them is found.
func TestWaistSeamFaults(t *testing.T) {
	job := reference.Styled(t, map[pattern.ChoiceID]string{"waist_shaping": "fisheye"}).WithStyle("waist_seam", pattern.SwitchValue(true))
	said := func(s *pattern.Sheet) map[string]pattern.Finding {
		out := map[string]pattern.Finding{}
		for _, f := range truing.Run(s) {
			if f.Check == "waist_seams" {
				out[f.Code] = f
			}
		}
		return out
	}
	require.Equal(t, pattern.Pass, said(workroom.Draft(job))[""].Verdict)
	require.Empty(t, said(workroom.Draft(reference.Styled(t, nil))), "a dress in one has no such check")

	edge := func(s *pattern.Sheet, id pattern.PieceID, name string, nth int) *pattern.Edge {
		p, _ := s.Piece(id)
		for i := range p.Edges {
			if p.Edges[i].Name == name {
				if nth == 0 {
					return &p.Edges[i]
				}
				nth--
			}
		}
		t.Fatalf("no %s on %s", name, id)
		return nil
	}
	longer := func(e *pattern.Edge, by float64) {
		e.Stitch = geom.Lines(e.Stitch.Start(), e.Stitch.End().Add(e.Stitch.EndTangent().Scale(by)))
	}
	for code, spoil := range map[string]func(*pattern.Sheet){
		"waist_seams": func(s *pattern.Sheet) { longer(edge(s, pattern.SkirtFront, "waist", 1), 6) },
		"waist_darts_meet": func(s *pattern.Sheet) {
			longer(edge(s, pattern.SkirtBack, "waist", 0), 6)
			longer(edge(s, pattern.SkirtBack, "waist", 1), -6)
		},
		"waist_dart_legs": func(s *pattern.Sheet) {
			p, _ := s.Piece(pattern.SkirtFront)
			p.Darts[0].Tip.X += 12
		},
		"waist_dart_cap": func(s *pattern.Sheet) {
			p, _ := s.Piece(pattern.Back)
			p.Darts[0].Cap.Y += 8
		},
	} {
		s := workroom.Draft(job)
		spoil(s)
		f, ok := said(s)[code]
		require.True(t, ok, code)
		require.Equal(t, pattern.Fail, f.Verdict, code)
		require.NotEmpty(t, f.Cure.In(measure.In), code)
		_, known := s.Piece(f.Where.Piece)
		require.True(t, known, code)
	}
}

// TestPlacesOnTheSkirt: what is found below a waist seam is found on the
// skirt.
func TestPlacesOnTheSkirt(t *testing.T) {
	job := reference.Styled(t, nil).WithStyle("waist_seam", pattern.SwitchValue(true))
	for _, f := range truing.Run(workroom.Draft(job)) {
		switch f.Check {
		case "hem_join", "hem_level", "walking", "slit_height", "hip_girth":
			if f.Verdict != pattern.Skip {
				require.Contains(t, []pattern.PieceID{pattern.SkirtFront, pattern.SkirtBack}, f.Where.Piece, f.Check)
			}
		case "neck_join", "armhole_join":
			require.Equal(t, pattern.Front, f.Where.Piece, f.Check)
		}
	}
}
