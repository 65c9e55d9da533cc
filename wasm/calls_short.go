//go:build js && !long

package main

import "github.com/hack-pad/safejs"

// putCalls puts the calls on the scope that the page needs for its first answer.
// The others are in a program of their own (calls_long.go), so that no visitor
// waits for what reads pictures.
func putCalls(scope safejs.Value) error {
	if err := expose(scope, "saltbiteAnswer", guarded(answer, faultyAnswer)); err != nil {
		return err
	}
	if err := expose(scope, "saltbiteDraw", guarded(draw, faultyDraw)); err != nil {
		return err
	}
	return expose(scope, "saltbiteFind", guarded(find, faultyFind))
}
