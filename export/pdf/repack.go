package pdf

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"slices"
	"strconv"
)

// Words of the file format, as the library writes them.
const (
	catalogue = "/Type /Catalog\n"
	unscaled  = "/ViewerPreferences <</PrintScaling /None>>\n" // asks the printer not to scale
	tableMark = "\nstartxref\n"
	bare      = "\n<</Length "
	body      = ">>\nstream\n"
	bodyEnd   = "\nendstream\n"
)

// repacked is the file with its pages packed, which the library does with a
// new packer for each and slowly, and with the request not to scale on
// printing, which it cannot make. The table of places is written anew.
func repacked(file []byte) ([]byte, error) {
	places, from, err := table(file)
	if err != nil {
		return nil, err
	}
	order := make([]int, len(places))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return places[a] - places[b] })
	var out, pack bytes.Buffer
	out.Grow(len(file)/2 + 4096)
	packer, err := zlib.NewWriterLevel(&pack, zlib.BestSpeed)
	if err != nil {
		return nil, err
	}
	out.Write(file[:places[order[0]]])
	asked := false
	for k, i := range order {
		end := from
		if k+1 < len(order) {
			end = places[order[k+1]]
		}
		object := file[places[i]:end]
		places[i] = out.Len()
		if at := bytes.Index(object, []byte(catalogue)); k == len(order)-1 && at >= 0 {
			at += len(catalogue)
			out.Write(object[:at])
			out.WriteString(unscaled)
			out.Write(object[at:])
			asked = true
			continue
		}
		if err := packed(&out, &pack, packer, object); err != nil {
			return nil, err
		}
	}
	if !asked {
		return nil, fmt.Errorf("the file has no catalogue where one was looked for")
	}
	writeTable(&out, places, file[from:])
	return out.Bytes(), nil
}

// table reads where the objects begin, the first of them numbered 1, and
// where the table itself does.
func table(file []byte) (places []int, from int, err error) {
	none := fmt.Errorf("the file has no table where one was looked for")
	x := bytes.LastIndex(file, []byte(tableMark))
	if x < 0 {
		return nil, 0, none
	}
	number, _, _ := bytes.Cut(file[x+len(tableMark):], []byte("\n"))
	from, err = strconv.Atoi(string(number))
	var n int
	if err != nil || from < 0 || from > x {
		return nil, 0, none
	}
	if _, err := fmt.Sscanf(string(file[from:min(from+40, len(file))]), "xref\n0 %d\n", &n); err != nil || n < 2 {
		return nil, 0, none
	}
	lines := bytes.SplitN(file[from:], []byte("\n"), n+3)
	if len(lines) < n+3 {
		return nil, 0, none
	}
	for _, l := range lines[3 : n+2] {
		at, err := strconv.Atoi(string(l[:min(10, len(l))]))
		if err != nil || at <= 0 || at >= from {
			return nil, 0, none
		}
		places = append(places, at)
	}
	return places, from, nil
}

// packed writes an object; one that is a bare stream it packs.
func packed(out, pack *bytes.Buffer, packer *zlib.Writer, object []byte) error {
	head := bytes.Index(object, []byte(body))
	first := bytes.IndexByte(object, '\n')
	if head < 0 || !bytes.HasPrefix(object[first:], []byte(bare)) {
		out.Write(object)
		return nil
	}
	long, err := strconv.Atoi(string(object[first+len(bare) : head]))
	from := head + len(body)
	if err != nil || from+long > len(object) || !bytes.HasPrefix(object[from+long:], []byte(bodyEnd)) {
		out.Write(object)
		return nil //nolint:nilerr // an object that is none of ours is left as it is
	}
	pack.Reset()
	packer.Reset(pack)
	if _, err := packer.Write(object[from : from+long]); err != nil {
		return err
	}
	if err := packer.Close(); err != nil {
		return err
	}
	out.Write(object[:first])
	fmt.Fprintf(out, "\n<</Filter /FlateDecode /Length %d%s", pack.Len(), body)
	out.Write(pack.Bytes())
	out.Write(object[from+long:])
	return nil
}

// writeTable writes the table and what follows it in the old file.
func writeTable(out *bytes.Buffer, places []int, old []byte) {
	at := out.Len()
	fmt.Fprintf(out, "xref\n0 %d\n0000000000 65535 f \n", len(places)+1)
	for _, p := range places {
		fmt.Fprintf(out, "%010d 00000 n \n", p)
	}
	t := bytes.Index(old, []byte("trailer\n"))
	x := bytes.LastIndex(old, []byte(tableMark))
	out.Write(old[max(t, 0) : x+len(tableMark)])
	fmt.Fprintf(out, "%d\n%%%%EOF\n", at)
}
