package workroom_test

import (
	"fmt"
	"math"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// block is one half of a worked-out block; the back counts from the nape.
type block struct {
	Neck     [2]float64   `json:"neck_point"`
	Centre   [2]float64   `json:"neck_centre"`
	NeckLong float64      `json:"neck"`
	End      [2]float64   `json:"shoulder_end"`
	Underarm [2]float64   `json:"underarm"`
	Mid      [2]float64   `json:"armhole_mid"`
	Bust     *[2]float64  `json:"bust_point"`
	Waist    [2]float64   `json:"waist_side"`
	Dart     float64      `json:"waist_dart"`
	SideDart float64      `json:"side_dart"`
	Armhole  float64      `json:"armhole"`
	Curve    figure.Curve `json:"armhole_curve"`
	Shoulder float64      `json:"shoulder"`
}

type blocks map[string]struct {
	Inputs  map[string]float64 `json:"inputs"`
	Back    block              `json:"back"`
	Front   block              `json:"front"`
	Armhole float64            `json:"armhole"`
	Girth   float64            `json:"neck_girth"`
}

// directJob is the plain block: neck and armhole where the body has them.
func directJob(in map[string]float64) pattern.Job {
	l := func(name string) measure.Length { return figure.In(in[name]) }
	half := l("neck_half")
	job := pattern.Job{Body: measure.NewBody(map[measure.ID]measure.Length{
		measure.BustGirth: l("bust"), measure.UpperChestGirth: l("chest"), measure.WaistGirth: l("waist"), measure.HipGirth: l("waist") + figure.In(10),
		measure.NeckBaseGirth: 6 * (half - figure.In(0.5)), measure.BackNeckToWaist: l("BL"), measure.SideNeckToWaist: l("FL"),
		measure.ShoulderToWaistBack: l("tip_back"), measure.ShoulderToWaistFront: l("tip_front"), measure.ShoulderLength: l("SL"),
		measure.SideWaistLength: l("side"), measure.AcrossBack: l("AB"), measure.AcrossFront: l("AF"),
		measure.SideNeckToBustPoint: l("BPD"), measure.BustPointDistance: l("BS"), measure.WaistToHip: figure.In(8),
	})}
	for id, x := range map[pattern.ChoiceID]measure.Length{
		"ease_bust": l("ease_bust"), "ease_waist": l("ease_waist"), "shoulder_inset": 0, "neck_widening": 0, "front_neck_depth": half,
		"back_neck_depth": figure.In(0.75), "armhole_pinch": 0, "length": figure.In(40),
	} {
		job = job.WithStyle(id, pattern.LengthValue(x))
	}
	return job.WithStyle(pattern.Method, pattern.PickValue(pattern.Direct))
}

// TestDirectBlock holds the block to a worked-out P36 and to a published
// example (retro direct-measure bodice, teaching page of 2014): chest and
// bust 33.
func TestDirectBlock(t *testing.T) {
	var file struct {
		Blocks blocks `json:"direct_block"`
	}
	figure.Read(t, "block-p36.json", &file)
	worst := 0.0
	for name, ref := range file.Blocks {
		s := workroom.Draft(directJob(ref.Inputs))
		require.Empty(t, s.Refused, name)
		require.True(t, s.Complete, name)
		for piece, want := range map[pattern.PieceID]block{pattern.Back: ref.Back, pattern.Front: ref.Front} {
			nape := 0.0
			if piece == pattern.Back {
				nape = 0.75
			}
			off := func(got, want float64, what string) {
				require.InDelta(t, want, got, near, "%s %s %s", name, piece, what)
				worst = math.Max(worst, math.Abs(got-want))
			}
			spot := func(mark string, at [2]float64) {
				p, ok := s.Point(piece, mark)
				require.True(t, ok, mark)
				off(p.X/25.4, at[0], mark)
				off(p.Y/25.4-nape, at[1], mark)
			}
			spot("neck_point", want.Neck)
			spot("neck_centre", want.Centre)
			spot("shoulder_end", want.End)
			spot("underarm", want.Underarm)
			spot("armhole_mid", want.Mid)
			spot("waist", want.Waist)
			if want.Bust != nil {
				spot("bust_point", *want.Bust)
			}
			for dim, x := range map[string]float64{"neck": want.NeckLong, "armhole": want.Armhole, "shoulder": want.Shoulder, "waist_spare": want.Dart} {
				off(lengthOf(t, s, piece, dim), x, dim)
			}
			curve := drawnLine(s, piece, "armhole").Path
			for i, seg := range want.Curve.Path() {
				off(curve[i].A.Dist(seg.A)/25.4, nape, "curve")
				off(curve[i].B.Dist(seg.B)/25.4, nape, "curve")
				off(curve[i].C.Dist(seg.C)/25.4, nape, "curve")
			}
		}
		require.InDelta(t, ref.Armhole, girthOf(t, s, "armhole"), near)
		require.InDelta(t, ref.Girth, girthOf(t, s, "neck"), near)
		if ref.Front.SideDart > 0 {
			require.InDelta(t, ref.Front.SideDart, lengthOf(t, s, pattern.Front, "dart_intake"), near)
		}
		require.InDelta(t, lengthOf(t, s, pattern.Back, "side"), lengthOf(t, s, pattern.Front, "side"), 1.0/16)
	}
	t.Logf("worst difference to the figures: %.5f in", worst)
}

// TestDirectDefaults: without its own lengths the block takes a side half as
// long as the back and a shoulder at the usual slope (a back of 16 goes with
// a side of 8: Vienna Ladies' Tailoring Institute, 1902).
func TestDirectDefaults(t *testing.T) {
	s := workroom.Draft(figure.Body36(t, pattern.Measured).WithStyle(pattern.Method, pattern.PickValue(pattern.Direct)))
	require.Empty(t, s.Missing)
	require.True(t, s.Complete)
	sound(t, s, "direct")
	require.InDelta(t, 8.75, s.Known.Length("armhole_depth").Inches(), 1e-9)
	require.InDelta(t, 8, s.Known.Body(measure.SideWaistLength).Inches(), 1e-9)
	require.InDelta(t, 15.25, s.Known.Body(measure.ShoulderToWaistBack).Inches(), 1e-9)
	require.InDelta(t, 16.25, s.Known.Body(measure.ShoulderToWaistFront).Inches(), 1e-9)
	require.InDelta(t, 38.5, girthOf(t, s, "bust"), 1e-6)
	require.InDelta(t, 30, girthOf(t, s, "waist"), 0.13)
	require.InDelta(t, 40, girthOf(t, s, "hip"), 1e-6)
	for _, f := range s.Findings {
		require.NotEqual(t, pattern.Fail, f.Verdict, "%s %s", f.Code, f.Says.In(measure.In))
	}
}

// TestDirectRefuses what cannot be drawn, with a cure.
func TestDirectRefuses(t *testing.T) {
	good := figure.Body36(t, pattern.Measured).WithStyle(pattern.Method, pattern.PickValue(pattern.Direct))
	for name, c := range map[string]struct {
		job  pattern.Job
		code string
	}{
		"shoulder too short": {good.WithBody(measure.ShoulderToWaistBack, figure.In(11)), "R20"},
		"shoulder rises":     {good.WithBody(measure.ShoulderToWaistFront, figure.In(19)), "R20"},
		"side too long":      {good.WithBody(measure.SideWaistLength, figure.In(13.5)), "R4"},
		"bust too high":      {good.WithBody(measure.SideNeckToBustPoint, figure.In(7)), "R7"},
		"front too long":     {good.WithBody(measure.SideNeckToWaist, figure.In(20)), "R1"},
		"front too short":    {good.WithBody(measure.SideNeckToWaist, figure.In(14)), "R2"},
	} {
		s := workroom.Draft(c.job)
		require.NotEmpty(t, s.Refused, name)
		require.Equal(t, c.code, s.Refused[0].Code, name)
		require.NotEmpty(t, s.Refused[0].Cure.In(measure.In), name)
		require.NotEmpty(t, s.Refused[0].Input, name)
	}
}

// TestDirectOnWomen drafts the block, and a dress of each style on it, on
// women of the survey. Their upper chest and shoulder to waist are proposed.
func TestDirectOnWomen(t *testing.T) {
	women := ansur.Load(t)
	drafted, refused := 0, map[string]int{}
	for i := 0; i < len(women); i += everyWoman {
		jobs := []pattern.Job{jobOf(women[i], pattern.Direct)}
		for id, options := range styles() {
			o := options[i%len(options)]
			if o != "funnel" && id != "closure" {
				jobs = append(jobs, jobs[0].WithStyle(id, pattern.PickValue(o)))
			}
		}
		for _, job := range jobs {
			s := workroom.Draft(job)
			drafted++
			if len(s.Refused) > 0 {
				refused[s.Refused[0].Code]++
				continue
			}
			require.True(t, s.Complete)
			sound(t, s, "direct")
			for _, f := range s.Findings {
				if f.Verdict == pattern.Fail {
					t.Errorf("row %d: %s %s", women[i].Row, f.Code, f.Says.In(measure.In))
				}
			}
		}
	}
	t.Logf("%d drafted, refused %v", drafted, refused)
	sum := 0
	for _, n := range refused {
		sum += n
	}
	require.LessOrEqual(t, sum, drafted/20)
}

// TestDirectSleeves sets every sleeve into the block, with each style in turn:
// a draft is whole and sound, or refused with a reason and a cure.
func TestDirectSleeves(t *testing.T) {
	women := ansur.Load(t)
	drafted, refused := 0, map[string]int{}
	for i := 0; i < len(women); i += everyWoman {
		n := i / everyWoman
		kind := []string{"cap", "short", "three_quarter", "long"}[n%4]
		block := jobOf(women[i], pattern.Direct).WithStyle("sleeve", pattern.PickValue(kind))
		jobs := []pattern.Job{block}
		for id, options := range styles() {
			if o := options[(n/4+len(id))%len(options)]; o != "funnel" && id != "closure" && id != "sleeve" {
				jobs = append(jobs, choose(block, id, o))
			}
		}
		for _, job := range jobs {
			s := workroom.Draft(job)
			drafted++
			if len(s.Refused) > 0 {
				refused[s.Refused[0].Code]++
				reasoned(t, s)
				continue
			}
			require.True(t, s.Complete, "row %d", women[i].Row)
			sound(t, s, fmt.Sprintf("row %d, %s", women[i].Row, kind))
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "row %d, %s: %s %s", women[i].Row, kind, f.Code, f.Says.In(measure.In))
			}
		}
	}
	t.Logf("%d drafted, refused %v", drafted, refused)
	require.Greater(t, drafted, 800)
}

func BenchmarkDirect(b *testing.B) {
	job := figure.Draft{Measures: base}.Job(pattern.Direct)
	b.ReportAllocs()
	for b.Loop() {
		workroom.Draft(job)
	}
}
