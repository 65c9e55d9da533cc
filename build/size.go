package main

import "fmt"

// Limits of size. A visitor waits for these bytes, on a workshop's network.
const (
	programToBare = 1.50      // the program to a bare one, both under brotli at its best
	pageScript    = 60 * 1000 // bytes of the page's script, minified, without wasm_exec.js
)

// programSize is how large the shipped program is beside a bare one.
type programSize struct{ shipped, bare int } // bytes, brotli quality 11

func (s programSize) ratio() float64 { return float64(s.shipped) / float64(s.bare) }

func (s programSize) String() string {
	return fmt.Sprintf("%d bytes under brotli, %.2f of a bare program's %d", s.shipped, s.ratio(), s.bare)
}

func measureProgram(root string, shipped []byte) (programSize, error) {
	bare, err := buildProgram(root, "./build/bare", "dev")
	if err != nil {
		return programSize{}, err
	}
	return programSize{len(brotliBest(shipped)), len(brotliBest(bare))}, nil
}

// checkProgram holds the program to its limit.
func checkProgram(root string, shipped []byte) (programSize, error) {
	size, err := measureProgram(root, shipped)
	if err == nil && size.ratio() > programToBare {
		err = fmt.Errorf("%v; the limit is %.2f", size, programToBare)
	}
	return size, err
}

// checkScript holds the page's script to its limit.
func checkScript(root string) (int, error) {
	script, err := scriptWithoutGlue(root)
	if err == nil && len(script) > pageScript {
		err = fmt.Errorf("the page's script has %d bytes; the limit is %d", len(script), pageScript)
	}
	return len(script), err
}
