// Package main is the border between JavaScript and the calculator: text in,
// text out. What crosses it is the one text form of a set of fields one way and
// JSON the other. A picture crosses it as bytes, beside the text. Nothing here
// knows a formula.
package main

import (
	"saltbite/calc/advice"
	"saltbite/calc/field"
	"saltbite/calc/job"
	"saltbite/calc/metal"
)

// version is set by the build: the tag, or "dev".
var version = "dev"

// answer works out a set of fields in its text form.
func answer(fields string) string {
	return replyJSON(advice.Answer(job.Work(field.Read(fields))))
}

// draw draws a set of fields in its text form.
func draw(fields string) string {
	return drawingsJSON(advice.Draw(job.Work(field.Read(fields))))
}

// find looks a metal up.
func find(words string) string {
	return hitsJSON(metal.Find(words))
}
