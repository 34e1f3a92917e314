// Package settings is the one file in which she keeps how the workbench looks
// and which keys it goes by: settings.toml in the folder that `chalkfold paths`
// names.
//
// Whatever stands in it, the workbench starts: what cannot be read is told in
// a sentence and the usual is taken in its place. It is written in place, a
// line at a time, so that comments and what is not known here stay.
//
// The package never looks at the environment and never draws.
package settings
