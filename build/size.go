package main

import (
	"errors"
	"fmt"
)

// Limits of size. A visitor waits for these bytes, on a workshop's network.
const (
	programToBare = 1.50      // the program to a bare one, both under brotli at its best
	pageScript    = 60 * 1000 // bytes of the page's script, minified, without wasm_exec.js
	elementScript = 5 * 1000  // bytes of the script that runs on other people's pages, minified
	pageToBare    = 1.60      // all that the page loads to what a bare page loads, both under brotli at its best
)

// programSize is how large the shipped program, or its page, is beside a bare one.
type programSize struct{ shipped, bare int } // bytes, brotli quality 11

func (s programSize) ratio() float64 { return float64(s.shipped) / float64(s.bare) }

func (s programSize) String() string {
	return fmt.Sprintf("%d bytes under brotli, %.2f of a bare one's %d", s.shipped, s.ratio(), s.bare)
}

func measureProgram(root string, made site) (programSize, error) {
	bare, err := buildProgram(root, "./build/bare", "dev")
	if err != nil {
		return programSize{}, err
	}
	return programSize{brotliSize(made, "saltbite.wasm"), len(brotliBest(bare))}, nil
}

// brotliSize is the size of files under brotli.
func brotliSize(made site, names ...string) (sum int) {
	for _, name := range names {
		packed, found := made[name+".br"]
		if !found {
			packed = brotliBest(made[name])
		}
		sum += len(packed)
	}
	return sum
}

// pageFiles are what the page loads before it answers. No picture is among them.
var pageFiles = []string{"index.html", "head.js", "style.css", oldest, "page.js", "saltbite.wasm"}

// measurePage compares what the page loads with what a page of the bare program
// loads, which asks it by way of the same border.
func measurePage(root string, made site) (programSize, error) {
	bare, err := bareSite(root)
	if err != nil {
		return programSize{}, err
	}
	return programSize{brotliSize(made, pageFiles...), brotliSize(bare, "index.html", "page.js", "saltbite.wasm")}, nil
}

// checkProgram holds the program and its page to their limits.
func checkProgram(root string, made site) error {
	size, err := measureProgram(root, made)
	if err != nil {
		return err
	}
	page, err := measurePage(root, made)
	if err != nil {
		return err
	}
	return errors.Join(size.within(programToBare, "the program"), page.within(pageToBare, "all that the page loads"))
}

func (s programSize) within(limit float64, what string) error {
	if s.ratio() > limit {
		return fmt.Errorf("%s has %v; the limit is %.2f", what, s, limit)
	}
	return nil
}

// checkScript holds the page's script to its limit.
func checkScript(root string) (int, error) {
	script, err := scriptWithoutGlue(root)
	if err == nil && len(script) > pageScript {
		err = fmt.Errorf("the page's script has %d bytes; the limit is %d", len(script), pageScript)
	}
	return len(script), err
}

// checkElement holds the script of the element to its limit.
func checkElement(script []byte) error {
	if len(script) > elementScript {
		return fmt.Errorf("embed.js has %d bytes; the limit is %d", len(script), elementScript)
	}
	return nil
}
