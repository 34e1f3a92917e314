package export_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"chalkfold/export"
	"chalkfold/export/accept"
	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
)

func find(items []export.Item, r pattern.Role) []export.Item {
	var out []export.Item
	for _, i := range items {
		if i.Role == r {
			out = append(out, i)
		}
	}
	return out
}

func TestEveryLineHasItsRole(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	require.Len(t, d.Pieces, 2)
	counts := map[pattern.Role]int{}
	for _, r := range []pattern.Role{
		pattern.RoleCut, pattern.RoleStitch, pattern.RoleFold, pattern.RoleGrain, pattern.RoleDart,
		pattern.RoleNotch, pattern.RoleBalance, pattern.RoleHole,
	} {
		counts[r] = len(find(d.Pieces[0].Items, r))
	}
	require.Equal(t, map[pattern.Role]int{
		pattern.RoleCut: 1, pattern.RoleStitch: 1, pattern.RoleFold: 2, pattern.RoleGrain: 1, pattern.RoleDart: 1,
		pattern.RoleNotch: 1, pattern.RoleBalance: 1, pattern.RoleHole: 1,
	}, counts)
	require.Len(t, find(d.Pieces[1].Items, pattern.RoleNotch), 2, "a back notch is double")
	require.Empty(t, find(d.Pieces[1].Items, pattern.RoleFold))
}

func TestNothingIsCutOrSewnOnTheFold(t *testing.T) {
	front := export.New(accept.Sheet(), export.Options{}).Pieces[0]
	fold := find(front.Items, pattern.RoleFold)[0].Path
	for _, r := range []pattern.Role{pattern.RoleCut, pattern.RoleStitch} {
		line := find(front.Items, r)[0].Path
		require.False(t, line.Closed(), r.String())
		require.InDelta(t, 0, line.Start().X, 1e-9)
		require.InDelta(t, 0, line.End().X, 1e-9)
	}
	cut := find(front.Items, pattern.RoleCut)[0].Path
	require.Equal(t, cut.End(), fold.Start())
	require.Equal(t, cut.Start(), fold.End())
	require.InDelta(t, front.Piece.CutLine.Length(), cut.Length()+fold.Length(), 1e-6)
}

func TestBracketPointsAtTheFoldFromInside(t *testing.T) {
	front := export.New(accept.Sheet(), export.Options{}).Pieces[0]
	sign := find(front.Items, pattern.RoleFold)[1]
	require.True(t, sign.Sign)
	require.Equal(t, export.HeadsBoth, sign.Heads)
	require.Len(t, sign.Strokes(), 3)
	for _, s := range sign.Strokes() {
		require.GreaterOrEqual(t, s.Bounds().Min.X, 0.0)
	}
	require.InDelta(t, 1, sign.Path.EndTangent().Dot(geom.Vector{X: -1}), 1e-9)
}

func TestDrillIsHalfAnInchInsideTheTip(t *testing.T) {
	front := export.New(accept.Sheet(), export.Options{}).Pieces[0]
	hole := find(front.Items, pattern.RoleHole)[0]
	require.Equal(t, geom.Point{X: 102.7, Y: 112}, hole.At)
}

func TestNotchesGoInwardsAndNotTooDeep(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	for _, p := range d.Pieces {
		for _, n := range find(p.Items, pattern.RoleNotch) {
			_, _, off := p.Piece.CutLine.Nearest(n.Path.Start())
			require.Less(t, off, 0.2, p.Piece.ID)
			require.LessOrEqual(t, n.Path.Length(), 6.35+1e-9)
			require.True(t, p.Piece.CutLine.Outline(0.1).Contains(n.Path.End()))
		}
	}
	pair := find(d.Pieces[1].Items, pattern.RoleNotch)
	require.InDelta(t, 5, pair[0].Path.Length(), 1e-9, "half of its allowance")
	require.InDelta(t, 5, pair[0].Path.Start().Dist(pair[1].Path.Start()), 1e-6)
}

func TestNapGivesOneHeadDown(t *testing.T) {
	s := accept.Sheet()
	s.Job.Cloths = []pattern.Cloth{{Name: "main", Nap: true}}
	grain := find(export.New(s, export.Options{}).Pieces[0].Items, pattern.RoleGrain)[0]
	require.Equal(t, export.HeadAtEnd, grain.Heads)
	require.Greater(t, grain.Path.End().Y, grain.Path.Start().Y)
}

func TestLabelSaysAllThatACutterNeeds(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{Unit: measure.In})
	require.Equal(t, []string{
		"Front, 1 of 2", "Dress for Learner Four", "Cut 1 on fold", "Cloth: main",
		"Allowances included, in inches: neck 3/8, shoulder 9/16, side 9/16, dart 9/16, hem 1 9/16",
		"Grain: along the long arrow", "Measured 2026-03-04",
	}, d.Pieces[0].Label)
	require.Contains(t, d.Pieces[1].Label, "Cut 2 (one pair)")
	require.Contains(t, d.Pieces[1].Label, "Cloth: main; the same of interfacing, cut net by the stitch line")
	drawn := ""
	for _, i := range d.Pieces[0].Items {
		if i.Name == "label" {
			drawn += i.Text + " "
		}
	}
	require.Equal(t, strings.Join(d.Pieces[0].Label, " ")+" ", drawn, "broken into lines, nothing lost")
}

func TestUnknownDateIsLeftOut(t *testing.T) {
	s := accept.Sheet()
	s.Job.Client = pattern.Client{}
	d := export.New(s, export.Options{Unit: measure.Cm})
	require.Equal(t, "Dress", d.Title)
	for _, l := range d.Pieces[0].Label {
		require.NotContains(t, l, "Measured")
	}
}

func TestPageSaysWhatItRestsOn(t *testing.T) {
	s := accept.Sheet()
	s.Findings = []pattern.Finding{{Title: "Side seams meet", Verdict: pattern.Fail}, {Title: "Dart size", Verdict: pattern.Advise}}
	s.Notes = []measure.Sentence{measure.Tell("The left side is kept.")}
	text := ""
	for _, i := range export.New(s, export.Options{}).Page {
		text += i.Text + " "
	}
	for _, want := range []string{
		"10 cm", "4 in", "Dress for Learner Four", "from her measurements", "measured 2026-03-04", "in inches",
		"neck base girth 14 1/2", "measure the control squares", "test cloth", "Side seams meet", "heavy line", "The left side is kept.",
	} {
		require.Contains(t, strings.ToLower(text), strings.ToLower(want))
	}
	require.NotContains(t, text, "Dart size")
}

func TestSquaresAreTrueAndClearOfEverything(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{})
	var all []geom.Box
	for _, p := range d.Pieces {
		m := p.Place
		b := p.Bounds()
		all = append(all, geom.Box{Min: m.Apply(b.Min), Max: m.Apply(b.Max)})
	}
	sides := map[float64]int{}
	for k, i := range d.Page {
		if i.Role != pattern.RoleGuide {
			continue
		}
		b := i.Bounds()
		require.InDelta(t, b.Width(), b.Height(), 1e-9)
		sides[math.Round(b.Width()*10)/10]++
		clear := b.Grow(5)
		for _, o := range all {
			require.False(t, clear.Overlaps(o))
		}
		for j, other := range d.Page {
			ob := other.Bounds()
			inside := b.Grow(-5)
			require.True(t, j == k || !clear.Overlaps(ob) || inside.Contains(ob.Min) && inside.Contains(ob.Max), other.Text)
		}
	}
	require.Equal(t, map[float64]int{100: 1, 101.6: 1}, sides)
}

func TestWordsCoverNoLine(t *testing.T) {
	for _, whole := range []bool{false, true} {
		for _, p := range export.New(accept.Sheet(), export.Options{Whole: whole}).Pieces {
			requireClear(t, p)
		}
	}
}

// requireClear says that no words of the piece lie on a line or on words.
func requireClear(t *testing.T, p export.Placed) {
	t.Helper()
	words := find(p.Items, pattern.RoleText)
	require.NotEmpty(t, words)
	for k, w := range words {
		b := w.Bounds().Grow(-0.3)
		for _, i := range p.Items {
			for _, s := range i.Strokes() {
				for _, q := range s.Flatten(0.1) {
					require.False(t, b.Contains(q), "%s: %q lies on %s", p.Piece.ID, w.Text, i.Name)
				}
			}
		}
		for _, o := range words[k+1:] {
			require.False(t, b.Overlaps(o.Bounds().Grow(-0.3)), "%s: %q on %q", p.Piece.ID, w.Text, o.Text)
		}
	}
}

func TestWholeIsBothHalves(t *testing.T) {
	half := export.New(accept.Sheet(), export.Options{}).Pieces[0]
	whole := export.New(accept.Sheet(), export.Options{Whole: true}).Pieces[0]
	require.True(t, whole.Piece.CutLine.Closed())
	require.InDelta(t, 2*half.Piece.CutLine.Outline(0.01).Area(), whole.Piece.CutLine.Outline(0.01).Area(), 0.1)
	require.InDelta(t, 2*half.Piece.Stitch.Outline(0.01).Area(), whole.Piece.Stitch.Outline(0.01).Area(), 0.1)
	require.Nil(t, whole.Piece.Fold)
	require.Empty(t, find(whole.Items, pattern.RoleFold))
	require.Len(t, whole.Piece.Darts, 2)
	require.Len(t, whole.Piece.Notches, 2)
	require.InDelta(t, 0, math.Abs(math.Sin(whole.Piece.Notches[1].Into)), 1e-9)
	require.Equal(t, "Cut 1", whole.Cut)
	require.Len(t, whole.Piece.Edges, 12)
	ring := geom.Path{}
	for _, e := range whole.Piece.Edges {
		ring = ring.Then(e.Stitch)
	}
	require.InDelta(t, whole.Piece.Stitch.Length(), ring.Length(), 1e-6, "edges go round once, without gaps")
}

func TestOnlyOnePiece(t *testing.T) {
	d := export.New(accept.Sheet(), export.Options{Only: pattern.BackNeckFacing})
	require.Len(t, d.Pieces, 1)
	require.Equal(t, pattern.BackNeckFacing, d.Pieces[0].Piece.ID)
}

// Pieces of any size stand on the page, none on another, 20 mm apart.
func TestPacking(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := &pattern.Sheet{Complete: true}
		n := rapid.IntRange(1, 9).Draw(t, "pieces")
		for i := range n {
			w, h := rapid.Float64Range(5, 900).Draw(t, "w"), rapid.Float64Range(5, 1200).Draw(t, "h")
			o := geom.Point{X: rapid.Float64Range(-50, 50).Draw(t, "x"), Y: rapid.Float64Range(-50, 50).Draw(t, "y")}
			ring := geom.Lines(o, o.Add(geom.Vector{X: w}), o.Add(geom.Vector{X: w, Y: h}), o.Add(geom.Vector{Y: h}), o)
			s.Pieces = append(s.Pieces, pattern.Piece{ID: pattern.PieceID(rune('a' + i)), Title: "Piece", CutLine: ring, Stitch: ring})
		}
		d := export.New(s, export.Options{Roll: measure.Length(rapid.Float64Range(0, 1500).Draw(t, "roll"))})
		page := geom.Box{Max: geom.Point{X: d.Width, Y: d.Height}}
		var boxes []geom.Box
		for _, p := range d.Pieces {
			b := p.Bounds()
			b = geom.Box{Min: p.Place.Apply(b.Min), Max: p.Place.Apply(b.Max)}
			if !page.Contains(b.Min) || !page.Contains(b.Max) {
				t.Fatalf("%v is not on the page %v", b, page)
			}
			for _, o := range boxes {
				if b.Grow(19.99).Overlaps(o) {
					t.Fatalf("%v and %v are too near", b, o)
				}
			}
			boxes = append(boxes, b)
		}
	})
}

func TestWrapLosesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[a-z ]{0,60}`).Draw(t, "text")
		s := accept.Sheet()
		s.Job.Client.Name = text
		d := export.New(s, export.Options{})
		got := ""
		for _, i := range d.Pieces[0].Items {
			if i.Name == "label" {
				got += i.Text + " "
			}
		}
		want := strings.Join(strings.Fields(strings.Join(d.Pieces[0].Label, " ")), " ")
		if strings.TrimSpace(got) != want {
			t.Fatalf("%q, want %q", got, want)
		}
	})
}
