package workroom_test

import (
	"strings"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// TestLining holds linings to their reference: the hem an inch higher on both
// halves, the side an inch shorter, the edge of the facing as long as there,
// and the dart pressed the other way.
func TestLining(t *testing.T) {
	var ref struct {
		Lining struct {
			HemFront  float64 `json:"hem_level_front"`
			HemBack   float64 `json:"hem_level_back"`
			Shorter   float64 `json:"side_shorter"`
			FaceFront float64 `json:"to_facing_front"`
			FaceBack  float64 `json:"to_facing_back"`
			OpenFrom  float64 `json:"slit_left_open_from"`
		} `json:"lining"`
	}
	figure.StylesP36(t).Group(t, "facings", &ref)
	want := ref.Lining
	full := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"lining": "full"}))
	require.Empty(t, full.Refused)
	require.Len(t, full.Pieces, 4, "the lining takes the place of the facings")
	for id, level := range map[pattern.PieceID]float64{pattern.Front: want.HemFront, pattern.Back: want.HemBack} {
		p, l := pieceOf(t, full, id), pieceOf(t, full, id+"_lining")
		require.Equal(t, "lining", l.Cloth)
		require.Equal(t, p.Cut, l.Cut)
		require.InDelta(t, level, l.Stitch.Bounds().Max.Y/25.4, near)
		require.InDelta(t, want.Shorter, (p.Along("side") - l.Along("side")).Inches(), near)
		require.InDelta(t, p.Along("armhole").Inches(), l.Along("armhole").Inches(), near)
		require.InDelta(t, 1.0/16, (p.EdgesNamed("neck")[0].Allowance - l.EdgesNamed("neck")[0].Allowance).Inches(), near)
		require.Equal(t, pattern.EdgeRef{Piece: l.ID, Edge: "neck"}, p.EdgesNamed("neck")[0].SewnTo)
	}
	dart := pieceOf(t, full, "front_lining").Darts[0]
	require.Equal(t, "up", dart.Pressed)
	require.Equal(t, pieceOf(t, full, pattern.Front).Darts[0].Legs, dart.Legs)
	opens := 0
	for _, n := range pieceOf(t, full, "back_lining").Notches {
		if n.Name == "open below" {
			opens++
			require.InDelta(t, want.OpenFrom, 40-n.At.Y/25.4, near)
		}
	}
	require.Equal(t, 1, opens)

	to := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"lining": "to_facing"}))
	require.Empty(t, to.Refused)
	require.Equal(t, "all_in_one", to.Pick("facing"), "one facing for the lining to begin at")
	for id, long := range map[pattern.PieceID]float64{pattern.Front: want.FaceFront, pattern.Back: want.FaceBack} {
		require.InDelta(t, long, pieceOf(t, to, id+"_lining").Along("facing").Inches(), near)
		require.InDelta(t, long, pieceOf(t, to, id+"_facing").Along("outer").Inches(), near)
		require.Positive(t, pieceOf(t, to, id+"_facing").EdgesNamed("outer")[0].Allowance)
	}
}

func pieceOf(t *testing.T, s *pattern.Sheet, id pattern.PieceID) *pattern.Piece {
	t.Helper()
	p, ok := s.Piece(id)
	require.True(t, ok, id)
	return p
}

// TestLinings draws a lining for every kind of garment, or says why there is
// none; each passes its check, and the other pieces stay as they are.
func TestLinings(t *testing.T) {
	for _, c := range []struct {
		style  string
		pieces int // of lining; none: refused
	}{
		{"lining=full panel_seam=shoulder", 4},
		{"lining=full panel_seam=armhole hem_opening=vent", 4},
		{"lining=to_facing panel_seam=armhole sleeve=short", 5},
		{"lining=to_facing panel_seam=shoulder", 0},
		{"lining=full sleeve=long", 3},
		{"lining=full sleeve=cap", 2},
		{"lining=to_facing sleeve=long", 3},
		{"lining=to_facing sleeve=cap facing=separate", 0},
		{"lining=to_facing facing=bias", 0},
		{"lining=to_facing facing=separate", 0},
		{"lining=to_facing bust_dart=shoulder", 0},
		{"lining=to_facing bust_dart=french", 2},
		{"lining=to_facing back_shoulder=dart", 0},
		{"lining=full back_shoulder=dart", 2},
		{"lining=full bust_dart=neck", 2},
		{"lining=full bust_dart=armhole", 2},
		{"lining=full front_neckline=keyhole", 2},
		{"lining=to_facing front_neckline=slit closure=none", 2},
		{"lining=to_facing front_neckline=jewel closure=placket", 2},
		{"lining=full front_neckline=jewel closure=placket", 2},
		{"lining=full hem_opening=side_slits waist_shaping=two_back", 2},
		{"lining=full collar=stand closure=zip_back", 2},
		{"garment=top lining=full", 2},
		{"garment=shift lining=to_facing", 2},
		{"garment=tunic lining=full", 2},
		{"garment=skirt lining=full", 2},
		{"garment=skirt lining=full waist_finish=band", 2},
		{"garment=skirt lining=to_facing", 2},
		{"garment=skirt lining=to_facing skirt_line=flared", 2},
		{"garment=skirt lining=to_facing waist_finish=band", 0},
	} {
		picks := map[pattern.ChoiceID]string{}
		for _, kv := range strings.Fields(c.style) {
			k, v, _ := strings.Cut(kv, "=")
			picks[pattern.ChoiceID(k)] = v
		}
		s := workroom.Draft(figure.Styled(t, picks))
		if c.pieces == 0 {
			n := 0 // front and back; a facing may have its own reason besides
			for _, r := range s.Refused {
				if r.Code == "R34" {
					n++
					require.Equal(t, "lining", r.Input, c.style)
					require.NotEmpty(t, r.Cure.In(measure.In))
				}
			}
			require.Equal(t, 2, n, c.style)
			continue
		}
		require.Empty(t, s.Refused, c.style)
		sound(t, s, c.style)
		n := 0
		for _, p := range s.Pieces {
			if p.Cloth == "lining" {
				n++
				require.True(t, strings.HasSuffix(string(p.ID), "_lining"))
			}
		}
		require.Equal(t, c.pieces, n, c.style)
		fits := 0
		for _, f := range s.Findings {
			if f.Check == "lining_fit" {
				fits++
				require.Equal(t, pattern.Pass, f.Verdict, "%s: %s", c.style, f.Says.In(measure.In))
			}
		}
		require.Equal(t, 3, fits, c.style)
		delete(picks, "lining")
		plain := workroom.Draft(figure.Styled(t, picks))
		for i := range plain.Pieces {
			if id := plain.Pieces[i].ID; !strings.HasSuffix(string(id), "facing") {
				require.Equal(t, plain.Pieces[i].Stitch, pieceOf(t, s, id).Stitch, "%s: %s", c.style, id)
			}
		}
	}
}

// TestLiningWaistSeam: a lining has the seams and darts of the garment.
func TestLiningWaistSeam(t *testing.T) {
	job := figure.Styled(t, map[pattern.ChoiceID]string{"lining": "full", "waist_shaping": "fisheye"}).WithStyle("waist_seam", pattern.SwitchValue(true))
	s := workroom.Draft(job)
	require.Empty(t, s.Refused)
	sound(t, s, "waist seam")
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back, pattern.SkirtFront, pattern.SkirtBack} {
		p, l := pieceOf(t, s, id), pieceOf(t, s, id+"_lining")
		require.InDelta(t, p.Along("waist").Inches(), l.Along("waist").Inches(), near)
		require.Len(t, l.Darts, len(p.Darts))
		for i, d := range l.Darts {
			require.NotEqual(t, p.Darts[i].Pressed, d.Pressed)
		}
	}
	toile := workroom.Toile(job)
	for _, p := range toile.Pieces {
		require.NotEqual(t, "lining", p.Cloth, "a toile has no lining")
	}
}

// TestLiningTooDeepAFacing: a skirt's lining needs something of its darts.
func TestLiningTooDeepAFacing(t *testing.T) {
	job := figure.Styled(t, map[pattern.ChoiceID]string{"garment": "skirt", "lining": "to_facing"})
	s := workroom.Draft(job.WithStyle("waist_facing_width", pattern.LengthValue(figure.In(3.25))))
	require.NotEmpty(t, s.Refused)
	require.Equal(t, "waist_facing_width", s.Refused[0].Input)
}

// BenchmarkLined drafts a lined dress with a long sleeve.
func BenchmarkLined(b *testing.B) {
	job := sleevedJob(b, "long").WithStyle("lining", pattern.PickValue("full"))
	b.ReportAllocs()
	for b.Loop() {
		workroom.Draft(job)
	}
}
