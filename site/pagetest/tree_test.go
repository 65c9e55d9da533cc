package pagetest

import (
	"os"
	"strings"
	"testing"

	"saltbite/build/engine"
	"saltbite/calc/field"
	"saltbite/site/words"
)

// told is a node of the accessibility tree: what a screen reader is told.
type told struct {
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
	if err := p.DevTools("Accessibility.enable", nil); err != nil {
		p.Fatal(err)
	}
	var whole struct{ Nodes []told }
	if err := p.DevToolsTo(&whole, "Accessibility.getFullAXTree", nil); err != nil {
		p.Fatal(err)
	}
	byName := map[string][]told{}
	for _, n := range whole.Nodes {
		if name, ok := n.Name.Value.(string); ok && !n.Ignored && controlRoles[n.Role.Value] {
			byName[name] = append(byName[name], n)
		}
	}
	return byName
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

// TestTree: in Chromium's accessibility tree every control of the sheet has its
// label, its unit, its help, and what is wrong with what stands in it.
func TestTree(t *testing.T) {
	t.Parallel()
	p := &page{t, engine.ForTest(t, engine.Chromium, engine.Options{}), serve(t)}
	p.fresh()
	p.ask(`for (const d of document.querySelectorAll('details')) d.open = true`)
	tree := p.tree()
	for _, f := range field.Fields {
		said := words.Fields[f.Name]
		if f.Name == "find" || f.Name == "units" {
			continue // hidden, and the switch
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
			t.Errorf("%s holds a mistake, and is told as %+v", label, n)
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
	axe, err := os.ReadFile("../node_modules/axe-core/axe.min.js")
	if os.IsNotExist(err) && os.Getenv("SALTBITE_SETUP") == "" {
		t.Skip("there is no axe-core; npm ci in site/ brings it")
	}
	if err != nil {
		t.Fatal(err)
	}
	p := &page{t, engine.ForTest(t, engine.Chromium, engine.Options{}), serve(t)}
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
			p.ask(`const unroll = document.getElementById('unroll'); if (unroll.checkVisibility()) unroll.click()`)
			for _, theme := range []string{"light", "dark"} {
				p.choose(theme)
				p.settle()
				for _, violation := range p.violations(string(axe)) {
					t.Errorf("%s, %s, %d by %d: %s", state.name, theme, size[0], size[1], strings.TrimSpace(violation))
				}
			}
		}
	}
}
