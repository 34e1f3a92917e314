package outlet

import (
	"io"

	"chalkfold/export/lessonpage"
	"chalkfold/export/moved"
)

func lessonFiles(r request) []file {
	o := lessonpage.Options{Unit: r.words(), Numbers: r.Numbers}
	return []file{{r.stem + "-lesson.html", silent(func(w io.Writer) error { return lessonpage.Write(w, r.sheet, o) })}}
}

func movedFiles(r request) []file {
	return []file{{r.stem + "-moved.md", silent(func(w io.Writer) error {
		return moved.Write(w, r.Before, r.sheet, moved.Options{Unit: r.words(), Now: r.card()})
	})}}
}
