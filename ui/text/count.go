package text

import "strconv"

// Count is a whole number for people, its digits in threes: 1,234,567. Where a
// count is typed the commas may stand.
func Count(n int64) string {
	digits := strconv.FormatInt(n, 10)
	sign := ""
	if n < 0 {
		sign, digits = digits[:1], digits[1:]
	}
	out := digits
	for i := len(digits) - 3; i > 0; i -= 3 {
		out = out[:i] + "," + out[i:]
	}
	return sign + out
}
