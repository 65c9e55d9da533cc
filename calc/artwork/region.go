package artwork

// outside is the set of all resist that meets the picture's border.
const outside = 0

// run is a stretch of a row of one kind, from begin up to end.
type run struct {
	begin, end int
	set        int32
}

// islandsAndHoles counts the separate exposed areas, joined where pixels share a
// side, and the stretches of resist that are enclosed in them, joined at sides
// or corners: those that do not meet the picture's border. A pixel is exposed if
// it is more than half open.
func islandsAndHoles(r raster) (islands, holes int) {
	var exposed, resist disjoint
	resist.add() // outside
	joins := [2]int{}
	var above, here [2][]run
	for y := range r.height {
		row := r.open[y*r.width : (y+1)*r.width]
		here[0], here[1] = splitRow(row, here[0][:0], here[1][:0])
		joins[0] += link(above[0], here[0], 0, &exposed)
		joins[1] += link(above[1], here[1], 1, &resist)
		for _, run := range here[1] {
			if atRim := y == 0 || y == r.height-1 || run.begin == 0 || run.end == r.width; atRim && resist.join(run.set, outside) {
				joins[1]++
			}
		}
		above, here = here, above
	}
	return len(exposed.parent) - joins[0], len(resist.parent) - joins[1] - 1
}

// splitRow appends the runs of a row: exposed ones and resist.
func splitRow(row []byte, exposed, resist []run) ([]run, []run) {
	for begin := 0; begin < len(row); {
		open := row[begin] >= half
		end := begin + 1
		for end < len(row) && (row[end] >= half) == open {
			end++
		}
		if open {
			exposed = append(exposed, run{begin: begin, end: end})
		} else {
			resist = append(resist, run{begin: begin, end: end})
		}
		begin = end
	}
	return exposed, resist
}

// link gives each run the set of those above it that it touches, or a new one.
// reach is 1 where corners join. It returns how many sets became one.
func link(above, here []run, reach int, sets *disjoint) int {
	joins, first := 0, 0
	for i := range here {
		now := &here[i]
		now.set = -1
		for first < len(above) && above[first].end+reach <= now.begin {
			first++
		}
		for k := first; k < len(above) && above[k].begin < now.end+reach; k++ {
			if now.set < 0 {
				now.set = above[k].set
			} else if sets.join(now.set, above[k].set) {
				joins++
			}
		}
		if now.set < 0 {
			now.set = sets.add()
		}
	}
	return joins
}
