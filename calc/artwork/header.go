package artwork

import (
	"bytes"
	"encoding/binary"
	"image/color"
	"math"
)

const metresPerInch = 0.0254

// What the headers say beside the pixels.
type pngHeader struct {
	bits               byte    // of a sample
	gamma              float64 // of the file's samples; 0: none that counts
	densityX, densityY float64 // pixels per metre; 0: not stated
}

type jpegHeader struct {
	sequential         bool // for certain
	orientation        int  // EXIF's, 1 to 8; 0: not stated
	densityX, densityY float64
}

var pngSignature = []byte("\x89PNG\r\n\x1a\n")

// readPNGHeader reads the chunks before the first IDAT (PNG, third edition,
// W3C 2025, sections 5 and 11).
func readPNGHeader(data []byte) pngHeader {
	var h pngHeader
	named := false // a colour space that takes the place of gAMA
	for rest := data[len(pngSignature):]; len(rest) >= 12; {
		length := binary.BigEndian.Uint32(rest)
		kind := string(rest[4:8])
		if kind == "IDAT" || uint64(length) > uint64(len(rest)-12) {
			break
		}
		body := rest[8 : 8+length]
		switch {
		case kind == "IHDR" && length == 13:
			h.bits = body[8]
		case kind == "gAMA" && length == 4:
			h.gamma = float64(binary.BigEndian.Uint32(body)) / 100_000
		case kind == "sRGB" || kind == "iCCP" || kind == "cICP":
			named = true
		case kind == "pHYs" && length == 9 && body[8] == 1:
			h.densityX = density(float64(binary.BigEndian.Uint32(body)))
			h.densityY = density(float64(binary.BigEndian.Uint32(body[4:])))
		}
		rest = rest[12+length:]
	}
	if named {
		h.gamma = 0
	}
	return h
}

// toneCurve maps samples of 16 bits with that gamma to 8 bits with 1/2.2; nil
// if nothing has to change. Within 5 % of 1/2.2 a decoder need not act.
func toneCurve(gamma float64) []byte {
	const shown = 1 / 2.2
	if !(gamma > 0.01 && gamma < 100) || math.Abs(shown/gamma-1) < 0.05 {
		return nil
	}
	curve := make([]byte, 1<<16)
	for v := range curve {
		curve[v] = byte(math.Round(255 * math.Pow(float64(v)/65535, shown/gamma)))
	}
	return curve
}

// readJPEGHeader reads the segments before the first scan (ITU-T T.81 annex B,
// T.871 for JFIF).
func readJPEGHeader(data []byte) jpegHeader {
	var h, exif jpegHeader
	for at := 2; at+4 <= len(data); {
		if data[at] != 0xFF || data[at+1] == 0 || data[at+1] == 0xFF || data[at+1]&^7 == 0xD0 {
			at++ // fill bytes, restart markers, and what some cameras leave between segments
			continue
		}
		marker, length := data[at+1], int(binary.BigEndian.Uint16(data[at+2:]))
		if marker == 0xDA || marker == 0xD9 || length < 2 || at+2+length > len(data) {
			break
		}
		body := data[at+4 : at+2+length]
		switch {
		case marker == 0xC0 || marker == 0xC1:
			h.sequential = true
		case marker == 0xC2:
			h.sequential = false
			return h.with(exif)
		case marker == 0xE0 && len(body) >= 12 && bytes.HasPrefix(body, []byte("JFIF\x00")):
			perUnit := map[byte]float64{1: 1 / metresPerInch, 2: 100}[body[7]]
			h.densityX = density(float64(binary.BigEndian.Uint16(body[8:])) * perUnit)
			h.densityY = density(float64(binary.BigEndian.Uint16(body[10:])) * perUnit)
		case marker == 0xE1 && bytes.HasPrefix(body, []byte("Exif\x00\x00")):
			exif = readEXIF(body[6:])
		}
		at += 2 + length
	}
	return h.with(exif)
}

// with adds what EXIF says and JFIF does not.
func (h jpegHeader) with(exif jpegHeader) jpegHeader {
	h.orientation = exif.orientation
	if h.densityX == 0 || h.densityY == 0 {
		h.densityX, h.densityY = exif.densityX, exif.densityY
	}
	return h
}

// readEXIF reads the first directory of a TIFF structure (JEITA CP-3451, 4.6):
// orientation, resolution and its unit.
func readEXIF(tiff []byte) jpegHeader {
	var h jpegHeader
	if len(tiff) < 8 {
		return h
	}
	var order binary.ByteOrder = binary.BigEndian
	if tiff[0] == 'I' {
		order = binary.LittleEndian
	}
	directory := uint64(order.Uint32(tiff[4:]))
	if directory+2 > uint64(len(tiff)) {
		return h
	}
	perUnit := 1 / metresPerInch
	entries := tiff[directory+2:]
	for range order.Uint16(tiff[directory:]) {
		if len(entries) < 12 {
			break
		}
		tag, value := order.Uint16(entries), entries[8:12]
		switch tag {
		case 0x0112:
			h.orientation = int(order.Uint16(value))
		case 0x011A:
			h.densityX = rational(tiff, order, value)
		case 0x011B:
			h.densityY = rational(tiff, order, value)
		case 0x0128:
			if order.Uint16(value) == 3 {
				perUnit = 100
			}
		}
		entries = entries[12:]
	}
	h.densityX, h.densityY = density(h.densityX*perUnit), density(h.densityY*perUnit)
	return h
}

// rational is the quotient that the four bytes of an entry point to.
func rational(tiff []byte, order binary.ByteOrder, at []byte) float64 {
	offset := uint64(order.Uint32(at))
	if offset+8 > uint64(len(tiff)) {
		return 0
	}
	return float64(order.Uint32(tiff[offset:])) / float64(order.Uint32(tiff[offset+4:]))
}

// density is a number of pixels per metre, or 0 where it can't be one: under 1
// dot per inch (JFIF's 1 by 1 is an aspect), or over 100,000.
func density(perMetre float64) float64 {
	const least, most = 1.5 / metresPerInch, 100_000 / metresPerInch
	if perMetre >= least && perMetre <= most {
		return perMetre
	}
	return 0
}

// asBytes is a colour as red, green, blue and alpha that the others are not
// multiplied by.
func asBytes(c color.Color) [4]byte {
	n := color.NRGBAModel.Convert(c).(color.NRGBA)
	return [4]byte{n.R, n.G, n.B, n.A}
}
