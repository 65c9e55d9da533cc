package measure

import (
	"errors"
	"fmt"

	"saltbite/build/site"
)

// Limits of size. A visitor waits for these bytes, on a workshop's network.
const (
	programToBare = 1.58      // the program to a bare one, both under brotli at its best
	pageScript    = 70 * 1000 // bytes of what runs before the first answer, minified, without wasm_exec.js
	laterScript   = 38 * 1000 // bytes of the page's second script, minified, without its texts
	classScript   = 27 * 1000 // bytes of the script of the page for a class, minified
	logScript     = 20 * 1000 // bytes of the log's script, minified
	closerScript  = 33 * 1000 // bytes of what comes with a picture, minified, without its style
	alongScript   = 6 * 1000  // bytes of what draws a cut along a line, minified
	elementScript = 5 * 1000  // bytes of the script that runs on other people's pages, minified
	pageToBare    = 1.65      // all that the page loads to what a bare page loads, both under brotli at its best
)

// programSize is how large the shipped program, or its page, is beside a bare one.
type programSize struct{ shipped, bare int } // bytes, brotli quality 11

func (s programSize) ratio() float64 { return float64(s.shipped) / float64(s.bare) }

func (s programSize) String() string {
	return fmt.Sprintf("%d bytes under brotli, %.2f of a bare one's %d", s.shipped, s.ratio(), s.bare)
}

// sizesOf compares the program with a bare one, and what the page loads with what
// a page of the bare program loads, which asks it through the same border.
func sizesOf(root string, made site.Files) (program, page programSize, err error) {
	bare, err := site.Bare(root)
	if err != nil {
		return program, page, err
	}
	least := brotliSize(bare, "saltbite.wasm")
	program = programSize{brotliSize(made, "saltbite.wasm"), least}
	page = programSize{brotliSize(made, site.PageFiles...), least + brotliSize(bare, "index.html", "page.js")}
	return program, page, nil
}

// brotliSize is the size of files under brotli.
func brotliSize(made site.Files, names ...string) (sum int) {
	for _, name := range names {
		packed, found := made[name+".br"]
		if !found {
			packed = site.Brotli(made[name])
		}
		sum += len(packed)
	}
	return sum
}

// CheckProgram holds the program and its page to their limits.
func CheckProgram(root string, made site.Files) error {
	program, page, err := sizesOf(root, made)
	if err != nil {
		return err
	}
	return errors.Join(program.within(programToBare, "the program"), page.within(pageToBare, "all that the page loads"))
}

func (s programSize) within(limit float64, what string) error {
	if s.ratio() > limit {
		return fmt.Errorf("%s has %v; the limit is %.2f", what, s, limit)
	}
	return nil
}

// CheckScript holds the page's scripts to their limits.
func CheckScript(root string) error {
	script, err := site.ScriptWithoutGlue(root)
	if err != nil {
		return err
	}
	later, err := site.LaterWithoutTexts(root)
	if err != nil {
		return err
	}
	class, err := site.ClassScript(root)
	if err != nil {
		return err
	}
	log, err := site.LogScript(root)
	if err != nil {
		return err
	}
	closer, err := site.CloserScript(root)
	if err != nil {
		return err
	}
	along, err := site.AlongScript(root)
	if err != nil {
		return err
	}
	return errors.Join(atMost(pageScript, script, "the page's script"), atMost(laterScript, later, "the page's second script"),
		atMost(classScript, class, "class.js"), atMost(logScript, log, "the log's script"), atMost(closerScript, closer, "what comes with a picture"), atMost(alongScript, along, "along.js"))
}

func atMost(limit int, script []byte, what string) error {
	if len(script) > limit {
		return fmt.Errorf("%s has %d bytes; the limit is %d", what, len(script), limit)
	}
	return nil
}

// CheckElement holds the script of the element to its limit.
func CheckElement(script []byte) error {
	return atMost(elementScript, script, "embed.js")
}
