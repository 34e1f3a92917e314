// Package ansur gives tests the measurements of 993 real women: half of those
// of the second survey of US Army personnel (ANSUR II, measured 2010-12, US
// Government work, cleared for unlimited public release). The file itself is
// no part of the project. Where a folder holding ansur2_women_dev.csv is named
// in the environment as CHALKFOLD_DATA it is read; else the test is skipped.
//
// They are soldiers, not the public, and five entries of each set are scaled
// or built. A test may claim that the rules hold for proportions that occur
// together in living women, not that a garment fits them.
package ansur

import (
	"encoding/csv"
	"errors"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"chalkfold/measure"
)

const (
	folder = "CHALKFOLD_DATA"
	file   = "ansur2_women_dev.csv"
)

// Woman is one row of the survey as a client.
type Woman struct {
	Row    int // 1 is the first below the header
	Body   measure.Body
	Length measure.Length // garment length for tests: a quarter inch below the knee
}

// Load reads all women, or skips the test where there is no data.
func Load(t testing.TB) []Woman {
	t.Helper()
	dir := os.Getenv(folder)
	if dir == "" {
		t.Skipf("the survey's data is not here: name the folder of %s in %s", file, folder)
	}
	f, err := os.Open(filepath.Join(dir, file))
	if errors.Is(err, fs.ErrNotExist) {
		t.Skipf("the survey's data is not here: %s names %s, which has no %s", folder, dir, file)
	}
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	columns := make(map[string]int)
	for i, name := range lines[0] {
		columns[name] = i
	}
	women := make([]Woman, 0, len(lines)-1)
	for n, line := range lines[1:] {
		women = append(women, woman(t, n+1, func(name string) float64 {
			at, ok := columns[name]
			if !ok {
				t.Fatalf("%s has no column %s", file, name)
			}
			x, err := strconv.ParseFloat(line[at], 64)
			if err != nil {
				t.Fatalf("%s row %d, %s: %v", file, n+1, name, err)
			}
			return x
		}))
	}
	return women
}

// woman maps one row. Every measurement is worked out from the columns as
// they stand and rounded once, to a tenth of a millimetre.
func woman(t testing.TB, row int, at func(string) float64) Woman {
	t.Helper()
	// The waist of the standard lies midway between lowest rib and hip bone;
	// the survey's own waist is at the navel.
	waist := (at("tenthribheight") + at("iliocristaleheight")) / 2
	fall := at("cervicaleheight") - at("acromialheight")
	back := 0.894 * at("interscyeii")
	toWaist := at("waistbacklength") - (waist - at("waistheightomphalion"))
	// The side of the neck is 3/4 in above the nape, the bust point half the
	// depth of the chest in front of it.
	toBust := math.Hypot(at("cervicaleheight")+19.05-at("chestheight"), at("chestdepth")/2)

	lengths := make(map[measure.ID]measure.Length)
	for id, mm := range map[measure.ID]float64{
		measure.Height:              at("stature"),
		measure.BustGirth:           at("chestcircumference"),
		measure.WaistGirth:          0.93 * at("waistcircumference"),
		measure.HipGirth:            at("buttockcircumference"),
		measure.NeckGirth:           at("neckcircumference"),
		measure.NeckBaseGirth:       at("neckcircumferencebase"),
		measure.ShoulderLength:      at("shoulderlength"),
		measure.AcrossShoulders:     2 * math.Hypot(at("biacromialbreadth")/2, fall),
		measure.ShoulderDrop:        0.625 * fall,
		measure.AcrossBack:          back,
		measure.AcrossFront:         back - 25.4,
		measure.BackNeckToWaist:     toWaist,
		measure.SideNeckToBustPoint: toBust,
		measure.SideNeckToWaist:     toBust + at("chestheight") - waist,
		measure.BustPointDistance:   at("chestcircumference") / 5,
		measure.WaistToHip:          waist - at("buttockheight"),
		measure.WaistToKnee:         waist - at("kneeheightmidpatella"),
		measure.WaistToFloor:        waist,
		measure.BackNeckToFloor:     at("cervicaleheight"),
		measure.BodyRise:            waist - at("crotchheight"),
		measure.UpperArmGirth:       at("bicepscircumferenceflexed") - 20,
		measure.WristGirth:          at("wristcircumference"),
		measure.ThighGirth:          at("thighcircumference"),
		measure.HeadGirth:           at("headcircumference"),
		measure.ArmLength:           at("sleeveoutseam"),
		measure.ShoulderToElbow:     at("acromionradialelength"),
		measure.SideWaistLength:     at("axillaheight") - waist - 20,
	} {
		lengths[id] = measure.Length(mm).Near(measure.Millimetre / 10)
	}
	length := 25.4 + lengths[measure.BackNeckToWaist] + lengths[measure.WaistToKnee]
	return Woman{Row: row, Body: measure.NewBody(lengths), Length: length.Near(measure.Millimetre / 10)}
}
