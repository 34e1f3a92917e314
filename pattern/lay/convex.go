package lay

// convexParts cuts a simple outline into convex parts: into triangles, ear by
// ear, which are then joined where the joint stays convex.
func convexParts(o []Point) [][]Point {
	return joined(o, triangles(o))
}

// triangles cuts ears off until a triangle is left. The tests are exact.
func triangles(o []Point) [][3]int {
	left := make([]int, len(o))
	for i := range left {
		left[i] = i
	}
	var out [][3]int
	at := 0
	for tried := 0; len(left) > 3; {
		n := len(left)
		at %= n
		a, b, c := left[(at+n-1)%n], left[at], left[(at+1)%n]
		if tried >= n || isEar(o, left, a, b, c) {
			if turning(o[a], o[b], o[c]) > 0 {
				out = append(out, [3]int{a, b, c})
			}
			left = append(left[:at], left[at+1:]...)
			tried = 0
			continue
		}
		at++
		tried++
	}
	return append(out, [3]int{left[0], left[1], left[2]})
}

// isEar says whether the triangle lies within and holds no other corner.
func isEar(o []Point, left []int, a, b, c int) bool {
	if turning(o[a], o[b], o[c]) <= 0 {
		return false
	}
	for _, i := range left {
		if i == a || i == b || i == c {
			continue
		}
		p := o[i]
		if turning(o[a], o[b], p) >= 0 && turning(o[b], o[c], p) >= 0 && turning(o[c], o[a], p) >= 0 {
			return false
		}
	}
	return true
}

// joined joins triangles to larger convex parts over their shared sides.
func joined(o []Point, tri [][3]int) [][]Point {
	parts := make([][]int, len(tri))
	owner := map[[2]int]int{} // looked up only, never walked
	for i, t := range tri {
		parts[i] = []int{t[0], t[1], t[2]}
		for k := range 3 {
			owner[[2]int{t[k], t[(k+1)%3]}] = i
		}
	}
	root := make([]int, len(parts))
	for i := range root {
		root[i] = i
	}
	find := func(i int) int {
		for root[i] != i {
			i = root[i]
		}
		return i
	}
	for i, t := range tri {
		for k := range 3 {
			u, v := t[k], t[(k+1)%3]
			j, ok := owner[[2]int{v, u}]
			if !ok {
				continue
			}
			a, b := find(i), find(j)
			if a == b {
				continue
			}
			if m := merge(o, parts[a], parts[b], u, v); m != nil {
				parts[a], parts[b] = m, nil
				root[b] = a
			}
		}
	}
	var out [][]Point
	for _, p := range parts {
		if p == nil {
			continue
		}
		q := make([]Point, len(p))
		for i, at := range p {
			q[i] = o[at]
		}
		out = append(out, q)
	}
	return out
}

// merge joins two parts over the side that a runs from u to v and b from v to
// u; nil if the result would not be convex.
func merge(o []Point, a, b []int, u, v int) []int {
	i, j := place(a, u, v), place(b, v, u)
	if i < 0 || j < 0 {
		return nil
	}
	out := make([]int, 0, len(a)+len(b)-2)
	for k := range len(a) {
		out = append(out, a[(i+1+k)%len(a)]) // from v round to u
	}
	for k := 2; k < len(b); k++ {
		out = append(out, b[(j+k)%len(b)]) // from beyond u round to before v
	}
	n := len(out)
	for _, k := range [2]int{0, len(a) - 1} {
		if turning(o[out[(k+n-1)%n]], o[out[k]], o[out[(k+1)%n]]) < 0 {
			return nil
		}
	}
	return out
}

func place(part []int, u, v int) int {
	for i, at := range part {
		if at == u && part[(i+1)%len(part)] == v {
			return i
		}
	}
	return -1
}
