package tool

import (
	"testing"
)

func TestNoToolIsAskedForTwice(t *testing.T) {
	seen := map[string]bool{}
	for _, tool := range tools {
		if seen[tool.Package] || tool.probe == "" || tool.Use == "" {
			t.Errorf("%+v", tool)
		}
		seen[tool.Package] = true
	}
	if (Tool{probe: "no-such-program-here"}).here() || !(Tool{probe: "go"}).here() || !(Tool{probe: "/"}).here() {
		t.Error("what is on this machine is not told from what is not")
	}
}
