//go:build js

package main

import "github.com/hack-pad/safejs"

// expose puts a call on the scope object as a JavaScript function that takes a
// string and returns one. A value of another type counts as no text: String() of
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

// register puts a call with bytes on the scope object, guarded, as a JavaScript
// function of a string, an Uint8Array and a function that hears the progress. It
// returns an object of the same text and bytes; bytes is absent if it has no bytes.
func register(scope safejs.Value, name string, call bytesCall) error {
	call = guardedBytes(call)
	object, err := scope.Get("Object")
	if err != nil {
		return err
	}
	array, err := scope.Get("Uint8Array")
	if err != nil {
		return err
	}
	f, err := safejs.FuncOf(func(_ safejs.Value, args []safejs.Value) any {
		text, out := call(stringOf(args), bytesOf(args), progressOf(args))
		reply, err := object.New()
		if err == nil {
			err = reply.Set("text", text)
		}
		if err == nil && len(out) > 0 {
			err = setBytes(reply, array, out)
		}
		if err != nil {
			return nil // as of a program that has ended
		}
		return reply
	})
	if err != nil {
		return err
	}
	return scope.Set(name, f.Value())
}

// bytesOf copies the bytes of the second argument; any other type counts as no bytes.
func bytesOf(args []safejs.Value) []byte {
	if len(args) < 2 || args[1].Type() != safejs.TypeObject {
		return nil
	}
	n, err := args[1].Length()
	if err != nil || n <= 0 {
		return nil
	}
	data := make([]byte, n)
	if _, err := safejs.CopyBytesToGo(data, args[1]); err != nil {
		return nil
	}
	return data
}

// progressOf tells the third argument, if it is a function, and stays silent else.
func progressOf(args []safejs.Value) func(share float64) {
	if len(args) < 3 || args[2].Type() != safejs.TypeFunction {
		return func(float64) {}
	}
	return func(share float64) { args[2].Invoke(share) } // what it throws is its own affair
}

func setBytes(reply, array safejs.Value, out []byte) error {
	copied, err := array.New(len(out))
	if err != nil {
		return err
	}
	if _, err := safejs.CopyBytesToJS(copied, out); err != nil {
		return err
	}
	return reply.Set("bytes", copied)
}
