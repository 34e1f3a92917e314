// Package handout writes the teaching handout of a draft for printing: its
// steps one by one with their drawings, each sum with its result left blank
// for the learner, and a key for the tutor on pages of its own.
//
// The steps are the draft's own, so the handout cannot go stale. No name, no
// date and no note of the client stands in it; her measures stand in the key
// alone.
package handout
