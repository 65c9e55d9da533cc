package evenness

// Place is a place on the picture, as shares of its width and height from the top
// left.
type Place struct{ X, Y float64 }

// Contours are the lines of one local depth over the mean, each a chain of
// places; a closed one ends where it begins. They are found by marching squares
// between the middles of four open cells, and end half a cell from resist.
func (m Map) Contours(level float64) [][]Place {
	c := &contours{Map: m, level: level, links: map[int][]int{}}
	for row := range m.Rows - 1 {
		for column := range m.Columns - 1 {
			c.square(row*m.Columns + column)
		}
	}
	return c.chains()
}

// contours are in the making. A crossing is named by twice its cell, one more
// where it lies between that cell and the one below instead of the one beside.
type contours struct {
	Map
	level float64
	links map[int][]int // crossings that are joined
	order []int         // crossings as they were first met
}

// square joins the crossings at the sides of the square whose top left is cell i.
func (c *contours) square(i int) {
	corners := [4]int{i, i + 1, i + c.Columns + 1, i + c.Columns} // clockwise
	sides := [4]int{2 * i, 2*(i+1) + 1, 2 * (i + c.Columns), 2*i + 1}
	var crossed []int
	for k, corner := range corners {
		if c.Values[corner] == 0 {
			return
		}
		if c.above(corner) != c.above(corners[(k+1)%4]) {
			crossed = append(crossed, sides[k])
		}
	}
	switch len(crossed) {
	case 2:
		c.join(crossed[0], crossed[1])
	case 4: // a saddle: the middle says which corners are cut off
		if c.above(corners[0]) == (c.middle(corners) > c.level) {
			c.join(sides[0], sides[1])
			c.join(sides[2], sides[3])
		} else {
			c.join(sides[3], sides[0])
			c.join(sides[1], sides[2])
		}
	}
}

func (c *contours) above(cell int) bool { return float64(c.Values[cell]) > c.level }

func (c *contours) middle(corners [4]int) float64 {
	var sum float64
	for _, corner := range corners {
		sum += float64(c.Values[corner])
	}
	return sum / 4
}

func (c *contours) join(a, b int) {
	for _, crossing := range []int{a, b} {
		if len(c.links[crossing]) == 0 {
			c.order = append(c.order, crossing)
		}
	}
	c.links[a] = append(c.links[a], b)
	c.links[b] = append(c.links[b], a)
}

// chains follows the links, the open ends first.
func (c *contours) chains() [][]Place {
	var chains [][]Place
	for _, ends := range []int{1, 2} {
		for _, crossing := range c.order {
			if len(c.links[crossing]) == ends {
				chains = append(chains, c.follow(crossing))
			}
		}
	}
	return chains
}

// follow goes along a chain and cuts the links behind it.
func (c *contours) follow(crossing int) []Place {
	chain := []Place{c.place(crossing)}
	for len(c.links[crossing]) > 0 {
		next := c.links[crossing][0]
		c.unlink(crossing, next)
		c.unlink(next, crossing)
		chain = append(chain, c.place(next))
		crossing = next
	}
	return chain
}

func (c *contours) unlink(from, to int) {
	links := c.links[from]
	for i, other := range links {
		if other == to {
			c.links[from] = append(links[:i:i], links[i+1:]...)
			return
		}
	}
}

// place is where the level is crossed between two cells, by a straight line.
func (c *contours) place(crossing int) Place {
	cell := crossing / 2
	x, y := float64(cell%c.Columns)+0.5, float64(cell/c.Columns)+0.5
	next, along := cell+1, &x
	if crossing%2 == 1 {
		next, along = cell+c.Columns, &y
	}
	from, to := float64(c.Values[cell]), float64(c.Values[next])
	*along += (c.level - from) / (to - from)
	return Place{x / float64(c.Columns), y / float64(c.Rows)}
}
