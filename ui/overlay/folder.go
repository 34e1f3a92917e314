package overlay

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"chalkfold/ui/files"
	"chalkfold/ui/session"
)

// entry is a folder or a file in the folder that is shown.
type entry struct {
	name   string
	folder bool
}

// look lists a folder: folders first, each part by the alphabet. Only session
// files are shown unless all are wanted, and no hidden ones unless asked for.
func look(dir string, all, hidden bool) ([]entry, error) {
	list, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	var folders, names []entry
	for _, e := range list {
		name := e.Name()
		folder := e.IsDir()
		if e.Type()&os.ModeSymlink != 0 {
			if info, err := os.Stat(filepath.Join(dir, name)); err == nil {
				folder = info.IsDir()
			}
		}
		switch {
		case strings.HasPrefix(name, ".") && !hidden:
		case folder:
			folders = append(folders, entry{name, true})
		case all || strings.HasSuffix(name, session.Suffix):
			names = append(names, entry{name, false})
		}
	}
	return append(folders, names...), nil
}

// isPath tells a path from a word to find.
func isPath(typed string) bool {
	return strings.HasPrefix(typed, "~") || strings.ContainsRune(typed, '/') || strings.ContainsRune(typed, filepath.Separator)
}

// whole makes a path whole: ~ is the home folder, what is not whole begins in
// the folder that is shown.
func whole(typed, folder string) string {
	typed = files.Expand(typed)
	if !filepath.IsAbs(typed) {
		typed = filepath.Join(folder, typed) + trailing(typed)
	}
	return typed
}

func trailing(typed string) string {
	if typed == "" || strings.HasSuffix(typed, "/") {
		return string(filepath.Separator)
	}
	return ""
}

// split is a whole path as the folder that is there and the beginning of a
// name in it.
func split(path string) (dir, base string) {
	dir, base = filepath.Split(path)
	return filepath.Clean(dir), base
}

// complete adds to a typed path what all entries that begin so have in common;
// a folder that is the only one gets its slash.
func complete(typed, folder string) string {
	dir, base := split(whole(typed, folder))
	list, err := look(dir, true, strings.HasPrefix(base, "."))
	if err != nil {
		return typed
	}
	list = slices.DeleteFunc(list, func(e entry) bool { return !strings.HasPrefix(e.name, base) })
	if len(list) == 0 {
		return typed
	}
	common := list[0].name
	for _, e := range list[1:] {
		for !strings.HasPrefix(e.name, common) {
			common = common[:len(common)-1]
		}
	}
	common = strings.ToValidUTF8(common, "")
	if len(list) == 1 && list[0].folder {
		common += "/"
	}
	return typed + strings.TrimPrefix(common, base)
}

// here is the folder to begin in: that of the session, else where the program
// was started.
func here(path string) string {
	if path != "" {
		if abs, err := filepath.Abs(path); err == nil {
			return filepath.Dir(abs)
		}
	}
	if dir, err := os.Getwd(); err == nil {
		return dir
	}
	return string(filepath.Separator)
}
