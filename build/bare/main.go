//go:build js

// Command bare is the least program that stands on what the site's program
// stands on: syscall/js, safejs, levenshtein. The site's program is measured
// against it, so that a limit of size holds whatever a toolchain adds to both.
package main

import (
	"syscall/js"

	"github.com/agnivade/levenshtein"
	"github.com/hack-pad/safejs"
)

func main() {
	f, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		a, _ := args[0].String()
		b, _ := args[1].String()
		return levenshtein.ComputeDistance(a, b)
	})
	if err != nil {
		panic(err)
	}
	js.Global().Set("distance", safejs.Unsafe(f.Value()))
	select {}
}
