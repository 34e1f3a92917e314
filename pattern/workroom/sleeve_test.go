package workroom_test

import (
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// sleevedJob is figure P36 with its arm, and what a sleeve changes left to
// its default.
func sleevedJob(t testing.TB, kind string) pattern.Job {
	job := figure.Styled(t, map[pattern.ChoiceID]string{"sleeve": kind}, "ease_bust", "shoulder_inset", "armhole_depth", "side_dart_below")
	for id, x := range map[measure.ID]float64{
		measure.UpperArmGirth: 11, measure.ArmLength: 23, measure.ElbowGirth: 10, measure.HandGirth: 7.75,
	} {
		job = job.WithBody(id, figure.In(x))
	}
	return job
}

type sleeveReference struct {
	Depth      float64               `json:"armhole_depth"`
	Front      float64               `json:"armhole_front"`
	Back       float64               `json:"armhole_back"`
	Width      float64               `json:"biceps"`
	Height     float64               `json:"cap_height"`
	Cap        float64               `json:"cap"`
	Ease       float64               `json:"ease"`
	Top        [2]float64            `json:"top_notch"`
	FrontNotch [2]float64            `json:"front_notch"`
	BackNotch  [2]float64            `json:"back_notch"`
	BackCurve  figure.Curve          `json:"cap_back_curve"`
	FrontCurve figure.Curve          `json:"cap_front_curve"`
	DressFront map[string][2]float64 `json:"dress_front"`
	DressBack  map[string][2]float64 `json:"dress_back"`
	Long       struct {
		Front [][2]float64 `json:"front"`
		Back  [][2]float64 `json:"back"`
		Dart  struct {
			Upper [2]float64 `json:"upper"`
			Lower [2]float64 `json:"lower"`
			Tip   [2]float64 `json:"tip"`
			Leg   float64    `json:"leg"`
		} `json:"dart"`
		FrontSeam float64      `json:"front_seam"`
		BackSeam  float64      `json:"back_seam"`
		Hem       figure.Curve `json:"hem_curve"`
		HemLength float64      `json:"hem_length"`
	} `json:"long"`
	ThreeQuarter struct {
		Length    float64      `json:"length"`
		Hem       figure.Curve `json:"hem_curve"`
		HemLength float64      `json:"hem_length"`
	} `json:"three_quarter"`
	Short struct {
		Length float64       `json:"length"`
		Hem    [2][2]float64 `json:"hem"`
		Seam   float64       `json:"seam"`
	} `json:"short"`
	CapSleeve struct {
		Length float64      `json:"length"`
		Front  [2]float64   `json:"front_end"`
		Back   [2]float64   `json:"back_end"`
		Hem    figure.Curve `json:"hem"`
		Left   float64      `json:"armhole_left"`
	} `json:"cap_sleeve"`
}

// worst collects how far a draft lies off worked-out figures, inches.
type worst struct {
	t   *testing.T
	off float64
}

func (w *worst) number(want, got float64, what string) {
	w.t.Helper()
	require.InDelta(w.t, want, got, near, what)
	w.off = math.Max(w.off, math.Abs(want-got))
}

func (w *worst) point(want [2]float64, got geom.Point, what string) {
	w.t.Helper()
	w.number(0, point(want).Dist(got)/25.4, what)
}

func (w *worst) path(want, got geom.Path, what string) {
	w.t.Helper()
	require.Len(w.t, got, len(want), what)
	for i := range want {
		for j, pair := range [][2]geom.Point{{want[i].A, got[i].A}, {want[i].B, got[i].B}, {want[i].C, got[i].C}, {want[i].D, got[i].D}} {
			if want[i].Curved || j == 0 || j == 3 {
				w.number(0, pair[0].Dist(pair[1])/25.4, what)
			}
		}
	}
}

func (w *worst) said() {
	w.t.Helper()
	w.t.Logf("worst difference %.4f in", w.off)
}

// TestSleeve holds the sleeve of P36 to its figures: what it changes in the
// dress, its cap, its notches, and each of its lengths.
func TestSleeve(t *testing.T) {
	var ref sleeveReference
	figure.StylesP36(t).Group(t, "sleeve", &ref)
	w := &worst{t: t}
	draft := func(kind string) *pattern.Sheet {
		s := workroom.Draft(sleevedJob(t, kind))
		require.Empty(t, s.Refused, kind)
		require.True(t, s.Complete, kind)
		for _, f := range s.Findings {
			require.NotEqual(t, pattern.Fail, f.Verdict, f.Says.In(measure.In))
			require.NotEqual(t, pattern.Advise, f.Verdict, f.Says.In(measure.In))
		}
		return s
	}
	at := func(s *pattern.Sheet, name string) geom.Point {
		p, ok := s.Point(pattern.Sleeve, name)
		require.True(t, ok, name)
		return p
	}
	long := func(s *pattern.Sheet, id pattern.PieceID, name string) float64 {
		d, ok := s.Dimension(id, name)
		require.True(t, ok, name)
		return d.Length.Inches()
	}

	s := draft("long")
	w.number(ref.Depth, s.Known.Length("armhole_depth").Inches(), "armhole depth")
	for id, dress := range map[pattern.PieceID]map[string][2]float64{pattern.Front: ref.DressFront, pattern.Back: ref.DressBack} {
		for name, mark := range map[string]string{"N": "neck_point", "S": "shoulder_end", "M": "armhole_mid", "U": "underarm", "W": "waist"} {
			p, _ := s.Point(id, mark)
			w.point(dress[name], p, string(id)+" "+mark)
		}
	}
	w.number(ref.Front, long(s, pattern.Front, "armhole"), "front armhole")
	w.number(ref.Back, long(s, pattern.Back, "armhole"), "back armhole")
	w.number(ref.Width, long(s, pattern.Sleeve, "width"), "width")
	w.number(ref.Height, long(s, pattern.Sleeve, "cap_height"), "cap height")
	w.number(ref.Height, s.Known.Length("cap_height").Inches(), "cap height said")
	w.number(ref.Cap, long(s, pattern.Sleeve, "cap"), "cap")
	w.number(ref.Ease, long(s, pattern.Sleeve, "cap_ease"), "ease")
	w.path(append(ref.BackCurve.Path(), ref.FrontCurve.Path()...), drawnLine(s, pattern.Sleeve, "cap").Path, "cap")
	for name, want := range map[string][2]float64{"top_notch": ref.Top, "front_notch": ref.FrontNotch, "back_notch": ref.BackNotch} {
		w.point(want, at(s, name), name)
	}
	front := drawnLine(s, pattern.Sleeve, "front_seam").Path
	for i, p := range []geom.Point{front.Start(), front[0].D, front.End()} {
		w.point(ref.Long.Front[i], p, "front seam")
	}
	for i, p := range []geom.Point{at(s, "back_underarm"), at(s, "dart_upper"), at(s, "dart_lower"), at(s, "back_hem")} {
		w.point(ref.Long.Back[i], p, "back seam")
	}
	w.point(ref.Long.Dart.Tip, at(s, "dart_tip"), "tip of the dart")
	sleeve, _ := s.Piece(pattern.Sleeve)
	w.number(ref.Long.Dart.Leg, sleeve.Darts[0].Leg.Inches(), "leg of the dart")
	w.number(ref.Long.FrontSeam, sleeve.Along("front_seam").Inches(), "front seam")
	w.number(ref.Long.BackSeam, sleeve.Along("back_seam").Inches(), "back seam")
	w.path(ref.Long.Hem.Path(), drawnLine(s, pattern.Sleeve, "hem").Path, "wrist")
	w.number(ref.Long.HemLength, long(s, pattern.Sleeve, "hem"), "wrist")

	s = draft("three_quarter")
	w.number(ref.ThreeQuarter.Length, s.Known.Length("sleeve_length").Inches(), "three-quarter length")
	w.path(ref.ThreeQuarter.Hem.Path(), drawnLine(s, pattern.Sleeve, "hem").Path, "three-quarter hem")
	w.number(ref.ThreeQuarter.HemLength, long(s, pattern.Sleeve, "hem"), "three-quarter hem")

	s = draft("short")
	w.number(ref.Short.Length, s.Known.Length("sleeve_length").Inches(), "short length")
	w.point(ref.Short.Hem[0], at(s, "front_hem"), "short hem")
	w.point(ref.Short.Hem[1], at(s, "back_hem"), "short hem")
	w.number(ref.Short.Seam, long(s, pattern.Sleeve, "front_seam"), "short seam")

	s = draft("cap")
	w.number(ref.CapSleeve.Length, s.Known.Length("sleeve_length").Inches(), "length of a cap sleeve")
	w.point(ref.CapSleeve.Front, at(s, "front_hem"), "front end")
	w.point(ref.CapSleeve.Back, at(s, "back_hem"), "back end")
	w.path(ref.CapSleeve.Hem.Path(), drawnLine(s, pattern.Sleeve, "hem").Path, "hem of a cap sleeve")
	w.number(ref.CapSleeve.Left, long(s, pattern.Front, "armhole_faced")+long(s, pattern.Back, "armhole_faced"), "armhole left")
	w.said()
}

// TestOldCapHeight holds the cap to a book of sleeves with an armhole of
// 19 1/2: its height is a third of the armhole, 6 1/2, and the sleeve then has
// about 3 of ease at the arm; the elbow lies at half the underarm seam.
func TestOldCapHeight(t *testing.T) {
	const armhole = 19.5
	s := workroom.Draft(sleevedJob(t, "long"))
	round, _ := s.Girth("armhole")
	job := sleevedJob(t, "long").WithStyle("cap_height", pattern.LengthValue(round/3)).WithStyle("ease_upper_arm", pattern.LengthValue(figure.In(3)))
	s = workroom.Draft(job)
	require.Empty(t, s.Refused)
	high, _ := s.Dimension(pattern.Sleeve, "cap_height")
	require.InDelta(t, 6.5, high.Length.MM()/round.MM()*armhole, near)
	ease, _ := s.Dimension(pattern.Sleeve, "cap_ease")
	require.Greater(t, ease.Length.Inches(), 1.5, "so high a cap has more ease than most cloth takes")
	elbow, _ := s.Point(pattern.Sleeve, "back_elbow")
	under := figure.In(23) - high.Length
	require.InDelta(t, under.Inches()/2, elbow.Y/25.4, 1, "half of the underarm seam, up to an inch higher")
}

// TestSleeveChangesTheDress: what a sleeve asks of the dress gives way to
// what she chose, and goes with the sleeve.
func TestSleeveChangesTheDress(t *testing.T) {
	for id, want := range map[pattern.ChoiceID][2]float64{
		"ease_bust": {2.5, 3}, "shoulder_inset": {0.75, 0}, "armhole_depth": {7.5, 8}, "armhole_allowance": {0.375, 0.5},
	} {
		for i, kind := range []string{"none", "short"} {
			s := workroom.Draft(sleevedJob(t, kind))
			require.InDelta(t, want[i], s.Known.Length(id).Inches(), 1e-9, "%s %s", id, kind)
		}
		mine := figure.In(want[0] + 0.125)
		s := workroom.Draft(sleevedJob(t, "short").WithStyle(id, pattern.LengthValue(mine)))
		require.Equal(t, mine, s.Known.Length(id), id)
	}
	thumb := workroom.Draft(sleevedJob(t, "long").WithStyle(pattern.Method, pattern.PickValue(pattern.Thumb)))
	_, found := thumb.Piece(pattern.Sleeve)
	require.False(t, found)
	require.NotEmpty(t, thumb.Notes, "it is kept, and that is said")
}

// TestNeedsFollowTheSleeve: her arm is asked for where a sleeve wants it.
func TestNeedsFollowTheSleeve(t *testing.T) {
	for kind, want := range map[string][]measure.ID{
		"none": nil, "cap": {measure.UpperArmGirth}, "short": {measure.UpperArmGirth},
		"long": {measure.UpperArmGirth, measure.ElbowGirth, measure.HandGirth, measure.ArmLength},
	} {
		style := pattern.Style{}.With("sleeve", pattern.PickValue(kind))
		needs := workroom.NeedsOf(style)
		require.Len(t, needs, len(workroom.Needs(pattern.Dress, pattern.Measured))+len(want), kind)
		require.Subset(t, needs, want, kind)
	}
	thumb := pattern.Style{}.With("sleeve", pattern.PickValue("long")).With(pattern.Method, pattern.PickValue(pattern.Thumb))
	require.Equal(t, workroom.Needs(pattern.Dress, pattern.Thumb), workroom.NeedsOf(thumb))
	job := sleevedJob(t, "long").WithoutBody(measure.ArmLength).WithoutBody(measure.Height)
	s := workroom.Draft(job)
	require.True(t, s.Complete)
	arm, _ := s.Figure(measure.ArmLength)
	require.True(t, arm.Proposed)
	for _, st := range s.Steps {
		require.Equal(t, st.ID == "sleeve.seams" || st.ID == "sleeve.elbow_dart" || st.ID == "sleeve.hem", len(st.Assumed) > 0 && st.Piece == pattern.Sleeve, st.ID)
	}
}

// TestSleevesOnWomen: on women of the survey the cap is eased in by just what
// was asked, the notches lie as far from the underarm as on the dress, and
// the height that is said is the one that is drawn, whatever else is chosen.
func TestSleevesOnWomen(t *testing.T) {
	women := ansur.Load(t)
	with := []map[pattern.ChoiceID]string{
		nil,
		{"bust_dart": "armhole"},
		{"bust_dart": "shoulder"},
		{"panel_seam": "armhole"},
		{"panel_seam": "shoulder"},
		{"facing": "bias"},
		{"front_neckline": "square", "back_neckline": "v"},
	}
	advised := map[string]int{}
	n, refused, full := 0, 0, 0
	for i := 0; i < len(women); i += everyWoman {
		for j, more := range with {
			if (i/everyWoman+j)%2 == 1 {
				continue
			}
			kind := []string{"cap", "short", "three_quarter", "long"}[(i/everyWoman+j/2)%4]
			job := jobOf(women[i], pattern.Measured).WithStyle("sleeve", pattern.PickValue(kind))
			for id, o := range more {
				job = job.WithStyle(id, pattern.PickValue(o))
			}
			if j == 2 {
				job = job.WithStyle("armhole_pinch", pattern.LengthValue(figure.In(0.5)))
			}
			n++
			s := workroom.Draft(job)
			if !s.Complete {
				require.NotEmpty(t, s.Refused, "row %d %s", women[i].Row, kind)
				refused++
				continue
			}
			sound(t, s, kind)
			ease, _ := s.Dimension(pattern.Sleeve, "cap_ease")
			if let := s.Known.Length("full_arm"); let > 0 {
				full++
				require.Greater(t, ease.Length.Inches(), 1.0, "row %d %s %v", women[i].Row, kind, more)
				require.LessOrEqual(t, ease.Length.Inches(), 1.75, "row %d %s %v", women[i].Row, kind, more)
			} else {
				require.InDelta(t, 1, ease.Length.Inches(), 1e-5, "row %d %s %v", women[i].Row, kind, more)
			}
			high, _ := s.Dimension(pattern.Sleeve, "cap_height")
			require.InDelta(t, s.Known.Length("cap_height").MM(), high.Length.MM(), 1e-3, "row %d %s %v", women[i].Row, kind, more)
			for _, f := range s.Findings {
				if f.Check != "sleeve_cap" && f.Check != "sleeve_seams" {
					continue
				}
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d %s %v: %s", women[i].Row, kind, more, f.Says.In(measure.In))
				require.NotEqual(t, "cap_notch", f.Code)
				if f.Verdict == pattern.Advise {
					advised[f.Code]++
				}
			}
		}
	}
	t.Logf("%d drafts, %d refused, %d let in at the upper arm, advised %v", n, refused, full, advised)
	require.LessOrEqual(t, refused, n/6)
}

// BenchmarkSleeved drafts a dress with a long sleeve and a choice of every
// kind.
func BenchmarkSleeved(b *testing.B) {
	job := sleevedJob(b, "long")
	for id, o := range map[pattern.ChoiceID]string{
		"bust_dart": "shoulder", "waist_shaping": "two_back", "skirt_line": "a_line", "hem_opening": "inverted",
	} {
		job = job.WithStyle(id, pattern.PickValue(o))
	}
	b.ReportAllocs()
	for b.Loop() {
		workroom.Draft(job)
	}
}
