package drawing_test

import (
	"math"
	"math/rand/v2"
	"net/url"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/advice"
	"saltbite/calc/bite"
	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/testdata"
)

const (
	screenLeast  = 4.375 // mm of type in a frame of 100 mm: 14 px where it is shown 320 px wide
	paperLeast   = 3.175 // mm: 9 points
	cardMargin   = 8
	labelMargin  = 3
	printRounded = 0.0051 // of a figure to three digits
)

// look finds what is wrong with all the drawings of a job.
func look(t testing.TB, d advice.Drawings) (wrong []string) {
	for _, one := range []struct {
		name          string
		drawing       *drawing.Drawing
		margin, least float64
	}{
		{"section", d.Section, 0, screenLeast}, {"curve", d.Curve, 0, screenLeast},
		{"card", d.Card, cardMargin, paperLeast}, {"back", d.Back, cardMargin, paperLeast}, {"label", d.Label, labelMargin, paperLeast},
	} {
		if one.drawing == nil {
			continue
		}
		for _, w := range sound(t, one.drawing, one.margin, one.least) {
			wrong = append(wrong, one.name+": "+w)
		}
	}
	return wrong
}

// somewhere is a value spread evenly over decades, as a person might type it.
func somewhere(r *rand.Rand, least, most float64) string {
	return strconv.FormatFloat(least*math.Pow(most/least, r.Float64()), 'g', 1+r.IntN(4), 64)
}

// anyJob is a job of random fields: mostly what a bench has, now and then what
// the fields just allow. Invented.
func anyJob(r *rand.Rand) url.Values {
	v := url.Values{}
	pick := func(name string, texts ...string) {
		if r.IntN(3) > 0 {
			v.Set(name, texts[r.IntN(len(texts))])
		}
	}
	pick("metal", "copper", "brass", "C26000", "sterling", "fine silver", "nickel silver 18 %", "CuNi18Zn19Pb1", "bronze", "C17200", "CuZn39Pb2",
		"silver clay", "Cu 70 Zn 30", "leaded nickel silver")
	pick("salt", "copper sulfate", "silver nitrate", "common salt", "anhydrous copper sulfate")
	pick("hangerMetal", "copper", "stainless", "aluminium")
	pick("position", "face-up", "face-down", "hanging")
	pick("units", "us", "metric")
	pick("sides", "1", "2")
	pick("keep", "50 %", "0.5 mm", "5 %", "95 %")
	pick("mixed", "3 May 2026", "the Tuesday before the summer school")
	pick("start", "14:05", "23:59")
	pick("readings", "0:00 0.3; 1:00 0.28", "9:00 0.2; 9:30 0.19; 11:00 0.18")
	pick("sheet", "18 ga", "0.3", "0.8", "1", "3")
	pick("pieces", "1", "3", "12")
	pick("find", "depth", "time")
	pick("seen", field.Seen.Row().Choices...)
	for _, f := range []struct {
		name        string
		least, most float64
	}{
		{"width", 10, 300}, {"height", 10, 300}, {"open", 1, 100}, {"area", 0.1, 1000}, {"edge", 1, 5000},
		{"extra", 0.1, 10}, {"hanger", 0.3, 2}, {"hangerLength", 5, 80}, {"depth", 0.01, 1}, {"density", 2, 300},
		{"current", 0.01, 20}, {"time", 1, 2000}, {"efficiency", 60, 120}, {"undercut", 0.1, 2}, {"line", 0.02, 5}, {"space", 0.02, 5},
		{"volts", 0.5, 30}, {"amps", 0.1, 10}, {"gap", 10, 200}, {"cathode", 1, 1000}, {"wire", 0.2, 2}, {"wireLength", 0.5, 5},
		{"strength", 5, 400}, {"volume", 0.1, 50}, {"coldest", 0.1, 20}, {"etched", 1, 1000}, {"before", 1, 1000}, {"after", 1, 1000},
		{"volumeNow", 0.1, 50}, {"gravity", 1, 1.3}, {"paused", 1, 100},
	} {
		switch {
		case r.IntN(3) == 0:
		case r.IntN(40) == 0 && f.name != "gravity":
			v.Set(f.name, somewhere(r, f.least/1000, f.most*1000))
		default:
			v.Set(f.name, somewhere(r, f.least, f.most))
		}
	}
	return v
}

// Nothing of 5,000 random jobs lies out of its frame, over another text, on
// metal or in type too small; and all kinds of drawings come up often.
func TestRandomJobs(t *testing.T) {
	r := rand.New(rand.NewPCG(20, 26))
	jobs := 5000
	if runtime.GOOS == "js" {
		jobs = 500 // the same code, an order of magnitude slower
	}
	var sections, curves, cards, backs, labels, counted int
	for range jobs {
		fields := anyJob(r)
		d := advice.Draw(job.Work(field.Read(fields.Encode())))
		if wrong := look(t, d); len(wrong) > 0 {
			t.Errorf("%s\n%s", fields.Encode(), strings.Join(wrong, "\n"))
		}
		count := func(n *int, d *drawing.Drawing) {
			if d != nil {
				*n++
			}
		}
		count(&sections, d.Section)
		count(&curves, d.Curve)
		count(&cards, d.Card)
		count(&backs, d.Back)
		count(&labels, d.Label)
		if d.Card != nil && shows(d.Card, "more, on the page.") {
			counted++
		}
	}
	if sections < jobs/3 || curves < jobs/10 || cards < jobs/2 || backs < jobs/2 || labels < jobs/2 {
		t.Errorf("only %d sections, %d curves, %d cards, %d backs, %d labels", sections, curves, cards, backs, labels)
	}
	t.Logf("%d sections, %d curves, %d cards (%d of them count cautions that find no room), %d labels", sections, curves, cards, counted, labels)
}

// The same of every vector's job, and of those that give every answer.
func TestVectorsDrawn(t *testing.T) {
	vectors, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	jobs := testdata.Everything
	for _, v := range vectors {
		jobs = append(jobs, v.Text())
	}
	for _, text := range jobs {
		d := advice.Draw(job.Work(field.Read(text)))
		if wrong := look(t, d); len(wrong) > 0 {
			t.Errorf("%s\n%s", text, strings.Join(wrong, "\n"))
		}
		if d.Card != nil && shows(d.Card, "more, on the page.") {
			t.Errorf("%s: not all its cautions are on the card", text)
		}
	}
}

func shows(d *drawing.Drawing, words string) bool {
	for _, s := range d.Shapes {
		if strings.Contains(s.Text, words) {
			return true
		}
	}
	return false
}

// figures are the numbers of a picture by the word over each.
func figures(d *drawing.Drawing) map[string]string {
	all := map[string]string{}
	for i, s := range d.Shapes {
		if s.Role == drawing.Figure && i > 0 && d.Shapes[i-1].Role == drawing.Word {
			all[d.Shapes[i-1].Text] = s.Text
		}
	}
	return all
}

// scales reads off a section how many mm of drawing stand for a metre across,
// by its scale bar, and down, by the factor that it states.
func scales(t *testing.T, d *drawing.Drawing) (across, down float64) {
	factor := 1.0
	for i, s := range d.Shapes {
		if s.Role == drawing.Scale {
			bar := boxOfPath(t, s.Path)
			length, err := quantity.Read(d.Shapes[i+1].Text, "", quantity.Length)
			if err != nil {
				t.Fatal(err)
			}
			across = (bar.right - bar.left) / length.Value
		}
		if _, rest, ok := strings.Cut(s.Text, "depths drawn "); ok {
			number, _, _ := strings.Cut(rest, "×")
			f, err := strconv.ParseFloat(number, 64)
			if err != nil {
				t.Fatal(err)
			}
			factor = f
		}
	}
	return across, across * factor
}

// bites are what was etched away from the upper face.
func bites(d *drawing.Drawing) (paths []string) {
	for _, s := range d.Shapes {
		if s.Role == drawing.Gone && strings.HasPrefix(strings.SplitN(s.Path, " ", 2)[1], "18A") {
			paths = append(paths, s.Path)
		}
	}
	return paths
}

// The area of the drawn bite is the volume of the law over its length, within
// 0.1 %, while the line stands; and the figures beside it are the answers.
func TestSectionAgreesWithTheSums(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	checked := 0
	for range 2000 {
		v := url.Values{"depth": {somewhere(r, 0.02, 0.6)}, "sheet": {somewhere(r, 0.3, 3)}, "line": {somewhere(r, 0.1, 3)},
			"space": {somewhere(r, 0.05, 3)}, "undercut": {somewhere(r, 0.2, 1.5)}, "sides": {strconv.Itoa(1 + r.IntN(2))},
			"units": {[]string{"metric", "us"}[r.IntN(2)]}}
		answers := map[string]advice.Figure{}
		for _, a := range advice.Answer(job.Work(field.Read(v.Encode()))).Answers {
			answers[a.Name] = a
		}
		section := advice.Draw(job.Work(field.Read(v.Encode()))).Section
		if section == nil {
			if _, left := answers["left"]; left {
				t.Fatalf("%s: no section", v.Encode())
			}
			continue // eaten through
		}
		drawn := figures(section)
		for word, name := range map[string]string{"etched": "depth", "left": "left", "line keeps": "lineLeft", "gap widens to": "spaceBecomes"} {
			text, ok := drawn[word]
			if !ok {
				continue
			}
			read, err := quantity.Read(text, "", quantity.Length)
			if mm := read.Value * 1000; err != nil || math.Abs(mm-answers[name].Value) > printRounded*math.Abs(answers[name].Value) {
				t.Errorf("%s: %s is drawn as %q, the answer is %v mm", v.Encode(), word, text, answers[name].Value)
			}
		}
		if answers["left"].Value <= 0 || answers["lineLeft"].Value <= 0 {
			continue
		}
		amount := func(name string) float64 { x, _ := strconv.ParseFloat(v.Get(name), 64); return x }
		depth, space := amount("depth")/1000, amount("space")/1000
		across, down := scales(t, section)
		volume := bite.Work{Area: space, Edge: 2, Undercut: amount("undercut"), Pieces: 1}.Volume(depth).SI // of one metre
		for _, path := range bites(section) {
			checked++
			if got := area(t, path) / across / down; math.Abs(got-volume) > 0.001*volume {
				t.Errorf("%s: the drawn bite has %.5g mm², the sum %.5g", v.Encode(), got*1e6, volume*1e6)
			}
		}
	}
	if checked < 1000 {
		t.Errorf("only %d bites were compared", checked)
	}
}

// Once the line is gone the two bites meet under the resist: the drawn one has
// the area under the deeper of the two quarter ellipses at every place, which
// is less than the law's sum.
func TestLostLineMerges(t *testing.T) {
	const depth, undercut, line, space = 0.4e-3, 0.8, 0.3e-3, 0.5e-3
	section := advice.Draw(job.Work(field.Read("depth=0.4&undercut=0.8&line=0.3&space=0.5&sheet=1"))).Section
	across, down := scales(t, section)
	paths := bites(section)
	if len(paths) != 1 {
		t.Fatalf("%d bites are drawn apart", len(paths))
	}
	lines := 0
	for _, s := range section.Shapes {
		if s.Role == drawing.Lost {
			lines++
		}
	}
	under := func(away float64) float64 { // how deep, so far under the resist
		if away >= undercut*depth {
			return 0
		}
		return depth * math.Sqrt(1-away*away/(undercut*undercut*depth*depth))
	}
	const steps = 20000
	var ends, ridge float64
	for i := range steps {
		share := (float64(i) + 0.5) / steps
		ends += 2 * under(share*undercut*depth) * undercut * depth / steps
		ridge += math.Max(under(share*line), under((1-share)*line)) * line / steps
	}
	want := ends + float64(lines)*ridge + float64(lines+1)*space*depth
	got := area(t, paths[0]) / across / down
	sum := bite.Work{Area: float64(lines+1) * space, Edge: 2 * float64(lines+1), Undercut: undercut, Pieces: 1}.Volume(depth).SI
	if math.Abs(got-want) > 0.001*want || !(got < sum) || lines == 0 {
		t.Errorf("%d lost lines: %.6g mm², want %.6g, the law says %.6g", lines, got*1e6, want*1e6, sum*1e6)
	}
}

// What is drawn in one way or another says so.
func TestSectionSaysHowItIsDrawn(t *testing.T) {
	for text, words := range map[string][]string{
		"depth=0.2&sheet=1&line=0.5&space=0.4":            {"one scale", "0.300 mm", "0.800 mm is left of the sheet of 1.00 mm"},
		"depth=0.02&sheet=3&line=1&space=1":               {"times as large as widths", "is left out"},
		"depth=0.2":                                       {"thickness is not given", "are examples"},
		"depth=0.4&sheet=1&sides=2":                       {"on both sides", "0.200 mm is left"},
		"sheet=1":                                         {"0.500 mm deep, the deepest that this sheet allows, as no depth is known"},
		"depth=0.4&line=0.2":                              {"under 0.200 mm of resist, is gone"},
		"metal=copper&density=30&time=1+h":                {"as found"},
		"bites=0.05+12;+0.1+9&metal=copper&density=30":    {"0.150 mm deep, all steps together"},
		"depth=0.2&undercut=0":                            {"is not etched under the resist"},
		"depth=0.2&sheet=1&keep=0.9+mm":                   {"less than the 0.900 mm to leave"},
		"depth=0.2&sheet=18+ga&line=0.5&space=1&units=us": {"0.00787 in deep"},
	} {
		section := advice.Draw(job.Work(field.Read(text))).Section
		for _, w := range words {
			if section == nil || !strings.Contains(section.Words, w) {
				t.Errorf("%s: %v does not say %q", text, section, w)
			}
		}
	}
	for _, text := range []string{"line=0.5&metal=copper", "depth=0.5&sheet=0.4"} {
		if d := advice.Draw(job.Work(field.Read(text))); d.Section != nil {
			t.Errorf("%s: a section is drawn of nothing that is left", text)
		}
	}
}

// The curve passes through the job's own end, and says what it shows.
func TestCurve(t *testing.T) {
	for text, words := range map[string][]string{
		"metal=copper&depth=0.2&density=30":                                         {"30.0 mA/cm²", "0.200 mm is reached after 5 h 1 min; half-way is at 2 h 30 min", "90.0 % to 105 %"},
		"metal=copper&depth=0.2":                                                    {"30.0 mA/cm², as suggested"},
		"metal=copper&depth=0.1&density=30&sheet=0.3&line=0.12":                     {"The sheet's limit is 0.150 mm.", "The finest line is gone at 0.120 mm."},
		"metal=copper&depth=0.1&density=30&sheet=3":                                 {"1.50 mm, deeper than is drawn"},
		"metal=copper&area=10&depth=0.2&readings=0:00+0.2;1:00+0.19":                {"0.190 A, the last reading", "By the ammeter it is 0.0259 mm deep after 1 h"},
		"metal=copper&area=10&depth=0.2&current=0.2&time=1+h&before=20&after=19.77": {"efficiency that the weighing found", "By its weight it is 0.0258 mm deep after 1 h"},
		"metal=copper&salt=common+salt&depth=0.1&density=30":                        {"copper(II)"},
		"metal=copper&depth=0.2&area=5&edge=800&density=30&units=us":                {"0.00787 in is reached"},
	} {
		curve := advice.Draw(job.Work(field.Read(text))).Curve
		for _, w := range words {
			if curve == nil || !strings.Contains(curve.Words, w) {
				t.Errorf("%s: %v does not say %q", text, curve, w)
			}
		}
	}
	curve := advice.Draw(job.Work(field.Read("metal=copper&depth=0.2&area=5&edge=800&density=30"))).Curve
	var line []point
	var target box
	for _, s := range curve.Shapes {
		switch {
		case s.Role == drawing.Line:
			line = points(t, s.Path)
		case s.Role == drawing.Target && !s.Dash:
			target = boxOfPath(t, s.Path)
		}
	}
	x, y := (target.left+target.right)/2, (target.top+target.bottom)/2
	for i := range line[1:] {
		if a, b := line[i], line[i+1]; a.x <= x && x <= b.x {
			if on := a.y + (b.y-a.y)*(x-a.x)/(b.x-a.x); math.Abs(on-y) > 0.05 { // a chord's sagitta
				t.Errorf("the curve passes %.3f mm from its target", on-y)
			}
			return
		}
	}
	t.Error("the curve does not reach its target")
}

// The longest job there is has its whole card on one page, stops first.
func TestLongestCard(t *testing.T) {
	d := advice.Draw(job.Work(field.Read("metal=CuNi18Zn19Pb1&width=90&height=25&open=38&edge=900&extra=1.5&pieces=2&depth=0.8&density=130&sheet=18&line=0.6&" +
		"hanger=22+ga&hangerLength=20&hangerMetal=stainless&volts=1&amps=.5&gap=60&cathode=8&wire=38+ga&wireLength=2&position=face-up&" +
		"salt=copper+sulfate&strength=550&volume=2&coldest=2&etched=200&start=14:05&before=60&units=us")))
	if wrong := look(t, d); len(wrong) > 0 {
		t.Error(strings.Join(wrong, "\n"))
	}
	t.Log(d.Card.Words)
	if !strings.Contains(d.Card.Words, "Stop: ") || strings.Index(d.Card.Words, "Stop: ") > strings.Index(d.Card.Words, "Caution: ") {
		t.Error("the stops are not first")
	}
}

// A card of a job that is barred gives nothing to set.
func TestBarredCard(t *testing.T) {
	for _, text := range []string{"metal=sterling&salt=copper+sulfate&depth=0.2&density=20", "metal=C17200&depth=0.2"} {
		card := advice.Draw(job.Work(field.Read(text))).Card
		if card == nil || shows(card, "Settings") || shows(card, "switched on") || !shows(card, "Stop.") {
			t.Errorf("%s: %v", text, card)
		}
	}
}

// The back of a card says what is seen and all that the reply says of its causes,
// in the reply's order; if nothing was seen, the card has no back.
func TestBackOfTheCard(t *testing.T) {
	for _, seen := range field.Seen.Row().Choices {
		worked := job.Work(field.Read("metal=copper&area=10&depth=0.2&density=30&seen=" + seen))
		back := advice.Draw(worked).Back
		if back == nil || !shows(back, "What went wrong") {
			t.Errorf("%s: the back is %v", seen, back)
			continue
		}
		at := 0
		for _, c := range advice.Answer(worked).Causes {
			next := strings.Index(back.Words, c.Text)
			if next < at || !strings.Contains(back.Words, c.Do) || !strings.Contains(back.Words, c.Source) {
				t.Errorf("%s: %s does not stand in its order in %q", seen, c.Code, back.Words)
			}
			at = next
		}
	}
	if back := advice.Draw(job.Work(field.Read("metal=copper&area=10&depth=0.2&density=30"))).Back; back != nil {
		t.Errorf("nothing is seen, and the back says %q", back.Words)
	}
}

// A label says the hazards of the salt in it as they are published.
func TestLabel(t *testing.T) {
	for text, words := range map[string][]string{
		"salt=copper+sulfate&strength=150&volume=2&mixed=3+May": {"Danger", "H302 harmful if swallowed", "H318 causes serious eye damage", "H410", "2.00 L at 150 g/L", "3 May"},
		"salt=anhydrous+copper+sulfate":                         {"Danger", "H318"},
		"salt=silver+nitrate&strength=60":                       {"Danger", "H272 may intensify fire, oxidiser", "H314"},
		"metal=C54400&etched=20&strength=100":                   {"Lead in it: H360Df", "phosphor bronze", "20.0 g"},
		"salt=common+salt":                                      {"Gathers copper", "Not a food container"},
	} {
		label := advice.Draw(job.Work(field.Read(text))).Label
		for _, w := range words {
			if label == nil || !strings.Contains(label.Words, w) {
				t.Errorf("%s: %v does not say %q", text, label, w)
			}
		}
	}
}
