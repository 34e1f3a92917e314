package overlay

import (
	"strings"

	"chalkfold/ui/canvas"
)

// large writes a number of the tape three rows high: whole number, fraction or
// decimals.
func large(number string, g canvas.Glyphs) [3]string {
	var rows [3]strings.Builder
	put := func(sign [3]string) {
		for i := range rows {
			if rows[i].Len() > 0 {
				rows[i].WriteByte(' ')
			}
			rows[i].WriteString(sign[i])
		}
	}
	for _, r := range number {
		switch {
		case r >= '0' && r <= '9':
			put(canvas.Figures(string(r), g))
		case r == '/':
			put([3]string{"  /", " / ", "/  "})
		case r == '.', r == ',':
			put([3]string{" ", " ", string(r)})
		case r == ' ':
			put([3]string{" ", " ", " "})
		}
	}
	return [3]string{rows[0].String(), rows[1].String(), rows[2].String()}
}
