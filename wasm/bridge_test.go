//go:build js

package main

import (
	"strings"
	"testing"

	"github.com/hack-pad/safejs"
)

// Through JavaScript, too, a call that panics gives an error, the next one
// works, and a value that is not a string counts as no text.
func TestExpose(t *testing.T) {
	scope, err := safejs.MustGetGlobal("Object").New()
	if err != nil {
		t.Fatal(err)
	}
	call := guarded(func(text string) string {
		if text == "fault" {
			panic("fault")
		}
		return answer(text)
	}, faultyAnswer)
	if err := expose(scope, "ask", call); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		given any
		want  string
	}{
		{"fault", `"code":"internal"`},
		{"metal=copper&depth=0.1&density=20", `"found":["time"]`},
		{"fault", `"code":"internal"`},
		{safejs.Undefined(), `"found":[]`},
		{5, `"found":[]`},
		{"metal=copper&depth=0.1&density=20", `"found":["time"]`},
	} {
		reply, err := scope.Call("ask", c.given)
		if err != nil {
			t.Fatalf("%v: %v", c.given, err)
		}
		if text, err := reply.String(); err != nil || !strings.Contains(text, c.want) {
			t.Errorf("%v gives %s, %v", c.given, text, err)
		}
	}
}

// Bytes cross the border both ways as they are, with the progress between them; a
// panic gives an error with the code of its place, the same each time, and the
// next call works.
func TestRegister(t *testing.T) {
	scope, err := safejs.MustGetGlobal("Object").New()
	if err != nil {
		t.Fatal(err)
	}
	for _, lent := range []string{"Object", "Uint8Array"} {
		if err := scope.Set(lent, safejs.MustGetGlobal(lent)); err != nil {
			t.Fatal(err)
		}
	}
	err = register(scope, "work", func(args string, data []byte, progress func(float64)) (string, []byte) {
		progress(0.25)
		if args == "fault" {
			return args, data[len(data):][:1] // beyond its capacity, if it has none
		}
		progress(0.5)
		for i := range data {
			data[i] ^= 0xff
		}
		return strings.ToUpper(args), data
	})
	if err != nil {
		t.Fatal(err)
	}
	var heard []float64
	hear, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		share, _ := args[0].Float()
		heard = append(heard, share)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	work := func(text any, data any) (string, []byte) {
		t.Helper()
		reply, err := scope.Call("work", text, data, hear.Value())
		if err != nil {
			t.Fatal(err)
		}
		return parcelOf(t, reply)
	}
	given, err := safejs.MustGetGlobal("Uint8Array").New(3)
	if err != nil {
		t.Fatal(err)
	}
	safejs.CopyBytesToJS(given, []byte{0, 1, 255})
	if text, out := work("metal=é", given); text != "METAL=É" || string(out) != "\xff\xfe\x00" {
		t.Errorf("it gives %q and %v", text, out)
	}
	if len(heard) != 2 || heard[0] != 0.25 || heard[1] != 0.5 {
		t.Errorf("the progress heard is %v", heard)
	}
	if back := bytesOf([]safejs.Value{given, given}); string(back) != "\x00\x01\xff" {
		t.Errorf("the caller's own bytes became %v", back)
	}
	empty, _ := safejs.MustGetGlobal("Uint8Array").New(0)
	first, _ := work("fault", empty)
	second, _ := work("fault", empty)
	if first != second || !strings.Contains(first, `"code":"internal"`) || !strings.Contains(first, "(code ") {
		t.Errorf("a fault gives %s, then %s", first, second)
	}
	for _, none := range []any{safejs.Undefined(), 5, "text", safejs.MustGetGlobal("Object")} {
		if text, out := work("a", none); text != "A" || out != nil {
			t.Errorf("with %v for its bytes it gives %q, %v", none, text, out)
		}
	}
	if text, out := work(safejs.Undefined(), given); text != "" || len(out) != 3 {
		t.Errorf("without a text it gives %q, %v", text, out)
	}
}

// parcelOf is what a call with bytes returned.
func parcelOf(t *testing.T, reply safejs.Value) (string, []byte) {
	t.Helper()
	text, err := reply.Get("text")
	if err != nil {
		t.Fatal(err)
	}
	said, err := text.String()
	if err != nil {
		t.Fatal(err)
	}
	out, err := reply.Get("bytes")
	if err != nil {
		t.Fatal(err)
	}
	return said, bytesOf([]safejs.Value{text, out})
}
