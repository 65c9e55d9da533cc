//go:build !js

package artwork

import (
	"bytes"
	"compress/zlib"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

// Each kind of PNG that ImageMagick writes of one drawing decodes to ImageMagick's own greys.
func TestKindsOfPNG(t *testing.T) {
	drawn := drawing{64, 48, `<rect width="64" height="48" fill="#204060"/><circle cx="30" cy="20" r="15" fill="#d09040"/><path d="M0 40h64" stroke="white" stroke-width="5"/>`}.png(t, 2)
	for _, c := range []struct {
		name      string
		arguments string
	}{
		{"grey 1 bit", "-colorspace gray -threshold 40% -define png:color-type=0 -define png:bit-depth=1"},
		{"grey 2 bits", "-colorspace gray -depth 2 -define png:color-type=0 -define png:bit-depth=2"},
		{"grey 4 bits", "-colorspace gray -depth 4 -define png:color-type=0 -define png:bit-depth=4"},
		{"grey 8 bits", "-colorspace gray -define png:color-type=0 -define png:bit-depth=8"},
		{"grey 16 bits", "-colorspace gray -define png:color-type=0 -define png:bit-depth=16"},
		{"colour 8 bits", "-define png:color-type=2 -define png:bit-depth=8"},
		{"colour 16 bits", "-define png:color-type=2 -define png:bit-depth=16"},
		{"palette", "-colors 16 -define png:color-type=3"},
		{"palette 2 bits", "-colors 4 -define png:color-type=3 -define png:bit-depth=2"},
		{"interlaced", "-interlace PNG -define png:color-type=2"},
		{"interlaced 16 bits", "-interlace PNG -define png:color-type=2 -define png:bit-depth=16"},
		{"alpha", "-alpha set -channel A -evaluate set 100% +channel -define png:color-type=6"},
		{"grey and alpha", "-colorspace gray -alpha set -define png:color-type=4"},
	} {
		file := convertTo(t, drawn, append(strings.Fields(c.arguments), "png:-")...)
		p, err := Decode(file)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		compareGreys(t, c.name, p, convertTo(t, file, "-set", "colorspace", "sRGB", "-depth", "8", "rgb:-"), 1)
	}
}

// compareGreys holds a picture to colours that ImageMagick decoded.
func compareGreys(t *testing.T, name string, p Picture, rgb []byte, slack int) {
	t.Helper()
	if len(rgb) != 3*len(p.Grey) {
		t.Errorf("%s: %d by %d pixels, ImageMagick has %d bytes", name, p.Width, p.Height, len(rgb))
		return
	}
	worst := 0
	for i, v := range p.Grey {
		// ITU-R BT.601
		want := 0.299*float64(rgb[3*i]) + 0.587*float64(rgb[3*i+1]) + 0.114*float64(rgb[3*i+2])
		worst = max(worst, int(math.Abs(float64(v)-want)))
	}
	if worst > slack {
		t.Errorf("%s: greys are up to %d off", name, worst)
	}
}

func TestKindsOfJPEG(t *testing.T) {
	drawn := drawing{64, 48, `<rect width="64" height="48" fill="#204060"/><circle cx="30" cy="20" r="15" fill="#d09040"/>`}.png(t, 3)
	for _, c := range []struct {
		name, arguments string
		slack           int
	}{
		{"colour", "-quality 95 -sampling-factor 1x1", 4},
		{"subsampled", "-quality 95 -sampling-factor 2x2", 6},
		{"grey", "-colorspace gray -quality 95", 4},
		{"progressive", "-quality 95 -sampling-factor 1x1 -interlace JPEG", 4},
		{"CMYK", "-colorspace CMYK -quality 95", 6},
	} {
		file := convertTo(t, drawn, append(strings.Fields(c.arguments), "jpg:-")...)
		p, err := Decode(file)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		back := convertTo(t, drawn, append(strings.Fields(c.arguments), "jpg:-")...)
		rgb := fromJPEG(t, back, "-colorspace", "sRGB", "-depth", "8", "rgb:-")
		compareGreys(t, c.name, p, rgb, c.slack)
	}
}

// Alpha lies over white: half of it over black is half grey.
func TestAlphaOverPaper(t *testing.T) {
	p, err := FromPixels(2, 1, []byte{0, 0, 0, 128, 200, 200, 200, 0})
	if err != nil || p.Grey[0] != 127 || p.Grey[1] != 255 {
		t.Errorf("%v, %v", p.Grey, err)
	}
	file := convertTo(t, drawing{8, 8, ""}.png(t, 1), "-fill", "black", "-colorize", "100", "-alpha", "set", "-channel", "A", "-evaluate", "set", "50%", "+channel", "png32:-")
	if p, err := Decode(file); err != nil || p.Grey[9] < 126 || p.Grey[9] > 128 {
		t.Errorf("half of black is %v, %v", p.Grey, err)
	}
}

// A gAMA of 1 with samples of linear light comes back as screens show it.
func TestGamma(t *testing.T) {
	file := bytes.Clone(grey4(0x40, 0x80, 0xC0, 0xFF))
	plain, err := Decode(file)
	if err != nil {
		t.Fatal(err)
	}
	linear, err := Decode(withChunk(file, "gAMA", []byte{0, 1, 0x86, 0xA0})) // 100,000
	if err != nil {
		t.Fatal(err)
	}
	for i, v := range plain.Grey {
		want := 255 * math.Pow(float64(v)/255, 1/2.2) // PNG, third edition, 13.13
		if math.Abs(float64(linear.Grey[i])-want) > 0.51 {
			t.Errorf("%d is shown as %d, want %v", v, linear.Grey[i], want)
		}
	}
	named, err := Decode(withChunk(withChunk(file, "gAMA", []byte{0, 1, 0x86, 0xA0}), "sRGB", []byte{0}))
	if err != nil || !bytes.Equal(named.Grey, plain.Grey) {
		t.Errorf("with sRGB: %v, %v", named.Grey, err)
	}
}

// grey4 is a PNG of four grey pixels.
func grey4(values ...byte) []byte {
	var out bytes.Buffer
	out.Write(pngSignature)
	writeChunk(&out, "IHDR", []byte{0, 0, 0, 4, 0, 0, 0, 1, 8, 0, 0, 0, 0})
	writeChunk(&out, "IDAT", packed(append([]byte{0}, values...)))
	writeChunk(&out, "IEND", nil)
	return out.Bytes()
}

// withChunk puts a chunk behind the header.
func withChunk(file []byte, kind string, body []byte) []byte {
	const headerEnd = 33
	var out bytes.Buffer
	out.Write(file[:headerEnd])
	writeChunk(&out, kind, body)
	out.Write(file[headerEnd:])
	return out.Bytes()
}

func TestStatedSize(t *testing.T) {
	drawn := drawing{60, 40, ""}.png(t, 2)
	for _, format := range []string{"png:-", "jpg:-"} {
		for _, c := range []struct {
			arguments string
			x, y      float64 // per metre
		}{
			{"-units PixelsPerInch -density 300", 300 / 0.0254, 300 / 0.0254},
			{"-units PixelsPerCentimeter -density 100x50", 10000, 5000},
		} {
			p, err := Decode(convertTo(t, drawn, append(strings.Fields(c.arguments), format)...))
			if err != nil || math.Abs(p.DensityX/c.x-1) > 1e-4 || math.Abs(p.DensityY/c.y-1) > 1e-4 {
				t.Errorf("%s %s: %v by %v a metre, %v", format, c.arguments, p.DensityX, p.DensityY, err)
			}
			r := measured(t, p, Options{})
			if math.Abs(r.Width-120/c.x) > 1e-4*r.Width || math.Abs(r.Height-80/c.y) > 1e-4*r.Height {
				t.Errorf("%s %s: %v by %v", format, c.arguments, r.Width, r.Height)
			}
		}
	}
}

// EXIF's orientation turns the picture as ImageMagick's -auto-orient does.
func TestOrientation(t *testing.T) {
	drawn := drawing{48, 32, `<path d="M4 4h30v8h-22v16h-8z"/>`}.png(t, 1)
	plain := convertTo(t, drawn, "-quality", "95", "jpg:-")
	for orientation := range 9 {
		file := withEXIF(plain, orientation)
		p, err := Decode(file)
		if err != nil {
			t.Fatal(err)
		}
		compareGreys(t, "orientation "+strconv.Itoa(orientation), p, fromJPEG(t, file, "-auto-orient", "-colorspace", "sRGB", "-depth", "8", "rgb:-"), 3)
		if math.Abs(p.DensityX-150/0.0254) > 1e-6 {
			t.Errorf("density %v", p.DensityX)
		}
	}
}

// withEXIF takes JFIF's segment out and puts one in that states an orientation
// and 150 dots per inch (JEITA CP-3451).
func withEXIF(jpeg []byte, orientation int) []byte {
	rest := jpeg[2:]
	if rest[1] == 0xE0 {
		rest = rest[2+int(rest[2])<<8+int(rest[3]):]
	}
	tiff := []byte("MM\x00\x2A\x00\x00\x00\x08\x00\x04" +
		"\x01\x12\x00\x03\x00\x00\x00\x01\x00" + string(rune(orientation)) + "\x00\x00" +
		"\x01\x1A\x00\x05\x00\x00\x00\x01\x00\x00\x00\x3E" +
		"\x01\x1B\x00\x05\x00\x00\x00\x01\x00\x00\x00\x3E" +
		"\x01\x28\x00\x03\x00\x00\x00\x01\x00\x02\x00\x00" +
		"\x00\x00\x00\x00" + "\x00\x00\x00\x96\x00\x00\x00\x01")
	body := append([]byte("Exif\x00\x00"), tiff...)
	length := len(body) + 2
	return bytes.Join([][]byte{{0xFF, 0xD8, 0xFF, 0xE1, byte(length >> 8), byte(length)}, body, rest}, nil)
}

func TestTooLarge(t *testing.T) {
	for name, c := range map[string]struct {
		file []byte
		want string
	}{
		"24 million":              {header(6000, 4001, 8), "24.0 million pixels; at most 24 million"},
		"10 million of 16 bits":   {header(4000, 2501, 16), "at most 10 million"},
		"a side":                  {header(70000, 10, 8), "65535"},
		"progressive":             {append([]byte{0xFF, 0xD8, 0xFF, 0xC2, 0, 11, 8, 0x0B, 0xB8, 0x0F, 0xA0, 1, 1, 0x11, 0}, 0xFF, 0xDA, 0, 2), "at most 10 million"},
		"neither":                 {[]byte("GIF89a"), "neither PNG nor JPEG"},
		"nothing":                 {nil, "empty"},
		"a signature and no more": {pngSignature, "damaged"},
	} {
		if _, err := Decode(c.file); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
}

func header(width, height int, bits byte) []byte {
	var out bytes.Buffer
	out.Write(pngSignature)
	writeChunk(&out, "IHDR", []byte{0, byte(width >> 16), byte(width >> 8), byte(width), 0, 0, byte(height >> 8), byte(height), bits, 0, 0, 0, 0})
	writeChunk(&out, "IDAT", packed(nil))
	return out.Bytes()
}

// Two thousand broken pictures give an error or a picture that can be measured,
// each within two seconds.
func TestBrokenPictures(t *testing.T) {
	drawn := ornament().png(t, 3)
	good := [][]byte{drawn,
		convertTo(t, drawn, "-interlace", "PNG", "-density", "300", "png:-"),
		convertTo(t, drawn, "-define", "png:color-type=3", "png:-"),
		convertTo(t, drawn, "jpg:-"),
		convertTo(t, drawn, "-interlace", "JPEG", "jpg:-"),
		withEXIF(convertTo(t, drawn, "-colorspace", "CMYK", "jpg:-"), 6),
	}
	random := rand.New(rand.NewPCG(11, 13))
	read, slowest := 0, time.Duration(0)
	for i := range 2000 {
		file := damaged(random, good[i%len(good)])
		took, err := timed(func() error { return decodedAndMeasured(file) })
		if err == nil {
			read++
		} else if e, ok := err.(*Error); !ok || e.Text == "" || e.Field != "" {
			t.Errorf("broken picture %d: %v", i, err)
		}
		slowest = max(slowest, took)
	}
	t.Logf("%d were read, the slowest took %v", read, slowest)
	if read == 0 || read == 2000 {
		t.Errorf("%d of 2000 were read", read)
	}
	if slowest > longest {
		t.Errorf("the slowest took %v", slowest)
	}
}

// longest is how long a broken picture may take.
const longest = 2 * time.Second

// timed is how long a call keeps the processor at work: the machine may be busy with
// other things.
func timed(call func() error) (time.Duration, error) {
	start := atWork()
	err := call()
	return atWork() - start, err
}

func decodedAndMeasured(file []byte) error {
	p, err := Decode(file)
	if err != nil {
		return err
	}
	_, err = Measure(p, Options{Width: 0.1, Lost: 0.0002}, silent)
	return err
}

// damaged is a copy that is cut, or has bits flipped, lengths or sizes that lie,
// or parts that are doubled.
func damaged(random *rand.Rand, good []byte) []byte {
	file := bytes.Clone(good)
	switch random.IntN(6) {
	case 0:
		return file[:random.IntN(len(file))]
	case 1:
		for range 1 + random.IntN(8) {
			file[random.IntN(len(file))] ^= 1 << random.IntN(8)
		}
	case 2: // in the headers
		for range 1 + random.IntN(3) {
			file[random.IntN(min(len(file), 200))] = byte(random.IntN(256))
		}
	case 3:
		at := random.IntN(min(len(file), 60) - 4)
		copy(file[at:], []byte{0xFF, 0xFF, 0xFF, 0xFF}[:1+random.IntN(4)])
	case 4: // a size that lies, with its checksum made good
		if bytes.HasPrefix(file, pngSignature) {
			body := bytes.Clone(file[16:29])
			body[random.IntN(8)] = byte(random.IntN(256))
			var out bytes.Buffer
			out.Write(pngSignature)
			writeChunk(&out, "IHDR", body)
			return append(out.Bytes(), file[33:]...)
		}
		file[random.IntN(len(file))] = 0xFF
	default:
		begin := random.IntN(len(file))
		end := begin + random.IntN(len(file)-begin)
		return append(append(bytes.Clone(file[:end]), file[begin:end]...), file[end:]...)
	}
	return file
}

// A picture of no pixels of its own that would unpack to far more than it says is read no further than it says.
func TestBomb(t *testing.T) {
	var out bytes.Buffer
	out.Write(pngSignature)
	writeChunk(&out, "IHDR", []byte{0, 0, 0, 4, 0, 0, 0, 1, 8, 0, 0, 0, 0})
	writeChunk(&out, "IDAT", packed(make([]byte, 50_000_000)))
	writeChunk(&out, "IEND", nil)
	took, err := timed(func() error { return decodedAndMeasured(out.Bytes()) })
	if err != nil && err != errDamaged || took > longest {
		t.Errorf("%v, after %v", err, took)
	}
	scans := convertTo(t, drawing{100, 100, ""}.png(t, 20), "-interlace", "JPEG", "jpg:-")
	begin := bytes.LastIndex(scans, []byte{0xFF, 0xDA})
	many := append(bytes.Clone(scans[:begin]), bytes.Repeat(scans[begin:len(scans)-2], 2000)...)
	if _, err := Decode(many); err == nil || !strings.Contains(err.Error(), "passes") {
		t.Errorf("2,000 scans: %v", err)
	}
}

func fromJPEG(t testing.TB, picture []byte, arguments ...string) []byte {
	t.Helper()
	return converted(t, "jpg:-", picture, arguments...)
}

func packed(data []byte) []byte {
	var out bytes.Buffer
	packer := zlib.NewWriter(&out)
	packer.Write(data)
	packer.Close()
	return out.Bytes()
}

// The format's own test set (PngSuite, Willem van Schaik), as the Go toolchain
// carries it, against ImageMagick's decoder. Files with alpha are laid over
// white by both; gAMA is taken out, since TestGamma holds it.
func TestPngSuite(t *testing.T) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Skip("there is no go command to ask for its test set")
	}
	files, _ := filepath.Glob(filepath.Join(strings.TrimSpace(string(root)), "src/image/png/testdata/pngsuite/*.png"))
	if len(files) == 0 {
		t.Skip("this toolchain comes without its test data")
	}
	for _, name := range files {
		file, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if at := bytes.Index(file, []byte("gAMA")); at > 0 {
			const before, length = 4, 4 + 4 + 4 + 4
			file = slices.Delete(file, at-before, at-before+length)
		}
		p, err := Decode(file)
		if err != nil {
			t.Errorf("%s: %v", filepath.Base(name), err)
			continue
		}
		compareGreys(t, filepath.Base(name), p, convertTo(t, file, "-background", "white", "-flatten", "-set", "colorspace", "sRGB", "-depth", "8", "rgb:-"), 1)
	}
}
