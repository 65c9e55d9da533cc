package bite

import "saltbite/calc/quantity"

// Bite is one of several etches into the same plate, between which parts of it
// are stopped out with resist.
type Bite struct {
	Depth float64 // m, of this bite alone
	Area  float64 // m2, open area of one piece when it starts
}

// Bitten is what a bite takes.
type Bitten struct {
	Bite
	Time    quantity.Optional // s
	Current quantity.Optional // A, all pieces
	Charge  quantity.Optional // C, all pieces
	Removed quantity.Optional // kg, all pieces
}

// Bites is what each of a row of bites takes at one current density (A/m2) over
// all bare metal. w's own area and its edge are not looked at:
//
//	current = density x pieces (A + B)
//	time    = depth / (density x efficiency E / density of the metal)
//
// so the time depends on the depth alone and the current on the area alone.
// True while walls are small beside the area: an edge that was stopped out is
// no edge any more, and the length of one that was not is not known.
func (l Law) Bites(w Work, density float64, bites []Bite) []Bitten {
	row := make([]Bitten, len(bites))
	for i, b := range bites {
		w.Area, w.Edge = b.Area, 0
		charge := l.Charge(w, b.Depth)
		row[i] = Bitten{
			Bite:    b,
			Time:    l.TimeAt(density, b.Depth),
			Current: quantity.Positive(held(density) * w.Bare().SI),
			Charge:  charge,
			Removed: l.Removed(charge.SI),
		}
	}
	return row
}

// InAll adds up a row of bites: time with the current on, charge, metal, and
// the depth of what stays open through all of them. The current is the largest,
// which the supply must give; the area is that of the first bite.
func InAll(row []Bitten) Bitten {
	var all Bitten
	for i, b := range row {
		if i == 0 {
			all.Area = b.Area
		}
		all.Depth = held(all.Depth + b.Depth)
		all.Time = quantity.Sum(all.Time, b.Time)
		all.Current = quantity.Positive(max(all.Current.SI, b.Current.SI))
		all.Charge = quantity.Sum(all.Charge, b.Charge)
		all.Removed = quantity.Sum(all.Removed, b.Removed)
	}
	return all
}

// RemovedEach is the metal, kg, that a row of bites takes from one piece without
// its hanger, of which so much, m2, is in w.Extra:
//
//	density of the metal x sum of depth (A + B - hanger)
//
// Every bite takes the hanger down too; it hangs in the bath all the time.
func (l Law) RemovedEach(w Work, bites []Bite, hanger float64) quantity.Optional {
	var volume float64
	for _, b := range bites {
		w.Area, w.Edge = b.Area, 0
		volume += w.Volume(b.Depth).SI - held(hanger)*held(b.Depth)
	}
	return quantity.Positive(l.Density * volume)
}
