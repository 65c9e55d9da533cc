package picture

import (
	"math"
	"slices"
	"strings"
	"testing"

	"saltbite/calc/advice"
	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
)

// evened solves on a coarse grid, within a moment.
func evened(p artwork.Picture, fields string) (Evened, EvenReply) {
	e := even(p, field.Read(fields), 128, func(float64) {})
	return e, EvenSaid(e)
}

// answer is the value of an answer; not a number if it is absent.
func (r EvenReply) answer(name string) float64 {
	for _, a := range r.Answers {
		if a.Name == name {
			return a.Value
		}
	}
	return math.NaN()
}

// A plate of 40 mm that fills its bath is etched evenly, through 10 mm of a bath of 32.2
// mS/cm (10 % copper sulfate, CRC Handbook): 1 cm / (0.0322 S/cm x 16 cm2) = 1.941 ohm.
func TestEvenWhereAllIsExposed(t *testing.T) {
	_, r := evened(drawn(100, 100), "width=40&gap=10&vesselWidth=40&fill=40&salt=copper+sulfate+anhydrous&strength=10+%25&metal=copper&density=30&depth=0.2")
	for name, want := range map[string]float64{"least": 100, "most": 100, "spread": 0, "bathResistance": 1 / (0.0322 * 16)} {
		if got := r.answer(name); !(math.Abs(got-want) <= 0.002*want+1e-6) {
			t.Errorf("%s is %g, not %g", name, got, want)
		}
	}
	if want := "The shallowest part gets 100 % of the mean depth, the deepest 100 %: 0.20 mm and 0.20 mm."; r.Sentence != want {
		t.Errorf("it says %q", r.Sentence)
	}
	if len(r.Assumed) > 0 || len(r.Spots) > 0 {
		t.Errorf("it assumes %v, hot spots %v", r.Assumed, r.Spots)
	}
}

// half is a picture whose left third is exposed, as a field, and a line of it on the right.
func half() artwork.Picture {
	return drawn(160, 120, []int{60, 0, 60, 120}, []int{130, 0, 30, 120})
}

const inBath = "width=40&gap=20&strength=200&metal=copper&density=30&"

func TestEvenSays(t *testing.T) {
	for _, c := range []struct{ fields, want string }{
		{inBath + "depth=0.2", "uneven-time note"},
		{inBath + "depth=0.2", "uneven-island note"},
		{inBath + "depth=0.2", "Stop out first the exposed area 3"}, // the lone line, 30 to 32.5 mm from the left
		{inBath + "depth=0.2&sheet=0.25", "uneven-through warn"},
		{inBath + "depth=0.2&sheet=0.25&sides=2", "uneven-through warn"},
		{inBath + "depth=0.2&line=0.25", "uneven-line warn"},
		{inBath + "depth=0.2&line=0.25", "gone before the shallowest part is 0.200 mm deep"},
		{inBath + "density=30", "error density ambiguous"},
		{"width=40&gap=20&strength=200&metal=copper&density=100&height=30", "uneven-film warn"}, // 49 mA/cm2 at 200 g/L (the vocabulary)
		{"width=40&gap=20&density=30", "assumed strength metal"},
		{"width=40&gap=20&density=30", "Assumed for what is blank: the usual strength, copper."},
		{"width=40", "assumed gap strength density metal"},
		{"width=40", "75.0 mm to the cathode"},
		{"", "error width missing"},
		{"width=40&gap=far", "error gap number"},
		{inBath + "temperature=warm", "error temperature number"},
		{"width=40&metal=unobtainium", "error metal unknown"},
		{inBath + "vesselWidth=30&fill=100", "error vesselWidth contradiction"},
		{"width=0.1&gap=90", "error gap range"},
		{"width=0.1&gap=90", "mistake “90” can't be used: "},
	} {
		e, r := evened(half(), c.fields)
		said := []string{"assumed"}
		for _, name := range r.Assumed {
			said = append(said, name.String())
		}
		for _, caution := range r.Cautions {
			said = append(said, caution.Code, string(caution.Level), caution.Text)
		}
		for _, mistake := range r.Errors {
			said = append(said, "error", mistake.Field, mistake.Code, "mistake", mistake.Text)
		}
		if all := strings.Join(said, " "); !strings.Contains(all, c.want) {
			t.Errorf("%s: %q, not %q", c.fields, all, c.want)
		}
		if strings.HasPrefix(c.want, "error") && c.want != "error density ambiguous" && e.Solved {
			t.Errorf("%s is solved", c.fields)
		}
	}
	if _, r := evened(drawn(50, 50, []int{0, 0, 50, 50}), inBath); len(r.Errors) != 1 || r.Errors[0].Code != field.Picture {
		t.Errorf("of a picture without metal it says %v", r.Errors)
	}
}

// The same job with what is filled in needs no picture; what is typed stays. Two pieces
// have twice the bath.
func TestEvenFills(t *testing.T) {
	for _, c := range []struct {
		fields, names string
		faces         float64
	}{
		{"", "least resistance", 1},
		{"pieces=2&", "least resistance", 2},
		{"sides=2&pieces=3&", "least resistance", 6},
		{"least=80+%25&", "resistance", 1},
		{"least=80+%25&resistance=2&", "", 1},
	} {
		e, r := evened(half(), c.fields+inBath)
		var names []string
		for _, f := range r.Fields {
			names = append(names, f.Name)
			got := field.Read(f.Name + "=" + strings.ReplaceAll(f.Text, "%", "%25"))
			if name, _ := field.NameOf(f.Name); f.Name == "resistance" {
				if want := e.Result.Resistance / c.faces; math.Abs(got.Amount(name).SI/want-1) > 0.0005 {
					t.Errorf("%s fills %s, not %g", c.fields, f.Text, want)
				}
			} else if want := e.Result.Least; math.Abs(got.Amount(name).SI/want-1) > 0.0005 {
				t.Errorf("%s fills %s, not %g", c.fields, f.Text, want)
			}
		}
		if got := strings.Join(names, " "); got != c.names {
			t.Errorf("%s fills %q, not %q", c.fields, got, c.names)
		}
	}
}

// With the depth that of the shallowest part, the mean is deeper by what the solution says.
func TestEvenUntil(t *testing.T) {
	e, r := evened(half(), inBath+"depth=0.2&until=least")
	if mean := e.mean().SI; math.Abs(mean*e.Result.Least/0.2e-3-1) > 1e-9 || !strings.Contains(r.Sentence, ": 0.20 mm and") {
		t.Errorf("the mean is %g m: %s", mean, r.Sentence)
	}
	if typed, _ := evened(half(), inBath+"depth=0.2&until=least&least=50+%25"); math.Abs(typed.mean().SI/0.4e-3-1) > 1e-9 {
		t.Errorf("with 50 %% typed the mean is %g m", typed.mean().SI)
	}
	if mean, _ := evened(half(), inBath+"depth=0.2"); mean.mean().SI != 0.2e-3 {
		t.Errorf("the mean is %g m, not as typed", mean.mean().SI)
	}
}

// Each level has a shade that says it, darker where it is deeper; the map's mean over the
// exposed metal is 1.
func TestEvenMap(t *testing.T) {
	e, r := evened(half(), inBath+"depth=0.2")
	if len(r.Levels) != r.Map.Columns*r.Map.Rows || len(r.Scale) != scaleSteps {
		t.Fatalf("%d levels of %d by %d, %d on the scale", len(r.Levels), r.Map.Columns, r.Map.Rows, len(r.Scale))
	}
	for i, level := range r.Levels {
		if v := float64(r.Map.Values[i]); (v == 0) != (level == 0) || level != 0 && level < 255 && math.Abs(float64(level)-100*v) > 0.5 {
			t.Fatalf("a depth of %g has level %d", v, level)
		}
	}
	if most := int(slices.Max(r.Levels)); len(r.Shades) != most-r.First+1 {
		t.Errorf("%d shades from %d to %d", len(r.Shades), r.First, most)
	}
	for i, shade := range r.Shades {
		if times := float64(r.First+i) / 100; !strings.HasSuffix(shade.Text, percent(times)+" of the mean") && !(r.First+i == mostLevel && strings.HasSuffix(shade.Text, "255 % of the mean, or more")) {
			t.Errorf("level %d is %q", r.First+i, shade.Text)
		}
	}
	if first, last := r.Scale[0], r.Scale[scaleSteps-1]; first.Colour != colourOf(0) || last.Colour != colourOf(1) || first.Text == last.Text {
		t.Errorf("the scale goes from %v to %v", first, last)
	}
	low, high := e.ends()
	p := evenPrinter{mean: e.mean()}
	for i, want := range map[int]string{0: "to " + p.depth(low), scaleSteps / 2: p.depth((low + high) / 2), scaleSteps - 1: "from " + p.depth(high)} {
		if r.Scale[i].Text != want {
			t.Errorf("shade %d of the scale is %q, not %q", i, r.Scale[i].Text, want)
		}
	}
	if middle := r.Scale[scaleSteps/2]; middle.Colour != colourOf(0.5) {
		t.Errorf("half-way the scale has %v", middle)
	}
	for i, shade := range r.Scale { // what is beyond them has the colour of its end
		if strings.HasPrefix(shade.Text, "to ") != (i == 0) || strings.HasPrefix(shade.Text, "from ") != (i == scaleSteps-1) {
			t.Errorf("shade %d of the scale is %q", i, shade.Text)
		}
	}
	for _, s := range r.Spots {
		if s.Across < 0 || s.Across > 1 || math.Abs(s.Across*40-s.X.Value) > 1e-9 || s.Depth.Unit != "mm" {
			t.Errorf("a hot spot is %+v", s)
		}
	}
	if len(r.Spots) == 0 {
		t.Error("there is no hot spot")
	}
}

// Silver polarises less than copper and is etched less evenly.
func TestEvenOfSilver(t *testing.T) {
	_, copper := evened(half(), "width=40&gap=20&density=10&metal=copper")
	_, silver := evened(half(), "width=40&gap=20&density=10&metal=silver")
	if !(silver.answer("wagner") < copper.answer("wagner")) || !(silver.answer("spread") > copper.answer("spread")) {
		t.Errorf("silver: %v, copper: %v", silver.Answers, copper.Answers)
	}
}

// Nothing is averaged where no depth is known, and the depths are told in per cent.
func TestEvenWithoutDepth(t *testing.T) {
	_, r := evened(half(), inBath)
	if strings.Contains(r.Sentence, "mm") || r.Spots[0].Depth.Unit != "%" || strings.Contains(r.Shades[0].Text, "mm") {
		t.Errorf("%s, %v", r.Sentence, r.Spots[0])
	}
}

// Of the pictures to learn from the lone line goes deeper than the field beside it, and the
// frame than its field: both are 40 mm wide, and the line is of 1 mm.
func TestClassic(t *testing.T) {
	for name, island := range map[string]string{"line": "Stop out first the exposed area 5", "frame": "Stop out first the exposed area "} {
		p, fields, ok := Classic(name, field.Read("gap=20&depth=0.2&black=etches&threshold=50+%&corners=1+1;+9+1;+9+9;+1+9"))
		e := even(p, fields, 128, func(float64) {})
		r := EvenSaid(e)
		said := ""
		for _, c := range r.Cautions {
			said += c.Text
		}
		if !ok || math.Abs(e.Art.Width-0.04) > 1e-9 || !strings.Contains(said, island) {
			t.Errorf("%s: %g m wide, %s", name, e.Art.Width, said)
		}
	}
	if _, _, ok := Classic("160 160", field.Read("")); ok {
		t.Error("a size is a picture to learn from")
	}
}

// The height of what is not turned is that of its pixels, 120 of 160 across 40 mm, whatever
// is typed; between corners it is the height that is typed.
func TestEvenHeight(t *testing.T) {
	for fields, want := range map[string]float64{"height=10": 30, "height=10&corners=0+0;+160+0;+160+120;+0+120": 10} {
		if e, r := evened(half(), inBath+fields); math.Abs(e.Art.Height-want/1000) > 1e-9 {
			t.Errorf("%s: it is %g m high, not %g mm: %v", fields, e.Art.Height, want, r.Errors)
		}
	}
}

// A single blank that something stands for is told as well.
func TestEvenTellsOneAssumed(t *testing.T) {
	e, r := evened(half(), "width=40&gap=20&metal=copper&density=30&depth=0.2")
	told := slices.ContainsFunc(r.Cautions, func(c advice.Caution) bool { return c.Code == "uneven-assumed" })
	if len(e.Assumed) != 1 || e.Assumed[0] != field.Strength || !told {
		t.Errorf("assumed are %v, told %v", e.Assumed, told)
	}
}

// The scale of colours has a tenth of the mean at least; a wider spread has its own ends.
func TestEndsOfTheScale(t *testing.T) {
	for _, c := range [][4]float64{{1, 1, 0.95, 1.05}, {0.97, 1.02, 0.95, 1.05}, {0.6, 1.7, 0.6, 1.7}} {
		e := Evened{Result: evenness.Result{Least: c[0], Most: c[1]}}
		if low, high := e.ends(); math.Abs(low-c[2]) > 1e-12 || math.Abs(high-c[3]) > 1e-12 {
			t.Errorf("from %g to %g: the scale goes from %g to %g", c[0], c[1], low, high)
		}
	}
}
