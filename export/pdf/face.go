package pdf

import (
	"encoding/binary"
	"sync"

	"codeberg.org/go-fonts/dejavu/dejavusans"
)

// face is the typeface as its file tells it: which glyph draws a letter, how
// wide it is, where its outline lies.
type face struct {
	tables map[string][]byte
	glyph  []uint16 // by letter, up to U+FFFF
	wide   []uint16 // by glyph, in units
	at     []uint32 // where each glyph begins, and the end
	units  float64  // units of the em
}

// theFace is DejaVu Sans, read once. Its digits have one width, so columns of
// figures align, and it has the widest choice of letters.
var theFace = sync.OnceValue(func() *face { return readFace(dejavusans.TTF) })

var be = binary.BigEndian

// readFace reads a TrueType file that is known to be whole.
func readFace(file []byte) *face {
	f := &face{tables: map[string][]byte{}}
	for i := range int(be.Uint16(file[4:])) {
		d := file[12+16*i:]
		from, long := be.Uint32(d[8:]), be.Uint32(d[12:])
		f.tables[string(d[:4])] = file[from : from+long]
	}
	f.units = float64(be.Uint16(f.tables["head"][18:]))
	n := int(be.Uint16(f.tables["maxp"][4:]))
	f.readPlaces(n)
	f.readWidths(n)
	f.readLetters()
	return f
}

func (f *face) readPlaces(n int) {
	loca := f.tables["loca"]
	f.at = make([]uint32, n+1)
	long := be.Uint16(f.tables["head"][50:]) == 1
	for i := range f.at {
		if long {
			f.at[i] = be.Uint32(loca[4*i:])
		} else {
			f.at[i] = 2 * uint32(be.Uint16(loca[2*i:]))
		}
	}
}

func (f *face) readWidths(n int) {
	metrics := int(be.Uint16(f.tables["hhea"][34:]))
	f.wide = make([]uint16, n)
	for i := range f.wide {
		f.wide[i] = be.Uint16(f.tables["hmtx"][4*min(i, metrics-1):])
	}
}

// readLetters reads the table of letters in the form that covers the basic
// plane (form 4).
func (f *face) readLetters() {
	f.glyph = make([]uint16, 1<<16)
	cmap := f.tables["cmap"]
	for i := range int(be.Uint16(cmap[2:])) {
		t := cmap[be.Uint32(cmap[8+8*i:]):]
		if be.Uint16(t) != 4 {
			continue
		}
		n := int(be.Uint16(t[6:])) / 2
		ends, starts := t[14:], t[16+2*n:]
		deltas, offsets := t[16+4*n:], t[16+6*n:]
		for s := range n {
			first, last := int(be.Uint16(starts[2*s:])), int(be.Uint16(ends[2*s:]))
			delta, offset := be.Uint16(deltas[2*s:]), int(be.Uint16(offsets[2*s:]))
			for c := first; c <= last && c < 0xffff; c++ {
				g := uint16(c) + delta
				if offset != 0 {
					if g = be.Uint16(offsets[2*s+offset+2*(c-first):]); g != 0 {
						g += delta
					}
				}
				f.glyph[c] = g
			}
		}
		return
	}
}

func (f *face) has(r rune) bool { return r >= 0 && int(r) < len(f.glyph) && f.glyph[r] != 0 }

// width of clean text in the measure of the size.
func (f *face) width(text string, size float64) float64 {
	sum := 0
	for _, r := range text {
		if f.has(r) {
			sum += int(f.wide[f.glyph[r]])
		}
	}
	return float64(sum) * size / f.units
}

func (f *face) outline(g uint16) []byte { return f.tables["glyf"][f.at[g]:f.at[g+1]] }
