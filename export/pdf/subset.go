package pdf

import (
	"crypto/sha256"
	"sort"
)

// subset is a small face with the glyphs of these letters alone. The library
// reads a whole face in many milliseconds and a small one in none.
func (f *face) subset(letters []rune) []byte {
	sort.Slice(letters, func(i, j int) bool { return letters[i] < letters[j] })
	s := shrink{face: f, number: map[uint16]uint16{}}
	s.add(0)
	gids := make([]uint16, len(letters))
	for i, r := range letters {
		// A glyph that serves two letters is taken twice, so that numbers
		// follow letters.
		gids[i] = s.put(f.glyph[r])
	}
	// Parts of accented letters come after, each once.
	for i := 0; i < len(s.old); i++ {
		s.parts(i)
	}
	return s.file(cmapTable(letters, gids))
}

// shrink collects glyphs under new numbers.
type shrink struct {
	face   *face
	old    []uint16 // old number by new number
	number map[uint16]uint16
	data   [][]byte
}

// put takes a glyph under the next number.
func (s *shrink) put(g uint16) uint16 {
	n := uint16(len(s.old))
	s.old = append(s.old, g)
	s.data = append(s.data, s.face.outline(g))
	if _, known := s.number[g]; !known {
		s.number[g] = n
	}
	return n
}

func (s *shrink) add(g uint16) uint16 {
	if n, known := s.number[g]; known {
		return n
	}
	return s.put(g)
}

// Marks in a compound glyph.
const (
	wideArguments = 1 << 0
	oneScale      = 1 << 3
	moreParts     = 1 << 5
	twoScales     = 1 << 6
	fourScales    = 1 << 7
)

// parts renumbers the parts of a compound glyph.
func (s *shrink) parts(i int) {
	d := s.data[i]
	if len(d) < 10 || d[0]&0x80 == 0 {
		return
	}
	d = append([]byte(nil), d...)
	s.data[i] = d
	for p := 10; ; {
		flags := be.Uint16(d[p:])
		be.PutUint16(d[p+2:], s.add(be.Uint16(d[p+2:])))
		p += 6
		if flags&wideArguments != 0 {
			p += 2
		}
		switch {
		case flags&oneScale != 0:
			p += 2
		case flags&twoScales != 0:
			p += 4
		case flags&fourScales != 0:
			p += 8
		}
		if flags&moreParts == 0 {
			return
		}
	}
}

// file puts the tables together; the library asks for no check sums.
func (s *shrink) file(cmap []byte) []byte {
	var glyf, loca, hmtx []byte
	for i, d := range s.data {
		loca = be.AppendUint32(loca, uint32(len(glyf)))
		glyf = append(glyf, d...)
		for len(glyf)%4 != 0 {
			glyf = append(glyf, 0)
		}
		hmtx = be.AppendUint16(hmtx, s.face.wide[s.old[i]])
		hmtx = append(hmtx, s.bearing(i)...)
	}
	loca = be.AppendUint32(loca, uint32(len(glyf)))
	n := uint16(len(s.data))
	tables := []struct {
		name string
		data []byte
	}{
		{"OS/2", s.face.tables["OS/2"]},
		{"cmap", cmap},
		{"cvt ", s.face.tables["cvt "]},
		{"fpgm", s.face.tables["fpgm"]},
		{"glyf", glyf},
		{"head", with(s.face.tables["head"], 50, 1)},
		{"hhea", with(s.face.tables["hhea"], 34, n)},
		{"hmtx", hmtx},
		{"loca", loca},
		{"maxp", with(s.face.tables["maxp"], 4, n)},
		{"name", []byte{0, 0, 0, 0, 0, 6}},
		{"post", append([]byte{0, 3, 0, 0}, s.face.tables["post"][4:32]...)}, // form 3: no names
		{"prep", s.face.tables["prep"]},
	}
	out := []byte{0, 1, 0, 0}
	out = be.AppendUint16(out, uint16(len(tables)))
	out = append(out, 0, 0, 0, 0, 0, 0)
	at := 12 + 16*len(tables)
	for _, t := range tables {
		out = append(out, t.name...)
		out = append(out, 0, 0, 0, 0)
		out = be.AppendUint32(out, uint32(at))
		out = be.AppendUint32(out, uint32(len(t.data)))
		at += (len(t.data) + 3) &^ 3
	}
	for _, t := range tables {
		out = append(out, t.data...)
		for len(out)%4 != 0 {
			out = append(out, 0)
		}
	}
	return out
}

// bearing is how far the outline stands from the left of its room: its least
// x, which the outline's own head tells.
func (s *shrink) bearing(i int) []byte {
	if len(s.data[i]) < 10 {
		return []byte{0, 0}
	}
	return s.data[i][2:4]
}

func with(table []byte, at int, v uint16) []byte {
	out := append([]byte(nil), table...)
	be.PutUint16(out[at:], v)
	return out
}

// cmapTable is a table of letters in form 4, a segment for each run.
func cmapTable(letters []rune, gids []uint16) []byte {
	type run struct{ first, last, delta uint16 }
	var runs []run
	for i, r := range letters {
		c := uint16(r)
		if n := len(runs); n > 0 && runs[n-1].last+1 == c && runs[n-1].delta == gids[i]-c {
			runs[n-1].last = c
			continue
		}
		runs = append(runs, run{c, c, gids[i] - c})
	}
	runs = append(runs, run{0xffff, 0xffff, 1})
	n := uint16(len(runs))
	t := []byte{0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12}
	for _, v := range []uint16{4, 16 + 8*n, 0, 2 * n, 0, 0, 0} {
		t = be.AppendUint16(t, v)
	}
	for _, r := range runs {
		t = be.AppendUint16(t, r.last)
	}
	t = be.AppendUint16(t, 0)
	for _, r := range runs {
		t = be.AppendUint16(t, r.first)
	}
	for _, r := range runs {
		t = be.AppendUint16(t, r.delta)
	}
	for range runs {
		t = be.AppendUint16(t, 0)
	}
	return t
}

// tag is the mark of a cut-down face: six capitals, from its content.
func tag(font []byte) string {
	sum := sha256.Sum256(font)
	var out [6]byte
	for i := range out {
		out[i] = 'A' + sum[i]%26
	}
	return string(out[:])
}
