package truing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"chalkfold/measure"
	"chalkfold/pattern"
	"chalkfold/pattern/geom"
	"chalkfold/pattern/truing"
	"chalkfold/pattern/workroom"
)

// twoCases are a draft that a check passes, and what makes the same check
// speak: another job, or a careless hand on the sheet.
type twoCases struct {
	job   pattern.Job
	wrong func(pattern.Job) pattern.Job
	spoil func(*pattern.Sheet)
	code  string // what it then says; empty: the id of the check
	says  pattern.Verdict
}

// everyCheck holds both cases of every check there is.
func everyCheck(t *testing.T) map[string]twoCases {
	dress := figure(pattern.Measured)
	with := func(id pattern.ChoiceID, v pattern.Value) func(pattern.Job) pattern.Job {
		return func(j pattern.Job) pattern.Job { return j.WithStyle(id, v) }
	}
	body := func(id measure.ID, inches float64) func(pattern.Job) pattern.Job {
		return func(j pattern.Job) pattern.Job { return j.WithBody(id, measure.Length(inches*25.4)) }
	}
	in := func(x float64) pattern.Value { return pattern.LengthValue(measure.Length(x * 25.4)) }
	short := func(id pattern.PieceID, edge string, mm float64) func(*pattern.Sheet) {
		return func(s *pattern.Sheet) { shortened(mm)(edgesOf(t, s, id, edge)[0]) }
	}
	move := func(id pattern.PieceID, name string, x, y float64) func(*pattern.Sheet) {
		return func(s *pattern.Sheet) {
			for i := range s.Marks {
				if m := &s.Marks[i]; m.Piece == id && m.Name == name {
					m.At = m.At.Add(geom.Vector{X: x, Y: y})
				}
			}
		}
	}
	turn := func(id pattern.PieceID, edge string, degrees float64) func(*pattern.Sheet) {
		return func(s *pattern.Sheet) {
			e := edgesOf(t, s, id, edge)[0]
			e.Stitch = e.Stitch.Transform(geom.TurnAbout(e.Stitch.End(), degrees*3.14159265/180))
		}
	}
	first := func(change func(*pattern.Piece)) func(*pattern.Sheet) {
		return func(s *pattern.Sheet) { change(&s.Pieces[0]) }
	}
	cloth := func(width measure.Length) func(pattern.Job) pattern.Job {
		return func(j pattern.Job) pattern.Job {
			j.Cloths = []pattern.Cloth{{Name: "main", Width: width}}
			return j
		}
	}
	skirt := dress.WithStyle(pattern.Garment, pattern.PickValue(pattern.Skirt))
	seamed := dress.WithStyle("waist_seam", pattern.SwitchValue(true))
	buttoned := picked(map[pattern.ChoiceID]string{"closure": "placket", "collar": "stand"})
	fail, advise := pattern.Fail, pattern.Advise
	return map[string]twoCases{
		"side_seams":     {job: dress, spoil: func(s *pattern.Sheet) { s.Lengths = nil; short(pattern.Back, "side", 6)(s) }, says: fail},
		"shoulder_seams": {job: dress, spoil: short(pattern.Back, "shoulder", 6), says: fail},
		"waist_seams":    {job: seamed, spoil: short(pattern.SkirtFront, "waist", 6), says: fail},
		"waist_edge":     {job: skirt, spoil: short(pattern.FrontWaistFacing, "waist", 9), says: fail},
		"dart_legs":      {job: dress, spoil: first(func(p *pattern.Piece) { p.Darts[0].Tip.Y += 20 }), says: fail},
		"dart_aim": {job: dress, wrong: func(j pattern.Job) pattern.Job {
			return with("side_dart_below", in(1.5))(body(measure.SideNeckToBustPoint, 12.5)(j))
		}, code: "dart_droops", says: advise},
		"dart_size":     {job: dress, wrong: body(measure.SideNeckToWaist, 17), code: "dart_least", says: advise},
		"neck_join":     {job: dress, spoil: turn(pattern.Back, "neck", 15), says: fail},
		"armhole_join":  {job: dress, spoil: turn(pattern.Front, "shoulder", 12), says: fail},
		"underarm_join": {job: dress, spoil: turn(pattern.Back, "side", 14), says: fail},
		"hem_join":      {job: dress, spoil: turn(pattern.Back, "hem", 30), says: fail},
		"centre_square": {job: dress, spoil: turn(pattern.Front, "neck", 6), says: fail},
		"facing_fit":    {job: dress, spoil: short(pattern.FrontNeckFacing, "neck", 9), says: fail},
		"sleeve_cap":    {job: sleeved("long"), spoil: short(pattern.Sleeve, "front_cap", 40), code: "cap_ease", says: fail},
		"sleeve_seams":  {job: sleeved("long"), spoil: short(pattern.Sleeve, "back_seam", 5), says: fail},
		"collar_neck":   {job: buttoned, spoil: short(pattern.Collar, "front_neck", 10), says: fail},
		"placket_fit":   {job: buttoned, spoil: short(pattern.Placket, "placket", 5), says: fail},
		"lining_fit":    {job: picked(map[pattern.ChoiceID]string{"lining": "full"}), spoil: short("back_lining", "side", 12), code: "lining_sides", says: fail},
		"bust_girth":    {job: dress, spoil: move(pattern.Back, "underarm", 5, 0), says: fail},
		"waist_girth":   {job: dress, spoil: move(pattern.Back, "waist", 5, 0), says: fail},
		"hip_girth":     {job: dress, spoil: move(pattern.Back, "hip", 5, 0), says: fail},
		"armhole_girth": {job: dress, wrong: body(measure.UpperArmGirth, 15), code: "armhole_small", says: fail},
		"neck_girth": {job: dress, wrong: func(j pattern.Job) pattern.Job {
			return with("front_neck_depth", in(2.5))(with("neck_widening", in(0))(j))
		}, code: "neck_loose", says: advise},
		"head_passage":  {job: dress, wrong: with("zip_length", in(1)), says: fail},
		"body_passage":  {job: dress, wrong: with("zip_length", in(14)), says: fail},
		"balance":       {job: dress, spoil: move(pattern.Back, "waist", 0, 5), says: fail},
		"hem_level":     {job: dress, spoil: move(pattern.Back, "hem_side", 0, -8), says: fail},
		"walking":       {job: dress, wrong: func(j pattern.Job) pattern.Job { return with("slit_height", in(0))(body(measure.StepLength, 28)(j)) }, says: advise},
		"slit_height":   {job: dress, wrong: with("slit_height", in(16)), code: "slit_high", says: fail},
		"sitting":       {job: dress, wrong: with("ease_hip", in(1)), code: "sit_tight", says: fail},
		"shoulder_left": {job: dress, wrong: with("neck_widening", in(1.75)), says: advise},
		"outline_simple": {job: dress, spoil: first(func(p *pattern.Piece) {
			p.Stitch = geom.Lines(geom.Point{}, geom.Point{X: 9, Y: 9}, geom.Point{X: 9}, geom.Point{Y: 9}, geom.Point{})
		}), says: fail},
		"allowance_fits": {job: dress, spoil: first(func(p *pattern.Piece) { p.Edges[1].Allowance += 10 }), says: fail},
		"labels":         {job: dress, spoil: first(func(p *pattern.Piece) { p.Title = "" }), says: fail},
		"cloth_width":    {job: cloth(58 * measure.Inch)(dress), wrong: cloth(18 * measure.Inch), says: fail},
	}
}

// Every check has a draft that it passes and one that it does not: a check
// with one of them alone could be one that always or never speaks.
func TestEveryCheckPassesAndSpeaks(t *testing.T) {
	cases := everyCheck(t)
	for _, c := range truing.Checks() {
		two, ok := cases[c.ID]
		require.True(t, ok, "%s has no case", c.ID)
		delete(cases, c.ID)
		t.Run(c.ID, func(t *testing.T) { two.hold(t, c.ID) })
	}
	require.Empty(t, cases, "cases of no check")
}

func (two twoCases) hold(t *testing.T, check string) {
	s := workroom.Draft(two.job)
	require.True(t, s.Complete, check)
	said := findingsOf(s, check)
	require.NotEmpty(t, said, "%s is not heard", check)
	for _, f := range said {
		require.Equal(t, pattern.Pass, f.Verdict, "%s: %s", check, f.Says.In(measure.In))
	}
	if two.wrong != nil {
		s = workroom.Draft(two.wrong(two.job))
	}
	if two.spoil != nil {
		two.spoil(s)
	}
	code := two.code
	if code == "" {
		code = check
	}
	found := false
	for _, f := range findingsOf(s, check) {
		if f.Code == code {
			found = true
			require.Equal(t, two.says, f.Verdict, "%s: %s", check, f.Says.In(measure.In))
			require.False(t, f.Cure.IsEmpty(), check)
		}
	}
	require.True(t, found, "%s does not say %s: %v", check, code, findingsOf(s, check))
}

func findingsOf(s *pattern.Sheet, check string) []pattern.Finding {
	var out []pattern.Finding
	for _, f := range truing.Run(s) {
		if f.Check == check {
			out = append(out, f)
		}
	}
	return out
}

// What finishes the waist of a skirt, both ways: the facings, each against its
// half, and the band; and the darts and the zip that its edge waits for.
func TestWaistEdgeFaults(t *testing.T) {
	skirt := figure(pattern.Measured).WithStyle(pattern.Garment, pattern.PickValue(pattern.Skirt))
	band := skirt.WithStyle("waist_finish", pattern.PickValue("band"))
	for name, c := range map[string]struct {
		job   pattern.Job
		code  string
		says  pattern.Verdict
		spoil func(*pattern.Sheet)
	}{
		"front facing, a little": {skirt, "waist_edge", pattern.Advise, func(s *pattern.Sheet) { shortened(5)(edgesOf(t, s, pattern.FrontWaistFacing, "waist")[0]) }},
		"back facing":            {skirt, "waist_edge", pattern.Fail, func(s *pattern.Sheet) { shortened(9)(edgesOf(t, s, pattern.BackWaistFacing, "waist")[0]) }},
		"band":                   {band, "waist_edge", pattern.Fail, func(s *pattern.Sheet) { shortened(8)(edgesOf(t, s, pattern.WaistBand, "waist")[0]) }},
		"dart legs":              {skirt, "waist_dart_legs", pattern.Fail, func(s *pattern.Sheet) { s.Pieces[0].Darts[0].Tip.X += 12 }},
		"dart cap":               {skirt, "waist_dart_cap", pattern.Fail, func(s *pattern.Sheet) { s.Pieces[0].Darts[0].Cap.Y += 8 }},
		"zip": {skirt, "step_in", pattern.Advise, func(s *pattern.Sheet) {
			for i := range s.Marks {
				if s.Marks[i].Name == "zip_end" {
					s.Marks[i].At.Y -= 100
				}
			}
		}},
	} {
		s := workroom.Draft(c.job)
		require.True(t, s.Complete, name)
		require.Equal(t, pattern.Pass, verdictOf(s, c.code), name)
		c.spoil(s)
		require.Equal(t, c.says, verdictOf(s, c.code), name)
	}
}
