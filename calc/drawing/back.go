package drawing

import "strconv"

// Back is what may stand on the back of a bench card: the likely causes of what is
// seen of a piece, and what to do.
type Back struct {
	US     bool
	Seen   string
	Causes []Cause // likeliest first
}

// Cause is a likely cause: what it is, what to do, and what that rests on.
type Cause struct{ Text, Do, Source string }

// backSizes are those of the back, mm: there is room for all causes of one thing.
var backSizes = typeSizes{3.8, 1.3, 6.4, 5.2, 9, 1.4}

const backTitle = "What went wrong"

// Draw draws the back, and lines for what helped as far as there is room.
func (b *Back) Draw() *Drawing {
	set := backSizes
	s := &sheet{size: set.size, leading: set.leading, gap: set.gap, left: cardMargin, y: cardMargin}
	s.drawing = &Drawing{Title: backTitle, Words: b.words()}
	s.drawing.Width, s.drawing.Height = cardPaper(b.US)
	s.right = s.drawing.Width - cardMargin
	s.fit(Title, backTitle, s.left, set.title, s.width(), true)
	s.y += s.step(set.title)
	s.paragraph(Word, b.Seen, set.sentence, true)
	for i, c := range b.Causes {
		s.ruleOff()
		number := widthOf("10 ", s.size, false)
		s.put(Figure, strconv.Itoa(i+1), s.left, s.size, Start, false)
		s.indented(Word, c.Text, s.left+number, s.size, true)
		s.indented(Word, c.Do, s.left+number, s.size, false)
		s.indented(Small, restsOn(c.Source), s.left+number, s.size, false)
	}
	s.heading("What helped")
	for bottom := s.drawing.Height - cardMargin; s.y+set.rule <= bottom; s.y += s.step(s.size) {
		s.y += set.rule - s.step(s.size)
		s.rule(s.left, s.right, s.size)
	}
	return s.drawing
}

func restsOn(source string) string { return "Rests on " + source + "." }

// words says all that stands on the back.
func (b *Back) words() string {
	said := []string{backTitle + ": " + b.Seen}
	for i, c := range b.Causes {
		said = append(said, strconv.Itoa(i+1)+": "+c.Text, c.Do, restsOn(c.Source))
	}
	return spoken(said)
}
