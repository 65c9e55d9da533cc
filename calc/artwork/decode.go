package artwork

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"strings"
)

// Decode reads a PNG or a JPEG.
//
// PNG: 1 to 16 bits, palette, alpha over paper white, interlaced. A gAMA chunk
// is respected unless the file also names a colour space (sRGB, iCCP, cICP):
// samples are brought to the exponent 1/2.2 that screens show. The size on
// paper is pHYs.
//
// JPEG: grey, colour, CMYK (as Adobe writes it, with its APP14 segment), sequential and
// progressive, 8 bits, turned as the EXIF orientation says. The size on paper
// is JFIF's density, else EXIF's.
//
// The pixel count is read from the header first; a picture over the limits is
// refused before anything is decoded. A damaged file gives an error.
func Decode(data []byte) (Picture, error) {
	switch {
	case bytes.HasPrefix(data, pngSignature):
		return decodePNG(data)
	case len(data) > 2 && data[0] == 0xFF && data[1] == 0xD8:
		return decodeJPEG(data)
	case len(data) == 0:
		return Picture{}, &Error{Text: "the file is empty; choose a PNG or a JPEG"}
	}
	return Picture{}, &Error{Text: "the file is neither PNG nor JPEG; save the picture as one of them"}
}

func decodePNG(data []byte) (Picture, error) {
	header := readPNGHeader(data)
	most := MostPixels
	if header.bits == 16 {
		most = MostDeepPixels
	}
	config, err := png.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return Picture{}, because(err)
	}
	if err := checkSize(config.Width, config.Height, most); err != nil {
		return Picture{}, err
	}
	decoded, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return Picture{}, because(err)
	}
	p := greyOf(decoded, toneCurve(header.gamma))
	p.DensityX, p.DensityY = header.densityX, header.densityY
	return p, nil
}

// mostScanPixels is how many pixels all scans of a JPEG may go over together:
// a hundred scans of the largest. A usual progressive file has about ten.
const mostScanPixels = 1_000_000_000

func decodeJPEG(data []byte) (Picture, error) {
	header := readJPEGHeader(data)
	most := MostPixels
	if !header.sequential {
		most = MostDeepPixels
	}
	config, err := jpeg.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return Picture{}, because(err)
	}
	if err := checkSize(config.Width, config.Height, most); err != nil {
		return Picture{}, err
	}
	if scans := bytes.Count(data, []byte{0xFF, 0xDA}); scans > mostScanPixels/(config.Width*config.Height) {
		return Picture{}, &Error{Text: "the picture is coded in too many passes; save it again as a JPEG that is not progressive"}
	}
	decoded, err := jpeg.Decode(bytes.NewReader(data))
	if err != nil {
		return Picture{}, because(err)
	}
	p := greyOf(decoded, nil)
	p.DensityX, p.DensityY = header.densityX, header.densityY
	return p.turned(header.orientation), nil
}

// because is the sentence for a decoder's error: a kind that is not read, or damage.
func because(err error) error {
	switch err.(type) {
	case png.UnsupportedError, jpeg.UnsupportedError:
		kind := strings.TrimPrefix(strings.TrimPrefix(err.Error(), "png: "), "unsupported JPEG feature: ")
		return &Error{Text: "this kind of picture can't be read (" + kind + "); save it as a PNG"}
	}
	return errDamaged
}

// greyOf turns a decoded image into grey over white paper. tone maps samples of
// 16 bits to 8; nil keeps the upper 8 bits' value, rounded.
func greyOf(decoded image.Image, tone []byte) Picture {
	size := decoded.Bounds()
	p := Picture{Width: size.Dx(), Height: size.Dy()}
	p.Grey = make([]byte, p.Width*p.Height)
	for y := range p.Height {
		row := p.Grey[y*p.Width : (y+1)*p.Width]
		switch m := decoded.(type) {
		case *image.Gray:
			copy(row, m.Pix[y*m.Stride:])
			shade(row, tone)
		case *image.YCbCr:
			copy(row, m.Y[y*m.YStride:])
		case *image.Paletted:
			greyPalette(row, m.Pix[y*m.Stride:], m.Palette, tone)
		case *image.RGBA: // opaque, as the decoders give it
			greyBytes(row, m.Pix[y*m.Stride:], tone)
		case *image.NRGBA:
			greyBytes(row, m.Pix[y*m.Stride:], tone)
		case *image.CMYK:
			greyInks(row, m.Pix[y*m.Stride:])
		case *image.Gray16:
			for x := range row {
				row[x] = shaded(m.Pix[y*m.Stride+2*x:], tone)
			}
		case *image.RGBA64:
			greyWords(row, m.Pix[y*m.Stride:], tone)
		case *image.NRGBA64:
			greyWords(row, m.Pix[y*m.Stride:], tone)
		}
	}
	return p
}

// greyBytes reads red, green, blue, alpha of a byte each.
func greyBytes(row, pix, tone []byte) {
	for x := range row {
		pixel := pix[4*x : 4*x+4 : 4*x+4]
		r, g, b := pixel[0], pixel[1], pixel[2]
		if tone != nil {
			r, g, b = tone[257*int(r)], tone[257*int(g)], tone[257*int(b)]
		}
		row[x] = overPaper(luma(r, g, b), pixel[3])
	}
}

// greyWords reads red, green, blue, alpha of two bytes each.
func greyWords(row, pix, tone []byte) {
	for x := range row {
		pixel := pix[8*x : 8*x+8]
		grey := luma(shaded(pixel, tone), shaded(pixel[2:], tone), shaded(pixel[4:], tone))
		row[x] = overPaper(grey, shaded(pixel[6:], nil))
	}
}

// greyInks reads cyan, magenta, yellow, black of a byte each, by the plain rule
// that each ink lets through what it does not cover.
func greyInks(row, pix []byte) {
	for x := range row {
		ink := pix[4*x : 4*x+4 : 4*x+4]
		paper := 255 - uint32(ink[3])
		left := func(c byte) byte { return byte(((255-uint32(c))*paper + 127) / 255) }
		row[x] = luma(left(ink[0]), left(ink[1]), left(ink[2]))
	}
}

func greyPalette(row, pix []byte, colours color.Palette, tone []byte) {
	var grey [256]byte
	for i, c := range colours {
		pixel := asBytes(c)
		greyBytes(grey[i:i+1], pixel[:], tone)
	}
	for x := range row {
		row[x] = grey[pix[x]]
	}
}

// shade maps samples of a byte through the tone curve.
func shade(row, tone []byte) {
	if tone == nil {
		return
	}
	for x, v := range row {
		row[x] = tone[257*int(v)]
	}
}

// shaded is a sample of two bytes in 8 bits.
func shaded(word, tone []byte) byte {
	v := uint32(word[0])<<8 | uint32(word[1])
	if tone != nil {
		return tone[v]
	}
	return byte((v*255 + 32767) / 65535)
}

// turned is the picture as EXIF's orientation (1 to 8) says it is to be seen.
func (p Picture) turned(orientation int) Picture {
	if orientation < 2 || orientation > 8 {
		return p
	}
	q := p
	if orientation >= 5 {
		q.Width, q.Height = p.Height, p.Width
		q.DensityX, q.DensityY = p.DensityY, p.DensityX
	}
	q.Grey = make([]byte, len(p.Grey))
	right, bottom := p.Width-1, p.Height-1
	for y := range q.Height {
		for x := range q.Width {
			from := [...][2]int{2: {right - x, y}, 3: {right - x, bottom - y}, 4: {x, bottom - y},
				5: {y, x}, 6: {y, bottom - x}, 7: {right - y, bottom - x}, 8: {right - y, x}}[orientation]
			q.Grey[y*q.Width+x] = p.Grey[from[1]*p.Width+from[0]]
		}
	}
	return q
}
