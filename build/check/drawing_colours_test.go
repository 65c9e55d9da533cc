package check

import (
	"os"
	"regexp"
	"strings"
	"testing"
)

// look is the colours in which the style paints what has a role, by their names
// in the palette; fill is empty where a shape is only outlined.
type look struct{ fill, stroke string }

// looks reads how each role is painted out of the style: what one rule leaves
// open is as the rule for all paths and texts has it.
func looks(t *testing.T) map[string]look {
	t.Helper()
	style, err := os.ReadFile("../../site/style/drawing.css")
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]look{}
	rule := regexp.MustCompile(`(?m)^    & (.*data-role.*) \{ (.*) \}$`)
	role := regexp.MustCompile(`data-role='([\w-]+)'`)
	colour := regexp.MustCompile(`(fill|stroke): var\(--([\w-]+)\)`)
	for _, found := range rule.FindAllStringSubmatch(string(style), -1) {
		for _, name := range role.FindAllStringSubmatch(found[1], -1) {
			l, known := all[name[1]]
			if !known {
				l.stroke = "ink"
			}
			for _, c := range colour.FindAllStringSubmatch(found[2], -1) {
				if c[1] == "fill" {
					l.fill = c[2]
				} else {
					l.stroke = c[2]
				}
			}
			all[name[1]] = l
		}
	}
	return all
}

// metals are the tones that the fill "tone" may have.
var metals = []string{"copper", "brass", "bronze", "nickel-silver", "silver", "metal"}

// beside is what a shape of each role may lie on or against. The wash of the bath
// and the hair lines of a grid only help the eye; the edge of the bath is held.
var beside = map[string][]string{
	"bath":       {"leaf"},
	"metal":      {"leaf", "bath"},
	"gone":       {"leaf", "bath"},
	"resist":     {"leaf", "bath", "tone"},
	"lost":       {"leaf", "bath"},
	"keep":       {"leaf", "bath", "tone"},
	"dimension":  {"leaf", "bath", "tone"},
	"leader":     {"leaf", "bath", "tone"},
	"scale":      {"leaf", "bath"},
	"frame":      {"leaf"},
	"axis":       {"leaf"},
	"band":       {"leaf"},
	"line":       {"leaf", "tint"},
	"limit":      {"leaf", "tint"},
	"target":     {"leaf", "tint"},
	"reading":    {"leaf", "tint"},
	"half":       {"leaf", "tint"},
	"rule":       {"leaf"},
	"positive":   {"leaf", "bath"},
	"negative":   {"leaf", "bath"},
	"cathode":    {"leaf", "bath"},
	"supply":     {"leaf"},
	"label-edge": {"leaf"},
	"warn":       {"leaf"},
	"stop":       {"leaf"},
}

// letters are the roles of texts, which stand on the leaf or in the bath and never
// on metal.
var letters = []string{"word", "figure", "title", "small", "heading"}

// decoration is what the picture can do without.
var decoration = []string{"grid"}

// TestOutlinesStandOut holds the outline of every shape to 3:1 against what may
// be beside it, and against its own fill unless that stands out by itself; and
// texts to 4.5:1; in both themes.
func TestOutlinesStandOut(t *testing.T) {
	painted := looks(t)
	for name, colours := range palette(t) {
		against := func(ground string) []string {
			if ground == "tone" {
				return metals
			}
			return []string{ground}
		}
		for role, grounds := range beside {
			l, known := painted[role]
			if !known {
				l.stroke = "ink"
			}
			fills := []string{}
			if l.fill != "" {
				fills = against(l.fill)
			}
			for _, ground := range grounds {
				for _, g := range against(ground) {
					if got := contrast(colours[l.stroke], colours[g]); got < leastLine {
						t.Errorf("%s: the outline of %s, %s on %s, has a contrast of %.2f", name, role, l.stroke, g, got)
					}
					for _, fill := range fills {
						if got := max(contrast(colours[l.stroke], colours[fill]), contrast(colours[fill], colours[g])); got < leastLine {
							t.Errorf("%s: %s as the fill of %s has a contrast to %s of no more than %.2f", name, fill, role, g, got)
						}
					}
				}
			}
		}
		for _, role := range letters {
			l := painted[role]
			if l.fill == "" {
				l.fill = "ink"
			}
			for _, ground := range []string{"leaf", "bath"} {
				if got := contrast(colours[l.fill], colours[ground]); got < leastText {
					t.Errorf("%s: a text as %s, %s on %s, has a contrast of %.2f", name, role, l.fill, ground, got)
				}
			}
		}
	}
}

// A role that the drawings have and nothing holds to a contrast would escape the
// test above.
func TestEveryRoleOfADrawingIsHeldToAContrast(t *testing.T) {
	source, err := os.ReadFile("../../calc/drawing/shape.go")
	if err != nil {
		t.Fatal(err)
	}
	roles := regexp.MustCompile(`Role = "([\w-]+)"`).FindAllStringSubmatch(string(source), -1)
	if len(roles) < 20 {
		t.Fatalf("only %d roles were read", len(roles))
	}
	held := " " + strings.Join(append(append([]string{}, letters...), decoration...), " ") + " "
	for _, role := range roles {
		if _, shape := beside[role[1]]; !shape && !strings.Contains(held, " "+role[1]+" ") {
			t.Errorf("%s is a role of a drawing, and held to no contrast", role[1])
		}
	}
}
