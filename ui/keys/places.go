package keys

var table = []Action{
	{ID: "zoom-in", Keys: []string{"+", "="}, Shown: "+ or =", Title: "Closer", Foot: "Closer", Where: OnTable, Says: "Show it larger.", Synonyms: []string{"zoom in", "larger"}},
	{ID: "zoom-out", Keys: []string{"-"}, Shown: "-", Title: "Farther", Foot: "Farther", Where: OnTable, Says: "Show it smaller.", Synonyms: []string{"zoom out", "smaller"}},
	{ID: "fit", Keys: []string{"0"}, Shown: "0", Title: "Fit all", Foot: "Fit", Where: OnTable, Says: "Show all of it.", Synonyms: []string{"zoom all", "whole", "reset zoom"}},
	{ID: "zoom-newest", Keys: []string{"z"}, Shown: "z", Title: "Zoom to the newest mark", Foot: "Zoom to it", Where: OnTable, Says: "Go close to what was drawn last, with its neighbours.", Synonyms: []string{"newest", "focus"}},
	{ID: "pan-left", Keys: []string{"shift+left", "h"}, Shown: "Shift+Left or h", Title: "Move left", Foot: "Move", Where: OnTable, Says: "Look farther left.", Synonyms: []string{"pan", "scroll"}},
	{ID: "pan-down", Keys: []string{"shift+down", "j"}, Shown: "Shift+Down or j", Title: "Move down", Foot: "Move", Where: OnTable, Says: "Look farther down.", Synonyms: []string{"pan", "scroll"}},
	{ID: "pan-up", Keys: []string{"shift+up", "k"}, Shown: "Shift+Up or k", Title: "Move up", Foot: "Move", Where: OnTable, Says: "Look farther up.", Synonyms: []string{"pan", "scroll"}},
	{ID: "pan-right", Keys: []string{"shift+right", "l"}, Shown: "Shift+Right or l", Title: "Move right", Foot: "Move", Where: OnTable, Says: "Look farther right.", Synonyms: []string{"pan", "scroll"}},
	{ID: "stand", Keys: []string{"x"}, Shown: "x", Title: "Lie or stand", Foot: "Stand", Where: OnTable, Says: "Turn the cloth: lying across the screen, or standing beside the words.", Synonyms: []string{"turn", "rotate"}},
	{ID: "dimensions", Keys: []string{"d"}, Shown: "d", Title: "Dimensions", Foot: "Dimensions", Where: OnTable, Says: "Show or hide the lengths beside the marks.", Synonyms: []string{"lengths", "numbers"}},
	{ID: "marks", Keys: []string{"m"}, Shown: "m", Title: "Names of marks", Foot: "Marks", Where: OnTable, Says: "Show or hide the names of the marks.", Synonyms: []string{"labels", "points"}},
	{ID: "grid", Keys: []string{"r"}, Shown: "r", Title: "Ruler and grid", Foot: "Ruler", Where: OnTable, Says: "Show or hide the ruler and the grid.", Synonyms: []string{"ruler", "scale"}},
	{ID: "cross", Keys: []string{"c"}, Shown: "c", Title: "Cross-hair", Foot: "Cross-hair", Where: OnTable, Says: "Read lengths off the cloth: arrows move it, Enter answers, Esc ends.", Synonyms: []string{"coordinates", "cursor", "point"}},
	{ID: "old-new", Keys: []string{"o"}, Shown: "o", Title: "Old and new", Foot: "Old", Where: OnTable, Says: "Show the outline from before the last change, dotted.", Synonyms: []string{"before", "overlay", "ghost"}},
	{ID: "word", Keys: []string{"g"}, Shown: "g", Title: "Explain the word", Foot: "Word", Where: OnTable, Says: "Say what the trade word nearest the cursor means.", Synonyms: []string{"glossary", "meaning"}},
}

var draft = []Action{
	{ID: "step-next", Keys: []string{" ", "right", "pgdown"}, Shown: "Space, Right or PgDn", Title: "Next step", Foot: "Next", Where: Draft, Says: "Draw the next step.", Synonyms: []string{"forward", "go on"}},
	{ID: "step-back", Keys: []string{"left", "pgup"}, Shown: "Left or PgUp", Title: "Step before", Foot: "Back", Where: Draft, Says: "Go back one step; nothing is lost.", Synonyms: []string{"previous"}},
	{ID: "step-first", Keys: []string{"home"}, Shown: "Home", Title: "First step", Foot: "First", Where: Draft, Says: "Go to the first step."},
	{ID: "step-last", Keys: []string{"end"}, Shown: "End", Title: "Last step", Foot: "Last", Where: Draft, Says: "Go to the last step: all pieces."},
	{ID: "steps", Keys: []string{"s"}, Shown: "s", Title: "Go to a step", Foot: "Steps", Where: Draft, Says: "Choose from the list of steps.", Synonyms: []string{"jump", "list"}},
	{ID: "words-up", Keys: []string{"up"}, Shown: "Up", Title: "Words up", Foot: "Words", Where: Draft, Says: "Scroll the words up."},
	{ID: "words-down", Keys: []string{"down"}, Shown: "Down", Title: "Words down", Foot: "Words", Where: Draft, Says: "Scroll the words down."},
	{ID: "ask-first", Keys: []string{"a"}, Shown: "a", Title: "Ask me first", Foot: "Ask me first", Where: Draft, Says: "Put a question before each step is shown.", Synonyms: []string{"quiz", "predict", "learn"}},
	{ID: "why", Keys: []string{"y"}, Shown: "y", Title: "Why", Foot: "Why", Where: Draft, Says: "Say where the rule comes from and what the other ways would give.", Synonyms: []string{"reason", "source"}},
	{ID: "draft-fitting", Keys: []string{"f"}, Shown: "f", Title: "After the fitting", Foot: "Fitting", Where: Draft, Says: "Say what was seen on the body; it leads to the input to change.", Synonyms: []string{"fit", "alter", "pinned"}},
	{ID: "what-if", Keys: []string{"w"}, Shown: "w", Title: "What if", Foot: "What if", Where: Draft, Says: "Change one measure and watch what moves; Enter keeps it, Esc puts it back.", Synonyms: []string{"try", "change"}},
}

var question = []Action{
	{ID: "answer", Keys: []string{"enter"}, Shown: "Enter", Title: "Answer", Foot: "Answer", Where: Question, Special: Accept, Says: "Give the answer; with nothing typed, the next hint.", Synonyms: []string{"hint"}},
	{ID: "skip", Keys: []string{"esc"}, Shown: "Esc", Title: "Skip the question", Foot: "Skip", Where: Question, Special: Back, Says: "Leave the question and show the step."},
	{ID: "question-back", Keys: []string{"pgup"}, Shown: "PgUp", Title: "Back without an answer", Foot: "Back", Where: Question, Says: "Go back a step or a page; the question stays as it was."},
}

// lesson are the keys of a running lesson. They come before those of the stage
// that shows its page.
var lesson = []Action{
	{ID: "page-next", Keys: []string{" ", "right", "pgdown"}, Shown: "Space, Right or PgDn", Title: "Next page", Foot: "Next page", Where: Lesson, Says: "Go on to the next page of the lesson.", Synonyms: []string{"forward", "go on"}},
	{ID: "page-back", Keys: []string{"left", "pgup"}, Shown: "Left or PgUp", Title: "Page before", Foot: "Back", Where: Lesson, Says: "Go back a page; nothing is lost.", Synonyms: []string{"previous"}},
	{ID: "lesson-end", Keys: []string{"esc"}, Shown: "Esc", Title: "Leave the lesson", Foot: "Leave it", Where: Lesson, Special: Back, Says: "Leave the lesson; it goes on at this page another time.", Synonyms: []string{"stop", "pause"}},
}

var truing = []Action{
	{ID: "finding-up", Keys: []string{"up"}, Shown: "Up", Title: "Finding above", Foot: "Finding", Where: True, Says: "Go to the finding above."},
	{ID: "finding-down", Keys: []string{"down"}, Shown: "Down", Title: "Finding below", Foot: "Finding", Where: True, Says: "Go to the finding below."},
	{ID: "go-there", Keys: []string{"enter"}, Shown: "Enter", Title: "Go there", Foot: "Go there", Where: True, Special: Accept, Says: "Show the place on the cloth.", Synonyms: []string{"jump", "place"}},
	{ID: "try-cure", Keys: []string{"t"}, Shown: "t", Title: "Try the cure", Foot: "Try the cure", Where: True, Says: "Make the change that the finding proposes; undo takes it back.", Synonyms: []string{"fix", "cure", "repair"}},
	{ID: "true-fitting", Keys: []string{"f"}, Shown: "f", Title: "After the fitting", Foot: "Fitting", Where: True, Says: "Say what was seen on the body; it leads to the input to change.", Synonyms: []string{"fit", "alter", "pinned"}},
	{ID: "ease", Keys: []string{"e"}, Shown: "e", Title: "Ease", Foot: "Ease", Where: True, Says: "See body, garment and ease level by level, against what is good.", Synonyms: []string{"tight", "loose", "room", "wearing ease"}},
	{ID: "true-what-if", Keys: []string{"w"}, Shown: "w", Title: "What if", Foot: "What if", Where: True, Says: "Change one measure and watch the findings."},
}

var lay = []Action{
	{ID: "piece-next", Keys: []string{"tab"}, Shown: "Tab", Title: "Next piece", Foot: "Piece", Where: Lay, Special: FieldNext, Says: "Take the next piece in hand."},
	{ID: "piece-left", Keys: []string{"left"}, Shown: "Left", Title: "Piece left", Foot: "Move", Where: Lay, Says: "Move the piece left."},
	{ID: "piece-right", Keys: []string{"right"}, Shown: "Right", Title: "Piece right", Foot: "Move", Where: Lay, Says: "Move the piece right."},
	{ID: "piece-up", Keys: []string{"up"}, Shown: "Up", Title: "Piece up", Foot: "Move", Where: Lay, Says: "Move the piece up."},
	{ID: "piece-down", Keys: []string{"down"}, Shown: "Down", Title: "Piece down", Foot: "Move", Where: Lay, Says: "Move the piece down."},
	{ID: "pin", Keys: []string{"p"}, Shown: "p", Title: "Pin the piece", Foot: "Pin", Where: Lay, Says: "Keep the piece where it is, or let it go.", Synonyms: []string{"fix", "hold"}},
	{ID: "turn-piece", Keys: []string{"u"}, Shown: "u", Title: "End for end", Foot: "End for end", Where: Lay, Says: "Turn the piece end for end on the grain.", Synonyms: []string{"turn", "flip", "nap"}},
	{ID: "flaw", Keys: []string{"f"}, Shown: "f", Title: "Flaw in the cloth", Foot: "Flaw", Where: Lay, Says: "Mark a place that must not be cut from.", Synonyms: []string{"hole", "stain", "fault"}},
	{ID: "cloth", Keys: []string{"t"}, Shown: "t", Title: "The cloth", Foot: "Cloth", Where: Lay, Says: "Say how wide the cloth is, how it lies, what it loses in the wash, and more.", Synonyms: []string{"width", "fold", "nap", "shrinkage", "repeat", "selvage", "price", "fabric"}},
	{ID: "other-cloth", Keys: []string{"a"}, Shown: "a", Title: "Another cloth", Foot: "Other cloth", Where: Lay, Says: "Lay the next cloth: main, lining, interfacing.", Synonyms: []string{"lining", "interfacing", "next cloth"}},
	{ID: "search-on", Keys: []string{"n"}, Shown: "n", Title: "Search on", Foot: "Search on", Where: Lay, Says: "Look for a shorter lay.", Synonyms: []string{"better", "improve"}},
	{ID: "widths", Keys: []string{"v"}, Shown: "v", Title: "Other widths", Foot: "Widths", Where: Lay, Says: "Say what cloth of other widths would take.", Synonyms: []string{"compare widths", "buy"}},
	{ID: "remnant", Keys: []string{"e"}, Shown: "e", Title: "Remnant", Foot: "Remnant", Where: Lay, Says: "Ask whether a piece of cloth at hand is enough.", Synonyms: []string{"scrap", "left over"}},
	{ID: "keep-lay", Keys: []string{"enter"}, Shown: "Enter", Title: "Keep this lay", Foot: "Keep it", Where: Lay, Special: Accept, Says: "Put the lay into the session; undo takes it back.", Synonyms: []string{"save the lay", "store"}},
	{ID: "stop-lay", Keys: []string{"esc"}, Shown: "Esc", Title: "Stop the search", Foot: "Stop", Where: Lay, Special: Back, Says: "Stop searching and keep the best lay so far."},
}

var cut = []Action{
	{ID: "format-up", Keys: []string{"up"}, Shown: "Up", Title: "Line above", Foot: "Format", Where: Cut, Says: "Go to the line above."},
	{ID: "format-down", Keys: []string{"down"}, Shown: "Down", Title: "Line below", Foot: "Format", Where: Cut, Says: "Go to the line below."},
	{ID: "tick", Keys: []string{" "}, Shown: "Space", Title: "Tick", Foot: "Tick", Where: Cut, Says: "Write this one, or leave it out.", Synonyms: []string{"choose", "select"}},
	{ID: "variant-back", Keys: []string{"left"}, Shown: "Left", Title: "Paper or kind before", Foot: "Paper", Where: Cut, Says: "Take the paper or kind before."},
	{ID: "variant-next", Keys: []string{"right"}, Shown: "Right", Title: "Next paper or kind", Foot: "Paper", Where: Cut, Says: "Take the next paper or kind."},
	{ID: "readout", Keys: []string{"e"}, Shown: "e", Title: "Read it to me", Foot: "Read it", Where: Cut, Says: "One mark of the chalk card at a time, in large figures; Enter ticks it off.", Synonyms: []string{"chalk", "card", "marks", "tape"}},
	{ID: "write", Keys: []string{"enter"}, Shown: "Enter", Title: "Write", Foot: "Write", Where: Cut, Special: Accept, Says: "Write what is ticked into the folder.", Synonyms: []string{"export", "print", "files"}},
}

var projector = []Action{
	{ID: "show-next", Keys: []string{" ", "right", "pgdown"}, Shown: "Space, Right or PgDn", Title: "Reveal, then next", Foot: "Next", Where: Projector, Says: "Show the answer; then the next step."},
	{ID: "show-back", Keys: []string{"left", "pgup"}, Shown: "Left or PgUp", Title: "Step before", Foot: "Back", Where: Projector, Says: "Go back one step."},
	{ID: "show-first", Keys: []string{"home"}, Shown: "Home", Title: "First step", Where: Projector, Says: "Go to the first step."},
	{ID: "show-last", Keys: []string{"end"}, Shown: "End", Title: "Last step", Where: Projector, Says: "Go to the last step."},
	{ID: "show-number", Keys: []string{"1", "2", "3", "4", "5", "6", "7", "8", "9"}, Shown: "a number, Enter", Title: "Step by number", Foot: "Step", Where: Projector, Says: "Type a number and Enter to go to that step; 0 alone fits all."},
	{ID: "show-step", Keys: []string{"enter"}, Shown: "Enter", Title: "Go to the number", Where: Projector, Special: Accept, Says: "Go to the step whose number was typed."},
	{ID: "show-steps", Keys: []string{"s"}, Shown: "s", Title: "Go to a step", Where: Projector, Says: "Choose from the list of steps."},
	{ID: "blank", Keys: []string{"b", "."}, Shown: "b or .", Title: "Blank the screen", Foot: "Blank", Where: Projector, Says: "Empty the screen; any key brings it back.", Synonyms: []string{"black", "hide"}},
	{ID: HideNumbers, Keys: []string{"p"}, Shown: "p", Title: "Her numbers", Foot: "Numbers", Where: Projector, Says: "Show or hide the client's own measures.", Synonyms: []string{"private", "hide"}},
	{ID: "show-what-if", Keys: []string{"w"}, Shown: "w", Title: "What if", Foot: "What if", Where: Projector, Says: "Change one measure before the class and watch what moves."},
	{ID: "show-ask", Keys: []string{"a"}, Shown: "a", Title: "Ask first", Where: Projector, Says: "Put the question before each step."},
	{ID: "show-why", Keys: []string{"y"}, Shown: "y", Title: "Why", Where: Projector, Says: "Say where the rule comes from."},
	{ID: "show-end", Keys: []string{"f9"}, Shown: "F9", Title: "Back to the bench", Foot: "Back to work", Where: Projector, Special: Project, Says: "End the projector; all is as it was."},
	{ID: "show-esc", Keys: []string{"esc"}, Shown: "Esc", Title: "Back to the bench", Where: Projector, Special: Back, Says: "End the projector; all is as it was."},
}

var overlay = []Action{
	{ID: "row-up", Keys: []string{"up"}, Shown: "Up", Title: "Line above", Foot: "Choose", Where: Overlay, Says: "Go to the line above. Typing finds a line."},
	{ID: "row-down", Keys: []string{"down"}, Shown: "Down", Title: "Line below", Foot: "Choose", Where: Overlay, Says: "Go to the line below."},
	{ID: "page-up", Keys: []string{"pgup"}, Shown: "PgUp", Title: "Page up", Foot: "Page", Where: Overlay, Says: "Go up one page."},
	{ID: "page-down", Keys: []string{"pgdown"}, Shown: "PgDn", Title: "Page down", Foot: "Page", Where: Overlay, Says: "Go down one page."},
	{ID: "close-seat", Keys: []string{"delete"}, Shown: "Del", Title: "Close the client of the line", Foot: "Close it", Where: Overlay, Says: "In the list of clients: put that client away; what is not saved is asked about.", Synonyms: []string{"put away", "shut"}},
	{ID: "choose", Keys: []string{"enter"}, Shown: "Enter", Title: "Choose", Foot: "Choose", Where: Overlay, Special: Accept, Says: "Take the line in hand."},
	{ID: "close", Keys: []string{"esc"}, Shown: "Esc", Title: "Close", Foot: "Back", Where: Overlay, Special: Back, Says: "Go back to where you were; nothing changes."},
}
