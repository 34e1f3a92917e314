package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// seamed is figure P36 with a waist seam, its waist darts and further picks.
func seamed(t testing.TB, picks map[pattern.ChoiceID]string) pattern.Job {
	all := map[pattern.ChoiceID]string{"waist_shaping": "fisheye"}
	for id, p := range picks {
		all[id] = p
	}
	return figure.Styled(t, all).WithStyle("waist_seam", pattern.SwitchValue(true))
}

// unfailed: a draft is whole and no check fails on it.
func unfailed(t *testing.T, s *pattern.Sheet, what string) {
	t.Helper()
	for _, r := range s.Refused {
		t.Errorf("%s: %s %s", what, r.Code, r.Says.In(measure.In))
	}
	require.True(t, s.Complete, what)
	sound(t, s, what)
	for _, f := range s.Findings {
		require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s %s", what, f.Check, f.Says.In(measure.In))
	}
}

// farthest remembers the largest difference from a figure, inches.
type farthest struct {
	by   float64
	what string
}

func (w *farthest) hold(t *testing.T, want, got float64, what string) {
	t.Helper()
	require.InDelta(t, want, got, near, what)
	if d := math.Abs(want - got); d > w.by {
		w.by, w.what = d, what
	}
}

func (w *farthest) point(t *testing.T, want [2]float64, got geom.Point, what string) {
	t.Helper()
	w.hold(t, want[0], got.X/25.4, what+" out")
	w.hold(t, want[1], got.Y/25.4, what+" down")
}

func (w *farthest) say(t *testing.T) { t.Logf("worst difference %.5f in: %s", w.by, w.what) }

// TestWaistSeam holds bodice and skirt to their figures: as long as each
// other, the darts as far from the centre.
func TestWaistSeam(t *testing.T) {
	type half struct {
		Bodice float64 `json:"bodice"`
		Skirt  float64 `json:"skirt"`
		Dart   float64 `json:"dart_from_centre"`
	}
	var ref struct {
		Front half `json:"front"`
		Back  half `json:"back"`
	}
	figure.SkirtsP36(t).Group(t, "waist_seam", &ref)
	var w farthest
	s := workroom.Draft(seamed(t, nil))
	unfailed(t, s, "waist seam")
	for _, h := range []struct {
		want          half
		bodice, skirt pattern.PieceID
	}{{ref.Front, pattern.Front, pattern.SkirtFront}, {ref.Back, pattern.Back, pattern.SkirtBack}} {
		bodice, ok := s.Piece(h.bodice)
		require.True(t, ok)
		skirt, ok := s.Piece(h.skirt)
		require.True(t, ok)
		w.hold(t, h.want.Bodice, bodice.Along("waist").Inches(), "bodice")
		w.hold(t, h.want.Skirt, skirt.Along("waist").Inches(), "skirt")
		inner, _ := s.Point(h.bodice, "waist_seam_dart_inner")
		w.hold(t, h.want.Dart, inner.X/25.4, "dart")
		inner, _ = s.Point(h.bodice, "skirt_waist_dart_inner")
		w.hold(t, h.want.Dart, inner.X/25.4, "dart of the skirt")
	}
	require.Len(t, s.Pieces, 8)
	waist, _ := s.Girth("waist")
	w.hold(t, 30, waist.Inches(), "girth")
	w.say(t)
}

// TestDartAtTheWaist holds the bust dart in a waist seam to its figures, alone
// and joined by the waist dart.
func TestDartAtTheWaist(t *testing.T) {
	var turned map[string]struct {
		Waist     [2]float64   `json:"waist"`
		Fixed     [2]float64   `json:"leg_fixed"`
		Moved     [2]float64   `json:"leg_turned"`
		Tip       [2]float64   `json:"tip"`
		Cap       [2]float64   `json:"cap"`
		Intake    float64      `json:"intake"`
		Leg       float64      `json:"leg"`
		Angle     float64      `json:"angle_at_tip"`
		Trued     figure.Curve `json:"side_trued"`
		SideUpper [2]float64   `json:"side_upper"`
		SideLower [2]float64   `json:"side_lower"`
		SideTip   [2]float64   `json:"side_tip"`
		SideCap   [2]float64   `json:"side_cap"`
		Area      float64      `json:"area_after"`
	}
	figure.StylesP36(t).Group(t, "bust_dart", &turned)
	var w farthest
	for _, place := range []string{"waist", "side_and_waist"} {
		want := turned[place]
		s := workroom.Draft(seamed(t, map[pattern.ChoiceID]string{"bust_dart": place, "waist_shaping": "none"}))
		unfailed(t, s, place)
		at := func(name string) geom.Point {
			p, ok := s.Point(pattern.Front, name)
			require.True(t, ok, name)
			return p
		}
		w.point(t, want.Waist, at("waist_turned"), place+" waist")
		w.point(t, want.Fixed, at("waist_seam_dart_inner"), place+" fixed leg")
		w.point(t, want.Moved, at("waist_seam_dart_outer"), place+" turned leg")
		w.point(t, want.Tip, at("waist_seam_dart_tip"), place+" tip")
		w.point(t, want.Cap, at("waist_seam_dart_cap"), place+" cap")
		front, _ := s.Piece(pattern.Front)
		d := front.Darts[len(front.Darts)-1]
		w.hold(t, want.Intake, d.Intake.Inches(), place+" intake")
		w.hold(t, want.Leg, d.Leg.Inches(), place+" leg")
		require.InDelta(t, want.Angle, d.Degrees, 0.02)
		if place == "waist" {
			samePath(t, want.Trued.Path(), drawnLine(s, pattern.Front, "side").Path, "side")
			continue
		}
		require.Len(t, front.Darts, 2)
		w.point(t, want.SideUpper, at("dart_upper"), "upper leg")
		w.point(t, want.SideLower, at("dart_lower"), "lower leg")
		w.point(t, want.SideTip, at("side_dart_tip"), "side tip")
		w.point(t, want.SideCap, at("dart_cap"), "side cap")
	}
	var joined struct {
		Turned struct {
			Inner  [2]float64 `json:"leg_inner"`
			Outer  [2]float64 `json:"leg_outer"`
			Tip    [2]float64 `json:"tip"`
			Intake float64    `json:"intake"`
			Bodice float64    `json:"bodice_front"`
			Skirt  float64    `json:"skirt_front"`
			Dart   struct {
				Inner [2]float64 `json:"inner"`
				Outer [2]float64 `json:"outer"`
				Tip   [2]float64 `json:"tip"`
			} `json:"skirt_dart"`
		} `json:"turned"`
	}
	figure.SkirtsP36(t).Group(t, "waist_seam", &joined)
	want := joined.Turned
	s := workroom.Draft(seamed(t, map[pattern.ChoiceID]string{"bust_dart": "waist"}))
	unfailed(t, s, "joined")
	for name, at := range map[string][2]float64{
		"waist_seam_dart_inner": want.Inner, "waist_seam_dart_outer": want.Outer, "waist_seam_dart_tip": want.Tip,
		"skirt_waist_dart_inner": want.Dart.Inner, "skirt_waist_dart_outer": want.Dart.Outer, "skirt_waist_dart_tip": want.Dart.Tip,
	} {
		p, ok := s.Point(pattern.Front, name)
		require.True(t, ok, name)
		w.point(t, at, p, name)
	}
	for id, along := range map[pattern.PieceID]float64{pattern.Front: want.Bodice, pattern.SkirtFront: want.Skirt} {
		p, _ := s.Piece(id)
		w.hold(t, along, p.Along("waist").Inches(), string(id))
	}
	front, _ := s.Piece(pattern.Front)
	w.hold(t, want.Intake, front.Darts[0].Intake.Inches(), "joined intake")
	w.say(t)
}

// TestCentreDart holds the dart in a centre front seam to its figures.
func TestCentreDart(t *testing.T) {
	var ref map[string]struct {
		Neck   [2]float64   `json:"neck_centre"`
		Fixed  [2]float64   `json:"leg_fixed"`
		Moved  [2]float64   `json:"leg_turned"`
		Tip    [2]float64   `json:"tip"`
		Cap    [2]float64   `json:"cap"`
		Intake float64      `json:"intake"`
		Trued  figure.Curve `json:"side_trued"`
		Area   float64      `json:"area_after"`
	}
	figure.StylesP36(t).Group(t, "bust_dart", &ref)
	want := ref["centre_front"]
	s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "centre_front"}).WithStyle("front_seam", pattern.SwitchValue(true)))
	unfailed(t, s, "centre dart")
	var w farthest
	for name, p := range map[string][2]float64{
		"dart_fixed": want.Fixed, "dart_moved": want.Moved, "dart_tip": want.Tip, "dart_cap": want.Cap, "neck_centre_turned": want.Neck,
	} {
		at, ok := s.Point(pattern.Front, name)
		require.True(t, ok, name)
		w.point(t, p, at, name)
	}
	front, _ := s.Piece(pattern.Front)
	require.Equal(t, pattern.Pair, front.Cut)
	require.Nil(t, front.Fold)
	require.Len(t, front.EdgesNamed("centre_front"), 2)
	w.hold(t, want.Intake, front.Darts[0].Intake.Inches(), "intake")
	samePath(t, want.Trued.Path()[:2], drawnLine(s, pattern.Front, "side").Path[:2], "side")
	w.say(t)
	facing, _ := s.Piece(pattern.FrontNeckFacing)
	require.Equal(t, pattern.OnFold, facing.Cut)
}

// TestFlaredSkirt holds the skirt that opens through its darts to its figures.
func TestFlaredSkirt(t *testing.T) {
	type half struct {
		Darts []struct {
			Turn float64 `json:"turn"`
			Left float64 `json:"dart_left"`
		} `json:"darts"`
		Waist    [2]float64   `json:"waist"`
		Hip      [2]float64   `json:"hip"`
		HemSide  [2]float64   `json:"hem_side"`
		Curve    figure.Curve `json:"hem_curve"`
		Finished float64      `json:"waist_finished"`
		Side     float64      `json:"side"`
	}
	var ref struct {
		Flared struct {
			Front half    `json:"front"`
			Back  half    `json:"back"`
			Girth float64 `json:"hem_girth"`
		} `json:"flared"`
	}
	figure.StylesP36(t).Group(t, "dress_hem", &ref)
	s := workroom.Draft(seamed(t, map[pattern.ChoiceID]string{"skirt_line": "flared"}))
	unfailed(t, s, "flared")
	var w farthest
	for _, h := range []struct {
		want  half
		half  pattern.PieceID
		skirt pattern.PieceID
	}{{ref.Flared.Front, pattern.Front, pattern.SkirtFront}, {ref.Flared.Back, pattern.Back, pattern.SkirtBack}} {
		at := func(name string) geom.Point { p, _ := s.Point(h.half, name); return p }
		w.point(t, h.want.Waist, at("skirt_top"), "waist")
		w.point(t, h.want.Hip, at("skirt_hip"), "hip")
		w.point(t, h.want.HemSide, at("hem_side"), "hem at the side")
		samePath(t, h.want.Curve.Path(), drawnLine(s, h.half, "hem").Path.Reverse(), "hem")
		p, _ := s.Piece(h.skirt)
		w.hold(t, h.want.Finished, p.Along("waist").Inches(), "waist finished")
		require.Len(t, p.Darts, 1)
		w.hold(t, h.want.Darts[0].Left, p.Darts[0].Intake.Inches(), "dart left")
	}
	girth, _ := s.Girth("hem")
	w.hold(t, ref.Flared.Girth, girth.Inches(), "hem girth")
	w.say(t)
}

// TestSeamRefusals: what a seam cannot do is refused with a cure.
func TestSeamRefusals(t *testing.T) {
	on := pattern.SwitchValue(true)
	for name, job := range map[string]pattern.Job{
		"waist without a seam":   figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "waist"}),
		"shared without a seam":  figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "side_and_waist"}),
		"centre on a fold":       figure.Styled(t, map[pattern.ChoiceID]string{"bust_dart": "centre_front"}),
		"flared without a seam":  figure.Styled(t, map[pattern.ChoiceID]string{"skirt_line": "flared", "waist_shaping": "fisheye"}),
		"flared without a dart":  seamed(t, map[pattern.ChoiceID]string{"skirt_line": "flared", "waist_shaping": "none"}),
		"panels with a seam":     seamed(t, map[pattern.ChoiceID]string{"panel_seam": "shoulder"}),
		"slit in a seam":         figure.Styled(t, map[pattern.ChoiceID]string{"front_neckline": "slit"}).WithStyle("front_seam", on),
		"no dart for the waist":  seamed(t, map[pattern.ChoiceID]string{"bust_dart": "waist"}).WithBody(measure.SideNeckToWaist, figure.In(16)),
		"wide at the waist":      seamed(t, map[pattern.ChoiceID]string{"bust_dart": "waist"}).WithBody(measure.BustPointDistance, figure.In(3)),
		"flared beyond all room": seamed(t, map[pattern.ChoiceID]string{"skirt_line": "flared"}).WithStyle("hem_flare", pattern.LengthValue(figure.In(12))),
	} {
		s := workroom.Draft(job)
		require.False(t, s.Complete, name)
		require.NotEmpty(t, s.Refused, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
	}
}

// TestSeamedStyles drafts the other choices with a waist seam: closures, hem
// openings, shaped backs, facings.
func TestSeamedStyles(t *testing.T) {
	for id, options := range map[pattern.ChoiceID][]string{
		"closure": {"zip_side", "none"}, "hem_opening": {"none", "vent", "kick_pleat", "inverted"}, "waist_shaping": {"none", "two_back", "shaped_back"},
		"facing": {"all_in_one", "bias"}, "skirt_line": {"straight", "a_line", "flared"}, "bust_dart": {"french", "armhole", "shoulder", "neck", "waist", "side_and_waist"},
		"armhole_shape": {"cut_in"},
	} {
		for _, o := range options {
			job := seamed(t, map[pattern.ChoiceID]string{id: o})
			if id == "closure" {
				job = job.WithStyle("front_neckline", pattern.PickValue("square"))
			}
			s := workroom.Draft(job)
			what := string(id) + " " + o
			require.True(t, s.Complete, what)
			sound(t, s, what)
			for _, f := range s.Findings {
				if id == "closure" || id == "armhole_shape" {
					continue // whether she gets in, and bare shoulders, are told elsewhere
				}
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", what, f.Says.In(measure.In))
			}
			back, _ := s.Piece(pattern.Back)
			skirt, ok := s.Piece(pattern.SkirtBack)
			require.True(t, ok)
			require.Equal(t, id == "closure", back.Cut == pattern.OnFold, what)
			require.Equal(t, pattern.Pair, skirt.Cut, what)
		}
	}
}

// A sleeve meets the armhole of a dress with a waist seam as of one without.
func TestSleeveAboveAWaistSeam(t *testing.T) {
	s := workroom.Draft(figure.Styled(t, map[pattern.ChoiceID]string{"sleeve": "short", "collar": "flat", "bust_dart": "waist", "waist_shaping": "fisheye"},
		"shoulder_inset", "ease_bust", "armhole_depth", "neck_widening", "front_neck_depth", "back_neck_depth", "armhole_allowance").
		WithStyle("waist_seam", pattern.SwitchValue(true)))
	require.True(t, s.Complete)
	for _, f := range s.Findings {
		require.NotEqual(t, pattern.Fail, f.Verdict, "%s: %s", f.Check, f.Says.In(measure.In))
	}
}
