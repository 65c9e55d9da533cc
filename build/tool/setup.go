package tool

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// Tool is a program or a set of files that a check calls, and the Debian package
// that brings it.
type Tool struct {
	Package string
	Use     string
	probe   string // a program's name, or a pattern of paths
}

var tools = []Tool{
	{"chromium", "the page in Chromium", "chromium"},
	{"chromium-driver", "the page in Chromium", "chromedriver"},
	{"firefox-esr", "the page in Firefox", "firefox-esr"},
	{"webkit2gtk-driver", "the page in WebKitGTK", "WebKitWebDriver"},
	{"xvfb", "the page in WebKitGTK", "Xvfb"},
	{"units", "units checked against GNU units", "units"},
	{"bodr", "atomic weights checked against the Blue Obelisk", "/usr/share/bodr/elements.xml"},
	{"poppler-utils", "the printed page read back", "pdftotext"},
	{"librsvg2-bin", "pictures of known measure, drawn from SVG", "rsvg-convert"},
	{"imagemagick", "shares and islands of pictures checked against ImageMagick", "identify"}, // convert may be another program
}

// here says whether the tool is on this machine.
func (t Tool) here() bool {
	if strings.HasPrefix(t.probe, "/") {
		found, _ := filepath.Glob(t.probe)
		return len(found) > 0
	}
	_, err := exec.LookPath(t.probe)
	return err == nil
}

// Lacking lists the tools that are not on this machine.
func Lacking() []Tool {
	var absent []Tool
	for _, t := range tools {
		if !t.here() {
			absent = append(absent, t)
		}
	}
	return absent
}

// Install brings what is missing by the system's package manager; without
// root's rights it names the command to run.
func Install(absent []Tool) error {
	if len(absent) == 0 {
		return nil
	}
	args := []string{"install", "--no-install-recommends", "-y"}
	for _, t := range absent {
		args = append(args, t.Package)
	}
	line := "apt-get update && apt-get " + strings.Join(args, " ")
	if os.Geteuid() != 0 {
		return fmt.Errorf("what is missing needs root's rights; run this once:\n  sudo sh -c '%s'", line)
	}
	if _, err := exec.LookPath("apt-get"); err != nil {
		return errors.New("there is no apt-get here; what it would run:\n  " + line)
	}
	fmt.Println(line)
	for _, arguments := range [][]string{{"update"}, args} {
		cmd := exec.Command("apt-get", arguments...)
		cmd.Env = append(os.Environ(), "DEBIAN_FRONTEND=noninteractive")
		if said, err := cmd.CombinedOutput(); err != nil {
			return fmt.Errorf("apt-get %s: %w\n%s", arguments[0], err, said)
		}
	}
	if still := Lacking(); len(still) > 0 {
		return fmt.Errorf("installed, and yet there is no %s", still[0].probe)
	}
	return nil
}
