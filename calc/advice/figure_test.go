package advice

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"saltbite/calc/drawing"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/quantity"
	"saltbite/testdata"
)

// Every answer is one of the table's, each once and in its order, with its unit and a
// text; a range holds its value.
func TestAnswersFollowTheirTable(t *testing.T) {
	for _, text := range testdata.Everything {
		at := -1
		for _, a := range askText(text).Answers {
			place := -1
			for i, row := range field.Answers {
				if row.Name == a.Name {
					place = i
				}
			}
			if place <= at {
				t.Errorf("%q stands after %q", a.Name, field.Answers[max(at, 0)].Name)
				continue
			}
			at = place
			if a.Unit != field.Answers[at].Unit || a.Text == "" {
				t.Errorf("%+v", a)
			}
			if low, high := a.Low, a.High; low != nil && *low > a.Value*(1+1e-9) || high != nil && *high < a.Value*(1-1e-9) || (low != nil || high != nil) != (a.Range != "") {
				t.Errorf("%s is %v, from %v to %v, %q", a.Name, a.Value, low, high, a.Range)
			}
		}
	}
}

// The curve has a band where the efficiency is common practice, and none where the
// weighing found it or nothing else is likely.
func TestBandOfTheCurve(t *testing.T) {
	for text, want := range map[string]bool{
		oneCopper + "depth=0.2&current=0.3":                                                     true,
		"metal=copper&salt=common+salt&depth=0.1&area=10&density=20":                            true,
		oneCopper + "depth=0.2&current=0.4&time=60&before=24.6+g&after=24.15+g":                 false,
		oneCopper + "depth=0.2&current=0.3&efficiencyLow=100&efficiencyHigh=100&efficiency=100": false,
	} {
		band := false
		for _, s := range Draw(job.Work(field.Read(text))).Curve.Shapes {
			band = band || s.Role == drawing.Band
		}
		if band != want {
			t.Errorf("%s: a band is drawn: %v", text, band)
		}
	}
}

// The card tells depth and time in its rows only where no sentence of it does.
func TestCardTellsADepthOnce(t *testing.T) {
	for text, want := range map[string]bool{
		oneCopper + "depth=0.2&current=0.3": false,
		oneCopper + "time=60&current=0.3":   false,
		oneCopper + "depth=0.2":             true,
	} {
		words := Draw(job.Work(field.Read(text))).Card.Words
		if strings.Contains(words, " depth: ") != want || strings.Contains(words, " time: ") {
			t.Errorf("%s: %s", text, words)
		}
	}
}

// What is said of volts that lack counts the cable's own: 20 A over 2 x 2 m of 1 mm2 of
// copper (1/58 ohm mm2/m, IACS) lose 1.38 V on it.
func TestLackingVoltsCountTheCable(t *testing.T) {
	const job = "metal=copper&area=666.7&depth=0.1&density=30&strength=150&gap=75&cathode=700&wire=1.128379&volts=1&"
	needs := func(r Reply) (volts string) {
		for _, c := range r.Cautions {
			if c.Code == "supply-volts" {
				_, after, _ := strings.Cut(c.Text, "may need ")
				volts, _, _ = strings.Cut(after, ",")
			}
		}
		return volts
	}
	bare, wired := askText(job), askText(job+"wireLength=2")
	drop, cell := wired.value("wireDrop"), wired.value("cellVolts")
	if drop < 0.5 {
		t.Fatalf("the cable takes %v V", drop)
	}
	for _, x := range []struct {
		said string
		want float64
	}{{needs(bare), cell}, {needs(wired), cell + drop}} {
		said, _, _ := strings.Cut(x.said, " ")
		if got := parsed(t, said); got < x.want*0.99 || got > x.want*1.01 {
			t.Errorf("it is said to need %s, not %v V", x.said, x.want)
		}
	}
}

// What a log says of its efficiency is per cent in figures and in text, and in inches
// for those who etch in inches.
func TestTrialInPerCent(t *testing.T) {
	r := Trial(job.Try([]*field.Set{field.Read(oneCopper + "current=0.5&time=60&before=24.6+g&after=24.04+g")}, field.Read("")))
	for _, a := range r.Answers {
		if a.Unit != "%" {
			continue
		}
		said, unit, _ := strings.Cut(a.Text, " ")
		if got := parsed(t, said); unit != "%" || got < a.Value*0.995 || got > a.Value*1.005 {
			t.Errorf("%s is %v, and is printed as %q", a.Name, a.Value, a.Text)
		}
	}
	// Of 94.48, 95.32 and 96.16 % the next run lies round the mean, further out than any of them.
	var three []*field.Set
	for _, after := range []string{"24.040", "24.035", "24.030"} {
		three = append(three, field.Read(oneCopper+"current=0.5&time=60&before=24.6+g&after="+after+"+g"))
	}
	told := map[string]float64{}
	for _, a := range Trial(job.Try(three, field.Read(""))).Answers {
		told[a.Name] = a.Value
	}
	if mean, low, high := told["efficiency"], told["efficiencyLow"], told["efficiencyHigh"]; !within(mean, 95.32) || !within(low+high, 2*mean) || !(low < 94.4 && low > 80) {
		t.Errorf("%v", told)
	}
	us := Log(job.Log(job.ReadLog(oneCopper+"units=us&depth=0.002+in&current=0.5&time=60&before=24.6+g&after=24.04+g")), 1)
	if row := us.Runs[0]; row.Found != "0.00245 in" || row.Wanted != "0.00200 in" { // 0.0622 mm
		t.Errorf("%+v", row)
	}
	inches := false
	for _, s := range us.Found.Shapes {
		inches = inches || s.Text == "found, in"
	}
	if !inches {
		t.Error("the runs are not drawn in inches")
	}
}

func parsed(t *testing.T, figure string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(figure, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// The shares of an alloy are told in per cent; of the catalogue's, the middles of what
// standards allow add up to 100 within a few.
func TestCompositionInPerCent(t *testing.T) {
	for _, name := range []string{"C26000", "C75200", "sterling", "C51000"} {
		words := strings.Fields(askText("metal=" + name).Metals[0].Composition)
		sum := 0.0
		for i := 0; i < len(words); i += 2 {
			sum += parsed(t, words[i])
		}
		if sum < 97 || sum > 103 {
			t.Errorf("%s adds up to %.4g %%: %q", name, sum, words)
		}
	}
}

// A class on the mains (230 V, IEC 60038) is told to stop, and nothing else.
func TestClassThatIsStopped(t *testing.T) {
	m := Class(job.Teach([]field.Named{{Name: "Tag", Set: field.Read("metal=brass&area=10&depth=0.1")}}, field.Read("amps=2&volts=230")))
	if len(m.Cautions) == 0 || m.Cautions[0].Level != Stop || m.Sentence != m.Cautions[0].Text {
		t.Errorf("%q, %+v", m.Sentence, m.Cautions)
	}
}

// What is not finite is no answer, and no end of a range.
func TestAnswersAreFinite(t *testing.T) {
	row := field.AnswerDepth.Row()
	for x, want := range map[float64]bool{0: true, 1e-4: true, math.Inf(1): false, math.Inf(-1): false} {
		if finite(x) != want || (end(quantity.Known(x), row) != nil) != want {
			t.Errorf("%v is an answer: %v", x, !want)
		}
	}
	if finite(math.NaN()) || end(quantity.Optional{}, row) != nil {
		t.Error("nothing is an answer")
	}
}
