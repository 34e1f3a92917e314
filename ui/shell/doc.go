// Package shell is the command line: what people type and what other programs
// read.
//
// The table in table.go lists the commands in the order of help; each has a
// file of its own that says what it takes, what it does and what it prints.
// main.go turns a call into one of them and its outcome into an exit status:
// 0 done, 1 the work could not be done, 2 the call or the file could not be
// understood. Results go to standard output, words about the work to standard
// error. Every refusal there is one line:
//
//	chalkfold: WHERE: what was read; what is wrong; what would work
//
// A new command is a file with a row in the table; help, the man page and
// completion follow from it.
//
// The package drafts nothing and draws no cell: it opens sessions, calls
// workroom.Draft and prints what the Sheet says.
package shell
