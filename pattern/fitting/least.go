package fitting

import "math"

// system is the linear picture of a draft near where it is: rows are spots,
// columns inputs.
type system struct {
	effect [][]float64 // of a row, by columns: change of the figure by a millimetre of input
	want   []float64   // of each row
	weight []float64
	room   []float64 // of each column: how far it may go down, a negative number or nought
}

const (
	// A place where nothing was pinned should stay, but counts for less than
	// one where she measured.
	unpinned = 0.5
	// An input has to earn its place: what it explains must be worth more than
	// this, about a twentieth of an inch.
	earns = 1.2 * 1.2
	// damps keeps two inputs with nearly the same effect from running apart.
	damps = 1e-3
	// most inputs in one answer; exact is how many are tried in every
	// combination, the rest are added one at a time.
	mostInputs = 6
	exact      = 2
)

// solution is a choice of columns with their amounts, and what is left.
type solution struct {
	columns []int
	amounts []float64
	left    float64
}

// fewest is the best solution with few columns: every pair is tried, then one
// more is added, taken out or put in another's place as long as that pays.
func (s system) fewest() solution {
	n := len(s.room)
	best := s.solve(nil)
	var try func(columns []int, from int)
	try = func(columns []int, from int) {
		if len(columns) > 0 {
			if x := s.solve(columns); x.left < best.left {
				best = x
			}
		}
		for j := from; j < n && len(columns) < exact; j++ {
			try(append(append([]int{}, columns...), j), j+1)
		}
	}
	try(nil, 0)
	for better := true; better; {
		better = false
		for _, columns := range neighbours(best.columns, n) {
			if x := s.solve(columns); x.left < best.left-1e-9 {
				best, better = x, true
			}
		}
	}
	return best
}

// neighbours are the choices of columns one change away.
func neighbours(columns []int, n int) [][]int {
	in := make([]bool, n)
	for _, j := range columns {
		in[j] = true
	}
	var out [][]int
	for k := range columns {
		rest := append(append([]int{}, columns[:k]...), columns[k+1:]...)
		out = append(out, rest)
		for j := range n {
			if !in[j] {
				out = append(out, append(append([]int{}, rest...), j))
			}
		}
	}
	if len(columns) < mostInputs {
		for j := range n {
			if !in[j] {
				out = append(out, append(append([]int{}, columns...), j))
			}
		}
	}
	return out
}

// solve finds the amounts of some columns that leave least, damped, none going
// lower than there is room; each column costs what it has to earn.
func (s system) solve(columns []int) solution {
	amounts := s.amounts(columns, s.want)
	for i, j := range columns {
		amounts[i] = math.Max(amounts[i], s.room[j])
	}
	left := earns * float64(len(columns))
	for r := range s.want {
		d := s.want[r]
		for i, j := range columns {
			d -= float64(s.effect[r][j] * amounts[i])
		}
		left += float64(s.weight[r] * s.weight[r] * d * d)
	}
	return solution{columns, amounts, left}
}

// amounts are the damped least squares for some columns.
func (s system) amounts(columns []int, want []float64) []float64 {
	k := len(columns)
	m := make([][]float64, k) // normal equations, the right side last
	for a := range m {
		m[a] = make([]float64, k+1)
		for r := range want {
			w := float64(s.weight[r] * s.weight[r])
			ea := float64(w * s.effect[r][columns[a]])
			for b := range k {
				m[a][b] += float64(ea * s.effect[r][columns[b]])
			}
			m[a][k] += float64(ea * want[r])
		}
		m[a][a] += damps
	}
	return eliminate(m)
}

// eliminate solves a small symmetric system, largest pivot first.
func eliminate(m [][]float64) []float64 {
	k := len(m)
	for c := range k {
		p := c
		for r := c + 1; r < k; r++ {
			if math.Abs(m[r][c]) > math.Abs(m[p][c]) {
				p = r
			}
		}
		m[c], m[p] = m[p], m[c]
		for r := c + 1; r < k; r++ {
			f := m[r][c] / m[c][c]
			for x := c; x <= k; x++ {
				m[r][x] -= float64(f * m[c][x])
			}
		}
	}
	out := make([]float64, k)
	for r := k - 1; r >= 0; r-- {
		sum := m[r][k]
		for x := r + 1; x < k; x++ {
			sum -= float64(m[r][x] * out[x])
		}
		out[r] = sum / m[r][r]
	}
	return out
}
