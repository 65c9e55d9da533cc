//go:build js

package main

import (
	"github.com/hack-pad/safejs"

	"saltbite/calc/metal"
)

// main puts the calls on the scope object, says that they are there, and stays
// for as long as they may come.
func main() {
	if err := open(safejs.Global()); err != nil {
		panic(err)
	}
	metal.Find("") // folds the catalogue's names now, not at the first key
	select {}
}

func open(scope safejs.Value) error {
	if err := putCalls(scope); err != nil {
		return err
	}
	if err := scope.Set("saltbiteVersion", version); err != nil {
		return err
	}
	ready, err := scope.Get("saltbiteReady")
	if err != nil || ready.Type() != safejs.TypeFunction {
		return err
	}
	_, err = ready.Invoke()
	return err
}
