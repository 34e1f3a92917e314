// Package figure holds made-up bodies whose drafts were worked out by
// arithmetic beside the program, and reads the results from
// testdata/reference. No garment was cut from them. It is for tests alone.
package figure

import (
	"encoding/json"
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"chalkfold/measure"
	"chalkfold/pattern"
)

// In is a length in inches.
func In(x float64) measure.Length { return measure.Length(x) * measure.Inch }

// ids maps the short names of the reference files to ours.
var ids = map[string]measure.ID{
	"bust": measure.BustGirth, "waist": measure.WaistGirth, "hip": measure.HipGirth, "neck": measure.NeckBaseGirth,
	"across_shoulder": measure.AcrossShoulders, "across_front": measure.AcrossFront, "across_back": measure.AcrossBack,
	"back_waist": measure.BackNeckToWaist, "front_waist": measure.SideNeckToWaist, "bust_depth": measure.SideNeckToBustPoint,
	"bust_span": measure.BustPointDistance, "hip_depth": measure.WaistToHip, "shoulder_drop": measure.ShoulderDrop,
	"waist_to_knee": measure.WaistToKnee,
}

var choices = map[string]pattern.ChoiceID{
	"inset": "shoulder_inset", "forward": "shoulder_forward", "widen": "neck_widening", "front_neck": "front_neck_depth",
	"back_neck": "back_neck_depth", "max_side_in": "side_waist_limit", "peg": "hem_peg", "dart_below": "side_dart_below",
	"tip_back": "dart_tip_back", "length": "length", "armhole_depth": "armhole_depth",
	"ease_bust": "ease_bust", "ease_waist": "ease_waist", "ease_hip": "ease_hip",
}

// Half is the result of one half.
type Half struct {
	Points  map[string][2]float64 `json:"points"`
	Lengths map[string]float64    `json:"lengths"`
	Sewn    *Half                 `json:"sewn"`
}

// Draft is one worked-out draft, inches.
type Draft struct {
	Measures map[string]float64 `json:"measures"`
	Options  map[string]any     `json:"options"`
	Result   struct {
		Front  Half               `json:"front"`
		Back   Half               `json:"back"`
		Checks map[string]float64 `json:"checks"`
	} `json:"result"`
}

// Read reads testdata/reference/NAME into v.
func Read(t testing.TB, name string, v any) {
	t.Helper()
	_, here, _, _ := runtime.Caller(0)
	data, err := os.ReadFile(filepath.Join(filepath.Dir(here), "..", "reference", name))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, v); err != nil {
		t.Fatal(err)
	}
}

// P36 reads the worked-out draft of figure P36 by a method.
func P36(t testing.TB, method string) Draft {
	t.Helper()
	var file struct {
		Drafts map[string]Draft `json:"drafts"`
	}
	Read(t, method+"-p36.json", &file)
	return file.Drafts["P36"]
}

// Job is the job of a worked-out draft.
func (d Draft) Job(method string) pattern.Job {
	body := map[measure.ID]measure.Length{}
	style := map[pattern.ChoiceID]pattern.Value{pattern.Method: pattern.PickValue(method)}
	take := func(name string, x float64) {
		if id, ok := ids[name]; ok {
			body[id] = In(x)
		} else if id, ok := choices[name]; ok {
			style[id] = pattern.LengthValue(In(x))
		}
	}
	for name, x := range d.Measures {
		take(name, x)
	}
	for name, v := range d.Options {
		if x, ok := v.(float64); ok && name != "opening" {
			take(name, x)
		}
	}
	return pattern.Job{Body: measure.NewBody(body), Style: pattern.NewStyle(style)}
}

// Body36 is figure P36 with nothing chosen but the method.
func Body36(t testing.TB, method string) pattern.Job {
	job := P36(t, method).Job(method)
	job.Style = pattern.NewStyle(map[pattern.ChoiceID]pattern.Value{pattern.Method: pattern.PickValue(method)})
	return job
}
