package shell

import "github.com/spf13/cobra"

// commands in the order of help. The workbench itself is the root.
var commands = []func(*world) *cobra.Command{
	demoCommand,
	newCommand,
	draftCommand,
	piecesCommand,
	outlineCommand,
	checkCommand,
	easeCommand,
	compareCommand,
	fitCommand,
	looksCommand,
	exportCommand,
	layCommand,
	classCommand,
	measurementsCommand,
	choicesCommand,
	pathsCommand,
	settingsCommand,
	versionCommand,
	completionCommand,
	manCommand,
}
