//go:build !js

package artwork

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// program finds what draws or measures independently of this package.
func program(t testing.TB, name, pkg string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		if os.Getenv("SALTBITE_SETUP") == "1" {
			t.Fatalf("the program %s is missing: install the package %s", name, pkg)
		}
		t.Skipf("the program %s is missing: install the package %s to check against it", name, pkg)
	}
	return path
}

// drawing is an SVG of so many units, black on white, of which a unit is drawn
// over so many pixels.
type drawing struct {
	width, height float64
	shapes        string
}

func (d drawing) svg(scale float64) string {
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%g" height="%g" viewBox="0 0 %g %g">`+
		`<rect width="100%%" height="100%%" fill="white"/>%s</svg>`, d.width*scale, d.height*scale, d.width, d.height, d.shapes)
}

// png is the drawing as librsvg renders it.
func (d drawing) png(t testing.TB, scale float64) []byte {
	t.Helper()
	command := exec.Command(program(t, "rsvg-convert", "librsvg2-bin"))
	command.Stdin = strings.NewReader(d.svg(scale))
	var complaint bytes.Buffer
	command.Stderr = &complaint
	drawn, err := command.Output()
	if err != nil {
		t.Fatal(err, complaint.String())
	}
	return drawn
}

func (d drawing) picture(t testing.TB, scale float64) Picture {
	t.Helper()
	p, err := Decode(d.png(t, scale))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// magick is what ImageMagick answers about a PNG.
func magick(t testing.TB, picture []byte, arguments ...string) string {
	t.Helper()
	return string(converted(t, "png:-", picture, arguments...))
}

// convertTo is what ImageMagick makes of a PNG.
func convertTo(t testing.TB, picture []byte, arguments ...string) []byte {
	t.Helper()
	return converted(t, "png:-", picture, arguments...)
}

func converted(t testing.TB, format string, picture []byte, arguments ...string) []byte {
	t.Helper()
	command := exec.Command(program(t, "convert", "imagemagick"), append([]string{format}, arguments...)...)
	command.Stdin = bytes.NewReader(picture)
	var complaint bytes.Buffer
	command.Stderr = &complaint
	made, err := command.Output()
	if err != nil {
		t.Fatal(err, complaint.String())
	}
	return made
}

func measured(t testing.TB, p Picture, o Options) Result {
	t.Helper()
	r, err := Measure(p, o, silent)
	if err != nil {
		t.Fatal(err)
	}
	return r
}
