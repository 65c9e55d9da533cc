//go:build js

package main

import (
	"strings"
	"testing"

	"github.com/hack-pad/safejs"
)

// Through JavaScript, too, a call that panics gives an error, the next one
// works, and what is no string counts as none.
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
