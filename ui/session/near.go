package session

// Nearest is the known word that a mistyped one most likely meant, or "".
// Letters left out, put in, swapped or mistaken count one each; a third of
// the word may be wrong.
func Nearest(word string, known []string) string {
	if len(word) > 60 {
		return ""
	}
	best, least := "", max(1, min(3, len(word)/3))+1
	for _, k := range known {
		if d := distance(word, k); d < least {
			best, least = k, d
		}
	}
	return best
}

// distance counts the slips between two words (Damerau and Levenshtein, each
// pair of neighbours swapped at most once).
func distance(a, b string) int {
	if d := len(a) - len(b); d > 3 || d < -3 {
		return 9
	}
	before, last := make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row := make([]int, len(b)+1)
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last = last, row
	}
	return last[len(b)]
}
