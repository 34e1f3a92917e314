// Package bench is the drafting bench. A garment is a list of [Step]s, the
// recipe; [Run] performs them in order on a clean bench: each draws marks by
// name, says what to do and how the number came to be, and the bench
// remembers when every mark was born and when another took its place. A step
// whose needs are missing is listed and not drawn, and so are the steps that
// depend on it; the others go on.
//
// [Ring] turns the finished marks into pieces: edges in order, each with its
// own allowance, from which both the stitching and the cutting outline come.
//
// The bench knows no garment and no rule of the trade.
package bench
