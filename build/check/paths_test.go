package check

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// quoted is a path as the guide quotes one: with a folder, and the end of a file's name.
var quoted = regexp.MustCompile("`([\\w.*/-]+/[\\w.*-]+\\.(?:go|js|mjs|html|css|csv|txt))`")

// What DEVELOPERS.md names is there: from the top, or among the page's scripts.
func TestPathsOfTheGuide(t *testing.T) {
	const root = "../.."
	guide, err := os.ReadFile(filepath.Join(root, "DEVELOPERS.md"))
	if err != nil {
		t.Fatal(err)
	}
	found := quoted.FindAllStringSubmatch(string(guide), -1)
	if len(found) < 20 {
		t.Fatalf("%d paths only", len(found))
	}
	for _, match := range found {
		there := false
		for _, from := range []string{".", "site/page", "site"} {
			files, err := filepath.Glob(filepath.Join(root, from, match[1]))
			there = there || err == nil && len(files) > 0
		}
		if !there {
			t.Errorf("there is no %s", match[1])
		}
	}
}
