package check

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// theme is the colours of one theme by their names, as #rrggbb.
type theme map[string]string

// palette reads the colours of both themes out of the style.
func palette(t *testing.T) map[string]theme {
	t.Helper()
	style, err := os.ReadFile("../../site/style/base.css")
	if err != nil {
		t.Fatal(err)
	}
	both := map[string]theme{"light": {}, "dark": {}}
	row := regexp.MustCompile(`--([\w-]+): var\(--light, (#[0-9a-f]{6})\) var\(--dark, (#[0-9a-f]{6})\);`)
	for _, found := range row.FindAllStringSubmatch(string(style), -1) {
		both["light"][found[1]], both["dark"][found[1]] = found[2], found[3]
	}
	if len(both["light"]) < 10 {
		t.Fatalf("the style has %d colours that can be read", len(both["light"]))
	}
	return both
}

// luminance is the relative luminance of #rrggbb, and contrast the ratio of two
// colours, as WCAG 2.2 defines them.
func luminance(colour string) float64 {
	sum := 0.0
	for i, share := range []float64{0.2126, 0.7152, 0.0722} {
		channel, err := strconv.ParseUint(colour[1+2*i:3+2*i], 16, 8)
		if err != nil {
			panic(err)
		}
		linear := float64(channel) / 255
		if linear <= 0.04045 {
			linear /= 12.92
		} else {
			linear = math.Pow((linear+0.055)/1.055, 2.4)
		}
		sum += share * linear
	}
	return sum
}

func contrast(a, b string) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// WCAG's own examples: black on white is 21, #777 on white 4.48 (its "Understanding
// contrast", from memory).
func TestContrastIsWorkedOutAsInTheStandard(t *testing.T) {
	for pair, want := range map[[2]string]string{{"#000000", "#ffffff"}: "21.00", {"#777777", "#ffffff"}: "4.48", {"#ffffff", "#ffffff"}: "1.00"} {
		if got := fmt.Sprintf("%.2f", contrast(pair[0], pair[1])); got != want {
			t.Errorf("%v have a contrast of %s, not %s", pair, got, want)
		}
	}
}

// grounds are what text may stand on, with the colours that do.
var grounds = map[string][]string{
	"paper":       {"ink", "soft", "accent", "care", "stop"},
	"leaf":        {"ink", "soft", "accent", "care", "stop"},
	"tint":        {"ink", "soft"},
	"care-ground": {"ink", "care"},
	"stop-ground": {"ink", "stop"},
	"stop":        {"paper"}, // the strip at the end of a run
	"resist":      {},        // of patterns, with no text on it
}

// texts are all the colours that text has on some ground.
func texts() (all []string) {
	for _, on := range grounds {
		all = append(all, on...)
	}
	return all
}

// Least contrasts: of an answer, of any other text, and of what shows where a
// control is or has the focus.
const leastAnswer, leastText, leastLine = 7, 4.5, 3

// lines are the borders, outlines and shapes that must be seen; hair separates
// things that space separates already, and is decoration.
var lines = []string{"edge", "accent", "ink", "soft", "care", "stop"}

func TestColoursStandOutFromTheirGround(t *testing.T) {
	for name, colours := range palette(t) {
		holds := func(colour, ground string, least float64) {
			if got := contrast(colours[colour], colours[ground]); got < least {
				t.Errorf("%s: %s on %s has a contrast of %.2f, and %v is the least", name, colour, ground, got, least)
			}
		}
		for ground, on := range grounds {
			for _, text := range on {
				least := leastText
				if text == "ink" || text+"-ground" == ground && text == "stop" { // a stop stands instead of an answer
					least = leastAnswer
				}
				holds(text, ground, least)
			}
		}
		for _, line := range lines {
			holds(line, "paper", leastLine)
			holds(line, "leaf", leastLine)
		}
		holds("accent", "tint", leastLine)
	}
}

// A colour that is used as text, ground or line without being held to a contrast
// would escape the test above.
func TestEveryColourInUseIsHeldToAContrast(t *testing.T) {
	files, err := filepath.Glob("../../site/style/*.css")
	if err != nil || len(files) == 0 {
		t.Fatal("no style", err)
	}
	both := palette(t)
	used := regexp.MustCompile(`([\w-]+):[^;{}]*var\(--([\w-]+)\)`)
	seen := 0
	for _, file := range files {
		style, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, use := range used.FindAllStringSubmatch(string(style), -1) {
			property, colour := use[1], use[2]
			if _, ours := both["light"][colour]; !ours || colour == "hair" {
				continue
			}
			seen++
			switch _, ground := grounds[colour]; {
			case property == "background" && !ground, property == "color" && !slices.Contains(texts(), colour),
				strings.HasPrefix(property, "border") && !slices.Contains(lines, colour) && !ground,
				strings.HasPrefix(property, "outline") && !slices.Contains(lines, colour):
				t.Errorf("%s: %s as %s is held to no contrast", filepath.Base(file), colour, property)
			}
		}
	}
	if seen < 50 {
		t.Errorf("only %d uses of a colour were seen", seen)
	}
}

// The browser's own bar has the colour of the paper.
func TestTheBarHasTheColourOfThePaper(t *testing.T) {
	html, err := os.ReadFile("../../site/page/start/shared.html")
	if err != nil {
		t.Fatal(err)
	}
	for name, colours := range palette(t) {
		if want := fmt.Sprintf(`content="%s" data-theme="%s"`, colours["paper"], name); !strings.Contains(string(html), want) {
			t.Errorf("the pages' head has no %s", want)
		}
	}
}
