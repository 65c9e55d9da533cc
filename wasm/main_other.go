//go:build !js

package main

// The program runs in a JavaScript engine only; this keeps it building, and its
// border tested, everywhere else.
func main() {}
