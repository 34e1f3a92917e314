package measure_test

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"

	. "chalkfold/measure"
)

// contract is every id that a session file may hold.
const contract = `height, bust_girth, upper_chest_girth, under_bust_girth, waist_girth, top_hip_girth, hip_girth, neck_girth,
neck_base_girth, shoulder_length, shoulder_drop, across_shoulders, across_back, across_front, back_neck_to_waist,
front_neck_to_waist, side_neck_to_bust_point, side_neck_to_waist, back_neck_to_bust_point, front_neck_to_bust_point,
bust_point_distance, armscye_depth, armscye_girth, waist_to_hip, waist_to_knee, waist_to_floor, back_neck_to_floor,
body_rise, upper_arm_girth, elbow_girth, wrist_girth, arm_length, shoulder_to_elbow, back_neck_to_wrist, hand_girth,
thigh_girth, head_girth, side_waist_length, step_length, shoulder_to_waist_back, shoulder_to_waist_front,
front_waist_arc, front_hip_arc, waist_to_floor_back`

func TestTableHoldsTheContract(t *testing.T) {
	var want []ID
	for _, id := range strings.Fields(strings.ReplaceAll(contract, ",", " ")) {
		want = append(want, ID(id))
	}
	require.ElementsMatch(t, want, ids())
}

func TestRowsAreWhole(t *testing.T) {
	groups := []string{}
	for _, m := range All() {
		for _, text := range []string{m.Term, m.Short, m.Plain, m.Landmarks, m.How, m.Slip, m.Group} {
			require.NotEmpty(t, text, m.ID)
			require.Equal(t, strings.TrimSpace(text), text, m.ID)
			requirePlain(t, text)
		}
		require.True(t, m.Short[0] >= 'a' && m.Short[0] <= 'z', "a sentence makes it a capital: %s", m.ID)
		require.LessOrEqual(t, len(m.Short), 24, "it is a label: %s", m.ID)
		require.True(t, strings.HasSuffix(m.How, ".") && strings.HasSuffix(m.Slip, "."), m.ID)
		require.Equal(t, m.High == 0, m.RangeSource == "", m.ID)
		require.True(t, m.High == 0 || m.Low > 0 && m.Low < m.High, m.ID)
		if m.Standard != "" {
			require.Regexp(t, `^ISO 8559-1:2017 5\.\d+\.\d+$`, m.Standard)
		}
		if len(groups) == 0 || groups[len(groups)-1] != m.Group {
			require.NotContains(t, groups, m.Group, "a group stands together")
			groups = append(groups, m.Group)
		}
		found, ok := Find(m.ID)
		require.True(t, ok)
		require.Equal(t, m, found)
		if m.High != 0 {
			require.NoError(t, Check(m.ID, m.Low))
			require.NoError(t, Check(m.ID, m.High))
		}
	}
	_, ok := Find("tail_girth")
	require.False(t, ok)
}

func TestTheDressNeeds(t *testing.T) {
	var needs, helps []ID
	for _, m := range All() {
		if len(m.NeededFor) > 0 {
			require.Equal(t, []string{"dress", "top", "shift", "tunic"}, m.NeededFor[:4])
			require.Empty(t, m.UsefulFor)
			needs = append(needs, m.ID)
		}
		if len(m.UsefulFor) > 0 {
			helps = append(helps, m.ID)
		}
	}
	require.Equal(t, []ID{
		NeckBaseGirth, AcrossShoulders, ShoulderDrop, BustGirth, WaistGirth, HipGirth, WaistToHip, BackNeckToWaist,
		SideNeckToWaist, SideNeckToBustPoint, BustPointDistance, AcrossFront, AcrossBack, WaistToKnee,
	}, needs)
	var skirt []ID
	for _, m := range All() {
		if slices.Contains(m.NeededFor, "skirt") {
			skirt = append(skirt, m.ID)
		}
	}
	require.Equal(t, []ID{WaistGirth, HipGirth, WaistToHip, WaistToKnee}, skirt)
	require.ElementsMatch(t, []ID{
		Height, UpperChestGirth, UpperArmGirth, ShoulderLength, ArmscyeGirth, TopHipGirth, HeadGirth, WaistToFloor, WaistToFloorBack, StepLength, FrontWaistArc, FrontHipArc,
	}, helps)
}

func TestAllIsACopy(t *testing.T) {
	All()[0].Plain = "changed"
	require.NotEqual(t, "changed", All()[0].Plain)
}

// TestReadingLevel holds that a learner of grade 7 can read how each is taken
// (Flesch-Kincaid, syllables counted by groups of vowels).
func TestReadingLevel(t *testing.T) {
	sentences, words, syllables := 0, 0, 0
	for _, m := range All() {
		for _, text := range []string{m.How, m.Slip} {
			sentences += strings.Count(text, ".") + strings.Count(text, ":")
			for _, w := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
				words++
				syllables += count(strings.ToLower(w))
			}
		}
	}
	grade := 0.39*float64(words)/float64(sentences) + 11.8*float64(syllables)/float64(words) - 15.59
	require.Less(t, grade, 7.0)
}

func count(word string) int {
	n, before := 0, false
	for _, r := range strings.TrimSuffix(word, "e") {
		vowel := strings.ContainsRune("aeiouy", r)
		if vowel && !before {
			n++
		}
		before = vowel
	}
	return max(1, n)
}
