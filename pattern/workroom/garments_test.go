package workroom_test

import (
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"
	"chalkfold/testdata/figure"

	"github.com/stretchr/testify/require"
)

// other is the reference figure's job for another garment, its length usual.
func other(t *testing.T, garment string) pattern.Job {
	return figure.Styled(t, map[pattern.ChoiceID]string{"garment": garment}, "length", "ease_bust", "ease_waist", "ease_hip", "side_waist_limit", "front_neck_depth",
		"back_neck_depth", "neck_widening", "slit_height")
}

func TestTop(t *testing.T) {
	s := workroom.Draft(other(t, pattern.Top))
	require.True(t, s.Complete)
	hip, _ := s.Point(pattern.Back, "hip")
	hem, _ := s.Point(pattern.Back, "hem_centre")
	require.InDelta(t, 1, measure.Length(hem.Y-hip.Y).Inches(), near)
	back, _ := s.Piece(pattern.Back)
	require.Equal(t, pattern.Pair, back.Cut, "the zip stands behind")
	sound(t, s, "top")

	short := workroom.Draft(other(t, pattern.Top).WithStyle("length", pattern.LengthValue(20*measure.Inch)))
	require.Equal(t, "R8", short.Refused[0].Code)
}

// A shift goes over her head and bust, with nothing to close.
func TestShift(t *testing.T) {
	s := workroom.Draft(other(t, pattern.Shift))
	require.True(t, s.Complete)
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p, _ := s.Piece(id)
		require.Equal(t, pattern.OnFold, p.Cut, id)
	}
	for _, f := range s.Findings {
		if f.Check == "head_passage" || f.Check == "body_passage" {
			require.Equal(t, pattern.Pass, f.Verdict, f.Check)
		}
	}
	bust, _ := s.Girth("bust")
	require.InDelta(t, s.Body(measure.BustGirth).Inches()+6, bust.Inches(), near)
	sound(t, s, "shift")
}

// The tunic's chest line is a quarter of the bust and a quarter of its ease.
// Published: a teaching page's tunic for bust 36 (greendians.com) takes
// 36/4 + 3/4 = 9 3/4, so an ease of 3.
func TestTunic(t *testing.T) {
	job := other(t, pattern.Tunic)
	s := workroom.Draft(job)
	require.True(t, s.Complete)
	sound(t, s, "tunic")
	height := s.Known.Length("slit_height")
	for _, id := range []pattern.PieceID{pattern.Front, pattern.Back} {
		p, _ := s.Piece(id)
		require.Equal(t, pattern.OnFold, p.Cut, id)
		sides := p.EdgesNamed("side")
		open := sides[len(sides)-1]
		require.InDelta(t, height.Inches(), open.Stitch.Length()/measure.Inch.MM(), near, id)
		require.Empty(t, open.SewnTo.Piece, "a slit is not sewn")
		require.Equal(t, measure.Inch, open.Allowance)
		top, ok := s.Point(id, "side_slit_top")
		require.True(t, ok)
		hip, _ := s.Point(id, "hip")
		require.Greater(t, top.Y, hip.Y, "below the hip line")
	}
	published := workroom.Draft(job.WithBody(measure.BustGirth, 36*measure.Inch).WithStyle("ease_bust", pattern.LengthValue(3*measure.Inch)))
	under, _ := published.Point(pattern.Front, "underarm")
	require.InDelta(t, 9.75, measure.Length(under.X).Inches(), near)

	high := workroom.Draft(job.WithStyle("slit_height", pattern.LengthValue(25*measure.Inch)))
	require.Equal(t, "R14", high.Refused[0].Code)
}

// A slit in the side may begin anywhere below the hip, unlike one behind.
func TestSideSlitCheck(t *testing.T) {
	finding := func(inches float64) pattern.Finding {
		s := workroom.Draft(other(t, pattern.Tunic).WithStyle("ease_hip", pattern.LengthValue(2*measure.Inch)).
			WithStyle("length", pattern.LengthValue(42*measure.Inch)).WithStyle("slit_height", pattern.LengthValue(measure.Length(inches)*measure.Inch)))
		for _, f := range s.Findings {
			if f.Check == "slit_height" {
				return f
			}
		}
		t.Fatal("no finding")
		return pattern.Finding{}
	}
	require.Equal(t, pattern.Pass, finding(8).Verdict)
	require.Equal(t, pattern.Pass, finding(12).Verdict)
	require.Equal(t, "slit_high", finding(20.5).Code)
}

// TestGarmentsOnWomen drafts every garment as it usually is on women of the
// survey: each is whole and sound, and nothing fails.
func TestGarmentsOnWomen(t *testing.T) {
	women := ansur.Load(t)
	for _, g := range workroom.Garments() {
		refused := 0
		for i := 0; i < len(women); i += 8 {
			s := workroom.Draft(jobOf(women[i], pattern.Measured).WithStyle(pattern.Garment, pattern.PickValue(g.ID)).WithoutStyle("length"))
			if len(s.Refused) > 0 {
				refused++
				reasoned(t, s)
				continue
			}
			require.True(t, s.Complete, "%s, row %d", g.ID, women[i].Row)
			sound(t, s, g.ID)
			for _, f := range s.Findings {
				require.NotEqual(t, pattern.Fail, f.Verdict, "%s, row %d: %s %s", g.ID, women[i].Row, f.Code, f.Says.In(measure.In))
			}
		}
		require.LessOrEqual(t, refused, 2, g.ID)
	}
}

// By thumb only the dress is drafted: the method is kept, and said.
func TestThumbKept(t *testing.T) {
	s := workroom.Draft(other(t, pattern.Shift).WithStyle(pattern.Method, pattern.PickValue(pattern.Thumb)))
	require.True(t, s.Complete)
	require.Equal(t, pattern.Measured, s.Method)
	require.Contains(t, s.Notes[len(s.Notes)-1].In(measure.In), "by thumb")
}
