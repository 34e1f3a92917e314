package workroom_test

import (
	"testing"

	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestFacings holds facings all in one and apart to their figures.
func TestFacings(t *testing.T) {
	type facing struct {
		Side   [2]float64   `json:"side"`
		Outer  figure.Curve `json:"outer_curve"`
		Length float64      `json:"outer_length"`
	}
	var ref struct {
		WholeFront facing `json:"all_in_one_front"`
		WholeBack  facing `json:"all_in_one_back"`
		NeckFront  facing `json:"separate_neck_front"`
		NeckBack   facing `json:"separate_neck_back"`
	}
	figure.StylesP36(t).Group(t, "facings", &ref)
	whole := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"facing": "all_in_one"}))
	require.Empty(t, whole.Refused)
	require.Len(t, whole.Pieces, 4)
	for piece, want := range map[pattern.PieceID]facing{pattern.Front: ref.WholeFront, pattern.Back: ref.WholeBack} {
		line := drawnLine(whole, piece, "facing").Path
		samePath(t, want.Outer.Path(), line, string(piece))
		require.InDelta(t, want.Length, line.Length()/25.4, near)
	}
	// The reference's facing is 2 3/4 deep at the centre where it stands apart.
	apart := workroom.Draft(figure.Styled(t, nil).WithStyle("facing_neck_depth", pattern.LengthValue(figure.In(2.75))))
	for piece, want := range map[pattern.PieceID]facing{pattern.Front: ref.NeckFront, pattern.Back: ref.NeckBack} {
		samePath(t, want.Outer.Path(), drawnLine(apart, piece, "neck_facing").Path.Reverse(), string(piece))
	}
}

// TestBias: strips are as long as their edges and an inch, and lie at 45
// degrees to the grain.
func TestBias(t *testing.T) {
	s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"facing": "bias"}))
	require.Empty(t, s.Refused)
	require.Len(t, s.Pieces, 4)
	for id, girth := range map[pattern.PieceID]string{pattern.NeckStrip: "neck", pattern.ArmholeStrip: "armhole"} {
		p, ok := s.Piece(id)
		require.True(t, ok)
		want, _ := s.Girth(girth)
		require.InDelta(t, want.Inches()+1, p.Edges[0].Length().Inches(), near)
		way := p.Edges[0].Stitch.StartTangent()
		require.InDelta(t, way.X, way.Y, 1e-9)
		require.InDelta(t, 1.25*(want.Inches()+1), p.Stitch.Outline(0.02).Area()/25.4/25.4, 0.01)
	}
	open := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"facing": "bias", "front_neckline": "slit"}))
	require.False(t, open.Complete)
	require.NotEmpty(t, open.Refused)
}
