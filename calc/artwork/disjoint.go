package artwork

// disjoint is a union of sets of whole numbers from 0 on.
type disjoint struct{ parent []int32 }

// add makes a set of a new number.
func (d *disjoint) add() int32 {
	d.parent = append(d.parent, int32(len(d.parent)))
	return int32(len(d.parent) - 1)
}

// root is the number that stands for a set.
func (d *disjoint) root(i int32) int32 {
	for d.parent[i] != i {
		d.parent[i] = d.parent[d.parent[i]]
		i = d.parent[i]
	}
	return i
}

// join makes one set of two and tells whether they were two. The smaller number
// stands for both.
func (d *disjoint) join(a, b int32) bool {
	a, b = d.root(a), d.root(b)
	if a == b {
		return false
	}
	d.parent[max(a, b)] = min(a, b)
	return true
}
