package outlet

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"chalkfold/export"
	"chalkfold/export/pdf"
	"chalkfold/measure"
	"chalkfold/ui/files"
)

// printedFile holds, by paper, how long the control lines came out on this
// machine's printer, in millimetres.
const printedFile = "printed.toml"

type printedLines struct {
	Across float64 `toml:"across"`
	Along  float64 `toml:"along"`
}

// Printed is what was kept of a paper in the folder of settings: how long its
// control lines came out; nothing where none was measured. What cannot be read
// or made up for counts as nothing.
func Printed(folder, paper string) (across, along measure.Length) {
	p, err := pdf.ParsePaper(paper)
	if err != nil || folder == "" {
		return 0, 0
	}
	all, err := readPrinted(folder)
	if err != nil {
		return 0, 0
	}
	lines := all[p.ID]
	across, along = measure.Length(lines.Across), measure.Length(lines.Along)
	if (pdf.Options{Paper: p, PrintedAcross: across, PrintedAlong: along}).Check() != nil {
		return 0, 0
	}
	return across, along
}

func readPrinted(folder string) (map[string]printedLines, error) {
	all := map[string]printedLines{}
	data, err := os.ReadFile(filepath.Join(folder, printedFile))
	if errors.Is(err, fs.ErrNotExist) {
		return all, nil
	}
	if err != nil {
		return nil, err
	}
	_, err = toml.Decode(string(data), &all)
	return all, err
}

// KeepPrinted keeps how long the control lines of a paper came out. A line that
// was not measured keeps what is known of it.
func KeepPrinted(folder, paper string, across, along measure.Length) error {
	p, err := pdf.ParsePaper(paper)
	if err != nil || folder == "" || across == 0 && along == 0 {
		return err
	}
	all, err := readPrinted(folder)
	if err != nil {
		return &files.Trouble{Path: filepath.Join(folder, printedFile), Wrong: "it cannot be read", Works: "mend it, or take it away: it holds what was measured of your printer", Err: err}
	}
	lines := all[p.ID]
	if across > 0 {
		lines.Across = across.MM()
	}
	if along > 0 {
		lines.Along = along.MM()
	}
	all[p.ID] = lines
	var b strings.Builder
	b.WriteString("# How long the control lines of the tiles came out, by paper, in millimetres.\n")
	for _, paper := range pdf.Papers() {
		lines := all[paper.ID]
		if lines == (printedLines{}) {
			continue
		}
		fmt.Fprintf(&b, "\n[%s]\n", paper.ID)
		for _, l := range []struct {
			name string
			mm   float64
		}{{"across", lines.Across}, {"along", lines.Along}} {
			if l.mm > 0 {
				fmt.Fprintf(&b, "%s = %s\n", l.name, strconv.FormatFloat(export.Round(l.mm, 1e4), 'f', 4, 64))
			}
		}
	}
	if err := files.Folder(folder); err != nil {
		return err
	}
	return files.Write(filepath.Join(folder, printedFile), []byte(b.String()), files.Options{})
}
