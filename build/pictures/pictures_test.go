package pictures

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"testing"
)

func encoded(t *testing.T, picture image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, picture); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestAPictureKeepsItsMostFrequentColours(t *testing.T) {
	full := image.NewNRGBA(image.Rect(0, 0, 40, 20))
	each(full, func(x, y int) {
		shade := color.NRGBA{R: 200, G: uint8(x), B: uint8(y), A: 255} // 400 colours, each once
		if x >= 20 {
			shade = color.NRGBA{B: 90, A: 255}
		}
		full.Set(x, y, shade)
	})
	packed, err := small(encoded(t, full))
	if err != nil {
		t.Fatal(err)
	}
	few, err := png.Decode(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	if palette, ok := few.ColorModel().(color.Palette); !ok || len(palette) != 256 {
		t.Errorf("the picture has the colours %T", few.ColorModel())
	}
	if got := color.NRGBAModel.Convert(few.At(30, 10)); got != (color.NRGBA{B: 90, A: 255}) {
		t.Errorf("the most frequent colour became %v", got)
	}
	if _, err := small([]byte("no picture")); err == nil {
		t.Error("a text was taken for a picture")
	}
}
