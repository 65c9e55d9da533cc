package drawing_test

import (
	"math"
	"strings"
	"testing"

	"saltbite/calc/drawing"
)

// Advance widths of the characters from the blank to the tilde and of ²³°–’: those of
// DejaVu Sans 2.37 in its units of 1/2048 em, read from the fonts' tables, and those
// of Helvetica in 1/1000 em (Adobe's metrics, from memory; Arial and Liberation Sans
// have the same).
var dejaVu = []float64{
	651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690, 1303, 1303, 1303, 1303, 1303,
	1303, 1303, 1303, 1303, 1303, 690, 690, 1716, 1716, 1716, 1087, 2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540,
	604, 604, 1343, 1141, 1767, 1532, 1612, 1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690,
	799, 1716, 1024, 1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298, 569, 569, 1186, 569, 1995, 1298, 1253, 1300,
	1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716, 821, 821, 1024, 1024, 651,
}

var dejaVuBold = []float64{
	713, 934, 1067, 1716, 1425, 2052, 1786, 627, 936, 936, 1071, 1716, 778, 850, 778, 748, 1425, 1425, 1425, 1425, 1425,
	1425, 1425, 1425, 1425, 1425, 819, 819, 1716, 1716, 1716, 1188, 2048, 1585, 1561, 1503, 1700, 1399, 1399, 1681, 1714,
	762, 762, 1587, 1305, 2038, 1714, 1741, 1501, 1741, 1577, 1475, 1397, 1663, 1585, 2259, 1579, 1483, 1485, 936, 748,
	936, 1716, 1024, 1024, 1382, 1466, 1214, 1466, 1389, 891, 1466, 1458, 702, 702, 1362, 702, 2134, 1458, 1407, 1466,
	1466, 1010, 1219, 979, 1458, 1335, 1892, 1321, 1335, 1192, 1458, 748, 1458, 1716, 897, 897, 1024, 1024, 778,
}

var helvetica = []float64{
	278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
	556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
	722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
	556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
	260, 334, 584, 333, 333, 400, 556, 222,
}

var helveticaBold = []float64{
	278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
	556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
	722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
	556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
	280, 389, 584, 333, 333, 400, 556, 278,
}

// What fits by the table of widths fits in whatever face a device has, and the table
// wastes less than a hundredth of an em on a character of ASCII.
func TestWidths(t *testing.T) {
	for _, face := range []struct {
		strong            bool
		dejaVu, helvetica []float64
	}{{false, dejaVu, helvetica}, {true, dejaVuBold, helveticaBold}} {
		all := []rune{}
		for r := ' '; r <= '~'; r++ {
			all = append(all, r)
		}
		for i, r := range append(all, []rune("²³°–’")...) {
			widest := math.Max(face.dejaVu[i]/2048, face.helvetica[i]/1000)
			got := drawing.WidthOf(string(r), 1, face.strong)
			if got < widest-1e-9 || r <= '~' && got >= widest+0.01 {
				t.Errorf("%q, strong %v: %.3f em are kept for it, and the widest face takes %.4f", r, face.strong, got, widest)
			}
		}
	}
}

// A text is as wide as its characters, and grows with its size; what is in no table
// has at least the em that a letter with marks or a Chinese character fills.
func TestWidthOfTexts(t *testing.T) {
	one := drawing.WidthOf("Etch", 1, false)
	if sum := drawing.WidthOf("Et", 1, false) + drawing.WidthOf("ch", 1, false); math.Abs(one-sum) > 1e-9 {
		t.Errorf("a text is %v wide, its parts %v", one, sum)
	}
	if three := drawing.WidthOf("Etch", 3, false); math.Abs(three-3*one) > 1e-9 {
		t.Errorf("at three times the size it is %v wide, not three times %v", three, one)
	}
	for _, text := range []string{"é", "Ω", "銅", "⺀"} {
		if wide := drawing.WidthOf(text, 1, false); wide < 1 || wide > 1.5 {
			t.Errorf("%s is %v em wide", text, wide)
		}
	}
	if drawing.WidthOf("⺀", 1, false) <= drawing.WidthOf("Ω", 1, false) {
		t.Error("the first Chinese sign is no wider than a letter")
	}
}

// Lines hold all words in their order, none wider than allowed, and none that the
// line before had room for.
func TestWrap(t *testing.T) {
	const text, size = "Rinse in a tray that tops up the bath; nothing goes down the drain.", 3.0
	whole := drawing.WidthOf(text, size, false)
	if lines := drawing.Wrap(text, size, whole+1e-9, false); len(lines) != 1 || lines[0] != text {
		t.Errorf("what just fits stands on %d lines: %q", len(lines), lines)
	}
	if lines := drawing.Wrap(text, size, whole-1e-6, false); len(lines) != 2 || lines[1] != "drain." {
		t.Errorf("what just does not fit: %q", lines)
	}
	for width := 25.0; width < whole; width += 0.7 {
		lines := drawing.Wrap(text, size, width, false)
		if joined := strings.Join(lines, " "); joined != text {
			t.Fatalf("at %v the lines hold %q", width, joined)
		}
		for i, line := range lines {
			if drawing.WidthOf(line, size, false) > width {
				t.Errorf("at %v %q is wider", width, line)
			}
			if i > 0 {
				first, _, _ := strings.Cut(line, " ")
				if drawing.WidthOf(lines[i-1]+" "+first, size, false) <= width {
					t.Errorf("at %v %q had room for %q", width, lines[i-1], first)
				}
			}
		}
	}
	const long = "Donaudampfschiff"
	for width := 4.0; width < 50; width += 0.9 {
		lines := drawing.Wrap("Die "+long+" x", size, width, false)
		if got := strings.ReplaceAll(strings.Join(lines, ""), " ", ""); got != "Die"+long+"x" {
			t.Errorf("at %v a long word becomes %q", width, lines)
		}
		for _, line := range lines {
			if drawing.WidthOf(line, size, false) > width {
				t.Errorf("at %v %q is wider", width, line)
			}
		}
	}
	if lines := drawing.Wrap("éé", size, 0.1, false); len(lines) != 2 || lines[0] != "é" {
		t.Errorf("where no letter fits each has a line: %q", lines)
	}
	if lines := drawing.Wrap("", size, 9, false); lines != nil {
		t.Errorf("no text makes %q", lines)
	}
}
