// Package main is the border between JavaScript and the calculator: text in,
// text out. What crosses it is the one text form of a set of fields one way and
// JSON the other. Nothing here knows a formula.
package main

import (
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/metal"
)

// version is set by the build: the tag, or "dev".
var version = "dev"

// answer works out a set of fields in its text form.
func answer(fields string) string {
	return replyJSON(job.Answer(field.Read(fields)))
}

// draw draws a set of fields in its text form.
func draw(fields string) string {
	return drawingsJSON(job.Draw(field.Read(fields)))
}

// find looks a metal up.
func find(words string) string {
	return hitsJSON(metal.Find(words))
}

// sentry is a fault that is the program's own, as a reply.
func sentry() job.Reply {
	return job.Reply{Errors: []field.Error{{Code: field.Internal,
		Text: "This could not be worked out because of a fault in the program. What was typed is kept, and the next answer works."}}}
}

// guarded makes a call that can't panic: a panic in a callback would end the Go
// program, and every later call with it. The fault becomes the fallback.
func guarded(call func(string) string, fallback func() string) func(string) string {
	return func(text string) (reply string) {
		defer func() {
			if recover() != nil {
				reply = fallback()
			}
		}()
		return call(text)
	}
}

func faultyAnswer() string { return replyJSON(sentry()) }
func faultyDraw() string   { return "{}" }
func faultyFind() string   { return "[]" }
