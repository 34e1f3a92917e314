package stage

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/ui/desk"
	"chalkfold/ui/keys"
)

// figure is the check figure in inches.
func figure() pattern.Job {
	body := map[measure.ID]measure.Length{}
	for id, x := range map[measure.ID]float64{
		measure.BustGirth: 36, measure.WaistGirth: 28, measure.HipGirth: 38, measure.NeckBaseGirth: 14.5, measure.AcrossShoulders: 15,
		measure.AcrossFront: 12.75, measure.AcrossBack: 13.75, measure.BackNeckToWaist: 16, measure.SideNeckToWaist: 17.75,
		measure.SideNeckToBustPoint: 10.25, measure.BustPointDistance: 7.25, measure.WaistToHip: 8, measure.ShoulderDrop: 1.5,
	} {
		body[id] = measure.In.Length(x)
	}
	return pattern.Job{Client: pattern.Client{Name: "Learner Four"}, Body: measure.NewBody(body)}
}

func bench36(t *testing.T) *desk.Desk {
	t.Helper()
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	d := desk.New(desk.Settings{})
	d.Take(desk.Opened{Saved: figure()})
	return d
}

// user does to a stage what the root does.
type user struct {
	t *testing.T
	d *desk.Desk
	s desk.Stage
}

func (u user) take(a desk.Ask) desk.Ask {
	u.t.Helper()
	if a.Job != nil {
		require.NotEmpty(u.t, a.Says, "a change has a sentence")
		u.d.Change(*a.Job, a.Says)
	}
	u.s.View(desk.Rect{Columns: 80, Rows: 21})
	return a
}

func (u user) do(ids ...keys.ID) desk.Ask {
	u.t.Helper()
	var last desk.Ask
	for _, id := range ids {
		last = u.take(u.s.Do(id))
	}
	return last
}

func (u user) types(s string) desk.Ask {
	u.t.Helper()
	return u.take(u.s.Type(desk.Key{Name: s, Runes: []rune(s)}))
}

func (u user) screen() string {
	return strings.Join(u.s.View(desk.Rect{Columns: 80, Rows: 21}), "\n")
}
