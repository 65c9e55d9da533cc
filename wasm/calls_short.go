//go:build js && !long

package main

import (
	"runtime/debug"

	"github.com/hack-pad/safejs"
)

// memoryGrowth is by how many per cent the memory may grow before what is no longer
// used is cleared away. That takes some milliseconds, in which an answer waits: at
// Go's own 100 it was every tenth to twentieth answer. Pictures need too much memory
// for that, so the other program keeps to 100.
const memoryGrowth = 400

func init() { debug.SetGCPercent(memoryGrowth) }

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
