package main

import (
	"runtime"
	"strconv"
	"strings"

	"saltbite/calc/advice"
	"saltbite/calc/field"
)

// bytesCall is a call that takes bytes beside its text and may take long. It
// tells progress its share of the work that is done, from 0 to 1.
type bytesCall func(args string, data []byte, progress func(share float64)) (text string, out []byte)

// guarded makes a call that can't panic: a panic in a callback would end the Go
// program, and every later call with it. The fault becomes the fallback.
func guarded(call func(string) string, fallback func(code string) string) func(string) string {
	return func(text string) (reply string) {
		defer func() {
			if cause := recover(); cause != nil {
				reply = fallback(noted(cause))
			}
		}()
		return call(text)
	}
}

// guardedBytes does the same for a call with bytes.
func guardedBytes(call bytesCall) bytesCall {
	return func(args string, data []byte, progress func(float64)) (text string, out []byte) {
		defer func() {
			if cause := recover(); cause != nil {
				text, out = faultyAnswer(noted(cause)), nil
			}
		}()
		return call(args, data, progress)
	}
}

// noted is a short code for the place of a panic, the same each time, by which a
// report from someone who has only the page leads to it. A developer's build
// writes the stack to the console too. It is called while the panic is recovered.
func noted(cause any) string {
	calls := make([]uintptr, 64)
	frames := runtime.CallersFrames(calls[:runtime.Callers(0, calls)])
	place := ""
	if version == "dev" {
		if err, is := cause.(error); is {
			cause = err.Error()
		}
		text, _ := cause.(string) // other causes are told by their place alone
		println("panic:", text)
	}
	panicked := false
	for more := true; more; {
		var f runtime.Frame
		f, more = frames.Next()
		inRuntime := strings.HasPrefix(f.Function, "runtime.")
		switch {
		case !panicked:
			panicked = f.Function == "runtime.gopanic"
			continue
		case place == "" && !inRuntime:
			place = f.Function + ":" + strconv.Itoa(f.Line)
		}
		if version == "dev" {
			println(f.Function, f.File, f.Line)
		}
	}
	return strconv.FormatUint(uint64(hashed(place)), 36)
}

// hashed is the 32-bit FNV-1a hash of a text.
func hashed(text string) uint32 {
	const offset, prime = 2166136261, 16777619
	hash := uint32(offset)
	for i := range len(text) {
		hash = (hash ^ uint32(text[i])) * prime
	}
	return hash
}

// sentry is a fault that is the program's own, as a reply.
func sentry(code string) advice.Reply {
	return advice.Reply{Errors: []field.Error{{Code: field.Internal,
		Text: "This could not be worked out because of a fault in the program (code " + code + "). What was typed is kept, and the next answer works."}}}
}

func faultyAnswer(code string) string { return replyJSON(sentry(code)) }
func faultyDraw(string) string        { return "{}" }
func faultyFind(string) string        { return "[]" }
