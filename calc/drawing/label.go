package drawing

import "strings"

// Label is what goes on the jar that a bath is kept in.
type Label struct {
	Title    string // "Copper sulfate bath"
	Signal   string // the signal word, if there is one
	Holds    string // strength and volume; "" to be written in
	Mixed    string // when, as it was typed; "" to be written in
	Etched   string // the metals etched in it so far; there is always room for more
	Hazards  []string
	Warnings []string // the first stands out
}

// The label, mm, and how tightly it may be written.
const (
	labelWidth, labelHeight = 90, 55
	labelMargin             = 3
)

var labelTightness = [...]struct{ size, leading, title, gap float64 }{
	{3.6, 1.25, 5, 0.9},
	{3.4, 1.18, 4.7, 0.7},
	{nine, 1.1, 4.2, 0.3},
}

// Draw draws the label at the largest type at which all of it fits.
func (l *Label) Draw() *Drawing {
	var made *Drawing
	for _, set := range labelTightness {
		s := &sheet{left: labelMargin, right: labelWidth - labelMargin, y: labelMargin, size: set.size, leading: set.leading, gap: set.gap}
		s.drawing = &Drawing{Width: labelWidth, Height: labelHeight, Title: "Jar label", Words: l.words()}
		s.drawing.add(LabelEdge, rectangle(0, 0, labelWidth, labelHeight))
		l.lay(s, set.title)
		made = s.drawing
		if s.y <= labelHeight-labelMargin {
			break
		}
	}
	return made
}

func (l *Label) lay(s *sheet, title float64) {
	room := s.width() - widthOf(l.Signal, title, true) - 3
	if l.Signal != "" {
		s.put(Heading, l.Signal, s.right, title, End, true)
	}
	s.fit(Title, l.Title, s.left, title, room, true)
	s.y += s.step(title)
	s.blank("holds", l.Holds, s.left, s.right, 0)
	s.y += s.step(s.size)
	s.blank("mixed", l.Mixed, s.left, s.right, 0)
	s.y += s.step(s.size)
	s.blank("etched in it", l.Etched, s.left, s.right, 12)
	s.y += s.step(s.size)
	s.ruleOff()
	for _, h := range l.Hazards {
		s.paragraph(Word, h, s.size, false)
	}
	s.ruleOff()
	for i, w := range l.Warnings {
		s.paragraph(Word, w, s.size, i == 0)
	}
}

// blank writes a name with what is known, and a line for what is not: the
// whole place, or at least so much of it for more.
func (s *sheet) blank(name, text string, from, to, more float64) {
	s.put(Small, name, from, s.size, Start, false)
	from += widthOf(name, s.size, false) + 1.5
	if text != "" {
		s.fit(Figure, text, from, s.size, to-from-more, true)
		from += min(widthOf(text, s.size, true), to-from-more) + 1.5
	}
	if text == "" || more > 0 {
		s.rule(from, to, s.size)
	}
}

// words says all that stands on the label.
func (l *Label) words() string {
	said := []string{l.Title}
	if l.Signal != "" {
		said = append(said, l.Signal)
	}
	said = append(said, "Holds: "+orBlank(l.Holds), "Mixed: "+orBlank(l.Mixed), "Etched in it: "+orBlank(l.Etched))
	return "Jar label. " + spoken(append(append(said, l.Hazards...), strings.Join(l.Warnings, " ")))
}
