package ui

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// promise is what the screen promises, and the tests that hold it to that.
type promise struct {
	number int
	says   string
	tests  string
}

// promises are all of them. Each test named here fails where the promise is
// broken.
var promises = []promise{
	// Work is never lost, the terminal never wrecked.
	{1, "It starts at once, also where the terminal answers nothing.", "TestTheFirstPictureWaitsForNoAnswer TestSortsBeforeTheFramework TestTheAnswerIsSet"},
	{2, "Whatever ends it, the terminal is as it was.", "TestSignalsRescueAndRestore TestFaultsRescueAndRestore"},
	{3, "A fault of its own is said in plain words, with where the work and the log are.", "TestFaultsRescueAndRestore TestAFaultEndsInOrderAndRescues TestAFaultInACommandComesBack"},
	{4, "A closed window rescues the work and ends the program.", "TestSignalsRescueAndRestore"},
	{5, "Every accepted change is soon in a rescue copy, which is offered at the next start.", "TestTheRescueCopyFollowsTheWork TestRescue TestRescueWithoutFile TestRescueOffer TestForeignFilesAmongRescues"},
	{6, "A file is written whole or not at all, and one version before is kept.", "TestKilled TestBrokenWriteLeavesTheOldFile TestOnePreviousVersion TestSaveKeepsTheFormerAndAsks TestADiskThatFills"},
	{7, "A file that changed elsewhere is asked about.", "TestAFileChangedElsewhereIsAskedAbout TestTwoWorkbenchesOnOneFile TestStampNoticesChanges TestSaveLooksFirst"},
	{8, "What changes the file can be taken back and made again, and it is said which it was.", "TestAnEditIsStarredUndoneAndDoneAgain TestUndoNamesWhatItTookBack TestUndoingAllIsTheStart TestUndoAllIsTheStartAndRedoAllTheEnd TestEachSeatHasItsOwnHistory TestRandomKeys"},
	{9, "Esc goes back and never leaves; q and Ctrl+C leave, and ask about unsaved work.", "TestEscNeverLeavesAndQAsks TestLeave TestLeavingNamesAllAndSavesAll"},
	{10, "Ctrl+C twice leaves at once with the work rescued; Ctrl+Z takes back; sleep is in the command list.", "TestCtrlCTwiceLeavesAtOnceAndRescues TestAnEditIsStarredUndoneAndDoneAgain TestSleepIsInTheCommandList"},

	// She always knows where she is and what she can press.
	{11, "One table of keys: every key in it works, no other does anything, and all that prints keys prints it.", "TestEveryKeyIsLiveAndNoOtherIs TestReadmeKeys TestTheManualIsWhole TestNoClash TestShownIsTrue"},
	{12, "The footer has three to six keys that work now, never wrapped, ending in help.", "TestFooterEndsInHelp TestEveryFooterKeyDoesSomething TestFootersOfLearningAreLive TestFooters"},
	{13, "Help says what can be done here in sentences, finds as she types, does it, and comes back to the same state.", "TestHelpIsWholeEverywhere TestHelpComesBackToTheSameState TestHelpFindsAndDoes"},
	{14, "The command list finds every action by name and synonym, with its key or why not now.", "TestEveryActionIsFoundByEverySynonym TestCommandsSayWhyNot TestEveryRowOfTheCommandListDoesSomething"},
	{15, "What is shown can be clicked, the wheel moves, and nothing needs a mouse.", "TestEveryRowIsClicked TestTheMouseClicksWhatIsShown TestClick"},
	{16, "The mouse is the terminal's until she asks for it.", "TestTheMouseIsOffUntilAskedFor TestTheMouseClicksWhatIsShown"},
	{17, "No key that some keyboard cannot type.", "TestNoKeyThatSomeKeyboardCannotType TestTwoWaysToTheFirstSeven TestNamesAreTheFrameworks"},
	{18, "Ctrl+S and F5 save and say what and when.", "TestSavingSaysWhatAndWhen TestSavingTakesWhatIsStillInTheField"},
	{19, "Letters never act while she types, whatever keys she has given; the focus is seen without colour.", "TestLettersNeverActWhileTyping TestChangedLettersNeverActWhileTyping TestQIsALetterWhileTyping TestTheFocusIsSeenWithoutColour TestFocusWithoutColour"},
	{20, "The first screen offers five ways to begin and says how to leave.", "TestStart TestSampleClient TestTheFirstScreenTakesTheUnitAndHasItsOwnHelp TestEveningOfABeginner"},

	// Size, fonts, colour.
	{21, "All of it works at 80x24, it is of use at 60x16, and below that it says so and saves.", "TestGallery TestGalleryIsWhole TestTooSmallSaysBothSizesAndStillSaves TestEveryFrameFitsItsScreen"},
	{22, "A screen is exactly as large as its window.", "TestEveryFrameFitsItsScreen TestRandomKeys TestViewsFitAnySize TestStagesFillTheirRectangle"},
	{23, "Another size keeps zoom, place and row in hand.", "TestEveryScreenInEveryWay TestResizeKeepsMemoryAndEmpties"},
	{24, "The standard input is the framework's, so that Windows resizes and clicks.", "TestTheStandardInputIsTheFrameworks"},
	{25, "Themes by name, by the terminal's word or plain, each with enough contrast.", "TestContrastOfThePaintedThemes TestContrastOfThePlainTheme TestAuto TestNames TestTheFormula"},
	{26, "Colour is never the only sign.", "TestEveryScreenInEveryWay TestWeightWithoutColour TestMonoHasNoColour TestColourFrom TestGallery"},
	{27, "Braille, half-blocks or ASCII, by what the terminal can be trusted with; F6 shows a sample.", "TestGlyphsByTheTerminal TestOtherGlyphsShowASample TestEveryScreenInEveryWay TestAsciiOnly TestASCIIDirections TestPlainFollowsTheGlyphs"},
	{28, "Every glyph takes one cell, also by the habits of East Asia.", "TestEveryScreenInEveryWay TestStrictTerminalsGetNoHalfBlocks TestGlyphsByTheTerminal TestWidthAgrees"},
	{29, "A square is square: by the driver's word, else by the setting, with a card to judge it.", "TestProportionsAreTrue TestTheCellIsMeasuredByTheDriver TestSettings TestChangedLooksAreKept"},
	{30, "Frames come whole; nothing moves by itself but a new line, and that can be switched off.", "TestOnlyANewLineMoves TestNothingIsSentWhileIdleAndNothingIsAsked TestOldConsolesGetNoSequencesTheyPrint TestTheFirstPictureWaitsForNoAnswer"},
	{31, "Drawing is quick, and measured.", "BenchmarkKeyToFrame BenchmarkEditToFrame BenchmarkRasterBraille BenchmarkStringBraille BenchmarkTable"},

	// Learning and showing.
	{32, "A step is one action with its reason, its sum and one new thing on the drawing.", "TestAStepIsOneActionWithItsReasonAndSum TestDraftGoesStepByStep TestStepsReadPlainly"},
	{33, "The newest is strong and named at its line, the rest stays, nothing to come is shown.", "TestTheNewestIsStrongTheRestIsThere TestAStepNeverErasesWhatWasDrawn TestTheNewestMarkCarriesItsLabel TestNothingIsToldBeforeItIsAsked"},
	{34, "A question before the reveal knows the usual slips, hints in three levels, and says why it was right.", "TestAQuestionWaitsForHer TestAnswersAreToldForWhatTheyAre TestHints TestSlipsAreHeldApart TestAPlaceIsPointedAt"},
	{35, "Nothing is red before anything was done.", "TestNothingIsRedAtTheStart"},
	{36, "The order of steps and lessons is seen, can be entered anywhere, and goes on where it was left.", "TestAStepIsChosenFromTheList TestALessonKeepsItsPlace TestSteps TestLessonsList TestThePlaceInALessonIsKept"},
	{37, "A lesson is short, fits the usual screen and ends in something to use.", "TestEveryLessonEnds TestALessonTicksWhatItEndsWith TestTheCourse TestEveryLessonPageIsCompleteOnTheProjector"},
	{38, "Trade words are explained where they stand, in plain words.", "TestTheWordNearest TestTheWordOfAStep TestWordsAreUnderlinedOnce TestLessonsReadPlainly TestStepsReadPlainly TestHelpReadsPlainly TestGlossaryReadsEasily"},
	{39, "The projector is large, private, calm, and gives the bench back as it was.", "TestProjectorIsCompleteAtItsSizes TestTheProjectorAtItsLeastSize TestTheProjectorComesBackToTheExactState TestAPressedKeyIsShownForTwoSeconds TestHerNumbersAreHiddenUntilAsked TestProjectorLinesAreThick"},
	{40, "A remote leads through the steps; a number goes to one.", "TestKeysOnTheProjector TestProjectorGoesByKeyAndNumber TestTheProjectorHoldsWhateverIsPressed"},
	{41, "She goes near and back, the point under the cross-hair stays, lines stay thin.", "TestZoomKeepsThePointUnderTheCrossHair TestLinesAreOneDotThickAtEveryZoom TestTheCrossHairReadsTheTape TestEveryEyeSeesWithinTheCanvas"},
	{42, "Old and new lie over each other, and the difference is said.", "TestDifferencesInWords TestLevelsThatMoved TestCompareBlock TestWhatIfIsOneChangeOrNone"},

	// What is typed, and what is found.
	{43, "Lengths are read as people write them and echoed at once.", "TestReadInches TestReadOther TestReadRefuses TestTheEchoIsNeverCut TestTypedIsStored FuzzRead"},
	{44, "What cannot be read stays in its field with a sentence, once she has left it.", "TestAnUnreadableEntryStaysWithItsSentence TestStyleRefusesInItsField TestReadRefuses"},
	{45, "A doubt is advice; one key takes the other unit, another says it was measured again.", "TestTheOtherUnitIsTakenOfWhatIsTypedAndOfADoubt TestADoubtIsSettledByMeasuringAgain TestSlips TestDoubtsOfRealWomen"},
	{46, "An early change keeps later work, marks what follows and is one step back.", "TestLaterStepsAreMarkedChanged TestDifferencesInWords TestTypingAndEnterIsOneNamedChange"},
	{47, "A finding says what, leads to its place, and names a cure.", "TestEveryFindingSaysWhatAndHowToCure TestTrueTriesACureAsOneChange TestEveryRowIsClicked"},

	// Files, shell, reach.
	{48, "Opening and saving: recent clients, folders, typed paths, and a sentence for every wrong file.", "TestOpenShowsOnlySessions TestOpenAWrongFileStays TestOpenByTypedPath TestOpenGoesIntoFolders TestHomeInPaths TestSaveAs TestSaveAsSuggestsTheClient"},
	{49, "A session is plain text, keeps what it does not know, and line 1 says whose it is and whether it is saved.", "TestEditsInPlace TestNoEditsSameBytes TestAnyChangeComesBack TestLineOneSaysWhereSheIs TestAnEditIsStarredUndoneAndDoneAgain"},
	{50, "Without a terminal the commands work, results and words apart, no codes.", "TestScripts TestDocuments TestDemoIsClean"},
	{51, "Words only, line by line, says all the screen says.", "TestTheModeIsSaidFirst TestABeginnersEvening TestATutorsEvening TestADressmakersEvening TestWordsAreShortened TestEndOfInput TestAnythingTyped FuzzHear TestScripts"},
	{52, "What is shown can be copied, and a table can be pasted.", "TestWordsAreCopied TestATableCanBePasted TestAListCanBePasted"},
	{53, "Settings, rescue copies and caches lie where they belong; a broken file of settings is told and passed over.", "TestPaths TestWhatIsWrongIsTold TestEverySettingIsRead TestSettingsAreWrittenInPlace TestWrongSettingsAreSaidOnTheScreen TestScripts"},
	{54, "Shells complete every word; the manual is whole.", "TestTheShellIsOfferedEveryWord TestTheManualIsWhole"},
	{55, "All sentences come from one catalogue and may be longer; comma and unit are settings.", "TestEverySentenceIsInTheCatalogue TestEveryScreenInEveryWay TestPseudo TestLeaks TestDecimalsWithAComma"},
	{56, "Every screen is small to send, and nothing is asked of the terminal.", "TestEveryScreenIsSmall TestFramesAreSmall TestNothingIsSentWhileIdleAndNothingIsAsked TestColourFrom"},
	{57, "No pictures are sent to the terminal; SVG and PDF are.", "TestEveryScreenInEveryWay TestNothingIsSentWhileIdleAndNothingIsAsked TestFormatsAreDifferent"},
	{58, "README's pictures are made from real screens by a program.", "TestReadmePictures TestPicturesAreMadeByTheProgram"},

	// Keys of her own.
	{59, "Keys can be changed in one file; what clashes is refused with a sentence.", "TestChanged TestKeysOfHerOwn TestKeysOfHerOwnAreShownAndWork TestTheTemplateIsTheUsual"},
}

// Every promise has its tests, and every test that is named is there.
func TestEveryPromiseIsHeld(t *testing.T) {
	there := testsOfTheTree(t)
	require.Greater(t, len(there), 500)
	for i, p := range promises {
		require.Equal(t, i+1, p.number)
		require.Regexp(t, `^[A-Z].*\.$`, p.says, p.number)
		names := strings.Fields(p.tests)
		require.NotEmpty(t, names, p.says)
		for _, name := range names {
			if !there[name] {
				t.Errorf("%d, %s: there is no %s", p.number, p.says, name)
			}
		}
	}
}

// testsOfTheTree are the names of all tests, benchmarks and fuzz targets.
func testsOfTheTree(t *testing.T) map[string]bool {
	t.Helper()
	there := map[string]bool{}
	set := token.NewFileSet()
	err := filepath.WalkDir("..", func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() && strings.HasPrefix(e.Name(), ".") && e.Name() != ".." {
			if err == nil {
				err = filepath.SkipDir
			}
			return err
		}
		if !strings.HasSuffix(path, "_test.go") {
			return nil
		}
		f, err := parser.ParseFile(set, path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Recv != nil {
				continue
			}
			for _, kind := range [...]string{"Test", "Benchmark", "Fuzz"} {
				if strings.HasPrefix(fn.Name.Name, kind) {
					there[fn.Name.Name] = true
				}
			}
		}
		return nil
	})
	require.NoError(t, err)
	return there
}
