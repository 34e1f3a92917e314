package linear

import (
	"strconv"
	"strings"

	"chalkfold/ui/desk"
	"chalkfold/ui/text"
)

// word is one word that can be typed, with what it does.
type word struct {
	name string
	says text.ID
	at   desk.StageID // where it is understood; NoStage: everywhere
	do   func(r *room, rest string)
}

// vocabulary is all words. It is a function since the deeds lead back to it.
func vocabulary() []word {
	return []word{
		{"next", text.WordNext, 0, func(r *room, _ string) { r.here().move(r, 1) }},
		{"back", text.WordBack, 0, func(r *room, _ string) { r.here().move(r, -1) }},
		{"why", text.WordWhy, 0, func(r *room, _ string) { r.here().why(r) }},
		{"hint", text.WordHint, 0, func(r *room, _ string) { r.here().hint(r) }},
		{"again", text.WordAgain, 0, (*room).again},
		{"step", text.WordStep, 0, (*room).goTo},
		{"say", text.WordSay, 0, func(r *room, rest string) { r.here().say(r, rest) }},
		{"where", text.WordWhere, 0, func(r *room, rest string) { r.here().where(r, rest) }},
		{"list", text.WordList, 0, func(r *room, _ string) { r.here().list(r) }},

		{"take", text.WordTake, desk.Measure, (*room).takeProposal},
		{"keep", text.WordKeep, desk.Measure, (*room).keepDoubted},
		{"other", text.WordOther, desk.Measure, (*room).takeOther},
		{"remove", text.WordRemove, desk.Measure, (*room).remove},
		{"client", text.WordClient, desk.Measure, (*room).nameClient},
		{"usual", text.WordUsual, desk.Style, (*room).usual},
		{"ask", text.WordAsk, desk.Draft, (*room).askFirst},
		{"cure", text.WordCure, desk.True, (*room).cure},
		{"width", text.WordWidth, desk.Lay, (*room).clothWidth},
		{"fold", text.WordFold, desk.Lay, (*room).clothFold},
		{"widths", text.WordWidths, desk.Lay, (*room).widthsLay},
		{"search", text.WordSearch, desk.Lay, (*room).searchLay},
		{"keep", text.WordKeepLay, desk.Lay, (*room).keepLay},
		{"remnant", text.WordRemnant, desk.Lay, (*room).remnantLay},
		{"read", text.WordRead, desk.Cut, (*room).readCard},
		{"write", text.WordWrite, desk.Cut, (*room).writeOut},

		{"measure", text.WordStage, 0, goer(desk.Measure)},
		{"style", text.WordStage, 0, goer(desk.Style)},
		{"draft", text.WordStage, 0, goer(desk.Draft)},
		{"true", text.WordStage, 0, goer(desk.True)},
		{"lay", text.WordStage, 0, goer(desk.Lay)},
		{"cut", text.WordStage, 0, goer(desk.Cut)},

		{"lesson", text.WordLesson, 0, (*room).lessons},
		{"leave", text.WordLeave, 0, (*room).leaveLesson},
		{"what", text.WordWhat, 0, (*room).whatIf},
		{"more", text.WordMore, 0, (*room).more},
		{"less", text.WordLess, 0, (*room).less},
		{"compare", text.WordCompare, 0, (*room).compare},
		{"fault", text.WordFault, desk.True, (*room).faults},
		{"clients", text.WordClients, 0, (*room).clients},
		{"class", text.WordClass, 0, (*room).class},
		{"fit", text.WordFit, 0, (*room).fit},

		{"undo", text.WordUndo, 0, (*room).undo},
		{"redo", text.WordRedo, 0, (*room).redo},
		{"save", text.WordSave, 0, (*room).save},
		{"open", text.WordOpen, 0, (*room).openFile},
		{"new", text.WordNew, 0, (*room).begin},
		{"unit", text.WordUnit, 0, (*room).changeUnit},
		{"word", text.WordWord, 0, (*room).explain},
		{"help", text.WordHelp, 0, (*room).help},
		{"quit", text.WordQuit, 0, (*room).quit},
	}
}

// stage is what the words do in one of the six stages.
type stage struct {
	name   string
	enter  func(r *room)
	answer func(r *room, line string)
	move   func(r *room, by int)
	jump   func(r *room, n int) bool
	count  func(r *room) int
	why    func(r *room)
	hint   func(r *room)
	say    func(r *room, rest string)
	where  func(r *room, name string)
	list   func(r *room)
	named  func(r *room, line string) bool // a name with an answer, like waist 28
}

// here is the stage she is at.
func (r *room) here() stage {
	if r.d.Running().On() {
		return stage{
			"Lesson", func(r *room) { r.toPage() }, (*room).answerPage, (*room).movePage, (*room).jumpPage, (*room).countPages,
			(*room).whyPage, (*room).hintPage, func(r *room, rest string) { r.tellPage(rest, true) }, (*room).wherePage, (*room).listPage, (*room).namedPage,
		}
	}
	switch r.stage {
	case desk.Measure:
		return stage{
			"Measure", (*room).enterMeasure, (*room).answerMeasure, (*room).moveMeasure, (*room).jumpMeasure, (*room).countMeasure,
			(*room).whyMeasure, (*room).hintMeasure, alone((*room).listMeasure), (*room).whereMeasure, (*room).listMeasure, (*room).namedMeasure,
		}
	case desk.Style:
		return stage{
			"Style", (*room).enterStyle, (*room).answerStyle, (*room).moveStyle, (*room).jumpStyle, (*room).countStyle,
			(*room).whyStyle, (*room).tellChoice, alone((*room).sayStyle), (*room).noWhere, (*room).listStyle, (*room).namedStyle,
		}
	case desk.Draft:
		return stage{
			"Draft", (*room).enterDraft, (*room).answerDraft, (*room).moveDraft, (*room).jumpDraft, (*room).countDraft,
			(*room).whyDraft, (*room).hintDraft, (*room).sayDraft, (*room).whereDraft, (*room).listDraft, never,
		}
	case desk.True:
		return stage{
			"True", (*room).enterTrue, (*room).noAnswer, (*room).moveTrue, (*room).jumpTrue, (*room).countTrue,
			(*room).tellFinding, (*room).hintTrue, alone((*room).sayTrue), (*room).whereTrue, (*room).listTrue, never,
		}
	case desk.Lay:
		return stage{
			"Lay", (*room).enterLay, (*room).clothWidth, (*room).onward, noJump, noCount,
			(*room).whyLay, (*room).whyLay, (*room).sayLay, (*room).noWhere, (*room).listLay, never,
		}
	}
	return stage{
		"Cut", (*room).enterCut, (*room).noAnswer, (*room).lastStage, noJump, noCount,
		(*room).enterCut, (*room).hintCut, alone((*room).enterCut), (*room).noWhere, (*room).enterCut, never,
	}
}

// alone is a word that nothing is said behind.
func alone(do func(*room)) func(*room, string) { return func(r *room, _ string) { do(r) } }

func never(*room, string) bool { return false }
func noJump(*room, int) bool   { return false }
func noCount(*room) int        { return 0 }

func goer(to desk.StageID) func(*room, string) {
	return func(r *room, _ string) {
		if r.d.Running().On() {
			r.leaveLesson("")
		}
		r.stage, r.asked = to, 0
		r.enter()
	}
}

func (r *room) enter() {
	if r.d.Running().On() {
		r.toPage()
		return
	}
	r.tell(sentence(r.d.Words.Pass(r.here().name)))
	r.here().enter(r)
}

// hear does what a line asks for: first an open question, then a number, a
// name of this stage in two words or more, a word of the vocabulary, any name.
func (r *room) hear(line string) {
	if q := r.open; q != nil {
		r.open = nil
		if line == "" && !q.empty {
			r.open = q
			return
		}
		if q.hear(line) {
			return
		}
		if r.over {
			return
		}
	}
	switch {
	case line == "":
		return
	case isNumber(line):
		r.here().answer(r, line)
		return
	}
	first, rest, _ := strings.Cut(line, " ")
	fits := r.fitting(strings.ToLower(first))
	if nameWords(line) > 1 && r.here().named(r, line) {
		return
	}
	switch {
	case len(fits) == 1:
		fits[0].do(r, strings.TrimSpace(rest))
	case len(fits) > 1:
		names := make([]string, len(fits))
		for i, w := range fits {
			names[i] = w.name
		}
		r.say(text.LinearUnclear, short(first), either(names))
	case !r.here().named(r, line):
		r.say(text.LinearUnknown, short(line))
	}
}

// fitting are the words that begin so, the whole word alone if there is one.
func (r *room) fitting(start string) []word {
	var out []word
	for _, w := range vocabulary() {
		switch {
		case w.at != desk.NoStage && w.at != r.stage:
		case w.name == start:
			return []word{w}
		case strings.HasPrefix(w.name, start):
			out = append(out, w)
		}
	}
	return out
}

// isNumber tells an answer: it begins as a number does.
func isNumber(line string) bool {
	for i, c := range line {
		switch {
		case c >= '0' && c <= '9', strings.ContainsRune("½¼¾⅓⅔⅛⅜⅝⅞", c):
			return true
		case i == 0 && strings.ContainsRune("-+.,", c):
			continue
		}
		return false
	}
	return false
}

// nameWords counts the words before the first number.
func nameWords(line string) int {
	n := 0
	for _, w := range strings.Fields(line) {
		if isNumber(w) {
			break
		}
		n++
	}
	return n
}

// short is what was typed, as much as fits into a sentence.
func short(line string) string {
	if r := []rune(line); len(r) > 40 {
		return string(r[:40]) + "..."
	}
	return line
}

// either joins names: "step, say or save".
func either(names []string) string {
	if len(names) > 6 {
		names = append(names[:5:5], "...")
	}
	return anyOf(names)
}

// anyOf joins names, all of them.
func anyOf(names []string) string {
	if n := len(names); n > 1 {
		return strings.Join(names[:n-1], ", ") + " or " + names[n-1]
	}
	return strings.Join(names, "")
}

func (r *room) again(string) {
	if len(r.kept) == 0 {
		r.say(text.LinearNoAgain)
		return
	}
	r.said = append(r.said, r.kept...)
}

func (r *room) help(string) {
	r.say(text.LinearHelpHead)
	for _, w := range vocabulary() {
		if w.at == desk.NoStage || w.at == r.stage {
			r.say(text.LinearHelpRow, w.name, r.d.Words.Say(w.says, capital(w.name)))
		}
	}
}

func (r *room) goTo(rest string) {
	count := r.here().count(r)
	if count == 0 {
		r.say(text.LinearNothing, "step")
		return
	}
	n, err := strconv.Atoi(rest)
	if err != nil || n < 1 || n > count || !r.here().jump(r, n) {
		r.say(text.LinearStep, count)
	}
}

func (r *room) noWhere(string) { r.say(text.LinearNothing, "where") }

func (r *room) noAnswer(string) { r.say(text.LinearNumberOnly) }

// onward is next and back where there is one thing only.
func (r *room) onward(by int) { r.end(map[bool]int{true: 1, false: -1}[by > 0], 1, "cut", nil) }

func (r *room) lastStage(by int) {
	if by > 0 {
		r.say(text.HearLast)
		return
	}
	r.say(text.LinearNone)
}
