package workroom_test

import (
	"testing"

	"chalkfold/measure"
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

// TestFacingDefault: facings are cut apart unless a lining wants one edge to
// begin at; that a narrow shoulder is better faced in one is said.
func TestFacingDefault(t *testing.T) {
	of := func(picks map[pattern.ChoiceID]string, inset float64) pattern.Setting {
		s := workroom.Draft(figure.Styled(t, picks).WithStyle("shoulder_inset", pattern.LengthValue(figure.In(inset))))
		set, _ := s.Known.Setting("facing")
		return set
	}
	narrow := of(nil, 0.75)
	require.Equal(t, "separate", narrow.Value.Pick)
	require.Contains(t, narrow.Default.Because.In(measure.In), "4 1/4 or less")
	wide := workroom.Draft(figure.Styled(t, nil, "neck_widening").WithBody(measure.AcrossShoulders, figure.In(18)).WithStyle("neck_widening", pattern.LengthValue(0)))
	set, _ := wide.Known.Setting("facing")
	require.NotContains(t, set.Default.Because.In(measure.In), "4 1/4")
	require.Equal(t, "all_in_one", of(map[pattern.ChoiceID]string{"lining": "to_facing"}, 0.75).Value.Pick)
	require.Equal(t, "separate", of(map[pattern.ChoiceID]string{"lining": "to_facing", "sleeve": "short"}, 0).Value.Pick)
}

// TestFacingDepth: a facing of no depth, or of half the bodice, is refused; a
// facing all in one with a sleeve says why there is none.
func TestFacingDepth(t *testing.T) {
	whole := figure.Styled(t, map[pattern.ChoiceID]string{"facing": "all_in_one"})
	for depth, refused := range map[float64]bool{0: true, 2.5: false, 3: false, 9: true} {
		s := workroom.Draft(whole.WithStyle("facing_depth", pattern.LengthValue(figure.In(depth))))
		require.Equal(t, refused, len(s.Refused) > 0, depth)
		if refused {
			require.Equal(t, "facing_depth", s.Refused[0].Input)
		}
	}
	s := workroom.Draft(whole.WithStyle("sleeve", pattern.PickValue("short")))
	require.Equal(t, "facing", s.Refused[0].Input)
	require.Contains(t, s.Refused[0].Cure.In(measure.In), "separate")
}

// TestFacingsMeet: front and back neck facing are sewn to each other, so that
// they are as wide at the shoulder however the necks differ.
func TestFacingsMeet(t *testing.T) {
	for _, front := range []string{"round", "sweetheart", "v", "square", "boat"} {
		s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": front}, "front_neck_depth", "neck_widening"))
		f, b := pieceOf(t, s, pattern.FrontNeckFacing), pieceOf(t, s, pattern.BackNeckFacing)
		require.InDelta(t, f.Along("shoulder").Inches(), b.Along("shoulder").Inches(), near, front)
	}
}
