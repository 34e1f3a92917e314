package linear

import "strings"

// match finds the name that the first words of a line mean: each word may be
// a beginning of the name's word, and the longest match wins. rest is what
// follows; among is more than one where the line fits several names.
func match(line string, names [][]string) (at int, rest string, among []int) {
	words := strings.Fields(line)
	n := 0
	for n < len(words) && !isNumber(words[n]) {
		n++
	}
	for k := n; k > 0; k-- {
		var fits []int
		whole := -1
		for i, variants := range names {
			switch fit(words[:k], variants) {
			case 2:
				if whole < 0 {
					whole = i
				}
				fits = append(fits, i)
			case 1:
				fits = append(fits, i)
			}
		}
		switch {
		case whole >= 0:
			return whole, strings.Join(words[k:], " "), nil
		case len(fits) == 1:
			return fits[0], strings.Join(words[k:], " "), nil
		case len(fits) > 1:
			return -1, "", fits
		}
	}
	return -1, line, nil
}

// fit says how the words fit a name in one of its variants: 0 not, 1 as its
// beginning, 2 wholly.
func fit(words []string, variants []string) int {
	best := 0
	for _, v := range variants {
		of := strings.Fields(strings.ToLower(v))
		if len(words) > len(of) {
			continue
		}
		fits, whole := true, len(words) == len(of)
		for i, w := range words {
			w = strings.ToLower(w)
			fits = fits && len(w) >= 2 && strings.HasPrefix(of[i], w)
			whole = whole && w == of[i]
		}
		switch {
		case whole:
			return 2
		case fits:
			best = 1
		}
	}
	return best
}
