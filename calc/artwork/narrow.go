package artwork

import (
	"cmp"
	"slices"
)

// widths is what the outline says of lines and spaces, in pixels.
type widths struct {
	narrowest [2]float64 // of each side; 0: none
	narrow    []narrowing
	tooNarrow [2]int     // separate stretches narrower than the limit, of each side
	kept      [2]float64 // the narrowest that is no narrower than the limit; 0: none
}

// limits are the widths, in pixels, under which stretches of each side are
// counted; 0: they are not.
type limits [2]float64

// narrowing is a place where a line or a space is narrow.
type narrowing struct {
	gap
	side side
	x, y float64 // its middle
}

// Narrow places are told apart when they lie a share of the picture's longer
// side apart, so that one line does not fill the list.
const (
	mostNarrow = 20
	tilesAlong = 32
)

// measureWidths gauges the sides of every point of an outline.
func measureWidths(width, height int, o *outline, sides []side, least limits, progress func(float64)) widths {
	if len(o.x) == 0 {
		return widths{}
	}
	g := gauge{transform(width, height, o), sorted(width, height, o)}
	progress(0.3)
	counted := [2]stretches{newStretches(o, least[resistSide]), newStretches(o, least[openSide])}
	best := map[tile]narrowing{}
	var kept [2]float64
	size := max(float64(max(width, height))/tilesAlong, 8)
	for i := range o.x {
		if i%100_000 == 0 {
			progress(0.3 + 0.7*float64(i)/float64(len(o.x)))
		}
		for _, s := range sides {
			found := g.across(i, s)
			if found.opposite < 0 {
				continue
			}
			counted[s].note(i, found)
			if found.width >= least[s] && (kept[s] == 0 || found.width < kept[s]) {
				kept[s] = found.width
			}
			x, y := g.at(i)
			qx, qy := g.at(found.opposite)
			here := narrowing{found, s, (x + qx) / 2, (y + qy) / 2}
			at := tile{int(here.x / size), int(here.y / size), s}
			if there, ok := best[at]; !ok || found.width < there.width {
				best[at] = here
			}
		}
	}
	w := widths{tooNarrow: [2]int{counted[resistSide].count(), counted[openSide].count()}, kept: kept}
	w.choose(best, size)
	return w
}

// tile is a square of the picture, for one side of the edge.
type tile struct {
	column, row int
	side        side
}

// choose picks the narrowest places that lie at least a tile's size apart; the
// narrowest of each side is always among them.
func (w *widths) choose(best map[tile]narrowing, size float64) {
	places := make([]narrowing, 0, len(best))
	for _, place := range best {
		places = append(places, place)
	}
	slices.SortFunc(places, func(a, b narrowing) int {
		return cmp.Or(cmp.Compare(a.width, b.width), cmp.Compare(a.side, b.side), cmp.Compare(a.y, b.y), cmp.Compare(a.x, b.x))
	})
	for _, place := range places {
		first := false
		if w.narrowest[place.side] == 0 {
			w.narrowest[place.side], first = place.width, true
		}
		crowded := slices.ContainsFunc(w.narrow, func(p narrowing) bool {
			dx, dy := p.x-place.x, p.y-place.y
			return p.side == place.side && dx*dx+dy*dy < size*size
		})
		switch {
		case !crowded && len(w.narrow) < mostNarrow:
			w.narrow = append(w.narrow, place)
		case first:
			w.narrow[mostNarrow-1] = place
		}
	}
}

// stretches joins points where one side is narrower than a limit: those that
// face each other, and neighbours along the edge that are at most joinWithin
// pixels apart: the direction of an edge is not sure at corners.
type stretches struct {
	*outline
	limit    float64 // pixels
	opposite []int32 // of each point; -1: it is not too narrow there
}

const joinWithin = 8

func newStretches(o *outline, limit float64) stretches {
	s := stretches{outline: o, limit: limit}
	if limit > 0 {
		s.opposite = make([]int32, len(o.x))
		for i := range s.opposite {
			s.opposite[i] = -1
		}
	}
	return s
}

func (s stretches) note(i int, found gap) {
	if found.width >= s.limit {
		return
	}
	s.opposite[i] = int32(found.opposite)
	if s.opposite[found.opposite] < 0 {
		s.opposite[found.opposite] = int32(i)
	}
}

// count is how many separate stretches there are.
func (s stretches) count() int {
	if s.opposite == nil {
		return 0
	}
	var sets disjoint
	for range s.opposite {
		sets.add()
	}
	noted, joined := 0, 0
	for i, q := range s.opposite {
		if q < 0 {
			continue
		}
		noted++
		if sets.join(int32(i), q) {
			joined++
		}
	}
	for _, c := range s.chains {
		joined += s.joinAlong(c, &sets)
	}
	return noted - joined
}

// joinAlong joins each noted point of a chain to the noted one before it, and
// returns how many joins there were.
func (s stretches) joinAlong(c chain, sets *disjoint) int {
	joined := 0
	before, since := int32(-1), 0.0
	length := c.end - c.begin
	rounds := length
	if c.closed {
		rounds = 2 * length // once more, so that the end meets the beginning
	}
	for k := range rounds {
		i := c.begin + k%length
		if k > 0 {
			since += s.apart(i, c.begin+(k-1)%length)
		}
		if s.opposite[i] < 0 {
			continue
		}
		if before >= 0 && since <= joinWithin && sets.join(int32(i), before) {
			joined++
		}
		before, since = int32(i), 0
	}
	return joined
}
