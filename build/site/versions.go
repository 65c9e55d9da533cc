package site

import (
	"fmt"
	"os/exec"
	"strings"
)

// notKnown is written when there is no commit to name: the sources are in no
// repository, or have changed since the commit.
const notKnown = "not known"

// commitOf is the commit that the sources match exactly.
func commitOf(root string) string {
	changed := exec.Command("git", "status", "--porcelain")
	changed.Dir = root
	if said, err := changed.Output(); err != nil || len(said) > 0 {
		return notKnown
	}
	head := exec.Command("git", "rev-parse", "HEAD")
	head.Dir = root
	commit, err := head.Output()
	if err != nil {
		return notKnown
	}
	return strings.TrimSpace(string(commit))
}

// toolsTitle begins the list of modules that make the site and are no part of it.
const toolsTitle = "Made with"

// versions is versions.txt: which version this is, and of what.
func (p materials) versions(version, commit string) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "Saltbite %s\ncommit %s\n", version, commit)
	list := func(title string, modules []module) {
		fmt.Fprintf(&b, "\n%s\n", title)
		for _, m := range modules {
			fmt.Fprintf(&b, "  %s %s, %s\n", m.Path, m.Version, known[m.Path].name)
		}
	}
	list("Made of", p.shipped)
	list(toolsTitle, append(p.shipped[:1:1], p.tools...))
	return []byte(b.String())
}

// madeWith is the part of versions.txt that names the tools.
func madeWith(versions []byte) string {
	_, tools, _ := strings.Cut(string(versions), "\n"+toolsTitle+"\n")
	return tools
}
