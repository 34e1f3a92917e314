package keys

// The actions that every screen knows.
const (
	Help      ID = "help"
	Commands  ID = "commands"
	Open      ID = "open"
	Save      ID = "save"
	Undo      ID = "undo"
	Redo      ID = "redo"
	StageNext ID = "stage-next"
	StageBack ID = "stage-back"
	FieldNext ID = "field-next"
	FieldBack ID = "field-back"
	Accept    ID = "accept"
	Back      ID = "back"
	Leave     ID = "leave"
	OtherUnit ID = "other-unit"
	Glyphs    ID = "glyphs"
	Room      ID = "room"
	Mouse     ID = "mouse"
	Project   ID = "projector"
	NextTheme ID = "theme"
)

// The actions that stand in the command list only.
const (
	First       ID = "first-screen"
	NewClient   ID = "new-client"
	SaveAs      ID = "save-as"
	Clients     ID = "clients"
	CloseClient ID = "close-client"
	Class       ID = "class"
	Lessons     ID = "lessons"
	Faults      ID = "faults"
	Compare     ID = "compare"
	Fitting     ID = "fitting"
	Alterations ID = "alterations"
	Months      ID = "months"
	Words       ID = "words"
	Settings    ID = "settings"
	ChangeUnit  ID = "unit"
	PutToSleep  ID = "suspend"
	CopyOut     ID = "copy"
	HideNumbers ID = "private"
)

var everywhere = []Action{
	{
		ID: Help, Keys: []string{"f1"}, Untyped: []string{"?"}, Shown: "F1 or ?", Title: "Help", Foot: "Help", Where: Everywhere,
		Says: "Show what can be done here; type to find one.", Synonyms: []string{"keys", "what now", "manual"}, Instead: []string{"?", "f2"},
	},
	{
		ID: Commands, Keys: []string{"f2", "ctrl+p"}, Shown: "F2 or Ctrl+P", Title: "Commands", Foot: "Commands", Where: Everywhere,
		Says: "List everything by name; type to find one, Enter does it.", Synonyms: []string{"actions", "menu", "search"},
	},
	{
		ID: Open, Keys: []string{"f3", "ctrl+o"}, Shown: "F3 or Ctrl+O", Title: "Open", Foot: "Open", Where: Everywhere,
		Says: "Open a client: the last ones first, then folders. Enter alone goes back to the last client.", Synonyms: []string{"load", "file", "client", "recent"},
	},
	{
		ID: Save, Keys: []string{"f5", "ctrl+s"}, Shown: "F5 or Ctrl+S", Title: "Save", Foot: "Save", Where: Everywhere,
		Says: "Write the session to its file. On the projector F5 does nothing.", Synonyms: []string{"write", "keep", "store"},
	},
	{
		ID: Undo, Keys: []string{"ctrl+z"}, Shown: "Ctrl+Z", Title: "Undo", Foot: "Undo", Where: Everywhere,
		Says: "Take back the last change and say which it was.", Synonyms: []string{"take back", "revert"}, Instead: []string{"f2", "ctrl+p"},
	},
	{
		ID: Redo, Keys: []string{"ctrl+y"}, Shown: "Ctrl+Y", Title: "Redo", Foot: "Redo", Where: Everywhere,
		Says: "Make the change again that was taken back.", Synonyms: []string{"again", "repeat"}, Instead: []string{"f2", "ctrl+p"},
	},
	{
		ID: StageNext, Keys: []string{"ctrl+pgdown"}, Shown: "Ctrl+PgDn", Title: "Next stage", Foot: "Next stage", Where: Everywhere,
		Says: "Go on to the next of the six stages.", Synonyms: []string{"tab right", "forward"}, Instead: []string{"esc", "1"},
	},
	{
		ID: StageBack, Keys: []string{"ctrl+pgup"}, Shown: "Ctrl+PgUp", Title: "Stage before", Foot: "Stage before", Where: Everywhere,
		Says: "Go back to the stage before.", Synonyms: []string{"tab left", "previous stage"}, Instead: []string{"esc", "1"},
	},
	{
		ID: FieldNext, Keys: []string{"tab"}, Shown: "Tab", Title: "Next field, or words and table", Foot: "Next field", Where: Everywhere,
		Says: "Go to the next field; where there is none, between words and table.", Synonyms: []string{"focus", "switch"}, Instead: []string{"f2", "f7", "ctrl+p"},
	},
	{
		ID: FieldBack, Keys: []string{"shift+tab"}, Shown: "Shift+Tab", Title: "Field before", Foot: "Field before", Where: Everywhere,
		Says: "Go to the field before; where there is none, between words and table.", Synonyms: []string{"focus back"}, Instead: []string{"f2", "f7", "ctrl+p"},
	},
	{
		ID: Accept, Keys: []string{"enter"}, Shown: "Enter", Title: "Accept", Foot: "Accept", Where: Everywhere,
		Says: "Take what is typed or chosen and go on.", Synonyms: []string{"ok", "yes", "confirm"},
	},
	{
		ID: Back, Keys: []string{"esc"}, Shown: "Esc", Title: "Back", Foot: "Back", Where: Everywhere,
		Says: "Go back one level. Esc never leaves Chalkfold.", Synonyms: []string{"cancel", "close"},
	},
	{
		ID: Leave, Keys: []string{"ctrl+c"}, Untyped: []string{"q"}, Shown: "Ctrl+C or q", Title: "Leave", Foot: "Leave", Where: Everywhere,
		Says: "Leave Chalkfold; unsaved work is asked about.", Synonyms: []string{"quit", "exit", "stop"},
	},
	{
		ID: OtherUnit, Keys: []string{"f4"}, Shown: "F4", Title: "Take it in the other unit", Foot: "As cm", Where: Everywhere,
		Says: "Read a doubted number as centimetres instead of inches, or the other way round.", Synonyms: []string{"convert", "inches", "centimetres", "cm"},
	},
	{
		ID: Glyphs, Keys: []string{"f6"}, Shown: "F6", Title: "Other glyphs", Foot: "Glyphs", Where: Everywhere,
		Says: "Draw with braille dots, half-blocks or plain ASCII.", Synonyms: []string{"braille", "blocks", "ascii", "font", "dots"},
	},
	{
		ID: Room, Keys: []string{"f7"}, Shown: "F7", Title: "Room for words or table", Foot: "Words or table", Where: Everywhere,
		Says: "Give the whole screen to the words or to the table, or share it again.", Synonyms: []string{"split", "bigger", "full", "layout"},
	},
	{
		ID: Mouse, Keys: []string{"f8"}, Shown: "F8", Title: "Mouse on or off", Foot: "Mouse", Where: Everywhere,
		Says: "Use the mouse here, or leave it to the terminal for marking and copying. Shift and drag copies in both.", Synonyms: []string{"click", "wheel", "select text"},
	},
	{
		ID: Project, Keys: []string{"f9"}, Shown: "F9", Title: "Projector", Foot: "Projector", Where: Everywhere,
		Says: "Show the step large for a class; the same key comes back.", Synonyms: []string{"present", "class", "beamer", "full screen"},
	},
	{
		ID: NextTheme, Keys: []string{"ctrl+t"}, Shown: "Ctrl+T", Title: "Next theme", Foot: "Theme", Where: Everywhere,
		Says: "Change the colours; on the projector swap light and dark.", Synonyms: []string{"colours", "dark", "light", "contrast"},
	},

	{ID: First, Title: "First screen", Where: Everywhere, Says: "Go to the five ways to begin.", Synonyms: []string{"start", "home", "welcome"}},
	{ID: NewClient, Title: "New client", Where: Everywhere, Says: "Begin with an empty tape list.", Synonyms: []string{"new", "create"}},
	{ID: CloseClient, Title: "Close this client", Where: Everywhere, Says: "Put the client on the desk away; what is not saved is asked about.", Synonyms: []string{"put away", "shut", "client"}},
	{ID: SaveAs, Title: "Save under another name", Where: Everywhere, Says: "Write the session to a file of another name.", Synonyms: []string{"save as", "copy", "rename"}},
	{ID: Clients, Title: "Clients", Where: Everywhere, Says: "Go to another open client, or to one worked on before; all stay open.", Synonyms: []string{"recent", "people", "switch client"}},
	{ID: Class, Title: "Class", Where: Everywhere, Says: "See a folder of sessions at a glance.", Synonyms: []string{"learners", "folder", "tutor"}},
	{ID: Lessons, Title: "Lessons", Where: Everywhere, Says: "Learn a draft, one short lesson at a time.", Synonyms: []string{"learn", "course", "tutorial"}},
	{ID: Faults, Title: "Faults on purpose", Where: Everywhere, Says: "Spoil a draft on purpose and guess which check finds it; hers is not touched.", Synonyms: []string{"spoilt", "class", "guess", "quiz"}},
	{ID: Fitting, Title: "After the fitting", Where: Everywhere, Says: "Say what was seen on the body; it leads to the input to change.", Synonyms: []string{"fit", "alter", "signs", "pinned", "toile", "hem from the floor"}},
	{ID: Alterations, Title: "Alterations", Where: Everywhere, Says: "List what was altered; compare, take back, make again.", Synonyms: []string{"log", "fittings", "history"}},
	{ID: Months, Title: "Measures then and now", Where: Everywhere, Says: "Show her measures over the months, and what changed.", Synonyms: []string{"earlier", "history", "old measures"}},
	{ID: Compare, Title: "Compare", Where: Everywhere, Says: "Lay two states over each other and name the differences.", Synonyms: []string{"difference", "before and after", "overlay"}},
	{ID: Words, Title: "Words of the trade", Where: Everywhere, Says: "Look up what a word means.", Synonyms: []string{"glossary", "dictionary", "explain"}},
	{ID: CopyOut, Title: "Copy what is shown", Where: Everywhere, Says: "Put the words of this stage on the clipboard, as a table where it is one, and into a file.", Synonyms: []string{"clipboard", "yank", "take along", "paste"}},
	{ID: Settings, Title: "Settings", Where: Everywhere, Says: "Theme, glyphs, unit, mouse, motion and the test card.", Synonyms: []string{"options", "preferences", "test card", "configuration"}},
	{ID: ChangeUnit, Title: "Inches or centimetres", Where: Everywhere, Says: "Show and read lengths in the other unit from now on.", Synonyms: []string{"unit", "inch", "cm", "metric"}},
	{ID: PutToSleep, Title: "Put Chalkfold to sleep", Where: Everywhere, Says: "Go back to the shell for a while; fg wakes it.", Synonyms: []string{"suspend", "background", "shell"}},
}

var field = []Action{
	{ID: "field-up", Keys: []string{"up"}, Shown: "Up", Title: "Field above", Foot: "Field", Where: Field, Says: "Take the value and go to the field above."},
	{ID: "field-down", Keys: []string{"down"}, Shown: "Down", Title: "Field below", Foot: "Field", Where: Field, Says: "Take the value and go to the field below."},
	{ID: "nudge-up", Keys: []string{"pgup"}, Shown: "PgUp", Title: "One tape step more", Foot: "More", Where: Field, Says: "Make the value one tape step larger.", Synonyms: []string{"increase", "larger"}},
	{ID: "nudge-down", Keys: []string{"pgdown"}, Shown: "PgDn", Title: "One tape step less", Foot: "Less", Where: Field, Says: "Make the value one tape step smaller.", Synonyms: []string{"decrease", "smaller"}},
	{ID: "text-left", Keys: []string{"left"}, Shown: "Left", Title: "Left, or the pick before", Foot: "Change", Where: Field, Says: "Move left in the text; where there is a choice, take the one before."},
	{ID: "text-right", Keys: []string{"right"}, Shown: "Right", Title: "Right, or the next pick", Foot: "Change", Where: Field, Says: "Move right in the text; where there is a choice, take the next one."},
	{ID: "take-proposal", Keys: []string{"ctrl+k"}, Shown: "Ctrl+K", Title: "Take the proposal as hers", Foot: "Take it", Where: Field, Says: "Write the proposed number down as if she had been measured.", Synonyms: []string{"accept proposal", "keep"}},
	{ID: "measured-again", Keys: []string{"ctrl+r"}, Shown: "Ctrl+R", Title: "I measured again", Foot: "Measured again", Where: Field, Says: "Settle a doubt: the number was measured again and stays.", Synonyms: []string{"confirm", "doubt", "sure"}},
	{ID: "clear", Keys: []string{"ctrl+u"}, Shown: "Ctrl+U", Title: "Clear the field", Foot: "Clear", Where: Field, Says: "Empty the field.", Synonyms: []string{"delete", "empty"}},
}

// Stages are the digits 1 to 6, in order.
var stages = []Action{
	{ID: "measure", Keys: []string{"1"}, Shown: "1", Title: "1 Measure", Where: NotTyping, Says: "Write down the tape.", Synonyms: []string{"body", "client", "tape"}},
	{ID: "style", Keys: []string{"2"}, Shown: "2", Title: "2 Style", Where: NotTyping, Says: "Choose neck, length, darts, seams.", Synonyms: []string{"choices", "design"}},
	{ID: "draft", Keys: []string{"3"}, Shown: "3", Title: "3 Draft", Where: NotTyping, Says: "Draw it step by step.", Synonyms: []string{"steps", "pattern", "sheet"}},
	{ID: "true", Keys: []string{"4"}, Shown: "4", Title: "4 True", Where: NotTyping, Says: "Check that what is sewn together fits together.", Synonyms: []string{"check", "findings"}},
	{ID: "lay", Keys: []string{"5"}, Shown: "5", Title: "5 Lay", Where: NotTyping, Says: "Lay the pieces on the cloth and see how much to buy.", Synonyms: []string{"cloth", "buy", "marker"}},
	{ID: "cut", Keys: []string{"6"}, Shown: "6", Title: "6 Cut", Where: NotTyping, Says: "Write the chalk card, prints and files.", Synonyms: []string{"export", "print", "files", "svg", "dxf", "pdf"}},
}
