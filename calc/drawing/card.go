package drawing

import (
	"math"
	"strconv"
)

// Card is the bench card: half a sheet of paper that a job can be run by, away
// from the page.
type Card struct {
	US       bool
	Title    string // the metal
	Barred   bool   // nothing is to be etched at all
	Sentence string
	Likely   string // the range of what the sentence says
	Supply   string // whether the supply can do it; "" where none is given
	Settings []Row
	Stops    []Stage // of stopping out; empty where nothing is stopped out
	Steps    [3]Step // switching on, half-way, ready
	Checks   []string
	Cautions []Warning
	Waste    []string
}

// Row is a figure with its name; one without a figure is to be written in.
type Row struct{ Word, Figure string }

// Step is a moment of the run; what is blank is to be written in.
type Step struct{ Word, Clock, Weight string }

// Stage is one step of stopping out: how deep in all, on how much metal, for how
// long and at what current.
type Stage struct{ Depth, Area, Time, Current string }

// Warning is a caution in its card form.
type Warning struct {
	Level Level
	Text  string
}

// Level is how grave a warning is.
type Level uint8

const (
	Note Level = iota
	Warn
	Stop
)

// The paper, mm: A5, and half of a US letter.
const (
	a5Width, a5Height     = 148, 210
	halfWidth, halfHeight = 139.7, 215.9
	cardMargin            = 8.5
)

// cardPaper is the size of a card.
func cardPaper(us bool) (width, height float64) {
	if us {
		return halfWidth, halfHeight
	}
	return a5Width, a5Height
}

// typeSizes are those of a card, mm, with the height of a line to write on and
// the gap beside a heading's rule.
type typeSizes struct{ size, leading, title, sentence, rule, gap float64 }

// line is the height of a line.
func (t typeSizes) line() float64 { return t.size * t.leading }

// tightness goes from the most readable to the smallest that is allowed.
var tightness = [...]typeSizes{
	{3.8, 1.3, 6.4, 5.2, 9, 1.4},
	{3.5, 1.25, 5.6, 4.6, 8, 1.2},
	{3.3, 1.22, 5, 4, 7, 0.9},
	{nine, 1.13, 4.2, 3.4, 5.6, 0.5},
}

// Draw draws the card at the largest type at which all of it fits. Where not
// all cautions fit at the smallest, the least grave are counted instead: the
// page has them.
func (c *Card) Draw() *Drawing {
	const last = len(tightness) - 1
	for tight := 0; ; {
		made, used := c.lay(tight, c.lighter())
		if used <= 1 {
			return made
		}
		if tight == last {
			break
		}
		for most := 1.1 * tightness[tight].line() / used; tight < last; {
			if tight++; tightness[tight].line() <= most {
				break
			}
		}
	}
	for shown := c.lighter() - 1; ; shown-- {
		if made, used := c.lay(last, shown); used <= 1 || shown <= 0 {
			return made
		}
	}
}

// cardSheet is a card in the making.
type cardSheet struct {
	sheet
	Card
	bottom float64
	ruled  float64
}

// lay writes the card, and says what share of the paper's height it takes.
func (c *Card) lay(tight, cautions int) (made *Drawing, used float64) {
	set := tightness[tight]
	s := &cardSheet{Card: *c}
	s.drawing = &Drawing{Title: "Bench card", Words: c.words()}
	s.drawing.Width, s.drawing.Height = cardPaper(c.US)
	s.left, s.right, s.y, s.bottom = cardMargin, s.drawing.Width-cardMargin, cardMargin, s.drawing.Height-cardMargin
	s.size, s.leading, s.gap, s.ruled = set.size, set.leading, set.gap, set.rule
	s.title(set.title)
	s.sentence(set.sentence)
	if !c.Barred {
		s.columns(4, s.settings, s.wiring)
		s.stages()
		s.steps()
		s.checks()
	}
	s.cautions(cautions)
	s.waste()
	if !c.Barred {
		s.log()
	}
	return s.drawing, s.y / s.bottom
}

func (s *cardSheet) title(size float64) {
	s.fit(Title, s.Title, s.left, size, s.width()-widthOf("Bench card", s.size, false)-3, true)
	s.drawing.write(Small, "Bench card", s.right, s.y+ascent*size, s.size, End)
	s.y += s.step(size)
	s.drawing.add(Frame, segment(s.left, s.y-0.6, s.right, s.y-0.6))
	s.y += 0.8
}

// sentence writes the answer and, above all else, what forbids it.
func (s *cardSheet) sentence(size float64) {
	s.paragraph(Word, s.Sentence, size, true)
	s.paragraph(Small, s.Likely, s.size, false)
	s.supply()
	for _, w := range s.Cautions {
		if w.Level == Stop {
			s.warning(w)
		}
	}
	s.y += 0.8
}

// supply writes in one paragraph whether the supply can do the job.
func (s *cardSheet) supply() {
	if s.Supply != "" && !s.Barred {
		s.paragraph(Word, supplyWord+s.Supply, s.size, true)
	}
}

const supplyWord = "Supply: "

// settings writes what is to be set, and what is to be written in.
func (s *cardSheet) settings() {
	s.heading("Settings")
	figure := s.left
	for _, r := range s.Settings {
		figure = math.Max(figure, s.left+widthOf(r.Word, s.size, false)+2)
	}
	for _, r := range s.Settings {
		s.put(Word, r.Word, s.left, s.size, Start, false)
		if r.Figure == "" {
			s.rule(figure, s.right, s.size)
		} else {
			s.fit(Figure, r.Figure, figure, s.size, s.right-figure, true)
		}
		s.y += s.step(s.size)
	}
}

// mostStages are written; of more the page has the rest.
const mostStages = 8

// stages writes the table of what is stopped out, step by step.
func (s *cardSheet) stages() {
	if len(s.Stops) == 0 {
		return
	}
	s.heading("Stopping out")
	wide := s.width() / 5
	row := func(role Role, texts ...string) {
		for i, text := range texts {
			s.fit(role, text, s.left+float64(i)*wide, s.size, wide-2, role == Figure)
		}
		s.y += s.step(s.size)
	}
	row(Word, "step", "depth", "exposed", "time", "current")
	for i, stage := range s.Stops {
		if i == mostStages {
			s.paragraph(Word, "And "+strconv.Itoa(len(s.Stops)-i)+" more, on the page.", s.size, true)
			break
		}
		row(Figure, strconv.Itoa(i+1), stage.Depth, stage.Area, stage.Time, stage.Current)
	}
}

// steps writes when and how heavy: at switching on, half-way and the end.
func (s *cardSheet) steps() {
	s.ruleOff()
	const gap = 3
	word := widthOf("Times", s.size, true) + 3
	wide := (s.width() - word) / float64(len(s.Steps))
	row := func(name string, role Role, text func(Step) string) {
		if name != "" {
			s.put(Word, name, s.left, s.size, Start, false)
		}
		for i, step := range s.Steps {
			x := s.left + word + float64(i)*wide
			if text(step) == "" {
				s.rule(x, x+wide-gap, s.size)
				continue
			}
			s.fit(role, text(step), x, s.size, wide-gap, role == Figure)
		}
		s.y += s.step(s.size) + s.gap/2
	}
	s.put(Heading, "Times", s.left, s.size, Start, true)
	row("", Word, func(t Step) string { return t.Word })
	row("clock", Figure, func(t Step) string { return t.Clock })
	row("weighs", Figure, func(t Step) string { return t.Weight })
}

// checks writes what to look at before switching on, numbered down two columns.
func (s *cardSheet) checks() {
	s.heading("Before switching on")
	half := (len(s.Checks) + 1) / 2
	s.columns(4, func() { s.numbered(0, half) }, func() { s.numbered(half, len(s.Checks)) })
}

// numbered writes some of the checks with their numbers.
func (s *cardSheet) numbered(from, to int) {
	number := widthOf("10 ", s.size, false)
	for i := from; i < to; i++ {
		s.put(Figure, strconv.Itoa(i+1), s.left, s.size, Start, false)
		s.indented(Word, s.Checks[i], s.left+number, s.size, false)
	}
}

// lighter counts the cautions that are no stops.
func (c *Card) lighter() (n int) {
	for _, w := range c.Cautions {
		if w.Level != Stop {
			n++
		}
	}
	return n
}

// cautions writes so many of them, the gravest first; stops stand above already.
func (s *cardSheet) cautions(shown int) {
	if s.lighter() == 0 {
		return
	}
	s.heading("Cautions")
	hidden := 0
	for _, level := range []Level{Warn, Note} {
		for _, w := range s.Cautions {
			switch {
			case w.Level != level:
			case shown > 0:
				s.warning(w)
				shown--
			default:
				hidden++
			}
		}
	}
	if hidden > 0 {
		s.paragraph(Word, "And "+strconv.Itoa(hidden)+" more, on the page.", s.size, true)
	}
}

func (s *cardSheet) warning(w Warning) {
	mark := s.size + 1.2
	middle, y, r := s.left+s.size/2, s.y+s.size*0.5, s.size*0.42
	switch w.Level {
	case Stop:
		s.drawing.add(StopMark, octagon(middle, y, r))
		s.indented(Word, "Stop. "+w.Text, s.left+mark, s.size, true)
	case Warn:
		s.drawing.add(WarnMark, from(middle, y-r).line(middle+r, y+0.8*r).line(middle-r, y+0.8*r).close())
		s.indented(Word, w.Text, s.left+mark, s.size, true)
	default:
		s.drawing.add(Frame, segment(middle-r/2, y, middle+r/2, y))
		s.indented(Word, w.Text, s.left+mark, s.size, false)
	}
}

// octagon is the shape that says stop.
func octagon(x, y, r float64) *path {
	p := new(path)
	for i := range 8 {
		sin, cos := math.Sincos(math.Pi / 8 * float64(2*i+1))
		if i == 0 {
			p = p.move(x+r*cos, y+r*sin)
			continue
		}
		p = p.line(x+r*cos, y+r*sin)
	}
	return p.close()
}

func (s *cardSheet) waste() {
	s.heading("Afterwards")
	for _, line := range s.Waste {
		s.paragraph(Word, line, s.size, false)
	}
}

// logged is what to write down of the run, in rows.
var logged = [][]string{{"date", "amperes at the start", "at the end"}, {"off at", "weight", "depth measured"}}

// log ends the card with lines for what really happened, as many for remarks
// as there is room for.
func (s *cardSheet) log() {
	s.heading("What really happened")
	for _, row := range logged {
		s.y += s.ruled - s.step(s.size)
		s.blanks(row)
	}
	for first := true; first || s.y+s.ruled <= s.bottom; first = false {
		s.y += s.ruled - s.step(s.size)
		if first {
			s.blanks([]string{"remarks"})
			continue
		}
		s.rule(s.left, s.right, s.size)
		s.y += s.step(s.size)
	}
}

// blanks writes words with a line to write on behind each.
func (s *cardSheet) blanks(names []string) {
	var words float64
	for _, name := range names {
		words += widthOf(name, s.size, false) + 3
	}
	line := (s.width() - words) / float64(len(names))
	x := s.left
	for i, name := range names {
		s.put(Word, name, x, s.size, Start, false)
		x += widthOf(name, s.size, false) + 1
		end := x + line
		if i == len(names)-1 {
			end = s.right
		}
		s.rule(x, end, s.size)
		x = end + 2
	}
	s.y += s.step(s.size)
}

// words says all that stands on the card.
func (c *Card) words() string {
	said := []string{"Bench card: " + c.Title, c.Sentence, c.Likely}
	if c.Supply != "" && !c.Barred {
		said = append(said, supplyWord+c.Supply)
	}
	for _, level := range []Level{Stop, Warn, Note} {
		for _, w := range c.Cautions {
			if w.Level == level {
				said = append(said, levelWords[level]+w.Text)
			}
		}
	}
	for _, r := range c.Settings {
		said = append(said, r.Word+": "+orBlank(r.Figure))
	}
	for i, t := range c.Stops {
		said = append(said, "Step "+strconv.Itoa(i+1)+": "+t.Depth+" on "+t.Area+", "+t.Time+" at "+t.Current)
	}
	for _, t := range c.Steps {
		said = append(said, t.Word+": clock "+orBlank(t.Clock)+", weighs "+orBlank(t.Weight))
	}
	said = append(said, "Wiring: the work hangs on plus, the red cable; the cathode on minus, the black cable")
	for i, check := range c.Checks {
		said = append(said, "Check "+strconv.Itoa(i+1)+": "+check)
	}
	return spoken(append(said, c.Waste...))
}

var levelWords = [...]string{Note: "", Warn: "Caution: ", Stop: "Stop: "}

func orBlank(text string) string {
	if text == "" {
		return "to be written in"
	}
	return text
}
