package main

import (
	"encoding/json"
	"math"
	"net/url"
	"strings"
	"testing"

	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/testdata"
)

// A panic inside a call becomes an error "internal", and the next call works.
func TestGuarded(t *testing.T) {
	faults := 0
	call := guarded(func(text string) string {
		if text == "fault" {
			faults++
			var none []int
			return string(rune(none[1]))
		}
		return answer(text)
	}, faultyAnswer)
	for i := range 2 {
		if got := call("fault"); !strings.Contains(got, `"errors":[{"field":"","code":"internal"`) {
			t.Errorf("fault %d gives %s", i, got)
		}
		if got := call("metal=copper&depth=0.1&density=20"); !strings.Contains(got, `"found":["time"]`) {
			t.Errorf("after it: %s", got)
		}
	}
	if faults != 2 {
		t.Errorf("%d faults", faults)
	}
}

// What the writer writes is read back by another JSON reader as it was.
func TestReplyJSON(t *testing.T) {
	low := 0.1
	hostile := "\"\\\x00\x1f\u2028</script>é🙂\xff"
	text := replyJSON(advice.Reply{
		Sentence: hostile,
		Found:    []string{"time", "depth"},
		Answers:  []advice.Figure{{Name: "time", Value: 1e-320, Unit: "min", Text: hostile, Low: &low, Range: "a to b"}},
		Errors:   []field.Error{{Field: "depth", Code: "unit", Text: hostile}},
	})
	var got struct {
		Sentence string
		Found    []string
		Answers  map[string]struct {
			Value, Low float64
			High       *float64
			Text       string
		}
		Rows   struct{ Metal []any }
		Errors []struct{ Text string }
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	want := strings.ToValidUTF8(hostile, "\uFFFD")
	if got.Sentence != want || got.Errors[0].Text != want || got.Answers["time"].Text != want {
		t.Errorf("%q came back as %q", want, got.Sentence)
	}
	if a := got.Answers["time"]; a.Value != 1e-320 || a.Low != low || a.High != nil {
		t.Errorf("the answer came back as %v", a)
	}
	if got.Rows.Metal == nil || len(got.Found) != 2 {
		t.Errorf("%s", text)
	}
}

// A panic while drawing draws nothing, and the next call works.
func TestGuardedDraw(t *testing.T) {
	call := guarded(func(text string) string {
		if text == "fault" {
			panic("fault")
		}
		return draw(text)
	}, faultyDraw)
	for range 2 {
		if got := call("fault"); got != "{}" {
			t.Errorf("a fault draws %s", got)
		}
		if got := call("depth=0.1&sheet=1"); !strings.HasPrefix(got, `{"section":{"width":100,"height":50,`) {
			t.Errorf("after it: %s", got)
		}
	}
}

// Whatever is sent, what is drawn is JSON of finite numbers, each shape either
// a path or a text, each drawing with its words.
func FuzzDraw(f *testing.F) {
	for _, text := range testdata.Everything {
		f.Add(text)
	}
	f.Add("depth=1e-6&undercut=10&line=1e4&sheet=1e-3&sides=2&keep=100+%25")
	f.Add("metal=copper&readings=0:00+0;0:00+0&area=1e-6&depth=100&before=1&after=1")
	f.Add("salt=salt&mixed=\u7532\u4e59&etched=1e6&metal=sterling&units=us")
	f.Fuzz(func(t *testing.T, text string) {
		drawn := draw(text)
		var got map[string]struct {
			Width, Height float64
			Title, Words  string
			Shapes        []struct {
				Role, Path, Text, Anchor string
				Size                     float64
			}
		}
		if err := json.Unmarshal([]byte(drawn), &got); err != nil {
			t.Fatalf("%v in %s", err, drawn)
		}
		for name, d := range got {
			if d.Title == "" || d.Words == "" || len(d.Shapes) == 0 || d.Width <= 0 || strings.Contains(drawn, "NaN") || strings.Contains(drawn, "Inf") {
				t.Errorf("%q: %s is %+v", text, name, d)
			}
			for _, s := range d.Shapes {
				if (s.Path == "") == (s.Text == "") || s.Role == "" || s.Text != "" && (s.Anchor == "" || s.Size < 3) {
					t.Errorf("%q: %s has %+v", text, name, s)
				}
			}
		}
	})
}

// Whatever is sent, the reply is JSON of finite numbers, every error has its
// sentence, and no stop is an error.
func FuzzAnswer(f *testing.F) {
	for _, row := range field.Fields {
		f.Add(url.Values{row.Name: {row.Example}, "metal": {"brass"}, "depth": {"0.2 mm"}, "area": {"5"}}.Encode())
	}
	f.Add("metal=sterling&salt=table+salt&depth=1e-6&density=1e5&edge=1e7&undercut=10")
	f.Add("salt=silver+nitrate&strength=99.9+%25&volume=1e5&coldest=0&temperature=100")
	f.Fuzz(func(t *testing.T, text string) {
		reply := answer(text)
		var got struct {
			Answers map[string]struct {
				Value     float64
				Unit      string
				Text      string
				Low, High *float64
			}
			Errors []struct{ Code, Text string }
		}
		if err := json.Unmarshal([]byte(reply), &got); err != nil {
			t.Fatalf("%v in %s", err, reply)
		}
		for name, a := range got.Answers {
			if math.IsInf(a.Value, 0) || a.Unit == "" && a.Value != math.Trunc(a.Value) || a.Text == "" || strings.Contains(a.Text, "NaN") || strings.Contains(a.Text, "Inf") {
				t.Errorf("%q: %s is %v", text, name, a)
			}
		}
		for _, e := range got.Errors {
			if e.Text == "" || e.Code == field.Internal {
				t.Errorf("%q: error %v", text, e)
			}
		}
	})
}
