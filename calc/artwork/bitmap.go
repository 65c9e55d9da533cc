package artwork

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"hash/crc32"
	"math"
	"math/bits"
)

// bitmap is a picture of a bit a dot, 1 black, rows in whole bytes, the first
// dot in the highest bit.
type bitmap struct {
	across, down int
	stride       int // bytes of a row
	dots         []byte
}

func newBitmap(across, down int) bitmap {
	stride := (across + 7) / 8
	return bitmap{across, down, stride, make([]byte, stride*down)}
}

func (b bitmap) set(x, y int) { b.dots[y*b.stride+x/8] |= 0x80 >> (x % 8) }

// count is how many dots are black.
func (b bitmap) count() int {
	sum := 0
	for _, v := range b.dots {
		sum += bits.OnesCount8(v)
	}
	return sum
}

// invert swaps black and white.
func (b bitmap) invert() {
	for i := range b.dots {
		b.dots[i] ^= 0xFF
	}
	if rest := b.across % 8; rest > 0 {
		for y := range b.down {
			b.dots[(y+1)*b.stride-1] &= 0xFF << (8 - rest)
		}
	}
}

// fill blackens a rectangle, what of it lies on the bitmap.
func (b bitmap) fill(left, top, width, height int) {
	for y := max(0, top); y < min(top+height, b.down); y++ {
		for x := max(0, left); x < min(left+width, b.across); x++ {
			b.set(x, y)
		}
	}
}

// copyTo puts a smaller bitmap there, its left side at a whole byte.
func (b bitmap) copyTo(art bitmap, at place) {
	for y := range art.down {
		copy(b.dots[(at.top+y)*b.stride+at.left/8:], art.dots[y*art.stride:(y+1)*art.stride])
	}
}

// png is the bitmap as a PNG of one bit a pixel, with so many dots per metre.
func (b bitmap) png(density float64) []byte {
	var out bytes.Buffer
	out.Write(pngSignature)
	header := binary.BigEndian.AppendUint32(nil, uint32(b.across))
	header = binary.BigEndian.AppendUint32(header, uint32(b.down))
	const depth, grey = 1, 0
	writeChunk(&out, "IHDR", append(header, depth, grey, 0, 0, 0))
	perMetre := binary.BigEndian.AppendUint32(nil, uint32(math.Round(density)))
	const metre = 1
	writeChunk(&out, "pHYs", append(append(perMetre, perMetre...), metre))
	var packed bytes.Buffer
	packer := zlib.NewWriter(&packed)
	line := make([]byte, 1+b.stride) // of filter 0
	for y := range b.down {
		for i, v := range b.dots[y*b.stride : (y+1)*b.stride] {
			line[1+i] = ^v
		}
		packer.Write(line) // a bytes.Buffer takes all
	}
	packer.Close()
	writeChunk(&out, "IDAT", packed.Bytes())
	writeChunk(&out, "IEND", nil)
	return out.Bytes()
}

func writeChunk(out *bytes.Buffer, kind string, body []byte) {
	out.Write(binary.BigEndian.AppendUint32(nil, uint32(len(body))))
	sum := crc32.NewIEEE()
	sum.Write([]byte(kind))
	sum.Write(body)
	out.WriteString(kind)
	out.Write(body)
	out.Write(sum.Sum(nil))
}
