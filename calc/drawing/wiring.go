package drawing

// wiring sketches what is joined to what: supply, cables with their signs and
// colours in words, work and cathode in the bath.
func (s *cardSheet) wiring() {
	s.heading("Wiring")
	const (
		supplyHigh, drop, tankHigh = 6.5, 8.5, 16
		terminal, plate            = 11, 1.6 // from the middle; thick
	)
	d, size := s.drawing, s.size
	middle := (s.left + s.right) / 2
	left, right := middle-22, middle+22
	work, cathode := middle-terminal, middle+terminal
	top := s.y + 0.5
	tank := top + supplyHigh + drop
	level, floor := tank+3, tank+tankHigh

	d.add(Supply, rectangle(middle-terminal-3, top, middle+terminal+3, top+supplyHigh))
	d.write(Word, "supply", middle, top+supplyHigh/2+size*0.35, size, Middle)
	d.write(Figure, "+", work, top+supplyHigh/2+size*0.35, size, Middle)
	d.write(Figure, "–", cathode, top+supplyHigh/2+size*0.35, size, Middle)
	d.add(Bath, rectangle(left, level, right, floor))
	d.add(Frame, from(left, tank).line(left, floor).line(right, floor).line(right, tank))
	d.add(Positive, segment(work, top+supplyHigh, work, level+1.5))
	d.add(Negative, segment(cathode, top+supplyHigh, cathode, level+1.5))
	d.add(Metal, rectangle(work-plate/2, level+1.5, work+plate/2, floor-2))
	d.add(Cathode, rectangle(cathode-plate/2, level+1.5, cathode+plate/2, floor-2))
	beside := tank - 1.5
	d.write(Word, "red +", work-2, beside, size, End)
	d.write(Word, "black –", cathode+2, beside, size, Start)
	s.y = floor + 1
	s.drawing.write(Word, "work", work, s.y+ascent*size, size, Middle)
	s.drawing.write(Word, "cathode", cathode, s.y+ascent*size, size, Middle)
	s.y += s.step(size)
}
