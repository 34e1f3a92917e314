package view

import "chalkfold/pattern/geom"

// Eye is how she looks at the table. The zero Eye sees all of it.
type Eye struct {
	Zoom  float64    // millimetres across one dot; 0: as much as all of it needs
	At    geom.Point // what is in the middle while zoomed, on the table
	Names bool       // the names of all marks
	Plain bool       // no lengths beside the marks
	Grid  bool       // ruler and grid
	Hair  bool       // the cross-hair
	Hairs geom.Point // where it stands, on the table
}

// Fits says that all of the table is seen.
func (e Eye) Fits() bool { return e.Zoom == 0 }

// Limits of zooming: a dot is never less than a tenth of a millimetre nor
// more than the whole of the largest piece.
const (
	nearest  = 0.1
	farthest = 50.0
	closer   = 1.5 // one step of the zoom
)

// Closer and Farther change the zoom and keep the middle, or the cross-hair
// where it is shown.
func (e Eye) Closer(v View) Eye { return e.zoomed(v, 1/closer) }

// Farther shows it smaller.
func (e Eye) Farther(v View) Eye { return e.zoomed(v, closer) }

func (e Eye) zoomed(v View, by float64) Eye {
	at := v.middle()
	if e.Hair {
		at = e.Hairs
	}
	z := v.zoom * by
	if z >= v.fit && by > 1 {
		e.Zoom = 0
		return e
	}
	e.Zoom = min(max(z, nearest), farthest)
	// The point under the cross-hair stays where it is on the screen.
	m := v.middle()
	k := e.Zoom / v.zoom
	e.At = geom.Point{X: at.X + (m.X-at.X)*k, Y: at.Y + (m.Y-at.Y)*k}
	return e
}

// Fit shows all of it again.
func (e Eye) Fit() Eye {
	e.Zoom = 0
	return e
}

// Panned looks a part of the view farther right and down.
func (e Eye) Panned(v View, right, down float64) Eye {
	m := v.middle()
	e.Zoom = v.zoom
	w, h := v.size()
	e.At = geom.Point{X: m.X + right*w, Y: m.Y + down*h}
	e.At.X = min(max(e.At.X, v.all.Min.X), v.all.Max.X)
	e.At.Y = min(max(e.At.Y, v.all.Min.Y), v.all.Max.Y)
	return e
}

// On looks at a part of the table and its neighbourhood.
func (e Eye) On(v View, b geom.Box) Eye {
	if b.Empty() {
		return e
	}
	b = b.Grow(around)
	w, h := v.cells()
	e.At = b.Centre()
	e.Zoom = min(max(b.Width()/w, b.Height()/h, nearest), v.fit)
	return e
}

// around is how much of the neighbourhood is shown round a mark: two and a
// half inches, so that the lines it lies between are seen.
const around = 63.5

// Stepped moves the cross-hair by dots.
func (e Eye) Stepped(v View, right, down float64) Eye {
	e.Hairs.X = min(max(e.Hairs.X+right*v.zoom, v.all.Min.X), v.all.Max.X)
	e.Hairs.Y = min(max(e.Hairs.Y+down*v.zoom, v.all.Min.Y), v.all.Max.Y)
	return e
}
