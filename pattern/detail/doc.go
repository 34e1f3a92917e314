// Package detail is how the parts of a garment are drawn: shoulder, neck,
// armhole, side, dart, facing, opening, one file each, as plain constructions
// from points and lengths; and the choices of style that go with them.
//
// A construction takes what it needs and gives points and paths; it reads no
// job, so that a default which depends on a drawn line draws that very line.
package detail
