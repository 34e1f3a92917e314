package text

// Saving.
const (
	Saved            ID = "Saved {1} {2}"
	SavedSame        ID = "{1} holds this already."
	SaveTitle        ID = "Save as"
	SaveWhere        ID = "Save in {1} as"
	SaveNotDone      ID = "Not saved: {1}."
	SaveKept         ID = "The work is kept here and in a rescue copy."
	SaveOtherPlace   ID = "Save in {1} instead"
	SaveNameFirst    ID = "Give the file a name."
	OverwriteTitle   ID = "There is a file of that name"
	OverwriteSays    ID = "{1} holds other work, of {2}."
	OverwriteDo      ID = "Write over it"
	OverwriteBeside  ID = "Save beside it as {1}"
	OverwriteNot     ID = "Do not save"
	ElsewhereTitle   ID = "The file was changed elsewhere"
	ElsewhereSays    ID = "{1} is not as it was when you opened it."
	ElsewhereOver    ID = "Write over it"
	ElsewhereBeside  ID = "Save beside it as {1}"
	ElsewhereReload  ID = "Read it again and drop my changes"
	ElsewhereGone    ID = "{1} is gone. Save writes it anew."
	ElsewhereReloads ID = "Read again from {1}."
)

// Opening.
const (
	OpenTitle      ID = "Open"
	OpenHere       ID = "Folder {1}"
	OpenRecent     ID = "Clients worked on last"
	OpenFolders    ID = "Folders and files"
	OpenUp         ID = "Folder above"
	OpenPath       ID = "Type a path; Tab completes it."
	OpenAll        ID = "Show all files"
	OpenHidden     ID = "Show hidden files"
	OpenNewFolder  ID = "New folder"
	OpenEmpty      ID = "No session files here."
	OpenGone       ID = "{1} is not there any more."
	OpenForeign    ID = "{1} is not a session of Chalkfold."
	OpenNewer      ID = "{1} is of a later form, {2}; this Chalkfold reads up to {3}."
	OpenUnread     ID = "{1} cannot be read: {2}."
	OpenReadOnly   ID = "{1} may only be read; save it under another name."
	Opened         ID = "Opened {1}."
	OpenedLayGone  ID = "The kept lay no longer fits the pieces and was dropped. Pins are kept."
	RecentEmpty    ID = "No client yet. Begin a new one, or open a file."
	FolderNotThere ID = "There is no folder {1}."
)
