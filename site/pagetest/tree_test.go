package pagetest

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"saltbite/build/browser"
	"saltbite/calc/field"
	"saltbite/site/words"
	"saltbite/testdata"
)

// told is a node of the accessibility tree: what a screen reader is told.
type told struct {
	NodeID                  string
	ChildIDs                []string
	Ignored                 bool
	Role, Name, Description struct{ Value any }
	Properties              []struct {
		Name  string
		Value struct{ Value any }
	}
}

// controlRoles are the roles of what is typed in and chosen from.
var controlRoles = map[any]bool{"textbox": true, "combobox": true}

// tree is the page's accessibility tree, the controls in it by their names.
func (p *page) tree() map[string][]told {
	p.Helper()
	byName := map[string][]told{}
	for _, n := range p.told() {
		if name, ok := n.Name.Value.(string); ok && !n.Ignored && controlRoles[n.Role.Value] {
			byName[name] = append(byName[name], n)
		}
	}
	return byName
}

// told is the page's accessibility tree, its root first.
func (p *page) told() []told {
	p.Helper()
	if err := p.DevTools("Accessibility.enable", nil); err != nil {
		p.Fatal(err)
	}
	var whole struct{ Nodes []told }
	if err := p.DevToolsTo(&whole, "Accessibility.getFullAXTree", nil); err != nil {
		p.Fatal(err)
	}
	return whole.Nodes
}

// outlined are the roles that an outline shows: landmarks, headings, groups and what
// can be operated. Texts are left out.
var outlined = map[any]bool{"banner": true, "main": true, "form": true, "region": true, "contentinfo": true, "group": true,
	"heading": true, "button": true, "link": true, "textbox": true, "combobox": true, "radio": true, "checkbox": true,
	"DisclosureTriangle": true, "list": true, "figure": true, "image": true, "status": true, "alert": true, "term": true}

// outline is the accessibility tree as indented lines of a role and a name, in the
// order in which it is read.
func (p *page) outline() string {
	p.Helper()
	nodes := p.told()
	byID := map[string]told{}
	for _, n := range nodes {
		byID[n.NodeID] = n
	}
	var lines strings.Builder
	var walk func(n told, depth int)
	walk = func(n told, depth int) {
		if !n.Ignored && outlined[n.Role.Value] {
			line := strings.Repeat("  ", depth) + fmt.Sprint(n.Role.Value)
			if name, _ := n.Name.Value.(string); name != "" {
				line += " " + name
			}
			lines.WriteString(line + "\n")
			depth++
		}
		for _, id := range n.ChildIDs {
			walk(byID[id], depth)
		}
	}
	walk(nodes[0], 0)
	return lines.String()
}

// written is where the tree of an empty page and of an ordinary job is written down.
// A change is looked at, and written with SALTBITE_WRITE=1.
const written = "outline.txt"

// holdsToOutline compares the tree in two states with what is written.
func (p *page) holdsToOutline() {
	p.Helper()
	if err := p.SetWindow(1024, 768); err != nil {
		p.Fatal(err)
	}
	p.fresh()
	told := "An empty page\n\n" + p.outline()
	p.fill(copperJob)
	p.answers(copperTime)
	p.settle()
	told += "\nAn ordinary job\n\n" + p.outline()
	want, err := os.ReadFile(written)
	if err != nil {
		p.Fatal(err)
	}
	if changed, err := testdata.Changed(written, string(want), told); changed != "" || err != nil {
		p.Fatal(changed, err)
	}
}

func (n told) says() string {
	text, _ := n.Description.Value.(string)
	return text
}

func (n told) invalid() bool {
	for _, property := range n.Properties {
		if property.Name == "invalid" {
			return property.Value.Value == "true"
		}
	}
	return false
}

// TestTree: in Chromium's accessibility tree every control of the form has its
// label, its unit, its help, and the error in its content.
func TestTree(t *testing.T) {
	t.Parallel()
	p := &page{t, browser.ForTest(t, browser.Chromium, browser.Options{}), serve(t)}
	p.holdsToOutline()
	p.fresh()
	p.ask(`for (const d of document.querySelectorAll('details')) d.open = true`)
	tree := p.tree()
	for _, f := range field.Fields {
		said := words.Fields[f.Name]
		if f.Name == "find" || f.Name == "units" || f.Name == "ask" || f.Name == "bites" || words.Parts[string(f.Part)].OffPage {
			continue // hidden, the switch, the questions, its own rows, and not on the page
		}
		nodes := tree[said.Label]
		if len(nodes) != 1 {
			t.Errorf("%d controls are labelled %q", len(nodes), said.Label)
			continue
		}
		if says := nodes[0].says(); !strings.Contains(says, said.Help) || nodes[0].invalid() {
			t.Errorf("%s is described as %q, invalid %v", f.Name, says, nodes[0].invalid())
		}
		switch {
		case len(f.Units) > 1 && len(tree["Unit of "+said.Label]) != 1:
			t.Errorf("%s has %d controls for its unit", f.Name, len(tree["Unit of "+said.Label]))
		case len(f.Units) == 1 && !strings.Contains(nodes[0].says(), words.Unit(f.Units[0])):
			t.Errorf("the unit of %s is not told: %q", f.Name, nodes[0].says())
		}
	}

	p.fill(map[string]string{"depth": "a lot", "width": "1,234"})
	p.until(`document.querySelectorAll('[aria-invalid=true]').length === 2`)
	tree = p.tree()
	for label, typed := range map[string]string{"Depth": "a lot", "Width": "1,234"} {
		if n := tree[label]; len(n) != 1 || !n[0].invalid() || !strings.Contains(n[0].says(), typed) {
			t.Errorf("%s has an error, and its node is %+v", label, n)
		}
	}
	if n := tree["Height"]; len(n) != 1 || n[0].invalid() {
		t.Errorf("the height is blank, and is told as %+v", n)
	}
}

// everywhere are the states that differ with the size.
var everywhere = map[string]bool{"an ordinary job": true, "mistakes and cautions": true, "bites and stops": true}

// TestNoViolationAtAnySize lets axe look in both themes as chosen by the switch
// and at three sizes, the phone's with its touch.
func TestNoViolationAtAnySize(t *testing.T) {
	t.Parallel()
	source := axe(t)
	p := &page{t, browser.ForTest(t, browser.Chromium, browser.Options{}), serve(t)}
	for _, size := range sizes {
		err := p.DevTools("Emulation.setDeviceMetricsOverride",
			map[string]any{"width": size[0], "height": size[1], "deviceScaleFactor": 1, "mobile": size[0] < 500})
		if err != nil {
			t.Fatal(err)
		}
		for _, state := range states {
			if !everywhere[state.name] {
				continue
			}
			p.fresh()
			state.make(p)
			p.ask(`for (const folded of document.querySelectorAll('#answer details')) folded.open = true`)
			for _, theme := range []string{"light", "dark"} {
				p.choose(theme)
				p.settle()
				for _, violation := range p.violations(source) {
					t.Errorf("%s, %s, %d by %d: %s", state.name, theme, size[0], size[1], strings.TrimSpace(violation))
				}
			}
		}
	}
}
