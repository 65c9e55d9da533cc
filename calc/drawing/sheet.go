package drawing

import "strings"

// sheet is a piece of paper that is written on from the top.
type sheet struct {
	drawing     *Drawing
	left, right float64 // of what may be written on
	y           float64 // where the next thing begins
	size        float64 // of ordinary text
	leading     float64 // from line to line, over the size
	gap         float64 // over and under the rule of a heading
}

const (
	nine   = 3.175 // mm, 9 points: no text on paper is smaller
	ascent = 0.8   // of a font's size over its baseline
)

func (s *sheet) width() float64 { return s.right - s.left }

// step is the height of a line of that size.
func (s *sheet) step(size float64) float64 { return size * s.leading }

// paragraph writes a text in as many lines as it needs.
func (s *sheet) paragraph(role Role, text string, size float64, strong bool) {
	s.indented(role, text, s.left, size, strong)
}

func (s *sheet) indented(role Role, text string, x, size float64, strong bool) {
	for _, line := range wrap(text, size, s.right-x, strong) {
		s.put(role, line, x, size, Start, strong)
		s.y += s.step(size)
	}
}

// put writes a text that is no wider than its place, at the height of the sheet.
func (s *sheet) put(role Role, text string, x, size float64, anchor Anchor, strong bool) {
	s.drawing.write(role, text, x, s.y+ascent*size, size, anchor)
	s.drawing.Shapes[len(s.drawing.Shapes)-1].Strong = strong
}

// fit writes a text in a place, in smaller type or cut where it is too long.
func (s *sheet) fit(role Role, text string, x, size, room float64, strong bool) {
	if strong && widthOf(text, size, true) > room {
		strong = false
	}
	for size > nine && widthOf(text, size, strong) > room {
		size = max(nine, size-0.2)
	}
	if widthOf(text, size, strong) > room {
		text = headOf(text, size, room-letterWidth*size, strong) + "…"
	}
	s.put(role, text, x, size, Start, strong)
}

// heading names what follows, under a rule.
func (s *sheet) heading(text string) {
	s.ruleOff()
	s.put(Heading, text, s.left, s.size, Start, true)
	s.y += s.step(s.size)
}

// ruleOff draws a rule between what is above and what follows.
func (s *sheet) ruleOff() {
	s.y += s.gap
	s.drawing.add(Frame, segment(s.left, s.y, s.right, s.y))
	s.y += s.gap
}

// rule is a line to write on, the text baseline of the sheet's height.
func (s *sheet) rule(x1, x2, size float64) {
	y := s.y + (ascent+0.1)*size
	s.drawing.add(Rule, segment(x1, y, x2, y))
}

// columns writes what two columns hold side by side, and goes on under both.
func (s *sheet) columns(gap float64, left, right func()) {
	from, to, top := s.left, s.right, s.y
	middle := (from + to) / 2
	s.right = middle - gap/2
	left()
	bottom := s.y
	s.y, s.left, s.right = top, middle+gap/2, to
	right()
	s.y, s.left, s.right = max(s.y, bottom), from, to
}

// spoken joins texts for a screen reader, each ended as a sentence. A blank one is
// left out.
func spoken(texts []string) string {
	var said []string
	for _, t := range texts {
		if t == "" {
			continue
		}
		if !strings.HasSuffix(t, ".") {
			t += "."
		}
		said = append(said, t)
	}
	return strings.Join(said, " ")
}
