package drawing

import "math"

// cut is a cut across raised lines, in metres: x from the middle, y down from
// the face. Between two strips of resist lies an open space; from each edge of
// the resist the metal under it is etched in a quarter of an ellipse with the half
// axes depth and undercut x depth, the shape of bite.Work.Volume.
type cut struct {
	depth    float64
	undercut float64
	left     float64   // ends of the sheet drawn
	right    float64   //
	spaces   []opening // in order, each apart from the next by a line
}

// opening is exposed metal between two edges of resist.
type opening struct{ left, right float64 }

// node is a corner of the etched face.
type node struct {
	x, y float64
	arc  bool // an ellipse leads to it from the node before
}

// reach is how far it is etched under the resist at a depth y:
//
//	u sqrt(d^2 - y^2)
func (c cut) reach(y float64) float64 {
	return c.undercut * math.Sqrt(math.Max(0, (c.depth-y)*(c.depth+y)))
}

// ridge is how far under the face the top of the metal between two openings
// lies: 0 while the line stands, else where the two ellipses meet.
func (c cut) ridge(width float64) float64 {
	if width >= 2*c.reach(0) {
		return 0
	}
	in := width / 2 / c.undercut
	return math.Sqrt(math.Max(0, (c.depth-in)*(c.depth+in)))
}

// top is the face from end to end, above the floor of each space, the
// straight piece between two nodes at the depth.
func (c cut) top() []node {
	nodes := []node{{c.left, 0, false}}
	for i, o := range c.spaces {
		if i == 0 || c.ridge(o.left-c.spaces[i-1].right) < c.depth {
			nodes = append(nodes, c.start(i), node{o.left, c.depth, true})
		}
		if i == len(c.spaces)-1 || c.ridge(c.spaces[i+1].left-o.right) < c.depth {
			nodes = append(nodes, node{o.right, c.depth, false}, c.end(i))
		}
	}
	return append(nodes, node{c.right, 0, false})
}

// start and end are where an opening's walls come up: at the face, or in the
// ridge that they make with the next.
func (c cut) start(i int) node {
	o := c.spaces[i]
	if i > 0 {
		if gap := o.left - c.spaces[i-1].right; c.ridge(gap) > 0 {
			return node{o.left - gap/2, c.ridge(gap), false}
		}
	}
	return node{o.left - c.reach(0), 0, false}
}

func (c cut) end(i int) node {
	o := c.spaces[i]
	if i < len(c.spaces)-1 {
		if gap := c.spaces[i+1].left - o.right; c.ridge(gap) > 0 {
			return node{o.right + gap/2, c.ridge(gap), true}
		}
	}
	return node{o.right + c.reach(0), 0, true}
}

// bitten splits the face into the bites: each from where it leaves the face to
// where it comes up again, lost lines between.
func bitten(face []node) [][]node {
	var all [][]node
	from := 1
	for i := 2; i < len(face)-1; i++ {
		if face[i].y == 0 && face[i].arc {
			all = append(all, face[from:i+1])
			from = i + 1
		}
	}
	return all
}
