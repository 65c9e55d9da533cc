package quantity

import (
	"errors"
	"math"
	"testing"
)

// What is there is finite; what is positive is above zero too.
func TestKnownIsFinite(t *testing.T) {
	for _, x := range []float64{-math.MaxFloat64, -1, 0, 5e-324, 1, math.MaxFloat64} {
		if o := Known(x); !o.Known() || o.SI != x || o.State != Given || !o.Typed() || o.Bad() {
			t.Errorf("%v is %+v", x, o)
		}
		if o := Positive(x); o.Known() != (x > 0) || o.Known() && o.SI != x || !o.Known() && o != (Optional{}) {
			t.Errorf("%v is %+v", x, o)
		}
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if o, p := Known(x), Positive(x); o != (Optional{}) || p != (Optional{}) {
			t.Errorf("%v is %+v and %+v", x, o, p)
		}
	}
}

// What rests on several is bad if one is, and not there if one is not there.
func TestWorst(t *testing.T) {
	given, assumed, blank, bad := Known(2), Optional{3, Assumed}, Optional{}, Optional{State: Bad}
	for _, c := range []struct {
		from []Optional
		want Optional
	}{
		{nil, Known(7)}, {[]Optional{given}, Known(7)}, {[]Optional{given, assumed}, Known(7)}, {[]Optional{given, blank, assumed}, blank},
		{[]Optional{blank, bad}, bad}, {[]Optional{bad, given, blank}, bad},
	} {
		if got := If(7, c.from...); got != c.want {
			t.Errorf("7 from %v is %+v", c.from, got)
		}
	}
	if If(math.NaN(), given).Known() {
		t.Error("no number follows, yet it is there")
	}
	if !assumed.Known() || !assumed.Typed() || blank.Known() || blank.Typed() || bad.Known() || !bad.Typed() || !bad.Bad() || given.Bad() {
		t.Error("states are told wrong")
	}
	if blank.Or(given) != given || bad.Or(given) != bad || assumed.Or(given) != assumed {
		t.Error("another stands for what is there")
	}
}

// An end of a range that is not known is the number itself.
func TestRange(t *testing.T) {
	alone := Alone(Known(2))
	if low, high := alone.Ends(); alone.Spread() || low != 2 || high != 2 {
		t.Errorf("alone it goes from %v to %v", low, high)
	}
	half := Range{Known(2), Optional{}, Known(3)}
	if low, high := half.Ends(); !half.Spread() || low != 2 || high != 3 {
		t.Errorf("it goes from %v to %v", low, high)
	}
	if low, high := (Range{Known(2), Known(1), Optional{}}).Ends(); low != 1 || high != 2 {
		t.Errorf("it goes from %v to %v", low, high)
	}
}

// All that looks like a blank, or like nothing, is one: Unicode's spaces (Zs), controls,
// format characters such as the zero-width space, and the empty Braille cell.
func TestBlanksOfAllKinds(t *testing.T) {
	for _, blank := range []string{" ", "\t", "\n", "\x07", "\x7f", "\u00a0", "\u2009", "\u200b", "\u2060", "\ufeff", "\u3000", "\u2800", "\u0085"} {
		for _, text := range []string{"5" + blank + "mm", blank + "5 mm" + blank, "5 " + blank + blank + "mm"} {
			if q, err := Read(text, "", Length); err != nil || math.Abs(q.Value-0.005) > 1e-15 {
				t.Errorf("%q is %v, %v", text, q, err)
			}
		}
	}
}

// Fractions of one character stand after any digit, and alone.
func TestFractionsAfterEachDigit(t *testing.T) {
	for digit := range 10 {
		text := string(rune('0'+digit)) + "½ mm"
		if q, err := Read(text, "", Length); err != nil || math.Abs(q.Value-(float64(digit)+0.5)*1e-3) > 1e-15 {
			t.Errorf("%q is %v, %v", text, q, err)
		}
	}
	for text, want := range map[string]float64{"½": 1. / 2, "⅓": 1. / 3, "⅔": 2. / 3, "¼": 1. / 4, "¾": 3. / 4, "⅛": 1. / 8, "⅜": 3. / 8, "⅝": 5. / 8, "⅞": 7. / 8} {
		if q, err := Read(text+" in", "", Length); err != nil || math.Abs(q.Value-want*0.0254) > 1e-15 {
			t.Errorf("%q is %v, %v", text, q, err)
		}
	}
}

// The British gauges with a stroke go from 1/0 to 7/0, 0.500 in (BS 3737, from memory),
// the American ones from 1/0 to 4/0, 0.460 in (ASTM B258, from memory).
func TestGaugesWithAStroke(t *testing.T) {
	for text, inches := range map[string]float64{"1/0 swg": 0.324, "7/0 swg": 0.500, "4/0 awg": 0.460, "1/0 awg": 0.32486, "0000 awg": 0.460, "0 awg": 0.32486, "50 swg": 0.001} {
		if q, err := Read(text, "", Length); err != nil || math.Abs(q.Value/0.0254-inches) > 1e-5 {
			t.Errorf("%q is %v, %v", text, q, err)
		}
	}
	for text, code := range map[string]Code{"8/0 swg": BadNumber, "0/0 swg": BadNumber, "x/0 swg": BadNumber, "5/0 awg": OutOfSize, "18/5 awg": BadNumber, "1.5 awg": BadNumber} {
		_, err := Read(text, "", Length)
		if e := (*Error)(nil); err == nil || errors.As(err, &e) && e.Code != code {
			t.Errorf("%q: %v, want %s", text, err, code)
		}
	}
}

// The parts of a compound may be joined by a word or a sign, and the second may begin
// with its point.
func TestJoints(t *testing.T) {
	for text, want := range map[string]float64{"2 h and 30 min": 9000, "2 h, 30 min": 9000, "2 h & 30 min": 9000, "2 h und 30 min": 9000, "2 h et 30 min": 9000,
		"2h30min": 9000, "2 h 30 min 15 s": 9015, "1 h 0 min": 3600} {
		if q, err := Read(text, "", Time); err != nil || math.Abs(q.Value-want) > 1e-9 {
			t.Errorf("%q is %v, %v", text, q, err)
		}
	}
	for text, inches := range map[string]float64{"5 ft .5 in": 60.5, "5 ft 2 in": 62, "5' 2\"": 62, "5 ft 2": 62, "5 ft 3": 63, "5 ft 1/2 in": 60.5} {
		if q, err := Read(text, "", Length); err != nil || math.Abs(q.Value/0.0254-inches) > 1e-9 {
			t.Errorf("%q is %v, %v", text, q, err)
		}
	}
	for _, text := range []string{"5 ft2", "4 in x 6 in", "10 mm to 20 mm", "10 mm - .5 mm", "10 mm by 2", "2 h 30 mm"} {
		if q, err := Read(text, "", Length); err == nil {
			t.Errorf("%q is %v", text, q)
		}
	}
}

// Nothing below nothing is nothing, without a sign.
func TestNoZeroBelowZero(t *testing.T) {
	if q, err := Read("-0 C", "", Temperature); err != nil || q.Value != 273.15 {
		t.Errorf("-0 C is %v, %v", q, err)
	}
	if q, err := Read("-0 mm", "", Length); err != nil || q.Value != 0 || math.Signbit(q.Value) {
		t.Errorf("-0 mm is %v, %v", q, err)
	}
}
