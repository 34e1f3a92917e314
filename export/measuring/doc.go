// Package measuring writes the sheet to take measurements on: in taking order,
// with room for two takes, how far they may differ, and where the landmarks
// lie.
//
// The measurements are those of the table in measure that the draft needs and
// those that make it better. No number of the client stands in it.
package measuring
