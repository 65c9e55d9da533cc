//go:build js

package main

import "github.com/hack-pad/safejs"

// expose puts a call on the scope object as a JavaScript function that takes a
// string and returns one. What is no string counts as none: String() of
// another type would say "<undefined>" and no error.
func expose(scope safejs.Value, name string, call func(string) string) error {
	f, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		return call(stringOf(args))
	})
	if err != nil {
		return err
	}
	return scope.Set(name, f.Value())
}

func stringOf(args []safejs.Value) string {
	if len(args) == 0 || args[0].Type() != safejs.TypeString {
		return ""
	}
	text, err := args[0].String()
	if err != nil {
		return ""
	}
	return text
}
