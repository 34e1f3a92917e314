package theme

// inks of a theme, in the order of its row.
const (
	textInk = iota
	mutedInk
	lineInk
	guideInk
	newestInk
	selectedInk // the row or field in hand, written in reverse
	accentInk
	warnInk
	okInk
	numInks
)

// Theme is one row of the table, with how much colour the terminal takes.
type Theme struct {
	name   string
	says   string
	back   ink // terminal: the background is not painted
	inks   [numInks]ink
	colour Colour
}

// table holds the themes in the order Ctrl+T goes through them. The values of
// light and dark were chosen by their contrast on #FFFFFF and #101214 (WCAG
// 2.1 formula); the tests compute it again for the colours and for their
// places among the 256.
var table = []Theme{
	{
		name: "plain", says: "the terminal's own colours, three accents",
		back: terminal,
		inks: [numInks]ink{
			textInk: terminal, mutedInk: {0x767676, 243, 8}, lineInk: terminal, guideInk: {0x767676, 243, 8},
			newestInk: {0xB85C00, 130, 5}, selectedInk: terminal, accentInk: {0x0072B2, 31, own},
			warnInk: {0xB85C00, 130, 1}, okInk: {0x0072B2, 31, own},
		},
	},
	{
		name: "light", says: "dark on white, painted",
		back: ink{0xFFFFFF, 231, 15},
		inks: [numInks]ink{
			textInk: {0x111111, 233, 0}, mutedInk: {0x5A5A5A, 240, 0}, lineInk: {0x1A1A1A, 234, 0}, guideInk: {0x767676, 243, 8},
			newestInk: {0xA23B00, 130, 1}, selectedInk: {0x00538A, 24, 4}, accentInk: {0x00538A, 24, 4},
			warnInk: {0x8A3A00, 94, 5}, okInk: {0x00614A, 23, 4},
		},
	},
	{
		name: "dark", says: "light on near black, painted",
		back: ink{0x101214, 233, 0},
		inks: [numInks]ink{
			textInk: {0xF2F2F2, 255, 15}, mutedInk: {0xA8ADB2, 248, 7}, lineInk: {0xE6E6E6, 254, 7}, guideInk: {0x7C8288, 244, 8},
			newestInk: {0xFFB347, 215, 11}, selectedInk: {0x7CC7FF, 117, 14}, accentInk: {0x7CC7FF, 117, 14},
			warnInk: {0xFF9E64, 209, 3}, okInk: {0x5FD7AF, 79, 10},
		},
	},
	{
		name: "mono", says: "no colour: weight and markers only",
		back: terminal,
		inks: [numInks]ink{terminal, terminal, terminal, terminal, terminal, terminal, terminal, terminal, terminal},
	},
	{
		name: "high-contrast", says: "white and bright on black, painted",
		back: ink{0x000000, 16, 0},
		inks: [numInks]ink{
			textInk: {0xFFFFFF, 231, 15}, mutedInk: {0xE4E4E4, 254, 7}, lineInk: {0xFFFFFF, 231, 15}, guideInk: {0xA8A8A8, 248, 7},
			newestInk: {0xFFFF00, 226, 11}, selectedInk: {0x00FFFF, 51, 14}, accentInk: {0x00FFFF, 51, 14},
			warnInk: {0xFFAF00, 214, 11}, okInk: {0x5FFF87, 84, 10},
		},
	},
	{
		name: "projector", says: "dark on white for a class, painted",
		back: ink{0xFFFFFF, 231, 15},
		inks: [numInks]ink{
			textInk: {0x000000, 16, 0}, mutedInk: {0x4E4E4E, 239, 0}, lineInk: {0x000000, 16, 0}, guideInk: {0x6C6C6C, 242, 8},
			newestInk: {0x8A2F00, 88, 4}, selectedInk: {0x00538A, 18, 4}, accentInk: {0x00538A, 18, 4},
			warnInk: {0x5F005F, 53, 4}, okInk: {0x00553F, 22, 4},
		},
	},
	{
		name: "projector-dark", says: "light on black for a class, painted",
		back: ink{0x000000, 16, 0},
		inks: [numInks]ink{
			textInk: {0xFFFFFF, 231, 15}, mutedInk: {0xBCBCBC, 250, 7}, lineInk: {0xFFFFFF, 231, 15}, guideInk: {0x8A8A8A, 245, 8},
			newestInk: {0xFFB347, 215, 11}, selectedInk: {0x87D7FF, 117, 14}, accentInk: {0x87D7FF, 117, 14},
			warnInk: {0xFF9E64, 209, 3}, okInk: {0x5FD7AF, 79, 10},
		},
	},
}
