// Package artwork reads the picture of a resist: how much of it is open, how
// long the edge of the resist is, how narrow its narrowest line and space are,
// and it makes art that is ready to print from it.
//
// A picture is grey, one byte a pixel, 0 black to 255 paper white. A pixel that
// an edge crosses is grey by the share of it that is covered, as a rasteriser
// writes it: the grey is read as coverage, never cut at a threshold, except in
// a photograph, which has no paper white to trust.
//
// All lengths are in SI: m and m2. Places are measured from the top left corner.
//
// # Limits
//
// A picture has at most MostPixels pixels and MostSide on a side. Everything
// that is counted or averaged (open, grey, islands, holes) is read from every
// pixel. The outline and the widths are read from at most OutlinePixels: a
// larger picture is reduced first, each new pixel being the exact mean of what
// it covers, so that coverage is kept.
package artwork

import "fmt"

// Limits of a picture. The program holds a decoded picture in memory beside
// the decoder's own tables; a progressive JPEG and a PNG of 16 bits take more
// than twice as much a pixel as others.
const (
	MostPixels     = 24_000_000
	MostDeepPixels = 10_000_000 // of a progressive JPEG or a PNG of 16 bits
	MostSide       = 65_535     // pixels; the most that JPEG can state
	OutlinePixels  = 4_000_000
)

// Picture is a decoded picture.
type Picture struct {
	Width, Height int    // pixels
	Grey          []byte // row by row, 0 black to 255 paper white

	// DensityX and DensityY are the pixels per metre that the file states, 0
	// where it states none.
	DensityX, DensityY float64
}

// Error is why a picture or what was asked of it can't be used. Field is the
// field to change: width, height, corners, ruler, threshold, dpi, copies or paper; empty: the picture.
// TooLarge: the picture is sound, as far as it was read, and has too many pixels.
type Error struct {
	Field, Text string
	TooLarge    bool
}

func (e *Error) Error() string { return e.Text }

var errDamaged = &Error{Text: "the picture is damaged or cut short; export it again as PNG or JPEG"}

// FromPixels is the picture of raw pixels as a canvas gives them: four bytes
// each, red, green, blue, and alpha that the colours are not multiplied by.
func FromPixels(width, height int, rgba []byte) (Picture, error) {
	if err := checkSize(width, height, MostPixels); err != nil {
		return Picture{}, err
	}
	if len(rgba) != 4*width*height {
		return Picture{}, &Error{Text: fmt.Sprintf("%d by %d pixels need %d bytes of red, green, blue and alpha; there are %d",
			width, height, 4*width*height, len(rgba))}
	}
	p := Picture{Width: width, Height: height, Grey: make([]byte, width*height)}
	for i := range p.Grey {
		pixel := rgba[4*i : 4*i+4 : 4*i+4]
		p.Grey[i] = overPaper(luma(pixel[0], pixel[1], pixel[2]), pixel[3])
	}
	return p, nil
}

// whole returns an error for a Picture whose fields do not fit each other.
func (p Picture) whole() error {
	if err := checkSize(p.Width, p.Height, MostPixels); err != nil {
		return err
	}
	if len(p.Grey) != p.Width*p.Height {
		return &Error{Text: fmt.Sprintf("%d by %d pixels need a byte each; there are %d", p.Width, p.Height, len(p.Grey))}
	}
	return nil
}

func checkSize(width, height, most int) error {
	if width < 1 || height < 1 {
		return &Error{Text: "the picture has no pixels; choose another"}
	}
	if width > MostSide || height > MostSide {
		return &Error{TooLarge: true, Text: fmt.Sprintf("the picture is %d by %d pixels; a side can have at most %d: save it smaller", width, height, MostSide)}
	}
	if width > most/height {
		return &Error{TooLarge: true, Text: fmt.Sprintf("the picture has %.1f million pixels; at most %d million can be read of this kind: save it smaller, for example half as wide",
			float64(width)*float64(height)/1e6, most/1_000_000)}
	}
	return nil
}

// luma is the grey of a colour: the Y of ITU-R BT.601, which JPEG stores.
func luma(r, g, b byte) byte {
	return byte((299*uint32(r) + 587*uint32(g) + 114*uint32(b) + 500) / 1000)
}

// overPaper is a grey of that opacity laid over white paper.
func overPaper(grey, alpha byte) byte {
	return byte((uint32(grey)*uint32(alpha) + 255*uint32(255-alpha) + 127) / 255)
}
