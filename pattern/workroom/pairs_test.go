package workroom_test

import (
	"fmt"
	"slices"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/workroom"
	"chalkfold/testdata/ansur"

	"github.com/stretchr/testify/require"
)

// Each style is drafted on every tenth of these women, so that all of them
// are drafted and no style is tried on few.
const pairWomen, pairStride = 110, 10

// TestPairs drafts every garment in styles that hold every pair of options of
// any two choices, on women of the survey: each draft is whole and sound, or
// refused with a reason and a cure.
func TestPairs(t *testing.T) {
	women := ansur.Load(t)
	every := len(women) / pairWomen
	for _, g := range workroom.Garments() {
		t.Run(g.ID, func(t *testing.T) {
			t.Parallel()
			axes := axesOf(g.ID)
			rows := pairs(axes)
			covers(t, axes, rows)
			refused, drafted, left := map[string]int{}, 0, 0
			for n, row := range rows {
				for i := n % pairStride; i < pairWomen; i += pairStride {
					w := women[i*every]
					job := jobOf(w, pattern.Measured).WithStyle(pattern.Garment, pattern.PickValue(g.ID)).WithoutStyle("length")
					for a, o := range row {
						job = job.WithStyle(axes[a].id, axes[a].values[o])
					}
					s := workroom.Draft(job)
					for tries := 0; tries < 6 && len(s.Refused) > 0 && chosen(job, s.Refused[0].Input); tries++ {
						refused[s.Refused[0].Code+" "+s.Refused[0].Input]++
						reasoned(t, s)
						job = job.WithoutStyle(pattern.ChoiceID(s.Refused[0].Input)) // its usual value, and the rest of the row is tried
						s = workroom.Draft(job)
					}
					drafted++
					what := fmt.Sprintf("%s, row %d, %v", g.ID, w.Row, said(axes, row))
					if len(s.Refused) > 0 {
						left++
						refused["left "+s.Refused[0].Code+" "+s.Refused[0].Input]++
						reasoned(t, s)
						continue
					}
					require.True(t, s.Complete, what)
					sound(t, s, what)
					for _, f := range s.Findings {
						if f.Verdict == pattern.Fail {
							require.Contains(t, mayFail, f.Check, "%s: %s", what, f.Says.In(measure.In))
						}
					}
				}
			}
			t.Logf("%d styles, %d drafts, refused: %v; %d left refused", len(rows), drafted, refused, left)
			require.LessOrEqual(t, left, drafted/6)
		})
	}
}

// mayFail are the checks that a style may fail on its own account: a garment
// that nothing opens.
var mayFail = []string{"head_passage", "body_passage"}

// reasoned holds a refusal to say why and what would work.
func reasoned(t *testing.T, s *pattern.Sheet) {
	t.Helper()
	for _, r := range s.Refused {
		require.NotEmpty(t, r.Code)
		require.NotEmpty(t, r.Says.In(measure.In), r.Code)
		require.NotEmpty(t, r.Cure.In(measure.In), r.Code)
	}
}

// axis is a choice and the values that are tried.
type axis struct {
	id     pattern.ChoiceID
	values []pattern.Value
}

// axesOf are the picks and switches of a garment, but what it is and how it
// is drafted.
func axesOf(garment string) []axis {
	var out []axis
	for _, c := range workroom.Choices(garment) {
		if c.ID == pattern.Garment || c.ID == pattern.Method || !c.UsedBy(pattern.Measured) {
			continue
		}
		a := axis{id: c.ID}
		switch c.Kind {
		case pattern.KindPick:
			for _, o := range c.Options {
				a.values = append(a.values, pattern.PickValue(o.Value))
			}
		case pattern.KindSwitch:
			a.values = []pattern.Value{pattern.SwitchValue(false), pattern.SwitchValue(true)}
		}
		if len(a.values) > 1 {
			out = append(out, a)
		}
	}
	return out
}

func said(axes []axis, row []int) []string {
	var out []string
	for a, o := range row {
		out = append(out, fmt.Sprintf("%s=%v", axes[a].id, axes[a].values[o]))
	}
	return out
}

// pair is one option of one axis beside one of a later axis.
type pair struct{ a, o, b, p int }

// pairs finds few rows that hold every pair: each row starts with a pair that
// is still missing and takes, axis by axis, the option that adds most.
func pairs(axes []axis) [][]int {
	missing := map[pair]bool{}
	var order []pair
	for a := range axes {
		for b := a + 1; b < len(axes); b++ {
			for o := range axes[a].values {
				for p := range axes[b].values {
					missing[pair{a, o, b, p}] = true
					order = append(order, pair{a, o, b, p})
				}
			}
		}
	}
	var rows [][]int
	for _, first := range order {
		if !missing[first] {
			continue
		}
		row := slices.Repeat([]int{-1}, len(axes))
		row[first.a], row[first.b] = first.o, first.p
		for a := range axes {
			if row[a] >= 0 {
				continue
			}
			best, most := 0, -1
			for o := range axes[a].values {
				row[a] = o
				if n := adds(missing, row, a); n > most {
					best, most = o, n
				}
			}
			row[a] = best
		}
		for a := range axes {
			for b := a + 1; b < len(axes); b++ {
				delete(missing, pair{a, row[a], b, row[b]})
			}
		}
		rows = append(rows, row)
	}
	return rows
}

// adds counts the missing pairs that the option of one axis makes with the
// axes already filled.
func adds(missing map[pair]bool, row []int, at int) int {
	n := 0
	for b, p := range row {
		switch {
		case p < 0 || b == at:
		case at < b && missing[pair{at, row[at], b, p}], b < at && missing[pair{b, p, at, row[at]}]:
			n++
		}
	}
	return n
}

// covers holds the rows to what they are for.
func covers(t *testing.T, axes []axis, rows [][]int) {
	t.Helper()
	for a := range axes {
		for b := a + 1; b < len(axes); b++ {
			seen := map[[2]int]bool{}
			for _, r := range rows {
				seen[[2]int{r[a], r[b]}] = true
			}
			require.Len(t, seen, len(axes[a].values)*len(axes[b].values), "%s and %s", axes[a].id, axes[b].id)
		}
	}
}

func chosen(job pattern.Job, input string) bool {
	_, ok := job.Style.Get(pattern.ChoiceID(input))
	return ok
}
