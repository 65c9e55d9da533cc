// Package pictures photographs the page for the README: on a tablet, in the dark,
// on a phone, and the bench card as it is printed, all of one job.
package pictures

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"time"

	"saltbite/build/browser"
	"saltbite/build/site"
)

// job is what is typed on the page that is photographed, in the one text form.
const job = "metal=cartridge+brass&width=90&height=25&open=38&depth=0.2&density=30&sheet=18+ga&line=0.6" +
	"&gap=60&cathode=60&before=24.6&salt=copper+sulfate+crystals&strength=200&volume=1.5"

// patience is how long the page may take to come to rest.
const patience = 60 * time.Second

// Take writes the pictures into the folder site. They are Chromium's.
func Take(root string, made site.Files) error {
	address, stop, err := made.Serve()
	if err != nil {
		return err
	}
	defer stop()
	s, err := browser.Start(browser.Chromium, browser.Options{})
	if err != nil {
		return err
	}
	defer s.Close()
	for _, one := range []struct {
		name string
		take func(*browser.Session) ([]byte, error)
	}{
		{"tablet.png", func(s *browser.Session) ([]byte, error) { return window(s, 1024, 768, false) }},
		{"dark.png", func(s *browser.Session) ([]byte, error) { return window(s, 1024, 768, true) }},
		{"phone.png", func(s *browser.Session) ([]byte, error) { return window(s, 390, 844, false) }},
		{"card.png", card},
	} {
		if err := open(s, address); err != nil {
			return fmt.Errorf("%s: %w", one.name, err)
		}
		picture, err := one.take(s)
		if err == nil {
			picture, err = small(picture)
		}
		if err != nil {
			return fmt.Errorf("%s: %w", one.name, err)
		}
		if err := os.WriteFile(filepath.Join(root, "site", one.name), picture, 0o644); err != nil {
			return err
		}
		fmt.Printf("%9d  site/%s\n", len(picture), one.name)
	}
	return nil
}

// open opens the page with the job and waits until all of it is there.
func open(s *browser.Session, address string) error {
	if err := s.Navigate("about:blank"); err != nil { // an address that differs behind its # loads nothing
		return err
	}
	if err := s.Navigate(address + "#" + job); err != nil {
		return err
	}
	return s.Wait(patience, `document.getElementById('sentence').textContent.includes('brass') && document.querySelector('[data-role=metal]') &&
		document.getElementById('on-device').textContent.includes('Ready without internet')`)
}

// window is the page on a tablet or a telephone of some size, once all is at rest.
func window(s *browser.Session, width, height int, dark bool) ([]byte, error) {
	err := s.DevTools("Emulation.setDeviceMetricsOverride", map[string]any{
		"width": width, "height": height, "deviceScaleFactor": 1, "mobile": true})
	hidden := s.DevTools("Emulation.setScrollbarsHidden", map[string]any{"hidden": true})
	if err := errors.Join(err, hidden, s.Dark(dark)); err != nil {
		return nil, err
	}
	err = s.Wait(patience, `innerWidth === arguments[0] && innerHeight === arguments[1] && document.querySelector('.run').dataset.state === 'before' &&
		!document.getAnimations().some(({ playState }) => playState === 'running')`, width, height)
	if err != nil {
		return nil, err
	}
	return s.Screenshot()
}

// card is the bench card as it comes out of the printer, read by poppler.
func card(s *browser.Session) ([]byte, error) {
	if _, err := s.Execute(`document.getElementById('card').click()`); err != nil {
		return nil, err
	}
	if err := s.Wait(patience, `document.documentElement.classList.contains('prints-leaf')`); err != nil {
		return nil, err
	}
	document, err := s.PrintSheet()
	if err != nil {
		return nil, err
	}
	const dotsPerInch = "110"
	cmd := exec.Command("pdftoppm", "-png", "-singlefile", "-r", dotsPerInch, "-")
	cmd.Stdin = bytes.NewReader(document)
	picture, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("pdftoppm: %w", err)
	}
	return picture, nil
}

// small is a picture with no more than 256 colours, the most frequent of those it
// had: the page has few, and shades between them at the edges of letters.
func small(picture []byte) ([]byte, error) {
	full, err := png.Decode(bytes.NewReader(picture))
	if err != nil {
		return nil, err
	}
	often := map[color.Color]int{}
	each(full, func(x, y int) { often[full.At(x, y)]++ })
	colours := slices.SortedFunc(maps.Keys(often), func(a, b color.Color) int {
		if often[a] != often[b] {
			return often[b] - often[a]
		}
		return number(a) - number(b)
	})
	few := image.NewPaletted(full.Bounds(), colours[:min(len(colours), 256)])
	each(full, func(x, y int) { few.Set(x, y, full.At(x, y)) })
	var b bytes.Buffer
	err = (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, few)
	return b.Bytes(), err
}

func each(picture image.Image, do func(x, y int)) {
	in := picture.Bounds()
	for y := in.Min.Y; y < in.Max.Y; y++ {
		for x := in.Min.X; x < in.Max.X; x++ {
			do(x, y)
		}
	}
}

// number puts colours in an order, so that the same picture gives the same bytes.
func number(c color.Color) int {
	r, g, b, _ := c.RGBA()
	return int(r>>8)<<16 | int(g>>8)<<8 | int(b>>8)
}
