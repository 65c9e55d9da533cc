package bite

// Bite is one of several bites into the same plate, between which parts of it
// are stopped out with resist.
type Bite struct {
	Depth float64 // m, of this bite alone
	Area  float64 // m2, open area of one piece when it starts
}

// Bitten is what a bite takes.
type Bitten struct {
	Bite
	Time    float64 // s
	Current float64 // A, all pieces
	Charge  float64 // C, all pieces
	Removed float64 // kg, all pieces
}

// Bites is what each of a row of bites takes at one current density (A/m2) over
// all bare metal. w's own area and its edge are not looked at:
//
//	current = density x pieces (A + B)
//	time    = depth / (density x efficiency E / density of the metal)
//
// so the time depends on the depth alone and the current on the area alone.
// True while walls are small beside the area: an edge that was stopped out is
// no edge any more, and one that was not has been counted by nobody.
func (l Law) Bites(w Work, density float64, bites []Bite) []Bitten {
	row := make([]Bitten, len(bites))
	for i, b := range bites {
		w.Area, w.Edge = b.Area, 0
		charge := l.Charge(w, b.Depth)
		row[i] = Bitten{
			Bite:    b,
			Time:    l.TimeAt(density, b.Depth),
			Current: Held(Held(density) * w.Bare()),
			Charge:  charge,
			Removed: l.Removed(charge),
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
		all.Depth = Held(all.Depth + b.Depth)
		all.Time = Held(all.Time + b.Time)
		all.Current = max(all.Current, b.Current)
		all.Charge = Held(all.Charge + b.Charge)
		all.Removed = Held(all.Removed + b.Removed)
	}
	return all
}
