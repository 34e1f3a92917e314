package pdf

import (
	"bytes"
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"chalkfold/pattern"
)

const (
	millimetresAPoint = 25.4 / 72
	// family is as long as a tag, a plus sign and the face's name without
	// what the library puts before it.
	family   = "xx+dejavusans"
	named    = "utf8" + family
	realName = "+DejaVuSans"
	producer = "Chalkfold"
)

// finish hands all that was taken down to the library and writes the file.
func (p *pen) finish(w io.Writer) error {
	if len(p.pages) == 0 {
		p.page(papers[0].Width, papers[0].Height)
	}
	font := p.face.subset(sorted(p.letters))
	f := p.open(font)
	for _, l := range p.pages {
		f.AddPageFormat("P", fpdf.SizeType{Wd: settled(l.width), Ht: settled(l.height)})
		f.SetFont(family, "", 10)
		for _, op := range l.ops {
			op(f)
		}
	}
	p.putBookmarks(f)
	var b bytes.Buffer
	if err := f.Output(&b); err != nil {
		return fmt.Errorf("the pages could not be made: %w", err)
	}
	out, err := repacked(b.Bytes())
	if err != nil {
		return err
	}
	out = bytes.ReplaceAll(out, []byte("/"+named), []byte("/"+tag(font)+realName))
	_, err = w.Write(out)
	return err
}

func (p *pen) open(font []byte) *fpdf.Fpdf {
	first := p.pages[0]
	f := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "mm", Size: fpdf.SizeType{Wd: first.width, Ht: first.height}})
	f.SetCatalogSort(true)
	f.SetCompression(false) // repacked does it, with one packer for all
	f.SetAutoPageBreak(false, 0)
	f.SetMargins(0, 0, 0)
	f.SetCellMargin(0)
	f.SetLineCapStyle("butt")
	f.SetLineJoinStyle("miter")
	at := day(p.date)
	f.SetCreationDate(at)
	f.SetModificationDate(at)
	f.SetTitle(p.title, true)
	f.SetProducer(producer, true)
	f.SetCreator(producer, true)
	f.SetLang("en")
	f.AddUTF8FontFromBytes(family, "", font)
	if p.layered {
		for _, name := range layerNames {
			f.AddLayer(name, true)
		}
	}
	return f
}

// day is the date that stands in the file: the session's, else a fixed one,
// never today's.
func day(d pattern.Date) time.Time {
	if d.IsZero() || d.Year < 1900 || d.Year > 9999 {
		d = pattern.Date{Year: 2000, Month: 1, Day: 1}
	}
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC)
}

// putBookmarks puts them in the order of the pages. The library reckons every
// place from the top of the last page, so the difference is made up.
func (p *pen) putBookmarks(f *fpdf.Fpdf) {
	last := p.last().height
	for _, m := range p.marks {
		f.SetPage(m.page)
		f.Bookmark(m.text, m.level, settled(last-p.pages[m.page-1].height+m.y))
	}
	f.SetPage(len(p.pages))
}
