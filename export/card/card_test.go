package card

import (
	"io"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/measure"
	"chalkfold/pattern/geom"
)

// anyFigure is a figure within what bodies do, and a little beyond.
func anyFigure(t *rapid.T) figure {
	in := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
	f := plainFigure
	f.bust = in("bust", 32, 50)
	f.waist = f.bust - in("nipped", 1, 5)
	f.hip = f.waist + in("hip", 2, 11)
	f.neckX, f.neckDepth = in("neck", 3, 4.5), in("depth", 3.5, 6)
	f.shoulderX = f.neckX + in("shoulder", 2, 4)
	f.drop = in("drop", 0.9, 1.8)
	f.midX = f.shoulderX - in("hollow", 0.2, 1)
	f.armhole = f.drop + in("armhole", 5, 7.5)
	if room := f.bust/4 - 1.9; f.midX > room {
		f.shoulderX, f.midX = f.shoulderX-(f.midX-room), room
	}
	f.toWaist = f.armhole + in("waist", 8, 10)
	f.toHip = f.toWaist + in("hip depth", 6.5, 9)
	f.hem = f.toHip + in("skirt", 10, 20)
	f.dart, f.dartBelow = in("dart", 0.375, 2.25), in("below", 1.5, 3)
	f.tipX, f.tipY = f.bust/8+0.2, f.armhole+in("tip", 1.5, 3)
	f.peg = in("peg", 0, 1.25)
	f.straight = rapid.Bool().Draw(t, "straight")
	f.thumb = rapid.Bool().Draw(t, "thumb")
	return f
}

func TestChalkedLinesStayByTheDraft(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anyFigure(t).sheet()
		for _, p := range s.Pieces {
			pts := p.CutLine.Flatten(0.02)
			if !geom.Outline(pts[:len(pts)-1]).Simple() {
				t.Skip("no outline to cut: an armhole rounder than its allowance")
			}
		}
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			off, err := readBack(s, u)
			require.NoError(t, err)
			require.LessOrEqual(t, off, gridOf(u).bound.MM(), "%s", u)
		}
	})
}

func TestNippedWaistIsPassedNotTouched(t *testing.T) {
	f := plainFigure
	f.bust, f.waist, f.hip = 44, 33, 46
	bracketed := false
	for w := 33.0; w > 27; w -= 0.35 {
		f.waist = w
		s := f.sheet()
		for _, u := range []measure.Unit{measure.In, measure.Cm} {
			off, err := readBack(s, u)
			require.NoError(t, err)
			require.LessOrEqual(t, off, gridOf(u).bound.MM())
		}
		for _, p := range Make(s, measure.In).Pieces {
			for _, r := range p.Rows {
				bracketed = bracketed || r.Name == "waist" && r.AsideStitch
			}
		}
	}
	require.True(t, bracketed, "no waist was sharp enough to be set aside")
}

func BenchmarkText(b *testing.B) {
	s := plainFigure.sheet()
	b.ReportAllocs()
	for b.Loop() {
		if err := WriteText(io.Discard, s, Options{Unit: measure.In}); err != nil {
			b.Fatal(err)
		}
	}
}
